namespace Litterfall.Domain.Cutting;

/// <summary>Panels that are wanted beside the designs. Lengths in millimeters.</summary>
public sealed record LoosePanel
{
    /// <summary>Running number.</summary>
    public required int Number { get; init; }

    /// <summary>Key of the good.</summary>
    public required string Good { get; init; }

    /// <summary>Thickness; null where the good has one alone.</summary>
    public double? Millimeters { get; init; }

    /// <summary>What it is.</summary>
    public required string Part { get; init; }

    /// <summary>Finished length.</summary>
    public required double Length { get; init; }

    /// <summary>Finished width.</summary>
    public required double Width { get; init; }

    /// <summary>How many.</summary>
    public required int Count { get; init; }

    /// <summary>Number of the order; null for stock.</summary>
    public int? Order { get; init; }
}
