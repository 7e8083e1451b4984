using System.Collections.Immutable;
using Litterfall.Domain.Checking;
using Litterfall.Physics;
using Litterfall.Physics.Air;

namespace Litterfall.Planning.Climate;

/// <summary>
/// The day of a box cut where something is switched: lamps, mist. Lamp heat is split as each lamp's kind
/// says; light that stays inside warms ground, leaves and walls.
/// </summary>
internal sealed class DayParts
{
    private const double DaySeconds = 86400;
    private readonly CheckedDesign design;
    private readonly BoxSurfaces surfaces;
    private readonly ClimateChange change;
    private readonly List<Lit> lamps = [];
    private readonly List<(double On, double Off, double KilogramsPerSecond)> mists = [];
    private readonly List<(double On, double Off, double KilogramsPerSecond)> fogs = [];
    private readonly List<(double On, double Off)> fans = [];

    private DayParts(CheckedDesign design, BoxSurfaces surfaces, ClimateChange change)
    {
        this.design = design;
        this.surfaces = surfaces;
        this.change = change;
    }

    /// <summary>Heat of a lamp while it burns, W.</summary>
    private sealed record Lit(double On, double Off, double AirWatts, ImmutableArray<double> SurfaceWatts);

    /// <summary>The parts of a design's day.</summary>
    public static ImmutableArray<DayPart> Of(CheckedDesign design, BoxSurfaces surfaces, ClimateChange change)
    {
        var parts = new DayParts(design, surfaces, change);
        for (var i = 0; i < design.Design.Lamps.Count; i++)
        {
            parts.AddLamp(i);
        }

        parts.AddMist();
        parts.AddFanAndFog();
        return parts.Cut();
    }

    /// <summary>Electrical power of a lamp, W: typed, or its kind's.</summary>
    public static double Watts(CheckedDesign design, int lamp) =>
        design.Design.Lamps[lamp].Watts?.Si ?? Kind(design, lamp)?.Figure("power")?.Si ?? 18;

    private static Domain.Catalog.CatalogEntry? Kind(CheckedDesign design, int lamp) =>
        design.Find(FormattableString.Invariant($"lamps[{lamp}].lamp"));

    private void AddLamp(int i)
    {
        var lamp = design.Design.Lamps[i];
        var kind = Kind(design, i);
        var watts = Watts(design, i) * change.LampHeat;
        var visible = kind?.Figure("visibleShare")?.Si ?? 0.36;
        if (lamp.Lumens is { } lumens && kind?.Figure("radiationEfficacy")?.Si is { } efficacy && watts > 0)
        {
            visible = Math.Clamp(lumens.Si / efficacy / Watts(design, i), 0.02, 0.7);
        }

        var infrared = Math.Min(kind?.Figure("infraredShare")?.Si ?? 0, 1 - visible);
        var lost = 1 - visible - infrared;
        var down = kind?.Figure("downShare")?.Si ?? 0.15;
        var heat = new double[surfaces.Shape.Surfaces.Length];
        var glass = surfaces.Lid is null ? 0 : 1 - surfaces.OpenTop;
        var light =
            watts
            * visible
            * HeadspacePolicy.LampOptics
            * ((glass * HeadspacePolicy.LidTransmits) + (1 - glass))
            * HeadspacePolicy.LightKept;
        Spread(heat, light);
        Spread(heat, watts * infrared * (1 - glass) * HeadspacePolicy.LightKept);
        if (surfaces.Lid is { } lid)
        {
            heat[lid] += watts * glass * (infrared + (lost * down));
        }

        lamps.Add(
            new Lit(
                lamp.On?.ToTimeSpan().TotalSeconds ?? HeadspacePolicy.LampHours.On,
                lamp.Off?.ToTimeSpan().TotalSeconds ?? HeadspacePolicy.LampHours.Off,
                0,
                ImmutableArray.Create(heat)
            )
        );
    }

