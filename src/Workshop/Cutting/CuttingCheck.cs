using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Domain.Cutting;

namespace Litterfall.Workshop.Cutting;

/// <summary>
/// Certifies a cutting plan from the task and the plan alone: the cuts are made one after the other on the
/// raw
/// sheet, and what comes off is compared with what is wanted. It shares nothing with the searches.
/// </summary>
public sealed class CuttingCheck
{
    /// <summary>Lengths closer than this are the same, mm: sizes are hundredths of a millimeter.</summary>
    private const double Close = 0.011;

    private readonly CuttingTask task;
    private readonly CuttingPlan plan;
    private readonly List<string> faults = [];

    private CuttingCheck(CuttingTask task, CuttingPlan plan)
    {
        this.task = task;
        this.plan = plan;
    }

    /// <summary>A piece on the table; the strip it is, if a rest was broken off.</summary>
    private readonly record struct Piece(
        double X,
        double Y,
        double Length,
        double Width,
        bool IsTrim = false
    );

    /// <summary>What is wrong with a plan, a sentence each; empty for a good one.</summary>
    /// <param name="task">What was asked.</param>
    /// <param name="plan">The plan.</param>
    public static ImmutableArray<string> Faults(CuttingTask task, CuttingPlan plan)
    {
        var check = new CuttingCheck(task, plan);
        for (var i = 0; i < plan.Sheets.Count; i++)
        {
            check.Sheet(i + 1, plan.Sheets[i]);
        }

        check.Parts();
        check.Stock();
        check.Value();
        return [.. check.faults];
    }

    private void Sheet(int number, CutSheet sheet)
    {
        var name = string.Create(CultureInfo.InvariantCulture, $"Sheet {number} ({sheet.Stock})");
        if (task.Stock.FirstOrDefault(s => s.Id == sheet.Stock) is not { } stock)
        {
            faults.Add($"{name} is no stock of the task.");
            return;
        }

        if (stock.IsRoll ? sheet.Length > stock.Length + Close : !Same(sheet.Length, stock.Length))
        {
            faults.Add($"{name} is longer than its stock.");
        }

        if (!Same(sheet.Width, stock.Width))
        {
            faults.Add($"{name} is not as wide as its stock.");
        }

        Trim(name, sheet, stock);
        var pieces = Replay(name, sheet, out var lost);
        var left = new List<Piece>(pieces.Where(p => !p.IsTrim));
        foreach (var part in sheet.Parts)
        {
            var found = left.FindIndex(p => IsAt(p, part.X, part.Y, part.Length, part.Width));
            if (found < 0)
            {
                faults.Add($"{name}: the cuts do not give {part.Part} at its place and in its size.");
                continue;
            }

            left.RemoveAt(found);
        }

        Rests(name, sheet, left);
        Area(name, sheet, pieces, lost);
    }

    private void Trim(string name, CutSheet sheet, StockSheet stock)
    {
        var (trimX, trimY) = (stock.IsRoll ? 0 : task.Trim, task.Trim);
        foreach (var part in sheet.Parts)
        {
            if (
                part.X < trimX - Close
                || part.Y < trimY - Close
                || part.X + part.Length > sheet.Length - trimX + Close
                || part.Y + part.Width > sheet.Width - trimY + Close
            )
            {
                faults.Add($"{name}: {part.Part} lies in the trim.");
            }
        }
    }

    /// <summary>Makes every cut; a cut goes from edge to edge of one piece.</summary>
    private List<Piece> Replay(string name, CutSheet sheet, out double lost)
    {
        lost = 0;
        var pieces = new List<Piece> { new(0, 0, sheet.Length, sheet.Width) };
        for (var c = 0; c < sheet.Cuts.Count; c++)
        {
            var cut = sheet.Cuts[c];
            if (IsRollEnd(sheet, cut))
            {
                continue;
            }

            var found = pieces.FindIndex(p => Crosses(p, cut));
            if (found < 0)
            {
                faults.Add(
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"{name}: cut {c + 1} does not go from edge to edge of one piece."
                    )
                );
                continue;
            }

            var piece = pieces[found];
            var beyond = cut.IsUpright ? piece.X + piece.Length - cut.At : piece.Y + piece.Width - cut.At;
            // The blade may run past the edge: only what lies on the piece is lost.
            lost += cut.Stage == 0 ? 0 : Math.Min(task.Kerf, beyond) * (cut.To - cut.From);
            pieces.RemoveAt(found);
            pieces.InsertRange(found, Parted(piece, cut, sheet));
        }

