using System.Globalization;
using Litterfall.Domain.Trade;
using Litterfall.Store;
using Litterfall.Web.Library;
using Litterfall.Web.Shop.Orders;
using Litterfall.Workshop.Supplying;

namespace Litterfall.Web.Shop.Buying;

/// <summary>What is bought, from whom, and what came.</summary>
public sealed partial class BuyingPage
{
    private BuyingDesk? work;
    private BuyingPlan? plan;
    private ReceiptForm? receipt;
    private CancellationTokenSource? running;
    private string? told;
    private string? fault;

    /// <inheritdoc/>
    protected override Task OnInitializedAsync() => LoadAsync();

    /// <inheritdoc/>
    public void Dispose() => running?.Dispose();

    private async Task LoadAsync() => work = await BuyingDesk.OpenAsync(Store, Shelf);

    private async Task PlanAsync()
    {
        if (work?.Wish() is not { } wish)
        {
            return;
        }

        (plan, told, fault) = (null, null, null);
        using var cancel = running = new CancellationTokenSource();
        StateHasChanged();
        try
        {
            var desk = work;
            plan = await Task.Run(() => BuyingPlan.Find(desk.ToBuy, desk.Supply, wish, cancel.Token));
            if (plan.Plan is null && plan is { Trouble.Length: 0, Without.Count: 0 })
            {
                told = "There is nothing to buy.";
            }
        }
        catch (OperationCanceledException)
        {
            told = "Stopped before any purchase was found.";
        }

        running = null;
    }

    private async Task KeepAsync()
    {
        var purchases = plan!.Purchases;
        fault = await Attempt.AtAsync(async () =>
        {
            var change = new ShopChange(await OrderBook.WhoAsync(Store));
            foreach (var purchase in purchases)
            {
                change.KeepNumbered(number => purchase with { Number = number }, "planned");
            }

            await Store.WriteAsync(change);
            plan = null;
            await LoadAsync();
            told =
                purchases.Count == 1
                    ? "1 purchase is on the list."
                    : $"{purchases.Count} purchases are on the list.";
        });
    }

    private async Task MoveAsync(Kept<Purchase> kept, PurchaseState state) =>
        fault = await Attempt.AtAsync(async () =>
        {
            var moved = kept.Value with { State = state, Day = work!.Today };
            await Store.WriteAsync(
                new ShopChange(await OrderBook.WhoAsync(Store)).Keep(
                    kept.Key,
                    kept.Version,
                    moved,
                    BuyingDesk.State(state)
                )
            );
            await LoadAsync();
        });

    private void Begin(Kept<Purchase> kept) => receipt = new ReceiptForm(kept, work!);

    private async Task TakeAsync()
    {
        var form = receipt!;
        if (form.Read() is not { } came)
        {
            return;
        }

        fault = await Attempt.AtAsync(async () =>
        {
            var who = await OrderBook.WhoAsync(Store);
            var taken = Receipt.Read(
                form.Purchase.Value,
                came,
                (work!.Offers, work.Goods),
                (await Store.LotsAsync()).Select(l => l.Id),
                (who, work.Today)
            );
            await Store.WriteAsync(await Change(taken, form.Purchase, who));
            await Library.LoadPricesAgainAsync();
            receipt = null;
            await LoadAsync();
            told = string.Create(
                CultureInfo.InvariantCulture,
                $"Came in: {string.Join(", ", taken.Lots.Select(l => l.Id))}. Labels are on the stock page."
            );
        });
    }

    private async Task<ShopChange> Change(Receipt taken, Kept<Purchase> purchase, string who)
    {
        var change = new ShopChange(who).Keep(purchase.Key, purchase.Version, taken.Purchase, "came");
        foreach (var lot in taken.Lots)
        {
            change.Add(lot);
        }

        foreach (var line in taken.Lines)
        {
            change.Add(line);
        }

        foreach (var offer in taken.Offers)
        {
            var kept = await Store.RecordAsync<Offer>(offer.Key);
            change.Keep(offer.Key, kept?.Version ?? 0, offer, "price paid");
        }

        return change;
    }
}
