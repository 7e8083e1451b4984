using System.Text.Json.Nodes;
using Litterfall.Documents.Views;
using Litterfall.Domain;
using Litterfall.Domain.DesignFile;
using Litterfall.UnitTests.House;
using Litterfall.UnitTests.Judging;
using Litterfall.Web.Desk;
using Litterfall.Web.Desk.Form;
using Litterfall.Web.Library;

namespace Litterfall.UnitTests.Web.Form;

/// <summary>The form of the bench has a field for every key of the design file.</summary>
public sealed class FormTests
{
    private const string Bare =
        "litterfall: 1\nname: form\nbox: { inside: { length: 60 cm, depth: 45 cm, height: 60 cm }, "
        + "glass: { walls: 5 mm }, opening: front }\n"
        + "floor: { soil: { recipe: ready-rainforest, depth: 7 cm } }\n";

    /// <summary>Entries to choose where a part begins with one.</summary>
    private static readonly Dictionary<string, string> Entries = new(StringComparer.Ordinal)
    {
        ["hardscape"] = "cork-bark",
        ["lamps"] = "led-bar-6500k",
        ["plants"] = "ficus-pumila",
        ["animals"] = "dendrobates-leucomelas",
        ["ratedFor"] = "dendrobates-leucomelas",
        ["crew"] = "folsomia-candida",
    };

    private static DesignDocument Read(string text)
    {
        var reading = DesignReader.Read("form", text);
        Assert.True(reading.IsGood, string.Join('\n', reading.Faults));
        return reading.Value!;
    }

    /// <summary>A design to which every part and section of the form was added by its own button.</summary>
    private static DesignDocument Full()
    {
        var document = Read(Bare);
        for (var round = 0; round < 3; round++)
        {
            foreach (var part in FormBook.Of(document).Where(p => !p.IsThere && p.Begin is not null))
            {
                if (part.IsList && document.Spans.ContainsKey(part.Key))
                {
                    continue;
                }

                var begin = part.Begin!.Replace(
                    FormBegin.Chosen,
                    Entries.GetValueOrDefault(part.Key, ""),
                    StringComparison.Ordinal
                );
                var added = part.IsList
                    ? DesignEdits.Add(document, part.Key, begin)
                    : DesignEdits.SetPart(document, part.Key, begin);
                Assert.True(added.IsGood, $"{part.Key}: {string.Join('\n', added.Faults)}");
                document = added.Value!;
            }

            foreach (
                var section in FormBook
                    .Of(document)
                    .SelectMany(p => p.AllSections)
                    .Where(s => s.Begin is not null)
            )
            {
                if (section.IsList && document.Spans.ContainsKey(section.Path))
                {
                    continue;
                }

                var added = section.IsList
                    ? DesignEdits.Add(document, section.Path, section.Begin!)
                    : DesignEdits.SetPart(document, section.Path, section.Begin!);
                Assert.True(added.IsGood, $"{section.Path}: {string.Join('\n', added.Faults)}");
                document = added.Value!;
            }
        }

        return document;
    }

    /// <summary>
    /// The same design written in the other ways: outside edges, a raised floor, steps, a slope.
    /// </summary>
    private static IEnumerable<DesignDocument> Ways()
    {
        var full = Full();
        yield return full;
        foreach (var way in new[] { FormSwitch.Frame, FormSwitch.Soil, FormSwitch.Drainage })
        {
            foreach (var name in way.Ways)
            {
                var turned = way.Turn(full, name);
                Assert.True(turned.IsGood, $"{name}: {string.Join('\n', turned.Faults)}");
                Assert.Equal(name, way.Now(turned.Value!));
                yield return turned.Value!;
            }
        }
    }

    /// <summary>
    /// The schema is what an editor of files is offered; nothing of it is missing at the bench.
    /// </summary>
    [Fact]
    public void Every_key_of_the_schema_is_a_field()
    {
        var schema = DesignSchema.Write(SampleFiles.Catalog);
        var shown = Ways()
            .SelectMany(d => FormBook.Of(d))
            .SelectMany(p => p.AllFields)
            .Where(f => f.Key is not null)
            .Select(f => $"{f.Key!.Owner.Name}.{f.Key.Name}")
            .ToHashSet(StringComparer.Ordinal);
        // The version is always 1; what is accepted is written where a finding is shown.
        string[] elsewhere = ["Design.litterfall"];
        var missing = Records(schema)
            .Where(r => r.Name != "Acceptance")
            .SelectMany(r => Leaves(r.Node).Select(leaf => $"{r.Name}.{leaf}"))
            .Where(k => !shown.Contains(k) && !elsewhere.Contains(k))
            .Where(k => !IsOtherSpelling(k))
            .ToList();
        Assert.Empty(missing);
    }

    [Fact]
    public void Every_key_has_words()
    {
        var types = new Queue<Type>([typeof(Design)]);
        var seen = new HashSet<Type>();
        var missing = new List<string>();
        while (types.TryDequeue(out var type))
        {
            if (!seen.Add(type))
            {
                continue;
            }

            foreach (var key in DesignKeys.Of(type))
            {
                if (key.Record is { } below)
                {
                    types.Enqueue(below);
                }
                else if (FormWords.Of(key) is null && key.Name != "litterfall" && type.Name != "Acceptance")
                {
                    missing.Add($"{type.Name}.{key.Name}");
                }
            }
        }

        Assert.Empty(missing);
    }

