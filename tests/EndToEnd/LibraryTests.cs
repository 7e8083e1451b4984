using System.Text.Json.Nodes;

namespace Litterfall.Tests.EndToEnd;

/// <summary><c>litterfall library</c>, <c>schema</c> and <c>verify</c>.</summary>
public sealed class LibraryTests
{
    [Fact]
    public void Kinds_lists_and_entries_are_shown()
    {
        var kinds = Cli.Run("library");
        Assert.Equal(0, kinds.Code);
        foreach (var kind in new[] { "aggregate", "mesh", "soil", "recipe", "animal", "plant", "pack" })
        {
            Assert.Contains(kind, kinds.Out, StringComparison.Ordinal);
            Assert.Equal(0, Cli.Run("library", kind).Code);
        }

        var entry = Cli.Run("library", "aggregate", "expanded-clay-8-16");
        Assert.Equal(0, entry.Code);
        Assert.Contains("bulkDensity", entry.Out, StringComparison.Ordinal);
        Assert.Equal(entry.Out, Cli.Run("library", "expanded-clay-8-16").Out);
    }

    [Theory]
    [InlineData("mesh", "meshes")]
    [InlineData("plant", "plants")]
    [InlineData("animal", "animals")]
    [InlineData("recipe", "Recipes")]
    public void Plurals_mean_the_kind(string one, string many) =>
        Assert.Equal(Cli.Run("library", one).Out, Cli.Run("library", many).Out);

    [Fact]
    public void Every_value_in_json_has_unit_source_place_and_provenance()
    {
        var entries = Cli.Run("library", "--json").Json["entries"]!.AsArray();
        Assert.True(entries.Count > 300);
        foreach (var (name, value) in entries.SelectMany(e => e!["values"]!.AsObject()))
        {
            Assert.True(value!["text"] is not null || value["unit"] is not null, name);
            foreach (var key in new[] { "source", "sourceTitle", "place", "provenance" })
            {
                Assert.False(string.IsNullOrEmpty(value[key]?.GetValue<string>()), name);
            }
        }
    }

    [Fact]
    public void A_near_miss_gets_a_hint()
    {
        var error = Cli.RefusesInJson("library", "expanded-cley-8-16")[0]!;
        Assert.Contains(
            "expanded-clay-8-16",
            error["expected"]!.GetValue<string>(),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void The_schema_is_one_json_document()
    {
        var ended = Cli.Run("schema", "design");
        Assert.Equal(0, ended.Code);
        Assert.Equal("", ended.Error);
        Assert.Equal(
            "https://json-schema.org/draft/2020-12/schema",
            ended.Json["$schema"]!.GetValue<string>()
        );
        Assert.Equal(ended.Out, Cli.Run("schema", "design", "--json").Out);
    }

    [Fact]
    public void Verify_shows_every_case_with_plain_numbers()
    {
        var ended = Cli.Run("verify", "--json");
        Assert.Equal("", ended.Error);
        var cases = ended.Json["cases"]!.AsArray();
        Assert.True(cases.Count > 50);
        Assert.All(cases, Case);
        var failing = cases.Count(c => !Agrees(c!));
        Assert.Equal(failing == 0 ? 0 : 1, ended.Code);
        var text = Cli.Run("verify");
        Assert.Equal(ended.Code, text.Code);
        Assert.Contains("published value: ", text.Out, StringComparison.Ordinal);
    }

    /// <summary>Within the tolerance, or a source in error that names the second solution.</summary>
    private static bool Agrees(JsonNode one) =>
        one["outcome"]!.GetValue<string>() == "agrees"
            ? Math.Abs(one["got"]!.GetValue<double>() - one["expected"]!.GetValue<double>())
                <= one["tolerance"]!.GetValue<double>()
            : one["outcome"]!.GetValue<string>() != "disagrees" && one["secondSolution"] is not null;

    private static void Case(JsonNode? one)
    {
        foreach (
            var key in new[] { "source", "subject", "quantity", "unit", "reason", "evidence", "provenance" }
        )
        {
            Assert.False(string.IsNullOrEmpty(one![key]!.GetValue<string>()), key);
        }

        Assert.True(one!["tolerance"]!.GetValue<double>() >= 0);
        Assert.True(double.IsFinite(one["expected"]!.GetValue<double>()));
    }
}
