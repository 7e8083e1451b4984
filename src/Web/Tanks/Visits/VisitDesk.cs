using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Documents.Shop.Tanks;
using Litterfall.Domain.Stock;
using Litterfall.Domain.Sums;
using Litterfall.Domain.Tanks;
using Litterfall.Domain.Trade;
using Litterfall.Running.Rounds;
using Litterfall.Running.Visits;
using Litterfall.Store;
using Litterfall.Web.Tanks.Rounds;
using Litterfall.Workshop.Orders;

namespace Litterfall.Web.Tanks.Visits;

/// <summary>Contracts and visits of this bench.</summary>
/// <param name="Tanks">The tanks.</param>
/// <param name="Contracts">Contracts.</param>
/// <param name="Visits">Visits that were made, the first first.</param>
public sealed record VisitView(
    TankView Tanks,
    IReadOnlyList<Kept<VisitContract>> Contracts,
    ImmutableArray<TankVisit> Visits
)
{
    /// <summary>Visits of the next days, in the order of the route.</summary>
    /// <param name="days">How many days.</param>
    public ImmutableArray<ComingVisit> Coming(int days) =>
        VisitPlan.Coming(Contracts.Select(c => c.Value), Visits, Tanks.Today.AddDays(days));

    /// <summary>Name of a customer.</summary>
    /// <param name="key">Its key.</param>
    public string Customer(string key) => Tanks.Stock.Customers.GetValueOrDefault(key)?.Name ?? key;
}

/// <summary>Reads contracts and visits, and writes a visit with all that belongs to it in one step.</summary>
public sealed class VisitDesk(TankDesk desk, RoundDesk rounds, BenchStore store)
{
    /// <summary>Contracts and visits.</summary>
    /// <param name="cancel">Ends the reading.</param>
    public async Task<VisitView> LoadAsync(CancellationToken cancel = default)
    {
        var visits = await store.RecordsAsync<TankVisit>(cancel);
        return new(
            await desk.LoadAsync(cancel),
            await store.RecordsAsync<VisitContract>(cancel),
            [.. visits.Select(v => v.Value).OrderBy(v => v.Day).ThenBy(v => v.Number)]
        );
    }

    /// <summary>What is done on a visit of today.</summary>
    /// <param name="view">Contracts and visits.</param>
    /// <param name="contract">The contract.</param>
    public async Task<ImmutableArray<VisitStep>> StepsAsync(VisitView view, VisitContract contract)
    {
        var tanks = view.Tanks.Running.Where(t => contract.Tanks.Contains(t.Code));
        var book = new RoundBook(await rounds.TanksAsync(view.Tanks, tanks), [], view.Tanks.Today);
        return VisitPlan.Steps(contract, book, view.Tanks.Today);
    }

    /// <summary>Writes a contract; null where it is kept, else why not.</summary>
    /// <param name="contract">The contract.</param>
    /// <param name="basis">Version it was changed from; 0 for a new one.</param>
    public async Task<string?> KeepAsync(VisitContract contract, int basis) =>
        await desk.WriteAsync(
            new ShopChange(await desk.WhoAsync()).Keep(Key(contract.Number), basis, contract, "contract")
        );

    /// <summary>
    /// Writes a visit: its lines in the logs, the parts out of stock and into their tank, and the invoice.
    /// Whole, or nothing of it.
    /// </summary>
    /// <param name="view">Contracts and visits as they were shown.</param>
    /// <param name="kept">The contract.</param>
    /// <param name="visit">The visit; its number is given here.</param>
    /// <param name="isBilled">True where it is charged.</param>
    public async Task<string?> WriteAsync(
        VisitView view,
        Kept<VisitContract> kept,
        TankVisit visit,
        bool isBilled
    )
    {
        var who = await desk.WhoAsync();
        var numbered = visit with
        {
            Number = view.Visits.Select(v => v.Number).DefaultIfEmpty(0).Max() + 1,
            Who = who,
        };
        var change = new ShopChange(who).Keep(Key(numbered.Number), 0, numbered, "visit");
        Logs(change, numbered);
        Parts(change, view, numbered);
        if (isBilled)
        {
            await BillAsync(change, view, kept, numbered);
        }

        return await desk.WriteAsync(change);
    }

    private void Logs(ShopChange change, TankVisit visit)
    {
        foreach (var (step, i) in visit.Steps.Where(s => s.IsDone).Select((s, i) => (s, i)))
        {
            var number = Shop.Stock.StockWords.Plain(step.Found.Split(' ')[0]);
            var kind =
                step.Task == RoundPractice.Level && number is not null ? CareKind.Level
                : step.Task == RoundPractice.Drain && number is not null ? CareKind.Drained
                : step.Task is "litter" or "crew" ? CareKind.Added
                : CareKind.Tended;
            var isAmount = kind is CareKind.Level or CareKind.Drained;
            change.Add(
                new CareEntry
                {
                    Key = string.Create(CultureInfo.InvariantCulture, $"visit-{visit.Number}-{i}"),
                    Tank = step.Tank,
                    At = desk.Now,
                    Kind = kind,
                    Amount = isAmount ? number * (kind == CareKind.Level ? 10 : 1000) : null,
                    Task = step.Task,
                    Note =
                        isAmount || step.Found.Length == 0
                            ? step.What.ToLowerInvariant()
                            : $"{step.What.ToLowerInvariant()}: {step.Found}",
                    Who = visit.Who,
                }
            );
        }
    }

