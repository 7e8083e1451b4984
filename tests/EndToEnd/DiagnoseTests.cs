using System.Text.Json;

namespace Litterfall.Tests.EndToEnd;

/// <summary><c>litterfall diagnose</c> as others call it.</summary>
public sealed class DiagnoseTests
{
    private static readonly string Sample = Path.Combine(Cli.Root, "samples", "tanks", "t-17.json");

    /// <summary>
    /// The old show tank, by hand: 240 mL a day in, 9 out, 81 mL to a mm of clay, 30 mm from the level left
    /// to
    /// the barrier: full after 30 × 81 ÷ 231 = 10.5 days, and above it on the twentieth.
    /// </summary>
    [Fact]
    public void The_old_show_tank_is_misted_too_much_behind_a_taped_vent()
    {
        var run = Cli.Run("diagnose", Sample, "--json");
        Assert.Equal(0, run.Code);
        using var json = JsonDocument.Parse(run.Out);
        var causes = json.RootElement.GetProperty("causes").EnumerateArray().ToArray();
        Assert.Contains(
            "mist",
            causes[0].GetProperty("cause").GetString()!,
            StringComparison.OrdinalIgnoreCase
        );
        Assert.Contains(
            "vents",
            causes[1].GetProperty("cause").GetString()!,
            StringComparison.OrdinalIgnoreCase
        );
        Assert.True(causes[0].GetProperty("probability").GetDouble() > 0.5);
        Assert.NotEmpty(causes[0].GetProperty("for").EnumerateArray());
        var fix = causes[0].GetProperty("fix");
        // Siphoned to 1 cm, vent open, misted what leaves: the level stays where it is.
        Assert.InRange(fix.GetProperty("levelMmAfter30Days").GetDouble(), 4, 16);
        Assert.Contains("2.4 L", fix.GetProperty("changes")[0].GetString()!, StringComparison.Ordinal);
        var next = json.RootElement.GetProperty("nextMeasurement");
        Assert.Contains("level", next.GetProperty("what").GetString()!, StringComparison.Ordinal);
        Assert.True(next.GetProperty("if").GetArrayLength() >= 2);
        Assert.True(json.RootElement.TryGetProperty("ignored", out _));
        Assert.True(json.RootElement.TryGetProperty("elapsedMs", out _));
    }

    [Fact]
    public void The_list_names_symptoms_and_facts()
    {
        var run = Cli.Run("diagnose", "--list");
        Assert.Equal(0, run.Code);
        Assert.Contains("ventTaped", run.Out, StringComparison.Ordinal);
        Assert.Contains("frogs sit on the wood", run.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Words_and_facts_that_are_not_known_are_told_and_refuse_nothing()
    {
        using var scratch = new Scratch();
        var file = scratch.Write(
            "case.json",
            $$"""
            { "design": "{{Design}}", "symptoms": ["the tank hums in b flat"], "facts": { "moonPhase": 3 } }
            """
        );
        var run = Cli.Run("diagnose", file);
        Assert.Equal(0, run.Code);
        Assert.Contains("hums in b flat", run.Out, StringComparison.Ordinal);
        Assert.Contains("moonPhase", run.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("NaN", run.Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("""{ "symptoms": [] }""", "design")]
    [InlineData("""{ "design": "nowhere.viv.yaml" }""", "no such file")]
    [InlineData("""{ "design": "DESIGN", "facts": { "ventTaped": "perhaps" } }""", "ventTaped")]
    [InlineData(
        """{ "design": "DESIGN", "readings": [ { "at": "soon", "kind": "level", "mm": 3 } ] }""",
        "soon"
    )]
    [InlineData("""{ "design": "DESIGN", "symtoms": [] }""", "symtoms")]
    public void What_cannot_be_used_is_told_in_a_sentence(string text, string told)
    {
        using var scratch = new Scratch();
        var file = scratch.Write("case.json", text.Replace("DESIGN", Design, StringComparison.Ordinal));
        Assert.Contains(told, Cli.Refuses("diagnose", file).Error, StringComparison.Ordinal);
        Cli.RefusesInJson("diagnose", file);
    }

    private static string Design =>
        Path.Combine(Cli.Root, "samples", "t-17-old-show-tank.viv.yaml").Replace('\\', '/');
}
