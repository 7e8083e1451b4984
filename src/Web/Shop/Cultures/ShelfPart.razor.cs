using System.Globalization;
using Litterfall.Domain.Cultures;
using Litterfall.Domain.Trade;
using Litterfall.Store;
using Litterfall.Web.Shop.Stock;
using Microsoft.AspNetCore.Components;

namespace Litterfall.Web.Shop.Cultures;

/// <summary>Shelves and how warm they are.</summary>
public sealed partial class ShelfPart
{
    private readonly Dictionary<string, string> typed = new(StringComparer.Ordinal);
    private string name = "";
    private string warm = "";
    private string boards = "3";
    private string places = "8";
    private string wide = "90";

    /// <summary>The shelves as they are shown.</summary>
    [Parameter, EditorRequired]
    public required CultureView View { get; set; }

    /// <summary>Told when something was written, or why not.</summary>
    [Parameter]
    public EventCallback<(bool IsGood, string Told)> OnWritten { get; set; }

    private string Typed(Kept<CultureShelf> kept) =>
        typed.TryGetValue(kept.Key, out var text)
            ? text
            : StockWords.Number(kept.Value.CelsiusOn(View.Book.Today));

    private async Task ReadAsync(Kept<CultureShelf> kept)
    {
        if (StockWords.Plain(Typed(kept)) is not (>= -10 and <= 50 and var celsius))
        {
            await OnWritten.InvokeAsync((false, "Type the temperature of the shelf, such as 21."));
            return;
        }

        var today = View.Book.Today;
        var shelf = kept.Value with
        {
            Readings = [.. kept.Value.Readings.Where(r => r.Day != today), new ShelfReading(today, celsius)],
        };
        var refused = await Desk.KeepAsync(kept.Key, kept.Version, shelf, "temperature read");
        await OnWritten.InvokeAsync(
            refused is null
                ? (true, $"{shelf.Name} is at {StockWords.Number(celsius)} °C.")
                : (false, refused)
        );
    }

    private async Task AddAsync()
    {
        var key = OwnKey.From(name);
        var fault =
            name.Trim().Length is 0 or > 60 ? "Name the shelf in 1 to 60 characters."
            : View.Shelves.Any(s => s.Key == key) ? $"There is a shelf {name.Trim()} already."
            : StockWords.Plain(warm) is not (>= -10 and <= 50) ? "Type how warm the shelf is, such as 21."
            : Whole(boards) is not (>= 1 and <= 8) ? "A shelf has 1 to 8 boards."
            : Whole(places) is not (>= 1 and <= 20) ? "A board has 1 to 20 places."
            : StockWords.Plain(wide) is not (>= 20 and <= 300) ? "A shelf is 20 to 300 cm wide."
            : null;
        if (fault is not null)
        {
            await OnWritten.InvokeAsync((false, fault));
            return;
        }

        var refused = await Desk.KeepAsync(
            key,
            0,
            new CultureShelf
            {
                Key = key,
                Name = name.Trim(),
                Celsius = StockWords.Plain(warm)!.Value,
                Boards = Whole(boards)!.Value,
                PlacesPerBoard = Whole(places)!.Value,
                WidthMillimeters = 10 * StockWords.Plain(wide)!.Value,
            },
            "new shelf"
        );
        await OnWritten.InvokeAsync(refused is null ? (true, $"{name.Trim()} added.") : (false, refused));
        name = refused is null ? "" : name;
    }

    private static int? Whole(string text) =>
        int.TryParse(text.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out var number)
            ? number
            : null;
}
