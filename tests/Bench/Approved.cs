using SkiaSharp;

namespace Litterfall.Tests.Bench;

/// <summary>
/// Pictures that were looked at and approved, compared roughly: in gray, a tenth of their size.
/// </summary>
internal static class Approved
{
    private const int Shrink = 10;
    private const double MostDifference = 0.03;

    /// <summary>
    /// The picture differs from the approved one by less than 3 % of full gray on the mean.
    /// </summary>
    /// <param name="png">The picture now.</param>
    /// <param name="name">File of the approved one.</param>
    public static void Check(byte[] png, string name)
    {
        var path = Path.Combine(AppContext.BaseDirectory, "Approved", name);
        if (Environment.GetEnvironmentVariable("LITTERFALL_APPROVE") == "1")
        {
            File.WriteAllBytes(Path.Combine(Source(), "Approved", name), png);
            return;
        }

        var (now, then) = (Gray(png), Gray(File.ReadAllBytes(path)));
        Assert.Equal(then.Width, now.Width);
        Assert.Equal(then.Height, now.Height);
        var difference = now.Values.Zip(then.Values, (a, b) => Math.Abs(a - b)).Average() / 255.0;
        if (difference > MostDifference)
        {
            File.WriteAllBytes(Path.Combine(Path.GetTempPath(), $"now-{name}"), png);
        }

        Assert.True(
            difference <= MostDifference,
            FormattableString.Invariant(
                $"{name} differs by {100 * difference:0.0} %; see {Path.GetTempPath()}now-{name}"
            )
        );
    }

    private static (int Width, int Height, double[] Values) Gray(byte[] png)
    {
        using var full = SKBitmap.Decode(png);
        using var small = full.Resize(
            new SKImageInfo(full.Width / Shrink, full.Height / Shrink),
            new SKSamplingOptions(SKFilterMode.Linear, SKMipmapMode.Linear)
        );
        return (
            small.Width,
            small.Height,
            [.. small.Pixels.Select(p => (0.299 * p.Red) + (0.587 * p.Green) + (0.114 * p.Blue))]
        );
    }

    private static string Source()
    {
        var folder = new DirectoryInfo(AppContext.BaseDirectory);
        while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "Tests.Bench.csproj")))
        {
            folder = folder.Parent;
        }

        return folder!.FullName;
    }
}
