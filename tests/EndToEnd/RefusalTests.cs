using System.Text;

namespace Litterfall.Tests.EndToEnd;

/// <summary>What cannot be used ends with exit 2, a plain sentence and no stack trace.</summary>
[Collection("timed")]
public sealed class RefusalTests
{
    private static string Sample => Cli.Samples[0];

    public static TheoryData<string> WrongLines =>
        [
            "chek",
            "check",
            "check a.viv.yaml b.viv.yaml",
            "check a.viv.yaml --jsn",
            "why samples/ld-202-waiting-room.viv.yaml",
            "new",
            "schema",
            "schema tank",
            "library nothing-like-this",
            "library mesh nothing-like-this",
            "verify extra",
            "--nothing",
        ];

    [Theory]
    [MemberData(nameof(WrongLines))]
    public void A_wrong_command_line_is_refused(string line)
    {
        var words = line.Split(' ');
        Cli.Refused(Cli.Start(words));
        Cli.RefusesInJson(words);
    }

    [Fact]
    public void Help_lists_every_command()
    {
        var help = Cli.Start("--help");
        Assert.Equal(0, help.Code);
        string[] bench = ["bench", "backup", "restore", "export"];
        string[] commands = ["check", "why", "new", "library", "schema", "verify", "lab", .. bench];
        foreach (var command in commands)
        {
            Assert.Contains(command, help.Out, StringComparison.Ordinal);
            Assert.Equal(0, Cli.Run(command, "--help").Code);
        }
    }

    [Fact]
    public void A_file_that_is_not_there_a_folder_and_an_unreadable_file_are_refused()
    {
        using var scratch = new Scratch();
        File.CreateSymbolicLink(scratch.At("loop.viv.yaml"), scratch.At("loop.viv.yaml"));
        List<string> paths = [scratch.At("no.viv.yaml"), scratch.Folder, scratch.At("loop.viv.yaml")];
        if (OperatingSystem.IsLinux())
        {
            paths.Add("/proc/self/mem"); // opens, but its first byte cannot be read, not even by root
            paths.Add("/dev/null");
        }

        foreach (var path in paths)
        {
            Cli.Refuses("check", path);
            Cli.RefusesInJson("check", path);
            Cli.Refuses("why", path, "weights.dryKg");
        }
    }

    public static TheoryData<string, string, int, int> Broken =>
        new()
        {
            { "unknown key", "litterfall: 1\nname: t\ndrainge: none\n", 1, 1 },
            { "not UTF-8", "", 1, 1 },
            { "ten thousand brackets", "a: " + new string('[', 10_000), 1, 16 },
            { "a tab", "litterfall: 1\n\tname: t\n", 2, 1 },
            { "an anchor", "litterfall: &a 1\n", 1, 13 },
            { "ten megabytes", new string('a', 10_000_000), 1, 1 },
            { "laughs", "a: &a [x, x]\nb: &b [*a, *a]\n", 1, 4 },
            { "an escape", "litterfall: 1\nname: \"\\e[31mred\"\n", 1, 1 },
        };

    [Theory]
    [MemberData(nameof(Broken))]
    public void A_broken_file_is_refused_with_its_place_within_a_second(
        string name,
        string text,
        int line,
        int column
    )
    {
        using var scratch = new Scratch();
        var path = scratch.Write("broken.viv.yaml", text);
        if (name == "not UTF-8")
        {
            File.WriteAllBytes(path, [0xE9, 0x20, 0x61]);
        }

        Cli.Start("--version"); // so that the runtime is in memory
        var ended = Cli.Refused(Cli.Start("check", path));
        Assert.True(ended.Milliseconds < 1000, $"{name} took {ended.Milliseconds} ms");
        Assert.Contains($"broken.viv.yaml:{line}:{column}: ", ended.Error, StringComparison.Ordinal);
        Assert.DoesNotContain("\u001b", ended.Error, StringComparison.Ordinal);
        var error = Cli.RefusesInJson("check", path)[0]!;
        Assert.Equal(path, error["file"]!.GetValue<string>());
        Assert.Equal((line, column), (error["line"]!.GetValue<int>(), error["column"]!.GetValue<int>()));
    }

    [Fact]
    public void A_workshop_folder_that_is_not_there_is_refused()
    {
        using var scratch = new Scratch();
        foreach (var command in new[] { new[] { "check", Sample }, ["library"], ["schema", "design"] })
        {
            Cli.Refuses([.. command, "--workshop", scratch.At("nowhere")]);
            Cli.RefusesInJson([.. command, "--workshop", scratch.At("nowhere")]);
        }
    }

    public static TheoryData<string, string> BrokenFolders =>
        new()
        {
            { "prices.json", "[ { \"pack\": " },
            { "prices.json", "{}" },
            { "prices.json", "[ { \"pack\": \"no-such-pack\", \"price\": 1 } ]" },
            { "prices.json", "[ { \"pack\": \"pack-fine-bark-20-l\", \"price\": -1 } ]" },
            { "prices.json", "[ { \"pack\": \"pack-fine-bark-20-l\", \"price\": \"9,80\" } ]" },
            { "prices.json", "[ 1, null, [] ]" },
            { "stock.json", "{ \"fine-bark\": \"74\" }" },
            { "stock.json", "{ \"no-such-bark\": \"74 L\" }" },
            { "workshop.json", "{ \"currency\": \"Taler\" }" },
            { "workshop.json", "not json" },
            { "own.json", "[ { \"kind\": \"soil\" } ]" },
            { "own.json", "[ 1 ]" },
            { "own.json", "[ { \"key\": \"x\", \"kind\": \"soil\", \"name\": \"x\", \"values\": 1 } ]" },
            { "own.json", "[ { \"key\": \"x\", \"kind\": \"soil\", \"name\": \"x\", \"parts\": [ 1 ] } ]" },
            {
                "own.json",
                "[ { \"key\": \"x\", \"kind\": \"soil\", \"name\": \"x\", \"values\": { \"a\": 1 } } ]"
            },
            { "sources.json", "[ 1 ]" },
            { "sources.json", "[ { \"key\": \"x\", \"year\": 1.5 } ]" },
            { "sources.json", "[ { \"key\": \"x\" } ]" },
            { "own.json", "" },
        };

    [Theory]
    [MemberData(nameof(BrokenFolders))]
    public void A_workshop_folder_with_a_fault_is_refused(string file, string text)
    {
        using var scratch = new Scratch();
        scratch.Write(file, text);
        Cli.Refuses("check", Sample, "--workshop", scratch.Folder);
        var error = Cli.RefusesInJson("check", Sample, "--workshop", scratch.Folder)[0]!;
        Assert.Contains(scratch.Folder, error["file"]!.GetValue<string>(), StringComparison.Ordinal);
    }

    [Fact]
    public void A_workshop_named_in_the_design_but_not_there_points_at_its_line()
    {
        using var scratch = new Scratch();
        var text =
            File.ReadAllText(Path.Combine(Cli.Root, Sample), Encoding.UTF8).TrimEnd()
            + "\nworkshop: nowhere\n";
        var path = scratch.Write("t.viv.yaml", text);
        var error = Cli.RefusesInJson("check", path)[0]!;
        // the last line; "workshop: " is ten characters
        Assert.Equal(text.Count(c => c == '\n'), error["line"]!.GetValue<int>());
        Assert.Equal(11, error["column"]!.GetValue<int>());
    }
}
