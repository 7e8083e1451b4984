using System.Globalization;
using Litterfall.Domain.Checking;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Findings;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.Crew;

/// <summary>As many more of a crew as a finding misses.</summary>
internal static class CrewFix
{
    /// <summary>The fix; null where none are missing.</summary>
    public static DesignFix? More(Finding finding, CheckedDesign design)
    {
        var document = design.Document;
        if (
            FixEdit.Index(finding) is not { } crew
            || FixEdit.Times(finding) is not > 1
            || document.Design.Crew.Count <= crew
        )
        {
            return null;
        }

        var count = Math.Ceiling(document.Design.Crew[crew].Count * FixEdit.Times(finding)!.Value);
        return DesignFix.From(
            string.Create(
                CultureInfo.InvariantCulture,
                $"{count:0} {FixEdit.Named(design, $"crew[{crew}].animal")}"
            ),
            DesignEdits.Set(
                document,
                string.Create(CultureInfo.InvariantCulture, $"crew[{crew}].count"),
                count.ToString("0", CultureInfo.InvariantCulture)
            )
        );
    }
}
