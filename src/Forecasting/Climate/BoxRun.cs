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

    /// <summary>Between steps of the floor nothing changes faster than an hour.</summary>
    private static readonly StepControl Hourly = StepControl.Planning with
    {
        FirstStepSeconds = 3600,
        LongestStepSeconds = 3600,
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

    /// <summary>Date from which a design is run: its planting, or a Monday of our own.</summary>
    public static DateOnly FirstDay(CheckedDesign design) => design.Design.Planted ?? NoDate;

    /// <summary>The run of a design; null where its floor has no curve.</summary>
    /// <param name="setup">The design made ready.</param>
    /// <param name="first">Date at whose 00:00 it starts.</param>
    /// <param name="change">What is changed.</param>
    public static BoxRun? From(BoxSetup setup, DateOnly first, ClimateChange? change = null)
    {
        var how = change ?? ClimateChange.None;
        if (!setup.Box.IsBuildable || setup.Floor is not { } plain)
        {
            return null;
        }

        var (design, layers, headspace) = (setup.Design, setup.Layers, setup.Headspace);
        var floor = plain.With(design, layers, how.Soil);
        var surfaces = BoxSurfaces.Of(design, setup.Box, layers, headspace);
        var openings = new OpeningSet(BoxOpenings.Of(design, setup.Box));
        var laws = new BoxLaws(
            surfaces.Places,
            openings.Tabulated(),
            headspace.Volume.Si,
            (how.Convection, how.AirFlow),
            surfaces.Shape.Pascals
        );
        var room = RoomClimate.Of(design, first, how);
        var air = new HeadspaceModel(surfaces.Shape, laws);
        var coupled = new SimulationSetup
        {
            Air = air,
            Water = floor.Model(Hourly),
            Ground = new GroundSurface(
                floor.Columns.Columns,
                floor.LitterMeters,
                floor.LitterDepthMeters / HeadspacePolicy.LitterDiffusion
            ),
            FloorSquareMeters = floor.Columns.AreaSquareMeters,
            Room = room.At,
            Outside = Outside(design, surfaces, room),
            Day = DayParts.Of(design, surfaces, setup.Shares, how),
            GroundPlace = surfaces.Ground,
            LeafPlace = surfaces.Leaves,
            Stomata = new Stomata(HeadspacePolicy.LitStomata, HeadspacePolicy.DarkStomata),
            Mat = design.Design.Heating is { } mat ? new HeatMat(mat.Watts.Si, Target(mat)) : null,
            Drain = HandDrain(floor, how.IsDrained),
            Held = Held(design, headspace),
        };
        var start = room.At(0);
        return new BoxRun
        {
            Setup = coupled,
            Start = new SimulationState(air.Even(start.Celsius, 0.8), new WaterState(floor.Columns.Fresh, 0)),
            Surfaces = surfaces,
            Floor = floor.Columns,
            First = first,
        };
    }

    /// <summary>Runs it.</summary>
    /// <param name="days">Days.</param>
    /// <param name="progress">Told the hours done.</param>
    /// <param name="cancel">Cancels.</param>
    public SimulationResult Through(
        int days,
        Action<int>? progress = null,
        CancellationToken cancel = default
    ) => Simulation.Run(Setup, Start, 24 * days, progress, cancel);

    private static double? Target(Heating mat) =>
        mat.Thermostat
            ? mat.Target is { } target
                ? target.Si - Constants.ZeroCelsiusKelvin
                : HeadspacePolicy.ThermostatCelsius
            : null;

    private static HeldHeadspace? Held(CheckedDesign design, AirSpace headspace) =>
        design.Design.Headspace is { Hold: { } hold }
            ? new HeldHeadspace(
                hold.Air.Si - Constants.ZeroCelsiusKelvin,
                Math.Clamp(hold.Humidity.Si, 0, 1),
                hold.AirChanges.Si,
                headspace.Volume.Si,
                design.Design.Plants.Any(p => !p.Mounted && p.Count > 0) ? WaterPolicy.LeafShare.Si : 0
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
