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
            }
        }

        return next;
    }

    /// <summary>Height of all blocks in one column.</summary>
    public static double Height(IReadOnlyList<Block> blocks, double width, Style style) =>
        blocks.Sum(b => b.Height(width, style));

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
