using System.Globalization;
using System.Text.RegularExpressions;
using Litterfall.Domain;
using Litterfall.Instructions.Care;
using Litterfall.UnitTests.House;

namespace Litterfall.UnitTests.Documents;

/// <summary>A number that stands on two papers is the same number.</summary>
public sealed partial class OneTruthTests
{
    private static readonly string[] Mist = ["01-", "02-", "06-", "09-", "10-"];

    public static TheoryData<string> Samples => [.. SampleFiles.Paths];

    /// <summary>
    /// Every "07:30 for 20 s" and every "mL a day" of misting, collected from every paper: the seconds of the
    /// design, beside them the advised ones, and nozzles × flow × seconds of both.
    /// </summary>
    [Theory]
    [MemberData(nameof(Samples))]
    public void Misting_is_the_same_on_every_paper(string sample)
    {
        var papers = SamplePapers.Of(sample);
        if (papers.Job.Numbers.Design.Design.Misting is not { Times.Count: > 0, Hose: null } misting)
        {
            return;
        }

        var flow = misting.Nozzles * misting.Each.Si * 1e6;
        var advised = Advised(papers, misting);
        var told = new HashSet<string>(StringComparer.Ordinal);
        foreach (var (name, text) in papers.Texts)
        {
            foreach (var (time, i) in misting.Times.Select((t, i) => (t, i)))
            {
                var at = time.At.ToString("HH:mm", CultureInfo.InvariantCulture);
                foreach (
                    Match burst in Regex.Matches(text, at + BurstForm, RegexOptions.ExplicitCapture, Soon)
                )
                {
                    told.Add(name[..3]);
                    Assert.Equal(time.For.Si, Number(burst.Groups["entered"]), 0.06);
                    var isCard = name.StartsWith("10-", StringComparison.Ordinal);
                    if (!isCard)
                    {
                        Assert.Equal(advised is not null, burst.Groups["advised"].Success);
                    }

                    if (!isCard && advised is not null)
                    {
                        Assert.Equal(advised[i], Number(burst.Groups["advised"]));
                    }
                }
            }

            foreach (Match day in Daily().Matches(text))
            {
                Assert.Equal(flow * misting.Times.Sum(t => t.For.Si), Number(day.Groups["entered"]), 0.51);
                Assert.Equal(advised is not null, day.Groups["advised"].Success);
                if (advised is not null)
                {
                    Assert.Equal(flow * advised.Sum(), Number(day.Groups["advised"]), 0.51);
                }
            }
        }

        var isRunning = papers.Job.Told.IsRunning;
        Assert.All(Mist.Where(m => Expected(papers, m, isRunning)), m => Assert.Contains(m, told));
    }

    /// <summary>
    /// The day for animals of every paper is one day; the better one is not before it; under a stop there is
    /// none, and no paper schedules what hangs on it.
    /// </summary>
    [Theory]
    [MemberData(nameof(Samples))]
    public void The_day_for_animals_is_the_same_on_every_paper(string sample)
    {
        var papers = SamplePapers.Of(sample);
        var plan = papers.Job.Plan;
        var days = papers
            .Texts.SelectMany(t => AnimalDays().Matches(t.Text))
            .Select(m => m.Value)
            .Distinct(StringComparer.Ordinal)
            .ToArray();
        if (papers.Job.Result.Stops || papers.Job.Told.IsRunning)
        {
            Assert.Empty(days);
            Assert.DoesNotContain(plan.Dates, d =>
                d.Key.StartsWith("animals", StringComparison.Ordinal)
                || d.Key.StartsWith("quarantine", StringComparison.Ordinal)
            );
            return;
        }

        Assert.True(days.Length <= 1, string.Join(" | ", days));
        if (plan.Find("animals-earliest") is { } earliest)
        {
            var words = Assert.Single(days);
            Assert.Contains(
                earliest.Day.ToString("ddd d MMM yyyy", CultureInfo.InvariantCulture),
                words,
                StringComparison.Ordinal
            );
            Assert.True(plan.Find("animals-better") is not { } better || better.Day > earliest.Day);
            Assert.Equal(
                papers.Job.Numbers.Life!.AnimalsFrom.DayNumber
                    - (papers.Job.Numbers.Design.Design.Planted ?? plan.Planting).DayNumber,
                earliest.Day.DayNumber - plan.Planting.DayNumber
            );
        }
    }

    private static readonly TimeSpan Soon = TimeSpan.FromMinutes(1);

    private const string BurstForm =
        @"(?: for (?<entered>[\d.]+) s|, entered (?<entered>[\d.]+) s, advised (?<advised>[\d.]+) s)";

    private static bool Expected(WrittenPapers papers, string paper, bool isRunning) =>
        paper switch
        {
            "02-" => !isRunning,
            "06-" => !isRunning,
            "10-" => papers.Job.Settings is not null,
            _ => true,
        };

    private static double[]? Advised(WrittenPapers papers, Misting misting) =>
        papers.Job.Settings?.Settings[0].MistSeconds is { } seconds
        && misting.Times.Where((t, i) => Math.Abs(t.For.Si - seconds[i]) > 0.5).Any()
            ? [.. seconds]
            : null;

    private static double Number(Group group) => double.Parse(group.Value, CultureInfo.InvariantCulture);

    [GeneratedRegex(
        @"(?:entered (?<entered>\d+) mL a day, advised (?<advised>\d+) mL a day|"
            + @"(?:s: |Together |as set, )(?<entered>\d+) mL a day)",
        RegexOptions.ExplicitCapture,
        60_000
    )]
    private static partial Regex Daily();

    [GeneratedRegex(
        @"No animals before \d+ weeks? after planting( \([^)]*\))?(, better \d+ weeks?( \([^)]*\))?)?",
        RegexOptions.ExplicitCapture,
        60_000
    )]
    private static partial Regex AnimalDays();
}
