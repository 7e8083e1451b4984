using System.Text.Json.Nodes;

namespace Litterfall.Tests.EndToEnd.Lab;

/// <summary>
/// <c>lab light</c>: keys, files beside the case, refusals. Numbers are closed forms of a panel and of a
/// measured bar, as in
/// the verification list.
/// </summary>
public sealed class LightTests
{
    private const string Box = """ "box": { "lengthM": 0.6, "depthM": 0.45, "heightM": 0.45 } """;
    private const string Panel =
        """ { "rectangle": { "centerM": [0.3, 0.225, 0.5], "sizeM": [0.4, 0.1], "lumens": 2000 } } """;
    private const string Pane =
        """ { "glass": { "thicknessMm": 4, "refractiveIndex": 1.52, "extinctionPerM": 5 } } """;
    private const string Middle = """ "points": [ { "positionM": [0.3, 0.225, 0] } ] """;
    private const string Bar = """
        IESNA:LM-63-2002
        TILT=NONE
        1 -1 1 2 1 1 2 0 0 0
        1 1 10
        0 90
        0
        100 100
        """;

    [Fact]
    public void A_bare_panel_gives_points_a_map_its_statistics_and_where_light_ends()
    {
        var result = Solve(
            $$"""
            { {{Box}}, "lid": "none", "lamps": [ {{Panel}} ],
              "points": [ { "positionM": [0.3, 0.225, 0] },
                          { "positionM": [0.3, 0.45, 0.25], "normal": [0, -2, 0] } ],
              "map": { "heightM": 0, "cellsX": 60, "cellsY": 45 } }
            """
        );
        string[] keys = ["pointsLux", "mapLux", "statistics", "fluxBudgetPercent", "notes", "elapsedMs"];
        Assert.Equal(keys.Order(), result.AsObject().Select(m => m.Key).Order());
        Assert.Equal(2294.237, result["pointsLux"]![0]!.GetValue<double>(), 2.0);
        Assert.Equal(2278.886, result["pointsLux"]![1]!.GetValue<double>(), 2.0);
        var rows = result["mapLux"]!.AsArray();
        Assert.Equal(45, rows.Count);
        Assert.All(rows, row => Assert.Equal(60, row!.AsArray().Count));
        Assert.Equal(1764.2124, result["statistics"]!.Number("mean"), 1.8);
        Assert.Equal(0.61709, result["statistics"]!.Number("minOverMean"), 1e-3);
        Assert.Equal(0.47459, result["statistics"]!.Number("minOverMax"), 1e-3);
        Assert.Equal(0.1653, result["statistics"]!.Number("cv"), 1e-3);
        Assert.Equal(1375.663, result["statistics"]!.Number("p10"), 1.4);
        var budget = result["fluxBudgetPercent"]!.AsObject();
        Assert.Equal(100.0, budget.Sum(share => share.Value!.GetValue<double>()), 1e-6);
        Assert.Equal(23.84, budget["floor"]!.GetValue<double>(), 0.15);
    }

    [Fact]
    public void Every_form_of_wall_lid_lamp_and_thing_is_accepted()
    {
        var result = Solve(
            $$"""
            { {{Box}},
              "walls": { "left": "open", "right": "black", "front": {{Pane}},
                         "back": { "diffuse": { "reflectance": 0.25 } },
                         "floor": { "diffuse": { "reflectance": 0.1 } } },
              "lid": { "mesh": { "openFraction": 0.64 } },
              "lamps": [ {{Panel}}, { "point": { "positionM": [0.3, 0.2, 0.6], "candela": 20 } },
                         { "point": { "positionM": [0.3, 0.2, 0.6], "lumens": 50 } },
                         { "disc": { "centerM": [0.2, 0.2, 0.5], "radiusM": 0.05, "lumens": 300 } },
                         { "line": { "fromM": [0.1, 0.3, 0.5], "toM": [0.5, 0.3, 0.52], "lumens": 400 } } ],
              "blocks": [ { "fromM": [0.1, 0.1, 0], "toM": [0.2, 0.2, 0.1], "reflectance": 0.2 } ],
              "canopies": [ { "fromM": [0.3, 0.1, 0.1], "toM": [0.5, 0.3, 0.2],
                              "leafAreaPerM": 10, "g": 0.5 } ],
              "points": [ { "positionM": [0.4, 0.2, 0] } ] }
            """
        );
        Assert.InRange(result["pointsLux"]![0]!.GetValue<double>(), 100.0, 4000.0);
        Assert.Null(result["mapLux"]);
        string[] ends = ["left", "right", "front", "back", "floor", "lid", "blocks", "canopies", "lost"];
        Assert.Equal(ends, result["fluxBudgetPercent"]!.AsObject().Select(s => s.Key));
    }

