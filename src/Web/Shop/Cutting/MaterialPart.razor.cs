using Litterfall.Domain.Cutting;
using Litterfall.Workshop.CuttingRoom;
using Microsoft.AspNetCore.Components;

namespace Litterfall.Web.Shop.Cutting;

/// <summary>One material on the table: its parts, its sheets, the search for a plan, its rules.</summary>
public sealed partial class MaterialPart
{
    private bool isStockAlone;

    /// <summary>The table.</summary>
    [Parameter, EditorRequired]
    public required CuttingView View { get; set; }

    /// <summary>The material.</summary>
    [Parameter, EditorRequired]
    public required CutMaterial Material { get; set; }

    /// <summary>Told with null when something was written, else with why not.</summary>
    [Parameter]
    public EventCallback<string?> OnDone { get; set; }

    private CuttingRun? Run => Runs.Find(Material.Key);

    /// <summary>The search goes on when somebody leaves the page.</summary>
    private void PlanAsync()
    {
        Runs.Forget(Material.Key);
        _ = Runs.StartAsync(Material, isStockAlone);
    }

    private async Task ByHandAsync(int? order)
    {
        var (_, fault) = await Desk.KeepAsync((n, when) => HandJob.Make(n, Material, order, when));
        await OnDone.InvokeAsync(fault);
    }
}
