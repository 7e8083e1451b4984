using Litterfall.Documents.Layout;
using Litterfall.Documents.Papers;
using Litterfall.Domain.Lists;
using Litterfall.Quantities.Measures;

namespace Litterfall.Documents.Shop.Tanks;

/// <summary>A tank on the morning round.</summary>
/// <param name="Place">Rack and shelf, or where else it stands.</param>
/// <param name="Tank">Its number.</param>
/// <param name="Lives">What lives in it.</param>
/// <param name="Do">What it needs, in walking words.</param>
/// <param name="IsLate">True where it is late, or something is wrong.</param>
public sealed record MorningLine(string Place, string Tank, string Lives, string Do, bool IsLate);

/// <summary>What the morning round says.</summary>
/// <param name="Lines">Tanks in walking order.</param>
/// <param name="Findings">What loggers and logs found, in sentences.</param>
/// <param name="Advice">What the room could do better, in sentences.</param>
/// <param name="Visits">Visits of the day.</param>
public sealed record MorningText(
    Seq<MorningLine> Lines,
    Seq<string> Findings,
    Seq<string> Advice,
    Seq<string> Visits
);

/// <summary>The morning round of all rooms on one side, to carry along with a pencil.</summary>
public static class RoundPaper
{
    /// <summary>Writes it.</summary>
    /// <param name="sheet">What the papers share.</param>
    /// <param name="round">What it says.</param>
    public static PaperFile Write(ShopSheet sheet, MorningText round) =>
        sheet.Pdf(
            "morning-round.pdf",
            "Morning round",
            PageFrame.Sides(sheet.Size, sheet.Head("Morning round", NumberText.Day(sheet.Day)), _ =>
                Blocks(round)
            )
        );

    private static List<Block> Blocks(MorningText round)
    {
        var blocks = new List<Block>();
        if (round.Findings.Count > 0)
        {
            blocks.Add(new Heading("Look at first") { KeepsWithNext = true });
            blocks.AddRange(round.Findings.Select(f => new Words(f) { Sign = Sign.Caution }));
        }

        blocks.AddRange(
            round.Lines.Count > 0 ? Lines(round).Blocks : [new Words("No tank needs anything today.")]
        );
        Add(blocks, "The room", round.Advice);
        Add(blocks, "Visits today", round.Visits);
        blocks.Add(
            new Words("Sick or quarantined tanks last, with tools and gloves of their own. Unplug before wet work.")
            {
                Sign = Sign.Dash,
            }
        );
        return blocks;
    }

    private static void Add(List<Block> blocks, string title, Seq<string> lines)
    {
        if (lines.Count > 0)
        {
            blocks.Add(new Heading(title) { KeepsWithNext = true });
            blocks.AddRange(lines.Select(l => new Words(l) { Sign = Sign.Dash }));
        }
    }

    private static Table Lines(MorningText round)
    {
        var table = Table.Of(
            "In walking order",
            (0.05, "", false),
            (0.11, "tank", false),
            (0.22, "lives in it", false),
            (0.44, "do", false),
            (0.18, "read, amount", false)
        );
        foreach (var place in Runs(round.Lines))
        {
            table.Group("", place[0].Place, "", "", "");
            foreach (var line in place)
            {
                var what = line.IsLate ? $"LATE: {line.Do}" : line.Do;
                table.Tick("", "", line.Tank, line.Lives, what, "________");
            }
        }

        return table;
    }

    /// <summary>Neighbors on the walk that stand at one place.</summary>
    private static List<List<MorningLine>> Runs(Seq<MorningLine> lines)
    {
        var runs = new List<List<MorningLine>>();
        foreach (var line in lines)
        {
            if (runs.Count == 0 || runs[^1][0].Place != line.Place)
            {
                runs.Add([]);
            }

            runs[^1].Add(line);
        }

        return runs;
    }
}
