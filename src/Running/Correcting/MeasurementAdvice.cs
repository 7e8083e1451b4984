using System.Globalization;
using Litterfall.Domain.Units;
using Litterfall.Forecasting.Climate;

namespace Litterfall.Running.Correcting;

/// <summary>A corrected member, and when it is drained next, days; infinity for never.</summary>
internal sealed record AdviceMember(TankRun Run, MemberInputs Inputs, double NextDrain);

/// <summary>
/// Which measurement would tighten the forecast most: the band of what is asked shrinks by what a
/// measurement has in common with it, as in a linear and normal world (the update of Kalman 1960, recalled),
/// with the covariances of the corrected members.
/// </summary>
internal sealed class MeasurementAdvice
{
    private const int ReadingHour = 9;
    private const int WeekDays = 7;
    private const int LoggerHours = 48;
    private readonly TankCase tank;
    private readonly AdviceMember[] members;
    private readonly int hours;
    private readonly double[] target;
    private readonly bool isDrain;

    private MeasurementAdvice(TankCase tank, AdviceMember[] members, int days)
    {
        (this.tank, hours) = (tank, 24 * days);
        var drained = members.Where(m => double.IsFinite(m.NextDrain)).ToArray();
        isDrain = drained.Length > members.Length / 2;
        this.members = isDrain ? drained : members;
        target = [.. this.members.Select(m => isDrain ? m.NextDrain : 1000 * m.Run.Hours[hours].LevelMeters)];
    }

    /// <summary>The best measurement; null where nothing would narrow anything.</summary>
    public static MeasurementWish? Best(TankCase tank, AdviceMember[] members, int days)
    {
        var advice = new MeasurementAdvice(tank, members, days);
        return advice
            .Wishes()
            .Where(w => w.NarrowsPercent >= LeastPercent)
            .OrderByDescending(w => Math.Round(w.NarrowsPercent))
            .FirstOrDefault();
    }

    // Own choice: less than this is not worth a walk to the tank.
    private const double LeastPercent = 1;

    private IEnumerable<MeasurementWish> Wishes()
    {
        var now = NextReadingHour();
        var drain = isDrain ? 24 * target.Min() : hours;
        foreach (var days in new[] { 0, 3, WeekDays, 2 * WeekDays, 3 * WeekDays })
        {
            var hour = now + (24 * days);
            if (hour >= Math.Min(drain, hours))
            {
                break;
            }

            yield return One(
                "level",
                hour,
                Narrowed(m => 1000 * m.Run.Hours[hour].LevelMeters, CorrectionPolicy.Level.Value),
                "Read the level"
            );
        }

        if (tank.Design.Design.Misting is { } misting)
        {
            var flow = Unit.MilliliterPerMinute.FromSi(misting.Each.Si);
            yield return One(
                "mist",
                now,
                Narrowed(m => flow * m.Inputs.Change.Mist, CorrectionPolicy.Nozzle.Value * flow),
                "Run one nozzle into a cup for a minute"
            );
        }

        foreach (var wish in Longer(now))
        {
            yield return wish;
        }
    }

    private IEnumerable<MeasurementWish> Longer(int now)
    {
        var week = now + (24 * WeekDays);
        if (week < hours)
        {
            yield return One(
                "weight",
                now,
                Narrowed(m => Gained(m, now, week), Math.Sqrt(2) * CorrectionPolicy.Weight.Value),
                "Weigh the tank, and again a week later,"
            );
        }

        if (now + LoggerHours < hours && tank.Design.Design.Headspace is null)
        {
            yield return One(
                "air",
                now,
                Narrowed(
                    m => Enumerable.Range(now, LoggerHours).Average(h => 100 * m.Run.Hours[h].HumidityMean),
                    CorrectionPolicy.Humidity.Value
                ),
                "Hang an air logger in it for two days"
            );
        }

        var level = members.Average(m => 1000 * m.Run.Hours[Math.Min(now, hours)].LevelMeters);
        if (level > 10 && tank.Design.Design.Drain is not null)
        {
            yield return One(
                "drained",
                now,
                Narrowed(
                    m => m.Run.Hours[Math.Min(now, hours)].LevelMeters * m.Inputs.Change.Soil.DrainagePores,
                    CorrectionPolicy.Jug.Value * level / 1000
                ),
                "Drain it and measure how much comes out"
            );
        }
    }

    private static double Gained(AdviceMember member, int from, int to)
    {
        var gained = 0.0;
        for (var h = from + 1; h <= to; h++)
        {
            var hour = member.Run.Hours[h];
            gained +=
                hour.MistedKilograms + hour.ToppedUpKilograms - hour.VentedKilograms - hour.DrainedKilograms;
        }

        return gained;
    }

    /// <summary>The morning after the last reading.</summary>
    private int NextReadingHour()
    {
        var day = (tank.LastHour + 23 - ReadingHour) / 24;
        return Math.Min(hours, Math.Max(1, (24 * day) + ReadingHour));
    }

    /// <summary>Share by which the band shrinks.</summary>
    private double Narrowed(Func<AdviceMember, double> of, double spread)
    {
        var seen = members.Select(of).ToArray();
        var (meanSeen, meanTarget) = (seen.Average(), target.Average());
        var (variance, wide, common) = (0.0, 0.0, 0.0);
        for (var i = 0; i < seen.Length; i++)
        {
            variance += (seen[i] - meanSeen) * (seen[i] - meanSeen);
            wide += (target[i] - meanTarget) * (target[i] - meanTarget);
            common += (seen[i] - meanSeen) * (target[i] - meanTarget);
        }

        if (variance <= 0 || wide <= 0 || seen.Length < 4)
        {
            return 0;
        }

        // What a few members have in common by chance is taken off (Ezekiel 1930, recalled).
        var shared = common * common / (variance * wide);
        shared = Math.Max(0, 1 - ((1 - shared) * (seen.Length - 1) / (seen.Length - 2)));
        variance /= seen.Length - 1;
        return 1 - Math.Sqrt(1 - (shared * variance / (variance + (spread * spread))));
    }

    private MeasurementWish One(string kind, int hour, double narrowed, string what)
    {
        var at = tank.First.ToDateTime(TimeOnly.MinValue).AddHours(hour);
        var percent = 100 * narrowed;
        var of = isDrain ? "the range of the next drain date" : "the range of the level";
        return new(
            kind,
            at,
            string.Create(
                CultureInfo.InvariantCulture,
                $"{what} on {at:MMM d}: it should narrow {of} by about {percent:0} %. {Because(kind)}"
            ),
            percent
        );
    }

    private static string Because(string kind) =>
        kind switch
        {
            "level" => "How fast the water rises is what the forecast knows least.",
            "mist" => "What the nozzles give is what the forecast knows least.",
            "weight" => "The difference of two weighings is all the water gained, wherever it is.",
            "air" => "Damp or dry air shows how much the vents carry away.",
            _ => "It shows how many liters stand in a centimeter of level.",
        };
}
