using System.Collections.Immutable;
using Litterfall.Running.Visits;
using Microsoft.AspNetCore.Components;

namespace Litterfall.Web.Tanks.Visits;

/// <summary>Contracts, the visits that come, and those that were made.</summary>
public sealed partial class VisitsPage : ComponentBase
{
    private const int Days = 60;
    private const int MostShown = 40;
    private VisitView? view;
    private ContractDraft draft = new();
    private string? told;
    private bool isGood = true;

    private ImmutableArray<ComingVisit> Coming => view!.Coming(Days);

    /// <inheritdoc/>
    protected override async Task OnInitializedAsync() => view = await Desk.LoadAsync();

    private async Task SaveAsync()
    {
        view = await Desk.LoadAsync();
        var (contract, fault) = draft.Read(view);
        var refused = contract is null ? fault : await Desk.KeepAsync(contract, draft.Version);
        (told, isGood) = (refused ?? "The contract is saved.", refused is null);
        if (isGood)
        {
            draft = new();
            view = await Desk.LoadAsync();
        }
    }
}
