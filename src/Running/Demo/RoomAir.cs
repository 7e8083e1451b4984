using NodaTime;

namespace Litterfall.Running.Demo;

/// <summary>One reading of the invented room, as its formulas give it.</summary>
/// <param name="Ticks">UTC ticks.</param>
/// <param name="Celsius">Air, °C.</param>
/// <param name="Percent">Relative humidity, %.</param>
public readonly record struct AirReading(long Ticks, double Celsius, double Percent);

/// <summary>
/// Air of the invented breeding room and its tanks over 92 days from Sunday 15 February 2026, with its
/// planted
/// faults: no heating on days 8 and 9, the mist pump of rack B dead on days 37 to 39, a hot spell on
/// days 61 to
/// 64, one humidity sensor stuck from day 44. All of it is invented.
/// </summary>
public sealed class RoomAir
{
    /// <summary>Zone of the room.</summary>
    public const string Zone = "Europe/Berlin";

    /// <summary>Readings of each logger.</summary>
    public const int Count = 13_248;

    private const double Minutes = 10.0;
    private const double Mean = 21.6;
    private const double LampKelvin = 2.1;
    private const double LampHours = 1.5;
    private const double ColdCelsius = 15.2;
    private const double CoolingHours = 8.0;
    private const double WarmingHours = 3.0;

    // The hot spell swings about this mean; its top is 28.4 °C in the room and 31.6 °C in the top row.
    private const double HotMean = 26.86;
    private const double HotSwing = 1.54;
    private const double HotRampHours = 6.0;
    private const double DryPercent = 60.5;
    private const double DryHours = 4.0;
    private static readonly double[] Mists = [7.5, 12.5, 18.5];

    /// <summary>First reading: midnight of 15 February 2026 in the room.</summary>
    public static readonly DateTime Start = new(2026, 2, 14, 23, 0, 0, DateTimeKind.Utc);

    private readonly long[] ticks;
    private readonly double[] hours;
    private readonly double[] room;
    private readonly double[] lamp;
    private readonly ulong seed;

    /// <summary>A room.</summary>
    /// <param name="seed">Seed of the noise.</param>
    /// <param name="count">Readings of each logger.</param>
    /// <param name="hasFaults">False for a room in which nothing goes wrong.</param>
    public RoomAir(ulong seed, int count = Count, bool hasFaults = true)
    {
        this.seed = seed;
        HasFaults = hasFaults;
        ticks = new long[count];
        hours = new double[count];
        var zone = DateTimeZoneProviders.Tzdb[Zone];
        var first = new LocalDateTime(2026, 2, 15, 0, 0);
        for (var i = 0; i < count; i++)
        {
            ticks[i] = Start.Ticks + (i * TimeSpan.FromMinutes(Minutes).Ticks);
            var at = Instant
                .FromDateTimeUtc(new DateTime(ticks[i], DateTimeKind.Utc))
                .InZone(zone)
                .LocalDateTime;
            hours[i] = Period.Between(first, at, PeriodUnits.Ticks).Ticks / (double)TimeSpan.TicksPerHour;
        }

        room = Room();
        lamp = Lamp();
    }

    private bool HasFaults { get; }

    /// <summary>The room itself.</summary>
    public AirReading[] InRoom()
    {
        var chance = new Chance(seed + 1);
        return
        [
            .. room.Select(
                (t, i) => new AirReading(ticks[i], t, 46.0 - (1.5 * (t - Mean)) + chance.Normal())
            ),
        ];
    }

