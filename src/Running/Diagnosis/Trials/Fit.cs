using Litterfall.Domain.Tanks;

namespace Litterfall.Running.Diagnosis.Trials;

/// <summary>
/// How well a run agrees with what was read. Misses are counted by Student's distribution with four degrees
/// of
/// freedom, so that one wild reading does not decide.
/// </summary>
public sealed class Fit
{
    private const double Freedom = 4.0;

    // A dip tube is read to some 3 mm; the engine's gain is known to about a quarter (own choice, after the
    // band
    // of the forecast over what nobody measures).
    private const double LevelMillimeters = 3.0;
    private const double GainShare = 0.25;
    private const double Kelvins = 1.2;
    private const double Points = 6.0;

    private readonly TrialSet trials;
    private readonly AirSeen air;
    private readonly TankReading[] levels;

    /// <summary>Compares with the readings of a case that lie within the runs.</summary>
    public Fit(FaultCase of, TrialSet trials, AirSeen air)
    {
        this.trials = trials;
        this.air = air;
        levels =
        [
            .. of.Readings.Where(r =>
                r.Kind == ReadingKind.Level && r.Amount is not null && trials.HoursAt(r.At) > 6.0
            ),
        ];
    }

    /// <summary>True where there is something to compare with.</summary>
    public bool HasReadings =>
        levels.Length > 0
        || air.MeanCelsius is not null
        || air.MeanHumidity is not null
        || air.ByHand.Length > 0;

    /// <summary>The last level within the runs; null for none.</summary>
    public TankReading? LastLevel => levels.Length > 0 ? levels[^1] : null;

    /// <summary>
    /// Logarithm of the likelihood of the readings under a run, with water that comes in or leaves besides.
    /// </summary>
    /// <param name="trial">The run.</param>
    /// <param name="besideMillimetersPerDay">Rise of the level by that water, mm a day.</param>
    public double LogLikelihood(Trial trial, double besideMillimetersPerDay)
    {
        var sum = 0.0;
        foreach (var reading in Told())
        {
            var hour = trials.HoursAt(reading.At);
            var model = Math.Max(0.0, trial.LevelMillimeters(hour) + (besideMillimetersPerDay * hour / 24.0));
            var moved =
                Math.Abs(model - trials.StartMillimeters) + Math.Abs(besideMillimetersPerDay * hour / 48.0);
            sum += Student(
                reading.Amount!.Value - model,
                Math.Sqrt((LevelMillimeters * LevelMillimeters) + Math.Pow(GainShare * moved, 2))
            );
        }

        return sum + Air(trial);
    }

    /// <summary>The last level and one of the middle: readings of one run hang together.</summary>
    private IEnumerable<TankReading> Told() =>
        levels.Length <= 2 ? levels : [levels[levels.Length / 2], levels[^1]];

    private double Air(Trial trial)
    {
        var hours = trial.LastDays(3).ToArray();
        var sum = 0.0;
        if (air.MeanCelsius is { } warm)
        {
            sum += Student(warm - hours.Average(h => h.AirMean), Kelvins);
        }

        if (air.MeanHumidity is { } damp)
        {
            sum += Student(damp - (100.0 * hours.Average(h => h.HumidityMean)), Points);
        }

        if (air.ByHand.Length > 0)
        {
            sum += ByHand(trial);
        }

        return sum;
    }

    private double ByHand(Trial trial)
    {
        var warm = air.ByHand.Where(r => r.Amount is not null).ToArray();
        var damp = air.ByHand.Where(r => r.HumidityPercent is not null).ToArray();
        var sum = 0.0;
        if (warm.Length > 0)
        {
            sum += Student(warm.Average(r => r.Amount!.Value - trial.At(Hour(r)).AirCelsius), Kelvins);
        }

        if (damp.Length > 0)
        {
            sum += Student(
                damp.Average(r => r.HumidityPercent!.Value - (100.0 * trial.At(Hour(r)).HumidityMean)),
                Points * 1.3
            );
        }

        return sum;
    }

    /// <summary>
    /// A reading after the end of the runs is compared with the same hour of their last day.
    /// </summary>
    private double Hour(TankReading reading)
    {
        var hour = trials.HoursAt(reading.At);
        var end = 24.0 * trials.Days;
        return hour <= end && hour >= 0 ? hour : end - 24.0 + reading.At.TimeOfDay.TotalHours;
    }

    private static double Student(double miss, double spread) =>
        (-0.5 * (Freedom + 1.0) * Math.Log(1.0 + (miss * miss / (spread * spread * Freedom))))
        - Math.Log(spread);
}
