using System.Collections.Immutable;
using Litterfall.Domain.Stock;

namespace Litterfall.Workshop.Stock;

/// <summary>Writes lines into accounts, one after another; used while one book is made.</summary>
internal sealed class Posting(ImmutableDictionary<string, LotAccount> before)
{
    private readonly Dictionary<string, LotAccount> touched = new(StringComparer.Ordinal);
    private readonly Dictionary<string, ImmutableArray<BookLine>.Builder> lines = new(StringComparer.Ordinal);
    private readonly Dictionary<string, ImmutableArray<BookLine>.Builder> feeds = new(StringComparer.Ordinal);

    /// <summary>All accounts as they are after the lines.</summary>
    public ImmutableDictionary<string, LotAccount> Accounts() =>
        before.SetItems(
            touched.Select(t =>
                KeyValuePair.Create(
                    t.Key,
                    t.Value with
                    {
                        Lines = lines.TryGetValue(t.Key, out var own) ? own.ToImmutable() : t.Value.Lines,
                        Feeds = feeds.TryGetValue(t.Key, out var fed) ? fed.ToImmutable() : t.Value.Feeds,
                    }
                )
            )
        );

    /// <summary>One more line; a line of a lot that the book does not have is left out.</summary>
    public void Post(Movement line)
    {
        if (Find(line.Lot) is not { } account)
        {
            return;
        }

        var (after, cost) = line.Reverses is { } taken
            ? TakeBack(account, line, taken)
            : Forward(account, line);
        touched[line.Lot] = after with
        {
            OnHand = Clean(account.OnHand + line.Effect, account),
            IsHeld = new LotState(account.OnHand, account.IsHeld).After(line).IsHeld,
        };
        var kept = new BookLine(line, cost);
        Add(lines, line.Lot, account.Lines, kept);
        if (line.Kind == MovementKind.Used && line.Into is { } into && Find(into) is { } fed)
        {
            touched[into] = fed with
            {
                Cost = fed.Cost.Grow(fed.OnHand, IsInItsCost(fed.Lot, line) ? 0 : cost),
            };
            Add(feeds, into, fed.Feeds, kept);
        }
    }

    /// <summary>A lot made here may carry the cost of what went into it on its first day.</summary>
    private static bool IsInItsCost(Lot lot, Movement line) =>
        lot.Cost != 0 && lot.Supplier is null && line.Reverses is null && line.Day == lot.Since;

    private static (LotAccount After, decimal Cost) Forward(LotAccount account, Movement line)
    {
        var q = line.Amount;
        var isAll = account.OnHand - q <= account.Rounding;
        switch (line.Kind)
        {
            case MovementKind.Received or MovementKind.Made:
                var money = Brought(account, q);
                return (Arrived(account, q, money), money);
            case MovementKind.Counted when q >= 0:
                return (
                    account with
                    {
                        Counted = account.Counted + q,
                        Cost = account.Cost.Grow(account.OnHand + q, 0),
                    },
                    0
                );
            case MovementKind.Counted:
                var (found, missing) = account.Cost.Issue(-q, account.OnHand + q <= account.Rounding);
                return (account with { Counted = account.Counted + q, Cost = found }, missing);
            case MovementKind.Moved:
                return (account with { Place = line.Place ?? account.Place }, 0);
            case MovementKind.Held or MovementKind.Released:
                return (account, 0);
            default:
                var (left, cost) = account.Cost.Issue(q, isAll);
                return (Gone(account, line.Kind, q) with { Cost = left }, cost);
        }
    }

    private (LotAccount After, decimal Cost) TakeBack(LotAccount account, Movement line, int taken)
    {
        var was = Earlier(account, taken)?.Cost ?? 0;
        var q = line.Amount;
        var onHand = account.OnHand + line.Effect;
        return line.Kind switch
        {
            MovementKind.Received or MovementKind.Made => (Arrived(account, -q, -was), -was),
            MovementKind.Counted => (
                account with
                {
                    Counted = account.Counted - q,
                    Cost = account.Cost.Grow(onHand, was),
                },
                -was
            ),
            MovementKind.Moved => (account with { Place = line.Place ?? "" }, 0),
            MovementKind.Held or MovementKind.Released => (account, 0),
            _ => (Gone(account, line.Kind, -q) with { Cost = account.Cost.Grow(onHand, was) }, -was),
        };
    }

    private static LotAccount Arrived(LotAccount account, double amount, decimal money) =>
        account with
        {
            In = account.In + amount,
            Cost = account.Cost.Grow(account.OnHand + amount, money),
        };

    private static LotAccount Gone(LotAccount account, MovementKind kind, double amount) =>
        kind switch
        {
            MovementKind.Used => account with { Used = account.Used + amount },
            MovementKind.Sold => account with { Sold = account.Sold + amount },
            _ => account with { Wasted = account.Wasted + amount },
        };

    /// <summary>
    /// Money that an arrival brings: its share of the price of the lot, all of it with the last.
    /// </summary>
    private static decimal Brought(LotAccount account, double amount)
    {
        var whole = account.Lot.Amount;
        decimal Upto(double sum) =>
            whole <= 0 || sum >= whole - account.Rounding
                ? account.Lot.Cost
                : Math.Round(account.Lot.Cost * (decimal)(sum / whole), 2, MidpointRounding.AwayFromZero);
        return Upto(account.In + amount) - (account.In > account.Rounding ? Upto(account.In) : 0);
    }

    /// <summary>Sums of many amounts end a hair beside nothing: that is nothing.</summary>
    private static double Clean(double onHand, LotAccount account) =>
        Math.Abs(onHand) <= account.Rounding ? 0 : onHand;

    private LotAccount? Find(string lot) =>
        touched.TryGetValue(lot, out var account) ? account : before.GetValueOrDefault(lot);

    private BookLine? Earlier(LotAccount account, int id) =>
        lines.TryGetValue(account.Lot.Id, out var own)
            ? own.FirstOrDefault(l => l.Line.Id == id)
            : account.Lines.FirstOrDefault(l => l.Line.Id == id);

    private static void Add(
        Dictionary<string, ImmutableArray<BookLine>.Builder> all,
        string lot,
        ImmutableArray<BookLine> past,
        BookLine line
    )
    {
        if (!all.TryGetValue(lot, out var builder))
        {
            all[lot] = builder = past.ToBuilder();
        }

        builder.Add(line);
    }
}
