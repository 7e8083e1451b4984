using System.Collections.Immutable;
using System.Runtime.InteropServices;
using Litterfall.Physics.Air;
using Litterfall.Physics.Soil;

namespace Litterfall.Physics.Coupling;

/// <summary>
/// A box through time: lamps, mist and room drive the headspace, the headspace takes water from the ground
/// and the leaves and gives it back, the floor moves it, and what leaves is booked. Air and floor are joined
/// each hour: within it the ground's readiness to give water is held, and each kilogram that crosses is
/// booked on both sides. What the ground could not deliver it owes, gives next, and gives off less.
/// </summary>
public sealed partial class Simulation
{
    private const double HourSeconds = 3600.0;
    private const double DaySeconds = 86400.0;
    private const double ShortSeconds = 60.0;

    // Own choice: a usual month takes 10 to 20 steps of the air an hour, an open mesh top hundreds; fog that
    // no box of its size holds takes ten thousand, and would run for minutes.
    private const int MostAirSteps = 20_000;
    private const int MostAirStepsAnHour = 1_200;
    private const string TooManySteps = "the air of the box changes too fast to be followed";
    private const double KilogramsPerCubicMeter = Constants.WaterDensity;
    private readonly SimulationSetup setup;
    private readonly WaterRun water;
    private readonly HeadspaceRun headspace;
    private readonly ImmutableArray<SimulationHour>.Builder hours =
        ImmutableArray.CreateBuilder<SimulationHour>();
    private readonly ImmutableArray<SimulationEvent>.Builder events =
        ImmutableArray.CreateBuilder<SimulationEvent>();
    private SimulationState state;
    private WaterLedger ledger = new();
    private HeatLedger heat;
    private double airBalanceError;
    private double leafOpen = 1.0;
    private bool isOverBarrier;
    private DayPart? lastPart;
    private double nextStepSeconds;
    private string? stopped;
    private int airSteps;
    private int mostAirSteps;

    private Simulation(SimulationSetup setup, SimulationState start)
    {
        this.setup = setup;
        state = start;
        water = new WaterRun(setup.Water, start.Water, setup.Drain.AtMeters);
        headspace = setup.Air.Begin(start.Air, setup.Control);
        startHour = (int)Math.Round(start.Air.Seconds / HourSeconds);
        byHand = [.. setup.ByHand.OrderBy(h => h.Hour).SkipWhile(h => h.Hour < startHour - HourRounding)];
    }

    /// <summary>Runs a box.</summary>
    /// <param name="setup">The box.</param>
    /// <param name="start">
    /// Its state at 00:00 of the first day, or at the end of another run, which goes on.
    /// </param>
    /// <param name="hourCount">Hours to run.</param>
    /// <param name="progress">Told the hours done; may be null.</param>
    /// <param name="cancel">Cancels between steps.</param>
    public static SimulationResult Run(
        SimulationSetup setup,
        SimulationState start,
        int hourCount,
        Action<int>? progress = null,
        CancellationToken cancel = default
    )
    {
        var run = new Simulation(setup, start)
        {
            mostAirSteps = MostAirSteps + (MostAirStepsAnHour * hourCount),
        };
        run.hours.Add(
            run.Record(new HourOfAir(setup.Air.Shape.Surfaces.Length), 0.0, run.startHour * HourSeconds)
        );
        int last = run.startHour + hourCount;
        for (int hour = run.startHour; hour < last && run.stopped is null;)
        {
            int end = run.BlockEnd(hour, last);
            run.Step(hour, end, cancel);
            hour = end;
            progress?.Invoke(hour - run.startHour);
        }

        return run.Result(start);
    }

