using System.Collections.Immutable;
using Litterfall.Physics.Soil;

namespace Litterfall.Laboratory.Column;

/// <summary>A layer as a case asks for it.</summary>
/// <param name="Curve">The material.</param>
/// <param name="ThicknessMeters">Thickness, m.</param>
/// <param name="Cells">The resolution asked for.</param>
public sealed record LabLayer(HydraulicCurve Curve, double ThicknessMeters, int Cells);

/// <summary>A checked case of vertical flow, ready to be solved.</summary>
public sealed record ColumnCase
{
    /// <summary>The column in nodes and elements.</summary>
    public required SoilColumns Columns { get; init; }

    /// <summary>Depths that are reported.</summary>
    public required ImmutableArray<ShownPoint> Shown { get; init; }

    /// <summary>Surface and foot.</summary>
    public required ColumnBoundaries Boundaries { get; init; }

    /// <summary>The state at hour 0.</summary>
    public required ColumnState Start { get; init; }

    /// <summary>Spans of constant forcing to the end.</summary>
    public required ImmutableArray<ForcingSpan> Spans { get; init; }

    /// <summary>Hours of the reports, as the case writes them.</summary>
    public required ImmutableArray<double> ReportHours { get; init; }
}

/// <summary>Units at the edge: cases count in cm and h, the engine in m and s.</summary>
public static class LabUnits
{
    public const double MetersPerCm = 0.01;
    public const double SecondsPerHour = 3600.0;
    public const double MetersPerSecondPerCmPerHour = MetersPerCm / SecondsPerHour;

    public static double Cm(double meters) => meters * 100.0;
}
