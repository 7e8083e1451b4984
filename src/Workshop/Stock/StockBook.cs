using System.Collections.Immutable;
using Litterfall.Domain.Stock;

namespace Litterfall.Workshop.Stock;

/// <summary>
/// The book of stock: what is on hand of each lot, what it cost and where it went. It grows line by line; an
/// earlier book stays as it was, so it can be read while a later one is made.
/// </summary>
public sealed class StockBook
{
    private readonly ImmutableDictionary<string, LotAccount> accounts;
    private readonly ImmutableDictionary<string, ImmutableList<string>> byGood;

    private StockBook(
        ImmutableDictionary<string, LotAccount> accounts,
        ImmutableDictionary<string, ImmutableList<string>> byGood,
        int lastLine
    )
    {
        this.accounts = accounts;
        this.byGood = byGood;
        LastLine = lastLine;
    }

    /// <summary>A book without lots.</summary>
    public static StockBook Empty { get; } =
        new(
            ImmutableDictionary.Create<string, LotAccount>(StringComparer.Ordinal),
            ImmutableDictionary.Create<string, ImmutableList<string>>(StringComparer.Ordinal),
            0
        );

    /// <summary>Number of the last line in it; 0 for none.</summary>
    public int LastLine { get; }

    /// <summary>All lots.</summary>
    public IEnumerable<LotAccount> Lots => accounts.Values;

    /// <summary>Keys of the goods that have lots.</summary>
    public IEnumerable<string> Goods => byGood.Keys;

    /// <summary>A lot by its number; null where there is none.</summary>
    /// <param name="lot">Its number.</param>
    public LotAccount? Find(string lot) => accounts.GetValueOrDefault(lot);

    /// <summary>Lots of a good in the order they came.</summary>
    /// <param name="good">Key of the good.</param>
    public IEnumerable<LotAccount> LotsOf(string good) =>
        byGood.TryGetValue(good, out var ids)
            ? ids.Select(id => accounts[id])
                .OrderBy(a => a.Lot.Since)
                .ThenBy(a => a.Lot.Id, StringComparer.Ordinal)
            : [];

    /// <summary>On hand of a good, in its unit.</summary>
    /// <param name="good">Key of the good.</param>
    public double OnHand(string good) => LotsOf(good).Sum(a => a.OnHand);

    /// <summary>
    /// On hand of a good that may be used for any order on a day, in its unit: not on hold, not expired,
    /// out of quarantine, and made for no order.
    /// </summary>
    /// <param name="good">Key of the good.</param>
    /// <param name="day">The day.</param>
    public double Usable(string good, DateOnly day) =>
        LotsOf(good).Where(a => a.HasSome && a.Bar(day) is null && a.Lot.Order is null).Sum(a => a.OnHand);

    /// <summary>What the stock of a good cost, net.</summary>
    /// <param name="good">Key of the good.</param>
    public decimal Value(string good) => LotsOf(good).Sum(a => a.Value);

    /// <summary>What lines would cost if they were written now, net; the book stays as it is.</summary>
    /// <param name="lines">Lines, not yet numbered.</param>
    public decimal CostOf(IReadOnlyList<Movement> lines)
    {
        var tried = With([], lines.Select((l, i) => l with { Id = LastLine + 1 + i }));
        return lines
            .Select(l => l.Lot)
            .Distinct(StringComparer.Ordinal)
            .Select(tried.Find)
            .OfType<LotAccount>()
            .SelectMany(a => a.Lines)
            .Where(l => l.Line.Id > LastLine)
            .Sum(l => l.Cost);
    }

    /// <summary>The book with more lots and lines.</summary>
    /// <param name="lots">Lots; those that are in it already stay as they are.</param>
    /// <param name="lines">Lines in the order they were written; those up to the last are in it.</param>
    public StockBook With(IEnumerable<Lot> lots, IEnumerable<Movement> lines)
    {
        var goods = byGood;
        var added = new List<KeyValuePair<string, LotAccount>>();
        foreach (var lot in lots.Where(l => !accounts.ContainsKey(l.Id)))
        {
            added.Add(new(lot.Id, new LotAccount { Lot = lot }));
            goods = goods.SetItem(lot.Good, goods.GetValueOrDefault(lot.Good, []).Add(lot.Id));
        }

        var posting = new Posting(accounts.AddRange(added));
        var last = LastLine;
        foreach (var line in lines.Where(l => l.Id > LastLine))
        {
            posting.Post(line);
            last = Math.Max(last, line.Id);
        }

        return new(posting.Accounts(), goods, last);
    }
}
