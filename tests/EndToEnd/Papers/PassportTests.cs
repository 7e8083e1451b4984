using System.Text.RegularExpressions;

namespace Litterfall.Tests.EndToEnd.Papers;

/// <summary>
/// The code of each passport, rendered by pdftoppm and read by zbarimg, and its check character by an
/// implementation written here from ISO 7064.
/// </summary>
public sealed partial class PassportTests(PaperFolder papers)
{
    private const string Alphabet = "0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ";
    private const string Passport = "09-tank-passport.pdf";

    public static TheoryData<string> Samples => CheckTests.Samples;

    [Theory]
    [MemberData(nameof(Samples))]
    public void The_code_reads_back_as_the_printed_number(string sample)
    {
        var (render, scan) = (
            DebianTool.Find("pdftoppm", "poppler-utils"),
            DebianTool.Find("zbarimg", "zbar-tools")
        );
        using var scratch = new Scratch();
        var page = scratch.At("passport");
        string[] draw = ["-r", "200", "-png", "-singlefile", papers.Of(sample).At(Passport), page];
        var drawn = DebianTool.Run(render, draw, "");
        Assert.True(drawn.Code == 0, drawn.Error);
        var read = DebianTool.Run(scan, ["-q", "--raw", page + ".png"], "");
        Assert.True(read.Code == 0, $"zbarimg ends with {read.Code}: {read.Error}");
        Assert.Equal(Printed(sample), read.Out.TrimEnd('\n'));
    }

    [Theory]
    [MemberData(nameof(Samples))]
    public void The_number_carries_its_check_character(string sample)
    {
        var number = Printed(sample);
        Assert.True(IsValid(number), number);
        // One wrong sign, or two neighbors swapped, is always found: that is what the standard is for.
        for (var i = 0; i < number.Length; i++)
        {
            foreach (var sign in Alphabet.Where(sign => sign != number[i]))
            {
                Assert.False(IsValid(number.Remove(i, 1).Insert(i, $"{sign}")));
            }

            if (i > 0 && number[i] != number[i - 1])
            {
                Assert.False(IsValid(number.Remove(i - 1, 2).Insert(i - 1, $"{number[i]}{number[i - 1]}")));
            }
        }
    }

    [Fact]
    public void Every_tank_has_a_number_of_its_own() =>
        Assert.Equal(Cli.Samples.Count, Cli.Samples.Select(Printed).Distinct(StringComparer.Ordinal).Count());

    /// <summary>
    /// The example of the Global Release Identifier, whose last sign is a check character of this system:
    /// from
    /// memory.
    /// </summary>
    [Fact]
    public void The_check_of_this_test_knows_a_published_number()
    {
        Assert.True(IsValid("A12425GABC1234002M"));
        Assert.False(IsValid("A12425GABC1234002N"));
    }

    /// <summary>
    /// ISO 7064, hybrid system MOD 37,36: start with 36; for each sign add its value modulo 36, take 36
    /// for 0,
    /// double modulo 37; the check character makes the last sum 1.
    /// </summary>
    private static bool IsValid(string number)
    {
        var product = 36;
        for (var i = 0; i < number.Length - 1; i++)
        {
            var sum = (product + Alphabet.IndexOf(number[i], StringComparison.Ordinal)) % 36;
            product = (sum == 0 ? 36 : sum) * 2 % 37;
        }

        return (product + Alphabet.IndexOf(number[^1], StringComparison.Ordinal)) % 36 == 1;
    }

    /// <summary>The large number beside the code.</summary>
    private string Printed(string sample)
    {
        var large = papers.Of(sample).Pdf(Passport).Sides[0].Signs.Where(s => s.Letter.PointSize > 20);
        var number = string.Concat(large.Select(s => s.Text));
        Assert.Matches(Form(), number);
        return number;
    }

    [GeneratedRegex("^LF[0-9A-Z]{11}$", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Form();
}
