using System.Collections.Immutable;
using Litterfall.Domain;
using Litterfall.Domain.DesignFile;
using Litterfall.Web.Desk.Form;
using Litterfall.Web.Library;

namespace Litterfall.UnitTests.Web.Form;

/// <summary>What people type into fields, and things of their own places.</summary>
public sealed class FieldTests
{
    private static readonly UnitPreferences Us = new(
        ImmutableDictionary<string, string>.Empty.Add("length", "in").Add("temperature", "F")
    );

    private static DesignDocument Read(string text)
    {
        var reading = DesignReader.Read("field", text);
        Assert.True(reading.IsGood, string.Join('\n', reading.Faults));
        return reading.Value!;
    }

    private const string Text =
        "litterfall: 1\nname: field\nbox: { inside: { length: 60 cm, depth: 45 cm, height: 60 cm } }\n"
        + "floor: { soil: { recipe: ready-rainforest, depth: 7 cm } }\n"
        + "room: { temperature: 21 C, humidity: 50 % }\n"
        + "plants: [ { plant: fittonia-albivenis, count: 3 } ]\n";

    private static PartField Field(DesignDocument document, string path) =>
        FormBook.Of(document).SelectMany(p => p.AllFields).First(f => f.Path == path);

    /// <summary>Own worked examples: the middle of 19 and 24 is 21.5, half of their distance 2.5.</summary>
    [Theory]
    [InlineData("19-24 °C", "21.5 C", "2.5 C")]
    [InlineData("19–24 C", "21.5 C", "2.5 C")]
    [InlineData("66 to 75 F", "70.5 F", "4.5 F")]
    [InlineData("18,5 – 22,5", "20.5 C", "2 C")]
    public void A_range_is_a_mean_and_plus_or_minus(string typed, string mean, string swing)
    {
        var document = Read(Text);
        var set = FieldEdit.Set(document, Field(document, "room.temperature"), typed, UnitPreferences.Metric);
        Assert.True(set.IsGood, string.Join('\n', set.Faults));
        Assert.Equal(mean, set.Value!.Design.Room!.Temperature!.Value.Text);
        Assert.Equal(swing, set.Value.Design.Room.Swing!.Value.Text);
    }

    [Fact]
    public void What_is_no_temperature_says_what_to_enter()
    {
        var document = Read(Text);
        var set = FieldEdit.Set(
            document,
            Field(document, "room.temperature"),
            "warm",
            UnitPreferences.Metric
        );
        Assert.False(set.IsGood);
        Assert.Contains("19–24 °C", FaultWords.Of(set.Faults[0]), StringComparison.Ordinal);
        Assert.DoesNotContain("temperature:", FaultWords.Of(set.Faults[0]), StringComparison.Ordinal);
    }

    /// <summary>35 7/16 in is 35.4375 × 25.4 mm = 900.1125 mm, the least of the three.</summary>
    [Theory]
    [InlineData("35 1/2 in, 35 7/16 in, 35 9/16 in")]
    [InlineData("35 1/2, 35 7/16, 35 9/16 in")]
    [InlineData("35 1/2 in; 35 7/16 in and 35 9/16 in")]
    public void An_edge_takes_its_three_readings(string typed)
    {
        var document = Read(Text);
        var set = FieldEdit.Set(
            document,
            Field(document, "box.inside.length"),
            typed,
            UnitPreferences.Metric
        );
        Assert.True(set.IsGood, string.Join('\n', set.Faults));
        var readings = set.Value!.Design.Box.Inside!.Length;
        Assert.Equal(3, readings.Count);
        Assert.Equal(0.9001125, readings.Min(r => r.Si), 1e-9);
        Assert.Equal(
            "35 1/2 in, 35 7/16 in, 35 9/16 in",
            FieldEdit.TextOf(set.Value, Field(set.Value, "box.inside.length"))
        );
    }

    /// <summary>
    /// A bare number keeps the unit that stood there; where nothing stood, the reader's own.
    /// </summary>
    [Fact]
    public void A_unit_is_not_typed_twice()
    {
        var document = Read(Text);
        var depth = FieldEdit.Set(document, Field(document, "floor.soil.depth"), "8", Us);
        Assert.Equal("8 cm", depth.Value!.Design.Floor.Soil!.Depth!.Value.Text);
        var swing = FieldEdit.Set(document, Field(document, "room.swing"), "3", Us);
        Assert.Equal("3 F", swing.Value!.Design.Room!.Swing!.Value.Text);
        var sill = FieldEdit.Set(document, Field(document, "box.sill"), "4 1/2", Us);
        Assert.Equal(0.1143, sill.Value!.Design.Box.Sill!.Value.Si, 1e-9);
    }