    /// <summary>
    /// Hours, one as a rule: forcing, light and air, then water, then what was owed, then the record.
    /// </summary>
    private void Step(int fromHour, int toHour, CancellationToken cancel)
    {
        double untilSeconds = toHour * HourSeconds;
        double before = WaterModel.LevelMeters(state.Water);
        var drawn = TakeByHand(fromHour, cancel);
        var airs = AirOf(fromHour, toHour, cancel);
        double poured = Pour(airs[0], fromHour);
        double rain = airs.Sum(a => a.ToGround + a.Overflow) + poured + state.PendingKilograms;
        double evaporation = airs.Sum(a => a.FromGround) + state.GroundOwedKilograms;
        double uptake = airs.Sum(a => a.FromLeaves) + state.LeafOwedKilograms;
        if (evaporation < 0.0)
        {
            rain -= evaporation;
            evaporation = 0.0;
        }

        var floor = AdvanceFloor(drawn, (rain, evaporation, Math.Max(uptake, 0.0)), untilSeconds, cancel);
        state = state with
        {
            GroundOwedKilograms = evaporation - floor.Evaporated,
            LeafOwedKilograms = uptake - floor.Transpired,
            PendingKilograms = rain - floor.Rain + floor.Missed,
        };
        leafOpen = uptake > 0.0 ? Math.Clamp(floor.Transpired / uptake, 0.02, 1.0) : 1.0;
        Book(airs, floor);
        AddRecords(airs, floor.Drained, (fromHour, before), untilSeconds);
    }

    /// <summary>
    /// Basins lose what dries and gain mist; over the edge it runs to the ground, and at midnight someone
    /// fills them up.
    /// </summary>
    private void FillBasins(HourOfAir air, double untilSeconds)
    {
        double lack = state.BasinLackKilograms + air.FromOpenWater - air.Caught;
        air.Overflow = Math.Max(0.0, -lack);
        lack = Math.Max(0.0, lack);
        if (Math.Abs(Math.IEEERemainder(untilSeconds, DaySeconds)) < 1.0)
        {
            air.ToppedUp += lack;
            lack = 0.0;
        }

        state = state with { BasinLackKilograms = lack };
    }

    /// <summary>What ground and leaves can give at the present state.</summary>
    private ImmutableArray<WaterSupply> Supply()
    {
        var supply = new WaterSupply[setup.Air.Shape.Surfaces.Length];
        double celsius = state.Air.Celsius[Place(setup.GroundPlace)];
        double owed = Math.Max(0.0, state.GroundOwedKilograms);
        supply[setup.GroundPlace] = setup.Ground.At(
            state.Water,
            celsius,
            owed / KilogramsPerCubicMeter / setup.FloorSquareMeters
        );
        if (setup.OpenWaterPlace is { } open)
        {
            supply[open] = WaterSupply.Free;
        }

        return ImmutableArray.Create(supply);
    }

    /// <summary>The headspace through an hour, from switching to switching.</summary>
    private HourOfAir AdvanceAir(
        ImmutableArray<WaterSupply> supply,
        double untilSeconds,
        CancellationToken cancel
    )
    {
        var hour = new HourOfAir(setup.Air.Shape.Surfaces.Length);
        while (state.Air.Seconds < untilSeconds && stopped is null)
        {
            var (part, end) = PartAt(state.Air.Seconds);
            end = Math.Min(end, untilSeconds);
            var drive = part.Drive with
            {
                Room = setup.Room,
                Supply = setup.LeafPlace is { } leaf
                    ? supply.SetItem(leaf, new WaterSupply(1.0, LeafResistance(part.IsLit)))
                    : supply,
                OutsideOffsetKelvin = setup.Outside?.Invoke(state.Air.Seconds) ?? [],
                BackWatts = Mat(part.Drive.BackWatts),
            };
            var before = state.Air;
            bool isSame = lastPart is { } last && part.Drive.IsSwitchedAs(last.Drive);
            var span = headspace.Advance(drive, end, isSame ? nextStepSeconds : null, cancel);
            lastPart = part;
            nextStepSeconds = span.NextStepSeconds;
            state = state with { Air = span.State };
            airSteps += span.Totals.Steps;
            stopped =
                span.StoppedEarly is { } why ? StopReason(span.State.Seconds, why)
                : airSteps > mostAirSteps ? StopReason(span.State.Seconds, TooManySteps)
                : null;
            hour.Add(setup, before, span, (part.MistKilogramsPerSecond, drive.FogKilogramsPerSecond));
        }

        airBalanceError = Math.Max(airBalanceError, Math.Abs(hour.BalanceError));
        return hour;
    }

