using System.Collections.Immutable;

namespace Litterfall.Workshop.Cutting.Trees;

/// <summary>
/// Places at which cuts need to be looked for along one axis: sums of edges of parts, never more of a kind
/// than there are (the normal patterns of Herz 1972 and Christofides and Whitlock 1977).
/// </summary>
internal sealed class CutPoints
{
    private readonly int[] below;

    private CutPoints(int[] places, int[] below)
    {
        Places = places;
        this.below = below;
    }

    /// <summary>Places, rising, from 0 to the whole edge.</summary>
    public int[] Places { get; }

    /// <summary>How many there are.</summary>
    public int Count => Places.Length;

    /// <summary>Index of the largest place that is no farther.</summary>
    /// <param name="place">Place, grid units, 0 to the whole edge.</param>
    public int Below(int place) => below[place];

    /// <summary>Index of the first place that is as far or farther.</summary>
    public int From(int place)
    {
        var index = below[place];
        return Places[index] == place ? index : index + 1;
    }

    /// <summary>Places along an edge of so many grid units.</summary>
    /// <param name="parts">Kinds of parts.</param>
    /// <param name="edge">The edge.</param>
    /// <param name="isAlongX">True for the edge along x.</param>
    public static CutPoints Along(ImmutableArray<GridPart> parts, int edge, bool isAlongX)
    {
        var reached = new bool[edge + 1];
        reached[0] = true;
        foreach (var part in parts)
        {
            var (one, other) = isAlongX ? (part.Length, part.Width) : (part.Width, part.Length);
            Reach(reached, one, part.MayTurn ? other : one, part.Count);
        }

        reached[edge] = true;
        var floors = new int[edge + 1];
        var places = new List<int>();
        for (var i = 0; i <= edge; i++)
        {
            if (reached[i])
            {
                places.Add(i);
            }

            floors[i] = places.Count - 1;
        }

        return new([.. places], floors);
    }

    /// <summary>Adds the sums with up to so many pieces of one edge or the other.</summary>
    private static void Reach(bool[] reached, int one, int other, int count)
    {
        var edge = reached.Length - 1;
        var smaller = Math.Min(one, other);
        if (smaller > edge)
        {
            return;
        }

        if (count >= edge / smaller)
        {
            for (var i = smaller; i <= edge; i++)
            {
                reached[i] |= (i >= one && reached[i - one]) || (i >= other && reached[i - other]);
            }

            return;
        }

        for (var piece = 0; piece < count; piece++)
        {
            for (var i = edge; i >= smaller; i--)
            {
                reached[i] |= (i >= one && reached[i - one]) || (i >= other && reached[i - other]);
            }
        }
    }
}
