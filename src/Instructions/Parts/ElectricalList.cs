using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Domain;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Quantities.Equipping;
using Litterfall.Quantities.Measures;

namespace Litterfall.Instructions.Parts;

/// <summary>One kind of electrical part of one box.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Count">How many per box.</param>
/// <param name="WattsEach">Power of one; null when neither the design nor the library has it.</param>
/// <param name="Key">Key of the design.</param>
public sealed record ElectricalItem(string Name, Figure Count, Figure? WattsEach, string Key)
{
    /// <summary>True where the design gives no power and the library's usual one stands for it.</summary>
    public bool IsByLibrary { get; init; }

    /// <summary>"24 W by the library", or that its plate tells.</summary>
    public string Power =>
        WattsEach is { } watts
            ? NumberText.Of(watts) + (IsByLibrary ? " by the library" : "")
            : "watts on its plate";
}

/// <summary>Everything on or near the box that is plugged in, and how it must be protected.</summary>
/// <param name="Items">The parts; empty when nothing is plugged in.</param>
/// <param name="TotalWatts">Sum of the known powers; null when none is known.</param>
/// <param name="Missing">Parts whose power is not known.</param>
public sealed record ElectricalList(
    ImmutableArray<ElectricalItem> Items,
    Figure? TotalWatts,
    ImmutableArray<string> Missing
)
{
    /// <summary>What stands beside the list.</summary>
    /// <param name="design">The design.</param>
    public static ImmutableArray<string> Protection(Design design) =>
        [
            TripLimits.Feed(TripLimits.IsUnitedStates(design)),
            "Hang every cable in a drip loop that is lower than its socket.",
            "Unplug everything before hands go in.",
            "Sockets, fixed wiring and the device itself: local code and a licensed electrician decide.",
        ];

    /// <summary>True when something is plugged in.</summary>
    public bool Any => Items.Length > 0;

    /// <summary>The parts of one box.</summary>
    public static ElectricalList Of(DesignNumbers numbers)
    {
        var design = numbers.Design;
        var items = ImmutableArray.CreateBuilder<ElectricalItem>();
        for (var i = 0; i < design.Design.Lamps.Count; i++)
        {
            items.Add(Lamp(design, i));
        }

        items.AddRange(Others(numbers));
        var known = items.Where(i => i.WattsEach is not null).Select(i => i.Count * i.WattsEach!).ToArray();
        return new ElectricalList(
            items.ToImmutable(),
            known.Length == 0
                ? null
                : Figure
                    .Total(known, Unit.Watt.Dimension)
                    .As("power of all electrical parts of one box", Unit.Watt),
            [.. items.Where(i => i.WattsEach is null).Select(i => i.Name)]
        );
    }

    private static IEnumerable<ElectricalItem> Others(DesignNumbers numbers)
    {
        var design = numbers.Design;
        var plan = PowerPlan.Of(design);
        if (MistPlan.Of(design, numbers.Box) is { } mist)
        {
            var watts = mist.Pump?.Power is { } one
                ? (mist.PumpsEach * one).As("power of the mist pump", Unit.Watt)
                : null;
            yield return ByLibrary("mist pump with its timer", watts, "misting");
        }

        if (design.Design.Fogger is not null)
        {
            yield return ByLibrary("fogger with its timer", plan.Fogger?.Power, "fogger");
        }

        if (design.Design.Fan is not null)
        {
            yield return ByLibrary("fan with its supply", plan.Fan?.Power, "fan");
        }

        if (design.Design.Heating is { } heating)
        {
            var watts = design.Figure("heating.watts", "power of the heating", heating.Watts, Unit.Watt);
            yield return new ElectricalItem(
                "heat mat or cable under the floor",
                One("heaters"),
                watts,
                "heating"
            );
        }
    }

    private static ElectricalItem ByLibrary(string name, Figure? watts, string key) =>
        new(name, One($"{name}, pieces"), watts, key) { IsByLibrary = watts is not null };

    private static ElectricalItem Lamp(CheckedDesign design, int lamp)
    {
        var path = string.Create(CultureInfo.InvariantCulture, $"lamps[{lamp}]");
        var entry = design.Entry<LampEntry>($"{path}.lamp");
        var watts = design.Design.Lamps[lamp].Watts is { } typed
            ? design.Figure($"{path}.watts", $"power of {entry.Name}", typed, Unit.Watt)
            : entry.Power;
        return new ElectricalItem(entry.Name, One("lamps of this row"), watts, path)
        {
            IsByLibrary = watts is not null && design.Design.Lamps[lamp].Watts is null,
        };
    }

    private static Figure One(string name) =>
        Figure.Choice(name, 1, Unit.One, "each is listed in a row of its own");
}
