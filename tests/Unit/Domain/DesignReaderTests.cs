using System.Diagnostics;
using System.Text;
using CsCheck;
using Litterfall.Domain;
using Litterfall.Domain.Checking;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Faults;
using Litterfall.Domain.Keys;
using Litterfall.Domain.Lists;
using Litterfall.Forecasting;
using Litterfall.Judging;
using Litterfall.Quantities.Sizing;
using Litterfall.UnitTests.House;

namespace Litterfall.UnitTests.Domain;

/// <summary>Files that cannot be used say where, what, and what was expected, quickly.</summary>
[Collection("timed")]
public sealed class DesignReaderTests
{
    public static TheoryData<string> Names => [.. BrokenFiles.All.Select(f => f.Name)];

    [Theory]
    [MemberData(nameof(Names))]
    public void A_broken_file_is_explained(string name)
    {
        var broken = BrokenFiles.All.Single(f => f.Name == name);
        var faults = FaultsOf(broken.Text);
        Assert.NotEmpty(faults);
        Assert.All(faults, Useful);
        var first = faults[0];
        Assert.Equal((broken.Line, broken.Column), (first.Line, first.Column));
        Assert.Contains(broken.Says, $"{first.Message}; {first.Expected}", StringComparison.Ordinal);
    }

    [Fact]
    public void The_file_the_broken_ones_are_made_from_is_good() => Assert.Empty(FaultsOf(BrokenFiles.Good));

    public static TheoryData<string, byte[], int, int> Bytes =>
        new()
        {
            {
                "UTF-16 little endian",
                [.. Encoding.Unicode.Preamble, .. Encoding.Unicode.GetBytes("a: 1")],
                1,
                1
            },
            {
                "UTF-16 big endian",
                [.. Encoding.BigEndianUnicode.Preamble, .. Encoding.BigEndianUnicode.GetBytes("a: 1")],
                1,
                1
            },
            { "UTF-16 without a mark", Encoding.Unicode.GetBytes("a: 1\n"), 1, 2 },
            // "name: Caf" is nine characters, so the stray byte stands in column 10 of line 2.
            { "Latin-1", Encoding.Latin1.GetBytes("litterfall: 1\nname: Café\n"), 2, 10 },
            { "half a character", [0x61, 0xC3], 1, 2 },
            { "a picture", [0x89, 0x50, 0x4E, 0x47, 0x0D, 0x0A, 0x1A, 0x0A, 0, 0, 0, 13], 1, 1 },
            { "ten megabytes", new byte[10 * 1024 * 1024], 1, 1 },
            { "nothing", [], 1, 1 },
            { "only a byte order mark", [0xEF, 0xBB, 0xBF], 1, 1 },
        };

    [Theory]
    [MemberData(nameof(Bytes))]
    public void Bytes_that_are_no_text_are_explained(string name, byte[] bytes, int line, int column)
    {
        var watch = Stopwatch.StartNew();
        var reading = DesignReader.Read("broken", bytes);
        Assert.True(watch.ElapsedMilliseconds < 1000, name);
        Assert.Null(reading.Value);
        Assert.All(reading.Faults, Useful);
        Assert.Equal((line, column), (reading.Faults[0].Line, reading.Faults[0].Column));
    }

    [Theory]
    [InlineData("\n")]
    [InlineData("\r\n")]
    public void Line_ends_of_both_worlds_and_a_byte_order_mark_are_read(string newLine)
    {
        var text = BrokenFiles.Good.Replace("\n", newLine, StringComparison.Ordinal);
        byte[] bytes = [0xEF, 0xBB, 0xBF, .. Encoding.UTF8.GetBytes(text)];
        var reading = DesignReader.Read("good", bytes);
        Assert.True(reading.IsGood, string.Join('\n', reading.Faults));
        Assert.Equal(6, reading.Value!.Spans["floor.soil"].Line);
    }

    [Fact]
    public void All_faults_are_told_at_once_in_the_order_of_the_file()
    {
        var faults = FaultsOf(BrokenFiles.Good + "planted: x\nboxes: 0\nform: y\n");
        Assert.Equal([7, 8, 9], faults.Select(f => f.Line));
    }

    /// <summary>A file with thousands of faults does not bury the reader.</summary>
    [Fact]
    public void The_number_of_faults_is_limited()
    {
        var many = string.Concat(Enumerable.Range(0, 2000).Select(i => $"k{i}: 1\n"));
        Assert.InRange(FaultsOf(BrokenFiles.Good + many).Count, 1, 100);
    }

    /// <summary>Random damage to good files: an answer every time, never an exception.</summary>
    [Fact]
    public void Damaged_samples_are_read_or_explained()
    {
        string[] pieces =
        [
            "{",
            "}",
            "[",
            "]",
            ":",
            ",",
            "\"",
            "'",
            "#",
            "-",
            "\n",
            " ",
            "  ",
            "|",
            ">",
            "&",
            "*",
            "!",
            "%",
            "@",
            "?",
            "0",
            "9",
            "\u2028",
            "\u00A0",
            "none",
            "~",
            "cm",
            "\\",
        ];
        var gen = Gen.Select(
            Pick.From(SampleFiles.Texts),
            Gen.Select(Gen.Double[0, 1], Gen.Int[0, 4], Pick.From(pieces)).Array[1, 6]
        );
        gen.Sample(
            (sample, damages) =>
            {
                var text = sample;
                foreach (var (place, cut, piece) in damages)
                {
                    var at = (int)(place * text.Length);
                    text = text[..at] + piece + text[Math.Min(text.Length, at + cut)..];
                }

                var faults = FaultsOf(text, run: true);
                Assert.All(faults, Useful);
            },
            iter: LongRun.Cases(600, 3000)
        );
    }

    internal static Seq<TextFault> FaultsOf(string text, bool run = false)
    {
        var watch = Stopwatch.StartNew();
        var reading = DesignReader.Read("broken", text);
        if (!reading.IsGood)
        {
            Assert.Null(reading.Value);
            Assert.True(watch.ElapsedMilliseconds < 1000, $"took {watch.ElapsedMilliseconds} ms");
            return reading.Faults;
        }

        var check = DesignChecker.Check(reading.Value!, SampleFiles.Catalog);
        if (run && check.IsGood)
        {
            _ = LongRun.IsAsked ? DesignRun.Execute(check.Value!).Numbers : DesignNumbers.Shape(check.Value!);
        }

        return check.Faults;
    }

    private static void Useful(TextFault fault)
    {
        Assert.Equal("broken", fault.File);
        Assert.True(fault.Line >= 1 && fault.Column >= 1, fault.ToString());
        Assert.False(string.IsNullOrWhiteSpace(fault.Message), fault.ToString());
        Assert.False(string.IsNullOrWhiteSpace(fault.Expected), fault.ToString());
        Assert.True(fault.Message.Length < 400, fault.Message);
        Assert.DoesNotContain("Exception", fault.Message, StringComparison.Ordinal);
    }
}
