using SkiaSharp;

namespace Litterfall.Tests.Bench;

/// <summary>
/// Two pictures of one page. Letters and lines may move by a pixel or two, as they do with another browser;
/// what is gone, or new, or of another gray, is told with its place.
/// </summary>
internal static class Pictures
{
    /// <summary>Side of a region in pixels: four lines of text.</summary>
    private const int Region = 80;

    /// <summary>Regions are looked at in a quarter of their size: a shift of a pixel hardly counts.</summary>
    private const int Shrink = 4;

    /// <summary>Largest change of the mean gray of a region, as a share of full gray.</summary>
    private const double MostGray = 0.04;

    /// <summary>A region holds something where its grays spread by more than this.</summary>
    private const double Something = 0.035;

    /// <summary>So much of the spread must stay.</summary>
    private const double LeastKept = 0.5;

    /// <summary>Where the two differ, in words.</summary>
    public static IReadOnlyList<string> Differences(byte[] then, byte[] now)
    {
        var (one, other) = (Gray(then), Gray(now));
        if (one.Width != other.Width || one.Height != other.Height)
        {
            return
            [
                $"{Shrink * one.Width} × {Shrink * one.Height} pixels then, "
                    + $"{Shrink * other.Width} × {Shrink * other.Height} now",
            ];
        }

        const int step = Region / Shrink;
        return
        [
            .. from top in Enumerable.Range(0, one.Height / step)
            from left in Enumerable.Range(0, one.Width / step)
            let difference = Difference(
                Measure(one, left * step, top * step, step),
                Measure(other, left * step, top * step, step)
            )
            where difference is not null
            select $"{left * Region},{top * Region}: {difference}",
        ];
    }

    private static string? Difference((double Gray, double Spread) then, (double Gray, double Spread) now)
    {
        if (Math.Abs(then.Gray - now.Gray) > MostGray)
        {
            return FormattableString.Invariant($"gray {then.Gray:0.00} then, {now.Gray:0.00} now");
        }

        var (least, most) = (Math.Min(then.Spread, now.Spread), Math.Max(then.Spread, now.Spread));
        return most > Something && least < LeastKept * most
            ? FormattableString.Invariant($"spread {then.Spread:0.00} then, {now.Spread:0.00} now")
            : null;
    }

    private static (double Gray, double Spread) Measure(Grays picture, int left, int top, int step)
    {
        var values = new List<double>(step * step);
        for (var y = top; y < top + step; y++)
        {
            values.AddRange(picture.Values.AsSpan((y * picture.Width) + left, step));
        }

        var mean = values.Average();
        return (mean, Math.Sqrt(values.Average(v => (v - mean) * (v - mean))));
    }

    private static Grays Gray(byte[] png)
    {
        using var full = SKBitmap.Decode(png);
        using var small = full.Resize(
            new SKImageInfo(full.Width / Shrink, full.Height / Shrink),
            new SKSamplingOptions(SKFilterMode.Linear, SKMipmapMode.Linear)
        );
        return new(
            small.Width,
            small.Height,
            [.. small.Pixels.Select(p => ((0.299 * p.Red) + (0.587 * p.Green) + (0.114 * p.Blue)) / 255)]
        );
    }

    private sealed record Grays(int Width, int Height, double[] Values);
}
