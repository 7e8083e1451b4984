using System.Text.Json.Nodes;

namespace Litterfall.Tests.EndToEnd;

/// <summary>
/// Light in <c>check</c>, <c>why</c>, <c>forecast</c> and the papers, and the files a design names.
/// </summary>
public sealed class LightTests
{
    private const string Design = """
        litterfall: 1
        name: lit
        box: { outside: { length: 60 cm, depth: 45 cm, height: 45 cm }, glass: { walls: 5 mm, base: 5 mm } }
        floor: { soil: { recipe: ready-rainforest, depth: 7 cm } }
        lid: { material: glass, thickness: 4 mm, gap: 2 mm }
        lamps: [ LAMP ]
        plants: [ { plant: fittonia-albivenis, at: { x: 30 cm, y: 20 cm }, leaves: WAY } ]
        room: { temperature: 21 C, humidity: 45 % }
        """;

    private const string File = """
        IES:LM-63-2019
        [TEST] made up
        TILT=NONE
        1 -1 1 3 1 1 2 0.03 0.5 0
        1 1.10000 18
        0 45 90
        0
        600 420 0
        """;

    private static readonly string[] Verdicts =
    [
        "too dark to live",
        "darker than good",
        "perhaps darker than good",
        "within its good band",
        "within its color band",
        "perhaps too bright",
        "too bright",
    ];

    /// <summary>The samples with lamps.</summary>
    public static TheoryData<string> Lit =>
        [
            .. Cli.Samples.Where(sample =>
                System
                    .IO.File.ReadAllText(Path.Combine(Cli.Root, sample))
                    .Contains("\nlamps:", StringComparison.Ordinal)
            ),
        ];

    /// <summary>Every plant's verdict names its light, its band and its source.</summary>
    [Theory]
    [MemberData(nameof(Lit))]
    public void Every_plant_of_a_lit_sample_has_its_verdict(string sample)
    {
        var light = Cli.Once("check", sample, "--json").Json["light"]!;
        Assert.True(light["soilPpfdMean"]!.GetValue<double>() > 0.0);
        Assert.True(light["soilPpfdMeanLow"]!.GetValue<double>() < light["soilPpfdMean"]!.GetValue<double>());
        Assert.True(light["soilDliHigh"]!.GetValue<double>() > light["soilDli"]!.GetValue<double>());
        foreach (var plant in light["plants"]!.AsArray())
        {
            Assert.Contains(plant!["verdict"]!.GetValue<string>(), Verdicts);
            Assert.True(plant["ppfd"]!.GetValue<double>() > 0.0);
            Assert.True(plant["bandDliLow"]!.GetValue<double>() < plant["bandDliHigh"]!.GetValue<double>());
            Assert.NotEqual("", plant["source"]!.GetValue<string>());
            Assert.NotEqual("", plant["place"]!.GetValue<string>());
        }
    }

    /// <summary>
    /// Photons and lux are bound by the spectrum family, and a day by its hours: 12 h less one ramp.
    /// </summary>
    [Fact]
    public void Photons_follow_from_lux_and_a_day_from_its_hours()
    {
        var light = Check(
            "{ lamp: led-bar-6500k, lumens: 2000, above: 3 cm, on: \"08:00\", off: \"20:00\", ramp: 1 h }",
            "up"
        );
        Assert.Equal(
            light["soilLuxMean"]!.GetValue<double>() * 14.409e-3,
            light["soilPpfdMean"]!.GetValue<double>(),
            1e-6
        );
        Assert.Equal(
            light["soilPpfdMean"]!.GetValue<double>() * 11.0 * 0.0036,
            light["soilDli"]!.GetValue<double>(),
            1e-6
        );
    }

    /// <summary>LED light falls to 70 % in the hours of the library: 30,000 h.</summary>
    [Fact]
    public void An_old_lamp_gives_less()
    {
        double fresh = Check("{ lamp: led-bar-6500k, lumens: 2000 }", "up")[
            "soilPpfdMean"
        ]!.GetValue<double>();
        double old = Check("{ lamp: led-bar-6500k, lumens: 2000, age: 30000 h }", "up")[
            "soilPpfdMean"
        ]!.GetValue<double>();
        Assert.Equal(0.7, old / fresh, 1e-9);
    }

    [Fact]
    public void A_stated_photon_flux_takes_the_place_of_lumens()
    {
        var one = Check("{ lamp: led-bar-6500k, lumens: 2000, photons: 28.818 umol/s }", "up");
        var two = Check("{ lamp: led-bar-6500k, lumens: 2000 }", "up");
        Assert.Equal(two["soilPpfdMean"]!.GetValue<double>(), one["soilPpfdMean"]!.GetValue<double>(), 1e-6);
    }