    /// <summary>No word of the form is a key, and no choice is shown with a hyphen of the file.</summary>
    [Fact]
    public void Labels_are_words()
    {
        foreach (var field in Ways().SelectMany(d => FormBook.Of(d)).SelectMany(p => p.AllFields))
        {
            Assert.Matches("^[A-Z]", field.Label);
            Assert.DoesNotMatch("[a-z][A-Z]|_", field.Label);
            foreach (var word in field.Key?.Words ?? [])
            {
                Assert.DoesNotMatch("[a-z][A-Z]|_", FormWords.Choice(field.Key, word));
            }
        }
    }

    /// <summary>
    /// Each written number can be stepped, each empty one takes a bare number, and all read back.
    /// </summary>
    [Fact]
    public void Every_quantity_takes_a_step_and_a_bare_number()
    {
        var document = Full();
        foreach (
            var field in FormBook
                .Of(document)
                .SelectMany(p => p.AllFields)
                .Where(f => f.Form == FieldForm.Quantity)
        )
        {
            var now = FieldEdit.TextOf(document, field);
            var typed = now.Length > 0 ? FieldUnits.Stepped(now, field.Key!, 1)! : "1";
            var set = FieldEdit.Set(document, field, typed, UnitPreferences.Metric);
            Assert.True(set.IsGood, $"{field.Path} {typed}: {string.Join('\n', set.Faults)}");
            Assert.NotEqual("", FieldEdit.TextOf(set.Value!, field));
            Assert.NotEqual(now, FieldEdit.TextOf(set.Value!, field));
        }
    }

    /// <summary>Every finding of the samples leads to a part of the form.</summary>
    [Fact]
    public void A_path_leads_to_its_part()
    {
        var document = Full();
        Assert.Equal("floor.soil", FormBook.Find(document, "floor.soil.depth")!.Key);
        Assert.Equal("lid", FormBook.Find(document, "lid.latched")!.Key);
        Assert.Equal("plants[0]", FormBook.Find(document, "plants[0].quarantined")!.Key);
        Assert.Equal("misting.hose", FormBook.Find(document, "misting.hose.bore")!.Key);
        Assert.Equal("misting", FormBook.Find(document, "misting.times[0].for")!.Key);
        Assert.Equal(FormBook.OrderKey, FormBook.Find(document, "planted")!.Key);
        Assert.Equal(FormBook.WaterKey, FormBook.Find(document, "waterCups")!.Key);
        Assert.Equal("animals", FormBook.Find(Read(Bare), "animals")!.Key);
        Assert.Equal("lid", FormBook.Find(Read(Bare), "lid.latched")!.Key);
    }

    /// <summary>
    /// Handles of all samples and views can be told apart by a finger of 44 px, 10 mm of the drawing.
    /// </summary>
    [Theory]
    [InlineData(150, 95)]
    [InlineData(81, 84)]
    public void Handles_never_overlap(double wide, double tall)
    {
        foreach (var path in SampleFiles.Paths.Where(p => p.StartsWith("samples/", StringComparison.Ordinal)))
        {
            var views = new DesignViews(Posed.Sample(path).Numbers, onScreen: true);
            var room = (wide, tall);
            foreach (
                var (drawing, grips) in new[]
                {
                    (views.Section(room), views.SectionGrips(room)),
                    (views.Plan(room), views.PlanGrips(room)),
                    (views.Front(room), views.FrontGrips(room)),
                }
            )
            {
                var spots = GripFan.Spread(grips, (drawing.Width, drawing.Height));
                for (var i = 0; i < spots.Length; i++)
                {
                    Assert.InRange(spots[i].X, 0, drawing.Width);
                    Assert.InRange(spots[i].Y, 0, drawing.Height);
                    for (var j = i + 1; j < spots.Length; j++)
                    {
                        var far = Math.Sqrt(
                            Math.Pow(spots[i].X - spots[j].X, 2) + Math.Pow(spots[i].Y - spots[j].Y, 2)
                        );
                        Assert.True(
                            far >= 10,
                            FormattableString.Invariant(
                                $"{path}: {grips[i].Label} and {grips[j].Label} are {far:0.0} mm apart"
                            )
                        );
                    }
                }
            }
        }
    }

    private static IEnumerable<(string Name, JsonObject Node)> Records(JsonObject schema) =>
        schema["$defs"]!
            .AsObject()
            .Select(d => (d.Key, d.Value!.AsObject()))
            .Prepend((nameof(Design), schema));

    /// <summary>Keys with a value of their own: what leads to keys below is a part.</summary>
    private static IEnumerable<string> Leaves(JsonObject record) =>
        record["properties"]!
            .AsObject()
            .Where(p => !p.Value!.ToJsonString().Contains("$ref", StringComparison.Ordinal))
            .Select(p => p.Key);

    private static bool IsOtherSpelling(string key) => key.StartsWith("RoomYear.", StringComparison.Ordinal);
}
