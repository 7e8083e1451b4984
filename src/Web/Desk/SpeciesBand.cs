using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Figures;
using Litterfall.Quantities.Stocking;

namespace Litterfall.Web.Desk;

/// <summary>What the first animal of a design wants, from the library.</summary>
public static class SpeciesBand
{
    /// <summary>Two figures of it; null where it has none or nobody lives there.</summary>
    /// <param name="design">The design.</param>
    /// <param name="low">The lower figure of an animal.</param>
    /// <param name="high">The upper.</param>
    public static (double Low, double High)? Of(
        CheckedDesign design,
        Func<AnimalEntry, Figure?> low,
        Func<AnimalEntry, Figure?> high
    ) =>
        StockedSpecies.Of(design).FirstOrDefault()?.Species is { } entry
        && low(entry) is { } from
        && high(entry) is { } to
            ? (from.Value, to.Value)
            : null;
}
