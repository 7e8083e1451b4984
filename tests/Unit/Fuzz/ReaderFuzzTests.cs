using Litterfall.App.Files;
using Litterfall.Domain.Checking;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Faults;
using Litterfall.Forecasting;
using Litterfall.Judging;
using Litterfall.UnitTests.House;
using Xunit;

namespace Litterfall.UnitTests.Fuzz;

/// <summary>
/// Samples with random damage: the reader understands or says where and what, and whatever it accepts can
/// be computed. Seeded, so a failure comes back.
/// </summary>
public sealed class ReaderFuzzTests
{
    private static readonly int DamagedCopies = LongRun.Cases(100, 400);
    private const string Signs = "{}[],:-#'\"|>&*!%@`\\ \t\n0123456789.½acmiqtLF\u0007\u00e9";

    [Theory]
    [MemberData(nameof(Samples))]
    public void DamagedSamplesAreExplainedOrComputed(string sample)
    {
        var text = File.ReadAllText(Path.Combine(SampleFolder(), sample));
        var catalog = Shop.Catalog(null).Value!;
        var random = new Random(sample.Sum(c => c));
        for (var i = 0; i < DamagedCopies; i++)
        {
            var damaged = Damaged(text, random);
            var reading = DesignReader.Read(sample, damaged);
            Assert.NotEqual(reading.IsGood, reading.Faults.Count > 0);
            Assert.All(reading.Faults, fault => Explained(fault, damaged));
            if (reading.IsGood && DesignChecker.Check(reading.Value!, catalog) is { IsGood: true } design)
            {
                var shape = DesignNumbers.Shape(design.Value!);
                var report = LongRun.IsAsked
                    ? DesignRun.Execute(design.Value!, TestContext.Current.CancellationToken).Report
                    : CheckReport.Write(shape, RuleBook.Judge(shape, TestContext.Current.CancellationToken));
                Assert.NotEmpty(report.Members);
            }
        }
    }

    public static TheoryData<string> Samples() =>
        new(Directory.EnumerateFiles(SampleFolder(), "*.viv.yaml").Select(f => Path.GetFileName(f)!).Order());

    private static void Explained(TextFault fault, string text)
    {
        Assert.InRange(fault.Line, 1, text.Count(c => c == '\n') + 2);
        Assert.True(fault.Column >= 1);
        Assert.NotEmpty(fault.Message);
        Assert.NotEmpty(fault.Expected);
    }

    /// <summary>One to four cuts, insertions or swaps.</summary>
    private static string Damaged(string text, Random random)
    {
        for (var edits = random.Next(1, 5); edits > 0; edits--)
        {
            var at = random.Next(text.Length);
            var length = Math.Min(random.Next(1, 12), text.Length - at);
            text = random.Next(4) switch
            {
                0 => text.Remove(at, length),
                1 => text.Insert(at, Signs[random.Next(Signs.Length)].ToString()),
                2 => text[..at],
                _ => text.Insert(at, text.Substring(random.Next(text.Length - length), length)),
            };
            text = text.Length == 0 ? "x" : text;
        }

        return text;
    }

    private static string SampleFolder() => SourceTree.Path("samples");
}
