using Litterfall.Documents.Drawings;
using Litterfall.Documents.Labels;
using Litterfall.Documents.Layout;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Instructions.Care;
using Litterfall.Judging;
using Litterfall.Quantities.Measures;

namespace Litterfall.Documents.Papers;

/// <summary>Care sheets, cautions and the tank passport.</summary>
internal static class CarePapers
{
    private const double Module = 0.8;
    private const string Weak = "* rests on a value from memory, source not checked, or on common practice";

    /// <summary>A sheet for each animal.</summary>
    public static IEnumerable<PaperFile> Sheets(PaperJob job) =>
        CareSheet
            .All(job.Told)
            .DistinctBy(s => s.Species, StringComparer.Ordinal)
            .Select((sheet, i) => Sheet(job, sheet, i));

    /// <summary>Only the cautions that apply, and the findings they come with.</summary>
    public static PaperFile Cautions(PaperJob job)
    {
        var sides = PageFrame.Sides(job.Wish.Size, job.Head("Cautions for this build"), _ =>
            CautionBlocks(job)
        );
        return job.Pdf("08-cautions.pdf", "Cautions", sides);
    }

    /// <summary>A passport for each box, with its number as a code to scan.</summary>
    public static PaperFile Passport(PaperJob job) =>
        job.Pdf(
            "09-tank-passport.pdf",
            "Tank passport",
            Enumerable.Range(1, job.Boxes).SelectMany(box => Passport(job, box))
        );

    private static IReadOnlyList<Drawing> Passport(PaperJob job, int box)
    {
        var passport = Instructions.Care.Passport.Of(job.Told, box);
        var title = job.Boxes == 1 ? "Tank passport" : $"Tank passport, {TankLabels.Which(job, box)}";
        return PageFrame.Sides(
            job.Wish.Size,
            job.Head(title) with
            {
                Mark = $"{passport.Tank}  ·  {NumberText.Day(job.Plan.Planting)}",
            },
            (_, sketch) => PassportBlocks(job, passport, sketch),
            _ => PassportRooms(job)
        );
    }

    private static PaperFile Sheet(PaperJob job, CareSheet sheet, int index)
    {
        var rated = sheet.IsRatedOnly ? " (rated for, sold without)" : "";
        var head = job.Head("Care sheet", sheet.Species + rated);
        var sides = PageFrame.Sides(job.Wish.Size, head, _ => SheetBlocks(sheet));
        var name = FormattableString.Invariant($"07-{index + 1}-care-{PaperJob.FileWord(sheet.Species)}.pdf");
        return job.Pdf(name, $"Care sheet, {sheet.Species}", sides);
    }

    private static List<Block> SheetBlocks(CareSheet sheet)
    {
        var table = Table.Of(
            "Care in this box",
            (0.18, "", false),
            (0.67, "", false),
            (0.15, "source", false)
        );
        foreach (var line in sheet.Lines)
        {
            table.Row(sheet.Key, line.Head, line.Text, line.Source?.Provenance.Spoken() ?? "design");
        }

        var blocks = new List<Block>(table.Blocks)
        {
            new Words(
                "“From memory” (source not checked) and “common practice” are not published evidence: ask "
                    + "an experienced "
                    + "keeper, and a "
                    + "veterinarian for anything about health. This sheet names no illness and no dose."
            )
            {
                Tone = Tone.Quiet,
            },
            new Heading("Facts of the sale") { KeepsWithNext = true },
        };
        foreach (var line in sheet.ByHand)
        {
            blocks.Add(line.Text is { } text ? new Words($"{line.Head}: {text}") : new Blank(line.Head));
        }

        return blocks;
    }

