namespace Litterfall.Forecasting;

/// <summary>How far a view of the numbers looks; what lies beyond is not computed.</summary>
public enum Reach
{
    /// <summary>Sizes, quantities and cost; nothing is simulated.</summary>
    Shape,

    /// <summary>With a month of air and floor, without seasons, bands, light and life.</summary>
    Month,

    /// <summary>Air in all seasons, without the forecast of the floor and without bands.</summary>
    AirWithoutBands,

    /// <summary>Everything but light and the bands of what nobody measures.</summary>
    WholeWithoutBands,

    /// <summary>Everything.</summary>
    Whole,
}
