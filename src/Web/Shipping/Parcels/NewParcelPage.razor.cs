using System.Globalization;
using Microsoft.AspNetCore.Components;

namespace Litterfall.Web.Shipping.Parcels;

/// <summary>A parcel is entered, from an order or without one.</summary>
public sealed partial class NewParcelPage : ComponentBase
{
    private DispatchView? view;
    private ParcelDraft? draft;
    private string? fault;

    /// <summary>Number of the order it is for; null for none.</summary>
    [SupplyParameterFromQuery(Name = "order")]
    public int? Order { get; set; }

    /// <inheritdoc/>
    protected override async Task OnInitializedAsync()
    {
        view = await Desk.LoadAsync();
        var wished = Order is { } number ? await Desk.FromOrderAsync(view, number) : null;
        draft = new(wished, view.Rules, view.Catalog);
    }

    private async Task SaveAsync()
    {
        (var parcel, fault) = draft!.Read();
        if (parcel is null)
        {
            return;
        }

        (var number, fault) = await Desk.AddAsync(parcel);
        if (fault is null)
        {
            Go.NavigateTo(string.Create(CultureInfo.InvariantCulture, $"/dispatch/{number}"));
        }
    }
}
