using System.Collections.Immutable;
using CsCheck;
using Litterfall.Physics.Soil;
using Litterfall.UnitTests.Domain;

namespace Litterfall.UnitTests.Physics.Soil;

/// <summary>One random column with its weather.</summary>
/// <param name="Columns">The columns.</param>
/// <param name="Boundaries">Surface and foot.</param>
/// <param name="Start">State at the start.</param>
/// <param name="Spans">Weather.</param>
/// <param name="Control">How finely time is cut.</param>
internal sealed record EvenColumn(
    SoilColumns Columns,
    ColumnBoundaries Boundaries,
    ColumnState Start,
    ImmutableArray<ForcingSpan> Spans,
    StepControl Control
);

/// <summary>
/// Columns and weather evenly spread over what a vivarium may hold: α 0.005 to 5 1/cm, n 1.1 to 4, Ks 0.01 to
/// 20,000 cm/h, l −2 to 1, air entry to 2 cm; one to three zones of one to four layers of 0.5 to 20 cm; rain
/// to 50 cm/h; every surface and foot; from dust-dry to ponded.
/// </summary>
internal static class EvenColumns
{
    private const double MetersPerCentimeter = 0.01;
    private const double SecondsPerHour = 3600.0;
    private const double CentimetersPerHour = MetersPerCentimeter / SecondsPerHour;

    // Divisible by one to four layers.
    private const int ElementsPerPart = 12;

    private static readonly Gen<VanGenuchten> Curve =
        from residual in Spread.Between(0.0, 0.2)
        from pores in Spread.Between(0.3, 0.75)
        from alpha in Spread.Decades(0.5, 500.0)
        from n in Spread.Between(1.1, 4.0)
        from ks in Spread.Decades(0.01, 2e4)
        from l in Spread.Between(-2.0, 1.0)
        from hasEntry in Gen.Bool
        from entry in Spread.Between(0.0, 0.02)
        select VanGenuchten.Single(
            (residual, residual + pores),
            alpha,
            n,
            ks * CentimetersPerHour,
            l,
            hasEntry ? entry : 0.0
        );

    private static readonly Gen<FeddesHeads> Stress =
        from wet in Spread.Between(0.0, 0.05)
        from some in Spread.Between(0.01, 0.1)
        from dry in Spread.Between(1.0, 10.0)
        from wilted in Spread.Between(20.0, 160.0)
        select new FeddesHeads(-wet, -wet - some, -dry, -wilted);

    private static readonly Gen<SurfaceForcing> Weather =
        from isRaining in Gen.Bool
        from rain in Spread.Decades(1e-3, 50.0)
        from evaporation in Spread.Between(0.0, 0.1)
        from transpiration in Spread.Between(0.0, 0.1)
        from isStill in Gen.Bool
        select new SurfaceForcing(
            isRaining ? rain * CentimetersPerHour : 0.0,
            isStill ? 0.0 : evaporation * CentimetersPerHour,
            isStill ? 0.0 : transpiration * CentimetersPerHour
        );

    private static readonly Gen<ImmutableArray<ForcingSpan>> Spans =
        from weather in Gen.Select(Spread.Decades(0.05, 24.0), Weather).Array[1, 4]
        select Joined(weather);

    /// <summary>A surface open to the air.</summary>
    public static readonly Gen<TopBoundary> Air =
        from driest in Spread.Decades(1.0, 1e3)
        from pond in Spread.Between(0.0, 0.1)
        from hasPond in Gen.Bool
        select (TopBoundary)new TopBoundary.Air(-driest, hasPond ? pond : 0.0);

    /// <summary>A given head.</summary>
    public static readonly Gen<TopBoundary> Head =
        from isWet in Gen.Bool
        from suction in Spread.Decades(1e-3, 10.0)
        from pond in Spread.Between(0.0, 0.05)
        select (TopBoundary)new TopBoundary.FixedHead(isWet ? pond : -suction);

    /// <summary>A given flux.</summary>
    public static readonly Gen<TopBoundary> Flux = Gen.Const<TopBoundary>(new TopBoundary.FixedFlux());

