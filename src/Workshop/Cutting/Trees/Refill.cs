using System.Collections.Immutable;

namespace Litterfall.Workshop.Cutting.Trees;

/// <summary>Makes a plan that may be cut out of one that uses too many of some parts.</summary>
internal static class Refill
{
    /// <summary>The tree without parts that are too many, filled up with others.</summary>
    /// <param name="parts">Kinds of parts.</param>
    /// <param name="counts">How many of each there are.</param>
    /// <param name="sheet">The sheet.</param>
    /// <param name="rules">What cuts there may be.</param>
    /// <param name="tree">The tree; null for an empty sheet.</param>
    public static CutNode? Within(
        ImmutableArray<GridPart> parts,
        ReadOnlySpan<int> counts,
        GridSheet sheet,
        CutRules rules,
        CutNode? tree
    )
    {
        int[] left = [.. counts];
        var trimmed = tree is null ? null : Without(tree, left, rules);
        if (
            trimmed is not null
            && (
                !CutNode.IsRest(sheet.Length - trimmed.Length, rules.Strip, rules.Kerf)
                || !CutNode.IsRest(sheet.Width - trimmed.Width, rules.Strip, rules.Kerf)
                || rules.Stages != int.MaxValue
            )
        )
        {
            left = [.. counts];
            trimmed = null;
        }

        var most = Most(parts, left, sheet) + (trimmed is null ? 0 : Size(trimmed));
        var trees = new SheetTrees(parts, [sheet], most, rules);
        if (trimmed is not null)
        {
            trees.Plant(0, trimmed);
        }

        Fill(parts, left, trees);
        return trees.Tree(0);
    }

    private static void Fill(ImmutableArray<GridPart> parts, int[] left, SheetTrees trees)
    {
        foreach (
            var part in Enumerable
                .Range(0, parts.Length)
                .OrderByDescending(p => parts[p].Value / parts[p].Area)
                .ThenByDescending(p => parts[p].Area)
        )
        {
            while (left[part] > 0)
            {
                trees.MeasureRoom();
                var spot = trees.Best(part, null);
                if (spot.Sheet < 0 || !trees.Put(part, spot))
                {
                    break;
                }

                left[part]--;
            }
        }
    }

    private static CutNode? Without(CutNode node, int[] left, CutRules rules)
    {
        if (node.Part >= 0)
        {
            return left[node.Part]-- > 0 ? node : null;
        }

        var first = Without(node.First!, left, rules);
        var second = Without(node.Second!, left, rules);
        return first is null ? second
            : second is null ? first
            : CutNode.Join(first, second, node.IsBeside, rules.Strip, rules.Kerf);
    }

    private static int Size(CutNode node) => node.Part >= 0 ? 1 : Size(node.First!) + Size(node.Second!);

    private static int Most(ImmutableArray<GridPart> parts, int[] left, GridSheet sheet)
    {
        var smallest = parts.Min(p => p.Area);
        var room = sheet.Area / smallest;
        var all = left.Sum(n => (double)Math.Max(0, n));
        return (int)Math.Min(room, all) + 1;
    }
}
