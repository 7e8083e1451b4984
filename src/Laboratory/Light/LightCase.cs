using System.Collections.Immutable;
using Litterfall.Physics.Light;

namespace Litterfall.Laboratory.Light;

/// <summary>A checked case of light in a box.</summary>
/// <param name="Scene">The box.</param>
/// <param name="Lamps">The lamps.</param>
/// <param name="Points">Places asked for, with the direction they face.</param>
/// <param name="Map">Map asked for; null without.</param>
/// <param name="Notes">What the luminaire files call for saying.</param>
public sealed record LightCase(
    LightScene Scene,
    ImmutableArray<Luminaire> Lamps,
    ImmutableArray<Receiver> Points,
    MapGrid? Map,
    ImmutableArray<string> Notes
);

/// <summary>What the light is.</summary>
/// <param name="Points">Illuminance in the order asked, lx.</param>
/// <param name="Map">Illuminance of the cells, lx, row by row; null without a map.</param>
/// <param name="Budget">Where the flux ends, shares by name in order.</param>
/// <param name="Milliseconds">Time of the solve alone.</param>
public sealed record LightOutcome(
    ImmutableArray<double> Points,
    double[]? Map,
    ImmutableArray<(string Name, double Share)> Budget,
    double Milliseconds
)
{
    /// <summary>True where every number is one.</summary>
    public bool IsFinite =>
        Points.All(double.IsFinite)
        && (Map?.All(double.IsFinite) ?? true)
        && Budget.All(b => double.IsFinite(b.Share));
}
