using System.Collections.Immutable;
using Litterfall.Domain.Cutting;
using Litterfall.Workshop.Cutting.Trees;

namespace Litterfall.Workshop.Cutting;

/// <summary>
/// A cutting task in whole numbers. Each part and each sheet carry one kerf on both edges; with that, cuts of
/// no width give the same plans, because every piece but the last takes its kerf from its neighbor and the
/// last one runs past the edge (Beasley 1985 for cuts without kerf; own derivation for the kerf).
/// Sizes are hundredths of a millimeter: parts rounded up, sheets down.
/// </summary>
internal sealed class GridTask
{
    private const double PerMillimeter = 100;
    private const double Rounding = 1e-6;

    private GridTask(CuttingTask task, int unit)
    {
        Task = task;
        Unit = unit;
        Kerf = Up(task.Kerf) / unit;
        Strip = task.NarrowestStrip > 0 ? (Up(task.NarrowestStrip) + Up(task.Kerf) + unit - 1) / unit : 0;
        Sheets = [.. task.Stock.Select((_, i) => SheetOf(i)).Where(s => s.Length > Kerf && s.Width > Kerf)];
        Parts = PartsOf();
    }

    /// <summary>The task.</summary>
    public CuttingTask Task { get; }

    /// <summary>Hundredths of a millimeter of one grid unit.</summary>
    public int Unit { get; }

    /// <summary>Kerf, grid units.</summary>
    public int Kerf { get; }

    /// <summary>Narrowest strip with its kerf that can be broken off, grid units; 0 where any can.</summary>
    public int Strip { get; }

    /// <summary>Sheets.</summary>
    public ImmutableArray<GridSheet> Sheets { get; }

    /// <summary>Kinds of parts.</summary>
    public ImmutableArray<GridPart> Parts { get; }

    /// <summary>True where values and counts are whole, so that bounds may be rounded.</summary>
    public bool IsWhole => Parts.All(p => Math.Abs(p.Value - Math.Round(p.Value)) < Rounding);

    /// <summary>The task on the coarsest grid on which it is exact.</summary>
    public static GridTask From(CuttingTask task)
    {
        var unit = 0;
        var kerf = Up(task.Kerf);
        foreach (var sheet in task.Stock)
        {
            var trim = Up(task.Trim);
            unit = Divisor(unit, Down(sheet.Length) - (sheet.IsRoll ? 0 : 2 * trim) + kerf);
            unit = Divisor(unit, Down(sheet.Width) - 2 * trim + kerf);
        }

        foreach (var part in task.Parts)
        {
            unit = Divisor(unit, Up(part.Length) + kerf);
            unit = Divisor(unit, Up(part.Width) + kerf);
        }

        unit = Divisor(unit, kerf);
        return new(task, Math.Max(1, unit));
    }

    /// <summary>Grid units as millimeters.</summary>
    public double Millimeters(int units) => units * (long)Unit / PerMillimeter;

    /// <summary>Trim of the stock's edge along x and along y, millimeters.</summary>
    public (double X, double Y) Trim(int stock) => (Task.Stock[stock].IsRoll ? 0 : Task.Trim, Task.Trim);

    private GridSheet SheetOf(int index)
    {
        var stock = Task.Stock[index];
        var trim = Up(Task.Trim);
        var kerf = Up(Task.Kerf);
        return new(
            index,
            (Down(stock.Length) - (stock.IsRoll ? 0 : 2 * trim) + kerf) / Unit,
            (Down(stock.Width) - 2 * trim + kerf) / Unit,
            stock.Count ?? GridSheet.Unlimited,
            CostOf(stock)
        );
    }

    private double CostOf(StockSheet stock) =>
        !CuttingValue.IsMoney(Task) ? 1
        : stock.IsRoll ? (double)(stock.PricePerMeter ?? 0) * stock.Length / 1000
        : (double)(stock.Price ?? 0);

    private ImmutableArray<GridPart> PartsOf() =>
        [
            .. Task
                .Parts.Select((part, i) => (Part: Kind(part), i))
                .GroupBy(p => p.Part)
                .Select(g => new GridPart(
                    g.Key.Length,
                    g.Key.Width,
                    g.Any(p => Task.Parts[p.i].Count is null)
                        ? GridSheet.Unlimited
                        : g.Sum(p => Task.Parts[p.i].Count!.Value),
                    g.Key.MayTurn,
                    g.Key.Value
                )
                {
                    Demands = [.. g.Select(p => (p.i, Task.Parts[p.i].Count ?? GridSheet.Unlimited))],
                })
                .Where(p => p.Count > 0),
        ];

    private (int Length, int Width, bool MayTurn, double Value) Kind(CutDemand part)
    {
        var kerf = Up(Task.Kerf);
        var length = (Up(part.Length) + kerf) / Unit;
        var width = (Up(part.Width) + kerf) / Unit;
        var value = part.Value ?? part.Length * part.Width;
        return (length, width, part.MayTurn && length != width, value);
    }

    private static int Up(double millimeters) => (int)Math.Ceiling(millimeters * PerMillimeter - Rounding);

    private static int Down(double millimeters) => (int)Math.Floor(millimeters * PerMillimeter + Rounding);

    private static int Divisor(int a, int b)
    {
        (a, b) = (Math.Abs(a), Math.Abs(b));
        while (b != 0)
        {
            (a, b) = (b, a % b);
        }

        return a;
    }
}
