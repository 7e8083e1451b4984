using Litterfall.Domain;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Quantities.Equipping;
using Litterfall.Quantities.Measures;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Instructions.Buying;

/// <summary>What brings water in and takes it out.</summary>
internal static class WaterGoods
{
    public static IEnumerable<ShoppingLine> Of(DesignNumbers numbers) =>
        [
            .. All(numbers).Select(good => GoodLines.Line(numbers, good)),
            .. WaterBasins.Of(numbers.Design, numbers.Box).Select(basin => Basin(numbers, basin)),
        ];

    private static IEnumerable<Good> All(DesignNumbers numbers) =>
        [.. Misting(numbers), .. Fogger(numbers), .. Drain(numbers), .. Dip(numbers)];

    private static IEnumerable<Good> Misting(DesignNumbers numbers)
    {
        if (MistPlan.Of(numbers.Design, numbers.Box) is not { } plan)
        {
            return [];
        }

        return [.. Pump(numbers, plan), .. Tube(numbers, plan)];
    }

    private static IEnumerable<Good> Pump(DesignNumbers numbers, MistPlan plan)
    {
        const string Where = "misting";
        yield return new Good(plan.Pump?.Key ?? "mist-pump", Where)
        {
            Pieces = (plan.Systems * plan.PumpsEach).As("mist pumps", Unit.One),
            Note = PumpNote(plan),
        };
        yield return new Good(plan.Tank?.Key ?? "mist-tank", Where)
        {
            Pieces = plan.Systems,
            Note = plan.TankNeed is { } need
                ? $"{NumberText.Liters(need)} are misted in "
                    + $"{NumberText.Whole(EquipmentPolicy.TankDays)} days"
                : "no misting times are entered",
        };
        yield return new Good("mist-filter", Where) { Pieces = plan.Systems };
        yield return new Good("check-valve", Where)
        {
            Pieces = plan.Systems,
            Note = "arrow away from the pump",
        };
        yield return new Good("seconds-timer", Where)
        {
            Pieces = plan.Systems,
            Kind = ShoppingKind.Electric,
            Note =
                "a day timer with quarter hours floods the box"
                + GoodLines.Switches(numbers, "seconds-timer"),
        };
    }

    private static string PumpNote(MistPlan plan)
    {
        var unit = Unit.MilliliterPerMinute.Symbol;
        var asked =
            $"the nozzles take {NumberText.Whole(plan.NozzleFlow)} {unit}; ask for "
            + $"{NumberText.Whole(plan.Need)} {unit} at their pressure";
        var gives = plan.Pump is { Flow: { } flow, Pressure: { } pressure, Power: { } power }
            ? $"; usual: {NumberText.Of(flow)} at {NumberText.Of(pressure)}, {NumberText.Of(power)}"
            : "";
        var shared =
            plan.Sharing.Si > 1 ? $"; one feeds {NumberText.Whole(plan.Sharing)} boxes on one bench" : "";
        return asked + gives + shared;
    }

    private static IEnumerable<Good> Tube(DesignNumbers numbers, MistPlan plan)
    {
        const string Where = "misting";
        var inches = Imperial.IsUsed(numbers.Design.Design);
        var key = inches ? "mist-tube-quarter-inch" : "mist-tube-6";
        var outer = numbers.Design.Catalog.Find<EquipmentEntry>(key)?.Outer;
        var fits =
            outer is null ? "fits the tube"
            : inches ? $"for tube of {NumberText.InInches(outer.Si)} outside"
            : $"for tube of {NumberText.Of(outer)} outside";
        yield return new Good(key, Where)
        {
            Pieces = plan.Systems,
            Length = plan.Tubing,
            Note = plan.IsEntered
                ? "the hose of the design, the way to the tank, and what bends take"
                : $"{NumberText.Of(EquipmentPolicy.Way)} of it from pump to box are assumed: measure yours",
        };
        yield return new Good("mist-nozzle", Where)
        {
            Pieces = GoodLines.Each(numbers, "nozzles for all boxes", plan.NozzlesEach),
            Note = "measure each in a cup for a minute",
        };
        yield return new Good("mist-tee", Where) { Pieces = plan.Tees, Note = fits };
        yield return new Good("mist-elbow", Where) { Pieces = plan.Elbows, Note = fits };
        yield return new Good("mist-end-cap", Where)
        {
            Pieces = GoodLines.Each(numbers, "end plugs"),
            Note = fits,
        };
        yield return new Good("tube-clip", Where)
        {
            Pieces = (plan.Systems * plan.ClipsEach).As("clips of the tube", Unit.One),
        };
        if (numbers.Design.Design.Passages.Count == 0)
        {
            yield return new Good("grommet", Where)
            {
                Pieces = GoodLines.Each(numbers, "grommets"),
                Note = "where the tube enters; the design names no hole",
            };
        }
    }

