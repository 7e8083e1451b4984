using System.Collections.Immutable;
using Litterfall.Domain.Checking;
using Litterfall.Planning.Sizing;

namespace Litterfall.Planning.Water;

/// <summary>A part of the floor of one soil depth.</summary>
/// <param name="Share">Share of the floor.</param>
/// <param name="DepthMeters">Depth of the soil, m.</param>
public readonly record struct SoilZones(double Share, double DepthMeters)
{
    private const double LeastDepthMeters = 0.002;
    private const double LevelMeters = 0.002;
    private const int MostSteps = 4;

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

        return
        [
            .. Enumerable
                .Range(0, soil.Zones.Count)
                .SelectMany(i => Halves(soil.Zones[i].Share.Si, SoilDepths.Zone(design, i))),
        ];
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

        yield return new(0.5 * share, Math.Max(LeastDepthMeters, (0.75 * front) + (0.25 * back)));
        yield return new(0.5 * share, Math.Max(LeastDepthMeters, (0.25 * front) + (0.75 * back)));
    }
}
