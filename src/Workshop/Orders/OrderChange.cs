using Litterfall.Domain.Lists;
using Litterfall.Domain.Trade;

namespace Litterfall.Workshop.Orders;

/// <summary>A good of which a change takes more or less.</summary>
/// <param name="Name">As people call it.</param>
/// <param name="Unit">What it is counted in.</param>
/// <param name="Before">How much was agreed; 0 for what is new.</param>
/// <param name="After">How much it is now; 0 for what falls away.</param>
public sealed record GoodChange(string Name, StockUnit Unit, double Before, double After)
{
    /// <summary>"8.2 L more of fine bark", "no cork tile any more (0.27 m²)".</summary>
    public string Words =>
        Before == 0 ? $"{OrderText.Amount(After, Unit)} of {Name}, new"
        : After == 0 ? $"no {Name} any more ({OrderText.Amount(Before, Unit)})"
        : After > Before ? $"{OrderText.Amount(After - Before, Unit)} more of {Name}"
        : $"{OrderText.Amount(Before - After, Unit)} less of {Name}";
}

/// <summary>What changes against what the customer agreed to: price, day and goods.</summary>
/// <param name="Net">Difference of the price before tax.</param>
/// <param name="Gross">Difference of the price with tax.</param>
/// <param name="Days">Days later than promised, below 0 for earlier; null where one has no day.</param>
/// <param name="Goods">Goods of which more or less is taken.</param>
/// <param name="Minutes">Difference of the working minutes.</param>
public sealed record OrderChange(decimal Net, decimal Gross, int? Days, Seq<GoodChange> Goods, double Minutes)
{
    private const double Same = 1e-6;

    /// <summary>Compares two offers of one order.</summary>
    /// <param name="before">What was agreed, and its day.</param>
    /// <param name="after">What it becomes, and its day.</param>
    public static OrderChange Between(
        (QuoteOption Option, DateOnly? Day) before,
        (QuoteOption Option, DateOnly? Day) after
    )
    {
        var old = before.Option.Goods.ToDictionary(g => (g.Good, g.Unit));
        var now = after.Option.Goods.ToDictionary(g => (g.Good, g.Unit));
        var goods = old
            .Keys.Union(now.Keys)
            .Select(key =>
                (
                    Name: (now.GetValueOrDefault(key) ?? old[key]).Name,
                    key.Unit,
                    Before: old.GetValueOrDefault(key)?.Amount ?? 0,
                    After: now.GetValueOrDefault(key)?.Amount ?? 0
                )
            )
            .Where(g => Math.Abs(g.After - g.Before) > Same * Math.Max(1, Math.Max(g.Before, g.After)))
            .Select(g => new GoodChange(g.Name, g.Unit, g.Before, g.After))
            .OrderBy(g => g.Name, StringComparer.Ordinal);
        return new(
            after.Option.Net - before.Option.Net,
            after.Option.Gross - before.Option.Gross,
            after.Day is { } then && before.Day is { } day ? then.DayNumber - day.DayNumber : null,
            [.. goods],
            after.Option.Minutes.Sum(m => m.Minutes) - before.Option.Minutes.Sum(m => m.Minutes)
        );
    }

    /// <summary>The change in one sentence, for the history and the customer.</summary>
    public string Words
    {
        get
        {
            var price =
                Gross == 0 ? "The price stays"
                : Gross > 0 ? $"{OrderText.Money(Gross)} more"
                : $"{OrderText.Money(-Gross)} less";
            var day = Days switch
            {
                null or 0 => "the day stays",
                1 => "1 day later",
                -1 => "1 day earlier",
                > 0 => FormattableString.Invariant($"{Days} days later"),
                _ => FormattableString.Invariant($"{-Days} days earlier"),
            };
            var goods =
                Goods.Count == 0
                    ? "the materials stay"
                    : string.Join(", ", Goods.Take(Most).Select(g => g.Words))
                        + (
                            Goods.Count > Most
                                ? FormattableString.Invariant($" and {Goods.Count - Most} more")
                                : ""
                        );
            return $"{price}; {day}; {goods}.";
        }
    }

    private const int Most = 4;
}
