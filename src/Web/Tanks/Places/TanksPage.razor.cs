using Microsoft.AspNetCore.Components;

namespace Litterfall.Web.Tanks.Places;

/// <summary>All tanks that run, and where they stand.</summary>
public sealed partial class TanksPage : ComponentBase
{
    private TankView? view;
    private IDisposable? watch;

    /// <inheritdoc/>
    protected override async Task OnInitializedAsync()
    {
        watch = Store.WatchShop(() => _ = InvokeAsync(LoadAsync));
        await LoadAsync();
    }

    /// <inheritdoc/>
    public void Dispose() => watch?.Dispose();

    private async Task LoadAsync()
    {
        view = await Desk.LoadAsync();
        StateHasChanged();
    }
}
