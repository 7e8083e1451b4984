using System.Globalization;
using System.Text;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;

namespace Litterfall.Documents.Text;

/// <summary>Where a number comes from, as an indented tree.</summary>
public static class WhyText
{
    /// <summary>The derivation of one key.</summary>
    public static string Write(string key, ReportNode node, IReadOnlyDictionary<string, string> titles)
    {
        if (node is not ReportNumber number)
        {
            return $"{key} is not given: {Terminal.Clean(((ReportAbsent)node).Reason)}\n";
        }

        var text = new StringBuilder();
        text.Append(
            CultureInfo.InvariantCulture,
            $"{key} = {number.Number} {Symbol(number.Unit)}{Rate(key)}\n"
        );
        var sources = new SortedSet<string>(StringComparer.Ordinal);
        Describe(text, number.Figure, 1, sources, []);
        text.Append("\nSources\n");
        foreach (var source in sources)
        {
            text.Append("  ").Append(source).Append(": ").Append(Title(source, titles)).Append('\n');
        }

        return text.ToString();
    }

    private static string Title(string source, IReadOnlyDictionary<string, string> titles) =>
        source switch
        {
            "design" => "the design file",
            "workshop" => "the workshop's own folder",
            "own-choice" => "our own choice, with the reason given",
            _ => titles.GetValueOrDefault(source, "our own derivation; the equation is its evidence"),
        };

    /// <summary>Keys name the time that an amount is counted for; its unit alone would not.</summary>
    private static string Rate(string key) =>
        key.Contains("PerDay", StringComparison.Ordinal) ? " a day"
        : key.Contains("PerWeek", StringComparison.Ordinal) ? " a week"
        : key.EndsWith("Year", StringComparison.Ordinal) ? " a year"
        : "";

    private static string Symbol(Unit unit) => unit == Unit.One ? "" : unit.Symbol;

    private static void Describe(
        StringBuilder text,
        Figure figure,
        int depth,
        SortedSet<string> sources,
        HashSet<string> shown
    )
    {
        var indent = new string(' ', depth * 2);
        sources.Add(figure.Origin.Source);
        var unit = figure.Unit!;
        text.Append(
            CultureInfo.InvariantCulture,
            $"{indent}{Terminal.Clean(figure.Name!)} = {new ReportNumber(figure, unit).Number} "
                + $"{Symbol(unit)}\n"
        );
        if (!shown.Add(figure.Identity))
        {
            text.Append(indent).Append("  (shown above)\n");
            return;
        }

        if (!figure.IsGiven)
        {
            text.Append(Terminal.Wrapped("= " + figure.Equation, indent + "  "));
        }

        text.Append(
            Terminal.Wrapped(
                $"[{figure.Trust.Word()}; "
                    + $"{figure.Origin.Source}: {figure.Origin.Place}]"
                    + (
                        figure.Remark is null || figure.Remark == figure.Origin.Place
                            ? ""
                            : $" {figure.Remark}"
                    ),
                indent + "  "
            )
        );
        foreach (var input in figure.Inputs)
        {
            Describe(text, input, depth + 1, sources, shown);
        }
    }
}
