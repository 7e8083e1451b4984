namespace Litterfall.Forecasting;

/// <summary>The named stages in which the numbers of a design are computed, in order.</summary>
public enum Stage
{
    /// <summary>True sizes, layers, air.</summary>
    Shape,

    /// <summary>Quantities, cuts, weights, glass, stocking.</summary>
    Quantities,

    /// <summary>Water of the floor and climate of the box.</summary>
    WaterAndAir,

    /// <summary>Light.</summary>
    Light,

    /// <summary>Life of the floor.</summary>
    Life,
}
