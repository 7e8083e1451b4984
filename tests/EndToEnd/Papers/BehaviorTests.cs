using System.Text;
using System.Text.Json.Nodes;

namespace Litterfall.Tests.EndToEnd.Papers;

/// <summary>
/// How the command behaves: exit codes, what it prints, what it writes and what it leaves alone.
/// </summary>
public sealed class BehaviorTests(PaperFolder papers)
{
    private const string Stopped = "samples/ld-202-waiting-room.viv.yaml";
    private const string Attic = "samples/ld-205-attic.viv.yaml";
    private const string Kits = "samples/ld-204-shop-kits.viv.yaml";

    public static TheoryData<string> Samples => CheckTests.Samples;

    [Theory]
    [MemberData(nameof(Samples))]
    public void A_stop_still_writes_everything_and_ends_with_1(string sample)
    {
        var (written, check) = (papers.Of(sample), papers.Check(sample));
        var stops = check["findings"]!.AsArray().Any(f => f!["severity"]!.GetValue<string>() == "stop");
        Assert.Equal(stops ? 1 : 0, written.Ended.Code);
        Assert.Equal(stops, sample is Stopped or Attic);
        Assert.Equal("", written.Ended.Error);
        string[] always =
        [
            "01-build-sheet.pdf",
            "02-step-cards.pdf",
            "03-cut-list.pdf",
            "05-shopping-list.pdf",
            "06-calendar.pdf",
            "08-cautions.pdf",
            "09-tank-passport.pdf",
            "drawings/front-mm.dxf",
            "drawings/front.svg",
            "drawings/plan-mm.dxf",
            "drawings/plan.svg",
            "drawings/section-mm.dxf",
            "drawings/section.svg",
        ];
        // A tank in service is not built and bought again.
        string[] build = ["02-step-cards.pdf", "05-shopping-list.pdf"];
        var runs = sample.Contains("t-17", Ordinal);
        Assert.All(always.Where(name => !(runs && build.Contains(name))), name =>
            Assert.Contains(name, written.Files)
        );
        Assert.All(build, name => Assert.Equal(!runs, written.Files.Contains(name)));
        Assert.Equal(
            check["cuts"]!.AsArray().Count,
            written.Ending(".dxf").Count(f => f.StartsWith("cut/", Ordinal))
        );
        Assert.All(written.Files, f => Assert.Matches("^((cut|drawings)/)?[a-z0-9.-]+$", f));
        Assert.All(written.Files, f => Assert.True(new FileInfo(written.At(f)).Length > 0, f));
        Assert.DoesNotContain(written.Files, f => f.EndsWith(".part", Ordinal));
    }

    [Theory]
    [MemberData(nameof(Samples))]
    public void It_lists_each_file_and_names_each_finding(string sample)
    {
        var written = papers.Of(sample);
        Assert.All(written.Files, f => Assert.Contains($"  {f}\n", written.Ended.Out, Ordinal));
        foreach (var finding in papers.Check(sample)["findings"]!.AsArray())
        {
            Assert.Contains(finding!["slug"]!.GetValue<string>(), written.Ended.Out, Ordinal);
        }
    }

    [Theory]
    [InlineData(Stopped)]
    [InlineData(Kits)]
    public void Two_runs_give_the_same_bytes(string sample)
    {
        using var scratch = new Scratch();
        var (first, second) = (papers.Of(sample), PaperFolder.Start(sample, scratch.Folder));
        Assert.Equal(first.Files, second.Files);
        Assert.All(first.Files, f =>
            Assert.True(
                File.ReadAllBytes(first.At(f)).AsSpan().SequenceEqual(File.ReadAllBytes(second.At(f))),
                f
            )
        );
    }

    /// <summary>Nor does it matter what was written before by the same process.</summary>
    [Theory]
    [MemberData(nameof(Samples))]
    public void Papers_made_one_after_another_have_the_same_bytes(string sample)
    {
        var written = papers.Of(sample);
        var files = InProcess.OfSample(sample, InProcess.A4);
        Assert.Equal(written.Files, files.Select(f => f.Name).Order(StringComparer.Ordinal));
        Assert.All(files, f =>
            Assert.True(f.Bytes.AsSpan().SequenceEqual(File.ReadAllBytes(written.At(f.Name))), f.Name)
        );
    }

    [Fact]
    public void With_json_one_document_tells_the_same()
    {
        using var scratch = new Scratch();
        var written = PaperFolder.Write(Stopped, scratch.Folder, "--json");
        Assert.Equal(1, written.Ended.Code);
        Assert.Equal("", written.Ended.Error);
        var report = written.Ended.Json;
        Assert.Equal(written.Files, Strings(report["papers"]!).Order(StringComparer.Ordinal));
        Assert.Equal(scratch.Folder, report["folder"]!.GetValue<string>());
        Assert.True(report["stops"]!.GetValue<bool>());
        Assert.Contains(
            report["tank"]!.GetValue<string>(),
            written.Pdf("09-tank-passport.pdf").Sides[0].Running,
            Ordinal
        );
        // A check alone looks for what would fix a finding.
        var findings = papers.Check(Stopped)["findings"]!.DeepClone().AsArray();
        Assert.All(findings, finding => finding!["levers"] = new JsonArray());
        Assert.True(JsonNode.DeepEquals(findings, report["findings"]));
    }

