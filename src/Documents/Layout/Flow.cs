using Litterfall.Documents.Drawings;

namespace Litterfall.Documents.Layout;

/// <summary>Sets blocks into rooms one after another, as a newspaper fills its columns.</summary>
internal static class Flow
{
    private const double Rounding = 1e-6;

    /// <summary>How many blocks found room; all of them when the page fits.</summary>
    public static int Set(IReadOnlyList<Block> blocks, IReadOnlyList<Room> rooms, Style style, Sketch? sketch)
    {
        var next = 0;
        foreach (var room in rooms)
        {
            var y = room.Y;
            while (next < blocks.Count && Fits(blocks, next, room, y, style))
            {
                if (sketch is not null)
                {
                    blocks[next].Draw(sketch, new(room.X, y), room.Width, style);
                }

                y += blocks[next].Height(room.Width, style);
                next++;
                if (blocks[next - 1] is ColumnBreak)
                {
                    break;
                }
            }
        }

        return next;
    }

    /// <summary>Height of all blocks in one column.</summary>
    public static double Height(IReadOnlyList<Block> blocks, double width, Style style) =>
        blocks.Sum(b => b.Height(width, style));

    /// <summary>
    /// Groups of blocks in two columns of one height, the order kept within each: at a plain break if one
    /// fits, else whichever sharing of the groups leaves the columns most alike; the plain order where
    /// nothing fits.
    /// </summary>
    public static IReadOnlyList<Block> Shared(
        IReadOnlyList<IReadOnlyList<Block>> groups,
        Room column,
        Style style
    )
    {
        var full = groups.Where(g => g.Count > 0).ToList();
        var heights = full.ConvertAll(g => Height(g, column.Width, style));
        var (best, least) = (-1, double.MaxValue);
        for (var set = 1; set < 1 << Math.Min(full.Count, 12); set += 2)
        {
            var left = full.Select((_, i) => (set >> i & 1) == 1 ? heights[i] : 0).Sum();
            var right = heights.Sum() - left;
            var plain = (set & (set + 1)) == 0;
            var cost = Math.Abs(left - right) - (plain ? column.Height : 0);
            if (left <= column.Height + Rounding && right <= column.Height + Rounding && cost < least)
            {
                (best, least) = (set, cost);
            }
        }

        return best < 0
            ? [.. full.SelectMany(g => g)]
            :
            [
                .. full.Where((_, i) => (best >> i & 1) == 1).SelectMany(g => g),
                new ColumnBreak(),
                .. full.Where((_, i) => (best >> i & 1) == 0).SelectMany(g => g),
            ];
    }

    /// <summary>Equal columns side by side.</summary>
    public static Room[] Columns(Room room, int count, double gutter = 6)
    {
        var width = (room.Width - gutter * (count - 1)) / count;
        return
        [
            .. Enumerable
                .Range(0, count)
                .Select(i => room with { X = room.X + i * (width + gutter), Width = width }),
        ];
    }

    private static bool Keeps(Block block, Style style) =>
        block.KeepsWithNext || (block.PrefersNext && !style.Breaks);

    /// <summary>A heading fits only together with what it heads.</summary>
    private static bool Fits(IReadOnlyList<Block> blocks, int at, Room room, double y, Style style)
    {
        var end = y + blocks[at].Height(room.Width, style);
        for (var i = at; i + 1 < blocks.Count && Keeps(blocks[i], style); i++)
        {
            end += blocks[i + 1].Height(room.Width, style);
        }

        return end <= room.Y + room.Height + Rounding;
    }
}
