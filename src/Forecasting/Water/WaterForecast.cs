using System.Collections.Immutable;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Forecasting.Climate;
using Litterfall.Forecasting.Coefficients;
using Litterfall.Forecasting.Floor;
using Litterfall.Physics.Soil;

namespace Litterfall.Forecasting.Water;

/// <summary>One draining by hand.</summary>
/// <param name="Day">Days from planting.</param>
/// <param name="Liters">What it took out, L.</param>
public readonly record struct DrainEvent(double Day, double Liters);

/// <summary>The floor at the end of a day.</summary>
/// <param name="Day">Days from planting.</param>
/// <param name="LevelMeters">Free water over the base, m.</param>
/// <param name="LeastAir">Least air-filled porosity at root depth over all zones, m³/m³.</param>
/// <param name="CrewHeadMeters">Driest head a centimeter below the soil surface, m.</param>
/// <param name="LitterMeters">Water in the leaves, m.</param>
public readonly record struct FloorDay(
    double Day,
    double LevelMeters,
    double LeastAir,
    double CrewHeadMeters,
    double LitterMeters
)
{
    /// <summary>Air-filled porosity at root depth in each zone of the floor, m³/m³.</summary>
    public ImmutableArray<double> RootAir { get; init; } = [];

    /// <summary>Head at root depth in each zone, m.</summary>
    public ImmutableArray<double> RootHeadMeters { get; init; } = [];

    /// <summary>Air-filled porosity where <see cref="CrewHeadMeters"/> is told, m³/m³.</summary>
    public double CrewAir { get; init; } = 1.0;
}

/// <summary>
/// The water of the floor from planting on, day by day, with the mist and the vapor of a day spread evenly
/// over it: what counts in the reservoir is their sum. Water is drawn off by hand at the highest allowed
/// level, where the design has a way to.
/// </summary>
public sealed record WaterForecast
{
    private const double SecondsPerDay = 86400;
    private const double LitersPerCubicMeter = 1000;
    private const double GramsPerCubicMeter = 1e6;

    /// <summary>Time is cut more coarsely than for pulses: nothing changes within a day.</summary>
    private static readonly StepControl Daily = StepControl.Planning with
    {
        FirstStepSeconds = 1800,
        ErrorTolerance = 2e-3,
        LongestStepSeconds = SecondsPerDay,
    };

    /// <summary>The floor.</summary>
    public required FloorColumns Floor { get; init; }

    /// <summary>The days, from planting.</summary>
    public required ImmutableArray<FloorDay> Days { get; init; }

    /// <summary>Drainings by hand.</summary>
    public required ImmutableArray<DrainEvent> Drains { get; init; }

    /// <summary>Day the level first stands at its highest allowed height; null when it does not.</summary>
    public double? FirstDrainDay { get; init; }

    /// <summary>Day the level reaches the barrier if nobody drains; null when it does not.</summary>
    public double? BarrierDay { get; init; }

    /// <summary>Misted less all that left and all that is stored, over the whole forecast, g.</summary>
    public double LedgerErrorGrams { get; init; }

    /// <summary>Run off over the surface, L: more water than floor and box hold.</summary>
    public double RunOffLiters { get; init; }

    /// <summary>Figures of the coefficients it is made with.</summary>
    public ImmutableArray<Figure> Coefficients { get; init; } = [];

    /// <summary>Why the numbers did not come out; null when they did.</summary>
    public ColumnStop? StoppedEarly { get; init; }

    /// <summary>
    /// The forecast of a design; null when its floor has no curve or nothing says how much comes in.
    /// </summary>
    /// <param name="setup">The design made ready.</param>
    /// <param name="balance">Water of a day.</param>
    public static WaterForecast? From(BoxSetup setup, WaterBalance balance)
    {
        var with = ModelCoefficients.Of(setup.Design);
        return balance.Misted is not null && setup.FloorWith(with) is { } floor
            ? new Run(setup.Design, balance, (floor, with.Water), setup.Cancel).Through(WaterPolicy.Days) with
            {
                Coefficients = with.Used,
            }
            : null;
    }