    [Fact]
    public void Letter_paper_and_another_planting_day_can_be_asked_for()
    {
        using var scratch = new Scratch();
        var written = PaperFolder.Write(Kits, scratch.Folder, "--sheet", "letter", "--from", "2026-03-02");
        Assert.Equal(0, written.Ended.Code);
        foreach (var (name, side) in PageTests.Sides(written))
        {
            Sheet.IsWell(name, side, Sheet.Letter);
            // 2 March 2026 is a Monday: 1 January 2026 is a Thursday, and 60 days are 8 weeks and 4 days.
            Assert.Contains("Mon 2 Mar 2026", side.Running, Ordinal);
        }
    }

    [Fact]
    public void Without_a_planting_day_the_dates_count_from_the_first_monday_of_2026_with_a_note()
    {
        using var scratch = new Scratch();
        var text = File.ReadAllText(Path.Combine(Cli.Root, "samples", "t-17-old-show-tank.viv.yaml"));
        var folder = Path.Combine(Cli.Root, "samples", "lantern-ditch");
        var bare = scratch.Write(
            "bare.viv.yaml",
            text.Replace("planted: 2022-03-01\n", "", Ordinal)
                .Replace("start: {", "# start: {", Ordinal)
                .Replace("workshop: lantern-ditch", $"workshop: {folder}", Ordinal)
        );
        var written = PaperFolder.Write(bare, scratch.At("papers"));
        Assert.Contains("2026-01-05", Numeric(written.Ended.Out), Ordinal);
        var calendar = written.Pdf("06-calendar.pdf").Sides[0].Running;
        Assert.Contains("Mon 5 Jan 2026", calendar, Ordinal);
        Assert.DoesNotContain("2022", calendar, Ordinal);
        Assert.Contains("planted", written.Ended.Out, Ordinal);

        var asked = PaperFolder.Write(bare, scratch.At("asked"), "--from", "2026-03-02");
        Assert.DoesNotContain("2026-01-05", Numeric(asked.Ended.Out), Ordinal);
    }

    [Theory]
    [InlineData("--from", "2026-02-30")]
    [InlineData("--from", "14.08.2026")]
    [InlineData("--from", "tomorrow")]
    [InlineData("--from", "")]
    [InlineData("--sheet", "a5")]
    [InlineData("--sheet", "")]
    public void A_wrong_wish_is_refused_and_nothing_is_written(string option, string value)
    {
        using var scratch = new Scratch();
        var ended = Cli.Refuses("papers", Stopped, "--out", scratch.At("papers"), option, value);
        Assert.Single(ended.Error.TrimEnd('\n').Split('\n'));
        Assert.Empty(Directory.EnumerateFileSystemEntries(scratch.Folder));
    }

    [Fact]
    public void Without_a_folder_it_is_refused()
    {
        Cli.Refuses("papers", Stopped);
        Cli.Refuses("papers", Stopped, "--out");
        Cli.RefusesInJson("papers", Stopped);
    }

    [Fact]
    public void A_file_in_the_place_of_the_folder_stays_as_it_is()
    {
        using var scratch = new Scratch();
        var file = scratch.Write("papers", "mine");
        Cli.Refuses("papers", Stopped, "--out", file);
        Cli.RefusesInJson("papers", Stopped, "--out", file);
        Cli.Refuses("papers", Stopped, "--out", Path.Combine(file, "below"));
        Assert.Equal("mine", File.ReadAllText(file));
        Assert.Single(Directory.EnumerateFileSystemEntries(scratch.Folder));
    }

    [Fact]
    public void A_folder_that_cannot_be_written_is_refused_in_plain_words()
    {
        Assert.SkipUnless(OperatingSystem.IsLinux(), "/proc is there on Linux only, and holds for root too");
        Cli.Refuses("papers", Stopped, "--out", "/proc/litterfall-papers");
        Cli.RefusesInJson("papers", Stopped, "--out", "/proc/litterfall-papers");
    }

    [Fact]
    public void A_design_that_cannot_be_used_writes_nothing()
    {
        using var scratch = new Scratch();
        var broken = scratch.Write("broken.viv.yaml", "litterfall: 1\nname: t\ndrainge: none\n");
        Cli.Refuses("papers", broken, "--out", scratch.At("papers"));
        Assert.False(Directory.Exists(scratch.At("papers")));
    }

    /// <summary>What lies in the folder already is named, and not touched.</summary>
    [Fact]
    public void Other_files_in_the_folder_are_named_and_left_alone()
    {
        using var scratch = new Scratch();
        var mine = scratch.Write("notes.txt", "mine");
        var written = PaperFolder.Write(Kits, scratch.Folder, "--json");
        Assert.Equal("mine", File.ReadAllText(mine));
        Assert.Equal(["notes.txt"], Strings(written.Ended.Json["others"]!));
        Assert.DoesNotContain("notes.txt", Strings(written.Ended.Json["papers"]!));
    }

    private const StringComparison Ordinal = StringComparison.Ordinal;

    private static IEnumerable<string> Strings(JsonNode list) =>
        list.AsArray().Select(item => item!.GetValue<string>());

    /// <summary>Days as words of a calendar, turned to numbers; line breaks do not matter.</summary>
    private static string Numeric(string text) =>
        new StringBuilder(text)
            .Replace("5 January 2026", "2026-01-05")
            .Replace("5 Jan 2026", "2026-01-05")
            .ToString();
}
