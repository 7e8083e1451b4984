using Litterfall.Domain.Stock;
using Litterfall.Workshop.Stock;

namespace Litterfall.UnitTests.Workshop.Stock;

/// <summary>Writes a small book line by line, as a test tells it.</summary>
internal sealed class Ledger
{
    public static readonly DateOnly Day = new(2026, 9, 1);

    private readonly List<Movement> lines = [];
    private readonly List<Lot> lots = [];

    public IReadOnlyList<Movement> Lines => lines;

    public IReadOnlyList<Lot> Lots => lots;

    public StockBook Book => StockBook.Empty.With(lots, lines);

    /// <summary>A lot that was bought.</summary>
    public Ledger Buy(string id, double amount, decimal cost, Func<Lot, Lot>? with = null) =>
        Bring(id, amount, cost, MovementKind.Received, l =>
            (with?.Invoke(l) ?? l) with
            {
                Supplier = "farm",
            }
        );

    /// <summary>A lot that was made here.</summary>
    public Ledger Make(string id, double amount, Func<Lot, Lot>? with = null) =>
        Bring(id, amount, 0, MovementKind.Made, with);

    public Ledger Use(string lot, double amount, string? into) => Write(lot, MovementKind.Used, amount, into);

    public Ledger Sell(string lot, double amount, string order) =>
        Write(lot, MovementKind.Sold, amount, order);

    public Ledger Write(string lot, MovementKind kind, double amount, string? into = null)
    {
        lines.Add(
            new()
            {
                Id = lines.Count + 1,
                Lot = lot,
                Kind = kind,
                Amount = amount,
                Into = into,
                Day = Day,
                Who = "Ilse",
            }
        );
        return this;
    }

    public Ledger Add(Movement line)
    {
        lines.Add(line with { Id = lines.Count + 1 });
        return this;
    }

    private Ledger Bring(string id, double amount, decimal cost, MovementKind kind, Func<Lot, Lot>? with)
    {
        var lot = new Lot
        {
            Id = id,
            Good = id[..id.IndexOf('-', StringComparison.Ordinal)].ToLowerInvariant(),
            Since = Day,
            Cost = cost,
            Amount = amount,
        };
        lots.Add(with?.Invoke(lot) ?? lot);
        return Write(id, kind, amount);
    }
}
