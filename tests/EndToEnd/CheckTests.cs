using System.Text.Json;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;

namespace Litterfall.Tests.EndToEnd;

/// <summary><c>litterfall check</c> on every sample, as text and as JSON.</summary>
public sealed partial class CheckTests
{
    private static readonly string[] Severities = ["note", "caution", "stop"];
    private static readonly string[] Protected = ["build", "animal", "person"];

    public static TheoryData<string> Samples => [.. Cli.Samples];

    [Theory]
    [MemberData(nameof(Samples))]
    public void Json_has_the_agreed_keys_and_exit_code(string sample)
    {
        var ended = Cli.Once("check", sample, "--json");
        Assert.Equal("", ended.Error);
        var report = ended.Json;
        var findings = report["findings"]!.AsArray();
        var stops = findings.Any(f => f!["severity"]!.GetValue<string>() == "stop");
        Assert.Equal(stops ? 1 : 0, ended.Code);

        Assert.NotEqual("", report["design"]!["name"]!.GetValue<string>());
        Assert.Matches("^[0-9a-f]{12}$", report["design"]!["hash"]!.GetValue<string>());
        Assert.All(report["quantities"]!.AsArray(), Quantity);
        Assert.NotEmpty(report["quantities"]!.AsArray());
        Assert.NotNull(report["packs"]!.AsArray());
        Assert.NotNull(report["cuts"]!.AsArray());
        Assert.True(report["cost"] is JsonObject);
        Assert.True(report["elapsedMs"]!.GetValue<double>() > 0);
        Weights(report["weights"]!);
        Assert.All(findings, Finding);
    }

    [Theory]
    [MemberData(nameof(Samples))]
    public void Json_is_the_same_every_time_and_has_no_number_that_is_none(string sample)
    {
        var (first, second) = (Cli.Once("check", sample, "--json"), Cli.Start("check", sample, "--json"));
        Assert.Equal(Elapsed().Replace(first.Out, ""), Elapsed().Replace(second.Out, ""));
        Assert.DoesNotContain("NaN", first.Out, StringComparison.Ordinal);
        Assert.DoesNotContain("Infinity", first.Out, StringComparison.Ordinal);
        Assert.EndsWith("}\n", first.Out, StringComparison.Ordinal);
        Assert.Empty(Doubled(JsonDocument.Parse(first.Out).RootElement, "$"));
    }

    [Theory]
    [MemberData(nameof(Samples))]
    public void Text_names_the_design_and_its_findings(string sample)
    {
        var (text, json) = (Cli.Once("check", sample), Cli.Once("check", sample, "--json"));
        Assert.Equal(json.Code, text.Code);
        Assert.Equal("", text.Error);
        Assert.Contains(json.Json["design"]!["name"]!.GetValue<string>(), text.Out, StringComparison.Ordinal);
        foreach (var finding in json.Json["findings"]!.AsArray())
        {
            Assert.Contains(finding!["slug"]!.GetValue<string>(), text.Out, StringComparison.Ordinal);
        }

        Assert.DoesNotContain("\u001b", text.Out, StringComparison.Ordinal);
    }

    [Fact]
    public void A_sample_stops_and_a_sample_does_not()
    {
        var codes = Cli.Samples.Select(sample => Cli.Once("check", sample).Code).ToHashSet();
        Assert.Equal([0, 1], codes.Order());
    }

    /// <summary>
    /// Each uncertain number has both ends of its band beside it, in order. A day that may never come has
    /// a first
    /// end and null for the other.
    /// </summary>
    [Theory]
    [MemberData(nameof(Samples))]
    public void Bands_are_in_order(string sample)
    {
        foreach (var owner in Objects(Cli.Once("check", sample, "--json").Json))
        {
            foreach (var (key, low) in owner.Where(m => m.Key.EndsWith("Low", StringComparison.Ordinal)))
            {
                var high = owner[key[..^3] + "High"];
                var mayNeverCome = key is "drainEveryDaysLow" or "firstDrainDayLow" or "bottleFillsInDaysLow";
                Assert.True(low is null == high is null || (high is null && mayNeverCome), key);
                Assert.True(
                    low is null || high is null || low.GetValue<double>() <= high.GetValue<double>(),
                    key
                );
            }
        }
    }

    private static void Quantity(JsonNode? row)
    {
        Assert.NotEqual("", row!["item"]!.GetValue<string>());
        Assert.NotEqual("", row["layer"]!.GetValue<string>());
        var finished = row["finishedLitres"]!.GetValue<double>();
        var mixed = row["mixedLitres"]!.GetValue<double>();
        Assert.True(finished >= 0 && mixed >= finished);
        Assert.True(row["toBuyLitres"]!.GetValue<double>() >= row["looseLitres"]!.GetValue<double>());
        Assert.True(row.AsObject().ContainsKey("massKg"));
    }

    private static void Weights(JsonNode weights)
    {
        var dry = weights["dryKg"]!.GetValue<double>();
        var planted = weights["plantedKg"]!.GetValue<double>();
        Assert.True(dry > 0 && dry <= planted && planted <= weights["wetKg"]!.GetValue<double>());
    }

    private static void Finding(JsonNode? finding)
    {
        Assert.Matches("^[a-z0-9-]+$", finding!["slug"]!.GetValue<string>());
        Assert.Contains(finding["severity"]!.GetValue<string>(), Severities);
        Assert.Contains(finding["protects"]!.GetValue<string>(), Protected);
        foreach (var key in new[] { "text", "source", "provenance", "fix" })
        {
            Assert.NotEqual("", finding[key]!.GetValue<string>());
        }

        foreach (var key in new[] { "measured", "limit", "unit" })
        {
            Assert.True(finding.AsObject().ContainsKey(key), key);
        }
    }

    private static IEnumerable<string> Doubled(JsonElement element, string path)
    {
        if (element.ValueKind == JsonValueKind.Object)
        {
            var members = element.EnumerateObject().ToList();
            return members
                .GroupBy(m => m.Name, StringComparer.Ordinal)
                .Where(g => g.Count() > 1)
                .Select(g => $"{path}.{g.Key}")
                .Concat(members.SelectMany(m => Doubled(m.Value, $"{path}.{m.Name}")));
        }

        return element.ValueKind == JsonValueKind.Array
            ? element.EnumerateArray().SelectMany((item, i) => Doubled(item, $"{path}[{i}]"))
            : [];
    }

    private static IEnumerable<JsonObject> Objects(JsonNode? node) =>
        node switch
        {
            JsonObject owner => owner.SelectMany(m => Objects(m.Value)).Prepend(owner),
            JsonArray list => list.SelectMany(Objects),
            _ => [],
        };

    [GeneratedRegex("\"elapsedMs\": [-+.0-9eE]+", RegexOptions.None, 1000)]
    private static partial Regex Elapsed();
}
