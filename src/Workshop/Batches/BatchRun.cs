using System.Collections.Immutable;
using Litterfall.Domain.Lists;
using Litterfall.Domain.Stock;
using Litterfall.Workshop.Stock;

namespace Litterfall.Workshop.Batches;

/// <summary>What was measured when a mix was made.</summary>
/// <param name="OutLiters">Mix that came out, loose, liters.</param>
/// <param name="Kilograms">Its mass, kg; null where it was not weighed.</param>
/// <param name="DryShare">Mass of a dried sample over its wet mass; null where none was dried.</param>
/// <param name="WaterLiters">Water that was poured in, liters.</param>
public sealed record BatchMeasure(double OutLiters, double? Kilograms, double? DryShare, double WaterLiters);

/// <summary>A mix that was made: the lot it became, what went into it, and its record.</summary>
/// <param name="Step">Lot and lines.</param>
/// <param name="Batch">Record of the batch.</param>
public sealed record BatchRun(StockStep Step, SoilBatch Batch)
{
    private const double MostYield = 1.05;

    /// <summary>Writes a planned mix as made, or says why not.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="lot">Number of the lot it becomes.</param>
    /// <param name="measure">What was measured.</param>
    /// <param name="book">The book of stock.</param>
    /// <param name="when">Day, and who made it.</param>
    public static (BatchRun? Run, string? Fault) Make(
        BatchPlan plan,
        string lot,
        BatchMeasure measure,
        StockBook book,
        (DateOnly Day, string Who) when
    )
    {
        if (plan.Parts.FirstOrDefault(p => p.Lots.IsShort) is { } missing)
        {
            return (
                null,
                FormattableString.Invariant(
                    $"{missing.Name} is short by {missing.Lots.Short:0.0} L. Receive some, or count it."
                )
            );
        }

        var loose = plan.Parts.Sum(p => p.Liters);
        if (measure.OutLiters <= 0 || measure.OutLiters > MostYield * loose)
        {
            return (
                null,
                FormattableString.Invariant(
                    $"{loose:0.0} L of parts cannot give {measure.OutLiters:0.0} L of mix. Measure it loose."
                )
            );
        }

        Movement Line(string of, MovementKind kind, double amount) =>
            new()
            {
                Lot = of,
                Kind = kind,
                Amount = amount,
                Day = when.Day,
                Who = when.Who,
            };
        ImmutableArray<Movement> uses =
        [
            .. plan
                .Parts.SelectMany(p => p.Lots.Lots)
                .Select(l => Line(l.Lot.Lot.Id, MovementKind.Used, l.Amount) with { Into = lot }),
        ];
        var made = new Lot
        {
            Id = lot,
            Good = plan.Recipe.Key,
            Since = when.Day,
            Cost = book.CostOf(uses),
            Amount = measure.OutLiters,
        };
        return (
            new(
                new([made], [.. uses, Line(lot, MovementKind.Made, measure.OutLiters)]),
                Record(plan, lot, measure, when)
            ),
            null
        );
    }

    private static SoilBatch Record(
        BatchPlan plan,
        string lot,
        BatchMeasure measure,
        (DateOnly Day, string Who) when
    ) =>
        new()
        {
            Lot = lot,
            Recipe = plan.Recipe.Key,
            Day = when.Day,
            Parts =
            [
                .. plan.Parts.SelectMany(p =>
                    p.Lots.Lots.Select(l => new BatchPart(
                        p.Key,
                        l.Lot.Lot.Id,
                        l.Amount,
                        p.Liters > 0 ? (p.Kilograms ?? 0) * l.Amount / p.Liters : 0
                    ))
                ),
            ],
            WaterLiters = measure.WaterLiters,
            OutLiters = measure.OutLiters,
            OutKilograms = measure.Kilograms,
            DryShare = measure.DryShare,
            PlannedWetPercent = plan.WetPercent,
            Orders = [.. plan.Needs.Select(n => n.Order.Number).Distinct()],
            Who = when.Who,
        };
}
