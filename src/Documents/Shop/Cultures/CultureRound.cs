using Litterfall.Documents.Layout;
using Litterfall.Documents.Papers;
using Litterfall.Domain.Lists;
using Litterfall.Quantities.Measures;

namespace Litterfall.Documents.Shop.Cultures;

/// <summary>A culture or tray on the round.</summary>
/// <param name="Place">Shelf or bench.</param>
/// <param name="Where">Board and place on it.</param>
/// <param name="Number">Its number.</param>
/// <param name="What">Animal or plant, line, age.</param>
/// <param name="Do">What is due today; empty for a look.</param>
public sealed record RoundLine(string Place, string Where, string Number, string What, string Do);

/// <summary>Something to start, split, give out or throw away on a day.</summary>
/// <param name="Day">The day.</param>
/// <param name="What">What, in one line.</param>
/// <param name="How">How much, which; empty where the line says all.</param>
public sealed record RoundStart(DateOnly Day, string What, string How);

/// <summary>What the round of a day says.</summary>
/// <param name="Title">"Culture round", "Plant round".</param>
/// <param name="Starts">What is to be started, split or given out, by days.</param>
/// <param name="Lines">What stands, in walking order, with what is due.</param>
/// <param name="Notes">Shortages, in sentences.</param>
/// <param name="Cautions">What to mind.</param>
public sealed record RoundText(
    string Title,
    Seq<RoundStart> Starts,
    Seq<RoundLine> Lines,
    Seq<string> Notes,
    Seq<string> Cautions
);

/// <summary>The start list and the feeding round on one paper, with boxes to tick.</summary>
public static class CultureRound
{
    /// <summary>Writes it.</summary>
    /// <param name="sheet">What the papers share.</param>
    /// <param name="round">What it says.</param>
    public static PaperFile Write(ShopSheet sheet, RoundText round)
    {
        var name = $"{round.Title.ToLowerInvariant().Replace(' ', '-')}.pdf";
        return sheet.Pdf(
            name,
            round.Title,
            PageFrame.Sides(sheet.Size, sheet.Head(round.Title, NumberText.Day(sheet.Day)), _ =>
                Blocks(round)
            )
        );
    }

    private static List<Block> Blocks(RoundText round)
    {
        var blocks = new List<Block>();
        blocks.AddRange(round.Notes.Select(n => new Words(n) { Bold = true }));
        if (round.Starts.Count > 0)
        {
            blocks.AddRange(Starts(round).Blocks);
        }

        blocks.AddRange(
            round.Lines.Count > 0 ? Lines(round).Blocks : [new Words("Nothing stands there yet.")]
        );
        blocks.Add(new Heading("Mind") { KeepsWithNext = true });
        blocks.AddRange(round.Cautions.Select(c => new Words(c) { Sign = Sign.Dash }));
        return blocks;
    }

    private static Table Starts(RoundText round)
    {
        var table = Table.Of(
            "To start, split and give out",
            (0.05, "", false),
            (0.17, "day", false),
            (0.38, "what", false),
            (0.40, "which", false)
        );
        foreach (var start in round.Starts)
        {
            table.Tick("", "", NumberText.Day(start.Day), start.What, start.How);
        }

        return table;
    }

    private static Table Lines(RoundText round)
    {
        var table = Table.Of(
            "Round",
            (0.05, "", false),
            (0.12, "place", false),
            (0.14, "number", false),
            (0.33, "what stands there", false),
            (0.18, "due", false),
            (0.18, "seen, counted", false)
        );
        foreach (var place in round.Lines.GroupBy(l => l.Place, StringComparer.Ordinal))
        {
            table.Group("", place.Key, "", "", "", "");
            foreach (var line in place)
            {
                table.Tick("", "", line.Where, line.Number, line.What, line.Do, "________");
            }
        }

        return table;
    }
}