    /// <summary>
    /// Day of the first drain over the ranges of what nobody measured: conductivity, α, squeeze wetness. Null
    /// where it never comes.
    /// </summary>
    /// <param name="setup">The design made ready.</param>
    /// <param name="balance">Water of a day.</param>
    public (double? Low, double? High)? FirstDrainBand(BoxSetup setup, WaterBalance balance)
    {
        if (!balance.Gains || balance.PerLevel is null)
        {
            return null;
        }

        var with = ModelCoefficients.Of(setup.Design).Water;
        var changes = Changes(with).ToArray();
        var days = new double?[changes.Length + 1];
        days[^1] = FirstDrainDay;
        var options = new ParallelOptions { CancellationToken = setup.Cancel };
        Parallel.For(0, changes.Length, options, i =>
            days[i] = new Run(
                setup.Design,
                balance,
                (setup.Floor!.With(setup.Design, setup.Layers, changes[i], with), with),
                setup.Cancel
            ).FirstDrain(WaterPolicy.Days)
        );
        return (days.Min(), days.Any(d => d is null) ? null : days.Max());
    }

    private static CurveChange[] Changes(FloorWaterCoefficients with)
    {
        var (ks, alpha, squeeze) = (
            with.Conductivity.Range!.Value,
            with.Alpha.Range!.Value,
            with.Squeeze.Range!.Value
        );
        return
        [
            new(ks.High, 1, 0),
            new(ks.Low, 1, 0),
            new(1, alpha.High, 0),
            new(1, alpha.Low, 0),
            new(1, 1, Unit.Percent.ToSiValue(squeeze.High)),
            new(1, 1, Unit.Percent.ToSiValue(squeeze.Low)),
        ];
    }

    private sealed class Run
    {
        private readonly FloorColumns floor;
        private readonly FloorWaterCoefficients with;
        private readonly WaterModel model;
        private readonly SurfaceForcing forcing;
        private readonly double limitMeters;
        private readonly bool drainsByHand;
        private readonly CancellationToken cancel;

        public Run(
            CheckedDesign design,
            WaterBalance balance,
            (FloorSetup Floor, FloorWaterCoefficients With) of,
            CancellationToken cancel
        )
        {
            this.cancel = cancel;
            floor = of.Floor.Columns;
            with = of.With;
            drainsByHand = of.Floor.IsDrainedByHand;
            limitMeters = of.Floor.HighestLevelMeters;
            model = of.Floor.Model(Daily);
            forcing = Forcing(design, balance);
        }

        /// <summary>Every day up to the horizon, drained by hand where the design can be.</summary>
        public WaterForecast Through(int days)
        {
            var state = new WaterState(floor.Fresh, 0);
            var kept = ImmutableArray.CreateBuilder<FloorDay>(days + 1);
            var drains = ImmutableArray.CreateBuilder<DrainEvent>();
            kept.Add(Record(state));
            double? first = null;
            double balanceError = 0;
            double runOff = 0;
            while (kept.Count <= days)
            {
                var stop = drainsByHand || first is null ? limitMeters : double.PositiveInfinity;
                var (ends, whole) = model.Course(state, forcing, Midnights(kept.Count, days), stop, cancel);
                foreach (var end in ends)
                {
                    kept.Add(Record(end) with { Day = kept.Count });
                }

                state = whole.State;
                balanceError += whole.MassBalanceErrorMeters;
                runOff += whole.RunOffMeters;
                if (whole.StoppedEarly is { } early)
                {
                    return Outcome(kept, drains, first, (balanceError, runOff)) with { StoppedEarly = early };
                }

                if (whole.ReachedSeconds is { } reached)
                {
                    first ??= reached / SecondsPerDay;
                    if (drainsByHand)
                    {
                        var drawn = model.DrawDown(state, 0, cancel);
                        state = drawn.State;
                        balanceError += drawn.MassBalanceErrorMeters;
                        drains.Add(new(reached / SecondsPerDay, Liters(drawn.DrainedMeters)));
                    }

                    while (kept.Count <= days && state.Column.Seconds >= (kept.Count * SecondsPerDay) - 1)
                    {
                        kept.Add(Record(state) with { Day = kept.Count });
                    }
                }
            }

            return Outcome(kept, drains, first, (balanceError, runOff));
        }