        return pieces;
    }

    private static bool IsRollEnd(CutSheet sheet, CutLine cut) =>
        cut.Stage == 0 && cut.IsUpright && Same(cut.At, sheet.Length);

    private static bool Crosses(Piece piece, CutLine cut)
    {
        var (along, length, across, width) = cut.IsUpright
            ? (piece.Y, piece.Width, piece.X, piece.Length)
            : (piece.X, piece.Length, piece.Y, piece.Width);
        return !piece.IsTrim
            && Same(along, cut.From)
            && Same(along + length, cut.To)
            && cut.At > across + Close
            && cut.At < across + width - Close / 100;
    }

    private IEnumerable<Piece> Parted(Piece piece, CutLine cut, CutSheet sheet)
    {
        // What is trimmed off has its kerf in it.
        var kerf = cut.Stage == 0 ? 0 : task.Kerf;
        var middle = cut.IsUpright ? sheet.Length / 2 : sheet.Width / 2;
        var isTrimBefore = cut.Stage == 0 && cut.At < middle;
        var isTrimBeyond = cut.Stage == 0 && cut.At >= middle;
        if (cut.IsUpright)
        {
            yield return piece with
            {
                Length = cut.At - piece.X,
                IsTrim = isTrimBefore,
            };
            var rest = piece.X + piece.Length - cut.At - kerf;
            if (rest > Close / 100)
            {
                yield return piece with
                {
                    X = cut.At + kerf,
                    Length = rest,
                    IsTrim = isTrimBeyond,
                };
            }
        }
        else
        {
            yield return piece with
            {
                Width = cut.At - piece.Y,
                IsTrim = isTrimBefore,
            };
            var rest = piece.Y + piece.Width - cut.At - kerf;
            if (rest > Close / 100)
            {
                yield return piece with
                {
                    Y = cut.At + kerf,
                    Width = rest,
                    IsTrim = isTrimBeyond,
                };
            }
        }
    }

    private void Rests(string name, CutSheet sheet, List<Piece> left)
    {
        foreach (var rest in sheet.Offcuts)
        {
            var found = left.FindIndex(p => IsAt(p, rest.X, rest.Y, rest.Length, rest.Width));
            if (found < 0)
            {
                faults.Add($"{name}: an offcut does not come off.");
            }
            else if (
                Math.Min(rest.Length, rest.Width) < task.OffcutShort - Close
                || Math.Max(rest.Length, rest.Width) < task.OffcutLong - Close
            )
            {
                faults.Add($"{name}: an offcut is too small to keep.");
            }
        }

        if (
            task.NarrowestStrip > 0
            && left.Any(p => Math.Min(p.Length, p.Width) < task.NarrowestStrip - Close)
        )
        {
            faults.Add($"{name}: a strip is too narrow to break off.");
        }

        Stages(name, sheet, left);
    }

    /// <summary>Stages that part the parts; cutting a part free in the last one is not counted.</summary>
    private void Stages(string name, CutSheet sheet, List<Piece> left)
    {
        if (task.Stages is not { } most)
        {
            return;
        }

        if (sheet.Cuts.Any(c => c.Stage > most + 1))
        {
            faults.Add($"{name} has too many stages of cuts.");
        }

        var beyond = sheet.Cuts.Where(c => c.Stage == most + 1);
        if (beyond.Any(c => !left.Any(p => Touches(p, c))))
        {
            faults.Add($"{name}: a cut beyond the last stage does not free a part of a rest.");
        }
    }

    private bool Touches(Piece rest, CutLine cut) =>
        cut.IsUpright
            ? Same(rest.X, cut.At + task.Kerf) && Same(rest.Y, cut.From)
            : Same(rest.Y, cut.At + task.Kerf) && Same(rest.X, cut.From);

    /// <summary>Parts, kerfs, trim and rests are the whole sheet.</summary>
    private void Area(string name, CutSheet sheet, List<Piece> pieces, double lost)
    {
        var whole = sheet.Length * sheet.Width;
        if (Math.Abs(pieces.Sum(p => p.Length * p.Width) + lost - whole) > 1e-6 * whole + Close)
        {
            faults.Add($"{name}: what comes off and the kerfs are not the whole sheet.");
        }
    }

    private void Parts()
    {
        var placed = plan.Sheets.SelectMany(s => s.Parts).ToLookup(p => p.Part, StringComparer.Ordinal);
        foreach (var part in task.Parts)
        {
            var own = placed[part.Id].ToList();
            foreach (var one in own)
            {
                var (length, width) = one.IsTurned ? (part.Width, part.Length) : (part.Length, part.Width);
                if (!Same(one.Length, length) || !Same(one.Width, width))
                {
                    faults.Add($"{part.Id} is not cut to its size.");
                }

                if (one.IsTurned && !part.MayTurn && !Same(part.Length, part.Width))
                {
                    faults.Add($"{part.Id} is turned and may not be.");
                }
            }

            if (task.Goal == CuttingGoal.LeastStock && own.Count != part.Count)
            {
                faults.Add($"{part.Id} is cut {Times(own.Count)}, wanted {Times(part.Count ?? 0)}.");
            }
            else if (own.Count > (part.Count ?? int.MaxValue))
            {
                faults.Add(
                    $"{part.Id} is cut {Times(own.Count)}, at most {Times(part.Count!.Value)} are wanted."
                );
            }
        }

        foreach (var stranger in placed.Where(p => task.Parts.All(t => t.Id != p.Key)))
        {
            faults.Add($"{stranger.Key} is no part of the task.");
        }
    }

    private void Stock()
    {
        foreach (var stock in task.Stock)
        {
            var used = plan.Sheets.Count(s => s.Stock == stock.Id);
            if (used > (stock.Count ?? int.MaxValue))
            {
                faults.Add($"{stock.Id} is used {Times(used)}, there are {Times(stock.Count!.Value)}.");
            }
        }

        if (task.Goal == CuttingGoal.MostValue && plan.Sheets.Count != 1)
        {
            faults.Add("Most value is asked of one sheet.");
        }
    }

    private void Value()
    {
        var value =
            task.Goal == CuttingGoal.MostValue
                ? plan.Sheets.SelectMany(s => s.Parts).Sum(Worth)
                : plan.Sheets.Sum(Cost);
        var slack = 1e-6 * Math.Max(1, Math.Abs(value));
        if (Math.Abs(value - plan.Value) > slack)
        {
            faults.Add("The value of the plan is not that of its sheets.");
        }

        var isBeyond =
            task.Goal == CuttingGoal.MostValue
                ? plan.Bound < plan.Value - slack
                : plan.Bound > plan.Value + slack;
        if (isBeyond)
        {
            faults.Add("The plan is better than its bound.");
        }

        if (plan.IsProved && Math.Abs(plan.Bound - plan.Value) > slack)
        {
            faults.Add("The plan is called proved, and its bound is another.");
        }
    }

    private double Worth(PlacedPart placed) =>
        task.Parts.FirstOrDefault(p => p.Id == placed.Part) is { } part
            ? part.Value ?? part.Length * part.Width
            : 0;

    private double Cost(CutSheet sheet)
    {
        var stock = task.Stock.FirstOrDefault(s => s.Id == sheet.Stock);
        return CuttingValue.IsMoney(task)
            ? stock?.IsRoll == true
                ? (double)(stock.PricePerMeter ?? 0) * sheet.Length / 1000
                : (double)(stock?.Price ?? 0)
            : CuttingValue.IsLength(task)
                ? sheet.Length
                : 1;
    }

    private static bool IsAt(Piece piece, double x, double y, double length, double width) =>
        Same(piece.X, x) && Same(piece.Y, y) && Same(piece.Length, length) && Same(piece.Width, width);

    private static bool Same(double a, double b) => Math.Abs(a - b) <= Close;

    private static string Times(int count) =>
        count == 1 ? "once" : string.Create(CultureInfo.InvariantCulture, $"{count} times");
}
