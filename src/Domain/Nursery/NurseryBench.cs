namespace Litterfall.Domain.Nursery;

/// <summary>What a bench of plants is for.</summary>
public enum BenchUse
{
    /// <summary>New plants stay apart here: all in together, all out together.</summary>
    Quarantine,

    /// <summary>Cuttings root and grow here.</summary>
    Propagation,

    /// <summary>Mother plants and plants that are ready.</summary>
    Growing,
}

/// <summary>A bench, tray rack or box in which plants stand.</summary>
public sealed record NurseryBench
{
    /// <summary>Own key.</summary>
    public required string Key { get; init; }

    /// <summary>As people call it.</summary>
    public required string Name { get; init; }

    /// <summary>What it is for.</summary>
    public required BenchUse Use { get; init; }

    /// <summary>Trays that fit.</summary>
    public int Places { get; init; } = 6;

    /// <summary>Temperature, °C.</summary>
    public double Celsius { get; init; } = 22;
}
