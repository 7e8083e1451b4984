using Litterfall.Instructions.Care;
using Litterfall.Running.Service;
using Litterfall.Store;
using Microsoft.AspNetCore.Components;

namespace Litterfall.Web.Tanks.Service;

/// <summary>A new tank: from an order, from a design, or without both.</summary>
public sealed partial class NewTankPage : ComponentBase
{
    private TankView? view;
    private TankDraft? draft;
    private IReadOnlyList<ListedDesign> designs = [];
    private string? fault;

    /// <summary>Order that is ready or was delivered; null for none.</summary>
    [SupplyParameterFromQuery(Name = "order")]
    public int? Order { get; set; }

    /// <summary>Design; null for none.</summary>
    [SupplyParameterFromQuery(Name = "design")]
    public string? Design { get; set; }

    /// <summary>Number that was scanned or typed; null for the next free one.</summary>
    [SupplyParameterFromQuery(Name = "code")]
    public string? Code { get; set; }

    /// <inheritdoc/>
    protected override async Task OnInitializedAsync()
    {
        view = await Desk.LoadAsync();
        designs = await Store.DesignsAsync();
        var order = view.Stock.Orders.FirstOrDefault(o => o.Number == Order);
        draft = order is null ? Fresh() : TankDraft.From(order, view);
    }

    private TankDraft Fresh()
    {
        var all = view!.Tanks.Select(t => t.Value);
        var chosen = designs.FirstOrDefault(d => $"{d.Id}" == Design);
        // A number of a printed label is no number to call a tank by.
        var isLabel = Code is { Length: > 0 } said && TankNumber.IsValid(said.ToUpperInvariant());
        return new()
        {
            Code = Code is { Length: > 0 } && !isLabel ? Code : TankCodes.Next("T-", all),
            Label = isLabel ? Code!.ToUpperInvariant() : "",
            Name = chosen?.Name ?? "",
            Design = chosen?.Id.ToString() ?? "",
            Since = view.Today,
        };
    }

    private async Task SaveAsync()
    {
        view = await Desk.LoadAsync();
        if (designs.FirstOrDefault(d => $"{d.Id}" == draft!.Design) is { } design && draft!.Version == 0)
        {
            draft.Version = design.Version;
        }

        var (tank, wrong) = draft!.Read(null, view);
        fault = wrong;
        if (tank is null)
        {
            return;
        }

        if (tank.Label.Length == 0 && await Forecasts.FindAsync(tank) is { } numbers)
        {
            // Each box of a design has its own number on its label.
            var before = view.Tanks.Count(t => t.Value.Design == tank.Design && t.Value.Order == tank.Order);
            tank = tank with { Label = TankNumber.Of(numbers, before + 1) };
        }

        fault = await Desk.WriteAsync(
            new ShopChange(await Desk.WhoAsync()).Keep(tank.Code, 0, tank, "put in service")
        );
        if (fault is null)
        {
            Go.NavigateTo($"/tanks/{Uri.EscapeDataString(tank.Code)}");
        }
    }
}
