using System.Collections.Immutable;
using System.Globalization;
using System.IO.Compression;
using Litterfall.Documents.Papers;
using Litterfall.Documents.Shop;
using Litterfall.Documents.Shop.Cutting;
using Litterfall.Domain.Cutting;
using Litterfall.Web.Shop.Stock;
using Litterfall.Workshop.CuttingRoom;

namespace Litterfall.Web.Shop.Cutting;

/// <summary>Cut sheets, labels and files of one plan.</summary>
/// <param name="view">The table.</param>
/// <param name="job">The plan.</param>
/// <param name="link">
/// Address of the plan for codes, in capitals; empty where other machines reach none.
/// </param>
public sealed class CuttingPapers(CuttingView view, CuttingJob job, string link)
{
    private static readonly CultureInfo Culture = CultureInfo.InvariantCulture;
    private readonly IReadOnlySet<string> rolls = JobTotals.Rolls(job);
    private readonly JobTotals totals = JobTotals.Read(job);
    private readonly ILookup<int, PlacedPiece> placed = PlacedPiece.Read(job).ToLookup(p => p.Sheet);
    private readonly CuttingRules rules = view.Facts.RulesOf(job.Good);

    /// <summary>Every sheet in cutting order.</summary>
    public ImmutableArray<CutSheetText> Sheets() =>
        [.. Enumerable.Range(0, job.Plan.Sheets.Count).Select(Sheet)];

    /// <summary>Totals and a page for each sheet.</summary>
    /// <param name="sheet">What the papers share.</param>
    public PaperFile Pdf(ShopSheet sheet) => CutSheetPaper.Write(sheet, Totals(), Sheets());

    /// <summary>A label for every part, then for every offcut.</summary>
    /// <param name="sheet">What the papers share.</param>
    /// <param name="isCut">True for sheets to cut out.</param>
    public PaperFile Labels(ShopSheet sheet, bool isCut)
    {
        ImmutableArray<LabelText> labels =
        [
            .. placed.SelectMany(g => g).Select(Label),
            .. Enumerable.Range(0, job.Plan.Sheets.Count).SelectMany(OffcutLabels),
        ];
        return isCut ? LotLabels.Sheets(sheet, labels) : LotLabels.Roll(sheet, labels);
    }

    /// <summary>All files at true size in one zip.</summary>
    public byte[] Zip()
    {
        using var bytes = new MemoryStream();
        using (var zip = new ZipArchive(bytes, ZipArchiveMode.Create))
        {
            foreach (var file in Files())
            {
                using var entry = zip.CreateEntry(file.Name).Open();
                entry.Write(file.Bytes);
            }
        }

        return bytes.ToArray();
    }

    private IEnumerable<PaperFile> Files() =>
        Sheets()
            .SelectMany(s =>
                new[]
                {
                    CutFiles.BenchDxf(s),
                    CutFiles.BenchSvg(s),
                    CutFiles.PartsDxf(s),
                    CutFiles.LinesDxf(s),
                }
            );

    private CutSheetText Sheet(int index)
    {
        var sheet = job.Plan.Sheets[index];
        var isRoll = rolls.Contains(sheet.Stock);
        return new()
        {
            Plan = job.Number,
            Sheet = index + 1,
            Sheets = job.Plan.Sheets.Count,
            Material = job.Name,
            Stock = SourceWords(sheet, isRoll),
            Length = isRoll ? sheet.UsedLength : sheet.Length,
            Width = sheet.Width,
            Kerf = job.Task.Kerf,
            TrimAcross = isRoll ? 0 : job.Task.Trim,
            TrimAlong = job.Task.Trim,
            HasGrain = job.Task.Parts.Any(p => !p.MayTurn),
            IsScored = rules.Tool == CutTool.ScoreAndSnap,
            Code = Code(null),
            Parts =
            [
                .. placed[index]
                    .Select(p => new SheetPart(
                        Name(p.Piece),
                        $"{p.Piece.Part} {CuttingWords.Size(p.Piece.Length, p.Piece.Width)}",
                        view.Whom(p.Piece.Order, p.Piece.For),
                        p.Place.X,
                        p.Place.Y,
                        p.Place.Length,
                        p.Place.Width,
                        p.Place.IsTurned
                    )),
            ],
            Cuts =
            [
                .. CutStep
                    .Read(sheet, job.Task, isRoll)
                    .Select(s => new SheetCut(
                        s.Number,
                        s.Line.IsUpright,
                        s.Line.At,
                        s.Line.From,
                        s.Line.To,
                        s.Words
                    )),
            ],
            Offcuts =
            [
                .. sheet.Offcuts.Select(
                    (o, i) => new SheetOffcut(OffcutName(index, i), o.X, o.Y, o.Length, o.Width)
                ),
            ],
            Areas = Areas(totals.Areas[index]),
            Cautions = [.. CutCautions.For(view.Facts.Catalog.Find(job.Good), rules.Tool)],
        };
    }

