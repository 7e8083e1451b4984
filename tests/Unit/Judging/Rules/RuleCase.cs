using Litterfall.Domain.Findings;
using Litterfall.UnitTests.House;
using YamlDotNet.RepresentationModel;
using YamlDotNet.Serialization;
using YamlDotNet.Serialization.NamingConventions;

namespace Litterfall.UnitTests.Judging.Rules;

/// <summary>One rule on both sides of its limit, as written in Cases/*.yaml.</summary>
public sealed record RuleCase
{
    private const string Mark = "??";

    public string Rule { get; init; } = "";

    public Severity Severity { get; init; }

    /// <summary>A design file without its head, with "??" for the one value.</summary>
    public string Design { get; init; } = "";

    /// <summary>The value with which the rule trips.</summary>
    public string Trips { get; init; } = "";

    /// <summary>The value with which it does not.</summary>
    public string Inside { get; init; } = "";

    public static IReadOnlyList<RuleCase> All { get; } = Read();

    public string With(string value) =>
        "litterfall: 1\nname: posed\n"
        + (Design.StartsWith("box:", StringComparison.Ordinal) ? "" : $"box: {RuleCheck.Cube}\n")
        + Design.Replace(Mark, value, StringComparison.Ordinal);

    /// <summary>Places at which two design files differ; a part only one of them has is one place.</summary>
    public static IEnumerable<string> Differences(string one, string other) =>
        Differences(Tree(one), Tree(other), "");

    public override string ToString() => Rule;

    private static YamlNode Tree(string text)
    {
        var stream = new YamlStream();
        stream.Load(new StringReader(text));
        return stream.Documents[0].RootNode;
    }

    private static IEnumerable<string> Differences(YamlNode one, YamlNode other, string place) =>
        (one, other) switch
        {
            (YamlMappingNode a, YamlMappingNode b) => a
                .Children.Keys.Union(b.Children.Keys)
                .SelectMany(key =>
                    a.Children.TryGetValue(key, out var x) && b.Children.TryGetValue(key, out var y)
                        ? Differences(x, y, $"{place}.{key}")
                        : [$"{place}.{key}"]
                ),
            (YamlSequenceNode a, YamlSequenceNode b) when a.Children.Count == b.Children.Count => a
                .Children.Zip(b.Children)
                .SelectMany((pair, i) => Differences(pair.First, pair.Second, $"{place}[{i}]")),
            (YamlScalarNode a, YamlScalarNode b) => a.Value == b.Value ? [] : [place],
            _ => [place + " (another form)", place + " (another form)"],
        };

    private static IReadOnlyList<RuleCase> Read()
    {
        var reader = new DeserializerBuilder()
            .WithNamingConvention(CamelCaseNamingConvention.Instance)
            .Build();
        return
        [
            .. SourceTree
                .Files(["tests/Unit/Judging/Rules/Cases"], ".yaml")
                .SelectMany(file => reader.Deserialize<List<RuleCase>>(File.ReadAllText(file))),
        ];
    }
}
