using System.Globalization;
using Litterfall.Documents.Drawings;
using Litterfall.Documents.Layout;
using Litterfall.Forecasting.Climate;
using Litterfall.Instructions.Parts;
using Litterfall.Judging.Levers;
using Litterfall.Quantities.Measures;

namespace Litterfall.Documents.Papers;

/// <summary>The settings card: how long to mist and how far to open the vents, season by season.</summary>
internal static class SettingsPaper
{
    /// <summary>One side; nothing without a misting system or where the climate is not computed.</summary>
    public static IEnumerable<PaperFile> Write(PaperJob job)
    {
        if (job.Settings is not { } card)
        {
            yield break;
        }

        var sides = PageFrame.Sides(job.Wish.Size, job.Head("Settings card"), _ => Blocks(job, card));
        yield return job.Pdf("10-settings-card.pdf", "Settings card", sides);
    }

    private static List<Block> Blocks(PaperJob job, SettingsCard card)
    {
        var blocks = new List<Block>();
        foreach (var setting in card.Settings)
        {
            var table = Table.Of(Title(setting.Season), (0.3, "", false), (0.7, "", false));
            table.Row("misting", "mist", Mist(job, setting));
            if (card.HasVents)
            {
                table.Row("vents", "vents", Vents(setting.OpenShare));
            }

            table.Row("headspace", "then expect", Expect(setting.Days));
            table.Row("water", "water", Water(job, setting));
            if (!setting.IsDampEnough)
            {
                table.Row(
                    "headspace",
                    "",
                    "Still drier than the animals want: see the cautions of this build."
                );
            }

            blocks.AddRange(table.Blocks);
        }

        blocks.Add(
            new Words(
                "Computed for the room as entered, with a floor as new. Each setting was run as "
                    + "printed. Change one "
                    + "thing at a time, and look at the level and at a hygrometer checked against "
                    + "salt for a week."
            )
            {
                Tone = Tone.Quiet,
            }
        );
        blocks.Add(
            new Words("Unplug pump and lamps before reaching into wet parts; keep plugs above any water.")
            {
                Sign = Sign.Caution,
            }
        );
        blocks.Add(new Heading("Measured here") { KeepsWithNext = true });
        string[] lines =
        [
            "mL a minute from all nozzles, date",
            "dip level, date",
            "dip level a week later",
            "humidity, noon and night",
        ];
        blocks.AddRange(lines.Select(line => new Blank(line)));
        return blocks;
    }

    private static string Title(string season) =>
        season.StartsWith("in ", StringComparison.Ordinal) ? season[3..] : "From planting";

    private static string Mist(PaperJob job, SeasonSetting setting)
    {
        var isOther = setting.IsOther(job.Numbers.Design.Design.Misting!);
        return string.Join(
            "; ",
            job.Mist!.Bursts.Select(
                (b, i) =>
                    NumberText.Clock(b.At)
                    + MistingPlan.Span(b.Entered, isOther ? setting.MistSeconds[i] : null)
            )
        );
    }

    private static string Vents(double share) =>
        share >= 1
            ? "fully open"
            : string.Create(CultureInfo.InvariantCulture, $"cover all but {100 * share:0} % of each");

    private static string Expect(ClimateDays days) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{days.Celsius.Least:0.#} to {days.Celsius.Most:0.#} °C, humidity "
                + $"{100 * days.Humidity.Least:0} to "
        )
        + string.Create(
            CultureInfo.InvariantCulture,
            $"{100 * days.Humidity.Most:0} %, dew on a pane "
                + $"{days.Fog.Select(f => f.Hours).DefaultIfEmpty(0).Max():0.#} h a day"
        );

    private static string Water(PaperJob job, SeasonSetting setting)
    {
        var besides = (MistingDay.Water(job.Numbers.Design)?.Si ?? 0) - job.Mist!.Entered.Si;
        var misted = setting.Cubic(job.Numbers.Design) + besides;
        return string.Create(
                CultureInfo.InvariantCulture,
                $"{1e6 * misted:0} mL misted and {1000 * setting.Days.Vented:0} mL vented a day: "
            ) + setting.Level;
    }
}
