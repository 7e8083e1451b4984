using Litterfall.Domain.Lists;
using Litterfall.Domain.Stock;

namespace Litterfall.Workshop.Stock;

/// <summary>New lots and lines that are written together or not at all.</summary>
/// <param name="Lots">New lots.</param>
/// <param name="Lines">Lines, in order.</param>
public sealed record StockStep(Seq<Lot> Lots, Seq<Movement> Lines)
{
    /// <summary>True where somebody said that the book is wrong and takes it so.</summary>
    public bool MayGoBelow { get; init; }
}
