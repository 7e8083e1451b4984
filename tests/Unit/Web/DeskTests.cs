using Litterfall.Documents.Views;
using Litterfall.Domain;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Faults;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Keys;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Judging;
using Litterfall.Quantities.Sizing;
using Litterfall.UnitTests.Instructions.Building;
using Litterfall.UnitTests.Judging;
using Litterfall.UnitTests.Quantities.Measures;
using Litterfall.UnitTests.Quantities.Packs;
using Litterfall.UnitTests.Quantities.Sizing;
using Litterfall.Web;
using Litterfall.Web.Desk;
using Litterfall.Web.Library;

namespace Litterfall.UnitTests.Web;

/// <summary>Handles, typed lengths and units of the desk.</summary>
public sealed class DeskTests
{
    private static readonly (double, double) Room = (185, 170);

    private static DesignDocument Read(string text)
    {
        var reading = DesignReader.Read("desk", text);
        Assert.True(reading.IsGood, string.Join('\n', reading.Faults));
        return reading.Value!;
    }

    /// <summary>Own worked examples: 25.4 mm to the inch, sixteenths reduced.</summary>
    [Theory]
    [InlineData(0.05, "7 cm", "cm", "5 cm")]
    [InlineData(0.0512, "7 cm", "cm", "5.1 cm")]
    [InlineData(0.05, "70 mm", "cm", "50 mm")]
    [InlineData(0.0508, "3 in", "cm", "2 in")]
    [InlineData(0.0523875, "3 1/2 in", "cm", "2 1/16 in")]
    [InlineData(0.01905, "3\"", "cm", "3/4 in")]
    [InlineData(0.05, "", "mm", "50 mm")]
    public void A_length_keeps_the_unit_it_was_typed_in(
        double meters,
        string like,
        string usual,
        string shown
    )
    {
        Assert.Equal(shown, TypedLength.Write(meters, like, usual));
        Assert.True(QuantityText.TryParse<Length>(shown, out var read, out _));
        Assert.Equal(meters, read.Si, 8e-4);
    }

