using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Domain.Cultures;
using Litterfall.Web.Shop.Stock;
using Litterfall.Workshop.Cultures;
using Litterfall.Workshop.Stock;
using Microsoft.AspNetCore.Components;

namespace Litterfall.Web.Shop.Cultures;

/// <summary>Starts cultures that no culture of the workshop is the mother of.</summary>
public sealed partial class StartPart
{
    private const int Most = 40;
    private string species = "";
    private string line = "";
    private string count = "1";
    private string animals = "";
    private string liters = "";
    private string shelf = "";
    private string supplier = "";
    private string cost = "";
    private bool isAdults;

    /// <summary>The shelf as it is shown.</summary>
    [Parameter, EditorRequired]
    public required CultureView View { get; set; }

    /// <summary>Told when something was written, or why not.</summary>
    [Parameter]
    public EventCallback<(bool IsGood, string Told)> OnWritten { get; set; }

    private async Task SaveAsync()
    {
        var fault = Fault();
        if (fault is not null)
        {
            await OnWritten.InvokeAsync((false, fault));
            return;
        }

        var when = await Desk.NowAsync();
        var many = int.Parse(count, CultureInfo.InvariantCulture);
        var numbers = CultureDesk.NextNumbers(View, species, many);
        var stands = View.Book.Shelves.First(s => s.Key == shelf);
        var free = View.Free(stands).Take(many).ToList();
        var from = supplier.Length > 0 ? supplier : null;
        var steps = numbers.Select(
            (number, i) =>
                CultureSteps.Start(
                    new Culture
                    {
                        Number = number,
                        Species = species,
                        Line = line.Trim(),
                        Since = when.Day,
                        Liters = StockWords.Plain(liters)!.Value,
                        StartedWith = StockWords.Plain(animals)!.Value,
                        IsFromAdults = isAdults,
                        Shelf = shelf,
                        Board = free[i].Board,
                        Place = free[i].Place,
                    },
                    from,
                    StockWords.Price(cost) ?? 0,
                    when
                )
        );
        var all = steps.ToList();
        var refused = await Desk.WriteAsync(
            View,
            new(
                [.. all.SelectMany(s => s.Cultures)],
                new StockStep(
                    [.. all.SelectMany(s => s.Stock.Lots)],
                    [.. all.SelectMany(s => s.Stock.Lines)]
                ),
                "started"
            )
        );
        await OnWritten.InvokeAsync(
            refused is null
                ? (true, $"{string.Join(", ", numbers)} started. Print the labels.")
                : (false, refused)
        );
        if (refused is null)
        {
            (animals, cost, count) = ("", "", "1");
        }
    }

    private string? Fault()
    {
        var isCount = int.TryParse(count, NumberStyles.None, CultureInfo.InvariantCulture, out var many);
        return species.Length == 0 ? "Choose the animal."
            : line.Trim().Length is 0 or > 20 ? "Name the line in 1 to 20 characters, such as A."
            : !isCount || many is < 1 or > Most ? $"Type how many cups, 1 to {Most}."
            : StockWords.Plain(animals) is not (> 0 and < 1e6) ? "Type how many animals go into each cup."
            : StockWords.Plain(liters) is not (> 0 and <= 100)
                ? "Type how much substrate or medium a cup holds, in liters."
            : View.Book.Shelves.FirstOrDefault(s => s.Key == shelf) is not { } stands ? "Choose the shelf."
            : View.Free(stands).Take(many).Count() is var free && free < many
                ? $"{stands.Name} has {free} free places; choose another shelf or start fewer."
            : null;
    }
}
