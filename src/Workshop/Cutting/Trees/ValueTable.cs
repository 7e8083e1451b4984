using System.Collections.Immutable;
using System.Numerics;
using System.Runtime.InteropServices;

namespace Litterfall.Workshop.Cutting.Trees;

/// <summary>
/// Most value that straight cuts get out of every rectangle when parts of each kind are without number
/// (Gilmore and Gomory 1966; Beasley 1985): F(x, y) = max { best part that fits, max F(p, y) + F(x − p, y),
/// max F(x, q) + F(x, y − q) }. A place p at which F is no larger than before it gives nothing that the place
/// before does not give, so only steps are tried.
/// </summary>
internal sealed class ValueTable
{
    private readonly ImmutableArray<GridPart> parts;
    private readonly CutPoints alongX;
    private readonly CutPoints alongY;
    private readonly double[] best;
    private readonly bool[] isStep;

    /// <summary>An empty table for rectangles up to a size.</summary>
    /// <param name="parts">Kinds of parts.</param>
    /// <param name="length">Largest edge along x.</param>
    /// <param name="width">Largest edge along y.</param>
    public ValueTable(ImmutableArray<GridPart> parts, int length, int width)
        : this(parts, CutPoints.Along(parts, length, true), CutPoints.Along(parts, width, false)) { }

    /// <summary>An empty table over given places.</summary>
    public ValueTable(ImmutableArray<GridPart> parts, CutPoints alongX, CutPoints alongY)
    {
        this.parts = parts;
        this.alongX = alongX;
        this.alongY = alongY;
        best = new double[(long)alongX.Count * alongY.Count];
        isStep = new bool[alongX.Count];
    }

    /// <summary>Places along x.</summary>
    public CutPoints AlongX => alongX;

    /// <summary>Places along y.</summary>
    public CutPoints AlongY => alongY;

    /// <summary>Value of a rectangle given by the indices of its edges.</summary>
    public double At(int x, int y) => best[x * alongY.Count + y];

    /// <summary>Values of one length and every width.</summary>
    public ReadOnlySpan<double> Column(int x) => best.AsSpan(x * alongY.Count, alongY.Count);

    /// <summary>Value of a rectangle of any size within the table.</summary>
    public double Of(int length, int width) => At(alongX.Below(length), alongY.Below(width));

    /// <summary>Fills the table.</summary>
    /// <param name="values">Value of each kind of part; those of 0 or less are left out.</param>
    /// <param name="cancel">Ends it.</param>
    public void Fill(ReadOnlySpan<double> values, CancellationToken cancel)
    {
        var single = Singles(values);
        var steps = new int[alongY.Count];
        Array.Clear(isStep);
        for (var x = 1; x < alongX.Count; x++)
        {
            if ((x & 15) == 0)
            {
                cancel.ThrowIfCancellationRequested();
            }

            var column = best.AsSpan(x * alongY.Count, alongY.Count);
            var before = best.AsSpan((x - 1) * alongY.Count, alongY.Count);
            if (x == 1)
            {
                before.Clear();
            }

            before.CopyTo(column);
            foreach (var (y, value) in single[x])
            {
                Raise(column, y, value);
            }

            CutUpright(x, column);
            CutLevel(column, steps);
            isStep[x] = !column.SequenceEqual(before);
        }
    }

    /// <summary>The cuts that give the value of a rectangle; null where nothing of worth fits.</summary>
    /// <param name="values">Values the table was filled with.</param>
    /// <param name="x">Index of its length.</param>
    /// <param name="y">Index of its width.</param>
    public CutNode? Cuts(ReadOnlySpan<double> values, int x, int y)
    {
        var value = At(x, y);
        if (value <= 0)
        {
            return null;
        }

        while (x > 0 && At(x - 1, y) == value)
        {
            x--;
        }

        while (y > 0 && At(x, y - 1) == value)
        {
            y--;
        }

        return Single(values, x, y) ?? Split(values, x, y, true) ?? Split(values, x, y, false);
    }