    /// <summary>A tank by its number, "A3".</summary>
    public AirReading[] InTank(string code)
    {
        var rack = code[0] switch
        {
            'A' => -0.6,
            'C' => 1.7,
            _ => 0.0,
        };
        var readings = new AirReading[ticks.Length];
        var dry = double.NaN;
        for (var i = 0; i < ticks.Length; i++)
        {
            var celsius = room[i] + rack + lamp[i];
            var moist = 82.0 + (15.0 * Math.Exp(-SinceMist(hours[i]) / 2.5));
            if (HasFaults && code[0] == 'B' && IsOn(i, 37, 39))
            {
                // No mist: the air falls to what the room leaves it, lowest in the afternoon.
                dry = double.IsNaN(dry) ? moist : dry;
                var floor = DryPercent + (1.5 * Math.Cos(2.0 * Math.PI * (OfDay(i) - 4.0) / 24.0));
                dry += (floor - dry) * Minutes / 60.0 / DryHours;
                moist = Math.Max(58.0 + (0.9 * Math.Max(0.0, celsius - 23.0)), dry);
            }

            var percent = Math.Min(99.9, moist - (0.9 * Math.Max(0.0, celsius - 23.0)));
            var isStuck = HasFaults && code == "C5" && Day(i) >= 44;
            readings[i] = new(ticks[i], celsius, isStuck ? 99.9 : percent);
        }

        return readings;
    }

    private static double SinceMist(double hours)
    {
        var of = hours % 24.0;
        var last = Mists.Where(m => m <= of).DefaultIfEmpty(Mists[^1] - 24.0).Max();
        return of - last;
    }

    private int Day(int i) => (int)Math.Floor(hours[i] / 24.0) + 1;

    private double OfDay(int i) => hours[i] % 24.0;

    private bool IsOn(int i, int first, int last) => Day(i) >= first && Day(i) <= last;

    private double[] Room()
    {
        var chance = new Chance(seed);
        var air = new double[ticks.Length];
        var (cold, isCold) = (0.0, false);
        for (var i = 0; i < air.Length; i++)
        {
            var day = 1.0 + (hours[i] / 24.0);
            var usual =
                Mean
                + (0.9 * Math.Sin(2.0 * Math.PI * (OfDay(i) - 9.0) / 24.0))
                + (0.6 * Math.Sin(2.0 * Math.PI * day / 9.0));
            if (HasFaults)
            {
                usual = Heated(i, usual);
                (cold, isCold) = Cooled(i, usual, cold, isCold);
                usual = isCold ? cold : usual;
            }

            air[i] = usual + (0.1 * chance.Normal());
        }

        return air;
    }

    /// <summary>The hot spell comes and goes over some hours.</summary>
    private double Heated(int i, double usual)
    {
        var (from, to) = (60.0 * 24.0, 64.0 * 24.0);
        var share = Math.Clamp(Math.Min(hours[i] - from, to - hours[i]) / HotRampHours, 0.0, 1.0);
        var hot = HotMean + (HotSwing * Math.Sin(2.0 * Math.PI * (OfDay(i) - 9.0) / 24.0));
        return usual + (share * (hot - usual));
    }

    /// <summary>Without heating the room falls to its lowest, and comes back quicker.</summary>
    private (double Celsius, bool IsCold) Cooled(int i, double usual, double before, bool isCold)
    {
        const double step = Minutes / 60.0;
        if (IsOn(i, 8, 9))
        {
            var from = isCold ? before : usual;
            return (from + ((ColdCelsius - from) * step / CoolingHours), true);
        }

        if (!isCold)
        {
            return (usual, false);
        }

        var back = before + ((usual - before) * step / WarmingHours);
        return (back, usual - back > 0.05);
    }

    /// <summary>
    /// Warmth of the lamps, 08:00 to 20:00; on hot days they burn in the morning only, as keepers do.
    /// </summary>
    private double[] Lamp()
    {
        var warm = new double[ticks.Length];
        var share = 1.0 - Math.Exp(-Minutes / 60.0 / LampHours);
        var now = 0.0;
        for (var i = 0; i < warm.Length; i++)
        {
            var off = HasFaults && IsOn(i, 61, 64) ? 12.0 : 20.0;
            var isOn = OfDay(i) >= 8.0 && OfDay(i) < off;
            now += ((isOn ? LampKelvin : 0.0) - now) * share;
            warm[i] = now;
        }

        return warm;
    }
}
