using System.Globalization;
using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Json.Schema;
using Litterfall.Domain;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Faults;
using Litterfall.Domain.Keys;
using Litterfall.UnitTests.House;
using YamlDotNet.Core;
using YamlDotNet.RepresentationModel;

namespace Litterfall.UnitTests.Domain;

/// <summary>
/// The JSON Schema offered to editors accepts what the reader accepts, and helps otherwise.
/// </summary>
public sealed partial class SchemaTests
{
    private static readonly Lazy<JsonSchema> Schema = new(() =>
        JsonSchema.FromText(DesignSchema.Write(SampleFiles.Catalog).ToJsonString())
    );

    public static TheoryData<string> Paths => [.. SampleFiles.Paths];

    [Theory]
    [MemberData(nameof(Paths))]
    public void Every_sample_fits(string path) => Assert.True(Fits(SourceTree.Text(path)), path);

    [Fact]
    public void Random_designs_fit() =>
        CsCheck.Check.Sample(
            RandomDesigns.All,
            design =>
            {
                var text = DesignWriter.Write(design);
                Assert.True(Fits(text), text);
            },
            iter: LongRun.Cases(40, 200)
        );

    [Theory]
    [InlineData("drainge: none")]
    [InlineData("boxes: 0")]
    [InlineData("boxes: many")]
    [InlineData("planted: 14.8.2026")]
    [InlineData("form: jar")]
    [InlineData("room: { temperature: 22 }")]
    [InlineData("room: { humidity: 45 }")]
    [InlineData("room: { humidity: 45 kg }")]
    [InlineData("room: warm")]
    [InlineData("lid: { material: glass, thickness: 4 }")]
    [InlineData("lid: { thickness: 4 mm }")]
    [InlineData("vents: [ { area: 60 cm } ]")]
    [InlineData("misting: { nozzles: 2 }")]
    [InlineData("plants: [ { plant: pilea, mounted: maybe } ]")]
    [InlineData("lamps: [ { lamp: led-bar-6500k, on: eight } ]")]
    [InlineData("animals: [ { animal: dendrobates-auratus, count: 1.5 } ]")]
    public void A_broken_line_does_not_fit(string line) => Assert.False(Fits(BrokenFiles.Good + line + "\n"));

    [Fact]
    public void A_missing_part_does_not_fit()
    {
        Assert.True(Fits(BrokenFiles.Good));
        Assert.False(Fits("litterfall: 1\nname: t\nfloor: { soil: { recipe: airy-mix, depth: 7 cm } }\n"));
        Assert.False(Fits("name: t\n"));
    }

    [Fact]
    public void The_schema_says_which_it_is_and_describes_every_key()
    {
        var schema = DesignSchema.Write(SampleFiles.Catalog);
        Assert.Equal("https://json-schema.org/draft/2020-12/schema", schema["$schema"]!.GetValue<string>());
        var records = schema["$defs"]!.AsObject().Select(d => d.Value!.AsObject()).Append(schema);
        foreach (var record in records)
        {
            Assert.False(record["additionalProperties"]!.GetValue<bool>());
            Assert.All(record["properties"]!.AsObject(), p =>
                Assert.False(string.IsNullOrEmpty(p.Value!["description"]?.GetValue<string>()), p.Key)
            );
        }
    }

    private static bool Fits(string yaml)
    {
        var stream = new YamlStream();
        stream.Load(new StringReader(yaml));
        var json = Json(stream.Documents[0].RootNode)!.ToJsonString();
        using var document = JsonDocument.Parse(json);
        return Schema.Value.Evaluate(document.RootElement).IsValid;
    }

    /// <summary>
    /// The file as an editor sees it: numbers and yes or no only where they are written plain.
    /// </summary>
    private static JsonNode? Json(YamlNode node) =>
        node switch
        {
            YamlMappingNode map => new JsonObject(
                map.Children.Select(c => KeyValuePair.Create(((YamlScalarNode)c.Key).Value!, Json(c.Value)))
            ),
            YamlSequenceNode list => new JsonArray([.. list.Children.Select(Json)]),
            YamlScalarNode { Style: ScalarStyle.Plain, Value: "true" or "false" } flag => flag.Value
                == "true",
            YamlScalarNode { Style: ScalarStyle.Plain, Value: { } text } when PlainNumber().IsMatch(text) =>
                JsonValue.Create(decimal.Parse(text, CultureInfo.InvariantCulture)),
            YamlScalarNode scalar => scalar.Value,
            _ => null,
        };

    [GeneratedRegex(@"^-?\d+(\.\d+)?$", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex PlainNumber();
}
