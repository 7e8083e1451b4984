using System.Xml.Linq;

namespace Litterfall.UnitTests.House;

/// <summary>
/// Who may use whom: each room only those before it. The rooms up to the papers are pure.
/// </summary>
public sealed class DependencyTests
{
    private static readonly string[] Pure =
    [
        "Domain",
        "Physics",
        "Quantities",
        "Forecasting",
        "Judging",
        "Instructions",
        "Documents",
    ];

    /// <summary>What each project may use; the edges use all.</summary>
    private static readonly Dictionary<string, string[]> Allowed = new(StringComparer.Ordinal)
    {
        ["Domain"] = [],
        ["Physics"] = Pure[..1],
        ["Quantities"] = Pure[..2],
        ["Forecasting"] = Pure[..3],
        ["Judging"] = Pure[..4],
        ["Instructions"] = Pure[..5],
        ["Documents"] = Pure[..6],
        ["Workshop"] = Pure[..6],
        ["Running"] = Pure[..6],
        ["Dispatch"] = [.. Pure[..6], "Workshop", "Running"],
        ["Store"] = Pure[..1],
        ["Verification"] = Pure,
        ["Laboratory"] = Pure,
        ["Web"] = [.. Pure, "Workshop", "Running", "Dispatch", "Store"],
        ["Front"] = [.. Pure, "Verification", "Laboratory"],
        ["Litterfall"] =
        [
            .. Pure,
            "Workshop",
            "Running",
            "Dispatch",
            "Store",
            "Verification",
            "Laboratory",
            "Web",
        ],
    };

    [Fact]
    public void A_project_uses_only_those_before_it()
    {
        var projects = SourceTree.Files(["src"], ".csproj").Select(p => Path.GetFileNameWithoutExtension(p)!);
        var wrong =
            from project in projects
            from used in References(project)
            where !Allowed.TryGetValue(project, out var allowed) || !allowed.Contains(used)
            select $"{project} uses {used}";
        Assert.Empty(wrong);
    }

    [Fact]
    public void Every_project_under_src_is_in_the_solution()
    {
        var solution = XDocument.Load(SourceTree.Path("Litterfall.slnx"));
        var listed = solution.Descendants("Project").Select(p => p.Attribute("Path")!.Value).ToHashSet();
        var there = SourceTree.Files(["src", "tests"], ".csproj").Select(SourceTree.Relative);
        Assert.Empty(there.Except(listed));
    }

    [Fact]
    public void Pure_projects_are_watched_by_the_banned_symbols_analyzer()
    {
        var props = XDocument.Load(SourceTree.Path("Directory.Build.props"));
        var watched = props
            .Descendants("PureProject")
            .Where(p => p.Value == "true")
            .Select(p => p.Parent!.Attribute("Condition")!.Value)
            .Single();
        Assert.All(Pure, name => Assert.Contains($"'{name}'", watched, StringComparison.Ordinal));
        var items = props
            .Descendants("ItemGroup")
            .Single(g => g.Attribute("Condition")?.Value == "'$(PureProject)' == 'true'");
        Assert.Contains(items.Elements("PackageReference"), p =>
            p.Attribute("Include")!.Value == "Microsoft.CodeAnalysis.BannedApiAnalyzers"
        );
        Assert.Contains(items.Elements("AdditionalFiles"), f =>
            f.Attribute("Include")!.Value.EndsWith("BannedSymbols.Pure.txt", StringComparison.Ordinal)
        );
    }

    [Theory]
    [InlineData("T:System.IO.File")]
    [InlineData("T:System.IO.Directory")]
    [InlineData("T:System.Console")]
    [InlineData("P:System.DateTime.Now")]
    [InlineData("P:System.DateTime.UtcNow")]
    [InlineData("T:System.Net.Http.HttpClient")]
    [InlineData("M:System.Random.#ctor")]
    public void Pure_projects_may_not_touch(string symbol)
    {
        var banned = File.ReadLines(SourceTree.Path("BannedSymbols.Pure.txt")).Select(l => l.Split(';')[0]);
        Assert.Contains(symbol, banned);
    }

    [Fact]
    public void No_pure_project_silences_the_analyzer_or_leaves_the_group()
    {
        var silenced =
            from file in SourceTree.Files(
                [.. Pure.Select(p => $"src/{p}")],
                ".cs",
                ".csproj",
                ".editorconfig"
            )
            let text = File.ReadAllText(file)
            where
                text.Contains("RS0030", StringComparison.Ordinal)
                || text.Contains("<PureProject>", StringComparison.Ordinal)
            select SourceTree.Relative(file);
        Assert.Empty(silenced);
    }

    private static IEnumerable<string> References(string project) =>
        XDocument
            .Load(SourceTree.Path("src", project, $"{project}.csproj"))
            .Descendants("ProjectReference")
            .Select(r => Path.GetFileNameWithoutExtension(r.Attribute("Include")!.Value.Replace('\\', '/')));
}
