using System.Globalization;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Quantities.Stocking;

/// <summary>One rule of the trade on how many animals a box holds.</summary>
/// <param name="Slug">Its stable name, e.g. "german-area".</param>
/// <param name="Name">Its name on screens.</param>
/// <param name="Text">The rule in one sentence, with its numbers.</param>
/// <param name="Citation">Where it stands.</param>
/// <param name="Judge">What it allows of a species in a box.</param>
internal sealed record StockingRule(
    string Slug,
    string Name,
    string Text,
    Citation Citation,
    Func<StockedSpecies, BoxGeometry, StockingVerdict> Judge
)
{
    /// <summary>True for the rule on pairs and groups.</summary>
    public bool IsGroupRule { get; init; }

    /// <summary>The row of a species.</summary>
    public StockingRow Row(StockedSpecies species, BoxGeometry box)
    {
        var verdict = Judge(species, box);
        return new StockingRow
        {
            Rule = Slug,
            Name = Name,
            Text = verdict.Text ?? Text,
            Animal = species.Species.Key,
            AnimalName = species.Species.Name,
            Asked = species.Asked,
            Allowed = verdict.Allowed,
            Remark = verdict.Remark,
            Holds =
                verdict.Allowed is not { } allowed
                || (species.Asked.Si <= allowed.Si && !verdict.IsWronglyMade),
            IsGroupRule = IsGroupRule,
            Citation = verdict.Citation ?? Citation,
            Where = species.Where,
            Item = species.Item,
        };
    }
}

/// <summary>What a rule says of one species in one box.</summary>
internal sealed record StockingVerdict
{
    /// <summary>Allowed animals; null where the rule does not apply.</summary>
    public Figure? Allowed { get; init; }

    /// <summary>Why it does not apply, or a remark on the number.</summary>
    public string Remark { get; init; } = "";

    /// <summary>The rule with the species' own numbers; null for the rule's own text.</summary>
    public string? Text { get; init; }

    /// <summary>Where the species' own numbers stand; null for the rule's own place.</summary>
    public Citation? Citation { get; init; }

    /// <summary>True when the count is small enough but the sexes break the rule.</summary>
    public bool IsWronglyMade { get; init; }

    /// <summary>The rule does not speak of this animal.</summary>
    public static StockingVerdict Not(string why) => new() { Remark = why };

    /// <summary>The rule allows so many.</summary>
    public static StockingVerdict Allow(Figure allowed, string remark = "") =>
        new() { Allowed = allowed, Remark = remark };
}

/// <summary>Sizes the rules share, and rounding to whole animals.</summary>
internal static class StockingMeasure
{
    /// <summary>Gross inside volume in m³, before any layer is filled in.</summary>
    public static Figure Volume(BoxGeometry box) =>
        (box.InsideLength * box.InsideDepth * box.InsideHeight).As("gross inside volume", Unit.Liter);

    /// <summary>First animals need a base amount, each further one the same again.</summary>
    /// <param name="size">Floor or volume of the box.</param>
    /// <param name="first">What the first animals need.</param>
    /// <param name="firstCount">How many the first amount is for.</param>
    /// <param name="more">What each further one needs.</param>
    /// <param name="rule">Name of the rule.</param>
    /// <returns>Whole animals; 0 below the first amount.</returns>
    public static Figure Staged(Figure size, Figure first, int firstCount, Figure more, string rule) =>
        size.Si < first.Si - 1e-12
            ? Figure
                .Computed($"0, because {size.Name} is less than {first.Name}", 0, Dimension.None, size, first)
                .As($"allowed by the {rule}", Unit.One, first.Origin)
            : Below(Figure.Number(firstCount) + (size - first) / more, rule, first.Origin);

    /// <summary>The whole animals below a computed number.</summary>
    public static Figure Below(Figure exact, string rule, Citation origin)
    {
        var named = exact.As($"{rule}, before rounding", Unit.One);
        return Figure
            .Computed(
                $"whole animals, rounded down from {named.Name}",
                Math.Floor(Math.Max(0, named.Si) + 1e-9),
                Dimension.None,
                named
            )
            .As($"allowed by the {rule}", Unit.One, origin);
    }

    /// <summary>The nearest whole number of animals.</summary>
    public static Figure Nearest(Figure exact, string rule, Citation origin)
    {
        var named = exact.As($"{rule}, before rounding", Unit.One);
        return Figure
            .Computed(
                $"nearest whole number to {named.Name}",
                Math.Round(Math.Max(0, named.Si), MidpointRounding.AwayFromZero),
                Dimension.None,
                named
            )
            .As($"allowed by the {rule}", Unit.One, origin);
    }

    /// <summary>A length in millimeters for a sentence.</summary>
    public static string Millimeters(Figure length) =>
        string.Create(CultureInfo.InvariantCulture, $"{length.Si * 1000:0.#} mm");

    public const string NoLength = "the library has no adult length for it";
}
