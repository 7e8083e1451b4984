using System.Collections.Immutable;
using Litterfall.Domain.Checking;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Forecasting.Floor;

/// <summary>A part of the floor of one soil depth.</summary>
/// <param name="Share">Share of the floor.</param>
/// <param name="DepthMeters">Depth of the soil, m.</param>
public readonly record struct SoilZones(double Share, double DepthMeters)
{
    private const double LeastDepthMeters = 0.002;
    private const double LevelMeters = 0.002;
    private const int MostSteps = 4;

    /// <summary>From where to where along the front, shares of the inside length.</summary>
    public (double From, double To) Along { get; init; } = (0.0, 1.0);

    /// <summary>From where to where going back, shares of the inside depth.</summary>
    public (double From, double To) Back { get; init; } = (0.0, 1.0);

    /// <summary>True where a place lies in it; shares of inside length and depth.</summary>
    /// <param name="along">From the left, 0 to 1.</param>
    /// <param name="back">From the front, 0 to 1.</param>
    public bool Holds(double along, double back) =>
        along >= Along.From && along <= Along.To && back >= Back.From && back <= Back.To;

    /// <summary>
    /// Parts of the soil of a design: a wedge is cut at its middle and each half taken at its mean depth; of
    /// more than four steps, the mean.
    /// </summary>
    public static ImmutableArray<SoilZones> Of(CheckedDesign design)
    {
        var soil = design.Design.Floor.Soil!;
        if (soil.Zones.Count is 0 or > MostSteps)
        {
            return [.. Halves(1, SoilDepths.Of(design, soil))];
        }

        double sum = soil.Zones.Sum(z => z.Share.Si);
        double from = 0.0;
        var zones = ImmutableArray.CreateBuilder<SoilZones>();
        for (int i = 0; i < soil.Zones.Count; i++)
        {
            double to = from + (sum > 0.0 ? soil.Zones[i].Share.Si / sum : 0.0);
            var along = (from, i == soil.Zones.Count - 1 ? 1.0 : to);
            zones.AddRange(
                Halves(soil.Zones[i].Share.Si, SoilDepths.Zone(design, i))
                    .Select(z => z with { Along = along })
            );
            from = to;
        }

        return zones.ToImmutable();
    }

    private static IEnumerable<SoilZones> Halves(double share, SoilDepths depths)
    {
        var (front, back) = (depths.Front.Si, depths.Back.Si);
        if (share <= 0)
        {
            yield break;
        }

        if (Math.Abs(front - back) < LevelMeters)
        {
            yield return new(share, Math.Max(LeastDepthMeters, depths.Mean.Si));
            yield break;
        }

        yield return new(0.5 * share, Math.Max(LeastDepthMeters, (0.75 * front) + (0.25 * back)))
        {
            Back = (0.0, 0.5),
        };
        yield return new(0.5 * share, Math.Max(LeastDepthMeters, (0.25 * front) + (0.75 * back)))
        {
            Back = (0.5, 1.0),
        };
    }
}
