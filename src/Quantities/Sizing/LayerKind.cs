namespace Litterfall.Quantities.Sizing;

/// <summary>The layers of a floor, from the base up.</summary>
public enum LayerKind
{
    /// <summary>Aggregate, or the water space of a raised floor.</summary>
    Drainage,

    /// <summary>The mix.</summary>
    Soil,

    /// <summary>Moss.</summary>
    Moss,

    /// <summary>Leaf litter.</summary>
    Litter,
}

/// <summary>Words for layers.</summary>
public static class LayerWords
{
    /// <summary>As keys of the design and papers name it.</summary>
    /// <param name="kind">The layer.</param>
    public static string Word(this LayerKind kind) =>
        kind switch
        {
            LayerKind.Drainage => "drainage",
            LayerKind.Soil => "soil",
            LayerKind.Moss => "moss",
            LayerKind.Litter => "litter",
            _ => throw new ArgumentOutOfRangeException(nameof(kind)),
        };
}
