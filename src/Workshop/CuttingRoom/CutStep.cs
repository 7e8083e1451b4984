using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Domain.Cutting;

namespace Litterfall.Workshop.CuttingRoom;

/// <summary>One cut of a sheet in its turn.</summary>
/// <param name="Number">Its turn, from 1.</param>
/// <param name="Line">Where it goes.</param>
/// <param name="Words">In words, measured from the corner of the raw sheet.</param>
public sealed record CutStep(int Number, CutLine Line, string Words)
{
    private const double Slack = 0.05;

    /// <summary>The cuts of a sheet in cutting order.</summary>
    /// <param name="sheet">The sheet.</param>
    /// <param name="task">How it is cut.</param>
    /// <param name="isRoll">True for a roll.</param>
    public static ImmutableArray<CutStep> Read(CutSheet sheet, CuttingTask task, bool isRoll)
    {
        var steps = ImmutableArray.CreateBuilder<CutStep>();
        for (var i = 0; i < sheet.Cuts.Count; i++)
        {
            var cut = sheet.Cuts[i];
            var side = isRoll && cut.IsUpright ? 0 : task.Trim;
            var start = sheet
                .Cuts.Take(i)
                .Where(c =>
                    c.IsUpright == cut.IsUpright && c.From < cut.To - Slack && c.To > cut.From + Slack
                )
                .Select(c => c.Stage == 0 ? c.At : c.At + task.Kerf)
                .Where(at => at < cut.At - Slack)
                .DefaultIfEmpty(side)
                .Max();
            steps.Add(new(i + 1, cut, Tell(i + 1, cut, start, sheet)));
        }

        return steps.ToImmutable();
    }

    private static string Tell(int number, CutLine cut, double start, CutSheet sheet)
    {
        var (across, edge, other, whole) = cut.IsUpright
            ? ("across", "left", "lower", sheet.Width)
            : ("along", "lower", "left", sheet.Length);
        var where = string.Create(
            CultureInfo.InvariantCulture,
            $"cut {number}: {(cut.Stage == 0 ? "trim " : "")}{across} at {cut.At:0.#} mm from the {edge} edge"
        );
        var isPart = cut.From > whole * 0.03 || cut.To < whole * 0.97;
        var span = isPart
            ? string.Create(
                CultureInfo.InvariantCulture,
                $", from {cut.From:0.#} to {cut.To:0.#} mm of the {other} edge"
            )
            : "";
        var piece =
            cut.Stage > 0 && start > Slack
                ? string.Create(CultureInfo.InvariantCulture, $"; the piece is {cut.At - start:0.#} mm")
                : "";
        return where + span + piece;
    }
}
