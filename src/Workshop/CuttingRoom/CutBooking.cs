using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Domain.Cutting;
using Litterfall.Domain.Lists;
using Litterfall.Domain.Stock;
using Litterfall.Domain.Trade;
using Litterfall.Workshop.Stock;

namespace Litterfall.Workshop.CuttingRoom;

/// <summary>A plan as it was cut: lots and lines of the book, and the plan with what became of it.</summary>
/// <param name="Step">Lots and lines.</param>
/// <param name="Job">The plan.</param>
public sealed record CutBooking(StockStep Step, CuttingJob Job)
{
    private const double Least = 1e-6;

    /// <summary>Writes a plan as cut, or says why not, in one sentence.</summary>
    /// <param name="job">The plan.</param>
    /// <param name="book">The book of stock.</param>
    /// <param name="good">Its good.</param>
    /// <param name="rules">How it is cut.</param>
    /// <param name="when">Day, and who cut it.</param>
    /// <param name="minutes">Minutes it took.</param>
    public static (CutBooking? Booking, string? Fault) Make(
        CuttingJob job,
        StockBook book,
        Good good,
        CuttingRules rules,
        (DateOnly Day, string Who) when,
        double minutes
    )
    {
        if (job.State != CuttingJobState.Planned)
        {
            return (null, "This plan is finished already.");
        }

        if (!double.IsFinite(minutes) || minutes < 0)
        {
            return (null, "Enter the minutes it took, 0 or more.");
        }

        var (lots, fault) = LotsOf(job, book, good, rules, when.Day);
        return fault is null ? (new Writer(job, book, good, when).Write(lots, minutes), null) : (null, fault);
    }

    /// <summary>The lines that take a cut plan back, or why it cannot be, in one sentence.</summary>
    /// <param name="job">The plan, cut.</param>
    /// <param name="book">The book of stock.</param>
    /// <param name="when">Day, and who takes it back.</param>
    public static (CutBooking? Booking, string? Fault) TakeBack(
        CuttingJob job,
        StockBook book,
        (DateOnly Day, string Who) when
    )
    {
        if (job.State != CuttingJobState.Cut)
        {
            return (null, "This plan is not cut yet.");
        }

        var lines = book
            .Lots.SelectMany(a => a.Standing.Select(l => (Account: a, l.Line)))
            .Where(l => l.Line.Note == job.Mark)
            .OrderByDescending(l => l.Line.Id)
            .ToList();
        var gone = lines.FirstOrDefault(l =>
            l.Line.Kind == MovementKind.Made && l.Account.OnHand < l.Line.Amount - l.Account.Rounding
        );
        if (gone.Account is { } used)
        {
            return (null, $"{used.Lot.Id} of this plan has been used since. Take that back first.");
        }

        var back = lines
            .Select(l => Corrections.TakeBack(l.Account, l.Line.Id, when.Day, when.Who, job.Mark).Line)
            .OfType<Movement>();
        return (
            new(
                new([], [.. back]),
                job with
                {
                    State = CuttingJobState.Planned,
                    CutOn = null,
                    CutBy = "",
                    Kept = [],
                    Minutes = [],
                }
            ),
            null
        );
    }

    /// <summary>
    /// The lot of each sheet of the plan; one that was to be bought is taken from what has come since.
    /// </summary>
    private static (ImmutableArray<(string Lot, double Units)> Lots, string? Fault) LotsOf(
        CuttingJob job,
        StockBook book,
        Good good,
        CuttingRules rules,
        DateOnly day
    )
    {
        var sources = job.Sources.ToDictionary(s => s.Stock, StringComparer.Ordinal);
        var rolls = JobTotals.Rolls(job);
        var left = new Dictionary<string, double>(StringComparer.Ordinal);
        var found = ImmutableArray.CreateBuilder<(string, double)>();
        foreach (var sheet in job.Plan.Sheets)
        {
            var source = sources[sheet.Stock];
            var isRoll = rolls.Contains(sheet.Stock);
            var area = SheetSupply.Area((isRoll ? sheet.UsedLength : sheet.Length, sheet.Width));
            var fits = (source.Lot is { } named ? new[] { book.Find(named) } : Came(job, book, sheet, isRoll))
                .OfType<LotAccount>()
                .Where(a => a.Bar(day) is null && a.Lot.Order is null)
                .Select(a =>
                    (
                        Account: a,
                        Units: SheetSupply.UnitsPerSquareMeter(
                            SheetSupply.Sized(a.Lot, a.OnHand, good, rules),
                            good.Unit
                        ) ?? source.UnitsPerSquareMeter
                    )
                )
                .FirstOrDefault(a =>
                    left.GetValueOrDefault(a.Account.Lot.Id, a.Account.OnHand) >= (area * a.Units) - Least
                );
            if (fits.Account is not { } lot)
            {
                return ([], Missing(job, source, sheet, isRoll));
            }

            left[lot.Lot.Id] = left.GetValueOrDefault(lot.Lot.Id, lot.OnHand) - (area * fits.Units);
            found.Add((lot.Lot.Id, fits.Units));
        }

        return (found.ToImmutable(), null);
    }

    private static IEnumerable<LotAccount?> Came(
        CuttingJob job,
        StockBook book,
        CutSheet sheet,
        bool isRoll
    ) =>
        book.LotsOf(job.Good)
            .Where(a =>
                a.HasSome
                && a.Lot.Form == (isRoll ? SheetForm.Roll : SheetForm.Sheets)
                && SheetSupply.IsSame(a.Lot.ThicknessMillimeters, job.Millimeters)
                && Math.Abs((a.Lot.WidthMillimeters ?? 0) - sheet.Width) < 1
                && (isRoll || Math.Abs((a.Lot.LengthMillimeters ?? 0) - sheet.Length) < 1)
            );

