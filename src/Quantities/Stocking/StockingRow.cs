using Litterfall.Domain.Figures;

namespace Litterfall.Quantities.Stocking;

/// <summary>What one rule of the trade allows of one species in this box.</summary>
public sealed record StockingRow
{
    /// <summary>Stable name of the rule, e.g. "german-area".</summary>
    public required string Rule { get; init; }

    /// <summary>Name of the rule on screens.</summary>
    public required string Name { get; init; }

    /// <summary>The rule in one sentence, with its numbers.</summary>
    public required string Text { get; init; }

    /// <summary>Catalog key of the animal.</summary>
    public required string Animal { get; init; }

    /// <summary>Name of the animal on screens.</summary>
    public required string AnimalName { get; init; }

    /// <summary>Animals asked for.</summary>
    public required Figure Asked { get; init; }

    /// <summary>Animals the rule allows; null where it does not apply.</summary>
    public Figure? Allowed { get; init; }

    /// <summary>True when the rule speaks of this animal.</summary>
    public bool Applies => Allowed is not null;

    /// <summary>Why it does not apply, or how the number was reached; empty when there is nothing to say.
    /// </summary>
    public required string Remark { get; init; }

    /// <summary>True when the rule is kept; true also where it does not apply.</summary>
    public required bool Holds { get; init; }

    /// <summary>True for the rule on pairs and groups, which no larger box can satisfy.</summary>
    public required bool IsGroupRule { get; init; }

    /// <summary>Where the rule stands.</summary>
    public required Citation Citation { get; init; }

    /// <summary>"animals" or "ratedFor".</summary>
    public required string Where { get; init; }

    /// <summary>The first entry that names the animal: "animals[0]".</summary>
    public required string Item { get; init; }

    /// <summary>Weakest provenance the allowed count rests on.</summary>
    public Provenance Provenance => Allowed?.Trust ?? Citation.Provenance;
}