    private CutNode? Single(ReadOnlySpan<double> values, int x, int y)
    {
        var (length, width) = (alongX.Places[x], alongY.Places[y]);
        for (var i = 0; i < parts.Length; i++)
        {
            if (values[i] != At(x, y))
            {
                continue;
            }

            if (parts[i].Length <= length && parts[i].Width <= width)
            {
                return CutNode.Leaf(i, parts[i], false);
            }

            if (parts[i].MayTurn && parts[i].Width <= length && parts[i].Length <= width)
            {
                return CutNode.Leaf(i, parts[i], true);
            }
        }

        return null;
    }

    private CutNode? Split(ReadOnlySpan<double> values, int x, int y, bool isBeside)
    {
        var points = isBeside ? alongX : alongY;
        var whole = points.Places[isBeside ? x : y];
        for (var p = 1; p < points.Count && 2 * points.Places[p] <= whole; p++)
        {
            var rest = points.Below(whole - points.Places[p]);
            var (one, other) = isBeside ? (At(p, y), At(rest, y)) : (At(x, p), At(x, rest));
            if (one <= 0 || other <= 0 || one + other != At(x, y))
            {
                continue;
            }

            var first = isBeside ? Cuts(values, p, y) : Cuts(values, x, p);
            var second = isBeside ? Cuts(values, rest, y) : Cuts(values, x, rest);
            return CutNode.Join(first!, second!, isBeside, 0, 0);
        }

        return null;
    }

    /// <summary>Single parts by the first length at which they fit.</summary>
    private List<(int Y, double Value)>[] Singles(ReadOnlySpan<double> values)
    {
        var single = new List<(int, double)>[alongX.Count];
        for (var x = 0; x < single.Length; x++)
        {
            single[x] = [];
        }

        for (var i = 0; i < parts.Length; i++)
        {
            if (values[i] <= 0)
            {
                continue;
            }

            AddSingle(single, parts[i].Length, parts[i].Width, values[i]);
            if (parts[i].MayTurn)
            {
                AddSingle(single, parts[i].Width, parts[i].Length, values[i]);
            }
        }

        return single;
    }

    private void AddSingle(List<(int, double)>[] single, int length, int width, double value)
    {
        if (length <= alongX.Places[^1] && width <= alongY.Places[^1])
        {
            single[alongX.From(length)].Add((alongY.From(width), value));
        }
    }

    private static void Raise(Span<double> column, int from, double value)
    {
        for (var y = from; y < column.Length; y++)
        {
            column[y] = Math.Max(column[y], value);
        }
    }

    /// <summary>Cuts along y at one x: whole columns are added.</summary>
    private void CutUpright(int x, Span<double> column)
    {
        var place = alongX.Places[x];
        var height = alongY.Count;
        var into = MemoryMarshal.Cast<double, Vector<double>>(column);
        var tail = into.Length * Vector<double>.Count;
        for (var p = 1; p < x && 2 * alongX.Places[p] <= place; p++)
        {
            if (!isStep[p])
            {
                continue;
            }

            var left = best.AsSpan(p * height, height);
            var right = best.AsSpan(alongX.Below(place - alongX.Places[p]) * height, height);
            var a = MemoryMarshal.Cast<double, Vector<double>>(left);
            var b = MemoryMarshal.Cast<double, Vector<double>>(right);
            for (var i = 0; i < into.Length; i++)
            {
                into[i] = Vector.Max(into[i], a[i] + b[i]);
            }

            for (var y = tail; y < height; y++)
            {
                column[y] = Math.Max(column[y], left[y] + right[y]);
            }
        }
    }

    /// <summary>Cuts along x at one y.</summary>
    private void CutLevel(Span<double> column, int[] steps)
    {
        var places = alongY.Places;
        var count = 0;
        for (var y = 1; y < column.Length; y++)
        {
            var value = Math.Max(column[y], column[y - 1]);
            var place = places[y];
            for (var s = 0; s < count; s++)
            {
                var q = steps[s];
                if (2 * places[q] > place)
                {
                    break;
                }

                value = Math.Max(value, column[q] + column[alongY.Below(place - places[q])]);
            }

            column[y] = value;
            if (value > column[y - 1])
            {
                steps[count++] = y;
            }
        }
    }
}
