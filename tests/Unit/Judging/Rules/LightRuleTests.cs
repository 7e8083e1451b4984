using System.Globalization;
using System.Text;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Photometry;
using Litterfall.UnitTests.House;
using Xunit;

namespace Litterfall.UnitTests.Judging.Rules;

/// <summary>
/// Rules on light. Light grows evenly with the lumens, so one run tells which lumens bring a plant to a share
/// of its band. Fittonia, a plant for low light: lives at 50 foot-candles (University of Florida, read) and
/// is held to grow well from 75 (University of Illinois, read): 50 and 75 fc × 10.764 lx × 0.0144 µmol/lx ×
/// 0.0432 = 0.33 and 0.50 mol/m²/d; it bears 5 (from memory).
/// </summary>
public sealed class LightRuleTests
{
    private const double Survival = 0.33;
    private const double BandLow = 0.5;
    private const double Most = 5.0;
    private const string Lid = "lid: { material: glass, thickness: 4 mm, gap: 2 mm }\n";
    private const string Mesh = "lid: { material: steel-gauze-1.0, share: 100 % }\n";
    private const string Plant = "plants: [ { plant: fittonia-albivenis, at: { x: 22 cm, y: 22 cm } } ]\n";
    private const string Mossy =
        "{ soil: { recipe: ready-rainforest, depth: 7 cm }, moss: { material: sheet-moss, depth: 2 cm, "
        + "cover: 100 % } }";

    /// <summary>Below the good band a plant lives and looks otherwise: a note, however sure it is.</summary>
    [Fact]
    public void A_plant_with_less_light_than_its_good_band_is_noted()
    {
        var dark = At(0.75 * BandLow);
        Trips.Check("plant-too-dark", Severity.Note, dark, At(1.1 * BandLow));
        var finding = dark.Finding("plant-too-dark")!;
        Assert.Contains("about 35 % more light", finding.Fix, StringComparison.Ordinal);
        Assert.Contains("greener, longer leaves", finding.Text, StringComparison.Ordinal);
        Assert.Equal("illinois-indoor-light", finding.Source.Source);
    }

    /// <summary>Nothing between the good band and all it bears is told.</summary>
    [Theory]
    [InlineData(1.0)]
    [InlineData(2.0)]
    [InlineData(4.0)]
    public void A_plant_between_good_and_most_is_left_alone(double daily)
    {
        var fine = At(daily);
        Assert.All(["plant-below-compensation", "plant-too-dark", "plant-too-bright"], slug =>
            Assert.Null(fine.Finding(slug))
        );
    }

    [Fact]
    public void The_lumens_a_finding_asks_for_make_it_go()
    {
        var dark = At(0.75 * BandLow);
        double lumens = dark.Numbers.Light!.Lamps.Sum(l => l.Lumens.Si);
        Assert.Contains(
            "about 35 % more light",
            dark.Finding("plant-too-dark")!.Fix,
            StringComparison.Ordinal
        );
        Assert.Null(Pose(Lid + Plant + Lamp(1.35 * lumens)).Finding("plant-too-dark"));
    }

    /// <summary>A fix that changes nothing is none: 1.004 times the light is told as 5 % more.</summary>
    [Theory]
    [InlineData(1.004, "about 5 % more light")]
    [InlineData(1.31, "about 35 % more light")]
    [InlineData(1.5, "1.5 times the light")]
    [InlineData(2.31, "2.4 times the light")]
    public void More_light_is_always_more(double factor, string words) =>
        Assert.Equal(words, Litterfall.Judging.Light.MoreLight.Words(factor));

