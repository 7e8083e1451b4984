using System.Globalization;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Litterfall.App;
using Litterfall.App.Files;
using Litterfall.Domain;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Faults;
using Litterfall.Domain.Keys;

namespace Litterfall.Tests.EndToEnd.Papers;

/// <summary>Vector drawings: true to size, and each mark leads to a place in the design file.</summary>
public sealed partial class SvgTests(PaperFolder papers)
{
    /// <summary>Sides of a view are named, and belong to no single value.</summary>
    private static readonly string[] Furniture = ["front", "back", "left", "right"];

    private static readonly Lazy<JsonNode> Schema = new(() => Cli.Run("schema", "design").Json);

    public static TheoryData<string> Samples => CheckTests.Samples;

    [Theory]
    [MemberData(nameof(Samples))]
    public void Sizes_are_millimeters_and_every_mark_has_a_layer(string sample)
    {
        foreach (var (name, root) in Files(sample, ""))
        {
            var (width, height) = (Millimeters(root, "width"), Millimeters(root, "height"));
            var box = root.Attribute("viewBox")!.Value.Split(' ');
            Assert.Equal(["0", "0", Plain(width), Plain(height)], box);
            Assert.NotEmpty(Marks(root));
            Assert.All(Marks(root), m => Assert.Matches("^[A-Z]+$", m.Attribute("data-layer")?.Value));
            Assert.All(root.Descendants().Where(e => e.Name.LocalName == "path"), p =>
                Assert.Null(p.Attribute("transform"))
            );
            Assert.All(Points(root), p => Assert.True(IsInside(p, width, height), $"{name}: {p}"));
        }
    }

    [Theory]
    [MemberData(nameof(Samples))]
    public void Cut_parts_are_drawn_at_their_true_size(string sample)
    {
        var cuts = papers.Check(sample)["cuts"]!.AsArray();
        var files = Files(sample, "cut/").OrderBy(f => f.Name, StringComparer.Ordinal).ToList();
        Assert.Equal(cuts.Count, files.Count);
        for (var i = 0; i < files.Count; i++)
        {
            Assert.DoesNotContain(files[i].Root.Descendants(), e => e.Name.LocalName == "text");
            // The outline comes first; openings cut out of it follow.
            var cut = Marks(files[i].Root).First(m => m.Attribute("data-layer")!.Value == "CUT");
            var points = Points(cut).ToList();
            Marked(cuts[i]!["lengthMm"]!, points.Max(p => p.X) - points.Min(p => p.X), files[i].Name);
            Marked(cuts[i]!["widthMm"]!, points.Max(p => p.Y) - points.Min(p => p.Y), files[i].Name);
        }
    }

    [Theory]
    [MemberData(nameof(Samples))]
    public void Every_key_is_a_place_of_the_design(string sample)
    {
        var document = Document(sample);
        foreach (var (name, root) in Files(sample, ""))
        {
            foreach (var mark in Marks(root))
            {
                if (mark.Attribute("data-key")?.Value is { } key)
                {
                    Assert.True(IsPlace(key, document), $"{name}: {key}");
                    continue;
                }

                // The line of the cut, the reference and the names of the sides lead nowhere.
                Assert.True(
                    mark.Name.LocalName == "text"
                        ? Furniture.Contains(mark.Value)
                        : mark.Attribute("data-layer")!.Value == "REF"
                            || mark.Attribute("stroke-dasharray") is not null,
                    $"{name}: {mark}"
                );
            }
        }
    }

    [Theory]
    [MemberData(nameof(Samples))]
    public void The_section_shows_what_the_design_writes(string sample)
    {
        var document = Document(sample);
        var section = Files(sample, "drawings/").Single(f => f.Name.EndsWith("/section.svg", Ordinal)).Root;
        var keys = Marks(section).Select(m => m.Attribute("data-key")?.Value ?? "").ToHashSet();
        string[] parts =
        [
            "box",
            "lid",
            "background",
            "floor.drainage",
            "floor.barrier",
            "floor.soil",
            "floor.moss",
            "floor.litter",
            "misting",
            "drain",
        ];
        // A section from side to side does not meet a background at the back.
        var skipped = document.Design.Floor.Soil?.Zones.Count > 0 ? "background" : "";
        foreach (var part in parts.Where(p => IsWritten(document, p) && p != skipped))
        {
            Assert.True(keys.Any(k => k == part || k.StartsWith($"{part}.", Ordinal)), part);
        }

        foreach (var list in new[] { "hardscape", "vents", "lamps", "plants" })
        {
            for (var i = 0; document.Spans.ContainsKey($"{list}[{i}]"); i++)
            {
                if (list == "vents" && skipped.Length > 0 && IsBeyond(document.Design.Vents[i]))
                {
                    continue;
                }

                Assert.True(keys.Any(k => k.StartsWith($"{list}[{i}]", Ordinal)), $"{list}[{i}]");
            }
        }
    }

