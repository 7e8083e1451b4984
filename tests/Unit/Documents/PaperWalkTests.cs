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

    /// <summary>The same designs in every run; others, and with all their air and lamps, in a long one.
    /// </summary>
    [Fact]
    public void No_page_of_a_random_design_does()
    {
        var faults = new ConcurrentBag<string>();
        if (LongRun.IsAsked)
        {
            RandomFittings.All.Sample(Look, iter: 3000);
        }
        else
        {
            var dice = new PCG(7, 4021);
            var designs = Enumerable
                .Range(0, 16)
                .Select(_ => RandomFittings.Quick.Generate(dice, null, out var _));
            Parallel.ForEach(designs.ToArray(), Look);
        }

        var told = faults.Distinct(StringComparer.Ordinal).Order(StringComparer.Ordinal).ToArray();
        Assert.True(told.Length == 0, $"{told.Length}\n" + string.Join('\n', told.Take(200)));

        void Look(CheckedDesign design)
        {
            foreach (var fault in Faults(new WrittenPapers(Job(design))))
            {
                faults.Add(fault);
            }
        }
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