        /// <summary>Day of the first drain, or null within the horizon.</summary>
        public double? FirstDrain(int days) => Reaches(limitMeters, days);

        private double? Reaches(double levelMeters, int days) =>
            double.IsInfinity(levelMeters)
                ? null
                : model
                    .Course(new WaterState(floor.Fresh, 0), forcing, Midnights(1, days), levelMeters, cancel)
                    .Whole.ReachedSeconds / SecondsPerDay;

        private static double[] Midnights(int from, int to) =>
            [.. Enumerable.Range(from, to - from + 1).Select(day => day * SecondsPerDay)];

        private WaterForecast Outcome(
            ImmutableArray<FloorDay>.Builder days,
            ImmutableArray<DrainEvent>.Builder drains,
            double? first,
            (double BalanceError, double RunOff) water
        ) =>
            new()
            {
                Floor = floor,
                Days = days.ToImmutable(),
                Drains = drains.ToImmutable(),
                FirstDrainDay = first,
                BarrierDay = first is null ? null : Reaches(floor.DrainageMeters, days.Count - 1),
                LedgerErrorGrams = Math.Abs(water.BalanceError) * floor.AreaSquareMeters * GramsPerCubicMeter,
                RunOffLiters = Liters(water.RunOff),
            };

        private double Liters(double meters) => meters * floor.AreaSquareMeters * LitersPerCubicMeter;

        private FloorDay Record(WaterState state)
        {
            var zones = floor.Columns.Zones;
            var heads = ImmutableArray.CreateBuilder<double>(zones);
            var air = ImmutableArray.CreateBuilder<double>(zones);
            var driest = 0.0;
            for (var zone = 0; zone < zones; zone++)
            {
                var surface = floor.MossMeters[zone];
                var soil = floor.SoilMeters[zone];
                var crew = surface + Math.Min(with.CrewDepth.UseSi(), 0.5 * soil);
                heads.Add(HeadAt(state, zone, surface + Math.Min(with.RootDepth.UseSi(), 0.5 * soil)));
                air.Add(floor.Soil.AirContent(heads[zone]));
                driest = Math.Min(driest, HeadAt(state, zone, crew));
            }

            return new FloorDay(
                state.Column.Seconds / SecondsPerDay,
                WaterModel.LevelMeters(state),
                air.Min(),
                driest,
                state.LitterMeters
            )
            {
                RootAir = air.MoveToImmutable(),
                RootHeadMeters = heads.MoveToImmutable(),
                CrewAir = floor.Soil.AirContent(driest),
            };
        }

        /// <summary>Head at a depth, by straight line between nodes.</summary>
        private double HeadAt(WaterState state, int zone, double depth)
        {
            var columns = floor.Columns;
            for (var node = 1; node < columns.Nodes; node++)
            {
                var i = (node * columns.Zones) + zone;
                if (columns.DepthMeters[i] >= depth)
                {
                    var above = columns.DepthMeters[i - columns.Zones];
                    var share = (depth - above) / (columns.DepthMeters[i] - above);
                    var heads = state.Column.HeadMeters;
                    return heads[i - columns.Zones] + (share * (heads[i] - heads[i - columns.Zones]));
                }
            }

            return state.Column.HeadMeters[^1];
        }

        private SurfaceForcing Forcing(CheckedDesign design, WaterBalance balance)
        {
            var area = floor.AreaSquareMeters;
            var rooted = design.Design.Plants.Any(p => !p.Mounted && p.Count > 0);
            var leaves = rooted ? with.LeafShare.UseSi() : 0;
            var basins = balance.Basins;
            var open = basins is null ? 0 : basins.Caught.Si - basins.Overflow.Si;
            var rain = (balance.Misted!.Si - open) / area / SecondsPerDay;
            var vapor = (balance.Vented.Si - (basins?.Evaporated.Value.Si ?? 0)) / area / SecondsPerDay;

            // Where basins dry by more than is vented, the rest falls on the ground as dew.
            return new SurfaceForcing(
                rain + Math.Max(0, -vapor),
                Math.Max(0, vapor) * (1 - leaves),
                Math.Max(0, vapor) * leaves
            );
        }
    }
}
