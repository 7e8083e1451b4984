using Litterfall.Domain.Catalog;
using Litterfall.Domain.Checking;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Faults;
using Litterfall.Domain.Findings;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Web.Desk;

/// <summary>A change of the design that answers a finding, to be tried.</summary>
/// <param name="Document">The changed design.</param>
/// <param name="Words">What it does.</param>
public sealed record QuickFix(DesignDocument Document, string Words)
{
    /// <summary>
    /// A fix that can be written without asking anything; null where there is none. What only a person can
    /// know, such as papers or quarantine, has none.
    /// </summary>
    /// <param name="finding">The finding.</param>
    /// <param name="document">The design.</param>
    /// <param name="catalog">The library.</param>
    public static QuickFix? Of(Finding finding, DesignDocument document, TradeCatalog catalog) =>
        Of(finding, document, catalog, changed => DesignChecker.Check(changed, catalog));

    /// <summary>The same where designs name files.</summary>
    /// <param name="finding">The finding.</param>
    /// <param name="document">The design.</param>
    /// <param name="catalog">The library.</param>
    /// <param name="check">Checks a design with its files.</param>
    public static QuickFix? Of(
        Finding finding,
        DesignDocument document,
        TradeCatalog catalog,
        Func<DesignDocument, Reading<CheckedDesign>> check
    )
    {
        var edit = FloorFix.Of(finding, document)
            ?? AirFix.Of(finding, document)
            ?? LifeFix.Of(finding, document);
        var (words, reading) =
            finding.Slug == "no-crew"
                ? ("seed springtails and dwarf isopods", Crew(document, catalog, check))
                : edit ?? ("", new Reading<DesignDocument>(null, []));
        return
            reading.Value is { } changed
            && reading.IsGood
            && changed.Text != document.Text
            && check(changed).IsGood
            ? new QuickFix(changed, words)
            : null;
    }

    /// <summary>As many of each as the library seeds on the floor of this box.</summary>
    private static Reading<DesignDocument> Crew(
        DesignDocument document,
        TradeCatalog catalog,
        Func<DesignDocument, Reading<CheckedDesign>> check
    )
    {
        if (check(document) is not { Value: { } design, IsGood: true })
        {
            return new(null, []);
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