    private static string Missing(CuttingJob job, CutSource source, CutSheet sheet, bool isRoll) =>
        source.Kind == CutSourceKind.Buy
            ? $"{(isRoll ? "A roll" : "A sheet")} of {job.Name}, "
                + $"{SheetSupply.SizeWords(sheet.Length, sheet.Width)}, is not here yet. Receive it first."
            : $"{source.Name} does not have enough left. Plan again, or count it.";

    private sealed class Writer(CuttingJob job, StockBook book, Good good, (DateOnly Day, string Who) when)
    {
        private readonly List<string> taken = [.. book.Lots.Select(a => a.Lot.Id)];
        private readonly List<Lot> lots = [];
        private readonly List<Movement> made = [];
        private readonly Dictionary<(string From, string Into), double> uses = [];
        private readonly Dictionary<string, double> lost = new(StringComparer.Ordinal);
        private readonly Dictionary<int, (string Lot, double Amount)> parts = [];

        public CutBooking Write(ImmutableArray<(string Lot, double Units)> from, double minutes)
        {
            var placed = PlacedPiece.Read(job).ToLookup(p => p.Sheet);
            var rolls = JobTotals.Rolls(job);
            var kept = new List<KeptOffcut>();
            for (var i = 0; i < job.Plan.Sheets.Count; i++)
            {
                var sheet = job.Plan.Sheets[i];
                var (lot, units) = from[i];
                var isRoll = rolls.Contains(sheet.Stock);
                var rest = units * SheetSupply.Area((isRoll ? sheet.UsedLength : sheet.Length, sheet.Width));
                foreach (var same in placed[i].GroupBy(p => p.Piece.Order ?? 0))
                {
                    rest -= Part(
                        lot,
                        same.Key,
                        units * same.Sum(p => SheetSupply.Area((p.Place.Length, p.Place.Width)))
                    );
                }

                for (var o = 0; o < sheet.Offcuts.Count; o++)
                {
                    var amount = units * SheetSupply.Area((sheet.Offcuts[o].Length, sheet.Offcuts[o].Width));
                    kept.Add(new(i, o, Keep(lot, sheet.Offcuts[o], amount)));
                    rest -= amount;
                }

                lost[lot] = lost.GetValueOrDefault(lot) + Math.Max(0, rest);
            }

            return new(Step(), Done(kept, minutes));
        }

        private double Part(string from, int order, double amount)
        {
            var (lot, before) = parts.TryGetValue(order, out var known) ? known : (Next(), 0);
            parts[order] = (lot, before + amount);
            uses[(from, lot)] = uses.GetValueOrDefault((from, lot)) + amount;
            return amount;
        }

        private string Keep(string from, Offcut offcut, double amount)
        {
            var lot = Next();
            var area = SheetSupply.Area((offcut.Length, offcut.Width));
            lots.Add(
                new()
                {
                    Id = lot,
                    Good = job.Good,
                    Since = when.Day,
                    Amount = amount,
                    Cost = job.PricePerSquareMeter is { } each
                        ? Math.Round(
                            each * (decimal)(job.OffcutWorth * area),
                            2,
                            MidpointRounding.AwayFromZero
                        )
                        : 0,
                    Form = SheetForm.Offcut,
                    LengthMillimeters = offcut.Length,
                    WidthMillimeters = offcut.Width,
                    ThicknessMillimeters = job.Millimeters,
                    Note = $"left over from {from}, {job.Mark}",
                }
            );
            uses[(from, lot)] = amount;
            made.Add(Line(lot, MovementKind.Made, amount));
            return lot;
        }

        private StockStep Step()
        {
            foreach (var (order, (lot, amount)) in parts)
            {
                lots.Add(
                    new()
                    {
                        Id = lot,
                        Good = job.Good,
                        Since = when.Day,
                        Amount = amount,
                        Order = order > 0 ? order : null,
                        Form = SheetForm.Parts,
                        ThicknessMillimeters = job.Millimeters,
                        Note = string.Create(CultureInfo.InvariantCulture, $"parts of {job.Mark}"),
                    }
                );
                made.Add(Line(lot, MovementKind.Made, amount));
            }

            return new(
                [.. lots],
                [
                    .. uses.Select(u =>
                        Line(u.Key.From, MovementKind.Used, u.Value) with
                        {
                            Into = u.Key.Into,
                        }
                    ),
                    .. lost.Where(l => l.Value > Least)
                        .Select(l => Line(l.Key, MovementKind.Scrapped, l.Value)),
                    .. made,
                ]
            );
        }

        private CuttingJob Done(List<KeptOffcut> kept, double minutes)
        {
            var all = Math.Max(1, job.Pieces.Count);
            Seq<CutMinutes> shares =
                minutes > 0
                    ?
                    [
                        .. job
                            .Pieces.Where(p => p.Order is not null)
                            .GroupBy(p => p.Order!.Value)
                            .Select(g => new CutMinutes(g.Key, Math.Round(minutes * g.Count() / all, 1))),
                    ]
                    : [];
            return job with
            {
                State = CuttingJobState.Cut,
                CutOn = when.Day,
                CutBy = when.Who,
                Kept = [.. kept],
                Minutes = shares,
            };
        }

        private Movement Line(string lot, MovementKind kind, double amount) =>
            new()
            {
                Lot = lot,
                Kind = kind,
                Amount = amount,
                Day = when.Day,
                Who = when.Who,
                Note = job.Mark,
            };

        private string Next()
        {
            var lot = LotNumber.Next(good, taken);
            taken.Add(lot);
            return lot;
        }
    }
}