    /// <summary>An hour of air held constant: it takes the difference of vapor at each air change.</summary>
    private HourOfAir Hold(HeldHeadspace held, double untilSeconds)
    {
        var hour = new HourOfAir(setup.Air.Shape.Surfaces.Length);
        double from = state.Air.Seconds;
        double inside =
            held.Humidity
            * SaturationTable.At(held.Celsius).Pascals
            / (MoistAir.VaporGasConstant * (held.Celsius + Constants.ZeroCelsiusKelvin));
        while (state.Air.Seconds < untilSeconds)
        {
            var (part, end) = PartAt(state.Air.Seconds);
            end = Math.Min(end, untilSeconds);
            double seconds = end - state.Air.Seconds;
            var room = setup.Room(state.Air.Seconds + (0.5 * seconds));
            double outside =
                MoistAir.VaporPressure(room.HumidityRatio, setup.Air.Shape.Pascals)
                / (MoistAir.VaporGasConstant * (room.Celsius + Constants.ZeroCelsiusKelvin));
            double vented =
                held.AirChangesPerSecond * held.VolumeCubicMeters * Math.Max(0.0, inside - outside) * seconds;
            hour.Hold(
                held,
                setup.Air.Shape.DryAirKilograms,
                (vented, part.MistKilogramsPerSecond * seconds),
                seconds
            );
            state = state with { Air = state.Air with { Seconds = end } };
        }

        hour.Seconds = untilSeconds - from;
        return hour;
    }

    /// <summary>
    /// The floor through an hour: rain, evaporation and uptake in kg, evenly; drawn off where it is full.
    /// </summary>
    private HourOfFloor AdvanceFloor(
        HourOfFloor floor,
        (double Rain, double Evaporation, double Uptake) asked,
        double untilSeconds,
        CancellationToken cancel
    )
    {
        double per = KilogramsPerCubicMeter * setup.FloorSquareMeters;
        while (untilSeconds - state.Water.Column.Seconds > ShortSeconds && stopped is null)
        {
            double seconds = untilSeconds - state.Water.Column.Seconds;
            var forcing = new SurfaceForcing(
                (asked.Rain - floor.Rain) / per / seconds,
                (asked.Evaporation - floor.Evaporated) / per / seconds,
                (asked.Uptake - floor.Transpired) / per / seconds
            );
            var step = water.Step(forcing, seconds, cancel);
            Take(floor, step, per);
            if (step.ReachedSeconds is { } reached && stopped is null)
            {
                var drawn = water.DrawDown(0.0, cancel);
                Take(floor, drawn, per);
                events.Add(new(reached / HourSeconds, "drain", drawn.DrainedMeters * per));
            }
        }

        bool isOver = WaterModel.LevelMeters(state.Water) >= setup.Drain.BarrierMeters;
        if (isOver && !isOverBarrier)
        {
            events.Add(new(state.Water.Column.Seconds / HourSeconds, "barrier", 0.0));
        }

        isOverBarrier = isOver;
        return floor;
    }

