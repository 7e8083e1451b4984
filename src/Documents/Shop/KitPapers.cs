using Litterfall.Documents.Drawings;
using Litterfall.Documents.Layout;
using Litterfall.Documents.Papers;
using Litterfall.Domain.Lists;

namespace Litterfall.Documents.Shop;

/// <summary>One thing in a kit.</summary>
/// <param name="Group">Bags, flat parts, fittings, living things.</param>
/// <param name="Name">What it is.</param>
/// <param name="Amount">How much in one kit.</param>
/// <param name="Check">How it is checked: a weight or a size; empty for counting.</param>
/// <param name="Lots">Lots it is from.</param>
public sealed record PackedLine(string Group, string Name, string Amount, string Check, string Lots);

/// <summary>What the packing list of one kit says.</summary>
/// <param name="Number">Number of the kit.</param>
/// <param name="Which">"3 of 8".</param>
/// <param name="Code">What its code holds.</param>
/// <param name="About">Name of the build, order and customer.</param>
/// <param name="Lines">What is in it.</param>
public sealed record PackingText(
    string Number,
    string Which,
    string Code,
    string About,
    Seq<PackedLine> Lines
);

/// <summary>What the leaflet in a kit says.</summary>
/// <param name="Name">Name of the build.</param>
/// <param name="Steps">What to do first, a line each.</param>
/// <param name="Bags">Bags in the order they are opened.</param>
/// <param name="Cautions">Cautions.</param>
/// <param name="Contact">Who to ask.</param>
public sealed record LeafletText(
    string Name,
    Seq<string> Steps,
    Seq<string> Bags,
    Seq<string> Cautions,
    string Contact
);

/// <summary>Papers that go with kits.</summary>
public static class KitPapers
{
    /// <summary>A packing list for each kit.</summary>
    /// <param name="sheet">What the papers share.</param>
    /// <param name="kits">The kits.</param>
    public static PaperFile Packing(ShopSheet sheet, IEnumerable<PackingText> kits) =>
        sheet.Pdf("packing-lists.pdf", "Packing lists", kits.SelectMany(k => Sides(sheet, k)));

    /// <summary>The leaflet in the box.</summary>
    /// <param name="sheet">What the papers share.</param>
    /// <param name="text">What it says.</param>
    public static PaperFile Leaflet(ShopSheet sheet, LeafletText text)
    {
        Block[] blocks =
        [
            new Heading("Bags, in the order you open them"),
            .. text.Bags.Select(b => new Words(b) { Sign = Sign.Tick }),
            new Heading("First of all"),
            .. text.Steps.Select(s => new Words(s) { Sign = Sign.Tick }),
            new Heading("Cautions"),
            .. text.Cautions.Select(c => new Words(c) { Sign = Sign.Caution, Tone = Tone.Caution }),
            new Air(2),
            new Words(text.Contact) { Bold = true },
        ];
        return sheet.Pdf(
            "leaflet.pdf",
            "Leaflet",
            PageFrame.Sides(
                sheet.Size,
                sheet.Head("Your kit", text.Name),
                (_, _) => blocks,
                _ => [PageFrame.Inside(sheet.Size)],
                Style.LargeToTight
            )
        );
    }

    private static IReadOnlyList<Drawing> Sides(ShopSheet sheet, PackingText kit)
    {
        var table = Table.Of(
            "",
            (0.05, "", false),
            (0.37, "in this kit", false),
            (0.14, "amount", true),
            (0.02, "", false),
            (0.2, "check", false),
            (0.22, "lot", false)
        );
        foreach (var group in kit.Lines.GroupBy(l => l.Group, StringComparer.Ordinal))
        {
            table.Group("", group.Key, "", "", "", "");
            foreach (var line in group)
            {
                table.Tick("", "", line.Name, line.Amount, "", line.Check, line.Lots);
            }
        }

        return sheet.Coded(
            sheet.Head($"Packing list, kit {kit.Which}", kit.About),
            kit.Code,
            [new Words(kit.Number) { Bold = true, Larger = 4 }, new Words(kit.About)],
            [.. table.Blocks, new Blank("Packed by, day"), new Blank("Checked by, day")]
        );
    }
}
