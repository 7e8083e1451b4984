using System.Globalization;
using System.Text.Json.Nodes;
using System.Text.RegularExpressions;
using Litterfall.Documents.Layout;
using Litterfall.Quantities.Measures;

namespace Litterfall.Tests.EndToEnd.Papers;

/// <summary>
/// The text of each build sheet against the check of the same design and against hand arithmetic: depths,
/// litres, packs, cut sizes, order of steps, cautions, stops.
/// </summary>
public sealed partial class BuildSheetTests(PaperFolder papers)
{
    public static TheoryData<string> Samples => CheckTests.Samples;

    [Theory]
    [MemberData(nameof(Samples))]
    public void It_says_the_depths_at_four_corners(string sample)
    {
        var (sheet, facts) = (Sheet(sample), SampleFacts.Of(sample));
        var unit = facts.Inches ? "in" : "cm";
        Assert.True(sheet.Says($"Settled depth at the corners, {unit}"), sheet.Running);
        foreach (var row in facts.Rows)
        {
            Assert.True(sheet.Says(row), $"'{row}' is not in\n{string.Join('\n', sheet.Lines)}");
        }
    }

    /// <summary>
    /// Poured is settled ÷ (1 − settling), and so is mixed ÷ finished; both come from elsewhere.
    /// </summary>
    [Theory]
    [MemberData(nameof(Samples))]
    public void It_says_how_deep_to_pour_the_soil(string sample)
    {
        var facts = SampleFacts.Of(sample);
        var soil = Rows(sample).Single(r => Text(r, "layer") == "soil" && Text(r, "row") == "layer");
        var swell = Number(soil, "mixedLitres") / Number(soil, "finishedLitres");
        var cells = facts.Soil.Select(d => facts.Inches ? Sixteenths(d * swell) : Fixed(d * swell));
        Assert.True(
            Sheet(sample).Says($"soil, as poured {string.Join(' ', cells)}"),
            string.Join(' ', cells)
        );
    }

    [Theory]
    [MemberData(nameof(Samples))]
    public void It_says_the_litres_of_each_layer_and_component(string sample)
    {
        var sheet = Sheet(sample);
        var rows = Rows(sample).Where(r => Text(r, "name").Length > 0).ToList();
        Assert.NotEmpty(rows);
        // Where nothing is lost, loose and to buy are one number and share a column.
        var lossless = rows.TrueForAll(r => Number(r, "looseLitres") == Number(r, "toBuyLitres"));
        foreach (var row in rows.Where(r => Number(r, "looseLitres") > 0))
        {
            var (loose, buy) = (Liters(Number(row, "looseLitres")), Liters(Number(row, "toBuyLitres")));
            (loose, buy) = (Said(sample, loose), Said(sample, buy));
            var outside = lossless ? loose : $"{loose} {buy}";
            var (name, cells) =
                Text(row, "row") == "component"
                    ? ($"– {Text(row, "name")}", outside)
                    : (
                        Mixed(sample, row),
                        $"{Said(sample, Liters(Number(row, "finishedLitres")))} {outside}"
                    );
            Assert.True(HasRow(sample, name, cells), $"{name} {cells}\n{string.Join('\n', sheet.Lines)}");
        }
    }

    [Theory]
    [MemberData(nameof(Samples))]
    public void It_says_the_packs(string sample)
    {
        var sheet = Sheet(sample);
        var names = Rows(sample).DistinctBy(r => Text(r, "item")).ToDictionary(r => Text(r, "item"));
        foreach (var need in papers.Check(sample)["packs"]!.AsArray())
        {
            if (Number(need!, "stockLitres") is > 0 and var stock)
            {
                var taken = Said(sample, Liters(Math.Min(stock, Number(need!, "needLitres"))));
                var name = $"{Text(names[Text(need!, "material")], "name")}: from stock";
                Assert.True(HasRow(sample, name, taken), $"{name} {taken}\n{string.Join('\n', sheet.Lines)}");
            }

            foreach (var pack in need!["buy"]!.AsArray())
            {
                var name = $"{Number(pack!, "packs"):0} × {Text(pack!, "name")}";
                var litres = Said(sample, Liters(Number(pack!, "litres")));
                Assert.True(
                    HasRow(sample, name, litres),
                    $"{name} {litres}\n{string.Join('\n', sheet.Lines)}"
                );
            }
        }
    }

