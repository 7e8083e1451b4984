using System.Text;
using Litterfall.Documents.Papers;

namespace Litterfall.Documents.Text;

/// <summary>What was written, and the findings, as text.</summary>
public static class PapersText
{
    /// <summary>Files first, then the findings as in a check.</summary>
    public static string Write(
        PaperJob job,
        string folder,
        IReadOnlyList<PaperFile> papers,
        IReadOnlyList<string> others
    )
    {
        var text = new StringBuilder();
        text.Append(Terminal.Clean(job.Numbers.Design.Design.Name)).Append("\n\n");
        CheckText.Findings(text, job.Result);
        text.Append("Papers of tank ").Append(job.Tank).Append(" in ").Append(Terminal.Clean(folder));
        text.Append('\n');
        foreach (var paper in papers)
        {
            text.Append("  ").Append(paper.Name).Append('\n');
        }

        if (job.Plan.Note is { } note)
        {
            text.Append('\n').Append(Terminal.Wrapped(note, ""));
        }

        if (others.Count > 0)
        {
            text.Append("\nOther files in the folder, not from this run: ")
                .Append(Terminal.Clean(string.Join(", ", others)))
                .Append('\n');
        }

        return text.ToString();
    }
}
