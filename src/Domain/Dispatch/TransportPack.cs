namespace Litterfall.Domain.Dispatch;

/// <summary>What a pack does.</summary>
public enum PackKind
{
    /// <summary>It melts and freezes near the temperature animals like: it buffers both ways.</summary>
    PhaseChange,

    /// <summary>It melts at 0 °C: it cools, and never lies against a cup.</summary>
    Ice,

    /// <summary>Iron powder that warms as it rusts, and takes oxygen.</summary>
    Heat,
}

/// <summary>A pack that warms or cools a parcel.</summary>
public sealed record TransportPack
{
    /// <summary>Own key.</summary>
    public required string Key { get; init; }

    /// <summary>As people call it.</summary>
    public required string Name { get; init; }

    /// <summary>What it does.</summary>
    public required PackKind Kind { get; init; }

    /// <summary>Mass of what melts, or of the whole heat pack, kg.</summary>
    public required double Kilograms { get; init; }

    /// <summary>Melting point, °C; 0 for heat packs.</summary>
    public double MeltCelsius { get; init; }

    /// <summary>Heat of melting, kJ/kg; 0 for heat packs.</summary>
    public double LatentKilojoulesPerKilogram { get; init; }

    /// <summary>Hours it warms; 0 for packs that melt.</summary>
    public double Hours { get; init; }

    /// <summary>Mean heat over these hours, W; 0 for packs that melt.</summary>
    public double Watts { get; init; }

    /// <summary>Room that it takes in the carton, L.</summary>
    public double Liters { get; init; }

    /// <summary>Key of the good in stock; empty where nobody counts them.</summary>
    public string Good { get; init; } = "";
}

/// <summary>How packs go into a parcel.</summary>
/// <param name="Pack">Key of the pack.</param>
/// <param name="Count">How many.</param>
/// <param name="LiquidShare">
/// Share that is melted when it goes in: 0 frozen, 1 melted; 0 for heat packs.
/// </param>
public sealed record PackUse(string Pack, int Count, double LiquidShare);