    [Fact]
    public void The_height_a_finding_asks_for_makes_it_go()
    {
        var dark = At(0.75 * BandLow);
        string fix = dark.Finding("plant-too-dark")!.Fix;
        int from = fix.IndexOf("its leaves at ", StringComparison.Ordinal) + "its leaves at ".Length;
        string height = fix[from..fix.IndexOf(" cm", from, StringComparison.Ordinal)];
        double lumens = dark.Numbers.Light!.Lamps.Sum(l => l.Lumens.Si);
        string plant =
            $"plants: [ "
            + $"{{ plant: fittonia-albivenis, mounted: true, "
            + $"at: {{ x: 22 cm, y: 22 cm, z: {height} cm }} }} ]\n";
        var light = Pose(Lid + plant + Lamp(lumens)).Numbers.Light!.Plants[0];
        Assert.True(light.Daily.Value.Value > 0.97 * BandLow, light.Words);
    }

    [Fact]
    public void A_plant_that_would_starve_is_told() =>
        Trips.Check("plant-below-compensation", Severity.Caution, At(0.9 * Survival), At(1.1 * Survival));

    [Fact]
    public void A_plant_with_more_light_than_its_band_is_told()
    {
        Trips.Check("plant-too-bright", Severity.Caution, At(1.6 * Most), At(0.95 * Most));
        Assert.Equal(Severity.Note, At(1.05 * Most).Finding("plant-too-bright")!.Severity);
    }

    [Fact]
    public void Moss_that_bleaches_is_told()
    {
        Assert.Null(Pose(Lid + Lamp(1000), Mossy).Finding("moss-too-bright"));
        RuleCheck.Trips("moss-too-bright", Severity.Caution, Pose(Lid + Lamp(9000), Mossy));
    }

    [Fact]
    public void Frogs_without_shade_are_told()
    {
        var note = Pose(Lid + Lamp(1500) + RuleCheck.Frogs);
        Assert.Equal(Severity.Note, RuleCheck.Trips("no-shade-refuge", Severity.Note, note).Severity);
        Assert.Equal("own-choice", note.Finding("no-shade-refuge")!.Source.Source);
        RuleCheck.Trips("no-shade-refuge", Severity.Caution, Pose(Lid + Lamp(9000) + RuleCheck.Frogs));
        Assert.Null(Pose(Lid + Lamp(9000)).Finding("no-shade-refuge"));
    }

    /// <summary>
    /// One large shade holds all animals. A flat of 35 cm takes 31 × 14 cm of the ground; two side by side
    /// are one shade of 31 × 28 cm, 45 % of a floor of 44 × 44 cm, with a corner 14 cm away at most. Four at
    /// the end of a floor of 119 × 44 cm are 33 % of it, but its other end is more than 50 cm away.
    /// </summary>
    [Theory]
    [InlineData("45 cm", new[] { 22, 11, 22, 25 }, true)]
    [InlineData("120 cm", new[] { 16, 11, 16, 25, 48, 11, 48, 25 }, false)]
    public void One_large_shade_holds_all_animals(string length, int[] places, bool isEnough)
    {
        string box = RuleCheck.Cube.Replace("length: 45 cm", $"length: {length}", StringComparison.Ordinal);
        string flats = string.Join(
            ", ",
            places
                .Chunk(2)
                .Select(at =>
                    FormattableString.Invariant(
                        $"{{ material: cork-bark, volume: 1 L, length: 35 cm, at: {{ x: {at[0]} cm, "
                    ) + FormattableString.Invariant($"y: {at[1]} cm }} }}")
                )
        );
        var design = RuleCheck.Pose(
            Lid + Lamp(15000) + RuleCheck.Frogs + $"\nhardscape: [ {flats} ]\n",
            RuleCheck.Floor,
            box
        );
        var refuge = design.Numbers.Light!.Refuge;
        Assert.True(refuge.Share.Si > 0.30);
        Assert.True(refuge.Places.Si >= 3);
        Assert.Equal(isEnough, refuge.Reach.Si <= 0.30);
        Assert.Equal(isEnough, design.Finding("no-shade-refuge") is null);
    }

    [Fact]
    public void A_lamp_over_mesh_is_told() =>
        Trips.Check("lamp-over-mesh", Severity.Note, Pose(Mesh + Lamp(2000)), Pose(Lid + Lamp(2000)));