    private void Take(HourOfFloor floor, WaterStep step, double kilogramsPerMeter)
    {
        double litter = step.State.LitterMeters - state.Water.LitterMeters;
        double stored =
            step.RainMeters
            - step.VaporMeters
            - step.DrainedMeters
            - step.RunOffMeters
            - step.MassBalanceErrorMeters
            - litter;
        state = state with { Water = step.State };
        floor.Rain += step.RainMeters * kilogramsPerMeter;
        floor.Evaporated += step.EvaporatedMeters * kilogramsPerMeter;
        floor.Transpired += step.TranspiredMeters * kilogramsPerMeter;
        floor.Drained += step.DrainedMeters * kilogramsPerMeter;
        floor.RunOff += step.RunOffMeters * kilogramsPerMeter;
        floor.Missed += step.MassBalanceErrorMeters * kilogramsPerMeter;
        floor.Litter += litter * kilogramsPerMeter;
        floor.Stored += stored * kilogramsPerMeter;
        stopped = step.StoppedEarly is { } early ? StopReason(early.Seconds, early.Reason) : stopped;
    }

    private void Book(ReadOnlySpan<HourOfAir> airs, HourOfFloor floor)
    {
        foreach (var air in airs)
        {
            heat += air.Heat;
            ledger = ledger with
            {
                Misted = ledger.Misted + air.Misted,
                Fogged = ledger.Fogged + air.Fogged,
                ToppedUp = ledger.ToppedUp + air.ToppedUp,
                Vented = ledger.Vented + air.Vented,
                Dripped = ledger.Dripped + air.Dripped,
            };
        }

        ledger = ledger with
        {
            Drained = ledger.Drained + floor.Drained,
            RunOff = ledger.RunOff + floor.RunOff,
            Floor = ledger.Floor + floor.Stored,
            Litter = ledger.Litter + floor.Litter,
        };
    }

    /// <summary>Part of the day at a time, and when it ends, s from the start.</summary>
    private (DayPart Part, double EndSeconds) PartAt(double seconds)
    {
        double day = Math.Floor((seconds + 1e-6) / DaySeconds) * DaySeconds;
        double clock = seconds - day + 1e-6;
        int at = setup.Day.Length - 1;
        while (at > 0 && setup.Day[at].FromSeconds > clock)
        {
            at--;
        }

        double end = at + 1 < setup.Day.Length ? setup.Day[at + 1].FromSeconds : DaySeconds;
        return (setup.Day[at], day + end);
    }

    /// <summary>
    /// Stomata on one side of leaves whose both sides count as area, so that 1/k of the other side is added.
    /// </summary>
    private double LeafResistance(bool isLit)
    {
        double open = isLit ? setup.Stomata.LitMetersPerSecond * leafOpen : 0.0;
        return setup.Stomata.BoundarySecondsPerMeter
            + (2.0 / Math.Max(1e-9, open + setup.Stomata.DarkMetersPerSecond));
    }

    /// <summary>Heat of the mat under the ground: full a half kelvin below its target, none above.</summary>
    private ImmutableArray<double> Mat(ImmutableArray<double> back)
    {
        if (setup.Mat is not { } mat)
        {
            return back;
        }

        double ground = state.Air.Celsius[Place(setup.GroundPlace)];
        double share = mat.TargetCelsius is { } target ? Math.Clamp(target + 0.5 - ground, 0.0, 1.0) : 1.0;
        var watts = new double[setup.Air.Shape.Surfaces.Length];
        watts[setup.GroundPlace] = share * mat.Watts;
        return ImmutableArray.Create(watts);
    }

    private int Place(int surface)
    {
        int place = 0;
        for (int i = 0; i < surface; i++)
        {
            place += setup.Air.Shape.Surfaces[i].CapacityJoulesPerKelvin.Length;
        }

        return place;
    }

