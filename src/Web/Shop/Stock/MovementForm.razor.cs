using Litterfall.Domain.Trade;
using Litterfall.Web.Library;
using Litterfall.Workshop.Stock;
using Microsoft.AspNetCore.Components;

namespace Litterfall.Web.Shop.Stock;

/// <summary>Writes goods that come, go or are moved into the book.</summary>
public sealed partial class MovementForm
{
    private MovementDraft draft = new();
    private string? told;
    private string? newLot;
    private bool isGood;
    private bool isBelow;
    private string? forLot;
    private bool isBegun;

    /// <summary>Stock.</summary>
    [Parameter, EditorRequired]
    public required StockView View { get; set; }

    /// <summary>Units of the reader.</summary>
    [Parameter]
    public UnitPreferences Preferences { get; set; } = UnitPreferences.Metric;

    /// <summary>The one lot it is about; null where good and lot are chosen here.</summary>
    [Parameter]
    public string? Lot { get; set; }

    /// <summary>Key of a good chosen outside; empty for none.</summary>
    [Parameter]
    public string Of { get; set; } = "";

    /// <summary>What is chosen at first.</summary>
    [Parameter]
    public StockWish First { get; set; } = StockWish.Use;

    /// <summary>Something was written.</summary>
    [Parameter]
    public EventCallback OnWritten { get; set; }

    private Good? Good => draft.Good.Length > 0 ? View.GoodOf(draft.Good) : null;

    private string Unit => StockWords.UnitWord(Good?.Unit ?? StockUnit.Liters, Preferences);

    private IEnumerable<LotAccount> Lots => View.Book.LotsOf(draft.Good).Where(l => l.HasSome);

    private IEnumerable<LotAccount> Targets =>
        View
            .Book.Lots.Where(l =>
                l.HasSome && View.GoodOf(l).Kind is GoodKind.Mix or GoodKind.Tank or GoodKind.Culture
            )
            .OrderByDescending(l => l.Lot.Since)
            .Take(50);

    private IEnumerable<(StockWish Wish, string Words)> Wishes =>
        MovementDraft
            .Wishes(Good)
            .Where(w => Lot is null || w != StockWish.Receive)
            .Select(w => (w, Words(w)));

    private string Verb =>
        draft.Wish switch
        {
            StockWish.Receive => "Receive",
            StockWish.Use => "Use",
            StockWish.Sell => "Sell",
            StockWish.Move => "Move",
            StockWish.Split => "Split",
            StockWish.Died => "Write as died",
            _ => "Throw away",
        };

    /// <inheritdoc/>
    protected override void OnParametersSet()
    {
        if (!isBegun || forLot != Lot || (Of.Length > 0 && Of != draft.Good && Lot is null))
        {
            (isBegun, forLot) = (true, Lot);
            Begin();
        }
    }

    private void Begin()
    {
        draft = new() { Wish = First, Day = Shelf.Today };
        if (Lot is not null && View.Book.Find(Lot) is { } lot)
        {
            (draft.Lot, draft.Good) = (Lot, lot.Lot.Good);
        }
        else
        {
            draft.Good = Of;
        }

        Chosen();
    }

    private void Chosen()
    {
        isBelow = false;
        if (Lot is null)
        {
            draft.Lot = "";
        }

        if (draft.Wish == StockWish.Receive && Good is { KeepsDays: { } days })
        {
            draft.Expires = draft.Day.AddDays(days);
        }
    }

    private async Task SaveAsync()
    {
        newLot = null;
        var (step, fault) = draft.Build(View, await Shelf.WhoAsync(), Preferences);
        told = fault ?? await Shelf.WriteAsync(step!);
        isGood = told is null;
        if (!isGood)
        {
            isBelow = told!.Contains("were to go out", StringComparison.Ordinal);
            return;
        }

        newLot = step!.Lots.Count > 0 ? step.Lots[0].Id : null;
        told = $"Written: {Verb.ToLowerInvariant()} {draft.Amount.Trim()} {Unit}.";
        var (wish, good) = (draft.Wish, draft.Good);
        Begin();
        (draft.Wish, draft.Good) = (wish, good);
        await OnWritten.InvokeAsync();
    }

    private string LotWords(LotAccount lot)
    {
        var amount = StockWords.Amount(lot.OnHand, View.GoodOf(lot).Unit, Preferences);
        return lot.Bar(draft.Day) is { } bar ? $"{lot.Lot.Id}, {amount}, {bar}" : $"{lot.Lot.Id}, {amount}";
    }

    private string Told(Picking picking)
    {
        string Some(double amount) => StockWords.Amount(amount, Good!.Unit, Preferences);
        var lots = string.Join(", ", picking.Lots.Select(p => $"{Some(p.Amount)} of {p.Lot.Lot.Id}"));
        return (lots, picking.IsShort) switch
        {
            ("", _) => "No lot of it is free to use.",
            (_, true) => $"Takes {lots}; {Some(picking.Short)} are missing.",
            _ => $"Takes {lots}.",
        };
    }

    private static string Words(StockWish wish) =>
        wish switch
        {
            StockWish.Receive => "Received or made",
            StockWish.Use => "Used",
            StockWish.Sell => "Sold",
            StockWish.Move => "Moved",
            StockWish.Split => "Split off a new lot",
            StockWish.Died => "Died",
            _ => "Thrown away",
        };

    private static string Id(string field) => $"m-{field}";
}
