using System.Diagnostics;

namespace Litterfall.Tests.EndToEnd;

/// <summary>Slips on the command line are answered with what was meant; long work ends at Ctrl-C.</summary>
public sealed class ClearWordsTests
{
    private const string Sample = "samples/ld-201-flat.viv.yaml";

    [Theory]
    [InlineData("did you mean --json?", "check", "--jsn", Sample)]
    [InlineData("did you mean check?", "chek", Sample)]
    [InlineData("expected a4 or letter", "papers", Sample, "--out", "nowhere", "--sheet", "a5")]
    [InlineData("1990-01-01 to 2099-12-31", "papers", Sample, "--out", "nowhere", "--from", "9999-12-30")]
    public void A_slip_on_the_command_line_is_told_with_what_was_meant(string said, params string[] words)
    {
        var ended = Cli.Refuses(words);
        Assert.Contains(said, ended.Error, StringComparison.Ordinal);
        Assert.Single(ended.Error.TrimEnd().Split('\n'));
    }

    [Fact]
    public void The_text_of_a_check_has_words_and_no_names_of_variables()
    {
        var ended = Cli.Run("check", Sample);
        Assert.Contains("µmol/m²/s", ended.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("{", ended.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Amounts_a_day_and_a_year_say_so_and_labels_are_words()
    {
        var vented = Cli.Run("why", Sample, "water.ventedMlPerDay").Out;
        Assert.Matches(@"^water\.ventedMlPerDay = [0-9.]+ mL a day\n", vented);
        var nitrogen = Cli.Run("why", Sample, "crew.nitrogenGramsPerM2Year").Out;
        Assert.Matches(@"^crew\.nitrogenGramsPerM2Year = [0-9.]+ g/m2 a year\n", nitrogen);
        Assert.Contains("temperature below which nothing develops of", nitrogen, StringComparison.Ordinal);
        Assert.Contains("decay at 24 °C of", nitrogen, StringComparison.Ordinal);
        Assert.DoesNotContain(" t0 of", nitrogen, StringComparison.Ordinal);
    }

    /// <summary>A year of an ensemble takes minutes; the signal that Ctrl-C sends ends it at once.</summary>
    [Fact]
    public async Task Long_work_ends_at_an_interrupt_without_a_trace()
    {
        if (OperatingSystem.IsWindows())
        {
            return;
        }

        var cancel = TestContext.Current.CancellationToken;
        var start = new ProcessStartInfo("dotnet", [Cli.Built, "forecast", Sample, "--days", "365"])
        {
            WorkingDirectory = Cli.Root,
            UseShellExecute = false,
            RedirectStandardOutput = true,
            RedirectStandardError = true,
        };
        using var process = Process.Start(start)!;
        await Task.Delay(TimeSpan.FromSeconds(2), cancel);
        var watch = Stopwatch.StartNew();
        using var kill = Process.Start("kill", ["-INT", $"{process.Id}"]);
        var said =
            await process.StandardError.ReadToEndAsync(cancel)
            + await process.StandardOutput.ReadToEndAsync(cancel);
        await process.WaitForExitAsync(cancel);
        Assert.Equal(130, process.ExitCode);
        Assert.True(watch.Elapsed < TimeSpan.FromSeconds(3), $"it went on for {watch.Elapsed}");
        Assert.DoesNotContain("   at ", said, StringComparison.Ordinal);
    }
}
