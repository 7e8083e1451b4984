using Litterfall.Domain;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Faults;
using Litterfall.Domain.Keys;

namespace Litterfall.UnitTests.Domain;

/// <summary>Edits of a design file touch what they name and nothing else.</summary>
public sealed class DesignEditsTests
{
    private const string Text = """
        # kept
        litterfall: 1
        name: edits # kept too
        box: { inside: { length: 40 cm, depth: 40 cm, height: 40 cm } }
        floor:
          soil: { recipe: ready-rainforest, depth: 5 cm } # soil
          litter:
            material: oak-leaves
            depth: 3 cm
        plants:
          - { plant: ficus-pumila, at: { x: 8 cm, y: 30 cm } } # first
          - { plant: fittonia-albivenis }
        crew: [ { animal: folsomia-candida, count: 400 } ]

        """;

    private static DesignDocument Read(string text)
    {
        var reading = DesignReader.Read("edits", text);
        Assert.True(reading.IsGood, string.Join('\n', reading.Faults));
        return reading.Value!;
    }

    private static string Good(Reading<DesignDocument> reading)
    {
        Assert.True(reading.IsGood, string.Join('\n', reading.Faults));
        return reading.Value!.Text;
    }

    [Theory]
    [InlineData("floor.soil.depth", "7 cm", "depth: 5 cm }", "depth: 7 cm }")]
    [InlineData("floor.litter.depth", "2 1/2 in", "depth: 3 cm\n", "depth: 2 1/2 in\n")]
    [InlineData("plants[0].at.x", "9 cm", "x: 8 cm", "x: 9 cm")]
    [InlineData("crew[0].count", "500", "count: 400", "count: 500")]
    [InlineData("name", "a: b", "name: edits", "name: \"a: b\"")]
    public void A_value_is_replaced_where_it_stands(string path, string value, string was, string now) =>
        Assert.Equal(
            Text.Replace(was, now, StringComparison.Ordinal),
            Good(DesignEdits.Set(Read(Text), path, value))
        );

    [Theory]
    [InlineData("floor.soil.settling", "10 %", "depth: 5 cm }", "depth: 5 cm, settling: 10 % }")]
    [InlineData("floor.litter.area", "800 cm2", "    depth: 3 cm\n", "    depth: 3 cm\n    area: 800 cm2\n")]
    [InlineData(
        "plants[1].at.x",
        "9 cm",
        "plant: fittonia-albivenis }",
        "plant: fittonia-albivenis, at: { x: 9 cm } }"
    )]
    [InlineData("boxes", "2", "count: 400 } ]\n", "count: 400 } ]\nboxes: 2\n")]
    public void A_new_key_goes_where_it_belongs(string path, string value, string was, string now)
    {
        var reading = DesignEdits.Set(Read(Text), path, value);
        // A key that the form does not have, or half a place, is refused; the text is made all the same.
        if (reading.IsGood)
        {
            Assert.Equal(Text.Replace(was, now, StringComparison.Ordinal), reading.Value!.Text);
        }
        else
        {
            Assert.Contains(reading.Faults, f => f.Message.Length > 0);
        }
    }

    [Fact]
    public void Items_are_added_to_either_form_of_list_and_to_none()
    {
        var more = Good(DesignEdits.Add(Read(Text), "plants", "{ plant: pilea }"));
        Assert.Equal(
            Text.Replace("albivenis }\n", "albivenis }\n  - { plant: pilea }\n", StringComparison.Ordinal),
            more
        );
        var crew = Good(DesignEdits.Add(Read(Text), "crew", "{ animal: trichorhina-tomentosa, count: 30 }"));
        Assert.Contains(
            "count: 400 }, { animal: trichorhina-tomentosa, count: 30 } ]",
            crew,
            StringComparison.Ordinal
        );
        var lamps = Good(DesignEdits.Add(Read(Text), "lamps", "{ lamp: led-bar-6500k }"));
        Assert.EndsWith("lamps:\n  - { lamp: led-bar-6500k }\n", lamps, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_taken_away_takes_its_line_or_its_comma()
    {
        Assert.DoesNotContain(
            "ficus",
            Good(DesignEdits.Remove(Read(Text), "plants[0]")),
            StringComparison.Ordinal
        );
        Assert.DoesNotContain(
            "crew",
            Good(DesignEdits.Remove(Read(Text), "crew[0]")),
            StringComparison.Ordinal
        );
        Assert.DoesNotContain(
            "litter:",
            Good(DesignEdits.Remove(Read(Text), "floor.litter")),
            StringComparison.Ordinal
        );
        Assert.Contains(
            "{ plant: ficus-pumila } # first",
            Good(DesignEdits.Remove(Read(Text), "plants[0].at")),
            StringComparison.Ordinal
        );
        Assert.False(DesignEdits.Remove(Read(Text), "plants[7]").IsGood);
    }

    [Fact]
    public void A_block_may_become_one_line()
    {
        var text = Good(
            DesignEdits.SetPart(Read(Text), "floor.litter", "{ material: beech-leaves, depth: 2 cm }")
        );
        Assert.Contains(
            "  litter: { material: beech-leaves, depth: 2 cm }\nplants:",
            text,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void A_lid_is_added_and_taken_away_again()
    {
        var with = DesignEdits.SetPart(Read(Text), "lid", "{ material: glass, thickness: 4 mm }");
        Assert.True(with.IsGood);
        Assert.Equal(Text, Good(DesignEdits.Remove(with.Value!, "lid")));
    }
}
