using Litterfall.Domain.Lists;
using Litterfall.Domain.Sums;
using Litterfall.Domain.Trees;
using Litterfall.Workshop.Pricing;

namespace Litterfall.App.Trade;

/// <summary>Sums that come with a price when they are asked for.</summary>
/// <param name="Price">What one piece costs and how it is priced.</param>
/// <param name="Seen">Past shipments; null for none.</param>
/// <param name="Box">A box of animals; null for none.</param>
/// <param name="Shipments">Shipments to come that a fund is for; null for none.</param>
/// <param name="Pieces">Equal pieces on one bill.</param>
/// <param name="TaxRounding">Where the tax of the bill is rounded.</param>
public sealed record QuoteCase(
    CostCase Price,
    LossRate? Seen,
    BoxLoss? Box,
    int? Shipments,
    int Pieces,
    TaxRounding TaxRounding
);

/// <summary>Reads a case of <c>quote</c>.</summary>
public static class QuoteForm
{
    private const double MostMoney = 1e9;
    private const double MostPercent = 1e6;
    private const int MostLines = 1000;
    private const int MostPieces = 10_000;
    private const int MostShipments = 1_000_000;
    private static readonly NumberRange Share = NumberRange.UpTo(100.0);
    private static readonly string[] Roundings = [.. RoundingRule.All.Select(r => r.Word)];

    /// <summary>The checked case, or null and faults on the form.</summary>
    public static QuoteCase? Read(TreeForm form)
    {
        var currency = Currency(form);
        var labor = Labor(form, currency);
        var (loss, seen, box, shipments) = Loss(form);
        var price = new CostCase
        {
            Currency = currency,
            Materials = Money(form, "materials"),
            WastePercent = Percent(form, "wastePercent"),
            Labor = labor,
            OverheadPerHour = Money(form, "overheadPerHour"),
            OverheadPercent = Percent(form, "overheadPercent"),
            Machine = Money(form, "machine"),
            Live = Money(form, "live"),
            Packaging = Money(form, "packaging"),
            Shipping = Money(form, "shipping"),
            Loss = loss,
            Fee = Fee(form),
            MarginPercent = Exact(
                form.OptionalNumber("marginPercent", new NumberRange(-MostPercent, MostPercent))
            ),
            TaxPercent = Percent(form, "taxPercent"),
            PricesIncludeTax = form.FlagOrNull("pricesIncludeTax", true),
            Charge = Exact(form.OptionalNumber("charge", NumberRange.Positive(MostMoney))),
            Rounding = RoundingRule.All[Roundings.IndexOf(form.OptionalChoice("rounding", Roundings))],
            FixedCosts = Exact(form.OptionalNumber("fixedCosts", NumberRange.UpTo(MostMoney))),
        };
        var pieces = form.OptionalWhole("pieces", 1, MostPieces) ?? 1;
        var rounding = form.OptionalChoice("taxRounding", "by-line", "by-total");
        form.Close();
        RefuseNoRoom(form, price);
        return form.IsGood
            ? new(
                price,
                seen,
                box,
                shipments,
                pieces,
                rounding == "by-line" ? TaxRounding.ByLine : TaxRounding.ByTotal
            )
            : null;
    }

    private static void RefuseNoRoom(TreeForm form, CostCase price)
    {
        if (!form.IsGood || price.LeavesRoom)
        {
            return;
        }

        var fee = 100m * price.FeeShare;
        form.Refuse(
            form.Has("marginPercent") ? "marginPercent" : "fee",
            FormattableString.Invariant(
                $"a margin of {price.MarginPercent ?? 0m:0.####} % and fees of {fee:0.####} % of the price "
            ) + "without tax together take the whole price: nothing is left to pay the costs, at any price",
            FormattableString.Invariant($"a margin below {100m - fee:0.####} % with these fees")
        );
    }

    private static string? Currency(TreeForm form)
    {
        var currency = form.OptionalText("currency");
        if (currency is not null && !IsCurrency(currency))
        {
            var codes = currency.Split([' ', ',', ';', '/', '+', '&']).Where(IsCurrency).ToList();
            var isTwo = codes.Count > 1;
            form.Refuse(
                "currency",
                isTwo
                    ? $"currency names {codes.Count} currencies, {string.Join(" and ", codes)}"
                    : $"currency is the text '{TreeNode.Shown(currency)}'",
                "one currency of three capital letters, such as EUR; all amounts are in it"
            );
        }

        return currency;
    }

