using Litterfall.Domain;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;

namespace Litterfall.Instructions.Building;

/// <summary>
/// The drain hole, drilled while the box is empty: a bulkhead sits in a wall, a standpipe stands on the base
/// and leaves through it.
/// </summary>
internal static class DrillSteps
{
    private const string Glazier = "Toughened glass cannot be drilled. Leave holes in glass to a glazier.";

    /// <summary>Drills and seals; nothing without a drilled drain.</summary>
    public static void Of(DesignNumbers numbers, StepWriter writer)
    {
        switch (numbers.Design.Design.Drain)
        {
            case { Kind: DrainKind.Bulkhead } drain:
                Bulkhead(numbers, writer, drain);
                break;
            case { Kind: DrainKind.Standpipe } drain:
                Standpipe(numbers, writer, drain);
                break;
        }
    }

    /// <summary>True when something is drilled or comes drilled.</summary>
    public static bool Any(DesignNumbers numbers) =>
        numbers.Design.Design.Drain?.Kind is DrainKind.Bulkhead or DrainKind.Standpipe;

    /// <summary>Height of the outlet over the base; null where it is not entered.</summary>
    public static Figure? Outlet(DesignNumbers numbers) =>
        numbers.Design.Design.Drain?.Height is { } height
            ? numbers.Design.Figure("drain.height", "outlet height", height, Unit.Centimeter)
            : null;

    private static void Bulkhead(DesignNumbers numbers, StepWriter writer, Drain drain)
    {
        var pane = $"the {Word(drain.Side ?? Side.Back)} pane";
        var ready = numbers.Cuts.Any(c => c.Holes.Any(h => h.Key == "drain"));
        var made = ready
            ? $"Use the hole in {pane}{Along(numbers, writer, drain)}."
            : $"Drill {Hole(numbers, writer, drain)} in {pane}{Along(numbers, writer, drain)}.";
        var height = Outlet(numbers) is { } h ? $", outlet {writer.Depth(h)} over the base" : "";
        writer.Step("drain", $"{made} Fit the bulkhead fitting{height}, and seal it.", null, Glazier);
    }

    private static void Standpipe(DesignNumbers numbers, StepWriter writer, Drain drain)
    {
        var mouth = Outlet(numbers) is { } h ? $", its mouth {writer.Depth(h)} over the base," : "";
        var ordered =
            numbers.Design.Design.Box.Panes == PaneSource.Cut
                ? " The glass drawing does not show it: mark it there before you order."
                : "";
        writer.Step(
            "drain",
            $"Drill {Hole(numbers, writer, drain)} in the base, near the {Word(drain.Side ?? Side.Back)} "
                + $"pane{Along(numbers, writer, drain)}.{ordered} Fit the standpipe{mouth} and seal it.",
            "The stand needs an opening below it for the hose.",
            Glazier
        );
    }

    private static string Hole(DesignNumbers numbers, StepWriter writer, Drain drain) =>
        drain.Diameter is { } d
            ? $"a {writer.Millimeters(Diameter(numbers, d))} hole"
            : "a hole to fit the fitting";

    private static Figure Diameter(DesignNumbers numbers, Typed<Length> typed) =>
        numbers.Design.Figure("drain.diameter", "drain hole", typed, Unit.Millimeter);

    /// <summary>From the left end of front or back, from the front end of a side, as the design
    /// measures.</summary>
    private static string Along(DesignNumbers numbers, StepWriter writer, Drain drain)
    {
        if (drain.Along is not { } typed)
        {
            return "";
        }

        var end = drain.Side is Side.Left or Side.Right ? "from the front end" : "from the left end";
        var along = numbers.Design.Figure("drain.along", "along", typed, Unit.Millimeter);
        return $", its middle {writer.Millimeters(along)} {end} inside";
    }

    internal static string Word(Side side) => side.ToString().ToLowerInvariant();
}
