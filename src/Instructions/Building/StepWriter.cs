using System.Collections.Immutable;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Figures;
using Litterfall.Forecasting;
using Litterfall.Quantities.Measures;

namespace Litterfall.Instructions.Building;

/// <summary>
/// Writes the steps of one group: each number goes into the text and, with its derivation, into the step.
/// </summary>
internal sealed class StepWriter(DesignNumbers numbers)
{
    private readonly ImmutableArray<BuildStep>.Builder steps = ImmutableArray.CreateBuilder<BuildStep>();
    private readonly List<Figure> figures = [];
    private readonly List<Citation> sources = [];

    /// <summary>True when depths carry inches beside them.</summary>
    public bool Inches { get; } = Imperial.IsUsed(numbers.Design.Design);

    public string Liters(Figure f) => Keep(f, NumberText.Liters(f));

    public string Milliliters(Figure f) => Keep(f, NumberText.Milliliters(f));

    public string Depth(Figure f) => Keep(f, NumberText.Depth(f, Inches));

    public string Millimeters(Figure f) => Keep(f, NumberText.Millimeters(f));

    public string Size(Figure length, Figure width)
    {
        Keep(length, "");
        return Keep(width, NumberText.Size(length, width));
    }

    public string Kilograms(Figure f) => Keep(f, NumberText.Kilograms(f));

    public string Of(Figure f) => Keep(f, NumberText.Of(f));

    public string Whole(Figure f) => Keep(f, NumberText.Whole(f));

    /// <summary>A text of a catalog entry, and its source.</summary>
    public string? Text(CatalogText? text)
    {
        if (text is null)
        {
            return null;
        }

        sources.Add(text.Origin);
        return text.Text;
    }

    /// <summary>Names a source of the next step.</summary>
    public void Cite(Citation source) => sources.Add(source);

    /// <summary>Ends a step with all numbers and sources used since the last one.</summary>
    public void Step(string key, string text, string? why = null, params ReadOnlySpan<string> cautions)
    {
        steps.Add(
            new BuildStep(text, why, key, [.. cautions])
            {
                Figures = [.. figures],
                Sources = [.. sources.Distinct()],
            }
        );
        figures.Clear();
        sources.Clear();
    }

    /// <summary>The group, or null when it has no step.</summary>
    public StepGroup? Group(string title, string key, string part) =>
        steps.Count == 0 ? null : new StepGroup(title, key, steps.ToImmutable(), part);

    private string Keep(Figure figure, string text)
    {
        figures.Add(figure);
        return text;
    }
}
