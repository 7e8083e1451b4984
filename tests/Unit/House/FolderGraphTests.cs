namespace Litterfall.UnitTests.House;

/// <summary>Rooms look one way only: no folder of a project uses one that uses it.</summary>
public sealed class FolderGraphTests
{
    public static TheoryData<string> Projects =>
        [.. Directory.GetDirectories(SourceTree.Path("src")).Select(d => Path.GetFileName(d)!).Order()];

    [Theory]
    [MemberData(nameof(Projects))]
    public void No_folder_is_used_by_one_that_it_uses(string project)
    {
        var cycles = FolderGraph.Cycles(FolderGraph.Edges(project));
        Assert.True(cycles.Count == 0, $"{cycles.Count} ties:\n{string.Join('\n', cycles.Take(40))}");
    }

    [Fact]
    public void Two_folders_that_use_each_other_are_found_around_corners_too()
    {
        FolderEdge[] edges =
        [
            new("a", "b", "A uses B"),
            new("b", "c", "B uses C"),
            new("c", "a", "C uses A"),
            new("d", "a", "D uses A"),
        ];
        Assert.Equal(["a -> b: A uses B", "b -> c: B uses C", "c -> a: C uses A"], FolderGraph.Cycles(edges));
        Assert.Empty(FolderGraph.Cycles(edges[..2]));
    }

    [Fact]
    public void The_graph_of_a_project_is_not_empty() =>
        Assert.Contains(FolderGraph.Edges("Forecasting"), e =>
            e is { From: "src/Forecasting/Water", To: "src/Forecasting/Climate" }
        );

    [Fact]
    public void A_namespace_is_where_its_file_lies()
    {
        var strays =
            from file in SourceTree.Files(["src"], ".cs")
            let place = SourceTree.Relative(file)
            where !place.Contains("/Migrations/", StringComparison.Ordinal)
            let declared = File.ReadLines(file)
                .FirstOrDefault(l => l.StartsWith("namespace ", StringComparison.Ordinal))
            where declared is not null
            let folder = Path.GetDirectoryName(place)!.Replace('\\', '/')["src/".Length..].Replace('/', '.')
            let wanted = folder.Split('.')[0] == "Litterfall" ? "App" + folder["Litterfall".Length..] : folder
            where declared != $"namespace Litterfall.{wanted};"
            select $"{place}: {declared}";
        Assert.Empty(strays);
    }
}
