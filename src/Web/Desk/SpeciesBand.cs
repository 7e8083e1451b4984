using Litterfall.Domain.Checking;
using Litterfall.Quantities.Stocking;

namespace Litterfall.Web.Desk;

/// <summary>What the first animal of a design wants, from the library.</summary>
public static class SpeciesBand
{
    /// <summary>Two figures of it; null where it has none or nobody lives there.</summary>
    /// <param name="design">The design.</param>
    /// <param name="low">Name of the lower figure.</param>
    /// <param name="high">Name of the upper.</param>
    public static (double Low, double High)? Of(CheckedDesign design, string low, string high) =>
        StockedSpecies.Of(design).FirstOrDefault()?.Species is { } entry
        && entry.Figure(low) is { } from
        && entry.Figure(high) is { } to
            ? (from.Value, to.Value)
            : null;
}