    /// <summary>The record of an hour.</summary>
    private SimulationHour Record(HourOfAir air, double drained, double seconds)
    {
        var shape = setup.Air.Shape;
        double celsius = setup.Held?.Celsius ?? state.Air.AirCelsius;
        double vapor = setup.Held is { } held
            ? held.Humidity * SaturationTable.At(celsius).Pascals
            : MoistAir.VaporPressure(state.Air.HumidityRatio, shape.Pascals);
        double saturated = SaturationTable.At(celsius).Pascals;
        double dew = MoistAir.DewPoint(vapor);
        return new SimulationHour
        {
            Hour = seconds / HourSeconds,
            AirCelsius = celsius,
            AirRange = air.Seconds > 0.0 ? air.AirRange : (celsius, celsius),
            Humidity = vapor / saturated,
            HumidityRange = air.Seconds > 0.0 ? air.HumidityRange : (vapor / saturated, vapor / saturated),
            HumidityMean = air.Seconds > 0.0 ? air.HumiditySeconds / air.Seconds : vapor / saturated,
            AirMean = air.Seconds > 0.0 ? air.AirCelsiusSeconds / air.Seconds : celsius,
            DeficitPascals = saturated - vapor,
            GroundCelsius = state.Air.Celsius[Place(setup.GroundPlace)],
            RoomCelsius = setup.Room(seconds).Celsius,
            Fogged = air.Shares(air.FoggedSeconds),
            Wet = air.Shares(air.WetSeconds),
            DewMarginKelvin = DewMargins(dew),
            AirChanges = air.AirKilograms / shape.DryAirKilograms,
            MistedKilograms = air.Misted + air.Fogged,
            VentedKilograms = air.Vented,
            EvaporatedKilograms = air.FromGround + air.FromLeaves + air.FromOpenWater,
            OpenWaterKilograms = air.FromOpenWater,
            CaughtKilograms = air.Caught,
            ToppedUpKilograms = air.ToppedUp,
            OverflowKilograms = air.Overflow,
            CondensedKilograms = air.Condensed,
            DrainedKilograms = drained,
            LevelMeters = WaterModel.LevelMeters(state.Water),
            WaterContent = WaterContents(),
            HeadMeters = state.Water.Column.HeadMeters,
            LitterMeters = state.Water.LitterMeters,
        };
    }

    private ImmutableArray<double> DewMargins(double dewCelsius)
    {
        var margins = new double[setup.Air.Shape.Surfaces.Length];
        for (int i = 0; i < margins.Length; i++)
        {
            margins[i] = state.Air.Celsius[Place(i)] - dewCelsius;
        }

        return ImmutableCollectionsMarshal.AsImmutableArray(margins);
    }

    private ImmutableArray<double> WaterContents()
    {
        var columns = setup.Water.Columns;
        var contents = new double[columns.Nodes];
        for (int i = 0; i < contents.Length; i++)
        {
            contents[i] = columns.WaterContent(state.Water.Column, i, 0);
        }

        return ImmutableCollectionsMarshal.AsImmutableArray(contents);
    }

    private SimulationResult Result(SimulationState start)
    {
        double Films(SimulationState s, bool ofLeaves) =>
            s.Air.FilmKilograms.Where((_, i) => (i == setup.LeafPlace) == ofLeaves).Sum();
        return new SimulationResult
        {
            Hours = hours.ToImmutable(),
            Events = events.ToImmutable(),
            State = state,
            Water = ledger with
            {
                Films = Films(state, false) - Films(start, false),
                Leaves = Films(state, true) - Films(start, true),
                Air = setup.Held is null
                    ? setup.Air.Shape.DryAirKilograms * (state.Air.HumidityRatio - start.Air.HumidityRatio)
                    : 0.0,
                Owed =
                    state.GroundOwedKilograms
                    + state.LeafOwedKilograms
                    - start.GroundOwedKilograms
                    - start.LeafOwedKilograms,
                Pending = state.PendingKilograms - start.PendingKilograms,
                Basins = start.BasinLackKilograms - state.BasinLackKilograms,
            },
            Heat = heat,
            AirBalanceErrorKilograms = airBalanceError,
            StoppedEarly = stopped,
            AirSteps = airSteps,
        };
    }

    private static string StopReason(double seconds, string why) =>
        FormattableString.Invariant($"after {seconds / HourSeconds:0.##} hours: {why}");
}
