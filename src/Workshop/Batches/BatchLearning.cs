using System.Globalization;
using Litterfall.Domain.Stock;
using Litterfall.Workshop.Mixing;

namespace Litterfall.Workshop.Batches;

/// <summary>What measured batches of a recipe teach.</summary>
/// <param name="Yield">Share of the loose volume that comes out; null before one was measured.</param>
/// <param name="WetMiss">Percentage points by which batches came out wetter than planned.</param>
/// <param name="KilogramsPerLiter">Mass of a mixed liter of the last batch weighed; null for none.</param>
public sealed record BatchLearning(LearnedShare? Yield, LearnedShare WetMiss, double? KilogramsPerLiter)
{
    /// <summary>Learns from the batches of one recipe.</summary>
    /// <param name="batches">Batches in the order they were made.</param>
    public static BatchLearning From(IReadOnlyCollection<SoilBatch> batches)
    {
        var measured = batches
            .Where(b => b is { OutLiters: > 0 } && b.Parts.Sum(p => p.Liters) > 0)
            .Select(b => (In: b.Parts.Sum(p => p.Liters), Out: b.OutLiters!.Value))
            .ToList();
        var wet = batches
            .Where(b => b.PlannedWetPercent is not null && WetPercent(b) is not null)
            .Select(b => (b.PlannedWetPercent!.Value, WetPercent(b)!.Value))
            .ToList();
        var weighed = batches.LastOrDefault(b => b is { OutKilograms: > 0, OutLiters: > 0 });
        return new(
            measured.Count > 0 ? Turned(LearnedShare.Shrink(measured)) : null,
            LearnedShare.WetMiss(wet),
            weighed?.OutKilograms / weighed?.OutLiters
        );
    }

    /// <summary>Water of a batch by volume, percent; null where no sample was dried.</summary>
    /// <param name="batch">The batch.</param>
    public static double? WetPercent(SoilBatch batch) =>
        batch is { OutKilograms: { } kg, OutLiters: > 0 and var liters, DryShare: { } dry }
            ? 100 * kg * (1 - dry) / liters
            : null;

    /// <summary>"learned from 3 batches: 180 L of parts gave 158.2 L".</summary>
    /// <param name="batches">Batches of one recipe.</param>
    public static string Told(IEnumerable<SoilBatch> batches)
    {
        var measured = batches.Where(b => b is { OutLiters: > 0 }).ToList();
        var put = measured.Sum(b => b.Parts.Sum(p => p.Liters));
        var gave = measured.Sum(b => b.OutLiters!.Value);
        var count = measured.Count == 1 ? "1 batch" : $"{Number(measured.Count)} batches";
        return $"learned from {count}: {Number(Math.Round(put, 1))} L of parts gave "
            + $"{Number(Math.Round(gave, 1))} L";
    }

    private static LearnedShare Turned(LearnedShare shrink) =>
        new(1 - shrink.Mean, 1 - shrink.High, 1 - shrink.Low, shrink.Count);

    private static string Number(double value) => value.ToString("0.#", CultureInfo.InvariantCulture);
}
