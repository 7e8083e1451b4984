using System.Collections.Immutable;
using Litterfall.Domain;
using Litterfall.Domain.Checking;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Quantities.Openings;

/// <summary>The openings of a box together.</summary>
public static class OpeningPlans
{
    private static readonly Side[] Walls = [Side.Front, Side.Back, Side.Left, Side.Right];

    /// <summary>Plans of the walls and of the lid, or of a top that is glued.</summary>
    /// <param name="design">The design.</param>
    /// <param name="box">Its sizes.</param>
    public static IEnumerable<OpeningPlan> All(CheckedDesign design, BoxGeometry box)
    {
        foreach (var side in Walls)
        {
            yield return WallPlan.Of(design, box, side);
        }

        if (LidPlan.Of(design, box) is { } lid)
        {
            yield return lid;
        }
        else if (design.Design.Box.Opening == Opening.Front)
        {
            yield return WallPlan.Of(design, box, Side.Top);
        }
    }

    /// <summary>What a design leaves open and was assumed, in words, once each.</summary>
    /// <param name="design">The design.</param>
    /// <param name="box">Its sizes.</param>
    public static ImmutableArray<string> Assumed(CheckedDesign design, BoxGeometry box) =>
        [.. All(design, box).SelectMany(p => p.Assumed).Distinct(StringComparer.Ordinal)];
}