    /// <summary>100 cd below, 0.4 m over the point: 625 lx; the path counts from the case file.</summary>
    [Fact]
    public void A_luminaire_file_is_read_beside_the_case()
    {
        using var scratch = new Scratch();
        scratch.Write("bar.ies", Bar);
        var ended = Cli.Run("lab", "light", scratch.Write("case.json", WithFile("bar.ies")), "--json");
        Assert.True(ended.Code == 0, ended.ToString());
        Assert.Equal(625.0, ended.Json["pointsLux"]![0]!.GetValue<double>(), 0.01);
    }

    [Fact]
    public void A_wrong_luminaire_file_is_told_with_its_place()
    {
        using var scratch = new Scratch();
        scratch.Write("bar.ies", Bar.Replace("100 100", "100 -1", StringComparison.Ordinal));
        var ended = Cli.Refuses("lab", "light", scratch.Write("case.json", WithFile("bar.ies")));
        Assert.Contains("an intensity is negative", ended.Error, StringComparison.Ordinal);
        Assert.Contains("line 7", ended.Error, StringComparison.Ordinal);
        Cli.Refuses("lab", "light", scratch.Write("other.json", WithFile("none.ies")));
    }

    [Theory]
    [InlineData("\"lengthM\": 0.6", "\"lengthM\": -1", "lengthM")]
    [InlineData("\"lid\": \"none\"", "\"lid\": \"wood\"", "lid")]
    [InlineData("\"sizeM\": [0.4, 0.1]", "\"sizeM\": [0.4]", "sizeM")]
    [InlineData("\"lumens\": 2000", "\"lumen\": 2000", "lumen")]
    [InlineData("\"positionM\": [0.3, 0.225, 0]", "\"positionM\": [0.9, 0.225, 0]", "outside the box")]
    [InlineData(
        "\"positionM\": [0.3, 0.225, 0]",
        "\"positionM\": [0.3, 0.225, 0], \"normal\": [0, 0, 0]",
        "normal"
    )]
    [InlineData("\"points\": [ { \"positionM\": [0.3, 0.225, 0] } ]", "\"points\": []", "asks for nothing")]
    [InlineData("\"rectangle\"", "\"square\"", "the lamp ha")]
    public void What_is_wrong_is_told(string good, string bad, string words)
    {
        string text = $$"""{ {{Box}}, "lid": "none", "lamps": [ {{Panel}} ], {{Middle}} }""";
        Assert.Contains(good, text, StringComparison.Ordinal);
        using var scratch = new Scratch();
        string file = scratch.Write("case.json", text.Replace(good, bad, StringComparison.Ordinal));
        Assert.Contains(words, Cli.Refuses("lab", "light", file).Error, StringComparison.Ordinal);
        Cli.RefusesInJson("lab", "light", file);
    }

    [Fact]
    public void Text_shows_points_statistics_and_ends()
    {
        using var scratch = new Scratch();
        string file = scratch.Write(
            "case.json",
            $$"""
            { {{Box}}, "lid": {{Pane}}, "lamps": [ {{Panel}} ], {{Middle}},
              "map": { "heightM": 0.1, "cellsX": 6, "cellsY": 4 } }
            """
        );
        var ended = Cli.Run("lab", "light", file);
        Assert.Equal(0, ended.Code);
        foreach (string word in new[] { "2064.3", "minOverMean", "floor", "lost" })
        {
            Assert.Contains(word, ended.Out, StringComparison.Ordinal);
        }
    }

    private static string WithFile(string path) =>
        $$"""
            { {{Box}}, "lid": "none",
              "lamps": [ { "file": { "path": "{{path}}", "centerM": [0.3, 0.225, 0.5],
                                    "turnDegrees": 90 } } ],
              "points": [ { "positionM": [0.3, 0.225, 0.1] } ] }
            """;

    private static JsonNode Solve(string text)
    {
        using var scratch = new Scratch();
        var ended = Cli.Run("lab", "light", scratch.Write("case.json", text), "--json");
        Assert.True(ended.Code == 0, ended.ToString());
        Assert.Equal("", ended.Error);
        return ended.Json;
    }
}