    [Theory]
    [InlineData("7 cm", 1, "7.5 cm")]
    [InlineData("7.3 cm", 1, "8 cm")]
    [InlineData("70 mm", -1, "65 mm")]
    [InlineData("5 mm", 1, "6 mm")]
    [InlineData("2 1/2 in", 1, "2 3/4 in")]
    [InlineData("0 cm", -1, "0 cm")]
    public void Steps_are_such_as_hands_measure(string from, int steps, string to) =>
        Assert.Equal(to, FieldUnits.Stepped(from, Field(Read(Text), "floor.soil.depth").Key!, steps));

    /// <summary>Three of a kind are three, each in its own place, and nothing else changes.</summary>
    [Fact]
    public void Three_plants_of_a_line_are_three()
    {
        var apart = Specimens.Apart(Read(Text), 0);
        Assert.True(apart.IsGood, string.Join('\n', apart.Faults));
        var plants = apart.Value!.Design.Plants;
        Assert.Equal(3, plants.Count);
        Assert.All(plants, p => Assert.Equal(1, p.Count));
        Assert.All(plants, p => Assert.Equal("fittonia-albivenis", p.Kind));
        Assert.Equal(3, plants.Select(p => p.At!.X.Si).Distinct().Count());
        Assert.All(plants, p => Assert.InRange(p.At!.X.Si, 0, 0.6));
    }

    [Fact]
    public void One_more_stands_beside_the_first()
    {
        var document = Read(Text.Replace("count: 3", "at: { x: 20 cm, y: 10 cm }", StringComparison.Ordinal));
        var more = Specimens.Again(document, "plants[0]").Value!;
        Assert.Equal(2, more.Design.Plants.Count);
        Assert.Equal("28 cm", more.Design.Plants[1].At!.X.Text);
        Assert.Equal("10 cm", more.Design.Plants[1].At!.Y.Text);
    }

    /// <summary>Whatever is done to the steps, their shares make the whole length.</summary>
    [Fact]
    public void Shares_of_steps_always_make_the_whole()
    {
        var stepped = FormSwitch.Soil.Turn(Read(Text), "steps").Value!;
        stepped = SoilSteps.Split(stepped).Value!;
        Assert.Equal(3, stepped.Design.Floor.Soil!.Zones.Count);
        Whole(stepped);
        stepped = SoilSteps.Shared(stepped, 0, 0.7).Value!;
        Assert.Equal(0.7, stepped.Design.Floor.Soil!.Zones[0].Share.Si, 1e-9);
        Whole(stepped);
        // More than both have cannot be given.
        stepped = SoilSteps.Shared(stepped, 0, 5).Value!;
        Assert.True(stepped.Design.Floor.Soil!.Zones[1].Share.Si >= SoilSteps.Least - 1e-9);
        Whole(stepped);
        stepped = SoilSteps.Without(stepped, 1).Value!;
        Assert.Equal(2, stepped.Design.Floor.Soil!.Zones.Count);
        Whole(stepped);

        static void Whole(DesignDocument document) =>
            Assert.Equal(1, document.Design.Floor.Soil!.Zones.Sum(z => z.Share.Si), 1e-9);
    }

    /// <summary>
    /// A level step that gets a depth in front slopes to the depth it had; made level it has one.
    /// </summary>
    [Fact]
    public void A_step_is_level_or_slopes()
    {
        var stepped = FormSwitch.Soil.Turn(Read(Text), "steps").Value!;
        var sloped = FieldEdit
            .Set(stepped, Field(stepped, "floor.soil.zones[1].front"), "5", UnitPreferences.Metric)
            .Value!;
        var zone = sloped.Design.Floor.Soil!.Zones[1];
        Assert.Equal(("5 cm", "7 cm", null), (zone.Front?.Text, zone.Back?.Text, zone.Depth?.Text));
        var level = FieldEdit
            .Set(sloped, Field(sloped, "floor.soil.zones[1].depth"), "6 cm", UnitPreferences.Metric)
            .Value!;
        zone = level.Design.Floor.Soil!.Zones[1];
        Assert.Equal((null, null, "6 cm"), (zone.Front?.Text, zone.Back?.Text, zone.Depth?.Text));
    }

    /// <summary>A sloped soil made level has the mean of both depths: (4 + 9) / 2 = 6.5 cm.</summary>
    [Fact]
    public void A_slope_made_level_keeps_its_soil()
    {
        var sloped = Read(
            Text.Replace("depth: 7 cm } }", "front: 4 cm, back: 9 cm } }", StringComparison.Ordinal)
        );
        var level = FormSwitch.Soil.Turn(sloped, "level").Value!;
        Assert.Equal("6.5 cm", level.Design.Floor.Soil!.Depth!.Value.Text);
        Assert.Null(level.Design.Floor.Soil.Front);
    }
}
