using System.Globalization;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Cultures;
using Litterfall.Domain.Trade;
using Litterfall.Quantities.Measures;
using Litterfall.Store;
using Litterfall.Web.Shop.Stock;
using Litterfall.Workshop.Cultures;
using Microsoft.AspNetCore.Components;

namespace Litterfall.Web.Shop.Cultures;

/// <summary>Animals in care: rations and powders of each tank.</summary>
public sealed partial class FedPart
{
    private const int Most = 500;
    private string tank = "";
    private string animal = "";
    private string count = "2";
    private FedClass of;
    private string feeder = "drosophila-melanogaster";

    /// <summary>The shelf as it is shown.</summary>
    [Parameter, EditorRequired]
    public required CultureView View { get; set; }

    /// <summary>Told when something was written, or why not.</summary>
    [Parameter]
    public EventCallback<(bool IsGood, string Told)> OnWritten { get; set; }

    private IEnumerable<AnimalEntry> Eaters =>
        View
            .Book.Catalog.Of<AnimalEntry>()
            .Where(a => a.Mass is not null)
            .OrderBy(a => a.Name, StringComparer.Ordinal);

    private IEnumerable<FeederEntry> Feeders =>
        View.Book.Catalog.Of<FeederEntry>().Where(f => FlyKind.From(f) is not null);

    private static string Word(FedClass of) =>
        of switch
        {
            FedClass.Froglet => "froglets",
            FedClass.Breeding => "breeding females",
            _ => "adults",
        };

    private static string Flies(Ration ration) =>
        ration.FliesPerDay is { } flies ? CultureWords.About(flies) : "mass not known";

    private static string Chalk(Ration ration) =>
        ration.ChalkMilligrams is { } chalk ? $"{StockWords.Number(chalk)} mg a day" : "";

    private string NextVitamins(Ration ration)
    {
        var day = View.Book.Today;
        while (!ration.HasVitamins(day) && ration.Group.IsHere(day))
        {
            day = day.AddDays(1);
        }

        return ration.HasVitamins(day) ? NumberText.Day(day) : "";
    }

    private async Task AddAsync()
    {
        var isCount = int.TryParse(count, NumberStyles.None, CultureInfo.InvariantCulture, out var many);
        var key = OwnKey.From($"{tank} {animal} {View.Book.Today:yyyyMMdd}");
        var fault =
            tank.Trim().Length is 0 or > 60 ? "Name the tank in 1 to 60 characters."
            : animal.Length == 0 ? "Choose the animal."
            : !isCount || many is < 1 or > Most ? $"Type how many animals, 1 to {Most}."
            : View.Fed.Any(f => f.Key == key) ? $"{tank.Trim()} is on the list already."
            : null;
        if (fault is not null)
        {
            await OnWritten.InvokeAsync((false, fault));
            return;
        }

        var group = new FedGroup
        {
            Key = key,
            Tank = tank.Trim(),
            Animal = animal,
            Count = many,
            Class = of,
            Feeder = feeder,
            Since = View.Book.Today,
        };
        var refused = await Desk.KeepAsync(key, 0, group, "animals in care");
        await OnWritten.InvokeAsync(refused is null ? (true, $"{group.Tank} added.") : (false, refused));
        tank = refused is null ? "" : tank;
    }

    private async Task EndAsync(Kept<FedGroup> kept)
    {
        var ended = kept.Value with { Until = View.Book.Today.AddDays(-1) };
        var refused = await Desk.KeepAsync(kept.Key, kept.Version, ended, "not fed here any more");
        await OnWritten.InvokeAsync(
            refused is null ? (true, $"{kept.Value.Tank} is not fed here any more.") : (false, refused)
        );
    }
}
