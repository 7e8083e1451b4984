namespace Litterfall.Tests.EndToEnd.Papers;

/// <summary>What holds for each side of each paper.</summary>
internal static class Sheet
{
    /// <summary>ISO 216: A4 is 210 × 297 mm.</summary>
    public static readonly (double Width, double Height) A4 = (210, 297);

    /// <summary>8.5 × 11 in of 25.4 mm.</summary>
    public static readonly (double Width, double Height) Letter = (215.9, 279.4);

    /// <summary>No printer of an office reaches the outer 5 mm (common practice, no source).</summary>
    private const double Margin = 5;

    /// <summary>Smallest type that is read at a bench (common practice, no source).</summary>
    private const double SmallestPoints = 9;

    /// <summary>
    /// Sheets are given in whole points (A4 as 595 × 842), as printers do (common practice, no source).
    /// </summary>
    private const double HalfPoint = 0.5 * 25.4 / 72;

    /// <summary>Sheet, margins, type and bar.</summary>
    public static void IsWell(string name, PdfSide side, (double Width, double Height) size)
    {
        Assert.True(Math.Abs(side.Width - size.Width) <= HalfPoint, $"{name} is {side.Width} mm wide");
        Assert.True(Math.Abs(side.Height - size.Height) <= HalfPoint, $"{name} is {side.Height} mm high");
        var printed = side.Signs.Where(s => s.Text.Trim().Length > 0).ToList();
        Assert.NotEmpty(printed);
        var outside = printed.Where(s => !IsInside(s.Field, size)).Select(s => s.Text).ToList();
        Assert.True(outside.Count == 0, $"{name}: outside the margins '{string.Concat(outside)}'");
        var small = printed.Where(s => s.Letter.PointSize < SmallestPoints - 0.02).ToList();
        Assert.True(
            small.Count == 0,
            $"{name}: {small.Select(s => s.Letter.PointSize).DefaultIfEmpty().Min()} points in "
                + $"'{string.Concat(small.Select(s => s.Text))}'"
        );
        var lines = side.Shapes.Where(s => !IsInside(s.Field, size)).ToList();
        Assert.True(lines.Count == 0, $"{name}: a line at {lines.FirstOrDefault()?.Field}");
        Bar(name, side);
    }

    /// <summary>The bar of the foot is 100 mm long with a tick each 10 mm.</summary>
    private static void Bar(string name, PdfSide side)
    {
        Assert.Contains("print at 100 %: this bar is 100 mm long", side.Running, StringComparison.Ordinal);
        var foot = side.Shapes.Where(s => s.Stroked && s.Field.Top > side.Height - 20).ToList();
        var bars = foot.Where(s => s.Field.Height < 0.01 && s.Field.Width > 50).ToList();
        Assert.True(bars.Count == 1, $"{name}: {bars.Count} bars");
        Assert.True(Math.Abs(bars[0].Field.Width - 100) < 0.1, $"{name}: {bars[0].Field.Width} mm");
        var ticks = foot.Where(s => s.Field.Width < 0.01 && s.Field.Height > 0.5)
            .Select(s => s.Field.Left - bars[0].Field.Left)
            .Order()
            .ToList();
        Assert.Equal(11, ticks.Count);
        Assert.All(ticks.Index(), t => Assert.True(Math.Abs(t.Item - 10 * t.Index) < 0.1, $"{name}: {t}"));
    }

    private static bool IsInside(Field field, (double Width, double Height) size) =>
        field.Left >= Margin
        && field.Top >= Margin
        && field.Right <= size.Width - Margin
        && field.Bottom <= size.Height - Margin;
}
