using Litterfall.Domain.Trees;
using Litterfall.Workshop.Scheduling.Cases;

namespace Litterfall.App.Trade;

/// <summary>Orders to plan.</summary>
/// <param name="Shop">The orders and what they share.</param>
/// <param name="Seconds">How long it may take; null for the usual time.</param>
/// <param name="PlaceOf">Where a key of an order stands, or of the case where no order is named.</param>
public sealed record ScheduleCase(ShopCase Shop, double? Seconds, Func<int?, string, TextSpan> PlaceOf);

/// <summary>Reads a case of <c>schedule</c>.</summary>
public static class ScheduleForm
{
    private const int MostDays = 1000;
    private const int MostOrders = 200;
    private const int MostPlaces = 1000;
    private static readonly NumberRange Hours = NumberRange.UpTo(1000.0);

    /// <summary>The checked case, or null and faults on the form.</summary>
    public static ScheduleCase? Read(TreeForm form)
    {
        // Cases that carry their answer are taken as they are; days of the week are always the same.
        form.Ignore("name", "day0", "workdays", "shipDays", "objective");
        form.Ignore("optimum", "proven", "bound", "onePlan");
        var orders = form.Objects("orders", "an order", MostOrders);
        var days = form.Whole("horizonDays", 1, MostDays);
        var holidays = form.Numbers("holidays", NumberRange.UpTo(MostDays * 2.0), MostDays, []);
        if (holidays.Any(d => d != Math.Floor(d)))
        {
            form.Refuse("holidays", "holidays holds a part of a day", "whole numbers of days");
        }

        var shop = new ShopCase
        {
            HorizonDays = days,
            Holidays = [.. holidays.Where(double.IsInteger).Select(d => (int)d)],
            TransitWorkDays = form.Whole("transitWorkdays", 0, 30),
            StaffHours = form.Number("staffHoursPerDay", Hours),
            BenchPlaces = form.Whole("benchPlaces", 0, MostPlaces),
            QuarantinePlaces = form.Whole("quarantinePlaces", 0, MostPlaces),
            Orders = [.. orders.Select(Order)],
        };
        var seconds = form.OptionalNumber("seconds", NumberRange.Positive(3600.0));
        form.Close();
        RefuseTwice(shop, orders);
        return form.IsGood
            ? new ScheduleCase(shop, seconds, (order, key) =>
                (order is { } i ? orders[i] : form).PlaceOf(key)
            )
            : null;
    }

    private static CaseOrder Order(TreeForm form)
    {
        var order = new CaseOrder
        {
            Id = form.Whole("id", 0, int.MaxValue),
            Release = form.Whole("release", 0, MostDays * 2),
            Due = form.Whole("due", -MostDays, MostDays * 2),
            QuarantineDays = form.Whole("quarantineDays", 0, MostDays),
            GrowInDays = form.Whole("growInDays", 0, MostDays),
            PlantHours = form.Number("plantHours", Hours),
            PackHours = form.Number("packHours", Hours),
            QuarantinePlaces = form.Whole("quarantinePlacesUsed", 0, MostPlaces),
            BenchPlaces = form.Whole("benchPlacesUsed", 0, MostPlaces),
            Weight = form.Whole("weight", 0, MostPlaces),
        };
        form.Close();
        return order;
    }

    private static void RefuseTwice(ShopCase shop, IReadOnlyList<TreeForm> forms)
    {
        var seen = new HashSet<int>();
        for (var i = 0; i < shop.Orders.Count; i++)
        {
            if (!seen.Add(shop.Orders[i].Id))
            {
                forms[i]
                    .Refuse(
                        "id",
                        FormattableString.Invariant($"order {shop.Orders[i].Id} stands twice"),
                        "each order once"
                    );
            }
        }
    }
}
