using System.Collections.Immutable;
using Litterfall.Forecasting.Climate;
using Litterfall.Physics.Coupling;

namespace Litterfall.Running.Diagnosis.Trials;

/// <summary>How a tank might really run, against what its design says.</summary>
public enum Supposed
{
    /// <summary>As the design and the facts say.</summary>
    AsSet,

    /// <summary>Nozzles give half as much again.</summary>
    MoreMist,

    /// <summary>Nozzles give two and a half times as much.</summary>
    MuchMoreMist,

    /// <summary>A third of the air.</summary>
    LessAir,

    /// <summary>A tenth of the air.</summary>
    HardlyAir,

    /// <summary>Three times the air.</summary>
    MoreAir,

    /// <summary>Half of the mist.</summary>
    HalfMist,

    /// <summary>No mist.</summary>
    NoMist,

    /// <summary>The room is five kelvins warmer.</summary>
    WarmRoom,

    /// <summary>The room is five kelvins cooler.</summary>
    CoolRoom,
}

/// <summary>One run of the engine.</summary>
/// <param name="How">What was supposed.</param>
/// <param name="Result">What came out.</param>
public sealed record Trial(Supposed How, SimulationResult Result)
{
    /// <summary>Changes of each supposition; own choice, wide enough to be told apart.</summary>
    public static ClimateChange Change(Supposed how) =>
        (
            how switch
            {
                Supposed.MoreMist => ClimateChange.None with { Mist = 1.5 },
                Supposed.MuchMoreMist => ClimateChange.None with { Mist = 2.5 },
                Supposed.LessAir => Aired(ClimateChange.None, 0.33),
                Supposed.HardlyAir => Aired(ClimateChange.None, 0.1),
                Supposed.MoreAir => Aired(ClimateChange.None, 3),
                Supposed.HalfMist => ClimateChange.None with { Mist = 0.5 },
                Supposed.NoMist => ClimateChange.None with { Mist = 0 },
                Supposed.WarmRoom => ClimateChange.None with { RoomKelvin = 5 },
                Supposed.CoolRoom => ClimateChange.None with { RoomKelvin = -5 },
                _ => ClimateChange.None,
            }
        ) with
        {
            IsDrained = false,
        };

    /// <summary>A change with the air exchanged times a factor, computed or held.</summary>
    public static ClimateChange Aired(ClimateChange change, double factor) =>
        change with
        {
            AirFlow = change.AirFlow * factor,
            HeldAir = change.HeldAir * factor,
        };

    /// <summary>Level over the base at an hour of the run, mm.</summary>
    public double LevelMillimeters(double hour) => 1000.0 * At(hour).LevelMeters;

    /// <summary>The hour of the run nearest to a time.</summary>
    public SimulationHour At(double hour) =>
        Result.Hours[Math.Clamp((int)Math.Round(hour), 0, Result.Hours.Length - 1)];

    /// <summary>Hours of the last days of the run.</summary>
    public IEnumerable<SimulationHour> LastDays(int days) => Result.Hours.TakeLast(24 * days);
}

/// <summary>All runs of a case.</summary>
/// <param name="First">Day at whose midnight they start.</param>
/// <param name="Days">Days they run.</param>
/// <param name="StartMillimeters">Level at the start, mm over the base.</param>
/// <param name="Runs">The runs that came out.</param>
public sealed record TrialSet(DateOnly First, int Days, double StartMillimeters, ImmutableArray<Trial> Runs)
{
    /// <summary>The run as set.</summary>
    public Trial AsSet => Runs[0];

    /// <summary>A run; the one as set where that supposition did not come out.</summary>
    public Trial Find(Supposed how) => Runs.FirstOrDefault(r => r.How == how) ?? AsSet;

    /// <summary>Hours from the start of the runs.</summary>
    public double HoursAt(DateTime at) => (at - First.ToDateTime(TimeOnly.MinValue)).TotalHours;

    /// <summary>Mean humidity of the last days as set, %.</summary>
    public double LastHumidity() => 100.0 * AsSet.LastDays(3).Average(h => h.HumidityMean);

    /// <summary>mL that are misted a day, as set.</summary>
    public double MistedPerDay => 1e3 * AsSet.Result.Hours.Sum(h => h.MistedKilograms) / Days;

    /// <summary>mL that the air takes a day in a run.</summary>
    public double VentedPerDay(Supposed how = Supposed.AsSet) =>
        1e3 * Find(how).Result.Hours.Sum(h => h.VentedKilograms) / Days;
}