    [Theory]
    [MemberData(nameof(Samples))]
    public void It_says_the_cut_sizes_and_so_does_the_cut_list(string sample)
    {
        var cuts = papers.Check(sample)["cuts"]!.AsArray();
        var list = papers.Of(sample).Pdf("03-cut-list.pdf").Sides[0];
        Assert.NotEmpty(cuts);
        foreach (var cut in cuts)
        {
            var size = $"{Fixed(Number(cut!, "lengthMm"))} × {Fixed(Number(cut!, "widthMm"))}";
            var thick = cut!["thicknessMm"] is { } t
                ? $" × {t.GetValue<double>().ToString("0.#", CultureInfo.InvariantCulture)}"
                : "";
            var part = $"{Number(cut, "count"):0} {Text(cut, "part").Replace('-', ' ')}";
            // A maker of inches reads inches first, with the millimeters in brackets; both may wrap.
            var printed = IsUs(sample) ? Bare($"({size}{thick} mm)") : "";
            Assert.True(
                IsUs(sample)
                    ? Bare(Whole(sample)).Contains(printed, StringComparison.Ordinal)
                    : Sheet(sample).HasRow(part, size + thick),
                $"{part} {size}{thick}"
            );
            Assert.True(
                Bare(list.Running).Contains(Bare(size), StringComparison.Ordinal),
                $"{size} is not in\n{string.Join('\n', list.Lines)}"
            );
        }
    }

    [Theory]
    [MemberData(nameof(Samples))]
    public void It_lists_the_steps_in_the_order_of_the_cards(string sample)
    {
        if (!papers.Of(sample).Files.Contains("02-step-cards.pdf"))
        {
            // A tank in service is not built again.
            Assert.DoesNotContain("Order of steps", Whole(sample), StringComparison.Ordinal);
            return;
        }

        var running = Whole(sample);
        var cards = papers
            .Of(sample)
            .Pdf("02-step-cards.pdf")
            .Sides.Select(s => Card().Match(s.Running))
            .ToList();
        var at = 0;
        for (var i = 0; i < cards.Count; i++)
        {
            var title = Title(cards[i]);
            var line = $"{i + 1} {title}";
            at = running.IndexOf(line, at, StringComparison.Ordinal);
            Assert.True(at >= 0, $"'{line}' is out of order");
        }

        // What lies below is poured before what lies above (own reasoning): clean, then from the base up.
        string[] order = ["Clean", "Stand", "Drainage", "Soil", "Plants", "Lid", "First weeks"];
        var places = order
            .Select(word => cards.FindIndex(c => Title(c).StartsWith(word, StringComparison.Ordinal)))
            .Where(place => place >= 0)
            .ToList();
        Assert.True(places.Count >= 4, string.Join(", ", cards.Select(Title)));
        Assert.Equal(places.Order(), places);
    }

    [Theory]
    [MemberData(nameof(Samples))]
    public void It_names_each_caution_and_says_stop_where_one_stops(string sample)
    {
        var running = Whole(sample);
        var findings = papers.Check(sample)["findings"]!.AsArray();
        foreach (var caution in findings.Where(f => Text(f!, "severity") == "caution"))
        {
            var first = string.Join(' ', Said(sample, Text(caution!, "text")).Split(' ').Take(4));
            Assert.True(running.Contains(first, StringComparison.Ordinal), first);
        }

        var stops = findings.Where(f => Text(f!, "severity") == "stop").ToList();
        Assert.Equal(stops.Count > 0, running.Contains("STOP", StringComparison.Ordinal));
        foreach (var stop in stops)
        {
            Assert.Contains(Said(sample, Text(stop!, "text")), running, StringComparison.Ordinal);
        }
    }

    /// <summary>The verdict says the same as the check.</summary>
    [Theory]
    [MemberData(nameof(Samples))]
    public void A_sheet_says_whether_anything_stops_the_build(string sample) =>
        Assert.Equal(
            papers.Check(sample)["findings"]!.AsArray().All(f => Text(f!, "severity") != "stop"),
            Verdict(Sheet(sample)).StartsWith("Nothing stops this build", StringComparison.Ordinal)
        );

