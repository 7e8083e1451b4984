using System.Collections.Immutable;
using Litterfall.Domain;
using Litterfall.Domain.Checking;
using Litterfall.Forecasting.Coefficients;
using Litterfall.Forecasting.Floor;
using Litterfall.Physics;
using Litterfall.Physics.Air;
using Litterfall.Physics.Coupling;
using Litterfall.Physics.Soil;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Forecasting.Climate;

/// <summary>
/// A design made ready for <see cref="Simulation"/>: its surfaces, openings, day, room and floor.
/// </summary>
public sealed record BoxRun
{
    private static readonly DateOnly NoDate = new(2026, 1, 5);

    /// <summary>Between exchanges of air and floor nothing changes, every hour as a rule.</summary>
    private static StepControl Steps(SimulationPace pace) =>
        StepControl.Planning with
        {
            FirstStepSeconds = 3600 * pace.FloorHours,
            LongestStepSeconds = 3600 * pace.FloorHours,
        };

    /// <summary>What runs.</summary>
    public required SimulationSetup Setup { get; init; }

    /// <summary>Where it starts.</summary>
    public required SimulationState Start { get; init; }

    /// <summary>The surfaces.</summary>
    public required BoxSurfaces Surfaces { get; init; }

    /// <summary>The floor.</summary>
    public required FloorColumns Floor { get; init; }

    /// <summary>First day.</summary>
    public required DateOnly First { get; init; }

    /// <summary>Coefficients it is made with; what was taken is noted there.</summary>
    public required ModelCoefficients With { get; init; }

    /// <summary>Date from which a design is run: its planting, or a Monday of our own.</summary>
    public static DateOnly FirstDay(CheckedDesign design) => design.Design.Planted ?? NoDate;

    /// <summary>The run of a design; null where its floor has no curve.</summary>
    /// <param name="setup">The design made ready.</param>
    /// <param name="first">Date at whose 00:00 it starts.</param>
    /// <param name="change">What is changed.</param>
    /// <param name="pace">How often air and floor exchange water; every hour if left out.</param>
    public static BoxRun? From(
        BoxSetup setup,
        DateOnly first,
        ClimateChange? change = null,
        SimulationPace? pace = null
    )
    {
        var usual = pace ?? SimulationPace.Hourly;
        var how = change ?? ClimateChange.None;
        var with = ModelCoefficients.Of(setup.Design);
        if (!setup.Box.IsBuildable || setup.FloorWith(with) is not { } plain)
        {
            return null;
        }

        var (design, layers, headspace) = (setup.Design, setup.Layers, setup.Headspace);
        var floor = plain.With(design, layers, how.Soil, with.Water);
        var surfaces = BoxSurfaces.Of(design, setup.Box, layers, headspace, with);
        var room = RoomClimate.Of(design, first, how, with);
        var laws = Laws(
            (design, with),
            BoxOpenings.Of(design, setup.Box, with),
            surfaces,
            headspace.Volume.Si,
            how
        );
        var air = new HeadspaceModel(surfaces.Shape, laws);
        var coupled = new SimulationSetup
        {
            Air = air,
            Water = floor.Model(Steps(usual)),
            Ground = Surface(floor, with),
            FloorSquareMeters = floor.Columns.AreaSquareMeters,
            Room = room.At,
            Outside = Outside(design, surfaces, room),
            Day = DayParts.Of(design, surfaces, setup.SharesWith(with), how, with),
            GroundPlace = surfaces.Ground,
            OpenWaterPlace = surfaces.OpenWater,
            LeafPlace = surfaces.Leaves,
            Stomata = surfaces.Leaves is null ? default : Leaf(with.Surface),
            Mat = design.Design.Heating is { } mat
                ? new HeatMat(mat.Watts.Si, Target(mat, with.Headspace))
                : null,
            Drain = HandDrain(floor, how.IsDrained),
            Held = Held(design, (setup.Box, headspace), how.HeldAir, with.Water),
            Pace = usual,
            Control = usual == SimulationPace.Hourly ? HeadspaceControl.Forecast : BriskAir,
        };
        return new BoxRun
        {
            Setup = coupled,
            Start = Begun(coupled, floor, with),
            Surfaces = surfaces,
            Floor = floor.Columns,
            First = first,
            With = with,
        };
    }

    private static SimulationState Begun(SimulationSetup setup, FloorSetup floor, ModelCoefficients with) =>
        new(
            setup.Air.Even(setup.Room(0).Celsius, with.Headspace.StartHumidity.UseSi()),
            new WaterState(floor.Columns.Fresh, 0)
        );

    // For many runs side by side: ten times the error of a step costs a hundredth of the water vented.
    private static readonly HeadspaceControl BriskAir = new(60, 3600, 0.2);

    private static GroundSurface Surface(FloorSetup floor, ModelCoefficients with)
    {
        var leaves = floor.LitterDepthMeters;
        var diffusion = with.Surface.LitterDiffusion;
        return new GroundSurface(
            floor.Columns.Columns,
            floor.LitterMeters,
            leaves / (leaves > 0 ? diffusion.UseSi() : diffusion.Unit.ToSiValue(diffusion.Number)),
            Skin(with.Air)
        );
    }

