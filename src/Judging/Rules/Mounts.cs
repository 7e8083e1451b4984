using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Checking;

namespace Litterfall.Judging.Rules;

/// <summary>What a mounted plant can be mounted on.</summary>
public static class Mounts
{
    /// <summary>True where wood stands in the box; stone stands on the base and takes no pin.</summary>
    /// <param name="design">The design.</param>
    public static bool Wood(CheckedDesign design) =>
        design.Design.Hardscape.Any(piece =>
            design.Catalog.Find<HardscapeEntry>(piece.Material)?.Seat?.Text != "base"
        );
}
