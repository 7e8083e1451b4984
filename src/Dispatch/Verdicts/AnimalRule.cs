using System.Collections.Immutable;
using Litterfall.Dispatch.Bands;
using Litterfall.Dispatch.Packing;
using Litterfall.Dispatch.Regions;
using Litterfall.Domain.Dispatch;
using Litterfall.Domain.Figures;
using Litterfall.Running.Service;

namespace Litterfall.Dispatch.Verdicts;

/// <summary>Health and papers of the animals: quarantine, unexplained deaths, what goes with them.</summary>
internal static class AnimalRule
{
    // The carrier's consent is a rule of its own.
    private const string CarrierPaper = "carrier-consent";

    /// <summary>Reasons on a day.</summary>
    public static IEnumerable<ShipReason> Reasons(WeekTask task, ImmutableArray<LiveGood> goods, DateOnly day)
    {
        foreach (var good in goods.Where(g => g.IsAnimal))
        {
            foreach (var fact in Facts(task, good.Content))
            {
                if (fact.QuarantineEnds > day)
                {
                    yield return Kept(
                        "quarantine",
                        $"The {good.Name}{From(fact)} is in quarantine until "
                            + $"{CalendarWords.Day(fact.QuarantineEnds.Value)}.",
                        fact.QuarantineEnds.Value
                    );
                }

                if (Ends(fact) is { } ends && ends > day)
                {
                    yield return Kept(
                        "unexplained-death",
                        $"A tank-mate of the {good.Name}{From(fact)} died unexplained on "
                            + $"{CalendarWords.Day(fact.UnexplainedDeath!.Value)}: the others stay.",
                        ends
                    );
                }
            }
        }

        if (Papers(task) is { } papers)
        {
            yield return papers;
        }
    }

    private static IEnumerable<AnimalFact> Facts(WeekTask task, LiveContent content) =>
        task.Facts.Where(f => f.Key == content.Key && (f.From.Length == 0 || f.From == content.From));

    private static DateOnly? Ends(AnimalFact fact) =>
        fact.UnexplainedDeath?.AddDays(QuarantineClocks.DaysAfterDeath);

    private static string From(AnimalFact fact) => fact.From.Length > 0 ? $" from {fact.From}" : "";

    private static ShipReason? Papers(WeekTask task)
    {
        var list = AnimalPapers.List(task.Parcel, task.Catalog, task.Rules, DateOnly.FromDateTime(task.Now));
        var missing = AnimalPapers.Missing(list).Where(p => p.Key != CarrierPaper).ToList();
        return missing.Count == 0
            ? null
            : Held(
                OpenTasks.Papers,
                $"Papers are not ticked off: {string.Join(" ", missing.Select(Told))}",
                "Look at each paper and tick it off; the authority decides which are needed."
            );
    }

    private static string Told(AnimalPaper paper) =>
        paper.Species.Length > 0 ? $"{paper.Species}: {paper.Text}" : paper.Text;

    private static ShipReason Kept(string slug, string text, DateOnly until) =>
        Held(slug, text, $"It may leave from {CalendarWords.Day(until)} on.") with
        {
            CureDay = until,
            Source = "keeper-practice",
            SourcePlace = "days of quarantine, and days after an unexplained death",
            Provenance = Provenance.Recalled,
        };

    private static ShipReason Held(string slug, string text, string cure) =>
        new()
        {
            Slug = slug,
            Rule = ShipRule.Animals,
            Verdict = ShipVerdict.Hold,
            Text = text,
            Cure = cure,
            IsProtective = true,
        };
}
