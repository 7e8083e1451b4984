using System.Collections.Immutable;
using Litterfall.Domain.Cutting;
using Litterfall.Workshop.Stock;

namespace Litterfall.Workshop.CuttingRoom;

/// <summary>Why a plan no longer holds.</summary>
public static class StaleJob
{
    /// <summary>
    /// One sentence for what changed since a plan was made; null where it still holds, or is not to be cut
    /// any more.
    /// </summary>
    /// <param name="job">The plan.</param>
    /// <param name="facts">What the table knows now.</param>
    /// <param name="order">Number of an order as people say it.</param>
    public static string? Find(CuttingJob job, TableFacts facts, Func<int, string> order)
    {
        if (job.State != CuttingJobState.Planned)
        {
            return null;
        }

        return Gone(job, facts.Book) ?? Changed(job, facts, order);
    }

    private static string? Gone(CuttingJob job, StockBook book) =>
        job.Sources.FirstOrDefault(s => s.Lot is { } lot && book.Find(lot) is not { HasSome: true })
            is { } gone
            ? $"{Capital(gone.Name)} is no longer there. Plan again."
            : null;

    private static string? Changed(CuttingJob job, TableFacts facts, Func<int, string> order)
    {
        var wanted = facts.Wanted.GroupBy(w => w.Mark).ToDictionary(g => g.Key, g => g.Sum(w => w.Count));
        var held = OpenParts.Held(
            facts.Jobs.Where(j => j.Good == job.Good && j.Millimeters == job.Millimeters)
        );
        foreach (var piece in job.Pieces)
        {
            var mark = (piece.Order, piece.For, piece.Part, piece.Length, piece.Width);
            if (wanted.GetValueOrDefault(mark) < held.GetValueOrDefault(mark, 1))
            {
                var whose = piece.Order is { } number
                    ? $"{order(number)} has changed"
                    : "A loose panel has changed";
                return $"{whose} since this was planned: the {piece.Part} "
                    + $"{SheetSupply.SizeWords(piece.Length, piece.Width)} of {piece.For} "
                    + "is no longer wanted so. Plan again.";
            }
        }

        return null;
    }

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
