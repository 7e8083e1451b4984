using System.Globalization;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;

namespace Litterfall.Quantities.Measures;

/// <summary>
/// Water that misting system, fogger and hand put in per day, in m³; the flows are measured in a cup.
/// </summary>
public static class MistingDay
{
    /// <summary>What all put in; null without any.</summary>
    public static Figure? Water(CheckedDesign design) => Sum(design);

    private static Figure? Sum(CheckedDesign design)
    {
        Figure?[] all = [Misted(design), ByHand(design), Fogged(design)];
        Figure[] ways = [.. all.OfType<Figure>()];
        return ways.Length switch
        {
            0 => null,
            1 => ways[0],
            _ => Figure
                .Total(ways, Unit.Milliliter.Dimension)
                .As(
                    Fogged(design) is null
                        ? "water misted a day, the program's and by hand"
                        : "water misted and fogged a day",
                    Unit.Milliliter
                ),
        };
    }

    /// <summary>Misted by hand; null where the design does not say.</summary>
    /// <param name="design">The design.</param>
    public static Figure? ByHand(CheckedDesign design) =>
        design.Design.Habits?.HandMist is { } hand
            ? design.Figure("habits.handMist", "water misted by hand a day", hand, Unit.Milliliter)
            : null;

    /// <summary>Rate of the fogger × time a day; null without a fogger.</summary>
    /// <param name="design">The design.</param>
    public static Figure? Fogged(CheckedDesign design) =>
        design.Design.Fogger is { } fogger
            ? (
                design.Figure("fogger.rate", "water the fogger throws", fogger.Rate, Unit.MilliliterPerMinute)
                * Time(design, "fogger", fogger.Times)
            ).As("water fogged a day", Unit.Milliliter)
            : null;

    private static Figure Time(
        CheckedDesign design,
        string owner,
        Domain.Lists.Seq<Domain.MistTime> times,
        Figure? fill = null
    ) =>
        Figure
            .Total(
                times
                    .Select(
                        (t, i) =>
                        {
                            var span = design.Figure(
                                string.Create(CultureInfo.InvariantCulture, $"{owner}.times[{i}].for"),
                                string.Create(CultureInfo.InvariantCulture, $"{owner} {i + 1}"),
                                t.For,
                                Unit.Second
                            );
                            return fill is null
                                ? span
                                : Figure
                                    .NotNegative(span - fill)
                                    .As(
                                        string.Create(
                                            CultureInfo.InvariantCulture,
                                            $"{owner} {i + 1} with the hose full"
                                        ),
                                        Unit.Second
                                    );
                        }
                    )
                    .ToArray(),
                Unit.Second.Dimension
            )
            .As($"{owner} time a day", Unit.Second);

    /// <summary>
    /// Nozzles × flow of each × seconds a day in which the hose is full; null without a misting system.
    /// </summary>
    /// <param name="design">The design.</param>
    public static Figure? Misted(CheckedDesign design)
    {
        if (design.Design.Misting is not { } misting)
        {
            return null;
        }

        return (
            design.Count("misting.nozzles", "nozzles", misting.Nozzles)
            * Each(design)!
            * Time(design, "misting", misting.Times, Fill(design))
        ).As("water misted a day", Unit.Milliliter);
    }

    /// <summary>
    /// Time each misting takes to fill the hose before the nozzles spray, in s: its volume ÷ the flow that
    /// fills it; null where a check valve keeps it full or no hose is entered. What stays in the hose at the
    /// end drains back to the tank of the pump.
    /// </summary>
    /// <param name="design">The design.</param>
    public static Figure? Fill(CheckedDesign design)
    {
        if (design.Design.Misting is not { Hose: { CheckValve: false } hose } misting)
        {
            return null;
        }

        var length = design.Figure("misting.hose.length", "length of the hose", hose.Length, Unit.Meter);
        var bore = design.Figure("misting.hose.bore", "bore of the hose", hose.Bore, Unit.Millimeter);
        var volume = Figure
            .Computed(
                "π ÷ 4 × bore of the hose² × length of the hose",
                Math.PI / 4 * bore.Si * bore.Si * length.Si,
                Unit.Milliliter.Dimension,
                bore,
                length
            )
            .As("water in the hose", Unit.Milliliter);
        var flow = hose.Fill is { } fill
            ? design.Figure("misting.hose.fill", "flow into the empty hose", fill, Unit.MilliliterPerMinute)
            : (design.Count("misting.nozzles", "nozzles", misting.Nozzles) * Each(design)!).As(
                "flow of all nozzles",
                Unit.MilliliterPerMinute
            );
        return flow.Si > 0 ? (volume / flow).As("time to fill the hose", Unit.Second) : null;
    }

    /// <summary>Flow of one nozzle; null without a misting system.</summary>
    public static Figure? Each(CheckedDesign design) =>
        design.Design.Misting is { } misting
            ? design.Figure("misting.each", "flow of each nozzle", misting.Each, Unit.MilliliterPerMinute)
            : null;
}
