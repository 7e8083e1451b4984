using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Findings;
using Litterfall.UnitTests.House;
using Xunit;

namespace Litterfall.UnitTests.Judging.Rules;

/// <summary>
/// Every finding ends in a control: the key it points at is one of the design, and one that takes a value.
/// </summary>
public sealed partial class ControlPathTests
{
    /// <summary>Where a finding points at a whole list or part: something is to be added to it.</summary>
    private static readonly (string Path, string Why)[] Whole =
    [
        ("vents", "there is no vent yet, or one more is wanted"),
        ("crew", "there is no crew yet"),
        ("hardscape", "more wood to hide under is wanted"),
        ("lamps", "there is no lamp yet"),
        ("misting.times", "the pump has no time to mist yet"),
        ("box", "the weight of the whole box: no single key makes it lighter"),
    ];

    private static readonly HashSet<string> Schema = [.. Leaves(DesignSchema.Write(SampleFiles.Catalog))];

    [Fact]
    public void The_schema_gives_the_keys_that_take_a_value()
    {
        Assert.Contains("lid.latched", Schema);
        Assert.Contains("plants[].quarantined", Schema);
        Assert.Contains("box.doors.seal", Schema);
        Assert.Contains("floor.drainage.depth", Schema);
        Assert.DoesNotContain("floor.drainage", Schema);
        Assert.DoesNotContain("plants", Schema);
    }

    [Theory]
    [MemberData(nameof(RuleCaseTests.Cases), MemberType = typeof(RuleCaseTests))]
    public void A_finding_of_a_rule_points_at_a_control(RuleCase one) =>
        Assert.All(Posed.Text(one.With(one.Trips)).FindingsOf(one.Rule), Check);

    [Theory]
    [MemberData(nameof(EveryRuleTests.Samples), MemberType = typeof(EveryRuleTests))]
    public void A_finding_of_a_sample_points_at_a_control(string sample) =>
        Assert.All(Posed.Sample($"samples/{sample}").Findings, Check);

    private static void Check(Finding finding)
    {
        var path = Number().Replace(finding.Where, "[]");
        Assert.True(
            Schema.Contains(path) || Whole.Any(w => w.Path == finding.Where),
            $"{finding.Slug} points at {finding.Where}"
        );
        Assert.NotEqual("", finding.About);
    }

    private static IEnumerable<string> Leaves(JsonObject schema)
    {
        var definitions = schema["$defs"]!.AsObject();
        return Of(schema, "", []);

        IEnumerable<string> Of(JsonObject record, string before, string[] above) =>
            record["properties"]!
                .AsObject()
                .SelectMany(p =>
                {
                    var (record, isList) = Record(p.Value!.AsObject());
                    var path = $"{before}{p.Key}{(isList ? "[]" : "")}";
                    return record is null ? [path]
                        : above.Contains(record) ? []
                        : Of(definitions[record]!.AsObject(), $"{path}.", [.. above, record]);
                });
    }

    /// <summary>The record a key takes, itself or in a list; null where it takes a value.</summary>
    private static (string? Name, bool IsList) Record(JsonObject value)
    {
        if (value["$ref"] is { } name)
        {
            return (name.GetValue<string>()["#/$defs/".Length..], false);
        }

        if (value["items"] is JsonObject item && Record(item).Name is { } of)
        {
            return (of, true);
        }

        return (value["anyOf"] as JsonArray ?? [])
            .Select(choice => Record(choice!.AsObject()))
            .FirstOrDefault(found => found.Name is not null);
    }

    [GeneratedRegex(@"\[\d+\]", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Number();
}