    /// <summary>The words lie inside a frame, above the drawings; both samples are stopped.</summary>
    [Theory]
    [InlineData("samples/ld-202-waiting-room.viv.yaml")]
    [InlineData("samples/ld-205-attic.viv.yaml")]
    public void A_stop_is_boxed_at_the_head(string sample)
    {
        var sheet = Sheet(sample);
        var word = sheet.Signs.Index().First(s => s.Item.Text == "S" && Spells(sheet, s.Index, "STOP")).Item;
        var caption = sheet.Signs.Index().First(s => Spells(sheet, s.Index, "Section, scale")).Item;
        Assert.True(word.Baseline < 50 && word.Baseline < caption.Baseline);
        var frames = sheet.Shapes.Where(s => s is { Stroked: true, Closed: true } && s.Field.Width > 150);
        Assert.Contains(frames, f =>
            f.Field.Left < word.Field.Left
            && f.Field.Right > word.Field.Right
            && f.Field.Top < word.Field.Top
            && f.Field.Bottom > word.Field.Bottom
        );
    }

    [Theory]
    [MemberData(nameof(Samples))]
    public void It_says_the_weights(string sample)
    {
        var weights = papers.Check(sample)["weights"]!;
        var words =
            $"One box: {Fixed(Number(weights, "dryKg"))} kg dry, "
            + $"{Fixed(Number(weights, "plantedKg"))} kg planted, "
            + $"{Fixed(Number(weights, "wetKg"))} kg at its wettest.";
        Assert.Contains(Said(sample, words), Whole(sample), StringComparison.Ordinal);
    }

    private static bool Spells(PdfSide side, int at, string word) =>
        string.Concat(side.Signs.Skip(at).Take(word.Length).Select(s => s.Text)) == word;

    private string Verdict(PdfSide sheet)
    {
        var at = sheet.Running.IndexOf("Nothing stops this build", StringComparison.Ordinal);
        return at < 0 ? sheet.Running : sheet.Running[at..];
    }

    private string Mixed(string sample, JsonNode row)
    {
        var parts = Rows(sample)
            .Any(r => Text(r, "row") == "component" && Text(r, "layer") == Text(row, "layer"));
        return parts ? $"{Text(row, "name")}, mixed" : Text(row, "name");
    }

    /// <summary>Typed in inches, so told in US units first; the units have tests of their own.</summary>
    private bool IsUs(string sample) => Imperial.IsUsed(InProcess.Sample(sample).Numbers.Design.Design);

    private string Said(string sample, string words) => IsUs(sample) ? UsUnits.Of(words) : words;

    private bool HasRow(string sample, string name, string cells) =>
        papers.Of(sample).Pdf("01-build-sheet.pdf").Sides.Any(s => s.HasRow(Said(sample, name), cells));

    /// <summary>All sides of the sheet as one text.</summary>
    private string Whole(string sample) =>
        string.Join(' ', papers.Of(sample).Pdf("01-build-sheet.pdf").Sides.Select(s => s.Running));

    private static string Bare(string text) => string.Concat(text.Where(c => !char.IsWhiteSpace(c)));

    private PdfSide Sheet(string sample) => papers.Of(sample).Pdf("01-build-sheet.pdf").Sides[0];

    private List<JsonNode> Rows(string sample) =>
        [.. papers.Check(sample)["quantities"]!.AsArray().Select(r => r!)];

    private static string Title(Match card) => card.Groups["title"].Value.Trim();

    private static string Text(JsonNode node, string key) => node[key]?.GetValue<string>() ?? "";

    private static double Number(JsonNode node, string key) => node[key]?.GetValue<double>() ?? 0;

    private static string Fixed(double value) => value.ToString("0.0", CultureInfo.InvariantCulture);

    /// <summary>
    /// Litres to a tenth; less than 0.05 L would read as nothing and is given in millilitres.
    /// </summary>
    private static string Liters(double litres) =>
        litres is > 0 and < 0.05
            ? $"{(litres * 1000).ToString("0", CultureInfo.InvariantCulture)} mL"
            : $"{Fixed(litres)} L";

    /// <summary>Inches to the nearest sixteenth in lowest terms, as on a tape.</summary>
    private static string Sixteenths(double inches)
    {
        var all = (int)Math.Round(inches * 16);
        var (whole, part, below) = (all / 16, all % 16, 16);
        for (; part > 0 && part % 2 == 0; part /= 2)
        {
            below /= 2;
        }

        return part == 0 ? $"{whole}"
            : whole == 0 ? $"{part}/{below}"
            : $"{whole} {part}/{below}";
    }

    [GeneratedRegex("^(?<title>.*?) ?Step card [0-9]+ of [0-9]+ · ", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Card();
}
