namespace Litterfall.Workshop.Cutting.Trees;

/// <summary>
/// A piece and how it is cut on: a part, or two pieces side by side or one above the other. Its size is the
/// smallest rectangle that gives both; what is left beyond is cut off as a strip.
/// </summary>
internal sealed class CutNode
{
    private CutNode(int length, int width)
    {
        Length = length;
        Width = width;
    }

    /// <summary>Edge along x, grid units.</summary>
    public int Length { get; }

    /// <summary>Edge along y, grid units.</summary>
    public int Width { get; }

    /// <summary>Kind of the part; below 0 for a piece that is cut on.</summary>
    public int Part { get; private init; } = -1;

    /// <summary>True for a part that lies the other way.</summary>
    public bool IsTurned { get; private init; }

    /// <summary>True where the two pieces lie side by side along x.</summary>
    public bool IsBeside { get; private init; }

    /// <summary>First piece; null for a part.</summary>
    public CutNode? First { get; private init; }

    /// <summary>Second piece; null for a part.</summary>
    public CutNode? Second { get; private init; }

    /// <summary>A part.</summary>
    public static CutNode Leaf(int part, GridPart size, bool isTurned) =>
        new(isTurned ? size.Width : size.Length, isTurned ? size.Length : size.Width)
        {
            Part = part,
            IsTurned = isTurned,
        };

    /// <summary>Two pieces side by side or one above the other.</summary>
    /// <param name="first">Left or lower piece.</param>
    /// <param name="second">The other.</param>
    /// <param name="isBeside">True for side by side.</param>
    /// <param name="strip">Narrowest strip with kerf; 0 for any.</param>
    /// <param name="kerf">Kerf.</param>
    public static CutNode Join(CutNode first, CutNode second, bool isBeside, int strip, int kerf) =>
        new(
            isBeside ? first.Length + second.Length : Across(first.Length, second.Length, strip, kerf),
            isBeside ? Across(first.Width, second.Width, strip, kerf) : first.Width + second.Width
        )
        {
            IsBeside = isBeside,
            First = first,
            Second = second,
        };

    /// <summary>
    /// Edge of two pieces across the cut between them: the larger one, and where the rest beside the smaller
    /// would be too narrow to break, so much more that both rests can be broken.
    /// </summary>
    public static int Across(int a, int b, int strip, int kerf)
    {
        var rest = Math.Abs(a - b);
        return Math.Max(a, b) + (rest > kerf && rest < strip ? strip : 0);
    }

    /// <summary>True where a rest can be left: nothing, less than the kerf, or a strip that breaks.</summary>
    public static bool IsRest(int rest, int strip, int kerf) => rest >= 0 && (rest <= kerf || rest >= strip);

    /// <summary>Stages of cuts that part the parts; cutting a part free of a rest is none.</summary>
    public int Stages() => Part >= 0 ? 0 : Math.Max(Under(First!), Under(Second!));

    private int Under(CutNode child) =>
        child.Part < 0 && child.IsBeside == IsBeside ? child.Stages() : child.Stages() + 1;

    /// <summary>Parts of each kind.</summary>
    public void CountInto(Span<int> counts)
    {
        if (Part >= 0)
        {
            counts[Part]++;
            return;
        }

        First!.CountInto(counts);
        Second!.CountInto(counts);
    }
}
