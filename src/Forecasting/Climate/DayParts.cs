using System.Collections.Immutable;
using Litterfall.Domain.Checking;
using Litterfall.Forecasting.Coefficients;
using Litterfall.Forecasting.Light;
using Litterfall.Physics.Air;
using Litterfall.Physics.Coupling;
using Litterfall.Quantities.Measures;

namespace Litterfall.Forecasting.Climate;

/// <summary>
/// The day of a box cut where something is switched: lamps, mist. Lamp heat is split as each lamp's kind
/// says; light warms what takes it, as rays followed through the box tell.
/// </summary>
internal sealed class DayParts
{
    private const double DaySeconds = 86400;
    private readonly CheckedDesign design;
    private readonly BoxSurfaces surfaces;
    private readonly ClimateChange change;
    private readonly ModelCoefficients with;
    private readonly LampShares.Lit[] shares;
    private readonly List<Lit> lamps = [];
    private readonly List<(double On, double Off, double KilogramsPerSecond)> mists = [];
    private readonly List<(double On, double Off, double KilogramsPerSecond)> fogs = [];
    private readonly List<(double On, double Off)> fans = [];

    private DayParts(
        CheckedDesign design,
        BoxSurfaces surfaces,
        LampShares.Lit[] shares,
        ClimateChange change,
        ModelCoefficients with
    )
    {
        this.with = with;
        this.design = design;
        this.shares = shares;
        this.surfaces = surfaces;
        this.change = change;
    }

    /// <summary>Heat of a lamp while it burns, W.</summary>
    private sealed record Lit(double On, double Off, double AirWatts, ImmutableArray<double> SurfaceWatts);

    /// <summary>The parts of a design's day.</summary>
    /// <param name="design">The design.</param>
    /// <param name="surfaces">Its surfaces.</param>
    /// <param name="shares">Where the light of each lamp ends.</param>
    /// <param name="change">What is changed.</param>
    /// <param name="with">Coefficients.</param>
    public static ImmutableArray<DayPart> Of(
        CheckedDesign design,
        BoxSurfaces surfaces,
        LampShares.Lit[] shares,
        ClimateChange change,
        ModelCoefficients with
    )
    {
        var parts = new DayParts(design, surfaces, shares, change, with);
        for (var i = 0; i < shares.Length; i++)
        {
            parts.AddLamp(i);
        }

        parts.AddMist();
        parts.AddFanAndFog();
        return parts.Cut();
    }

    private void AddLamp(int i)
    {
        var lamp = design.Design.Lamps[i];
        var heat = LampHeat.Of(design, i, shares[i], with.Light);
        var watts = new double[surfaces.Shape.Surfaces.Length];
        var factor = change.LampHeat * with.Headspace.LampHeat.Use();
        var rays = heat.LightWatts * factor;
        Spread(watts, shares[i].Light, rays);
        Spread(watts, shares[i].Infrared ?? shares[i].Light, heat.InfraredWatts * factor);
        var below = heat.CaseWatts * heat.DownShare * factor;
        Floor(watts, below * surfaces.OpenTop);
        lamps.Add(
            new Lit(
                lamp.On?.ToTimeSpan().TotalSeconds ?? with.Headspace.LampOn.UseSi(),
                lamp.Off?.ToTimeSpan().TotalSeconds ?? with.Headspace.LampOff.UseSi(),
                below * (1 - surfaces.OpenTop),
                ImmutableArray.Create(watts)
            )
        );
    }

    /// <summary>
    /// Rays to what takes them; what leaves or wood take where the headspace has none goes to the ground.
    /// </summary>
    private void Spread(double[] heat, LampShares ends, double watts)
    {
        Floor(heat, watts * ends.Ground);
        foreach (var (side, wall) in surfaces.Walls)
        {
            heat[wall] += watts * ends.Walls[side];
        }

        heat[surfaces.Leaves ?? surfaces.Ground] += watts * ends.Leaves;
        heat[surfaces.Wood ?? surfaces.Ground] += watts * ends.Wood;
        if (surfaces.Lid is { } lid)
        {
            heat[lid] += watts * ends.Lid;
        }
    }

    /// <summary>What reaches the floor, to ground and open water by their areas.</summary>
    private void Floor(double[] heat, double watts)
    {
        heat[surfaces.Ground] += watts * (1 - surfaces.OpenWaterShare);
        if (surfaces.OpenWater is { } open)
        {
            heat[open] += watts * surfaces.OpenWaterShare;
        }
    }

    private void AddMist()
    {
        if (design.Design.Misting is { } misting)
        {
            var flow = misting.Nozzles * misting.Each.Si * 1000 * change.Mist;
            var fill = MistingDay.Fill(design)?.Si ?? 0;
            foreach (var time in misting.Times.Where(t => t.For.Si > fill))
            {
                var at = time.At.ToTimeSpan().TotalSeconds;
                mists.Add((at + fill, at + Math.Min(time.For.Si, DaySeconds), flow));
            }
        }

        if (design.Design.Habits?.HandMist is { } hand)
        {
            var (at, duration) = (with.Headspace.HandMistAt.UseSi(), with.Headspace.HandMistFor.UseSi());
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

        foreach (var time in (design.Design.Fogger?.Times ?? []).Where(t => t.For.Si > 0))
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
                StirMetersPerSecond = fan?.Use == Domain.FanUse.Stir ? with.Headspace.StirSpeed.UseSi() : 0,
                FanCubicMetersPerSecond =
                    fan?.Use == Domain.FanUse.Vent ? with.Headspace.FanThroughMesh.UseSi() * fan.Flow.Si : 0,
                MistCelsius = design.Design.Room?.Temperature is { } t
                    ? t.Si - 273.15
                    : with.Water.RoomAir.Use(),
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
