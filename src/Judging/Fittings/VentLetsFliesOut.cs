using System.Globalization;
using Litterfall.Domain;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.Fittings;

/// <summary>Wingless flies pass a fly screen of 1.2 mm; froglets pass an open slot.</summary>
internal static class VentLetsFliesOut
{
    public static readonly Rule Rule = new(
        "vent-lets-flies-out",
        Protects.Animal,
        FormattableString.Invariant(
            $"a vent or mesh lid has openings over {Gaps.Fly.Value:0.#} mm (feeder flies), or "
        )
            + FormattableString.Invariant($"over {Gaps.Froglet.Value:0.#} mm (animals), ")
            + "or no mesh at all",
        Judge
    )
    {
        Needs = Stage.Shape,
        Fix = (finding, design) =>
            DesignFix.From(
                "fine stainless gauze over the opening",
                DesignEdits.Set(design.Document, finding.Where, "steel-gauze-0.5")
            ),
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n) =>
        n.HasLife() ? Openings(n).Where(o => TooWide(o.Size)).Select(o => Found(n, o)) : [];

    private static bool TooWide(Figure size) => size.Si > Gaps.Fly.Si + Gaps.Slack;

    private static Finding Found(DesignNumbers n, (Figure Size, string What, string Path) opening)
    {
        var (size, what, path) = opening;
        var wide = size.Si > Gaps.Froglet.Si + Gaps.Slack;
        return Rule.Found(
            wide ? n.WithAnimals(Severity.Stop, Severity.Caution) : Severity.Caution,
            wide
                ? string.Create(
                    CultureInfo.InvariantCulture,
                    $"{what} is open by {Size(size)} mm: over {Gaps.Froglet.Value:0.#} mm froglets "
                        + $"can get out."
                )
                : string.Create(
                    CultureInfo.InvariantCulture,
                    $"{what} is open by {Size(size)} mm: over {Gaps.Fly.Value:0.#} mm small wingless "
                        + $"flies can get out."
                ),
            (size, wide ? Gaps.Froglet : Gaps.Fly),
            FormattableString.Invariant(
                $"Cover it with stainless gauze of {Gaps.Fly.Value:0.#} mm or finer."
            ),
            path
        );
    }

    private static IEnumerable<(Figure Size, string What, string Path)> Openings(DesignNumbers n)
    {
        for (var i = 0; i < n.Design.Design.Vents.Count; i++)
        {
            var vent = n.Design.Design.Vents[i];
            if (vent.Mesh is null)
            {
                yield return (Slot(n, i, vent), $"Vent {i + 1} has no mesh and", $"vents[{i}].mesh");
            }
            else if (
                n.Design.Entry<MeshEntry>($"vents[{i}].mesh") is var mesh
                && mesh.Aperture is { } aperture
            )
            {
                yield return (aperture, $"The mesh of vent {i + 1}, {mesh.Name},", $"vents[{i}].mesh");
            }
        }

        if (
            n.Design.Design.Lid is { Share: null or { Si: > 0 } }
            && n.Design.Entry("lid.material") is MeshEntry lid
            && lid.Aperture is { } holes
        )
        {
            yield return (holes, $"The mesh of the lid, {lid.Name},", "lid.material");
        }
    }

    /// <summary>The narrower edge of an open vent, or the edge of a square of its area.</summary>
    private static Figure Slot(DesignNumbers n, int i, Vent vent)
    {
        if (vent is { Length: { } length, Width: { } width })
        {
            return Figure
                .Min(
                    n.Design.Figure($"vents[{i}].length", "length of the vent", length, Unit.Millimeter),
                    n.Design.Figure($"vents[{i}].width", "width of the vent", width, Unit.Millimeter)
                )
                .As("narrower edge of the vent", Unit.Millimeter);
        }

        var area = n.Design.Figure(
            $"vents[{i}].area",
            "area of the vent",
            vent.Area!.Value,
            Unit.SquareCentimeter
        );
        return Figure
            .Computed("square root of the area", Math.Sqrt(area.Si), Unit.Meter.Dimension, area)
            .As("edge of a square of that area", Unit.Millimeter);
    }

    /// <summary>Hundredths where they decide, else tenths.</summary>
    private static string Size(Figure size) =>
        size.Value.ToString(size.Value < Gaps.Froglet.Value ? "0.##" : "0.#", CultureInfo.InvariantCulture);
}
