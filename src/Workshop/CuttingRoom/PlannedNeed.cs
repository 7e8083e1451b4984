using Litterfall.Domain.Cutting;
using Litterfall.Domain.Lists;

namespace Litterfall.Workshop.CuttingRoom;

/// <summary>
/// What plans that are not cut yet take of a good. Where there is a plan, its sheets are bought, not the area
/// of the parts.
/// </summary>
/// <param name="Good">Key of the good.</param>
/// <param name="Amount">All that is pulled and bought, in the unit of the good.</param>
/// <param name="Parts">Parts in the plans by order, in the unit of the good.</param>
/// <param name="Offers">Offers that the plans buy by; empty where all is in stock.</param>
public sealed record PlannedNeed(
    string Good,
    double Amount,
    IReadOnlyDictionary<int, double> Parts,
    Seq<string> Offers
)
{
    /// <summary>Needs of all plans, one for each good.</summary>
    /// <param name="jobs">All plans.</param>
    public static Seq<PlannedNeed> Read(IEnumerable<CuttingJob> jobs) =>
        [
            .. jobs.Where(j => j.State == CuttingJobState.Planned)
                .GroupBy(j => j.Good, StringComparer.Ordinal)
                .Select(Together),
        ];

    private static PlannedNeed Together(IGrouping<string, CuttingJob> jobs)
    {
        var pulled = jobs.SelectMany(j => JobTotals.Read(j).Pull).ToList();
        return new(
            jobs.Key,
            pulled.Sum(p => p.Amount),
            jobs.SelectMany(j => j.Pieces.Select(p => (p.Order, Amount: AmountOf(j, p))))
                .Where(p => p.Order is not null)
                .GroupBy(p => p.Order!.Value)
                .ToDictionary(g => g.Key, g => g.Sum(p => p.Amount)),
            [.. pulled.Select(p => p.Source.Offer).OfType<string>().Distinct(StringComparer.Ordinal)]
        );
    }

    private static double AmountOf(CuttingJob job, CutPiece piece) =>
        SheetSupply.Area((piece.Length, piece.Width)) * job.Sources[0].UnitsPerSquareMeter;
}