    private static bool IsCurrency(string code) => code.Length == 3 && code.All(char.IsAsciiLetterUpper);

    private static Seq<LaborLine> Labor(TreeForm form, string? currency)
    {
        var lines = new List<LaborLine>();
        foreach (var line in form.ObjectsOrNull("labor", "a line of labor", MostLines))
        {
            lines.Add(
                new LaborLine(
                    (decimal)Finite(line.Number("hours", NumberRange.UpTo(1e6))),
                    (decimal)Finite(line.Number("wagePerHour", NumberRange.UpTo(1e6)))
                )
            );
            if (line.OptionalText("currency") is { } other && other != currency)
            {
                line.Refuse(
                    "currency",
                    $"{line.Name} is in {TreeNode.Shown(other)}, the case in "
                        + $"{TreeNode.Shown(currency ?? "no named currency")}: two currencies",
                    "amounts of one currency"
                );
            }

            line.Close();
        }

        return [.. lines];
    }

    private static FeeRule? Fee(TreeForm form)
    {
        if (form.ObjectOrNull("fee", "the fee") is not { } fee)
        {
            return null;
        }

        var rule = new FeeRule(
            Exact(fee.OptionalNumber("percent", NumberRange.UpTo(MostPercent))) ?? 0m,
            Money(fee, "fixed"),
            fee.OptionalChoice("on", "gross", "net") == "gross"
        );
        fee.Close();
        return rule;
    }

    private static (LossPromise? Promise, LossRate? Seen, BoxLoss? Box, int? Shipments) Loss(TreeForm form)
    {
        if (form.ObjectOrNull("loss", "the loss") is not { } loss)
        {
            return default;
        }

        var isAgain = loss.FlagOrNull("replacedAgain", false);
        var range = Share with { TakesHighest = !isAgain };
        var chance = Exact(loss.OptionalNumber("chancePercent", range));
        var cost = Exact(loss.OptionalNumber("replacementCost", NumberRange.UpTo(MostMoney)));
        var seen = Seen(loss);
        var box = Box(loss);
        var shipments = loss.OptionalWhole("shipments", 1, MostShipments);
        loss.Close();
        chance ??= seen is null ? 0m : (decimal)(100.0 * seen.Mean);
        return (new LossPromise(chance.Value, isAgain, cost), seen, box, shipments);
    }

    private static LossRate? Seen(TreeForm loss)
    {
        if (loss.ObjectOrNull("observed", "what was observed") is not { } seen)
        {
            return null;
        }

        var shipped = seen.Whole("shipped", 1, MostShipments);
        var lost = seen.Whole("lost", 0, MostShipments);
        var prior = NumberRange.Positive(MostShipments);
        var rate = new LossRate(
            Math.Min(lost, shipped),
            shipped,
            seen.OptionalNumber("priorLost", prior) ?? 1.0,
            seen.OptionalNumber("priorKept", prior) ?? 19.0
        );
        seen.Close();
        if (seen.IsGood && lost > shipped)
        {
            seen.Refuse("lost", "more shipments were lost than sent", "at most as many as were shipped");
        }

        return rate;
    }

    private static BoxLoss? Box(TreeForm loss)
    {
        if (loss.ObjectOrNull("box", "the box") is not { } box)
        {
            return null;
        }

        var found = new BoxLoss(
            box.Whole("animals", 1, 10_000),
            box.Number("boxFailsPercent", Share) / 100.0,
            box.Number("eachPercent", Share) / 100.0
        );
        box.Close();
        return found;
    }

    private static decimal Money(TreeForm form, string key) =>
        Exact(form.OptionalNumber(key, NumberRange.UpTo(MostMoney))) ?? 0m;

    private static decimal Percent(TreeForm form, string key) =>
        Exact(form.OptionalNumber(key, NumberRange.UpTo(MostPercent))) ?? 0m;

    private static decimal? Exact(double? number) => number is { } value ? (decimal)Finite(value) : null;

    /// <summary>A number at fault is told already and not computed with.</summary>
    private static double Finite(double number) => double.IsNaN(number) ? 0.0 : number;
}
