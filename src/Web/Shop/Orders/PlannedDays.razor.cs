using Litterfall.Domain.Schedule;
using Litterfall.Domain.Trade;
using Microsoft.AspNetCore.Components;

namespace Litterfall.Web.Shop.Orders;

/// <summary>The days of one order as they are planned, and how it reaches its customer.</summary>
public sealed partial class PlannedDays
{
    /// <summary>The order.</summary>
    [Parameter, EditorRequired]
    public required OrderWork Work { get; set; }

    /// <summary>Told with null when something was written, else with why not.</summary>
    [Parameter]
    public EventCallback<string?> OnDone { get; set; }

    private string Way =>
        Work.Order.IsByParcel switch
        {
            true => "parcel",
            false => "person",
            _ => "",
        };

    private string Usual =>
        Work.Order.Items.Any(i => i.Kind == OrderItemKind.Build) ? "handed over in person" : "by parcel";

    private static IEnumerable<(string Name, DateOnly Day)> Days(OrderDays days)
    {
        (string Name, DateOnly? Day)[] all =
        [
            ("Cultures started", days.CulturesStart),
            ("Plants come", days.PlantsIn),
            ("Cut", days.Cut),
            ("Background finished", days.Background),
            ("Planted", days.Plant),
            ("Grown in", days.GrownIn),
            ("Animals from", days.AnimalsFrom),
            ("Packed", days.Pack),
            ("In hand", days.Arrive),
        ];
        return all.Where(d => d.Day is not null).Select(d => (d.Name, d.Day!.Value));
    }

    private async Task WayAsync(ChangeEventArgs chosen)
    {
        bool? way = chosen.Value?.ToString() switch
        {
            "parcel" => true,
            "person" => false,
            _ => null,
        };
        await OnDone.InvokeAsync(
            await Work.KeepAsync(Work.Order with { IsByParcel = way }, "how it reaches its customer")
        );
    }
}