    private static List<Block> CautionBlocks(PaperJob job)
    {
        var blocks = new List<Block>();
        foreach (var severity in new[] { Severity.Stop, Severity.Caution, Severity.Note })
        {
            var findings = job.Of(severity).ToList();
            if (findings.Count == 0 || severity == Severity.Note)
            {
                continue;
            }

            blocks.Add(
                new Heading(severity == Severity.Stop ? "Stops" : "Cautions of this design")
                {
                    KeepsWithNext = true,
                }
            );
            foreach (var finding in findings)
            {
                blocks.Add(
                    new Words($"{finding.Text} {finding.Fix}{(finding.Provenance.IsWeak() ? " *" : "")}")
                    {
                        Sign = Signs.Of(severity),
                        Key = finding.Where,
                    }
                );
            }
        }

        blocks.AddRange(Accepted(job));
        if (job.Result.Open.Any(f => f.Severity > Severity.Note && f.Provenance.IsWeak()))
        {
            blocks.Add(new Words(Weak) { Tone = Tone.Quiet });
        }

        blocks.Add(new Heading("Cautions that always go with such a build") { KeepsWithNext = true });
        foreach (var caution in Instructions.Care.Cautions.Of(job.Numbers))
        {
            blocks.Add(new Words($"{caution.Title}. {caution.Text}") { Sign = Sign.Caution });
        }

        return blocks;
    }

    /// <summary>What somebody accepts, and why; nothing where nobody accepts anything.</summary>
    public static IEnumerable<Block> Accepted(PaperJob job)
    {
        var head = new Heading("Accepted") { KeepsWithNext = true };
        return
            job.Accepted.Select(finding => new Words(AcceptedWords.Of(finding))
            {
                Sign = Signs.Of(finding.Severity),
                After = 0.2,
                Key = finding.Where,
            })
                is var words
            && words.Any()
            ? [head, .. words]
            : [];
    }

    private static Room[] PassportRooms(PaperJob job)
    {
        var inside = PageFrame.Inside(job.Wish.Size);
        var code = QrMark.Draw(job.Wish.Code(job.Tank), Module);
        var used = Math.Max(code.Height + 8, 39);
        return Flow.Columns(inside with { Y = inside.Y + used, Height = inside.Height - used }, 2);
    }

    private static List<Block> PassportBlocks(PaperJob job, Passport passport, Sketch? sketch)
    {
        if (sketch is not null)
        {
            Number(job, passport, sketch);
        }

        var blocks = new List<Block>();
        foreach (var group in passport.Facts.GroupBy(f => f.Group))
        {
            var table = Table.Of(Title(group.Key), (0.34, "", false), (0.66, "", false));
            foreach (var fact in group)
            {
                table.Row(group.Key, fact.Head, fact.Text);
            }

            blocks.AddRange(table.Blocks);
        }

        blocks.Add(new Heading("Next dates") { KeepsWithNext = true });
        foreach (var date in passport.Next)
        {
            blocks.Add(
                new Words($"{NumberText.Day(date.Day)}: {date.Title}") { Sign = Sign.Tick, Key = date.Where }
            );
        }

        blocks.Add(new Heading("As built, by hand") { KeepsWithNext = true });
        string[] lines =
        [
            "box no.",
            "built by, on",
            "soil batch",
            "culture lines",
            "liters really used",
            "dip level, date",
            "dip level, date",
            "dip level, date",
            "animals in on",
        ];
        blocks.AddRange(lines.Select(line => new Blank(line)));
        return blocks;
    }

    private static void Number(PaperJob job, Passport passport, Sketch sketch)
    {
        var inside = PageFrame.Inside(job.Wish.Size);
        var code = QrMark.Draw(job.Wish.Code(passport.Tank), Module);
        sketch.Place(code, new(inside.X, inside.Y + 2));
        var left = inside.X + code.Width + 6;
        sketch.Add(
            new TextMark(new(left, inside.Y + 12), passport.Tank, 22) { Bold = true, Layer = Layers.Label }
        );
        var lines = Lettering.Wrap(passport.Name, inside.Width - code.Width - 8, 12);
        for (var i = 0; i < Math.Min(2, lines.Count); i++)
        {
            sketch.Text(new(left, inside.Y + 19 + 5.5 * i), lines[i], 12);
        }

        sketch.Text(
            new(left, inside.Y + 32),
            "Last sign is a check character (ISO 7064, MOD 37,36).",
            9,
            Align.Start,
            Tone.Quiet
        );
    }

    private static string Title(string group) =>
        group switch
        {
            "box" => "Box",
            "floor" => "Floor",
            "water" => "Water and air",
            "light" => "Light",
            _ => "Life",
        };
}