    private const StringComparison Ordinal = StringComparison.Ordinal;

    private static bool IsWritten(DesignDocument document, string path) =>
        document.Spans.TryGetValue(path, out var span) && document.Text[span.Start..span.End] != "none";

    private static DesignDocument Document(string sample) =>
        Shop.Design(Path.Combine(Cli.Root, sample), null).Value!.Document;

    /// <summary>
    /// True when the schema of the design file has the path, each numbered entry is written, and so is the
    /// part
    /// the path begins with.
    /// </summary>
    private static bool IsPlace(string key, DesignDocument document)
    {
        var node = Schema.Value;
        var path = "";
        foreach (var step in key.Split('.'))
        {
            var match = Step().Match(step);
            if (!match.Success || Properties(node)?[match.Groups["name"].Value] is not { } next)
            {
                return false;
            }

            path = path.Length == 0 ? step : $"{path}.{step}";
            node = next;
            if (match.Groups["index"].Success && !document.Spans.ContainsKey(path))
            {
                return false;
            }
        }

        return true;
    }

    private static JsonNode? Properties(JsonNode node)
    {
        if (node["$ref"] is { } reference)
        {
            return Properties(Schema.Value["$defs"]![reference.GetValue<string>().Split('/')[^1]]!);
        }

        return node["properties"]
            ?? (node["items"] is { } items ? Properties(items) : null)
            ?? node["anyOf"]
                ?.AsArray()
                .Select(choice => Properties(choice!))
                .FirstOrDefault(p => p is not null);
    }

    private IEnumerable<(string Name, XElement Root)> Files(string sample, string folder) =>
        papers
            .Of(sample)
            .Ending(".svg")
            .Where(f => f.StartsWith(folder, Ordinal))
            .Select(f => (f, XDocument.Parse(papers.Of(sample).Text(f)).Root!));

    private static IEnumerable<XElement> Marks(XElement root) =>
        root.Descendants().Where(e => e.Name.LocalName is "path" or "text");

    private static double Millimeters(XElement root, string name)
    {
        var text = root.Attribute(name)!.Value;
        Assert.EndsWith("mm", text, Ordinal);
        return double.Parse(text[..^2], CultureInfo.InvariantCulture);
    }

    private static string Plain(double number) => number.ToString("0.###", CultureInfo.InvariantCulture);

    private static bool IsInside((double X, double Y) p, double width, double height) =>
        p.X >= -0.01 && p.Y >= -0.01 && p.X <= width + 0.01 && p.Y <= height + 0.01;

    /// <summary>Ends of the lines and arcs of all paths; text by its start.</summary>
    private static IEnumerable<(double X, double Y)> Points(XElement root) =>
        root.DescendantsAndSelf()
            .SelectMany(e =>
                e.Name.LocalName switch
                {
                    "path" => Move()
                        .Matches(e.Attribute("d")!.Value)
                        .Select(m => (Read(m, "x"), Read(m, "y"))),
                    "text" => [(Number(e, "x"), Number(e, "y"))],
                    _ => Enumerable.Empty<(double, double)>(),
                }
            );

    private static double Number(XElement element, string name) =>
        double.Parse(element.Attribute(name)!.Value, CultureInfo.InvariantCulture);

    private static double Read(Match match, string group) =>
        double.Parse(match.Groups[group].Value, CultureInfo.InvariantCulture);

    /// <summary>In front or back, where a section from side to side does not come.</summary>
    private static bool IsBeyond(Vent vent) => vent.Side is Side.Front or Side.Back;

    /// <summary>Down to half a millimeter, as a tape marks it.</summary>
    private static void Marked(JsonNode computed, double actual, string name)
    {
        var marked = Math.Floor((2 * computed.GetValue<double>()) + 1e-3) / 2;
        Assert.True(Math.Abs(marked - actual) <= 0.0011, $"{name}: {actual}, not {marked}");
    }

    [GeneratedRegex(
        @"([ML]|A[0-9.]+ [0-9.]+ 0 [01] [01] )(?<x>-?[0-9.]+) (?<y>-?[0-9.]+)",
        RegexOptions.ExplicitCapture,
        1000
    )]
    private static partial Regex Move();

    [GeneratedRegex(@"^(?<name>[A-Za-z]+)(\[(?<index>[0-9]+)\])?$", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Step();
}
