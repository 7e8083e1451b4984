using Litterfall.Domain.Tanks;
using Litterfall.Quantities.Measures;
using Litterfall.Running.Rounds;
using Litterfall.Web.Tanks.Rounds;
using Microsoft.AspNetCore.Components;

namespace Litterfall.Web.Tanks.Places;

/// <summary>All tanks that run, where they stand and what they need.</summary>
public sealed partial class TanksPage : ComponentBase
{
    private RoundView? view;
    private IDisposable? watch;
    private IDisposable? care;

    /// <summary>Tanks that no drawing of a room shows.</summary>
    private List<Tank> Elsewhere =>
        [
            .. view!.Tanks.Running.Where(t =>
                view.Tanks.RoomOf(t)?.Racks.Any(r => r.Name == t.Place.Rack) != true || t.Place.Shelf == 0
            ),
        ];

    private List<Tank> Gone =>
        [.. view!.Tanks.Tanks.Select(t => t.Value).Where(t => !t.IsRunning).OrderByDescending(t => t.Ended)];

    /// <inheritdoc/>
    protected override async Task OnInitializedAsync()
    {
        watch = Store.WatchShop(() => _ = InvokeAsync(LoadAsync));
        care = Store.WatchCare(tank => _ = InvokeAsync(LoadAsync));
        await LoadAsync();
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        watch?.Dispose();
        care?.Dispose();
    }

    private static string Page(Tank tank) => $"/tanks/{Uri.EscapeDataString(tank.Code)}";

    private string State(Tank tank) => TankState.Find(view!.Book, tank.Code).Word;

    private string Summary(TankRoom room)
    {
        var here = view!.Tanks.Running.Count(t => t.Place.Room == room.Key);
        var due = view
            .Tanks.Running.Where(t => t.Place.Room == room.Key)
            .Count(t => view.Book.For(t.Code).Any(i => i.On(view.Book.Today) != RoundWeight.Later));
        return $"{NumberText.Count(here, "tank", "tanks")}, "
            + $"{NumberText.Count(due, "needs", "need")} something today";
    }

    private async Task LoadAsync()
    {
        view = await Desk.LoadAsync();
        StateHasChanged();
    }
}
