using System.Text.RegularExpressions;
using Litterfall.Domain.DesignFile;
using Litterfall.Judging;

namespace Litterfall.UnitTests.House;

/// <summary>
/// What nobody who has never seen a design file understands: keys with values, paths, names of rules and of
/// library entries, braces and file names. Sentences of findings, screens and papers have none of it.
/// </summary>
internal static partial class FileSyntax
{
    private static readonly TimeSpan Soon = TimeSpan.FromMinutes(1);

    /// <summary>Names of rules and entries that are words of the trade as well.</summary>
    private static readonly string[] Words = ["no-cover", "fan-palm", "tree-frog", "sealed-lid"];

    /// <summary>Keys that stand before a number as plain labels: "planted: 52 lb".</summary>
    private const string Labels =
        "box|boxes|level|planted|plants|animals|depth|height|length|width|lid|soil|outside|inside|fan|floor";

    private static readonly HashSet<string> Slugs =
    [
        .. RuleBook
            .All.Select(rule => rule.Slug)
            .Concat(SampleFiles.Catalog.Entries.Select(entry => entry.Key))
            .Where(key => key.Contains('-', StringComparison.Ordinal))
            .Except(Words),
    ];

    private static readonly string Keys = string.Join(
        '|',
        DesignKeys().Where(key => char.IsLetter(key[0])).Distinct(StringComparer.Ordinal)
    );

    private static readonly Regex Value = new(
        $@"(?<![\w.-])(?:{Keys}): ?(?:true|false|none|held|missing|\.\.\.|[\[{{])"
            + $@"|(?<![\w.-])(?!(?:{Labels}):)(?:{Keys}): ?\d",
        RegexOptions.ExplicitCapture,
        Soon
    );

    private static readonly Regex Path = new(
        $@"(?<![\w.-])(?:{Keys})(?:\[\d+\])?\.(?:{Keys})\b|\w\[\d+\]",
        RegexOptions.ExplicitCapture,
        Soon
    );

    /// <summary>Each piece of file syntax in a text.</summary>
    public static IEnumerable<string> In(string text)
    {
        foreach (
            var match in Value
                .Matches(text)
                .Concat(Path.Matches(text))
                .Concat(Camel().Matches(text))
                .Concat(Marks().Matches(text))
                .Concat(Compound().Matches(text).Where(m => Slugs.Contains(m.Value)))
        )
        {
            var from = Math.Max(0, match.Index - 30);
            yield return $"'{match.Value}' in: {text.AsSpan(from, Math.Min(90, text.Length - from))}";
        }
    }

    private static IEnumerable<string> DesignKeys()
    {
        var schema = DesignSchema.Write(SampleFiles.Catalog);
        return schema["$defs"]!
            .AsObject()
            .Select(record => record.Value!["properties"]!.AsObject())
            .Append(schema["properties"]!.AsObject())
            .SelectMany(record => record.Select(key => key.Key));
    }

    /// <summary>Not the units and signs that are written so.</summary>
    [GeneratedRegex(
        @"\b(?!(?:mL|pH|kPa|kW|mA|mW|dB|mS|kWh|cmHg|kJ|mgL|hPa|kHz|lmW)\b)[a-z]+[A-Z]\w*",
        RegexOptions.ExplicitCapture,
        60_000
    )]
    private static partial Regex Camel();

    [GeneratedRegex(@"[{}`]|\.(?:yaml|yml|json|csv|viv)\b|\bviv\b", RegexOptions.ExplicitCapture, 60_000)]
    private static partial Regex Marks();

    [GeneratedRegex(
        @"(?<![\w-])[a-z0-9]+(?:-[a-z0-9]+(?:\.\d+)?)+(?![\w-])",
        RegexOptions.ExplicitCapture,
        60_000
    )]
    private static partial Regex Compound();
}
