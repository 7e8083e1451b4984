namespace Litterfall.Tests.EndToEnd;

/// <summary><c>litterfall new</c> writes a design that checks, and never over an old one.</summary>
public sealed class NewTests
{
    [Theory]
    [InlineData("--box", "45 x 45 x 60 cm", "5 mm")]
    [InlineData("--box", "24 x 18 x 18 in", "6 mm")]
    [InlineData("--box", "24 in x 18 in x 18 in", "1/4 in")]
    [InlineData("--box", "17 3/4 x 17 3/4 x 23 5/8 in", "5 mm")]
    [InlineData("--box", "600x450x450mm", "5mm")]
    [InlineData("--box", "60,5 x 45,5 x 45 cm", "5 mm")]
    [InlineData("--box", "90 × 60 × 60 cm", "8 mm")]
    [InlineData("--box", "1.2 m x 60 cm x 70 cm", "10 mm")]
    [InlineData("--inside", "59 x 44 x 44 cm", null)]
    [InlineData("--inside", "20 x 10 x 12 in", null)]
    public void A_starter_design_checks(string size, string edges, string? glass)
    {
        using var scratch = new Scratch();
        var path = scratch.At("starter.viv.yaml");
        string[] pane = glass is null ? [] : ["--glass", glass];
        var made = Cli.Run(["new", size, edges, .. pane, "--out", path]);
        Assert.True(made.Code == 0, made.ToString());
        Assert.Contains("#", File.ReadAllText(path), StringComparison.Ordinal);
        Assert.Equal([path], Directory.GetFiles(scratch.Folder));
        var check = Cli.Run("check", path, "--json");
        Assert.True(check.Code == 0, check.ToString());
        Assert.Equal("starter", check.Json["design"]!["name"]!.GetValue<string>());
    }

    /// <summary>A fitted design holds and says why, also where the outside was given.</summary>
    [Fact]
    public void A_fitted_design_holds_and_says_why()
    {
        using var scratch = new Scratch();
        var path = scratch.At("fitted.viv.yaml");
        string[] wish = ["--box", "60 x 45 x 60 cm", "--glass", "6 mm", "--animal", "dendrobates-auratus"];
        var made = Cli.Run(["new", .. wish, "--fitted", "--out", path, "--json"]);
        Assert.True(made.Code == 0, made.ToString());
        Assert.True(made.Json["reasons"]!.AsArray().Count >= 2, made.ToString());
        var check = Cli.Run("check", path, "--json");
        Assert.True(check.Code == 0, check.ToString());
        Assert.NotEmpty(check.Json["light"]!["plants"]!.AsArray());
    }

    /// <summary>A box of 24 by 18 inches is 609.6 by 457.2 mm outside.</summary>
    [Fact]
    public void Inches_arrive_as_inches()
    {
        using var scratch = new Scratch();
        var path = scratch.At("t.viv.yaml");
        Cli.Run("new", "--box", "24 x 18 x 18 in", "--glass", "6 mm", "--out", path);
        var geometry = Cli.Run("check", path, "--json").Json["geometry"]!;
        Assert.Equal(609.6, geometry["outsideLengthMm"]!.GetValue<double>(), 1e-9);
        Assert.Equal(457.2, geometry["outsideDepthMm"]!.GetValue<double>(), 1e-9);
        Assert.Equal(597.6, geometry["insideLengthMm"]!.GetValue<double>(), 1e-9); // less twice 6 mm
    }

    [Fact]
    public void Every_animal_of_the_library_can_be_asked_for()
    {
        using var scratch = new Scratch();
        var animals = Cli.Run("library", "animal", "--json").Json["entries"]!.AsArray();
        foreach (var animal in animals.Take(3))
        {
            var key = animal!["key"]!.GetValue<string>();
            var path = scratch.At($"{key}.viv.yaml");
            var made = Cli.Run(
                "new",
                "--box",
                "90 x 60 x 90 cm",
                "--glass",
                "8 mm",
                "--animal",
                key,
                "--out",
                path
            );
            Assert.True(made.Code == 0, made.ToString());
            Assert.Contains($"animal: {key}", File.ReadAllText(path), StringComparison.Ordinal);
            Assert.NotEqual(2, Cli.Run("check", path).Code);
        }
    }

    [Fact]
    public void A_file_that_is_there_stays_as_it_is()
    {
        using var scratch = new Scratch();
        var path = scratch.Write("old.viv.yaml", "mine");
        var error = Cli.RefusesInJson("new", "--box", "45 x 45 x 60 cm", "--glass", "5 mm", "--out", path)[
            0
        ]!;
        Assert.Contains("exists", error["message"]!.GetValue<string>(), StringComparison.Ordinal);
        Assert.Equal("mine", File.ReadAllText(path));
        Assert.Single(Directory.GetFileSystemEntries(scratch.Folder));
    }

    [Theory]
    [InlineData("--box", "45 x 45 x 60 cm")]
    [InlineData("--box", "45 x 45 cm", "--glass", "5 mm")]
    [InlineData("--box", "45 x 45 x 60", "--glass", "5 mm")]
    [InlineData("--box", "45 x 45 x 0 cm", "--glass", "5 mm")]
    [InlineData("--box", "40 gal", "--glass", "5 mm")]
    [InlineData("--box", "45 x 45 x 60 cm", "--glass", "5")]
    [InlineData("--inside", "45 x 45 x 60 cm", "--glass", "5 mm")]
    [InlineData("--box", "45 x 45 x 60 cm", "--inside", "44 x 44 x 59 cm", "--glass", "5 mm")]
    [InlineData("--box", "45 x 45 x 60 cm", "--glass", "5 mm", "--animal", "unicorn")]
    public void A_wish_that_is_not_clear_writes_nothing(params string[] wish)
    {
        using var scratch = new Scratch();
        Cli.RefusesInJson(["new", .. wish, "--out", scratch.At("t.viv.yaml")]);
        Cli.Refuses(["new", .. wish, "--out", scratch.At("t.viv.yaml")]);
        Assert.Empty(Directory.GetFileSystemEntries(scratch.Folder));
    }

    [Fact]
    public void A_folder_that_is_not_there_is_refused()
    {
        using var scratch = new Scratch();
        string[] wish = ["new", "--box", "45 x 45 x 60 cm", "--glass", "5 mm", "--out"];
        Cli.RefusesInJson([.. wish, scratch.At("no/such/t.viv.yaml")]);
        Cli.RefusesInJson([.. wish, scratch.Folder]);
        Assert.Empty(Directory.GetFileSystemEntries(scratch.Folder));
    }
}
