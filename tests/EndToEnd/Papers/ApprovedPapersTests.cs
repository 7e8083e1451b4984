using System.Globalization;
using System.Text;
using System.Text.RegularExpressions;
using System.Xml.Linq;
using Litterfall.Documents.Layout;
using Litterfall.Documents.Papers;

namespace Litterfall.Tests.EndToEnd.Papers;

/// <summary>
/// The papers of every sample, text and geometry, as they were read through and approved;
/// LITTERFALL_APPROVE=1 rewrites them, to be read in the diff before they are committed. Of a paper: each
/// line of text with the millimeters down and across at which it begins; of a drawing: each key with its
/// layer, how many marks it has and the box around them; of a part to cut: its every edge.
/// </summary>
public sealed partial class ApprovedPapersTests
{
    private static readonly PaperWish Wish = new(PaperSize.A4, null, "0", false);

    public static TheoryData<string> Samples => CheckTests.Samples;

    [Theory]
    [MemberData(nameof(Samples))]
    public void Papers_are_as_approved(string sample)
    {
        var name = Path.GetFileName(sample).Split('.')[0] + ".txt";
        var path = Path.Combine(Cli.Root, "tests", "EndToEnd", "Papers", "Approved", name);
        var now = Described(InProcess.OfSample(sample, Wish));
        if (Environment.GetEnvironmentVariable("LITTERFALL_APPROVE") == "1")
        {
            File.WriteAllText(path, now);
        }

        var (approved, found) = (File.ReadAllText(path).Split('\n'), now.Split('\n'));
        var at = approved.Zip(found).TakeWhile(pair => pair.First == pair.Second).Count();
        Assert.True(
            approved.Length == at && found.Length == at,
            $"{name} line {at + 1}:\napproved {approved.ElementAtOrDefault(at)}\nnow      "
                + found.ElementAtOrDefault(at)
        );
    }

    /// <summary>What is described is told apart: a word, a place, a mark that is gone.</summary>
    [Fact]
    public void A_changed_paper_is_described_otherwise()
    {
        const string drawing =
            "<svg xmlns=\"http://www.w3.org/2000/svg\"><g><path d=\"M1 2L3 4\" data-layer=\"CUT\"/>"
            + "<text x=\"5\" y=\"6\" data-layer=\"LABEL\">word</text></g></svg>";
        string[] others =
        [
            drawing,
            drawing.Replace("word", "ward", StringComparison.Ordinal),
            drawing.Replace("L3 4", "L3 5", StringComparison.Ordinal),
            drawing.Replace("x=\"5\"", "x=\"6\"", StringComparison.Ordinal),
            drawing.Replace("<path d=\"M1 2L3 4\" data-layer=\"CUT\"/>", "", StringComparison.Ordinal),
        ];
        Assert.Distinct(others.Select(svg => Described([new("a.svg", Encoding.UTF8.GetBytes(svg))])));
    }

    private static string Described(IEnumerable<PaperFile> files)
    {
        var text = new StringBuilder();
        foreach (var file in files.OrderBy(f => f.Name, StringComparer.Ordinal))
        {
            var lines = Path.GetExtension(file.Name) switch
            {
                ".pdf" => Pdf(file),
                ".svg" when file.Name.StartsWith("cut/", StringComparison.Ordinal) => Edges(file),
                ".svg" => Drawing(file),
                ".csv" => Encoding.UTF8.GetString(file.Bytes).TrimEnd().Split('\n').Select(l => l.TrimEnd()),
                _ => [],
            };
            text.Append("== ").Append(file.Name).Append('\n');
            text.AppendJoin('\n', lines).Append('\n');
        }

        return text.ToString();
    }

    private static IEnumerable<string> Pdf(PaperFile file)
    {
        foreach (var (number, side) in PdfPaper.Open(file.Bytes).Sides.Index())
        {
            var stroked = side.Shapes.Count(s => s.Stroked);
            yield return string.Create(
                CultureInfo.InvariantCulture,
                $"-- side {number + 1}, {side.Width:0} × {side.Height:0} mm, {stroked} lines, "
                    + $"{side.Shapes.Count - stroked} fields"
            );
            foreach (var line in side.Placed)
            {
                yield return $"{Half(line.Down)} {Half(line.Across)} {line.Text}";
            }
        }
    }

    private static IEnumerable<string> Drawing(PaperFile file) =>
        Marks(file)
            .GroupBy(m => (Key: Word(m, "data-key"), Layer: Word(m, "data-layer"), m.Name.LocalName))
            .OrderBy(g => g.Key.Key, StringComparer.Ordinal)
            .ThenBy(g => g.Key.Layer, StringComparer.Ordinal)
            .ThenBy(g => g.Key.LocalName, StringComparer.Ordinal)
            .Select(g =>
            {
                var spots = g.SelectMany(Spots).ToList();
                var words = string.Join(" | ", g.Select(m => m.Value).Where(v => v.Length > 0));
                return $"{g.Key.Key} {g.Key.Layer} {g.Count()}: {Half(spots.Min(s => s.X))} "
                    + $"{Half(spots.Min(s => s.Y))} to {Half(spots.Max(s => s.X))} "
                    + $"{Half(spots.Max(s => s.Y))} {words}".TrimEnd();
            });

    private static IEnumerable<string> Edges(PaperFile file) =>
        Marks(file).Select(m => $"{Word(m, "data-layer")} {Word(m, "d")}");

    private static IEnumerable<XElement> Marks(PaperFile file)
    {
        using var stream = new MemoryStream(file.Bytes);
        var all = XDocument.Load(stream).Descendants();
        return [.. all.Where(e => e.Attribute("data-layer") is not null)];
    }

    private static IEnumerable<(double X, double Y)> Spots(XElement mark) =>
        mark.Name.LocalName == "text"
            ? [(Number(Word(mark, "x")), Number(Word(mark, "y")))]
            : Spot()
                .Matches(Word(mark, "d"))
                .Select(m => (Number(m.Groups["x"].Value), Number(m.Groups["y"].Value)));

    private static string Word(XElement mark, string name) => mark.Attribute(name)?.Value ?? "";

    private static double Number(string text) => double.Parse(text, CultureInfo.InvariantCulture);

    /// <summary>Half millimeters; a hair is added so that a value on the edge falls one way.</summary>
    private static string Half(double millimeters) =>
        (Math.Round((millimeters * 2) + 1e-3) / 2).ToString("0.0", CultureInfo.InvariantCulture);

    [GeneratedRegex("(?<x>-?[0-9.]+) (?<y>-?[0-9.]+)(?=[A-Z]|$)", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Spot();
}
