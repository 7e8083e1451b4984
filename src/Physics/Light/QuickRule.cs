using Litterfall.Physics.Numerics;

namespace Litterfall.Physics.Light;

/// <summary>
/// Points of a quick sum over a luminous opening, and lines on which hidden parts are looked for.
/// </summary>
/// <param name="Along">Points along its longer side.</param>
/// <param name="Across">Points along its shorter side.</param>
/// <param name="Lines">Lines along its longer side.</param>
internal sealed record QuickRule(GaussLegendre Along, GaussLegendre Across, int Lines)
{
    /// <summary>
    /// For light straight from the lamp: exact to 0.02 % at half the length of the opening.
    /// </summary>
    public static readonly QuickRule Direct = new(GaussLegendre.Of(8), GaussLegendre.Of(3), 16);

    /// <summary>For light by mirrors.</summary>
    public static readonly QuickRule Mirrored = new(GaussLegendre.Of(5), GaussLegendre.Of(1), 4);
}
