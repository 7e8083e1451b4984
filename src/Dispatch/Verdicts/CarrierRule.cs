using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Dispatch.Bands;
using Litterfall.Dispatch.Regions;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Dispatch;
using Litterfall.Domain.Figures;

namespace Litterfall.Dispatch.Verdicts;

/// <summary>
/// What is asked of a carrier before animals go with it. Its own terms decide; they are read again and dated.
/// </summary>
internal static class CarrierRule
{
    /// <summary>Reasons that do not hang on the weather.</summary>
    public static IEnumerable<ShipReason> Terms(
        CarrierTerms carrier,
        ImmutableArray<LiveGood> goods,
        DispatchRules rules,
        DateOnly today
    )
    {
        if (!goods.Any(g => g.IsAnimal))
        {
            yield break;
        }

        if (carrier.TakesAnimals == false)
        {
            yield return Made(
                "carrier-refuses",
                ShipVerdict.Never,
                $"The {carrier.Name} does not take these animals.",
                "Choose a carrier that does, and keep its answer in writing."
            );
            yield break;
        }

        if (carrier.TakesAnimals is null)
        {
            yield return Made(
                OpenTasks.Unasked,
                ShipVerdict.Hold,
                $"Nobody has asked whether the {carrier.Name} takes these animals.",
                "Ask the carrier, and enter its answer with the day."
            );
        }

        if (Read(carrier, rules, today) is { } old)
        {
            yield return old;
        }
    }

    /// <summary>Where the forecast leaves what the carrier guarantees.</summary>
    public static IEnumerable<ShipReason> Guarantee(CarrierTerms carrier, ImmutableArray<NodeRange> nodes)
    {
        foreach (var node in nodes)
        {
            if (node.LowCelsius < carrier.GuaranteedFromCelsius)
            {
                yield return Ends(node, node.LowCelsius, carrier.GuaranteedFromCelsius.Value, "below");
            }

            if (node.HighCelsius > carrier.GuaranteedToCelsius)
            {
                yield return Ends(node, node.HighCelsius, carrier.GuaranteedToCelsius.Value, "above");
            }
        }
    }

    private static ShipReason? Read(CarrierTerms carrier, DispatchRules rules, DateOnly today)
    {
        const string cure = "Read its rules on live animals again, and enter the day.";
        if (carrier.RulesReadOn is not { } read)
        {
            return Made(
                OpenTasks.Unread,
                ShipVerdict.Hold,
                $"The rules of the {carrier.Name} were never read.",
                cure
            );
        }

        var days = today.DayNumber - read.DayNumber;
        if (days < 0)
        {
            return Made(
                OpenTasks.Unread,
                ShipVerdict.Hold,
                $"The rules of the {carrier.Name} are dated {CalendarWords.Day(read)}, still to come.",
                cure
            );
        }

        return days <= rules.CarrierRulesDays
            ? null
            : Made(
                OpenTasks.Old,
                ShipVerdict.Hold,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"The rules of the {carrier.Name} were last read {days} days ago; "
                        + $"{rules.CarrierRulesDays} is the most."
                ),
                cure
            ) with
            {
                Measured = days,
                Limit = rules.CarrierRulesDays,
            };
    }

    private static ShipReason Ends(NodeRange node, double celsius, double limit, string side) =>
        Made(
            "guarantee-ends",
            ShipVerdict.Ship,
            $"{VerdictWords.Celsius(celsius)} {VerdictWords.At(node)}: {side} "
                + $"{VerdictWords.Celsius(limit)} the carrier guarantees nothing.",
            ""
        ) with
        {
            Node = node.Node,
            Measured = celsius,
            Limit = limit,
            IsProtective = false,
        };

    private static ShipReason Made(string slug, ShipVerdict verdict, string text, string cure) =>
        new()
        {
            Slug = slug,
            Rule = ShipRule.Carrier,
            Verdict = verdict,
            Text = text,
            Cure = cure,
            IsProtective = true,
            Source = "workshop",
            Provenance = Provenance.Entered,
        };
}
