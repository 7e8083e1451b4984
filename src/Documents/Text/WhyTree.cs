using System.Globalization;
using System.Text;
using Litterfall.Domain.Figures;
using Litterfall.Forecasting.Tracing;

namespace Litterfall.Documents.Text;

/// <summary>A derivation as an indented tree; what carries no weight is only counted.</summary>
/// <param name="text">Written to.</param>
/// <param name="sources">Takes the sources that were named.</param>
/// <param name="weights">What carries weight; null where all is told.</param>
internal sealed class WhyTree(StringBuilder text, SortedSet<string> sources, Sensitivity? weights)
{
    /// <summary>Deeper figures with more inputs than this are models of their own.</summary>
    private const int ManyInputs = 12;

    private readonly HashSet<string> shown = [];

    /// <summary>A figure and what is below it.</summary>
    /// <param name="figure">The figure.</param>
    /// <param name="depth">Depth in the tree.</param>
    public void Describe(Figure figure, int depth)
    {
        var indent = new string(' ', depth * 2);
        sources.Add(figure.Origin.Source);
        var unit = figure.Unit!;
        text.Append(
            CultureInfo.InvariantCulture,
            $"{indent}{Terminal.Clean(figure.Name!)} = {new ReportNumber(figure, unit).Number} "
                + $"{WhyText.Symbol(unit)}\n"
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
        Below(figure, depth, indent);
    }

    private void Below(Figure figure, int depth, string indent)
    {
        if (weights is not null && depth > 1 && figure.Inputs.Length > ManyInputs)
        {
            text.Append(
                CultureInfo.InvariantCulture,
                $"{indent}  (a model of its own, on {figure.Inputs.Length} inputs)\n"
            );
            return;
        }

        var light = figure.Inputs.Count(IsLight);
        foreach (var input in figure.Inputs.Where(i => !IsLight(i)))
        {
            Describe(input, depth + 1);
        }

        if (light > 0)
        {
            text.Append(CultureInfo.InvariantCulture, $"{indent}  and {light} inputs that carry less than ")
                .Append(CultureInfo.InvariantCulture, $"{Sensitivity.Weighs:0} % each (--json lists them)\n");
        }
    }

    private bool IsLight(Figure input) => weights?.Light.Contains(input.Identity) == true;
}
