using System.Globalization;
using Litterfall.Domain.Stock;
using Litterfall.Domain.Trade;
using Litterfall.Store;
using Litterfall.Web.Library;
using Litterfall.Workshop.Stock;
using Microsoft.AspNetCore.Components;

namespace Litterfall.Web.Shop.Stock;

/// <summary>Counts lots with a phone in one hand.</summary>
public sealed partial class CountPage
{
    private const int Most = 8;

    private static readonly string[] Causes =
    [
        "not known",
        "used and not written",
        "spilled or torn",
        "measured anew",
        "counted wrongly before",
        "dried out or died",
    ];

    private StockView view = StockView.Empty;
    private UnitPreferences preferences = UnitPreferences.Metric;
    private LotAccount? lot;
    private Good good = null!;
    private List<LotAccount> walk = [];
    private string digits = "";
    private string number = "";
    private string found = "";
    private string cause = Causes[0];
    private string? told;
    private bool isGood = true;

    /// <summary>Lot that a page or a label asked for.</summary>
    [SupplyParameterFromQuery(Name = "lot")]
    public string? Asked { get; set; }

    private List<LotAccount> Found =>
        [
            .. view
                .Book.Lots.Where(l =>
                    l.HasSome && Digits(l.Lot.Id).StartsWith(digits.Trim(), StringComparison.Ordinal)
                )
                .OrderBy(l => Digits(l.Lot.Id).Length)
                .ThenByDescending(l => l.Lot.Since),
        ];

    private string FoundWords =>
        Found.Count switch
        {
            0 => "No lot on hand has this number.",
            > Most and var n => string.Create(
                CultureInfo.InvariantCulture,
                $"{n - Most} more: type another digit."
            ),
            _ => "",
        };

    private string WalkWords =>
        walk.Count switch
        {
            0 => "Everything on hand was counted today.",
            1 => "1 lot to go.",
            var n => string.Create(CultureInfo.InvariantCulture, $"{n} lots to go."),
        };

    private string? Difference =>
        lot is null || StockWords.Read(found, good.Unit, preferences) is not { } read ? null
        : Math.Abs(read - lot.OnHand) <= lot.Rounding ? "As the book says."
        : $"The book says {StockWords.Amount(lot.OnHand, good.Unit, preferences)}: "
            + $"{StockWords.Amount(Math.Abs(read - lot.OnHand), good.Unit, preferences)} "
            + (read < lot.OnHand ? "less." : "more.");

    /// <inheritdoc/>
    protected override async Task OnInitializedAsync()
    {
        preferences = await SavedPreferences.LoadAsync();
        await LoadAsync();
        if (Asked is { Length: > 0 } && view.Book.Find(Asked.ToUpperInvariant()) is { } there)
        {
            Choose(there);
        }
    }

    private async Task LoadAsync()
    {
        view = await Shelf.LoadAsync();
        var today = Shelf.Today;
        walk =
        [
            .. view
                .Book.Lots.Where(l =>
                    l.HasSome && !l.Lines.Any(x => x.Line.Kind == MovementKind.Counted && x.Line.Day == today)
                )
                .OrderBy(l => view.GoodOf(l).Walk)
                .ThenBy(view.PlaceOf, StringComparer.OrdinalIgnoreCase)
                .ThenBy(l => l.Lot.Id, StringComparer.Ordinal),
        ];
    }

    private void Read()
    {
        var (id, fault) = LotNumber.Read(number, l => view.Book.Find(l) is not null);
        (told, isGood) = (fault, fault is null);
        if (id is not null)
        {
            Choose(view.Book.Find(id)!);
        }
    }

    private void Choose(LotAccount chosen)
    {
        (lot, good) = (chosen, view.GoodOf(chosen));
        found = StockWords.Field(chosen.OnHand, good.Unit, preferences);
        (cause, told, digits, number) = (Causes[0], null, "", "");
    }

    private void Step(int by) => found = StockWords.Number(Math.Max(0, (StockWords.Plain(found) ?? 0) + by));

    private async Task SaveAsync()
    {
        if (StockWords.Read(found, good.Unit, preferences) is not (>= 0 and var read))
        {
            (told, isGood) = ("Type what you found as a number of 0 or more.", false);
            return;
        }

        // What the field shows is rounded: what was not touched is what the book says.
        var isAsShown = found == StockWords.Field(lot!.OnHand, good.Unit, preferences);
        var who = await Shelf.WhoAsync();
        var line = Corrections.Count(lot, isAsShown ? lot.OnHand : read, Shelf.Today, who, cause)
            ?? new Movement
            {
                Lot = lot.Lot.Id,
                Kind = MovementKind.Counted,
                Amount = 0,
                Day = Shelf.Today,
                Who = who,
                Note = "as the book says",
            };
        var fault = await Shelf.WriteAsync(new StockStep([], [line]));
        (told, isGood) = (fault ?? $"{lot.Lot.Id} is counted.", fault is null);
        if (isGood)
        {
            lot = null;
            await LoadAsync();
        }
    }

    private static string Digits(string id) => string.Concat(id.Where(char.IsAsciiDigit));
}
