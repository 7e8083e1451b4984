using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Documents.Drawings;
using Litterfall.Documents.Layout;
using Litterfall.Domain.Trade;

namespace Litterfall.Documents.Shop;

/// <summary>How a paper for customers is wanted.</summary>
/// <param name="Size">Sheet.</param>
/// <param name="Logo">Sign of the workshop, PNG or JPEG; empty for none.</param>
public sealed record ShopWish(PaperSize Size, ImmutableArray<byte> Logo)
{
    /// <summary>Picture of the tank, PNG; empty for none.</summary>
    public ImmutableArray<byte> Picture { get; init; } = [];
}

/// <summary>What stands at the head of a paper for customers.</summary>
/// <param name="Title">Kind of paper.</param>
/// <param name="Shop">Workshop as it stood.</param>
/// <param name="Customer">Customer as it stood.</param>
/// <param name="Facts">Number, day and the like, each with its name.</param>
internal sealed record ShopHead(
    string Title,
    ShopTerms Shop,
    Customer Customer,
    ImmutableArray<(string Name, string Value)> Facts
);

/// <summary>A letter of the workshop: letterhead, address, text set as roomy as one side allows.</summary>
internal static class CustomerLetter
{
    private const double Margin = 16;
    private const double LogoWidth = 46;
    private const double LogoHeight = 20;
    private const double AddressTop = 44;
    private const double BodyTop = 74;
    private const double FootHeight = 8;

    /// <summary>The sides of a paper; what one side cannot take goes on to the next.</summary>
    public static ImmutableArray<Drawing> Sides(
        ShopWish wish,
        ShopHead head,
        Func<Style, IReadOnlyList<Block>> blocks
    )
    {
        var size = wish.Size;
        var first = new Room(
            Margin,
            BodyTop,
            size.Width - 2 * Margin,
            size.Height - BodyTop - Margin - FootHeight
        );
        var style = Style.RoomyToTight.FirstOrDefault(s => Fits(blocks(s), first, s))
            ?? Style.RoomyToTight[4];
        var sides = new List<Sketch>();
        var left = blocks(style);
        while (left.Count > 0 || sides.Count == 0)
        {
            var sketch = new Sketch();
            var isFirst = sides.Count == 0;
            var room = isFirst ? first : first with { Y = 30, Height = first.Height + BodyTop - 30 };
            if (isFirst)
            {
                Letterhead(sketch, wish, head);
            }
            else
            {
                sketch.Text(new(Margin, 22), Lettering.Clean($"{head.Title} {head.Facts[0].Value}"), 11);
            }

            var set = Flow.Set(left, [room], style, sketch);
            left = [.. left.Skip(Math.Max(1, set))];
            sides.Add(sketch);
        }

        return [.. sides.Select((s, i) => Footed(s, size, head, i + 1, sides.Count))];
    }

    private static bool Fits(IReadOnlyList<Block> blocks, Room room, Style style) =>
        Flow.Height(blocks, room.Width, style) <= room.Height;

    private static Drawing Footed(Sketch sketch, PaperSize size, ShopHead head, int side, int of)
    {
        var y = size.Height - Margin + 2;
        sketch.Line(new(Margin, y - 4.5), new(size.Width - Margin, y - 4.5), new Pen(Tone.Rule, 0.2));
        var words = string.Join(" · ", new[] { head.Shop.Name }.Concat(head.Shop.Address));
        var room = size.Width - 2 * Margin - 24;
        sketch.Text(
            new(Margin, y),
            Lettering.Cut(Lettering.Clean(words), room, 9),
            9,
            Align.Start,
            Tone.Quiet
        );
        sketch.Text(
            new(size.Width - Margin, y),
            string.Create(CultureInfo.InvariantCulture, $"side {side} of {of}"),
            9,
            Align.End,
            Tone.Quiet
        );
        return sketch.Done(size.Width, size.Height);
    }

    private static void Letterhead(Sketch sketch, ShopWish wish, ShopHead head)
    {
        var size = wish.Size;
        var right = size.Width - Margin;
        var left = Margin;
        if (PictureFit.Into(wish.Logo, new(Margin, 12), LogoWidth, LogoHeight) is { } logo)
        {
            sketch.Add(logo);
            left += logo.Width + 5;
        }

        Bold(sketch, new(left, 18), Lettering.Cut(Lettering.Clean(head.Shop.Name), 100, 15, true), 15);
        var y = 23.5;
        foreach (var line in head.Shop.Address.Take(4))
        {
            sketch.Text(
                new(left, y),
                Lettering.Cut(Lettering.Clean(line), 90, 9),
                9,
                Align.Start,
                Tone.Quiet
            );
            y += 4;
        }

        y = AddressTop;
        foreach (var line in new[] { head.Customer.Name }.Concat(head.Customer.Address).Take(6))
        {
            sketch.Text(new(Margin, y), Lettering.Cut(Lettering.Clean(line), 85, 11), 11);
            y += 5;
        }

        Bold(sketch, new(size.Width / 2 + 12, AddressTop), Lettering.Clean(head.Title), 16);
        y = AddressTop + 6;
        foreach (var (name, value) in head.Facts)
        {
            sketch.Text(new(size.Width / 2 + 12, y), name, 9.5, Align.Start, Tone.Quiet);
            sketch.Text(new(right, y), Lettering.Clean(value), 9.5, Align.End);
            y += 4.6;
        }
    }

    private static void Bold(Sketch sketch, Spot at, string text, double points) =>
        sketch.Add(new TextMark(at, text, points) { Bold = true, Layer = Layers.Label });
}