    private static IEnumerable<Good> Fogger(DesignNumbers numbers)
    {
        if (numbers.Design.Design.Fogger is null)
        {
            yield break;
        }

        var entry = PowerPlan.Of(numbers.Design).Fogger;
        yield return new Good(entry?.Key ?? "fogger", "fogger")
        {
            Pieces = GoodLines.Each(numbers, "foggers"),
            Kind = ShoppingKind.Electric,
            Note = entry?.Flow is { } flow
                ? $"usual: {NumberText.Of(flow)}; measure over an hour; fog is breathed: pure water"
                : "measure over an hour; fog is breathed: pure water",
        };
        yield return new Good("fog-hose", "fogger")
        {
            Pieces = GoodLines.Each(numbers, "fog hoses"),
            Length = EquipmentPolicy.Way,
            Note = "rising all the way, so that drops run back",
        };
        yield return new Good("plug-timer", "fogger")
        {
            Pieces = GoodLines.Each(numbers, "timers of foggers"),
            Kind = ShoppingKind.Electric,
        };
    }

    private static IEnumerable<Good> Drain(DesignNumbers numbers)
    {
        if (DrainPlan.Of(numbers.Design, numbers.Box) is not { } plan)
        {
            return [];
        }

        return plan.Kind == DrainKind.Siphon
            ?
            [
                new Good("siphon", "drain")
                {
                    Pieces = GoodLines.Each(numbers, "siphons"),
                    Length = plan.HoseLength,
                    Note = "never started by mouth",
                },
                Bottle(numbers),
            ]
            : [.. Outlet(numbers, plan), Bottle(numbers)];
    }

    private static IEnumerable<Good> Outlet(DesignNumbers numbers, DrainPlan plan)
    {
        const string Where = "drain";
        yield return new Good(plan.Fitting?.Key ?? "bulkhead", Where)
        {
            Item = "bulkhead fitting with seals",
            Pieces = GoodLines.Each(numbers, "bulkhead fittings"),
            Note = $"the hole is {NumberText.Of(plan.Hole!)}: buy the fitting first and measure it",
        };
        if (plan.Kind == DrainKind.Standpipe)
        {
            yield return new Good("standpipe", Where)
            {
                Pieces = GoodLines.Each(numbers, "standpipes"),
                Length = plan.Standing,
                Note = "fits the fitting",
            };
        }

        yield return new Good("drain-strainer", Where) { Pieces = GoodLines.Each(numbers, "strainers") };
        yield return new Good(plan.Hose?.Key ?? "drain-hose", Where)
        {
            Item = "drain hose",
            Pieces = GoodLines.Each(numbers, "drain hoses"),
            Length = plan.HoseLength,
            Note = plan.Hose?.Inner is null
                ? "fits the tail of the fitting; falls all the way; the way is assumed"
                : "falls all the way; the way is assumed",
        };
        yield return new Good("drain-tap", Where) { Pieces = GoodLines.Each(numbers, "taps") };
        yield return new Good("hose-clip", Where)
        {
            Pieces = GoodLines.Each(numbers, "hose clips", 2),
            Note = "fits the hose",
        };
    }

    private static Good Bottle(DesignNumbers numbers)
    {
        var outlet = numbers.Water.Balance.Outlet;
        var wanted = outlet?.Bottle ?? numbers.Water.Balance.Usable;
        var entry = wanted is null
            ? null
            : EquipmentPick.Smallest(numbers.Design.Catalog, "drain-bottle", wanted, e => e.Volume);
        return new Good(entry?.Key ?? "drain-bottle-5", "drain")
        {
            Pieces = GoodLines.Each(numbers, "bottles"),
            Note = outlet is null ? "" : $"{NumberText.Milliliters(outlet.PerDay)} run out a day",
        };
    }

    private static IEnumerable<Good> Dip(DesignNumbers numbers)
    {
        if (numbers.Design.Design.Floor.Drainage is not null)
        {
            yield return new Good("dip-tube", "floor.drainage")
            {
                Pieces = GoodLines.Each(numbers, "dip tubes"),
                Length = numbers.Box.InsideHeight,
                Note = "as long as the box is high inside; slotted at its foot",
            };
        }

        if (RaisedFeet.Of(numbers.Design, numbers.Box) is { } feet)
        {
            yield return new Good("floor-foot", "floor.drainage.raised")
            {
                Pieces = GoodLines.Each(numbers, "feet of the raised floor", feet.Count),
                Length = feet.Height,
                Note = $"one every {NumberText.Of(EquipmentPolicy.FeetSpan)} and at each edge",
            };
        }
    }

    private static ShoppingLine Basin(DesignNumbers numbers, WaterBasin basin) =>
        GoodLines.Line(
            numbers,
            new Good("basin", basin.Path)
            {
                Pieces = GoodLines.Each(numbers, $"basin {NumberText.Integer(basin.Number)}"),
                Note = "size of its water; the sides come on top",
            }
        ) with
        {
            Length = basin.Length,
            Width = basin.Width,
            Height = basin.Depth,
        };
}
