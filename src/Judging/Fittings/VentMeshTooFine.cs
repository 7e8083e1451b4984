using System.Globalization;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.Fittings;

/// <summary>Very fine gauze hardly lets air through.</summary>
internal static class VentMeshTooFine
{
    private static readonly Figure Finest = Figure.Choice(
        "finest mesh of a vent",
        0.3,
        Unit.Millimeter,
        "0.3 mm is the cautious value that holds every feeder fly; finer gauze needs about three "
            + "times the area"
    );

    public static readonly Rule Rule = new(
        "vent-mesh-too-fine",
        Protects.Build,
        FormattableString.Invariant($"the mesh of a vent has openings under {Finest.Value:0.##} mm"),
        Judge
    )
    {
        Needs = Stage.Shape,
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        for (var i = 0; i < n.Design.Design.Vents.Count; i++)
        {
            if (
                n.Design.Find<MeshEntry>($"vents[{i}].mesh") is { } mesh
                && mesh.Aperture is { } aperture
                && aperture.Si < Finest.Si - Gaps.Slack
            )
            {
                yield return Rule.Found(
                    Severity.Note,
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"The mesh of vent {i + 1}, {mesh.Name}, has openings of "
                            + $"{aperture.Value:0.###} mm; under "
                            + $"{Finest.Value:0.#} mm it passes little air."
                    ),
                    (aperture, Finest),
                    FormattableString.Invariant(
                        $"Take coarser gauze, up to {Gaps.Fly.Value:0.#} mm, or give the vent about three "
                    ) + "times the area.",
                    $"vents[{i}].mesh"
                );
            }
        }
    }
}
