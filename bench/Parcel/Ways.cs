using Litterfall.Physics.Parcel;
using Litterfall.Verification.Parcel;

namespace Litterfall.Bench.Parcel;

/// <summary>Drawn ways of three days: hourly air of a journey with its own warmth, swing and delay.</summary>
internal sealed class Ways
{
    /// <summary>Contents of half a kilogram of water, J/K.</summary>
    public const double Capacity = 0.5 * 4186.0;
    private const int Hours = 72;
    private const double Hour = 3600.0;
    private readonly double[] times = [.. Enumerable.Range(0, Hours + 1).Select(h => h * Hour)];
    private readonly double[][] airs;
    private readonly double[] conductances;

    public Ways(int count)
    {
        var random = new Random(1);
        airs = new double[count][];
        conductances = new double[count];
        for (int i = 0; i < count; i++)
        {
            double mean = 2.0 + (26.0 * random.NextDouble());
            double swing = 8.0 * random.NextDouble();
            double late = 24.0 * random.NextDouble();
            airs[i] =
            [
                .. Enumerable
                    .Range(0, Hours + 1)
                    .Select(h => mean + (swing * Math.Sin(2.0 * Math.PI * (h - late) / 24.0)))
                    .Select(c => c + random.NextDouble() - 0.5),
            ];
            conductances[i] = 0.46 * (0.8 + (0.4 * random.NextDouble()));
        }
    }

    /// <summary>All ways by exact pieces, hourly rows and two levels kept.</summary>
    public void Exact(ParcelModel model, double[] ends)
    {
        Span<double> celsius = stackalloc double[Hours + 1];
        Span<LevelExposure> levels = stackalloc LevelExposure[2];
        for (int i = 0; i < airs.Length; i++)
        {
            levels[0] = new LevelExposure(17.0);
            levels[1] = new LevelExposure(26.0);
            var report = new ParcelReport
            {
                EverySeconds = Hour,
                Celsius = celsius,
                Levels = levels,
            };
            ends[i] = model.Run(Drive(i), report).EndCelsius;
        }
    }

    /// <summary>Bytes that all ways allocate.</summary>
    public long Allocated(ParcelModel model, double[] ends)
    {
        long before = GC.GetAllocatedBytesForCurrentThread();
        Exact(model, ends);
        return GC.GetAllocatedBytesForCurrentThread() - before;
    }

    /// <summary>All ways by even steps.</summary>
    public void Stepped(PhaseStore[] packs, double step, double[] ends)
    {
        for (int i = 0; i < airs.Length; i++)
        {
            ends[i] = EnthalpyEuler.Run(Capacity, packs, Drive(i), step, 17.0).Celsius;
        }
    }

    private ParcelDrive Drive(int way) =>
        new()
        {
            AmbientSeconds = times,
            AmbientCelsius = airs[way],
            Conductance = conductances[way],
            StartCelsius = 22.0,
            EndSeconds = Hours * Hour,
        };
}