    [Fact]
    public void Ultraviolet_behind_glass_is_nil()
    {
        const string tube = "lamps: [ { lamp: uvb-tube-t5-24w, above: 3 cm } ]\n";
        Trips.Check("uvb-behind-glass", Severity.Caution, Pose(Lid + tube), Pose(Lid + Lamp(1000)));
        Assert.Contains(
            "almost no UV-B",
            Pose(Lid + tube).Finding("uvb-behind-glass")!.Text,
            StringComparison.Ordinal
        );
        Assert.Contains(
            "30 to 50 %",
            Pose(Mesh + tube).Finding("uvb-behind-glass")!.Text,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_reading_far_from_what_was_computed_is_told_and_turns_the_map()
    {
        var plain = Pose(Lid + Plant + Lamp(2000)).Numbers.Light!;
        var place = new Litterfall.Physics.Light.Point3(0.22, 0.10, 0.20);
        double computed = plain.Along([(place.X, place.Y, place.Z)])[0] / plain.Lamps[0].Photons.Si * 1e-6;
        PosedDesign Read(double factor) =>
            Pose(
                Lid
                    + Plant
                    + Lamp(2000)
                    + string.Create(
                        CultureInfo.InvariantCulture,
                        $"light: "
                            + $"{{ reading: {{ at: {{ x: 22 cm, y: 10 cm, z: 20 cm }}, "
                            + $"lux: {factor * computed:0.000} lx }} }}\n"
                    )
            );
        Trips.Check("light-reading-far", Severity.Caution, Read(2.0), Read(1.2));
        var turned = Read(1.2).Numbers.Light!;
        Assert.Equal(1.2, turned.Turned!.Si, 3);
        Assert.Equal(
            1.2 * plain.GroundMean.Value.Si,
            turned.GroundMean.Value.Si,
            1e-3 * plain.GroundMean.Value.Si
        );
        Assert.True(turned.Absolute.Si < plain.Absolute.Si);
    }

    /// <summary>Of this file more light comes out than its lamps send: a note beside the plan.</summary>
    [Fact]
    public void An_odd_luminaire_file_is_told()
    {
        var odd = WithFile("IESNA91\nTILT=NONE\n1 100 1 2 1 1 2 0 0 0\n1 1 18\n0 90\n0\n400 100\n");
        var plain = WithFile("IESNA91\nTILT=NONE\n1 -1 1 2 1 1 2 0 0 0\n1 1 18\n0 90\n0\n400 100\n");
        Trips.Check("lamp-file-odd", Severity.Note, odd, plain);
        Assert.True(plain.Numbers.Light!.Absolute.Si < 0.16);
    }

    internal static PosedDesign WithFile(string text)
    {
        var file = LampFile.Read("l.ies", Encoding.UTF8.GetBytes(text)).Value!;
        var files = new DesignFiles { Lamps = DesignFiles.None.Lamps.Add("l.ies", file) };
        return Posed.Text(
            $"litterfall: 1\nname: posed\nbox: {RuleCheck.Cube}\nfloor: {RuleCheck.Floor}\n{Lid}"
                + "lamps: [ { lamp: led-bar-6500k, file: l.ies, above: 3 cm } ]\n",
            SampleFiles.Catalog,
            files
        );
    }

    private static string Lamp(double lumens) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"lamps: [ {{ lamp: led-panel-6500k, lumens: {lumens:0.###}, watts: 20, above: 3 cm }} ]\n"
        );

    /// <summary>The plant at so many mol/m² a day.</summary>
    private static PosedDesign At(double daily)
    {
        double one = Pose(Lid + Plant + Lamp(1000)).Numbers.Light!.Plants[0].Daily.Value.Value;
        return Pose(Lid + Plant + Lamp(1000.0 * daily / one));
    }

    private static PosedDesign Pose(string more, string floor = RuleCheck.Floor) =>
        RuleCheck.Pose(more, floor);
}