    private CutTotalsText Totals() =>
        new()
        {
            Told =
            [
                CuttingWords.Summary(job) + ".",
                CuttingWords.Proof(job.Plan),
                totals.Cost is { } cost
                    ? $"Material {StockWords.Money(cost, view.Stock.Currency)} net, offcuts taken off."
                    : "No price is entered for this material.",
            ],
            Pull = [.. totals.Pull.Where(p => p.Source.Kind != CutSourceKind.Buy).Select(Row)],
            Buy = [.. totals.ToBuy.Select(Row)],
            Parts =
            [
                .. job
                    .Pieces.GroupBy(p => (p.Order, p.For, p.Part, p.Length, p.Width))
                    .OrderBy(g => g.Key.Order)
                    .ThenBy(g => g.Key.For, StringComparer.Ordinal)
                    .Select(g => new TotalsRow(
                        g.Key.Part,
                        CuttingWords.Size(g.Key.Length, g.Key.Width),
                        g.Count().ToString(Culture),
                        view.Whom(g.Key.Order, g.Key.For)
                    )),
            ],
            Store =
            [
                .. job.Plan.Sheets.SelectMany(
                    (s, i) =>
                        s.Offcuts.Select(
                            (o, k) =>
                                new TotalsRow(
                                    OffcutName(i, k),
                                    CuttingWords.Size(o.Length, o.Width),
                                    (i + 1).ToString(Culture),
                                    "offcut rack"
                                )
                        )
                ),
            ],
        };

    private TotalsRow Row(Pulled pulled) =>
        new(
            pulled.Source.Name,
            pulled.IsRoll
                ? string.Create(Culture, $"{pulled.Width:0.#} mm wide")
                : CuttingWords.Size(pulled.Length, pulled.Width),
            CuttingWords.HowMany(pulled),
            pulled.Source.Lot is { } lot && view.Facts.Book.Find(lot) is { } account
                ? view.Stock.PlaceOf(account)
                : ""
        );

    private LabelText Label(PlacedPiece p) =>
        new(
            Name(p.Piece),
            Code(p.Piece.Number),
            $"{p.Piece.Part} {CuttingWords.Size(p.Piece.Length, p.Piece.Width)}",
            [
                .. new[]
                {
                    view.Whom(p.Piece.Order, p.Piece.For),
                    job.Name,
                    p.Place.IsTurned ? "lies turned on the sheet" : "",
                    p.Piece.Note,
                }.Where(t => t.Length > 0),
            ]
        );

    private IEnumerable<LabelText> OffcutLabels(int sheet) =>
        job
            .Plan.Sheets[sheet]
            .Offcuts.Select(
                (o, i) =>
                    new LabelText(
                        OffcutName(sheet, i),
                        job.Kept.FirstOrDefault(k => k.Sheet == sheet && k.Offcut == i) is { } kept
                            ? LotCode(kept.Lot)
                            : Code(null),
                        $"offcut {CuttingWords.Size(o.Length, o.Width)}",
                        [job.Name, "offcut rack", string.Create(Culture, $"from plan {job.Number}")]
                    )
            );

    private string OffcutName(int sheet, int index) =>
        job.Kept.FirstOrDefault(k => k.Sheet == sheet && k.Offcut == index)?.Lot
        ?? string.Create(Culture, $"{job.Number}-{sheet + 1}{(char)('A' + (index % 26))}");

    private string Name(CutPiece piece) => string.Create(Culture, $"{job.Number}-{piece.Number}");

    /// <summary>Capitals and digits alone: a code of them is smaller.</summary>
    private string Code(int? piece) =>
        link.Length == 0
            ? string.Create(Culture, $"CUT {job.Number}{(piece is { } n ? $"-{n}" : "")}")
            : string.Create(Culture, $"{link}TABLE/{job.Number}{(piece is { } p ? $"/{p}" : "")}");

    private string LotCode(string lot) =>
        (link.Length == 0 ? "" : $"{link}L/") + Workshop.Stock.LotNumber.Checked(lot).ToUpperInvariant();

    private string SourceWords(CutSheet sheet, bool isRoll)
    {
        var name = job.Sources.FirstOrDefault(s => s.Stock == sheet.Stock)?.Name ?? sheet.Stock;
        return isRoll
            ? string.Create(Culture, $"{name}: take {sheet.UsedLength:0.#} mm off, {sheet.Width:0.#} mm wide")
            : $"{name}: {CuttingWords.Size(sheet.Length, sheet.Width)}";
    }

    private static string Areas(SheetAreas a) =>
        string.Create(
            Culture,
            $"Parts {Share(a.Parts, a):0.0} %, offcuts {Share(a.Offcuts, a):0.0} %, "
                + $"cuts {Share(a.Kerf, a):0.0} %, trim {Share(a.Trim, a):0.0} %, "
                + $"waste {Share(a.Waste, a):0.0} % of the sheet."
        );

    private static double Share(double part, SheetAreas all) => all.Whole > 0 ? 100 * part / all.Whole : 0;
}
