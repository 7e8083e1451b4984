using Litterfall.Domain.Tanks;
using Litterfall.Quantities.Measures;
using Litterfall.Running.Service;
using Microsoft.AspNetCore.Components;

namespace Litterfall.Web.Tanks.Passport;

/// <summary>The passport of one tank: what it is, where it stands, what lives in it, its log.</summary>
public sealed partial class TankPage : ComponentBase
{
    private const int LinesShown = 20;
    private TankView? view;
    private Tank? tank;
    private IDisposable? watch;
    private IDisposable? care;

    /// <summary>Number of the tank, or of its label.</summary>
    [Parameter]
    public string Code { get; set; } = "";

    private CareTelling Telling => new(u => u, view!.NameOf);

    private IEnumerable<CareEntry> Lines => view!.Care[tank!.Code].Reverse().Take(LinesShown);

    private IEnumerable<(string Name, string Value)> Facts
    {
        get
        {
            yield return ("Stands", view!.PlaceOf(tank!));
            yield return ("Runs since", NumberText.Day(tank!.Since));
            if (tank.Planted is { } planted)
            {
                yield return ("Planted", NumberText.Day(planted));
            }
        }
    }

    /// <inheritdoc/>
    protected override void OnInitialized()
    {
        watch = Store.WatchShop(() => _ = InvokeAsync(LoadAsync));
        care = Store.WatchCare(grown =>
        {
            if (grown == tank?.Code)
            {
                _ = InvokeAsync(LoadAsync);
            }
        });
    }

    /// <inheritdoc/>
    protected override Task OnParametersSetAsync() => LoadAsync();

    /// <inheritdoc/>
    public void Dispose()
    {
        watch?.Dispose();
        care?.Dispose();
    }

    private string Page(string part) => $"/tanks/{Uri.EscapeDataString(tank!.Code)}/{part}";

    private async Task LoadAsync()
    {
        view = await Desk.LoadAsync();
        tank = view.Find(Code)?.Value;
        StateHasChanged();
    }
}
