using System.Globalization;

namespace Litterfall.Web.Shop.Stock;

/// <summary>One strand on the way of a lot: what it came from, or where it went.</summary>
/// <param name="Key">Lot or order.</param>
/// <param name="Name">Good or customer.</param>
/// <param name="Amount">Amount with unit.</param>
/// <param name="Link">Where it is shown; null for nowhere.</param>
/// <param name="Share">Share of the widest strand.</param>
public sealed record WayEdge(string Key, string Name, string Amount, string? Link, double Share)
{
    /// <summary>A bar as long as its share.</summary>
    public string Bar =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"""
            <svg viewBox="0 0 100 4" preserveAspectRatio="none" aria-hidden="true">
            <rect width="{Math.Clamp(100 * Share, 1, 100):0.#}" height="4"/></svg>
            """
        );
}