    private static BoxLaws Laws(
        (CheckedDesign Design, ModelCoefficients With) of,
        ImmutableArray<AirOpening> openings,
        BoxSurfaces surfaces,
        double cubicMeters,
        ClimateChange how
    )
    {
        var with = of.With;
        var set = new OpeningSet(openings, Openings(with.Air, openings.Any(o => o.IsLevel)));
        return new BoxLaws(
            surfaces.Places,
            set.Tabulated(),
            cubicMeters,
            (how.Convection * with.Headspace.Convection.Use(), how.AirFlow * with.Headspace.AirFlow.Use()),
            surfaces.Shape.Pascals,
            Exchange(with.Air, of.Design.Design.Fan is not null)
        );
    }

    private static OpeningExchange Openings(AirCoefficients with, bool anyLevel) =>
        new()
        {
            LevelExchange = anyLevel ? with.LevelExchange.Use() : with.LevelExchange.Number,
            FloodingShape = anyLevel ? with.FloodingShape.Use() : with.FloodingShape.Number,
            StillMeters = with.StillAir.UseSi(),
            Gusts = with.Gusts.Use(),
            DraughtMetersPerSecond = with.Draught.UseSi(),
        };

    private static BoxExchange Exchange(AirCoefficients with, bool hasFan) =>
        new()
        {
            Natural = new AlamdariHammond1983
            {
                WallLaminar = with.WallLaminar.Use(),
                WallTurbulent = with.WallTurbulent.Use(),
                LevelLaminar = with.LevelLaminar.Use(),
                LevelTurbulent = with.LevelTurbulent.Use(),
                LevelStable = with.LevelStable.Use(),
                Least = with.LeastConvection.UseSi(),
            },
            Plate = hasFan ? with.Plate.Use() : with.Plate.Number,
            LewisTwoThirds = with.LewisTwoThirds.Use(),
            LeastChangesPerSecond = with.LeastChanges.UseSi(),
        };

    private static DryingSkin Skin(AirCoefficients with) =>
        new()
        {
            WetResistance = with.SkinWet.UseSi(),
            Slope = with.SkinSlope.Use(),
            WetHeadMeters = with.SkinHead.UseSi(),
            Meters = with.SkinDepth.UseSi(),
            StillAirMetersPerSecond = with.GroundStillAir.UseSi(),
        };

    private static Stomata Leaf(SurfaceCoefficients with) =>
        new(with.LitStomata.UseSi(), with.DarkStomata.UseSi(), with.LeafStillAir.UseSi());

    /// <summary>Runs it.</summary>
    /// <param name="days">Days.</param>
    /// <param name="progress">Told the hours done.</param>
    /// <param name="cancel">Cancels.</param>
    public SimulationResult Through(
        int days,
        Action<int>? progress = null,
        CancellationToken cancel = default
    ) => Simulation.Run(Setup, Start, 24 * days, progress, cancel);

    private static double? Target(Heating mat, HeadspaceCoefficients with) =>
        mat.Thermostat
            ? mat.Target is { } target
                ? target.Si - Constants.ZeroCelsiusKelvin
                : with.Thermostat.Use()
            : null;

    private static HeldHeadspace? Held(
        CheckedDesign design,
        (BoxGeometry Box, AirSpace Air) of,
        double factor,
        FloorWaterCoefficients with
    ) =>
        design.Design.Headspace is { Hold: { } hold }
            ? new HeldHeadspace(
                hold.Air.Si - Constants.ZeroCelsiusKelvin,
                Math.Clamp(hold.Humidity.Si, 0, 1),
                factor * hold.AirChanges.Si,
                of.Air.Volume.Si,
                design.Design.Plants.Any(p => !p.Mounted && p.Count > 0) ? with.LeafShare.UseSi() : 0,
                WaterBasins.Share(design, of.Box)
            )
            : null;

    private static Func<double, ImmutableArray<double>>? Outside(
        CheckedDesign design,
        BoxSurfaces surfaces,
        RoomClimate room
    )
    {
        if (design.Design.Room?.Faces is null)
        {
            return null;
        }

        var sides = surfaces.Walls.Select(w => (w.Value, Facing: surfaces.FacingOf(w.Key))).ToList();
        if (surfaces.Lid is { } lid)
        {
            sides.Add((lid, surfaces.FacingOf(Side.Top)));
        }

        var count = surfaces.Shape.Surfaces.Length;
        return seconds =>
        {
            var offsets = new double[count];
            foreach (var (place, facing) in sides)
            {
                offsets[place] = room.Outside(facing, seconds);
            }

            return ImmutableArray.Create(offsets);
        };
    }

    private static HandDrain HandDrain(FloorSetup floor, bool isDrained)
    {
        var byHand = isDrained && floor.IsDrainedByHand && double.IsFinite(floor.HighestLevelMeters);
        return new HandDrain(
            byHand ? floor.HighestLevelMeters : double.PositiveInfinity,
            floor.Columns.DrainageMeters > 0 ? floor.Columns.DrainageMeters : double.PositiveInfinity
        );
    }
}
