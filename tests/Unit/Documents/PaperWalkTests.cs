using System.Collections.Concurrent;
using CsCheck;
using Litterfall.Documents.Layout;
using Litterfall.Documents.Papers;
using Litterfall.Domain.Checking;
using Litterfall.Judging;
using Litterfall.UnitTests.Domain;
using Litterfall.UnitTests.House;

namespace Litterfall.UnitTests.Documents;

/// <summary>A walk over every page of every paper, of the samples and of random designs.</summary>
public sealed class PaperWalkTests
{
    public static TheoryData<string> Samples => [.. SampleFiles.Paths];

    [Theory]
    [MemberData(nameof(Samples))]
    public void No_page_of_a_sample_cuts_strikes_or_covers_a_word(string sample)
    {
        var faults = Faults(SamplePapers.Of(sample)).ToArray();
        Assert.True(faults.Length == 0, string.Join('\n', faults));
    }

    [Fact]
    public void No_page_of_a_random_design_does()
    {
        var faults = new ConcurrentBag<string>();
        (LongRun.IsAsked ? RandomFittings.All : RandomFittings.Quick).Sample(
            design =>
            {
                foreach (var fault in Faults(new WrittenPapers(Job(design))))
                {
                    faults.Add(fault);
                }
            },
            iter: LongRun.Cases(300, 3000)
        );
        var told = faults.Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal).ToArray();
        Assert.True(told.Length == 0, $"{told.Length}\n" + string.Join('\n', told.Take(200)));
    }

    private static PaperJob Job(CheckedDesign design) =>
        new(DesignRun.Execute(design), SamplePapers.Wish(PaperSize.A4), null);

    private static IEnumerable<string> Faults(WrittenPapers papers) =>
        papers
            .Files.SelectMany(f =>
                f.Pages.SelectMany(page => PageFaults.Of(page).Select(w => $"{f.Name}: {w}"))
            )
            .Distinct(StringComparer.Ordinal);
}
