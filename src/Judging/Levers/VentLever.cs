using Litterfall.Domain;
using Litterfall.Domain.Units;
using Litterfall.Forecasting.Climate;

namespace Litterfall.Judging.Levers;

/// <summary>All vents, wider or partly covered, in whole millimeters or square centimeters.</summary>
internal sealed class VentLever : Lever
{
    private const double WidestMeters = 0.2;

    /// <inheritdoc/>
    public override string Name => "vents";

    /// <inheritdoc/>
    public override string ValueName => "open area of all vents";

    /// <inheritdoc/>
    public override Unit Unit => Unit.SquareCentimeter;

    /// <inheritdoc/>
    public override (double Least, double Most) Ends => (0.12, 6);

    /// <inheritdoc/>
    public override double? Value(Design design) =>
        design.Vents.Sum(BoxOpenings.Area) is > 0 and var area
        && design.Vents.All(v => v.Area is not null || v.Width is not null)
            ? area
            : null;

    /// <inheritdoc/>
    public override IEnumerable<(string Path, string Text)> Turn(Design design, double factor)
    {
        for (var i = 0; i < design.Vents.Count; i++)
        {
            var vent = design.Vents[i];
            yield return vent.Area is { } area
                ? (
                    FormattableString.Invariant($"vents[{i}].area"),
                    Text(Math.Max(0.5, Math.Round(area.Si * factor * 20000) / 2), "cm2")
                )
                : (
                    FormattableString.Invariant($"vents[{i}].width"),
                    Text(
                        Math.Round(Math.Clamp(vent.Width!.Value.Si * factor, 0.001, WidestMeters) * 1000),
                        "mm"
                    )
                );
            if (vent.Area is null && LowerEdgeKept(design, vent, factor) is { } height)
            {
                yield return (FormattableString.Invariant($"vents[{i}].height"), Text(height, "mm"));
            }
        }
    }

    /// <summary>A vent over the sill grows upward; mm over the base.</summary>
    private static double? LowerEdgeKept(Design design, Vent vent, double factor)
    {
        if (
            vent is not { Side: Side.Front, Height: { } height, Width: { } width }
            || design.Box is not { Opening: Opening.Front, Sill: { } sill }
            || height.Si - (width.Si / 2) < sill.Si - 1e-9
        )
        {
            return null;
        }

        var wide = Math.Clamp(width.Si * factor, 0.001, WidestMeters);
        return Math.Round((height.Si + ((wide - width.Si) / 2)) * 2000) / 2;
    }
}
