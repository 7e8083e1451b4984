using System.Collections.Immutable;
using System.Text;
using Litterfall.Documents.Tables;
using Litterfall.Instructions.Buying;
using Litterfall.Instructions.Care;
using Litterfall.Quantities.Packs;
using Litterfall.Quantities.Stocking;
using Litterfall.UnitTests.Instructions.Building;
using Litterfall.UnitTests.Quantities.Measures;

namespace Litterfall.UnitTests.Documents;

/// <summary>CSV against RFC 4180 and against the csv module of Python.</summary>
public sealed class CsvTableTests
{
    private const string Reader =
        "import csv, io, json, sys\n"
        + "text = sys.stdin.buffer.read().decode('utf-8-sig')\n"
        + "print(json.dumps(list(csv.reader(io.StringIO(text, newline=''), strict=True, delimiter=%))))";

    private static readonly string[] Awkward =
    [
        "plain",
        "with, comma",
        "with; semicolon",
        "say \"moss\"",
        "two\r\nlines",
        "one\nbreak",
        "007",
        "1E5",
        "MAR-1",
        " spaced ",
        "",
        "'quoted'",
        "雨林 غابة лес 🐸",
        "<script>alert(1)</script>",
    ];

    private static readonly string[] Formulas =
    [
        "=cmd|' /C calc'!A0",
        "+1+1",
        "-2+3",
        "@SUM(A1)",
        "\t=1",
        "\r=1",
        "  =1+1",
        "\n=1",
        "＝1+1",
        "=HYPERLINK(\"http://example.org\",\"x\")",
    ];

    [Fact]
    public void The_text_follows_the_rules_of_RFC_4180()
    {
        // RFC 4180 section 2: rule 1, lines end with CRLF; rule 3, a header line; rule 6, fields with line
        // breaks, quotes and commas are quoted; rule 7, a quote in a field is doubled.
        var bytes = Table(CsvStyle.Invariant, ["aaa", "b\"bb", "c,cc", "d\r\nd"]);
        Assert.Equal([0xEF, 0xBB, 0xBF], bytes[..3]);
        Assert.Equal(
            "name\r\naaa\r\n\"b\"\"bb\"\r\n\"c,cc\"\r\n\"d\r\nd\"\r\n",
            new UTF8Encoding(true).GetString(bytes[3..])
        );
    }

    [Theory]
    [InlineData(CsvStyle.Invariant, "','")]
    [InlineData(CsvStyle.Semicolon, "';'")]
    public void Texts_come_back_as_they_were(CsvStyle style, string separator)
    {
        var rows = Rows(Table(style, Awkward), separator);
        Assert.Equal(Awkward, rows.Skip(1).Select(r => r[0]));
    }

    [Fact]
    public void Formulas_come_back_with_an_apostrophe_in_front()
    {
        var rows = Rows(Table(CsvStyle.Invariant, Formulas), "','");
        Assert.Equal(Formulas.Select(f => "'" + f), rows.Skip(1).Select(r => r[0]));
    }

    [Fact]
    public void Numbers_and_days_are_not_guarded_and_keep_their_style()
    {
        ImmutableArray<CsvCell> row =
        [
            CsvCell.Of(-1.5),
            CsvCell.Of(0.1 + 0.2),
            CsvCell.Of(1234567.25),
            CsvCell.Of(1e-7),
            CsvCell.Of((double?)null),
            CsvCell.Of(new DateOnly(2026, 8, 14)),
        ];
        string[] columns = ["a_mm", "b", "c", "d", "e", "day"];
        var plain = Rows(CsvTable.Write(columns, [row]), "','")[1];
        Assert.Equal(["-1.5", "0.3", "1234567.25", "0.0000001", "", "2026-08-14"], plain);
        var comma = Rows(CsvTable.Write(columns, [row], CsvStyle.Semicolon), "';'")[1];
        Assert.Equal(["-1,5", "0,3", "1234567,25", "0,0000001", "", "2026-08-14"], comma);
    }

    [Fact]
    public void A_row_that_does_not_fit_is_our_mistake() =>
        Assert.Throws<ArgumentException>(() =>
            CsvTable.Write(
                ["a", "b"],
                [
                    [CsvCell.Of("only one")],
                ]
            )
        );

    [Fact]
    public void Numbers_that_are_not_finite_are_our_mistake() =>
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            CsvTable.Write(
                ["a"],
                [
                    [CsvCell.Of(double.NaN)],
                ]
            )
        );

    [Fact]
    public void The_papers_of_a_design_are_readable_tables()
    {
        var list = ShoppingList.Of(Built.Kits);
        var shopping = Rows(ShoppingTable.Write(list), "','");
        Assert.Equal(list.Lines.Length + 1, shopping.Count);
        Assert.All(shopping, row => Assert.Equal(shopping[0].Length, row.Length));
        var cuts = Rows(CutTable.Write(Built.Kits, CsvStyle.Semicolon), "';'");
        // Barrier of the kits: 292 + 2 × 10 by 292 − 15 + 2 × 10 mm, eight pieces.
        Assert.Equal(["barrier", "plastic-fly-screen", "8", "312", "297"], cuts[1][1..6]);
        var plan = CareDates.Of(TankPlan.Of(Built.Kits));
        var dates = Rows(CareDateTable.Write(plan, TankNumber.Of(Built.Kits)), "','");
        Assert.Equal(plan.Dates.Length + 1, dates.Count);
        Assert.Contains(dates, row => row[1] == "planting" && row[2] == "2026-09-18");
    }

    private static byte[] Table(CsvStyle style, IEnumerable<string> texts) =>
        CsvTable.Write(["name"], texts.Select(t => ImmutableArray.Create(CsvCell.Of(t))), style);

    private static List<string[]> Rows(byte[] bytes, string separator) =>
        [
            .. Python
                .Read("csv", Reader.Replace("%", separator, StringComparison.Ordinal), bytes)
                .AsArray()
                .Select(row => row!.AsArray().Select(cell => cell!.GetValue<string>()).ToArray()),
        ];
}
