using Litterfall.Documents.Layout;
using Litterfall.Documents.Papers;
using Litterfall.Domain.Checking;
using Litterfall.Domain.DesignFile;
using Litterfall.Forecasting;
using Litterfall.Judging;
using Litterfall.Judging.Levers;
using Litterfall.UnitTests.House;

namespace Litterfall.UnitTests.Documents;

/// <summary>What the maker notes is printed, all of it.</summary>
public sealed class NotesTests
{
    [Fact]
    public void Every_note_is_on_the_build_sheet()
    {
        var notes = Enumerable
            .Range(1, 40)
            .Select(i => $"note number {i}: hinge <left> & \"brass\"")
            .ToList();
        var sample = SampleFiles.Read("samples/ld-201-flat.viv.yaml");
        var noted = DesignEdits.SetList(sample, "notes", notes);
        Assert.True(noted.IsGood, string.Join('\n', noted.Faults));
        var design = DesignChecker.Check(noted.Value!, SampleFiles.Catalog).Value!;
        var result = DesignRun.Execute(new DesignNumbers(design), TestContext.Current.CancellationToken);
        var papers = PaperList.Write(
            new PaperJob(result, SamplePapers.Wish(PaperSize.A4), SettingsCard.Of(result.Numbers)),
            cancel: TestContext.Current.CancellationToken
        );
        var sheet = papers.Single(p => p.Name == "01-build-sheet.pdf");
        var text = string.Join(' ', sheet.Pages.Select(WrittenPapers.Text));
        foreach (var note in notes)
        {
            Assert.Contains(note, text, StringComparison.Ordinal);
        }
    }
}
