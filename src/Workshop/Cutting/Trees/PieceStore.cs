using System.Runtime.InteropServices;

namespace Litterfall.Workshop.Cutting.Trees;

/// <summary>Pieces built up from parts, with how many of each kind are in them.</summary>
internal sealed class PieceStore
{
    private readonly int kinds;
    private readonly List<byte> counts = [];
    private readonly List<Piece> pieces = [];
    private readonly Dictionary<ulong, int> heads = [];
    private readonly List<int> nexts = [];

    /// <summary>No pieces.</summary>
    /// <param name="kinds">Kinds of parts.</param>
    public PieceStore(int kinds)
    {
        this.kinds = kinds;
    }

    /// <summary>How many there are.</summary>
    public int Count => pieces.Count;

    /// <summary>A piece.</summary>
    /// <param name="Length">Edge along x.</param>
    /// <param name="Width">Edge along y.</param>
    /// <param name="First">First piece, or kind of the part.</param>
    /// <param name="Second">Second piece; below 0 for a part: -1 as it is, -2 turned.</param>
    /// <param name="IsBeside">True where the two lie side by side.</param>
    /// <param name="Priced">Value less prices.</param>
    /// <param name="Value">Value.</param>
    public readonly record struct Piece(
        int Length,
        int Width,
        int First,
        int Second,
        bool IsBeside,
        double Priced,
        double Value
    );

    /// <summary>A piece.</summary>
    public Piece At(int index) => pieces[index];

    /// <summary>How many of each kind are in a piece.</summary>
    public ReadOnlySpan<byte> Counts(int index) =>
        CollectionsMarshal.AsSpan(counts).Slice(index * kinds, kinds);

    /// <summary>Adds two pieces' numbers; false where there are not so many parts.</summary>
    public bool Sum(int a, int b, ReadOnlySpan<byte> most, Span<byte> into)
    {
        var one = Counts(a);
        var other = Counts(b);
        var i = 0;
        for (; i + 8 <= kinds; i += 8)
        {
            var sum = MemoryMarshal.Read<ulong>(one[i..]) + MemoryMarshal.Read<ulong>(other[i..]);
            // Numbers stay below 128, so that the top bit of each byte tells a number that is too large.
            if (
                ((MemoryMarshal.Read<ulong>(most[i..]) | 0x8080808080808080UL) - sum & 0x8080808080808080UL)
                != 0x8080808080808080UL
            )
            {
                return false;
            }

            MemoryMarshal.Write(into[i..], sum);
        }

        for (; i < kinds; i++)
        {
            var sum = one[i] + other[i];
            if (sum > most[i])
            {
                return false;
            }

            into[i] = (byte)sum;
        }

        return true;
    }

    /// <summary>Adds a piece unless one of the same parts is no larger; returns its index or -1.</summary>
    public int Add(in Piece piece, ReadOnlySpan<byte> numbers)
    {
        var key = Key(numbers);
        ref var head = ref CollectionsMarshal.GetValueRefOrAddDefault(heads, key, out var isKnown);
        for (var i = isKnown ? head : -1; i >= 0; i = nexts[i])
        {
            if (
                pieces[i].Length <= piece.Length
                && pieces[i].Width <= piece.Width
                && Counts(i).SequenceEqual(numbers)
            )
            {
                return -1;
            }
        }

        var index = pieces.Count;
        pieces.Add(piece);
        counts.AddRange(numbers);
        nexts.Add(isKnown ? head : -1);
        head = index;
        return index;
    }

    private static ulong Key(ReadOnlySpan<byte> numbers)
    {
        var key = 14695981039346656037UL;
        foreach (var number in numbers)
        {
            key = (key ^ number) * 1099511628211UL;
        }

        return key;
    }
}
