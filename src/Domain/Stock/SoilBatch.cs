using Litterfall.Domain.Lists;

namespace Litterfall.Domain.Stock;

/// <summary>How much of a component went into a batch.</summary>
/// <param name="Good">Key of the component.</param>
/// <param name="Lot">Lot it came from.</param>
/// <param name="Liters">Liters, loose.</param>
/// <param name="Kilograms">Kilograms as they were weighed or taken from the density.</param>
public sealed record BatchPart(string Good, string Lot, double Liters, double Kilograms);

/// <summary>A batch of mix that was made, with what was measured.</summary>
public sealed record SoilBatch
{
    /// <summary>Lot it became.</summary>
    public required string Lot { get; init; }

    /// <summary>Key of the recipe.</summary>
    public required string Recipe { get; init; }

    /// <summary>Day.</summary>
    public required DateOnly Day { get; init; }

    /// <summary>What went in.</summary>
    public required Seq<BatchPart> Parts { get; init; }

    /// <summary>Water that was added, liters.</summary>
    public double WaterLiters { get; init; }

    /// <summary>Mix that came out, measured loose, liters; null before it is measured.</summary>
    public double? OutLiters { get; init; }

    /// <summary>Mass that came out, kg; null where it was not weighed.</summary>
    public double? OutKilograms { get; init; }

    /// <summary>Mass of a dried sample over its wet mass; null where none was dried.</summary>
    public double? DryShare { get; init; }

    /// <summary>Water that was planned, percent of the mixed volume; null where none was dosed.</summary>
    public double? PlannedWetPercent { get; init; }

    /// <summary>Orders it was made for.</summary>
    public Seq<int> Orders { get; init; } = [];

    /// <summary>Who made it.</summary>
    public required string Who { get; init; }
}
