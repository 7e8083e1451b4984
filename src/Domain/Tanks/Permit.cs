using Litterfall.Domain.Lists;

namespace Litterfall.Domain.Tanks;

/// <summary>What a permit allows, or a paper proves.</summary>
public enum PermitKind
{
    /// <summary>License to sell animals.</summary>
    Selling,

    /// <summary>Permit to keep a species.</summary>
    Keeping,

    /// <summary>Permit to move animals across a border of states.</summary>
    Transport,

    /// <summary>Proof of legal origin, or a notification of protected animals.</summary>
    Origin,

    /// <summary>Another paper.</summary>
    Other,
}

/// <summary>A permit of an authority, or a paper that proves an origin.</summary>
public sealed record Permit
{
    /// <summary>Its key: its number in the list.</summary>
    public required string Key { get; init; }

    /// <summary>What it allows.</summary>
    public required PermitKind Kind { get; init; }

    /// <summary>Number on it.</summary>
    public required string Number { get; init; }

    /// <summary>Authority or breeder that gave it.</summary>
    public string Issuer { get; init; } = "";

    /// <summary>Keys of the species it is for; none for all.</summary>
    public Seq<string> Species { get; init; } = [];

    /// <summary>Day it was given.</summary>
    public required DateOnly Issued { get; init; }

    /// <summary>Last day on which it holds; null for ever.</summary>
    public DateOnly? Expires { get; init; }

    /// <summary>What to remember.</summary>
    public string Note { get; init; } = "";
}
