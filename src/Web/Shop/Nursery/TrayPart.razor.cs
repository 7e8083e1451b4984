using System.Globalization;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Nursery;
using Litterfall.Domain.Trade;
using Litterfall.Instructions.Care;
using Litterfall.Web.Shop.Stock;
using Litterfall.Workshop.Nursery;
using Microsoft.AspNetCore.Components;

namespace Litterfall.Web.Shop.Nursery;

/// <summary>Adds trays, mother plants and benches.</summary>
public sealed partial class TrayPart
{
    private const int Most = 500;
    private string plant = "";
    private string count = "6";
    private string supplier = "";
    private string bench = "";
    private string cost = "";
    private string name = "";
    private BenchUse use;
    private string warm = "22";

    /// <summary>The plants as they are shown.</summary>
    [Parameter, EditorRequired]
    public required NurseryView View { get; set; }

    /// <summary>Told when something was written, or why not.</summary>
    [Parameter]
    public EventCallback<(bool IsGood, string Told)> OnWritten { get; set; }

    private IEnumerable<PlantEntry> Plants =>
        View.Book.Catalog.Of<PlantEntry>().OrderBy(p => p.Name, StringComparer.Ordinal);

    private async Task TrayAsync()
    {
        var isCount = int.TryParse(count, NumberStyles.None, CultureInfo.InvariantCulture, out var many);
        var stands = View.Book.Bench(bench);
        var isBought = supplier.Length > 0;
        var fault =
            plant.Length == 0 ? "Choose the plant."
            : !isCount || many is < 1 or > Most ? $"Type how many plants, 1 to {Most}."
            : stands is null ? "Choose the bench."
            : isBought && stands.Use != BenchUse.Quarantine
                ? "Bought plants go to a quarantine bench first: they can bring snails, mites and "
                    + "insecticide."
            : null;
        if (fault is not null)
        {
            await OnWritten.InvokeAsync((false, fault));
            return;
        }

        var when = await Desk.NowAsync();
        var tray = new PlantTray
        {
            Number = NurseryDesk.NextNumber(View, plant),
            Plant = plant,
            Origin = isBought ? TrayOrigin.Bought : TrayOrigin.Division,
            Supplier = isBought ? supplier : null,
            Since = when.Day,
            Plants = many,
            Bench = bench,
            Place = View.FreePlace(bench),
            QuarantineDays =
                stands!.Use == BenchUse.Quarantine ? (int)CareIntervals.PlantQuarantine.Value : 0,
        };
        var refused = await Desk.WriteAsync(
            View,
            NurserySteps.Start(View.Book, tray, StockWords.Price(cost) ?? 0, when)
        );
        await OnWritten.InvokeAsync(
            refused is null
                ? (true, $"{tray.Number} stands on {stands.Name}. Print its label.")
                : (false, refused)
        );
    }

    private async Task MotherAsync()
    {
        if (plant.Length == 0 || View.Book.Bench(bench) is not { Use: not BenchUse.Quarantine })
        {
            await OnWritten.InvokeAsync((false, "Choose the plant and a bench that is not for quarantine."));
            return;
        }

        var number = 1 + View.Mothers.Count(m => m.Value.Plant == plant);
        var mother = new MotherPlant
        {
            Key = OwnKey.From($"{plant} {number}"),
            Plant = plant,
            Name = string.Create(CultureInfo.InvariantCulture, $"{View.Book.NameOf(plant)} {number}"),
            Bench = bench,
            Since = View.Book.Today,
        };
        var refused = await Desk.KeepAsync(mother.Key, 0, mother, "mother plant");
        await OnWritten.InvokeAsync(
            refused is null ? (true, $"{mother.Name} is kept for cuttings.") : (false, refused)
        );
    }

    private async Task BenchAsync()
    {
        var key = OwnKey.From(name);
        var fault =
            name.Trim().Length is 0 or > 60 ? "Name the bench in 1 to 60 characters."
            : View.Book.Bench(key) is not null ? $"There is a bench {name.Trim()} already."
            : StockWords.Plain(warm) is not (>= 0 and <= 45) ? "Type how warm the bench is, such as 22."
            : null;
        if (fault is not null)
        {
            await OnWritten.InvokeAsync((false, fault));
            return;
        }

        var added = new NurseryBench
        {
            Key = key,
            Name = name.Trim(),
            Use = use,
            Celsius = StockWords.Plain(warm)!.Value,
        };
        var refused = await Desk.KeepAsync(key, 0, added, "new bench");
        await OnWritten.InvokeAsync(refused is null ? (true, $"{added.Name} added.") : (false, refused));
        name = refused is null ? "" : name;
    }
}
