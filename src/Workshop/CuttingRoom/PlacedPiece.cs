using System.Collections.Immutable;
using Litterfall.Domain.Cutting;

namespace Litterfall.Workshop.CuttingRoom;

/// <summary>A part of an order where it lies on a sheet.</summary>
/// <param name="Sheet">Index of the sheet.</param>
/// <param name="Place">Where it lies.</param>
/// <param name="Piece">Which part it is.</param>
public sealed record PlacedPiece(int Sheet, PlacedPart Place, CutPiece Piece)
{
    /// <summary>
    /// Which part lies where: of equal parts the one wanted first is cut first.
    /// </summary>
    /// <param name="job">The plan.</param>
    public static ImmutableArray<PlacedPiece> Read(CuttingJob job)
    {
        var waiting = job
            .Pieces.GroupBy(p => p.Demand, StringComparer.Ordinal)
            .ToDictionary(
                g => g.Key,
                g => new Queue<CutPiece>(g.OrderBy(p => p.Number)),
                StringComparer.Ordinal
            );
        var placed = ImmutableArray.CreateBuilder<PlacedPiece>();
        for (var i = 0; i < job.Plan.Sheets.Count; i++)
        {
            foreach (var part in job.Plan.Sheets[i].Parts)
            {
                if (waiting.TryGetValue(part.Part, out var queue) && queue.TryDequeue(out var piece))
                {
                    placed.Add(new(i, part, piece));
                }
            }
        }

        return placed.ToImmutable();
    }
}
