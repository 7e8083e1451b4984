using Litterfall.Domain.Cutting;
using Litterfall.Domain.Stock;
using Litterfall.Domain.Trade;
using Litterfall.Workshop.CuttingRoom;
using Litterfall.Workshop.Stock;

namespace Litterfall.Workshop.Demo;

/// <summary>The cutting table of the demo: a barrier that is cut, eight that are planned, offcuts.</summary>
/// <param name="book">Where it goes.</param>
/// <param name="stock">Stock of the demo.</param>
/// <param name="supply">Catalog and designs.</param>
internal sealed class DemoCutting(DemoBook book, DemoStock stock, DemoSupply supply)
{
    private const string Mesh = "plastic-fly-screen";
    private const string Acrylic = "acrylic-sheet";
    private const double RollWidth = 1220;
    private const double RollLeft = 9400;
    private const double AcrylicThickness = 3;

    /// <summary>Parts of an order of the demo that are cut from fly screen.</summary>
    private List<WantedPart> Barriers(int number)
    {
        var order = book.NewOrders.Find(o => o.Number == number)!;
        return
        [
            .. order.Items.SelectMany(i =>
                WantedPart.FromDesign(order, i, supply.Design(number).Numbers, null)
            ),
        ];
    }

    /// <summary>Writes everything; orders must be there already.</summary>
    public void Write()
    {
        var cut = Barriers(201).FindAll(p => p.Material == Mesh);
        var planned = Barriers(204).FindAll(p => p.Material == Mesh);
        var first = Rows(cut);
        var came = stock.Day(DemoShop.Scene.AddDays(-24));
        var roll = stock.Receive(Mesh, RollWidth * (RollLeft + first.UsedLength) * 1e-6, 4.30m, came, lot =>
            lot with
            {
                Form = SheetForm.Roll,
                LengthMillimeters = RollLeft + first.UsedLength,
                WidthMillimeters = RollWidth,
            }
        );
        Acryl(came);
        var done = Job(1, cut, first, (roll, stock.Day(new DateOnly(2026, 8, 24))));
        var (booking, _) = CutBooking.Make(
            done,
            StockBook.Empty.With(book.NewLots, book.NewLines.Select((l, i) => l with { Id = i + 1 })),
            stock.Find(Mesh)!,
            UsualRules.For(Mesh, supply.Catalog.Find(Mesh)),
            (stock.Day(new DateOnly(2026, 8, 25)), DemoShop.Bookkeeper),
            0
        );
        book.NewLots.AddRange(booking!.Step.Lots);
        book.NewLines.AddRange(booking.Step.Lines);
        book.NewJobs.Add(booking.Job);
        book.NewJobs.Add(Job(2, planned, Rows(planned), (roll, stock.Day(DemoShop.Scene.AddDays(-1)))));
    }

    private void Acryl(DateOnly came)
    {
        const double each = 1.2 * 0.6;
        stock.Receive(Acrylic, 5 * each, 31m, came, lot =>
            lot with
            {
                Form = SheetForm.Sheets,
                LengthMillimeters = 1200,
                WidthMillimeters = 600,
                ThicknessMillimeters = AcrylicThickness,
            }
        );
        foreach (var (length, width, days) in new[] { (545.0, 310.0, 40), (420.0, 180.0, 12) })
        {
            var area = length * width * 1e-6;
            stock.Make(
                new Lot
                {
                    Id = "",
                    Good = Acrylic,
                    Since = stock.Day(DemoShop.Scene.AddDays(-days)),
                    Amount = area,
                    Cost = Math.Round(31m * 0.45m * (decimal)area, 2, MidpointRounding.AwayFromZero),
                    Form = SheetForm.Offcut,
                    LengthMillimeters = length,
                    WidthMillimeters = width,
                    ThicknessMillimeters = AcrylicThickness,
                    Note = "found when the rack was sorted",
                }
            );
        }
    }

