using Litterfall.Domain.Checking;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Findings;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.Plants;

/// <summary>An epiphyte in soil rots; a plant of the ground dries on a branch.</summary>
internal static class WrongPlace
{
    public static readonly Rule Rule = new(
        "plant-in-wrong-place",
        Protects.Build,
        "an epiphyte is planted in soil, or a ground or water plant is mounted",
        Judge
    )
    {
        Needs = Stage.Shape,
        Fix = (finding, design) => Mounted(finding, design),
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        foreach (var plant in Plantings.Of(n))
        {
            var root = plant.Species.RootPlace;
            var inSoil = root?.Text == "epiphyte" && !plant.Entry.Mounted;
            var onWood = root?.Text is "terrestrial" or "aquatic" && plant.Entry.Mounted;
            if (!inSoil && !onWood)
            {
                continue;
            }

            yield return Rule.Found(
                Severity.Caution,
                inSoil
                    ? $"{plant.Species.Name} grows on branches and is planted in soil: its base can rot when "
                        + $"buried."
                    : $"{plant.Species.Name} roots in {(root!.Text == "aquatic" ? "water" : "soil")} and is "
                        + "mounted: it can dry out.",
                (null, null),
                inSoil
                    ? "Mount it on wood, cork or background, or set it on top of the soil " + "in moss."
                    : "Plant it in the ground, or take an epiphyte for this place.",
                $"{plant.Path}.mounted",
                root!.Origin
            );
        }
    }

    private static DesignFix? Mounted(Finding finding, CheckedDesign design)
    {
        var document = design.Document;
        if (
            FixEdit.Index(finding) is not { } plant
            || document.Design.Plants.Count <= plant
            || document.Design.Plants[plant].Mounted
        )
        {
            return null;
        }

        var path = FormattableString.Invariant($"plants[{plant}]");
        var name = FixEdit.Named(design, $"{path}.plant");
        var with = DesignEdits.Set(document, $"{path}.mounted", "true");
        var height = document.Design.Box.Inside?.Height ?? document.Design.Box.Outside?.Height;
        return with.Value is { } so && document.Design.Plants[plant].At is { Z: null } && height is { } edge
            ? DesignFix.From(
                $"{name} mounted half-way up",
                FixEdit.Length(so, $"{path}.at.z", FixEdit.Rounded(FixEdit.Mean(edge) / 2))
            )
            : DesignFix.From($"{name} mounted", with);
    }
}
