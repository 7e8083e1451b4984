using System.Globalization;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Quantities;

namespace Litterfall.Planning.Building;

/// <summary>Water a misting system puts in per day, in m³, from the flow measured in a cup.</summary>
public static class MistingDay
{
    private static readonly Unit MilliliterPerMinute = new(
        "mL/min",
        Units.Milliliter.ToSi / Units.Minute.ToSi,
        Units.Milliliter.Dimension / Units.Minute.Dimension
    );

    /// <summary>Nozzles × flow of each × seconds a day; null without a misting system.</summary>
    public static Figure? Water(CheckedDesign design)
    {
        if (design.Design.Misting is not { } misting)
        {
            return null;
        }

        var time = misting
            .Times.Select(
                (t, i) =>
                    design.Figure(
                        string.Create(CultureInfo.InvariantCulture, $"misting.times[{i}].for"),
                        string.Create(CultureInfo.InvariantCulture, $"misting {i + 1}"),
                        t.For,
                        Units.Second
                    )
            )
            .ToArray();
        return (
            design.Count("misting.nozzles", "nozzles", misting.Nozzles)
            * Each(design)!
            * Figure.Total(time, Units.Second.Dimension).As("misting time a day", Units.Second)
        ).As("water misted a day", Units.Milliliter);
    }

    /// <summary>Flow of one nozzle; null without a misting system.</summary>
    public static Figure? Each(CheckedDesign design) =>
        design.Design.Misting is { } misting
            ? design.Figure("misting.each", "flow of each nozzle", misting.Each, MilliliterPerMinute)
            : null;
}
