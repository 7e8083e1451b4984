using Litterfall.Physics.Parcel;

namespace Litterfall.Verification.Parcel;

/// <summary>A parcel drawn by a seed: anything a case may hold, also packs off their temperature.</summary>
public sealed class DrawnParcel
{
    private const double SecondsPerHour = 3600.0;
    private static readonly double[] Melts = [0.0, 5.0, 21.0, 22.0];
    private readonly double conductance;
    private readonly double startC;
    private readonly double seconds;
    private readonly double steadyWatts;
    private readonly TimeCurve ambient;
    private readonly TimeCurve heat;

    private DrawnParcel(Random random)
    {
        Capacity = 400.0 + (3000.0 * random.NextDouble());
        conductance = random.NextDouble() < 0.1 ? 0.0 : random.NextDouble();
        startC = -5.0 + (40.0 * random.NextDouble());
        seconds = SecondsPerHour * (1.0 + (60.0 * random.NextDouble()));
        steadyWatts = 0.1 * random.NextDouble();
        Packs = [.. Enumerable.Range(0, random.Next(5)).Select(_ => Pack(random))];
        ambient = Air(random);
        double watts = 4.0 * random.NextDouble();
        double end = SecondsPerHour * (1.0 + (50.0 * random.NextDouble()));
        heat = TimeCurve.Sum(
            TimeCurve.Block(watts, 0.0, end),
            new IronPack(0.03 * random.NextDouble(), end).Power(0.5 * end)
        );
    }

    /// <summary>Gets the heat capacity, J/K.</summary>
    public double Capacity { get; }

    /// <summary>Gets the packs.</summary>
    public PhaseStore[] Packs { get; }

    /// <summary>Gets the way.</summary>
    public ParcelDrive Drive =>
        new()
        {
            AmbientSeconds = ambient.Seconds,
            AmbientCelsius = ambient.Values,
            HeatSeconds = heat.Seconds,
            HeatWatts = heat.Values,
            Conductance = conductance,
            StartCelsius = startC,
            EndSeconds = seconds,
            SteadyWatts = steadyWatts,
        };

    /// <summary>The parcel of a seed.</summary>
    /// <param name="seed">The seed.</param>
    public static DrawnParcel From(int seed) => new(new Random(seed));

    /// <summary>Runs it.</summary>
    /// <param name="levels">Temperatures to keep count of.</param>
    public ParcelOutcome Run(Span<LevelExposure> levels) =>
        new ParcelModel(Capacity, Packs).Run(Drive, new ParcelReport { Levels = levels });

    /// <summary>Heat that melting has taken up at the end since all was frozen, J.</summary>
    public double MeltedJoules()
    {
        var outcome = Run([]);
        double held = Packs.Sum(p => p.LatentJoules * p.StartLiquid);

        // What settling moved between contents and packs before hour 0.
        return held + (Capacity * (startC - outcome.StartCelsius)) + outcome.LatentJoules;
    }

    /// <summary>Time above a temperature, s.</summary>
    /// <param name="celsius">The temperature, °C.</param>
    public double SecondsAbove(double celsius)
    {
        LevelExposure[] level = [new(celsius)];
        Run(level);
        return level[0].SecondsAbove;
    }

    /// <summary>Miss of the heat account as a share of all heat moved.</summary>
    public double Miss()
    {
        var outcome = Run([]);
        return Math.Abs(outcome.BalanceErrorJoules) / Math.Max(1.0, outcome.TurnoverJoules);
    }

    private static PhaseStore Pack(Random random) =>
        new(
            0.05 + (0.5 * random.NextDouble()),
            Melts[random.Next(Melts.Length)],
            1000.0 * random.Next(100, 334),
            random.Next(3) switch
            {
                0 => 0.0,
                1 => 1.0,
                _ => random.NextDouble(),
            }
        );

    private static TimeCurve Air(Random random)
    {
        var times = new List<double>();
        var values = new List<double>();
        double now = 0.0;
        for (int i = random.Next(1, 40); i > 0; i--)
        {
            times.Add(now);
            values.Add(-10.0 + (50.0 * random.NextDouble()));
            if (random.NextDouble() < 0.3)
            {
                times.Add(now);
                values.Add(-10.0 + (50.0 * random.NextDouble()));
            }

            now += 60.0 + (7200.0 * random.NextDouble());
        }

        return new TimeCurve([.. times], [.. values]);
    }
}
