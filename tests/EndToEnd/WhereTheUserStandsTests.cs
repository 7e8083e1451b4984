namespace Litterfall.Tests.EndToEnd;

/// <summary>Paths count from the folder of the user, however the program is started.</summary>
public sealed class WhereTheUserStandsTests
{
    private const string Sample = "samples/arid-no-drainage.viv.yaml";

    /// <summary>The words of the README; the program is not built again.</summary>
    private static Ended RunAsTheReadmeSays(string folder, string project, params string[] words) =>
        Cli.StartIn(
            folder,
            "dotnet",
            ["run", "-c", Cli.Configuration, "--no-build", "--project", project, "--", .. words]
        );

    [Fact]
    public void In_the_checkout_a_sample_is_found()
    {
        Assert.Contains(
            "dotnet run --project src/Litterfall -- ",
            File.ReadAllText(Path.Combine(Cli.Root, "README.md")),
            StringComparison.Ordinal
        );
        var ended = RunAsTheReadmeSays(Cli.Root, "src/Litterfall", "check", Sample);
        Assert.True(ended.Code is 0 or 1, ended.ToString());
        Assert.Equal(Cli.Run("check", Sample).Out, ended.Out);
    }

    [Fact]
    public void From_a_folder_outside_the_checkout_a_file_of_that_folder_is_found()
    {
        using var scratch = new Scratch();
        File.Copy(Path.Combine(Cli.Root, Sample), scratch.At("mine.viv.yaml"));
        var project = Path.Combine(Cli.Root, "src", "Litterfall");
        var ended = RunAsTheReadmeSays(scratch.Folder, project, "check", "mine.viv.yaml");
        Assert.True(ended.Code is 0 or 1, ended.ToString());
        Assert.Equal(Cli.Run("check", Sample).Out, ended.Out);
    }

    [Fact]
    public void What_is_written_lands_in_the_folder_of_the_user()
    {
        using var scratch = new Scratch();
        var project = Path.Combine(Cli.Root, "src", "Litterfall");
        var ended = RunAsTheReadmeSays(
            scratch.Folder,
            project,
            "new",
            "--box",
            "45 x 45 x 60 cm",
            "--glass",
            "5 mm",
            "--out",
            "tank.viv.yaml"
        );
        Assert.True(ended.Code == 0, ended.ToString());
        Assert.True(File.Exists(scratch.At("tank.viv.yaml")), "the file is not where the user stands");
    }
}
