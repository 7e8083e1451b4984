using System.Globalization;
using Litterfall.Domain.Cutting;
using Litterfall.Workshop.CuttingRoom;

namespace Litterfall.Web.Shop.Cutting;

/// <summary>Cutting plans in plain words.</summary>
public static class CuttingWords
{
    private static readonly CultureInfo Culture = CultureInfo.InvariantCulture;

    /// <summary>"1 sheet", "3 sheets".</summary>
    public static string Count(int count, string one) =>
        count == 1 ? $"1 {one}" : string.Create(Culture, $"{count} {one}s");

    /// <summary>"1200 × 600 mm".</summary>
    public static string Size(double length, double width) =>
        string.Create(Culture, $"{length:0.#} × {width:0.#} mm");

    /// <summary>How good a plan is, in a sentence.</summary>
    /// <param name="plan">The plan.</param>
    public static string Proof(CuttingPlan plan)
    {
        if (plan.IsProved)
        {
            return "Proved: no plan takes less material.";
        }

        var above = plan.Bound > 0 ? 100 * (plan.Value - plan.Bound) / plan.Bound : 0;
        return above < 0.05
            ? "No plan takes noticeably less material."
            : string.Create(Culture, $"At most {above:0.#} % above the least possible; not proved.");
    }

    /// <summary>How a search stands, in a sentence.</summary>
    /// <param name="run">The search.</param>
    public static string Progress(CuttingRun run) =>
        run is { Best: { } best, Draft: { } draft }
            ? string.Create(
                Culture,
                $"Best so far: {Count(best.Sheets.Count, "sheet")}, {Waste(best, draft):0} % waste. "
                    + $"{Proof(best)}"
            )
            : "Looking for a first plan…";

    /// <summary>What a plan is of, in a sentence.</summary>
    /// <param name="job">The plan.</param>
    public static string Summary(CuttingJob job)
    {
        var totals = JobTotals.Read(job);
        return job.Plan.Sheets.Count == 0
            ? $"{Count(job.Pieces.Count, "part")} cut by hand"
            : string.Create(
                Culture,
                $"{Count(job.Pieces.Count, "part")} from {From(totals)}, "
                    + $"{totals.WastePercent:0} % waste"
            );
    }

    private static string From(JobTotals totals)
    {
        var sheets = totals.Pull.Where(p => !p.IsRoll).Sum(p => p.Sheets);
        var roll = totals.Pull.Where(p => p.IsRoll).Sum(p => p.Length);
        var meters = string.Create(Culture, $"{roll / 1000:0.00} m of roll");
        return roll == 0 ? Count(sheets, "sheet")
            : sheets == 0 ? meters
            : $"{Count(sheets, "sheet")} and {meters}";
    }

    /// <summary>State of a plan in a word.</summary>
    public static string State(CuttingJobState state) =>
        state switch
        {
            CuttingJobState.Planned => "to cut",
            CuttingJobState.Cut => "cut",
            _ => "given up",
        };

    /// <summary>How much is pulled: "2 sheets", "1.32 m".</summary>
    /// <param name="pulled">What is pulled.</param>
    public static string HowMany(Pulled pulled) =>
        pulled.IsRoll
            ? string.Create(Culture, $"{pulled.Length / 1000:0.00#} m")
            : Count(pulled.Sheets, pulled.Source.Kind == CutSourceKind.Offcut ? "offcut" : "sheet");

    /// <summary>What a material can be cut from, in a line.</summary>
    /// <param name="supply">Sheets, rolls and offcuts.</param>
    public static string Supply(IEnumerable<SheetSupply> supply) =>
        string.Join(
            "; ",
            supply.Select(s =>
                s.Source.Kind switch
                {
                    CutSourceKind.Roll => string.Create(
                        Culture,
                        $"{s.Source.Name}, {s.Sheet.Length / 1000:0.00} m left, {s.Sheet.Width:0.#} mm wide"
                    ),
                    CutSourceKind.Buy => $"can be bought: {s.Source.Name}",
                    CutSourceKind.Offcut => $"{s.Source.Name} {Size(s.Sheet.Length, s.Sheet.Width)}",
                    _ => $"{Count(s.Sheet.Count ?? 0, "sheet")} {Size(s.Sheet.Length, s.Sheet.Width)} "
                        + $"({s.Source.Lot})",
                }
            )
        );

    private static double Waste(CuttingPlan plan, TaskDraft draft)
    {
        var rolls = draft.Task.Stock.Where(s => s.IsRoll).Select(s => s.Id).ToHashSet(StringComparer.Ordinal);
        var areas = plan.Sheets.Select(s => SheetAreas.Read(s, draft.Task, rolls.Contains(s.Stock))).ToList();
        var cut = areas.Sum(a => a.Whole - a.Offcuts);
        return cut > 0 ? 100 * areas.Sum(a => a.Lost) / cut : 0;
    }
}
