using Litterfall.Documents.Layout;
using Litterfall.Documents.Views;
using Litterfall.Domain.Figures;
using Litterfall.Instructions.Parts;
using Litterfall.Quantities.Measures;

namespace Litterfall.Documents.Papers;

/// <summary>Misting and draining on the build sheet.</summary>
internal static class BuildSheetWater
{
    /// <summary>
    /// When the water is to be drawn off; where an outlet keeps the level, that is said instead.
    /// </summary>
    public static IEnumerable<Block> Of(PaperJob job)
    {
        if (DrainMark.Of(job.Numbers.Layers) is not { } mark || job.Numbers.Water is not { } water)
        {
            return job.Mist is { Bursts.Length: > 0 }
                ? Misted(job, Table.Of("Water", (0.36, "", false), (0.64, "", true))).Blocks
                : [];
        }

        var table = Misted(job, Table.Of("Water under the barrier", (0.36, "", false), (0.64, "", true)));
        table.Row("floor.drainage", "highest level", $"{Lengths.Depth(mark.Si, job.Inches)} over the base");
        if (!DrainMark.IsDrawnOff(job.Numbers.Design.Design))
        {
            table.Row(
                "drain",
                "leaves",
                water.Balance.Outlet is { } outlet
                    ? Judged(
                        job,
                        $"by itself, {NumberText.Milliliters(outlet.PerDay)} a day: "
                            + $"{NumberText.Liters(outlet.Bottle)} in {Days(outlet.FillsIn)}"
                    )
                    : "drains by itself through the outlet"
            );
        }
        else if (water is { FirstDrain: { } first, Balance.DrainEvery: { } every })
        {
            var band = water.Balance.DrainBand;
            var liters = water.Balance.Usable is { } usable ? $", {NumberText.Liters(usable)} each" : "";
            table.Row(
                "drain",
                "forecast first drain",
                Judged(job, $"day {Whole(first)}{Between(water.FirstDrainLow, water.FirstDrainHigh)}")
            );
            table.Row("drain", "then again after", $"{Days(every)}{Between(band?.Low, band?.High)}{liters}");
        }
        else
        {
            table.Row("drain", "forecast first drain", "none in the first year; read the level");
        }

        return table.Blocks;
    }

    /// <summary>The one misting program of all papers.</summary>
    private static Table Misted(PaperJob job, Table table)
    {
        if (job.Mist is { Bursts.Length: > 0 } mist)
        {
            table.Row("misting", "misting", $"{mist.Times}: {mist.PerDay}");
        }

        return table;
    }

    private static string Judged(PaperJob job, string number) => job.Mist?.Judged(number) ?? number;

    private static string Whole(Figure figure) => NumberText.Whole(figure);

    /// <summary>"9 days"; "1 day".</summary>
    private static string Days(Figure figure) =>
        NumberText.Count((int)Math.Round(figure.Value, MidpointRounding.AwayFromZero), "day", "days");

    /// <summary>The band in words, where there is one.</summary>
    private static string Between(Figure? low, Figure? high) =>
        low is null || (high is not null && Whole(low) == Whole(high)) ? ""
        : high is null ? $" ({Whole(low)} or never)"
        : $" ({Whole(low)}–{Whole(high)})";
}
