using Litterfall.Domain.Catalog;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Designs;
using Litterfall.Domain.Findings;
using Litterfall.Planning.Sizing;

namespace Litterfall.Web.Desk;

/// <summary>A change of the design that answers a finding, to be tried.</summary>
/// <param name="Document">The changed design.</param>
/// <param name="Words">What it does.</param>
public sealed record QuickFix(DesignDocument Document, string Words)
{
    /// <summary>A fix that can be written without asking anything; null where there is none.</summary>
    /// <param name="finding">The finding.</param>
    /// <param name="document">The design.</param>
    /// <param name="catalog">The library.</param>
    public static QuickFix? Of(Finding finding, DesignDocument document, TradeCatalog catalog)
    {
        var (words, edit) = finding.Slug switch
        {
            "no-crew" => ("seed springtails and dwarf isopods", Crew(document, catalog)),
            "no-barrier" => (
                "lay a barrier mesh",
                DesignEdits.SetPart(
                    document,
                    "floor.barrier",
                    "{ material: glass-fibre-screen, upturn: 15 mm }"
                )
            ),
            "no-drain" => (
                "set a dip tube to siphon from",
                DesignEdits.SetPart(document, "drain", "{ kind: siphon, diameter: 20 mm }")
            ),
            "litter-too-thin" or "crew-without-litter" or "litter-covers-part" => (
                "3 cm of oak leaves",
                DesignEdits.SetPart(document, "floor.litter", "{ material: oak-leaves, depth: 3 cm }")
            ),
            "soil-too-thin" => Soil(document),
            "drainage-too-thin" => (
                "5 cm of drainage",
                document.Spans.ContainsKey("floor.drainage.depth")
                    ? DesignEdits.Set(document, "floor.drainage.depth", "5 cm")
                    : Nothing
            ),
            "no-level-check" => (
                "read the level every week",
                DesignEdits.Set(document, "habits.levelCheck", "7 d")
            ),
            "no-trip-device" => (
                "a residual-current device of 30 mA",
                DesignEdits.Set(document, "electrics.trip", "30 mA")
            ),
            _ => ("", Nothing),
        };
        return
            edit.Value is { } changed
            && edit.IsGood
            && changed.Text != document.Text
            && DesignChecker.Check(changed, catalog).IsGood
            ? new QuickFix(changed, words)
            : null;
    }

    private static Reading<DesignDocument> Nothing => new(null, []);

    private static (string, Reading<DesignDocument>) Soil(DesignDocument document) =>
        (
            "7 cm of soil",
            document.Spans.ContainsKey("floor.soil.depth")
                ? DesignEdits.Set(document, "floor.soil.depth", "7 cm")
                : Nothing
        );

    /// <summary>As many of each as the library seeds on the floor of this box.</summary>
    private static Reading<DesignDocument> Crew(DesignDocument document, TradeCatalog catalog)
    {
        if (DesignChecker.Check(document, catalog) is not { Value: { } design, IsGood: true })
        {
            return Nothing;
        }

        var floor = BoxGeometry.Of(design).OpenFloor.Si;
        var with = new Reading<DesignDocument>(document, []);
        foreach (var key in new[] { "folsomia-candida", "trichorhina-tomentosa" })
        {
            if (with.Value is { } so && catalog.Find(key)?.Figure("seedDensity") is { } density)
            {
                var count = Math.Max(1, Math.Round(density.Si * floor));
                with = DesignEdits.Add(
                    so,
                    "crew",
                    FormattableString.Invariant($"{{ animal: {key}, count: {count:0} }}")
                );
            }
        }

        return with;
    }
}
