using System.Collections.Immutable;
using Litterfall.Domain.Cutting;

namespace Litterfall.Workshop.CuttingRoom;

/// <summary>So many sheets, or so much of a roll, of one source.</summary>
/// <param name="Source">The source.</param>
/// <param name="Sheets">Sheets; pieces that are taken off a roll.</param>
/// <param name="Length">Edge of a sheet along x, mm; of a roll, all that is taken off.</param>
/// <param name="Width">The other edge, or the width of the roll, mm.</param>
/// <param name="IsRoll">True for a roll.</param>
public sealed record Pulled(CutSource Source, int Sheets, double Length, double Width, bool IsRoll)
{
    /// <summary>All of it, m².</summary>
    public double SquareMeters => 1e-6 * Length * Width * (IsRoll ? 1 : Sheets);

    /// <summary>All of it in the unit of the good.</summary>
    public double Amount => SquareMeters * Source.UnitsPerSquareMeter;
}

/// <summary>What a plan takes, gives and wastes.</summary>
/// <param name="Pull">Offcuts, sheets and rolls to pull.</param>
/// <param name="Areas">Areas of each sheet, in the order of the plan.</param>
/// <param name="Cost">
/// Value of the material that goes in less that of the offcuts that are kept, net; null without a price.
/// </param>
public sealed record JobTotals(ImmutableArray<Pulled> Pull, ImmutableArray<SheetAreas> Areas, decimal? Cost)
{
    /// <summary>What is lost of all that is cut, percent.</summary>
    public double WastePercent =>
        Areas.Sum(a => a.Whole - a.Offcuts) is > 0 and var cut ? 100 * Areas.Sum(a => a.Lost) / cut : 0;

    /// <summary>What must be bought.</summary>
    public IEnumerable<Pulled> ToBuy => Pull.Where(p => p.Source.Kind == CutSourceKind.Buy);

    /// <summary>Reads a plan.</summary>
    /// <param name="job">The plan.</param>
    public static JobTotals Read(CuttingJob job)
    {
        var rolls = Rolls(job);
        var sources = job.Sources.ToDictionary(s => s.Stock, StringComparer.Ordinal);
        ImmutableArray<Pulled> pull =
        [
            .. job
                .Plan.Sheets.GroupBy(s => s.Stock, StringComparer.Ordinal)
                .Select(g => new Pulled(
                    sources[g.Key],
                    g.Count(),
                    rolls.Contains(g.Key) ? g.Sum(s => s.UsedLength) : g.First().Length,
                    g.First().Width,
                    rolls.Contains(g.Key)
                ))
                .OrderBy(p => p.Source.Kind),
        ];
        ImmutableArray<SheetAreas> areas =
        [
            .. job.Plan.Sheets.Select(s => SheetAreas.Read(s, job.Task, rolls.Contains(s.Stock))),
        ];
        return new(pull, areas, Price(job, pull, areas));
    }

    /// <summary>Names of the sheets of a task that are rolls.</summary>
    /// <param name="job">The plan.</param>
    public static IReadOnlySet<string> Rolls(CuttingJob job) =>
        job.Task.Stock.Where(s => s.IsRoll).Select(s => s.Id).ToHashSet(StringComparer.Ordinal);

    private static decimal? Price(
        CuttingJob job,
        ImmutableArray<Pulled> pull,
        ImmutableArray<SheetAreas> areas
    )
    {
        if (job.PricePerSquareMeter is not { } each)
        {
            return null;
        }

        var offcut = (decimal)job.OffcutWorth;
        var put = pull.Sum(p =>
            (decimal)p.SquareMeters * each * (p.Source.Kind == CutSourceKind.Offcut ? offcut : 1)
        );
        var kept = (decimal)(areas.Sum(a => a.Offcuts) * 1e-6) * each * offcut;
        return Math.Round(put - kept, 2, MidpointRounding.AwayFromZero);
    }
}
