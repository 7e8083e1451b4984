using System.Collections.Immutable;
using Litterfall.Domain;
using Litterfall.Domain.Checking;
using Litterfall.Forecasting.Coefficients;
using Litterfall.Physics.Soil;
using Litterfall.Quantities.Measures;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Forecasting.Floor;

/// <summary>A floor made ready to run: its columns, its leaves and how water leaves it.</summary>
public sealed record FloorSetup
{
    /// <summary>The columns.</summary>
    public required FloorColumns Columns { get; init; }

    /// <summary>Depth of the leaf litter, m; 0 without.</summary>
    public required double LitterDepthMeters { get; init; }

    /// <summary>Water the leaves hold, m.</summary>
    public required double LitterMeters { get; init; }

    /// <summary>Height of an outlet that drains by itself, m over the base; null without.</summary>
    public required double? OutletMeters { get; init; }

    /// <summary>True where a siphon, or a drain without a height, is used by hand.</summary>
    public required bool IsDrainedByHand { get; init; }

    /// <summary>Highest level that is allowed, m over the base; infinite without a drainage layer.</summary>
    public required double HighestLevelMeters { get; init; }

    /// <summary>The floor of a design; null when a material has no curve or there is no soil.</summary>
    /// <param name="design">The design.</param>
    /// <param name="layers">Its layers.</param>
    /// <param name="tables">Tables of curves.</param>
    /// <param name="with">Coefficients.</param>
    public static FloorSetup? From(
        CheckedDesign design,
        ImmutableArray<FloorLayer> layers,
        CurveTables tables,
        FloorWaterCoefficients with
    ) =>
        FloorColumns.Of(design, layers, tables, with) is { } columns
            ? From(design, layers, columns, with)
            : null;

    /// <summary>The same floor with another soil.</summary>
    /// <param name="design">The design.</param>
    /// <param name="layers">Its layers.</param>
    /// <param name="change">What is changed.</param>
    /// <param name="with">Coefficients.</param>
    public FloorSetup With(
        CheckedDesign design,
        ImmutableArray<FloorLayer> layers,
        CurveChange change,
        FloorWaterCoefficients with
    ) =>
        change == CurveChange.None
            ? this
            : From(design, layers, Columns.With(design, layers, change, with), with);

    /// <summary>The model of its water.</summary>
    /// <param name="steps">How time is cut.</param>
    public WaterModel Model(StepControl steps) =>
        new(
            Columns.Columns,
            new LitterStore(LitterMeters),
            OutletMeters is null ? DrainWay.Closed : DrainWay.Outlet,
            OutletMeters ?? 0,
            steps
        );

    private static FloorSetup From(
        CheckedDesign design,
        ImmutableArray<FloorLayer> layers,
        FloorColumns columns,
        FloorWaterCoefficients with
    )
    {
        var drain = design.Design.Drain;
        var outlet = drain is { Kind: not DrainKind.Siphon, Height: { } height } ? height.Si : (double?)null;
        var litter = layers.FirstOrDefault(l => l.Kind == LayerKind.Litter);
        return new FloorSetup
        {
            Columns = columns,
            LitterDepthMeters = litter?.Depth.Si ?? 0,
            LitterMeters = litter?.DryMass is { } mass
                ? with.LitterHolds.UseSi() * mass.Si / columns.AreaSquareMeters
                : 0,
            OutletMeters = outlet,
            IsDrainedByHand = drain is not null && outlet is null,
            HighestLevelMeters = DrainMark.Of(layers)?.Si ?? double.PositiveInfinity,
        };
    }
}
