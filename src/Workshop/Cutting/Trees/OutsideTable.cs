namespace Litterfall.Workshop.Cutting.Trees;

/// <summary>
/// Most value that can be had outside a rectangle in the corner of the sheet, with parts without number: the
/// bound of Viswanathan and Bagchi (1993) for building up from below. U(L, W) = 0, U(x, y) = max
/// { U(x′, y) + F(x′ − x, y), U(x, y′) + F(x, y′ − y) }.
/// </summary>
internal sealed class OutsideTable
{
    private readonly ValueTable inside;
    private readonly double[] most;

    /// <summary>The bounds of a filled table.</summary>
    /// <param name="inside">Values of all rectangles.</param>
    /// <param name="cancel">Ends it.</param>
    public OutsideTable(ValueTable inside, CancellationToken cancel)
    {
        this.inside = inside;
        most = new double[(long)inside.AlongX.Count * inside.AlongY.Count];
        for (var x = inside.AlongX.Count - 1; x >= 0; x--)
        {
            cancel.ThrowIfCancellationRequested();
            Widen(x);
            Heighten(x);
        }
    }

    /// <summary>Bound outside a rectangle of a size.</summary>
    public double Of(int length, int width) =>
        most[inside.AlongX.Below(length) * inside.AlongY.Count + inside.AlongY.Below(width)];

    private void Widen(int x)
    {
        var points = inside.AlongX;
        var height = inside.AlongY.Count;
        var into = most.AsSpan(x * height, height);
        var last = -1;
        for (var wider = x + 1; wider < points.Count; wider++)
        {
            var gained = points.Below(points.Places[wider] - points.Places[x]);
            if (gained == last)
            {
                continue;
            }

            last = gained;
            var beyond = most.AsSpan(wider * height, height);
            var piece = inside.Column(gained);
            for (var y = 0; y < height; y++)
            {
                into[y] = Math.Max(into[y], beyond[y] + piece[y]);
            }
        }
    }

    private void Heighten(int x)
    {
        var points = inside.AlongY;
        var into = most.AsSpan(x * points.Count, points.Count);
        var piece = inside.Column(x);
        for (var y = points.Count - 2; y >= 0; y--)
        {
            var value = into[y];
            for (var higher = y + 1; higher < points.Count; higher++)
            {
                var gained = points.Below(points.Places[higher] - points.Places[y]);
                value = Math.Max(value, into[higher] + piece[gained]);
            }

            into[y] = value;
        }
    }
}
