using System.Text;
using System.Text.RegularExpressions;

namespace Litterfall.UnitTests.House;

/// <summary>Nothing in the repository points at papers a reader of it does not have.</summary>
public sealed partial class WordsTests
{
    private static readonly string[] Text =
    [
        ".cs",
        ".razor",
        ".css",
        ".js",
        ".json",
        ".md",
        ".yaml",
        ".yml",
        ".txt",
        ".csv",
        ".props",
        ".csproj",
        ".slnx",
        ".editorconfig",
        ".gitignore",
        ".svg",
    ];

    [Fact]
    public void No_file_points_outside_the_repository()
    {
        var hits =
            from file in SourceTree.Files([""])
            where Text.Any(e => file.EndsWith(e, StringComparison.Ordinal)) || !Path.HasExtension(file)
            where new FileInfo(file).Length < 4_000_000
            let place = SourceTree.Relative(file)
            from line in File.ReadLines(file, Encoding.UTF8).Select((text, i) => (Text: text, Number: i + 1))
            let hit = Outside().Match(line.Text)
            where hit.Success && !(place.StartsWith("bench/", StringComparison.Ordinal) && IsPath(hit.Value))
            select $"{place}:{line.Number}: {hit.Value}";
        Assert.Empty(hits);
    }

    /// <summary>
    /// The side-by-side runs under bench/ compare with programs that stand beside this checkout.
    /// </summary>
    private static bool IsPath(string hit) => hit.StartsWith("../", StringComparison.Ordinal);

    // Spelled in halves so that this file keeps its own rule.
    [GeneratedRegex(
        @"\b(job|biology|planning|contract|house)\.m"
            + @"d\b"
            + @"|\.\./sha"
            + @"red|/wo"
            + @"rk/|\bsha"
            + @"red/|(?<![\w-])refere"
            + @"nce/|helper[ ]agent"
            + @"|buying_ca"
            + "ses|shop_ca"
            + "ses",
        RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture,
        1000
    )]
    private static partial Regex Outside();
}
