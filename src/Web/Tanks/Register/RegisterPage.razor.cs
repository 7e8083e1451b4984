using System.Globalization;
using Litterfall.Domain.Tanks;
using Litterfall.Quantities.Measures;
using Litterfall.Running.Register;
using Litterfall.Store;
using Microsoft.AspNetCore.Components;

namespace Litterfall.Web.Tanks.Register;

/// <summary>Births, deaths, movements, sales and permits, as an inspection wants them.</summary>
public sealed partial class RegisterPage : ComponentBase
{
    private const int MostShown = 200;
    private RegisterView? view;
    private PermitDraft draft = new();
    private DateOnly? from;
    private DateOnly? until;
    private string? told;
    private bool isGood = true;
    private IDisposable? watch;
    private IDisposable? care;

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

    private async Task LoadAsync()
    {
        view = await Desk.LoadAsync(from, until);
        (from, until) = (view.From, view.Until);
        StateHasChanged();
    }

    private string Export(string form) =>
        string.Create(CultureInfo.InvariantCulture, $"/register.{form}?from={from:yyyy-MM-dd}&until={until:yyyy-MM-dd}");

    private string Told(Permit permit)
    {
        string[] parts =
        [
            .. permit.Species.Select(view!.Tanks.NameOf),
            permit.Issuer,
            permit.Expires is { } end ? $"until {NumberText.Day(end)}" : "",
            PermitWatch.Tell(permit, view.Tanks.Today),
            permit.Note,
        ];
        return string.Join(", ", parts.Where(p => p.Length > 0));
    }

    private void Choose(Kept<Permit> kept) => draft = PermitDraft.From(kept);

    private async Task SaveAsync()
    {
        var (permit, fault) = draft.Read();
        var refused = permit is null ? fault : await Desk.KeepAsync(permit, draft.Version);
        (told, isGood) = (refused ?? $"{permit!.Number} is saved.", refused is null);
        if (isGood)
        {
            draft = new();
            await LoadAsync();
        }
    }
}
