using System.Globalization;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Quantities;

namespace Litterfall.Planning.Building;

/// <summary>Water misting system and fogger put in per day, in m³, from flows measured in a cup.</summary>
public static class MistingDay
{
    private static readonly Unit MilliliterPerMinute = new(
        "mL/min",
        Units.Milliliter.ToSi / Units.Minute.ToSi,
        Units.Milliliter.Dimension / Units.Minute.Dimension
    );

    /// <summary>What both put in; null without either.</summary>
    public static Figure? Water(CheckedDesign design) =>
        (Misted(design), Fogged(design)) switch
        {
            ({ } misted, { } fogged) => (misted + fogged).As(
                "water misted and fogged a day",
                Units.Milliliter
            ),
            (var misted, var fogged) => misted ?? fogged,
        };

    /// <summary>Rate of the fogger × time a day; null without a fogger.</summary>
    private static Figure? Fogged(CheckedDesign design) =>
        design.Design.Fogger is { } fogger
            ? (
                design.Figure("fogger.rate", "water the fogger throws", fogger.Rate, MilliliterPerMinute)
                * Time(design, "fogger", fogger.Times)
            ).As("water fogged a day", Units.Milliliter)
            : null;

    private static Figure Time(
        CheckedDesign design,
        string owner,
        Domain.Seq<Domain.Designs.MistTime> times
    ) =>
        Figure
            .Total(
                times
                    .Select(
                        (t, i) =>
                            design.Figure(
                                string.Create(CultureInfo.InvariantCulture, $"{owner}.times[{i}].for"),
                                string.Create(CultureInfo.InvariantCulture, $"{owner} {i + 1}"),
                                t.For,
                                Units.Second
                            )
                    )
                    .ToArray(),
                Units.Second.Dimension
            )
            .As($"{owner} time a day", Units.Second);

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
        ).As("water misted a day", Units.Milliliter);
    }

    /// <summary>Flow of one nozzle; null without a misting system.</summary>
    public static Figure? Each(CheckedDesign design) =>
        design.Design.Misting is { } misting
            ? design.Figure("misting.each", "flow of each nozzle", misting.Each, MilliliterPerMinute)
            : null;
}