    /// <summary>
    /// Equal parts in rows across the roll: as many beside each other as its width gives. What is left beside
    /// the last row is kept where it is large enough.
    /// </summary>
    private static CutSheet Rows(List<WantedPart> parts)
    {
        var part = parts[0];
        var count = parts.Sum(p => p.Count);
        double Taken(double along, double beside) =>
            along * Math.Ceiling(count / Math.Floor(RollWidth / beside));
        var isTurned = Taken(part.Width, part.Length) < Taken(part.Length, part.Width);
        var (length, width) = isTurned ? (part.Width, part.Length) : (part.Length, part.Width);
        var across = Math.Min(count, (int)(RollWidth / width));
        var rows = (count + across - 1) / across;
        var placed = Enumerable
            .Range(0, count)
            .Select(i => new PlacedPart(
                Demand(part),
                length * (i / across),
                width * (i % across),
                length,
                width,
                length < width
            ));
        var cuts = new List<CutLine>();
        for (var row = 0; row < rows; row++)
        {
            var (left, right) = (length * row, length * (row + 1));
            cuts.Add(new(1, true, right, 0, RollWidth));
            var inRow = Math.Min(across, count - (row * across));
            cuts.AddRange(
                Enumerable.Range(1, inRow).Select(i => new CutLine(2, false, width * i, left, right))
            );
        }

        var used = across * width;
        var kept = new Offcut(0, used, length * rows, RollWidth - used);
        return new()
        {
            Stock = "",
            Length = length * rows,
            Width = RollWidth,
            UsedLength = length * rows,
            Parts = [.. placed],
            Cuts = [.. cuts],
            Offcuts = rows == 1 && kept is { Length: >= 300, Width: >= 150 } ? [kept] : [],
        };
    }

    private static string Demand(WantedPart part) =>
        FormattableString.Invariant(
            $"{part.Part} {Math.Max(part.Length, part.Width):0.#} × {Math.Min(part.Length, part.Width):0.#}"
        );

    private CuttingJob Job(int number, List<WantedPart> parts, CutSheet sheet, (string Roll, DateOnly Day) of)
    {
        var part = parts[0];
        var area = parts.Sum(p => p.Count * p.Length * p.Width);
        return new()
        {
            Number = number,
            Day = of.Day,
            Good = Mesh,
            Name = stock.Find(Mesh)!.Name,
            Task = Task(parts, of.Roll),
            Plan = new()
            {
                IsProved = false,
                Value = sheet.UsedLength,
                Bound = Math.Round(area / RollWidth, 1),
                Sheets = [sheet with { Stock = of.Roll }],
            },
            Sources = [new(of.Roll, CutSourceKind.Roll, of.Roll, null, $"roll {of.Roll}", 1)],
            Pieces =
            [
                .. parts
                    .SelectMany(p => Enumerable.Repeat(p, p.Count))
                    .Select(
                        (p, i) =>
                            new CutPiece
                            {
                                Number = i + 1,
                                Demand = Demand(part),
                                Order = p.Order,
                                For = p.For,
                                Part = p.Part,
                                Length = p.Length,
                                Width = p.Width,
                                Note = p.Note,
                            }
                    ),
            ],
            PricePerSquareMeter = 4.30m,
            OffcutWorth = 0.45,
            Wanted = parts.Min(p => p.Day),
            Who = DemoShop.Bookkeeper,
        };
    }

    private static CuttingTask Task(List<WantedPart> parts, string roll)
    {
        var part = parts[0];
        return new()
        {
            Stock =
            [
                new()
                {
                    Id = roll,
                    Length = RollLeft,
                    Width = RollWidth,
                    Count = 1,
                    IsRoll = true,
                },
            ],
            Parts =
            [
                new()
                {
                    Id = Demand(part),
                    Length = Math.Max(part.Length, part.Width),
                    Width = Math.Min(part.Length, part.Width),
                    Count = parts.Sum(p => p.Count),
                },
            ],
        };
    }
}
