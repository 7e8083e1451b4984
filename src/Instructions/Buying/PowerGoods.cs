using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Instructions.Parts;
using Litterfall.Quantities.Equipping;
using Litterfall.Quantities.Measures;

namespace Litterfall.Instructions.Buying;

/// <summary>Heat, air, timers, plugs, and what protects people from them; what measures the box.</summary>
internal static class PowerGoods
{
    public static IEnumerable<ShoppingLine> Of(DesignNumbers numbers)
    {
        var plan = PowerPlan.Of(numbers.Design);
        return Heat(numbers, plan)
            .Concat(Air(numbers, plan))
            .Concat(Timers(numbers))
            .Concat(Plugs(numbers, plan))
            .Concat(Meters(numbers))
            .Select(good => GoodLines.Line(numbers, good with { Kind = ShoppingKind.Electric }));
    }

    private static IEnumerable<Good> Heat(DesignNumbers numbers, PowerPlan plan)
    {
        if (numbers.Design.Design.Heating is not { } heating)
        {
            yield break;
        }

        var watts = numbers.Design.Figure("heating.watts", "power", heating.Watts, Unit.Watt);
        yield return new Good(plan.Heater?.Key ?? "heating", "heating")
        {
            Item = "heat mat or cable",
            Pieces = GoodLines.Each(numbers, "heaters"),
            Note =
                $"the design asks for {NumberText.Of(watts)}{Size(plan)}; fixed outside, room for air "
                + "below",
        };
        yield return new Good("thermostat", "heating")
        {
            Pieces = GoodLines.Each(numbers, "thermostats"),
            Note =
                (heating.Thermostat ? "sensor in the warm half" : "the design has none: never without")
                + GoodLines.Switches(numbers, "thermostat"),
        };
    }

    private static string Size(PowerPlan plan) =>
        plan.Heater switch
        {
            { Length: { } length, Width: { } width } =>
                $", usual size {NumberText.Of(length)} by {NumberText.Of(width)}",
            { Length: { } length } => $", usual length {NumberText.Of(length)}",
            _ => "",
        };

    private static IEnumerable<Good> Air(DesignNumbers numbers, PowerPlan plan)
    {
        if (numbers.Design.Design.Fan is not { } fan)
        {
            yield break;
        }

        var flow = numbers.Design.Figure("fan.flow", "flow", fan.Flow, Unit.CubicMeterPerHour);
        var size = plan.Fan is { Width: { } width, Flow: { } gives, Power: { } power }
            ? $"; usual: {NumberText.Of(width)}, {NumberText.Of(gives)}, {NumberText.Of(power)}"
            : "";
        yield return new Good(plan.Fan?.Key ?? "fan", "fan")
        {
            Pieces = GoodLines.Each(numbers, "fans"),
            Note = $"{NumberText.Of(flow)} by its label{size}; behind mesh",
        };
        yield return new Good("fan-supply", "fan")
        {
            Pieces = GoodLines.Each(numbers, "supplies"),
            Note = "hangs outside, above any water",
        };
        if (fan.On is not null)
        {
            yield return new Good("plug-timer", "fan") { Pieces = GoodLines.Each(numbers, "timers of fans") };
        }
    }

    private static IEnumerable<Good> Timers(DesignNumbers numbers)
    {
        if (numbers.Design.Design.Lamps.Count == 0)
        {
            yield break;
        }

        yield return new Good("plug-timer", "lamps")
        {
            Pieces = GoodLines.Each(numbers, "timers of lamps"),
            Note = "for the lamps" + GoodLines.Switches(numbers, "plug-timer"),
        };
    }

    private static IEnumerable<Good> Plugs(DesignNumbers numbers, PowerPlan plan)
    {
        var list = ElectricalList.Of(numbers);
        if (!list.Any)
        {
            yield break;
        }

        yield return new Good(plan.Protection?.Key ?? "ground-fault", "electrics")
        {
            Item = "ground-fault device",
            Pieces = GoodLines.Places(numbers, "ground-fault devices"),
            Note = "test button monthly; an electrician decides where it goes",
        };
        var plugs = Figure.Number(list.Items.Length);
        yield return new Good("socket-strip", "electrics")
        {
            Pieces = numbers.Design.Catalog.Find<Domain.Catalog.Entries.EquipmentEntry>("socket-strip")
                is { Places: { } places }
                ? Strips(numbers, plugs, places)
                : GoodLines.Places(numbers, "socket strips"),
            Note =
                $"{NumberText.Count(list.Items.Length, "plug", "plugs")} a box; one strip, never a strip "
                + "in a strip",
        };
    }

    private static Figure Strips(DesignNumbers numbers, Figure plugs, Figure places)
    {
        if (numbers.Design.Design.Form == Domain.BuildForm.Kit)
        {
            return GoodLines.Each(
                numbers,
                "socket strips",
                EquipmentPick.Whole("strips of a kit", plugs.As("plugs", Unit.One), places)
            );
        }

        var all = GoodLines.Each(numbers, "plugs of all boxes", plugs);
        return EquipmentPick.Whole("socket strips", all, places);
    }

    private static IEnumerable<Good> Meters(DesignNumbers numbers)
    {
        yield return new Good("thermometer", "box") { Pieces = GoodLines.Each(numbers, "thermometers") };
        yield return new Good("hygrometer", "box") { Pieces = GoodLines.Each(numbers, "hygrometers") };
    }
}