    [Fact]
    public void A_grip_moves_the_value_it_names_and_nothing_else()
    {
        var text =
            "litterfall: 1\nname: g\nbox: { inside: { length: 60 cm, depth: 45 cm, height: 60 cm } }\n"
            + "floor: { drainage: { material: expanded-clay-8-16, depth: 5 cm }, "
            + "soil: { recipe: ready-rainforest, depth: 7 cm } }\n"
            + "plants: [ { plant: ficus-pumila, at: { x: 8 cm, y: 30 cm } } ]\n";
        var grip = new Grip("floor.drainage", "drainage", default, 250)
        {
            Up = new("floor.drainage.depth", 0.05, 0.005, 0.3),
        };
        var moved = GripEdit.Moved(Read(text), grip, (0, 0.012), "cm").Value!;
        Assert.Equal(text.Replace("depth: 5 cm", "depth: 6.2 cm", StringComparison.Ordinal), moved.Text);
        var far = GripEdit.Moved(Read(text), grip, (0, 9), "cm").Value!;
        Assert.Contains("depth: 30 cm", far.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Tilting_a_level_soil_gives_it_a_front_and_a_back()
    {
        var text =
            "litterfall: 1\nname: g\nbox: { inside: { length: 60 cm, depth: 45 cm, height: 60 cm } }\n"
            + "floor:\n  soil: { recipe: ready-rainforest, depth: 7 cm }\n";
        var grip = new Grip("floor.soil", "soil in front", default, 250)
        {
            Up = new("floor.soil.front", 0.07, 0.005, 0.3),
        };
        var moved = GripEdit.Moved(Read(text), grip, (0, -0.02), "cm");
        Assert.True(moved.IsGood, string.Join('\n', moved.Faults));
        var soil = moved.Value!.Design.Floor.Soil!;
        Assert.Null(soil.Depth);
        Assert.Equal(0.05, soil.Front!.Value.Si, 1e-9);
        Assert.Equal(0.07, soil.Back!.Value.Si, 1e-9);
    }

    [Fact]
    public void A_plant_without_a_place_gets_one_when_it_is_moved()
    {
        var text =
            "litterfall: 1\nname: g\nbox: { inside: { length: 60 cm, depth: 45 cm, height: 60 cm } }\n"
            + "floor: { soil: { recipe: ready-rainforest, depth: 7 cm } }\nplants: [ { plant: ficus-pumila "
            + "} ]\n";
        var grip = new Grip("plants[0]", "ficus", default, 250)
        {
            Across = new("plants[0].at.x", 0.3, 0, 0.6),
            Up = new("plants[0].at.y", 0.2, 0, 0.45),
        };
        var moved = GripEdit.Moved(Read(text), grip, (0.05, 0.02), "cm").Value!;
        Assert.Equal(0.35, moved.Design.Plants[0].At!.X.Si, 1e-9);
        Assert.Equal(0.22, moved.Design.Plants[0].At!.Y.Si, 1e-9);
    }

    /// <summary>Every handle of every view lies on the sheet and names a value the reader knows.</summary>
    [Fact]
    public void Every_grip_of_a_sample_works()
    {
        var numbers = Built.Inches;
        var views = new DesignViews(numbers);
        var sheet = views.Section(Room);
        foreach (
            var grip in views.SectionGrips(Room).Concat(views.PlanGrips(Room)).Concat(views.FrontGrips(Room))
        )
        {
            Assert.True(grip.Up is not null || grip.Across is not null);
            Assert.InRange(grip.At.X, -5, Math.Max(sheet.Width, 200) + 5);
            var moved = GripEdit.Moved(numbers.Design.Document, grip, (0.001, 0.001), "cm");
            Assert.True(moved.IsGood, $"{grip.Part}: {string.Join('\n', moved.Faults)}");
        }
    }

    /// <summary>20 °C is 68 °F; a gallon 3.785411784 L; three digits that count.</summary>
    [Fact]
    public void Numbers_are_shown_in_the_users_units()
    {
        var us = new UnitPreferences(
            System
                .Collections.Immutable.ImmutableDictionary<string, string>.Empty.Add("temperature", "F")
                .Add("volume", "gal")
        );
        Assert.Equal("68 °F", us.Show(Figure.Choice("t", 20, Unit.Celsius, "posed"), Unit.Celsius));
        Assert.Equal("1 gal", us.Show(Figure.Choice("v", 3.785411784, Unit.Liter, "posed"), Unit.Liter));
        Assert.Equal(
            "24–30 days",
            us.Show(
                Figure.Choice("l", 24, Unit.Day, "posed"),
                Figure.Choice("h", 30, Unit.Day, "posed"),
                Unit.Day
            )
        );
        Assert.Equal("0.0123", UnitPreferences.Digits(0.012345));
        Assert.Equal("12\u202f300", UnitPreferences.Digits(12345));
    }

    /// <summary>
    /// A drawing of an hour holds the water, the wetness and the fog; the plain one none of them.
    /// </summary>
    [Fact]
    public void The_drawing_shows_its_hour()
    {
        var numbers = Built.Inches;
        var hours = DeskMoment.Hours(numbers);
        Assert.Equal(30 * 24 + 1, hours.Length);
        var moment = DeskMoment.Of(numbers, 20 * 24 + 12)!;
        Assert.True(moment.IsLit);
        Assert.False(DeskMoment.Of(numbers, 20 * 24 + 2)!.IsLit);
        Assert.True(moment.Wetness.Length > 5);
        Assert.All(moment.Wetness, w => Assert.InRange(w.Share, 0.0, 1.0));
        var views = new DesignViews(numbers);
        var plain = views.Section(Room).Marks.Length;
        Assert.True(
            views.Section(Room, moment with { FrontFogs = true }).Marks.Length
                > plain + moment.Wetness.Length - 1
        );
    }

    /// <summary>
    /// Own worked example: 0.16 m² at 2000 and 150 a square meter (common practice): 320 and 24.
    /// </summary>
    [Fact]
    public void A_crew_is_seeded_by_the_floor()
    {
        var result = Posed.Run(
            "{ inside: { length: 40 cm, depth: 40 cm, height: 40 cm } }",
            "{ soil: { recipe: ready-rainforest, depth: 7 cm }, "
                + "litter: { material: oak-leaves, depth: 3 cm } }"
        );
        var finding = result.Finding("no-crew")!;
        var design = result.Numbers.Design;
        var fix = RuleBook.Fixes(finding, design).FirstOrDefault()!;
        Assert.Equal([320, 24], fix.Document.Design.Crew.Select(c => c.Count));
    }

    /// <summary>
    /// A plant without a place is drawn at a usual one; dragging it across writes both edges as drawn, not
    /// one of them twice.
    /// </summary>
    [Fact]
    public void A_place_that_is_not_written_is_written_whole()
    {
        var document = Read(Lit);
        var design = Litterfall
            .Domain.Checking.DesignChecker.Check(document, Litterfall.App.Files.Shop.Embedded())
            .Value!;
        var views = new DesignViews(DesignNumbers.Shape(design), onScreen: true);
        var spot = views.PlanGrips(Room).First(g => g.Part == "plants[0]");
        var moved = GripEdit.Moved(document, spot, (0.05, 0), "cm").Value!.Design.Plants[0].At!;
        Assert.Equal(spot.Across!.Meters + 0.05, moved.X.Si, 0.0006);
        Assert.Equal(spot.Up!.Meters, moved.Y.Si, 0.0006);
        var side = views.SectionGrips(Room).First(g => g.Part == "plants[0]");
        var sideways = GripEdit.Moved(document, side, (-0.03, 0), "cm").Value!.Design.Plants[0].At!;
        Assert.Equal(spot.Across.Meters, sideways.X.Si, 0.0006);
        Assert.Equal(side.Across!.Meters - 0.03, sideways.Y.Si, 0.0006);
    }

    /// <summary>In the map of light a lamp is taken by the middle of what shines.</summary>
    [Fact]
    public void A_lamp_is_moved_over_the_map_of_light()
    {
        var document = Read(Lit);
        var design = Litterfall
            .Domain.Checking.DesignChecker.Check(document, Litterfall.App.Files.Shop.Embedded())
            .Value!;
        var shape = DesignNumbers.Shape(design);
        var light = shape.Upto(Reach.Whole).Light!;
        var views = new DesignViews(shape, onScreen: true);
        var lamp = views.LightGrips(Room, light).First(g => g.Part == "lamps[0]");
        Assert.Equal(0.3, lamp.Across!.Meters, 0.001);
        Assert.Equal(0.225, lamp.Up!.Meters, 0.001);
        var moved = GripEdit.Moved(document, lamp, (0, 0.1), "cm").Value!.Design.Lamps[0].At!;
        Assert.Equal((0.3, 0.325), (moved.X.Si, moved.Y.Si));
        Assert.True(views.LightPlan(Room, light).Marks.Length > 10);
    }

    private const string Lit = """
        litterfall: 1
        name: lit
        box: { inside: { length: 60 cm, depth: 45 cm, height: 45 cm } }
        floor: { soil: { recipe: ready-rainforest, depth: 5 cm } }
        lid: { material: float-glass, thickness: 4 mm, gap: 2 mm }
        lamps: [ { lamp: led-bar-6500k, lumens: 2000, watts: 20, above: 5 cm } ]
        plants: [ { plant: fittonia-albivenis, count: 1 } ]

        """;

    [Fact]
    public void A_verdict_is_one_line()
    {
        var result = DesignRun.Execute(Built.Inches.Design, TestContext.Current.CancellationToken);
        var words = Verdict.Of(result, UnitPreferences.Metric);
        Assert.StartsWith("Don't build yet: 2 problems to fix. ", words, StringComparison.Ordinal);
        Assert.EndsWith(".", words, StringComparison.Ordinal);
        Assert.Empty(DesignDifference.Of(result, result, UnitPreferences.Metric));
    }
}
