namespace Litterfall.Domain.Dispatch;

/// <summary>A cup with a lid that one animal travels in, or a culture.</summary>
public sealed record TransportCup
{
    /// <summary>Own key.</summary>
    public required string Key { get; init; }

    /// <summary>As people call it.</summary>
    public required string Name { get; init; }

    /// <summary>Volume, L.</summary>
    public required double Liters { get; init; }

    /// <summary>Inside width, m.</summary>
    public required double DiameterMeters { get; init; }

    /// <summary>Height with its lid, m.</summary>
    public required double HeightMeters { get; init; }

    /// <summary>Pin holes in the lid.</summary>
    public int Holes { get; init; } = 8;

    /// <summary>Width of a hole, m.</summary>
    public double HoleMeters { get; init; } = 0.001;

    /// <summary>Thickness of the lid, m.</summary>
    public double LidMeters { get; init; } = 0.0005;

    /// <summary>Key of the good in stock; empty where nobody counts them.</summary>
    public string Good { get; init; } = "";
}
