using System.Collections.Immutable;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Cutting;
using Litterfall.Domain.Trade;
using Litterfall.Forecasting;
using Litterfall.Quantities.Cutting;
using Litterfall.Quantities.Measures;

namespace Litterfall.Workshop.CuttingRoom;

/// <summary>Equal parts that one order, or the stock, wants. Lengths in millimeters.</summary>
public sealed record WantedPart
{
    /// <summary>Number of the order; null for stock.</summary>
    public int? Order { get; init; }

    /// <summary>Tank or kit it is for.</summary>
    public required string For { get; init; }

    /// <summary>Day it is wanted; null where the order has none.</summary>
    public DateOnly? Day { get; init; }

    /// <summary>Key of the material.</summary>
    public required string Material { get; init; }

    /// <summary>Thickness; null where the material has one alone.</summary>
    public double? Millimeters { get; init; }

    /// <summary>What it is: "barrier", "lid".</summary>
    public required string Part { get; init; }

    /// <summary>Finished length.</summary>
    public required double Length { get; init; }

    /// <summary>Finished width.</summary>
    public required double Width { get; init; }

    /// <summary>How many.</summary>
    public required int Count { get; init; }

    /// <summary>Holes, notches and fit, in words.</summary>
    public string Note { get; init; } = "";

    /// <summary>What makes a part the same as another: for whom, what, and how large.</summary>
    internal (int? Order, string For, string Part, double Length, double Width) Mark =>
        (Order, For, Part, Length, Width);

    /// <summary>All parts of one line of an order; none where it is no design.</summary>
    /// <param name="order">The order.</param>
    /// <param name="item">The line: a build, or kits.</param>
    /// <param name="numbers">Numbers of its design; shape is enough.</param>
    /// <param name="day">Day the parts are wanted; null for the day that was promised.</param>
    public static IEnumerable<WantedPart> FromDesign(
        Order order,
        OrderItem item,
        DesignNumbers numbers,
        DateOnly? day
    )
    {
        var boxes = Math.Max(1, numbers.Design.Design.Boxes);
        return numbers
            .Cuts.Select(cut => new WantedPart
            {
                Order = order.Number,
                For = item.Name,
                Day = day ?? order.Promised,
                Material = TradeCatalog.Canonical(cut.Material),
                Millimeters = cut.Thickness is { } t ? Tenths(t.Si) : null,
                Part = cut.Part.Replace('-', ' '),
                Length = OnTape(cut.Length.Si),
                Width = OnTape(cut.Width.Si),
                Count = (int)Math.Round(cut.Count.Si * item.Amount / boxes, MidpointRounding.AwayFromZero),
                Note = Words(cut),
            })
            .Where(w => w.Count > 0 && w.Length > 0 && w.Width > 0);
    }

    /// <summary>A panel that is wanted beside the designs.</summary>
    /// <param name="panel">The panel.</param>
    /// <param name="order">The order it names; null for stock.</param>
    public static WantedPart FromPanel(LoosePanel panel, Order? order) =>
        new()
        {
            Order = panel.Order,
            For = order is null ? "for stock" : "loose panel",
            Day = order?.Promised,
            Material = panel.Good,
            Millimeters = panel.Millimeters,
            Part = panel.Part,
            Length = panel.Length,
            Width = panel.Width,
            Count = panel.Count,
        };

    /// <summary>As papers and files of the design have it: down to half a millimeter.</summary>
    private static double OnTape(double meters) => Tenths(NumberText.OnTape(meters));

    private static double Tenths(double meters) =>
        Math.Round(meters * 1000, 1, MidpointRounding.AwayFromZero);

    private static string Words(CutPart cut)
    {
        var extra = new List<string> { cut.Note };
        if (cut.Holes.Length > 0)
        {
            extra.Add(
                cut.Holes.Length == 1 ? "1 hole" : FormattableString.Invariant($"{cut.Holes.Length} holes")
            );
        }

        if (cut.CutOuts.Length > 0)
        {
            extra.Add(
                cut.CutOuts.Length == 1
                    ? "1 cutout"
                    : FormattableString.Invariant($"{cut.CutOuts.Length} cutouts")
            );
        }

        return string.Join("; ", extra.Where(t => t.Length > 0));
    }
}
