using Litterfall.Planning.Buying;

namespace Litterfall.Documents.Papers;

/// <summary>All papers of a design, by name and in order.</summary>
public static class PaperList
{
    /// <summary>Writes them; the same design and wish give the same bytes.</summary>
    public static IEnumerable<PaperFile> Write(PaperJob job)
    {
        var shopping = ShoppingList.Of(job.Numbers);
        return
        [
            BuildSheet.Write(job),
            StepCards.Write(job),
            .. CutPapers.Write(job),
            ListPapers.Shopping(job, shopping),
            ListPapers.Calendar(job),
            .. CarePapers.Sheets(job),
            CarePapers.Cautions(job),
            CarePapers.Passport(job),
            .. DrawingFiles.Write(job),
        ];
    }
}
