namespace Litterfall.Domain.Dispatch;

/// <summary>An insulated carton: an outer carton with a liner of foam.</summary>
public sealed record Carton
{
    /// <summary>Own key.</summary>
    public required string Key { get; init; }

    /// <summary>As people call it.</summary>
    public required string Name { get; init; }

    /// <summary>Inside length, width and height of the liner, m.</summary>
    public required double LengthMeters { get; init; }

    /// <summary>Inside width of the liner, m.</summary>
    public required double WidthMeters { get; init; }

    /// <summary>Inside height of the liner, m.</summary>
    public required double HeightMeters { get; init; }

    /// <summary>Thickness of the liner, m; 0 for a carton without one.</summary>
    public required double WallMeters { get; init; }

    /// <summary>Thermal conductivity of the liner, W/(m K).</summary>
    public double ConductivityWPerMeterKelvin { get; init; } = 0.036;

    /// <summary>Resistance of air films and card, m² K/W.</summary>
    public double FilmsSquareMeterKelvinPerW { get; init; } = 0.15;

    /// <summary>Holes to the outside through card and liner.</summary>
    public int VentHoles { get; init; }

    /// <summary>Width of a hole, m.</summary>
    public double VentHoleMeters { get; init; } = 0.006;

    /// <summary>Mass of the empty carton with its liner, kg.</summary>
    public double EmptyKilograms { get; init; }

    /// <summary>Key of the good in stock; empty where nobody counts them.</summary>
    public string Good { get; init; } = "";

    /// <summary>Room inside, L.</summary>
    public double Liters => 1000 * LengthMeters * WidthMeters * HeightMeters;
}