    /// <summary>Light that stays: leaves, walls, and the ground for the rest.</summary>
    private void Spread(double[] heat, double watts)
    {
        var onLeaves = surfaces.Leaves is null ? 0 : HeadspacePolicy.LightOnLeaves;
        if (surfaces.Leaves is { } leaves)
        {
            heat[leaves] += watts * onLeaves;
        }

        var walls = surfaces.Walls.Values.ToArray();
        foreach (var wall in walls)
        {
            heat[wall] += watts * HeadspacePolicy.LightOnWalls / walls.Length;
        }

        heat[surfaces.Ground] += watts * (1 - onLeaves - HeadspacePolicy.LightOnWalls);
    }

    private void AddMist()
    {
        if (design.Design.Misting is { } misting)
        {
            var flow = misting.Nozzles * misting.Each.Si * 1000 * change.Mist;
            foreach (var time in misting.Times)
            {
                var at = time.At.ToTimeSpan().TotalSeconds;
                mists.Add((at, at + Math.Min(time.For.Si, DaySeconds), flow));
            }
        }
        else if (design.Design.Habits?.HandMist is { } hand)
        {
            var (at, duration) = HeadspacePolicy.HandMist;
            mists.Add((at, at + duration, hand.Si * 1000 / duration * change.Mist));
        }
    }

    private void AddFanAndFog()
    {
        if (design.Design.Fan is { } fan)
        {
            var on = fan.On?.ToTimeSpan().TotalSeconds ?? 0;
            fans.Add((on, fan.Off?.ToTimeSpan().TotalSeconds ?? on));
        }

        foreach (var time in design.Design.Fogger?.Times ?? [])
        {
            var at = time.At.ToTimeSpan().TotalSeconds;
            fogs.Add((at, at + Math.Min(time.For.Si, DaySeconds), design.Design.Fogger!.Rate.Si * 1000));
        }
    }

    private ImmutableArray<DayPart> Cut()
    {
        var cuts = new SortedSet<double> { 0 };
        foreach (
            var (on, off) in lamps
                .Select(l => (l.On, l.Off))
                .Concat(mists.Concat(fogs).Select(m => (m.On, m.Off)))
                .Concat(fans)
        )
        {
            cuts.Add(on % DaySeconds);
            cuts.Add(off % DaySeconds);
        }

        var starts = cuts.ToArray();
        return
        [
            .. starts.Select(
                (from, i) => Part(from, 0.5 * (from + (i + 1 < starts.Length ? starts[i + 1] : DaySeconds)))
            ),
        ];
    }

    private DayPart Part(double from, double middle)
    {
        var lit = lamps.Where(l => IsOn(l.On, l.Off, middle)).ToList();
        var mist = mists.Where(m => IsOn(m.On, m.Off, middle)).Sum(m => m.KilogramsPerSecond);
        var fan = fans.Any(f => IsOn(f.On, f.Off, middle)) ? design.Design.Fan : null;
        var watts = new double[surfaces.Shape.Surfaces.Length];
        foreach (var lamp in lit)
        {
            for (var i = 0; i < watts.Length; i++)
            {
                watts[i] += lamp.SurfaceWatts[i];
            }
        }

        return new DayPart(
            from,
            new HeadspaceDrive
            {
                Room = _ => default,
                AirWatts = lit.Sum(l => l.AirWatts),
                SurfaceWatts = ImmutableArray.Create(watts),
                MistKilogramsPerSecond = mist,
                FogKilogramsPerSecond = fogs.Where(f => IsOn(f.On, f.Off, middle))
                    .Sum(f => f.KilogramsPerSecond),
                StirMetersPerSecond = fan?.Use == Domain.Designs.FanUse.Stir ? HeadspacePolicy.StirSpeed : 0,
                FanCubicMetersPerSecond =
                    fan?.Use == Domain.Designs.FanUse.Vent ? HeadspacePolicy.FanThroughMesh * fan.Flow.Si : 0,
                MistCelsius = design.Design.Room?.Temperature is { } t ? t.Si - 273.15 : 21,
            },
            lit.Count > 0,
            mist
        );
    }

    /// <summary>True between on and off, over midnight where off is not after on.</summary>
    private static bool IsOn(double on, double off, double at)
    {
        var long1 = off > on ? off - on : off - on + DaySeconds;
        var since = at - on;
        since -= Math.Floor(since / DaySeconds) * DaySeconds;
        return since < long1;
    }
}