    private static readonly Gen<LowerBoundary> Foot =
        from kind in Gen.Int[0, 6]
        from head in Spread.Between(-5.0, 0.3)
        from height in Spread.Between(0.0, 0.2)
        from conductance in Spread.Decades(1e-4, 0.3)
        from share in Spread.Between(0.0, 1.0)
        select kind switch
        {
            0 => (LowerBoundary)new LowerBoundary.FixedHead(head),
            1 => new LowerBoundary.Closed(),
            2 => new LowerBoundary.Closed(height, conductance),
            3 => new LowerBoundary.Closed(height, conductance, share),
            4 => new LowerBoundary.FreeDrainage(),
            5 => new LowerBoundary.SeepageFace(),
            _ => new LowerBoundary.Store(height, 0.1 + (0.9 * share)),
        };

    private static readonly Gen<SoilColumns> Columns =
        from parts in Gen.Int[1, 3]
        from profiles in Zone(parts * ElementsPerPart).Array[1, 3]
        from shares in Spread.Between(0.1, 1.0).Array[3]
        select new SoilColumns(Shared(profiles, shares));

    /// <summary>A column under one kind of surface.</summary>
    public static Gen<EvenColumn> Under(Gen<TopBoundary> top) =>
        from columns in Columns
        from surface in top
        from foot in Foot
        from start in Start(columns)
        from spans in Spans
        from isQuick in Gen.Bool
        select new EvenColumn(
            columns,
            new ColumnBoundaries(surface, foot),
            start,
            spans,
            isQuick ? StepControl.Planning : new StepControl()
        );

    private static Gen<SoilProfile> Zone(int elements) =>
        from layers in Gen.Int[1, 4]
        from curves in Curve.Array[layers]
        from thickness in Spread.Decades(0.005, 0.2).Array[layers]
        from stress in Pick.Maybe(Stress)
        from ends in Gen.Select(Spread.Between(0.0, 1.0), Spread.Between(0.0, 1.0))
        select Profile(
            [.. curves.Zip(thickness, (curve, meters) => ColumnLayer.Even(curve, meters, elements / layers))],
            stress,
            ends
        );

    private static SoilProfile Profile(
        ImmutableArray<ColumnLayer> layers,
        FeddesHeads? stress,
        (double A, double B) ends
    )
    {
        double depth = layers.Sum(l => l.ThicknessMeters);
        return new SoilProfile(
            layers,
            stress is { } heads
                ? new RootZone(depth * Math.Min(ends.A, ends.B), depth * Math.Max(ends.A, ends.B), heads)
                : null
        );
    }

    private static ImmutableArray<SoilProfile> Shared(SoilProfile[] profiles, double[] shares)
    {
        double sum = shares.Take(profiles.Length).Sum();
        return [.. profiles.Select((p, i) => p with { AreaShare = shares[i] / sum })];
    }

    /// <summary>
    /// At rest over a level, at one suction all through, or each zone at its own suction.
    /// </summary>
    private static Gen<ColumnState> Start(SoilColumns columns) =>
        from kind in Gen.Int[0, 2]
        from level in Spread.Between(-2.0, 1.0)
        from suctions in Spread.Decades(0.01, 1e3).Array[columns.Zones]
        select kind switch
        {
            0 => columns.AtRest(level < 0.0 ? level : level * (columns.LowerBoundaryMeters(0) + 0.05)),
            1 => columns.From((_, _) => -suctions[0]),
            _ => columns.From((zone, _) => -suctions[zone]),
        };

    private static ImmutableArray<ForcingSpan> Joined((double Hours, SurfaceForcing Forcing)[] weather)
    {
        double until = 0.0;
        var spans = ImmutableArray.CreateBuilder<ForcingSpan>();
        foreach (var (hours, forcing) in weather)
        {
            until += hours * SecondsPerHour;
            spans.Add(new ForcingSpan(until, forcing, Report: true));
        }

        return spans.ToImmutable();
    }
}
