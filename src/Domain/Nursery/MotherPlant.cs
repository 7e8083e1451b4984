namespace Litterfall.Domain.Nursery;

/// <summary>A plant that is kept for cuttings.</summary>
public sealed record MotherPlant
{
    /// <summary>Own key.</summary>
    public required string Key { get; init; }

    /// <summary>Catalog key of the plant.</summary>
    public required string Plant { get; init; }

    /// <summary>Name on its label.</summary>
    public required string Name { get; init; }

    /// <summary>Key of the bench.</summary>
    public required string Bench { get; init; }

    /// <summary>Since when it is cut from.</summary>
    public required DateOnly Since { get; init; }

    /// <summary>Cuttings it gives at one time without being cut back too far.</summary>
    public int CuttingsEach { get; init; } = 6;

    /// <summary>Days it rests between two cuts.</summary>
    public int RestDays { get; init; } = 42;

    /// <summary>Day it was last cut; null for never.</summary>
    public DateOnly? LastCut { get; init; }

    /// <summary>Day it was given up; null while it is kept.</summary>
    public DateOnly? Ended { get; init; }

    /// <summary>First day it may be cut again.</summary>
    public DateOnly NextCut => LastCut is { } cut ? cut.AddDays(RestDays) : Since;
}