    private static void Parts(ShopChange change, VisitView view, TankVisit visit)
    {
        var tank = visit.Steps is [var first, ..] ? first.Tank : null;
        foreach (var part in visit.Parts)
        {
            change.Add(
                new Movement
                {
                    Lot = part.Lot,
                    Kind = MovementKind.Used,
                    Amount = part.Amount,
                    Into = tank,
                    Day = visit.Day,
                    Who = visit.Who,
                    Note = string.Create(CultureInfo.InvariantCulture, $"visit {visit.Number}"),
                }
            );
        }

        if (visit.Parts.Count > 0 && tank is not null && view.Tanks.Find(tank) is { } kept)
        {
            // What went in can be traced from then on.
            change.Keep(
                kept.Key,
                kept.Version,
                kept.Value with
                {
                    Lots = [.. kept.Value.Lots.Concat(visit.Parts.Select(p => p.Lot)).Distinct()],
                },
                "parts of a visit"
            );
        }
    }

    private async Task BillAsync(
        ShopChange change,
        VisitView view,
        Kept<VisitContract> kept,
        TankVisit visit
    )
    {
        var contract = kept.Value;
        var terms = (await store.RecordAsync<ShopTerms>(ShopTerms.Key))?.Value
            ?? new ShopTerms { Name = "Workshop" };
        var order = contract.Order;
        if (order == 0)
        {
            // Visits are billed under an order of their own: that of the tank stays as it was agreed.
            order = view.Tanks.Stock.Orders.Select(o => o.Number).DefaultIfEmpty(0).Max() + 1;
            change
                .Keep(Key(order), 0, Service(order, contract, visit), "visits by contract")
                .Keep(kept.Key, kept.Version, contract with { Order = order }, "billed under its own order");
        }

        change.Issue(IssuedKind.Invoice, order, n =>
            Invoice(n, order, (contract, visit), (terms, Payer(view, contract)))
        );
    }

    private Order Service(int number, VisitContract contract, TankVisit visit) =>
        new()
        {
            Number = number,
            Customer = contract.Customer,
            State = OrderState.Closed,
            Notes = "Visits by contract.",
            Items =
            [
                new OrderItem
                {
                    Kind = OrderItemKind.Loose,
                    Name = "visits by contract",
                    Amount = 1,
                },
            ],
            History = [new OrderEvent(desk.Now, visit.Who, OrderState.Closed, "visits by contract")],
        };

    private static Customer Payer(VisitView view, VisitContract contract) =>
        view.Tanks.Stock.Customers.GetValueOrDefault(contract.Customer)
        ?? new Customer { Key = contract.Customer, Name = contract.Customer };

    private static Invoice Invoice(
        int number,
        int order,
        (VisitContract Contract, TankVisit Visit) what,
        (ShopTerms Shop, Customer Customer) head
    )
    {
        var day = what.Visit.Day.ToString("d MMMM yyyy", CultureInfo.InvariantCulture);
        QuoteLine[] lines =
        [
            new($"Visit on {day}: {string.Join(", ", what.Contract.Tanks)}", 1, what.Contract.Price),
            .. what.Visit.Parts.Where(p => p.Net > 0).Select(p => new QuoteLine(p.Name, p.Amount, p.Net)),
        ];
        var net = lines.Sum(l => l.Net);
        var tax = RoundingRule.Cent.Round(net * head.Shop.TaxPercent / 100m);
        return new()
        {
            Kind = IssuedKind.Invoice,
            Number = number,
            Name = IssuedName.From(head.Shop.InvoicePrefix, number),
            Order = order,
            Day = what.Visit.Day,
            // Prices of contracts are net; tax comes on top.
            Shop = head.Shop with { ShowsTaxIncluded = false },
            Customer = head.Customer,
            Lines = [.. lines],
            Net = net,
            Tax = tax,
            Gross = net + tax,
            PayBy = what.Visit.Day.AddDays(head.Shop.PayDays),
        };
    }

    /// <summary>What the report of a visit says; null where there is no such visit.</summary>
    /// <param name="number">Its number.</param>
    /// <param name="cancel">Ends the reading.</param>
    public async Task<VisitText?> ReportAsync(int number, CancellationToken cancel)
    {
        var view = await LoadAsync(cancel);
        var visit = view.Visits.FirstOrDefault(v => v.Number == number);
        var contract = view.Contracts.FirstOrDefault(c => c.Value.Number == visit?.Contract)?.Value;
        if (visit is null || contract is null)
        {
            return null;
        }

        var photos = new List<ImmutableArray<byte>>();
        foreach (var name in visit.Photos)
        {
            if (await store.FileAsync(name, cancel) is { } photo)
            {
                photos.Add([.. photo]);
            }
        }

        return new(
            view.Tanks.Stock.Terms ?? new ShopTerms { Name = "Workshop" },
            Payer(view, contract),
            visit,
            VisitPlan.Next(contract, view.Visits),
            [.. photos]
        );
    }

    private static string Key(int number) => number.ToString(CultureInfo.InvariantCulture);
}
