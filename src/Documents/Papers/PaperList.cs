using Litterfall.Documents.Calendar;
using Litterfall.Documents.Tables;
using Litterfall.Instructions.Buying;

namespace Litterfall.Documents.Papers;

/// <summary>All papers of a design, by name and in order.</summary>
public static class PaperList
{
    /// <summary>Writes them; the same design and wish give the same bytes.</summary>
    /// <param name="job">What they are written from.</param>
    /// <param name="progress">Told how many of how many kinds of paper are written.</param>
    /// <param name="cancel">Cancels between papers.</param>
    public static IReadOnlyList<PaperFile> Write(
        PaperJob job,
        Action<int, int>? progress = null,
        CancellationToken cancel = default
    )
    {
        var files = new List<PaperFile>();
        var parts = Parts(job).ToList();
        for (var i = 0; i < parts.Count; i++)
        {
            cancel.ThrowIfCancellationRequested();
            progress?.Invoke(i, parts.Count);
            files.AddRange(parts[i]());
        }

        return files;
    }

    private static IEnumerable<Func<IEnumerable<PaperFile>>> Parts(PaperJob job)
    {
        var style = job.Wish.DecimalComma ? CsvStyle.Semicolon : CsvStyle.Invariant;
        var shopping = ShoppingList.Of(job.Numbers);
        return
        [
            () => [BuildSheet.Write(job)],
            () => job.Steps.IsEmpty ? [] : [StepCards.Write(job)],
            () => CutPapers.Write(job),
            () => job.Told.IsRunning ? [] : [ListPapers.Shopping(job, shopping)],
            () =>
                job.Told.IsRunning
                    ? []
                    : [new PaperFile("05-shopping-list.csv", ShoppingTable.Write(shopping, style))],
            () => [new PaperFile("03-cut-list.csv", CutTable.Write(job.Numbers, style))],
            () => [ListPapers.Calendar(job)],
            () =>
                [
                    new PaperFile(
                        "06-calendar.ics",
                        CalendarFile.Write(job.Plan, job.Tank, job.Numbers.Design.Design.Name)
                    ),
                    new PaperFile("06-calendar.csv", CareDateTable.Write(job.Plan, job.Tank, style)),
                ],
            () => CarePapers.Sheets(job),
            () => [CarePapers.Cautions(job)],
            () => [CarePapers.Passport(job), TankLabels.Write(job)],
            () => SettingsPaper.Write(job),
            () => LightPaper.Write(job),
            () => EquipmentPaper.Write(job),
            () => job.Wish.Slips ? [Slips.Write(job)] : [],
            () => DrawingFiles.Write(job),
            () => DrawingFiles.Light(job),
        ];
    }
}
