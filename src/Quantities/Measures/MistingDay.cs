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
    public static Figure? Water(CheckedDesign design) => Sum(design, ByHand(design));

    /// <summary>What misting system and fogger put in on their own; null without either.</summary>
    public static Figure? Program(CheckedDesign design) => Sum(design, null);

    private static Figure? Sum(CheckedDesign design, Figure? byHand)
    {
        Figure?[] all = [Misted(design), byHand, Fogged(design)];
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
    private static Figure? Fogged(CheckedDesign design) =>
        design.Design.Fogger is { } fogger
            ? (
                design.Figure("fogger.rate", "water the fogger throws", fogger.Rate, Unit.MilliliterPerMinute)
                * Time(design, "fogger", fogger.Times)
            ).As("water fogged a day", Unit.Milliliter)
            : null;

    private static Figure Time(CheckedDesign design, string owner, Domain.Lists.Seq<Domain.MistTime> times) =>
        Figure
            .Total(
                times
                    .Select(
                        (t, i) =>
                            design.Figure(
                                string.Create(CultureInfo.InvariantCulture, $"{owner}.times[{i}].for"),
                                string.Create(CultureInfo.InvariantCulture, $"{owner} {i + 1}"),
                                t.For,
                                Unit.Second
                            )
                    )
                    .ToArray(),
                Unit.Second.Dimension
            )
            .As($"{owner} time a day", Unit.Second);

    /// <summary>Nozzles × flow of each × seconds a day; null without a misting system.</summary>
    private static Figure? Misted(CheckedDesign design)
    {
        if (design.Design.Misting is not { } misting)
        {
            return null;
        }

        return (
            design.Count("misting.nozzles", "nozzles", misting.Nozzles)
            * Each(design)!
            * Time(design, "misting", misting.Times)
        ).As("water misted a day", Unit.Milliliter);
    }

    /// <summary>Flow of one nozzle; null without a misting system.</summary>
    public static Figure? Each(CheckedDesign design) =>
        design.Design.Misting is { } misting
            ? design.Figure("misting.each", "flow of each nozzle", misting.Each, Unit.MilliliterPerMinute)
            : null;
}
