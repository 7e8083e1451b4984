using Litterfall.Domain.Tanks;
using Litterfall.Store;
using Microsoft.AspNetCore.Components;

namespace Litterfall.Web.Tanks.Places;

/// <summary>Rooms with their racks, as they are measured.</summary>
public sealed partial class RoomsPage : ComponentBase
{
    private TankView? view;
    private RoomDraft draft = new();
    private string? told;
    private bool isGood = true;

    /// <inheritdoc/>
    protected override async Task OnInitializedAsync()
    {
        view = await Desk.LoadAsync();
        if (view.Rooms.Count > 0)
        {
            Choose(view.Rooms[0]);
        }
        else
        {
            New();
        }
    }

    private void Choose(Kept<TankRoom> room) => draft = RoomDraft.From(room.Value);

    private void New() => draft = new() { Racks = [new()] };

    private async Task SaveAsync()
    {
        view = await Desk.LoadAsync();
        var (room, fault) = draft.Read(view);
        if (room is not null)
        {
            var basis = view.Rooms.FirstOrDefault(r => r.Key == room.Key)?.Version ?? 0;
            fault = await Desk.WriteAsync(
                new ShopChange(await Desk.WhoAsync()).Keep(room.Key, basis, room, "room and racks")
            );
        }

        (told, isGood) = (fault ?? $"{room!.Name} is saved.", fault is null);
        view = await Desk.LoadAsync();
        if (isGood)
        {
            draft.Key = room!.Key;
        }
    }
}
