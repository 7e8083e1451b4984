using System.Globalization;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;

namespace Litterfall.Quantities.Measures;

/// <summary>Water misting system and fogger put in per day, in m³, from flows measured in a cup.</summary>
public static class MistingDay
{
    private static readonly Unit MilliliterPerMinute = new(
        "mL/min",
        Unit.Milliliter.ToSi / Unit.Minute.ToSi,
        Unit.Milliliter.Dimension / Unit.Minute.Dimension
    );

    /// <summary>What both put in; null without either.</summary>
    public static Figure? Water(CheckedDesign design) =>
        (Misted(design), Fogged(design)) switch
        {
            ({ } misted, { } fogged) => (misted + fogged).As(
                "water misted and fogged a day",
                Unit.Milliliter
            ),
            (var misted, var fogged) => misted ?? fogged,
        };

    /// <summary>Rate of the fogger × time a day; null without a fogger.</summary>
    private static Figure? Fogged(CheckedDesign design) =>
        design.Design.Fogger is { } fogger
            ? (
                design.Figure("fogger.rate", "water the fogger throws", fogger.Rate, MilliliterPerMinute)
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
            ? design.Figure("misting.each", "flow of each nozzle", misting.Each, MilliliterPerMinute)
            : null;
}
