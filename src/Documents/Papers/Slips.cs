using System.Globalization;
using Litterfall.Documents.Drawings;
using Litterfall.Documents.Layout;
using Litterfall.Domain.Figures;

namespace Litterfall.Documents.Papers;

/// <summary>
/// The slips: where each number of the check comes from, as many sheets as it takes. Written only when asked
/// for, since the bench does not need them.
/// </summary>
internal static class Slips
{
    private static readonly Style Small = new(9, 0.6);

    public static PaperFile Write(PaperJob job)
    {
        var blocks = job
            .Result.Report.Leaves()
            .Where(leaf => leaf.Node is ReportNumber)
            .Select(Block (leaf) => Slip(leaf.Path, (ReportNumber)leaf.Node))
            .ToList();
        return job.Pdf("10-slips.pdf", "Slips", Pages(job, blocks));
    }

    private static IEnumerable<Drawing> Pages(PaperJob job, List<Block> blocks)
    {
        var rooms = Flow.Columns(PageFrame.Inside(job.Wish.Size), 2);
        for (var (done, page) = (0, 1); done < blocks.Count; page++)
        {
            var rest = blocks.GetRange(done, blocks.Count - done);
            var head = job.Head(
                "Slips",
                FormattableString.Invariant($"Where each number comes from, sheet {page}")
            );
            var sketch = PageFrame.Framed(job.Wish.Size, head);
            done += Math.Max(1, Flow.Set(rest, rooms, Small, sketch));
            yield return sketch.Done(job.Wish.Size.Width, job.Wish.Size.Height);
        }
    }

    private static Words Slip(string path, ReportNumber number)
    {
        var figure = number.Figure;
        var equation = figure.IsGiven ? figure.Remark ?? "given" : figure.Equation;
        return new Words(
            string.Create(
                CultureInfo.InvariantCulture,
                $"{path} = {number.Number:0.####}{Unit(number)}: {equation} [{figure.Origin.Source}, "
                    + $"{figure.Origin.Place}, {figure.Trust.Spoken()}]"
            )
        )
        {
            MostLines = 8,
        };
    }

    private static string Unit(ReportNumber number) =>
        number.Unit.Symbol == "1" ? "" : $" {number.Unit.Symbol}";
}
