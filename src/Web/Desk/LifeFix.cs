using System.Globalization;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Faults;
using Litterfall.Domain.Findings;

namespace Litterfall.Web.Desk;

/// <summary>Fixes of animals, plants and crew.</summary>
internal static class LifeFix
{
    private const int RestDays = 56;

    /// <summary>Words and the changed design; null where the finding is not of this kind.</summary>
    public static (string Words, Reading<DesignDocument> Edit)? Of(
        Finding finding,
        DesignDocument document
    ) =>
        finding.Slug switch
        {
            "stocking-rule-broken"
            or "stocking-every-rule-broken"
            or "group-rule-broken" when finding.Limit is { Si: >= 1 } most => Fewer(
                document,
                Math.Floor(most.Si)
            ),
            "too-few-water-cups" when finding.Limit is { } cups => (
                $"{cups.Si:0} water cups",
                DesignEdits.Set(document, "waterCups", cups.Si.ToString("0", CultureInfo.InvariantCulture))
            ),
            "needs-water-area" when finding.Limit is { } share => (
                string.Create(CultureInfo.InvariantCulture, $"{share.Si * 100:0} % of the floor under water"),
                DesignEdits.Set(
                    document,
                    "waterArea",
                    string.Create(CultureInfo.InvariantCulture, $"{share.Si * 100:0} %")
                )
            ),
            "animals-too-early" when document.Design.Planted is { } planted => (
                "animals eight weeks after planting",
                DesignEdits.Set(
                    document,
                    "animalsIn",
                    planted.AddDays(RestDays).ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)
                )
            ),
            "no-shade-refuge" or "no-cover" => ("two more flats of cork bark", Cork(document)),
            "plant-in-wrong-place" when FixIndex.Of(finding.Where) is { } i => Mounted(document, i),
            "plant-outgrows-box" when FixIndex.Of(finding.Where) is { } i && Takes(finding) => (
                "without this plant",
                DesignEdits.Remove(document, string.Create(CultureInfo.InvariantCulture, $"plants[{i}]"))
            ),
            "plant-with-wet-roots"
                when finding.Limit?.Unit?.Symbol == "cm" && FixText.Short(finding) is > 0 and var by => (
                string.Create(CultureInfo.InvariantCulture, $"{FixText.Rounded(by) * 100:0.#} cm more soil"),
                FixText.Soil(document, by)
            ),
            "nibbling-isopods" when FixIndex.Of(finding.Where) is { } i => (
                "without these isopods",
                DesignEdits.Remove(document, string.Create(CultureInfo.InvariantCulture, $"crew[{i}]"))
            ),
            "crew-too-few"
            or "droppings-stay"
                when FixIndex.Of(finding.Where) is { } i && FixText.Times(finding) is > 1 and var times =>
                Crew(document, i, times),
            _ => null,
        };

    /// <summary>A plant that only needs trimming stays.</summary>
    private static bool Takes(Finding finding) => finding.Fix.StartsWith("Take", StringComparison.Ordinal);

    private static (string, Reading<DesignDocument>)? Fewer(DesignDocument document, double most)
    {
        // With several entries it is the keeper's choice who goes.
        var path =
            document.Design.Animals.Count == 1 ? "animals[0].count"
            : document.Design.Animals.Count == 0 && document.Design.RatedFor.Count == 1 ? "ratedFor[0].count"
            : null;
        return path is null
            ? null
            : (
                most == 1 ? "1 animal" : string.Create(CultureInfo.InvariantCulture, $"{most:0} animals"),
                DesignEdits.Set(document, path, most.ToString("0", CultureInfo.InvariantCulture))
            );
    }

    private static (string, Reading<DesignDocument>)? Mounted(DesignDocument document, int plant)
    {
        if (document.Design.Plants.Count <= plant || document.Design.Plants[plant].Mounted)
        {
            return null;
        }

        var path = string.Create(CultureInfo.InvariantCulture, $"plants[{plant}]");
        var with = DesignEdits.Set(document, $"{path}.mounted", "true");
        var height = document.Design.Box.Inside?.Height ?? document.Design.Box.Outside?.Height;
        return with.Value is { } so && document.Design.Plants[plant].At is { Z: null } && height is { } edge
            ? (
                "mounted half-way up",
                FixText.Length(so, $"{path}.at.z", FixText.Rounded(FixText.Mean(edge) / 2))
            )
            : ("mounted", with);
    }

    private static Reading<DesignDocument> Cork(DesignDocument document)
    {
        var one = DesignEdits.Add(document, "hardscape", "{ material: cork-bark, mass: 0.3 kg }");
        return one.Value is { } so
            ? DesignEdits.Add(so, "hardscape", "{ material: cork-bark, mass: 0.3 kg }")
            : one;
    }

    private static (string, Reading<DesignDocument>)? Crew(DesignDocument document, int crew, double times)
    {
        if (document.Design.Crew.Count <= crew)
        {
            return null;
        }

        var count = Math.Ceiling(document.Design.Crew[crew].Count * times);
        return (
            string.Create(CultureInfo.InvariantCulture, $"{count:0} of them"),
            DesignEdits.Set(
                document,
                string.Create(CultureInfo.InvariantCulture, $"crew[{crew}].count"),
                count.ToString("0", CultureInfo.InvariantCulture)
            )
        );
    }
}
