using System.Globalization;
using Litterfall.Documents.Drawings;
using Litterfall.Documents.Layout;
using Litterfall.Documents.Views;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Forecasting.Coefficients;
using Litterfall.Forecasting.Light;
using Litterfall.Quantities.Measures;

namespace Litterfall.Documents.Papers;

/// <summary>
/// The light card: the map of the ground, the section, and the light of each plant beside its band.
/// </summary>
internal sealed class LightPaper
{
    private const double Gutter = 4;
    private const double Tallest = 92;
    private const double CaptionHeight = 5;
    private readonly PaperJob job;
    private readonly LightFigures light;
    private readonly Drawing plan;
    private readonly Drawing section;

    private LightPaper(PaperJob job, LightFigures light)
    {
        this.job = job;
        this.light = light;
        var inside = PageFrame.Inside(job.Wish.Size);
        section = job.Views.LightSection((inside.Width * 0.42, Tallest))!;
        plan = job.Views.LightPlan((inside.Width - section.Width - Gutter, Tallest))!;
    }

    /// <summary>One side; nothing without lamps.</summary>
    public static IEnumerable<PaperFile> Write(PaperJob job)
    {
        if (job.Numbers.Light is not { } light)
        {
            yield break;
        }

        var paper = new LightPaper(job, light);
        var sides = PageFrame.Sides(job.Wish.Size, job.Head("Light card"), paper.Blocks, paper.Rooms);
        yield return job.Pdf("11-light-card.pdf", "Light card", sides);
    }

    private Room Inside => PageFrame.Inside(job.Wish.Size);

    private double Tall => Math.Max(plan.Height, section.Height) + CaptionHeight;

    private IReadOnlyList<Room> Rooms(Style style) =>
        [Inside with { Y = Inside.Y + Tall, Height = Inside.Height - Tall }];

    private IReadOnlyList<Block> Blocks(Style style, Sketch? sketch)
    {
        if (sketch is not null)
        {
            var top = Tall - CaptionHeight;
            sketch.Place(plan, new(Inside.X, Inside.Y + top - plan.Height));
            var left = Inside.X + Inside.Width - section.Width;
            sketch.Place(section, new(left, Inside.Y + top - section.Height));
            foreach (
                var (words, drawing, x) in new[] { ("Ground", plan, Inside.X), ("Section", section, left) }
            )
            {
                var caption = $"{words}, {ViewScale.Words(drawing.Scale)}";
                var end = Inside.X + Inside.Width - Lettering.Width(caption, 9);
                sketch.Text(
                    new(Math.Min(x + 8, end), Inside.Y + top + 2.6),
                    caption,
                    9,
                    Align.Start,
                    Tone.Quiet
                );
            }
        }

        return [.. Plants(), .. Ground(), .. Lamps(), .. Words()];
    }

    private IReadOnlyList<Block> Plants()
    {
        var table = Table.Of(
            "Plants",
            (0.05, "", true),
            (0.29, "plant", false),
            (0.13, "µmol/m²/s", true),
            (0.12, "mol/m²/d", true),
            (0.12, "good to most", true),
            (0.02, "", false),
            (0.27, "verdict", false)
        );
        foreach (var plant in light.Plants)
        {
            table.Row(
                plant.Spot.Key,
                plant.Spot.Number.ToString(CultureInfo.InvariantCulture),
                plant.Spot.Name,
                Number(Unit.Micromole.FromSi(plant.Photons.Value.Si), "0"),
                Number(Unit.MolePerDay.FromSi(plant.Daily.Value.Si), "0.0"),
                plant.Band is { } band
                    ? $"{Number(band.Low.Value, "0.#")}–{Number((plant.Most ?? band.High).Value, "0.#")}"
                    : "",
                "",
                $"{plant.Words}, {plant.Facing}"
            );
        }

        return table.Blocks;
    }

    private IReadOnlyList<Block> Ground()
    {
        var table = Table.Of("Ground", (0.4, "", false), (0.6, "", false));
        table.Row("lamps", "mean", $"{Band(light.GroundMean, Unit.Micromole, "0")} µmol/m²/s");
        table.Row("lamps", "a day", $"{Band(light.GroundDaily, Unit.MolePerDay, "0.0#")} mol/m²/d");
        table.Row("lamps", "illuminance", $"{Number(light.GroundLux.Value.Si, "0")} lx on average");
        table.Row("lamps", "least over mean", Number(light.LeastOverMean.Si, "0.00"));
        table.Row(
            "hardscape",
            "dark or under wood",
            $"{Number(100 * light.Refuge.Share.Si, "0")} % of the ground, room for "
                + $"{NumberText.Count((int)light.Refuge.Places.Si, "animal", "animals")}, "
                + $"{Number(light.Refuge.Reach.Value, "0")} cm to it at most (house rule "
                + $"{Number(100 * LightPolicy.RefugeShare, "0")} %, "
                + $"{Number(100 * LightPolicy.RefugeReach, "0")} cm)"
        );
        return table.Blocks;
    }

    private IReadOnlyList<Block> Lamps()
    {
        var table = Table.Of(
            "Lamps",
            (0.36, "lamp", false),
            (0.14, "lm today", true),
            (0.18, "µmol of a klm", true),
            (0.14, "h at full", true),
            (0.18, "W inside", true)
        );
        foreach (var lamp in light.Lamps)
        {
            table.Row(
                lamp.Path,
                lamp.Name,
                Number(lamp.Lumens.Si, "0"),
                Number(Unit.MicromolePerKilolumen.FromSi(lamp.Photons.Si), "0.0"),
                Number(Unit.Hour.FromSi(lamp.FullHours.Si), "0.#"),
                Number(lamp.HeatInside.Si, "0.0")
            );
        }

        return table.Blocks;
    }

    private IEnumerable<Block> Words()
    {
        yield return new Words(
            $"Lines: µmol/m²/s on a level leaf. All figures ± {Number(light.Absolute.Value, "0")} %, "
                + "between places ± "
                + $"{Number(light.Relative.Value, "0")} %. Signs: ring in its band, triangle on its tip "
                + "darker than "
                + "good, on its base too bright; filled where the uncertainty does not matter. Good bands "
                + "follow "
                + "extension sheets and papers; most color bands are from memory, source not checked. Own "
                + "crowns are left out; black behind the panes."
        )
        {
            Tone = Tone.Quiet,
        };
        yield return new Words(
            "One reading of a lux meter, facing up, lamps at full light and the room dark, turns the whole "
                + "map: enter it "
                + "as the reading of the light."
        )
        {
            Tone = Tone.Quiet,
        };
        yield return new Words("Unplug lamps before cleaning the lid. Do not look into a lit lamp.")
        {
            Sign = Sign.Caution,
        };
    }

    private static string Band(Banded number, Unit unit, string form) =>
        number is { Low: { } low, High: { } high }
            ? $"{Number(unit.FromSi(number.Value.Si), form)} ({Number(unit.FromSi(low.Si), form)} to "
                + $"{Number(unit.FromSi(high.Si), form)})"
            : Number(unit.FromSi(number.Value.Si), form);

    private static string Number(double value, string form) => PaperJob.Number(value, form);
}
