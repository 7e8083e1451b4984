using System.Globalization;
using System.Text;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Forecasting.Tracing;

namespace Litterfall.Documents.Text;

/// <summary>Where a number comes from, as an indented tree.</summary>
public static class WhyText
{
    /// <summary>The derivation of one key.</summary>
    /// <param name="key">Key of the number.</param>
    /// <param name="node">The number, or why there is none.</param>
    /// <param name="titles">Titles of sources.</param>
    /// <param name="weights">What it rests on by weight; null where it is not simulated.</param>
    public static string Write(
        string key,
        ReportNode node,
        IReadOnlyDictionary<string, string> titles,
        Sensitivity? weights = null
    )
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
        Weigh(text, weights, number.Unit);
        new WhyTree(text, sources, weights).Describe(number.Figure, 1);
        text.Append("\nSources\n");
        foreach (var source in sources)
        {
            text.Append("  ").Append(source).Append(": ").Append(Title(source, titles)).Append('\n');
        }

        return text.ToString();
    }

    /// <summary>What moves it most, the heaviest first.</summary>
    private static void Weigh(StringBuilder text, Sensitivity? weights, Unit unit)
    {
        if (weights is null)
        {
            return;
        }

        var table = new TextTable("what moves it", "from", "to", "", "result", "", "share", "provenance");
        foreach (var row in weights.Rows)
        {
            table.Add(
                Terminal.Clean(row.Input.Name!),
                Plain(row.Low),
                Plain(row.High),
                Symbol(row.Input.Unit!),
                $"{Plain(row.ResultLow)} to {Plain(row.ResultHigh)}",
                Symbol(unit),
                string.Create(CultureInfo.InvariantCulture, $"{row.SharePercent:0.#} %"),
                row.Input.Trust.Word()
            );
        }

        text.Append('\n').Append(table);
        text.Append(
                CultureInfo.InvariantCulture,
                $"\n  all others of {weights.Tried} inputs together: {weights.RestPercent:0.#} %\n"
            )
            .Append(
                Terminal.Wrapped(
                    "Each input alone at the least and the most it may be (a tenth either way, or 1 K, where "
                        + "no range is known); shares are those of the squares of the spreads. By what "
                        + "carries "
                        + $"weight this number is {weights.Provenance.Word()}.",
                    "  "
                )
            )
            .Append('\n');
    }

    private static string Plain(double? number) =>
        number is { } value ? value.ToString("G4", CultureInfo.InvariantCulture) : "none";

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

    internal static string Symbol(Unit unit) => unit == Unit.One ? "" : unit.Symbol;
}