    [Theory]
    [InlineData("up")]
    [InlineData("front")]
    [InlineData("left")]
    [InlineData("all")]
    public void Leaves_may_face_any_way(string way)
    {
        var plant = Check("{ lamp: led-bar-6500k, lumens: 2000 }", way)["plants"]![0]!;
        double got = plant["ppfd"]!.GetValue<double>();
        string same = way switch
        {
            "up" => "ppfdLevel",
            "all" => "ppfdAllRound",
            _ => "ppfd",
        };
        Assert.Equal(plant[same]!.GetValue<double>(), got, 1e-9);
        Assert.True(got <= plant["ppfdLevel"]!.GetValue<double>() + 1e-9);
    }

    [Fact]
    public void A_luminaire_file_and_a_spectrum_are_read_beside_the_design()
    {
        using var scratch = new Scratch();
        scratch.Write("bar.ies", File);
        // Equal energy: 18.899 µmol/s of a kilolumen by the tables of CIE.
        scratch.Write("flat.csv", "nm,power\n380,1\n780,1\n");
        string design = scratch.Write(
            "lit.viv.yaml",
            Design
                .Replace(
                    "LAMP",
                    "{ lamp: led-bar-6500k, file: bar.ies, spectrum: flat.csv, turn: 90 deg " + "}",
                    StringComparison.Ordinal
                )
                .Replace("WAY", "up", StringComparison.Ordinal)
        );
        var light = Cli.Run("check", design, "--json").Json["light"]!;
        Assert.Equal(18.899, light["lamps"]![0]!["umolPerKilolumen"]!.GetValue<double>(), 0.02);
        Assert.True(light["uncertaintyPercent"]!.GetValue<double>() < 15.0);
        Assert.Contains("way the file was made", Cli.Run("check", design).Out, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("{ lamp: led-bar-6500k, file: none.ies }", "there is no file 'none.ies'")]
    [InlineData("{ lamp: led-bar-6500k, file: bad.ies }", "there is no TILT line")]
    [InlineData("{ lamp: led-bar-6500k, spectrum: none.csv }", "there is no file 'none.csv'")]
    [InlineData("{ lamp: led-bar-6500k, beam: 5 deg }", "this is no beam")]
    [InlineData("{ lamp: led-bar-6500k, turn: 90 }", "90")]
    [InlineData("{ lamp: led-bar-6500k, length: 0 cm }", "this is zero")]
    [InlineData("{ lamp: led-bar-6500k, photons: 30 lm }", "32 umol/s")]
    public void Wrong_lamps_get_one_sentence(string lamp, string words)
    {
        using var scratch = new Scratch();
        scratch.Write("bad.ies", "IESNA91\nno lamp\n");
        string design = scratch.Write(
            "lit.viv.yaml",
            Design
                .Replace("LAMP", lamp, StringComparison.Ordinal)
                .Replace("WAY", "up", StringComparison.Ordinal)
        );
        Assert.Contains(words, Cli.Refuses("check", design).Error, StringComparison.Ordinal);
    }

    [Fact]
    public void Why_leads_from_a_plants_light_to_its_lamp()
    {
        var ended = Cli.Run(
            "why",
            Cli.Samples.First(s => s.Contains("ld-201", StringComparison.Ordinal)),
            "light.plants.0.ppfd"
        );
        Assert.Equal(0, ended.Code);
        foreach (
            string word in new[]
            {
                "lamps[0].lumens",
                "cie-illuminants",
                "light past dirt on the lid",
                "inside height",
            }
        )
        {
            Assert.Contains(word, ended.Out, StringComparison.Ordinal);
        }
    }

    [Fact]
    public void A_forecast_has_light_hour_by_hour()
    {
        var series = Cli.Run(
            "forecast",
            Cli.Samples.First(s => s.Contains("ld-201", StringComparison.Ordinal)),
            "--days",
            "2",
            "--json"
        ).Json["series"]!;
        double[] light = [.. series["soilPpfd"]!.AsArray().Select(v => v!.GetValue<double>())];
        Assert.Equal(series["hour"]!.AsArray().Count, light.Length);
        Assert.Equal(12, light[1..25].Count(v => v > 0.0));
        Assert.Equal(0.0, light[8]);
        Assert.True(light[9] > 0.0 && light[20] > 0.0 && light[21] == 0.0);
    }

    private static JsonNode Check(string lamp, string way)
    {
        using var scratch = new Scratch();
        string text = Design
            .Replace("LAMP", lamp, StringComparison.Ordinal)
            .Replace("WAY", way, StringComparison.Ordinal);
        string design = scratch.Write("lit.viv.yaml", text);
        return Cli.Run("check", design, "--json").Json["light"]!;
    }
}
