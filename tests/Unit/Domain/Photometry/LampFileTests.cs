using System.Text;
using Litterfall.Domain.Photometry;
using Litterfall.Physics.Light;
using Xunit;

namespace Litterfall.UnitTests.Domain.Photometry;

/// <summary>
/// Files written by a grammar of our own are read back: form, flux and intensities of the luminaire behind
/// them. Then
/// they are damaged: each is read or refused in one sentence with its place.
/// </summary>
public sealed class LampFileTests
{
    private const int Files = 60;

    public static TheoryData<int> Seeds => [.. Enumerable.Range(0, Files)];

    [Theory]
    [MemberData(nameof(Seeds))]
    public void An_lm63_file_gives_back_its_luminaire(int seed)
    {
        var random = new Random(seed);
        var lamp = LampModel.Random(random, seed % 5);
        var grammar = new Lm63Grammar(random, lamp);
        var file = Read("lamp.ies", grammar.Write());
        Assert.Equal($"LM-63-{grammar.Edition}", file.Form);
        Assert.Equal(grammar.LampLumens, file.LampLumens);
        Assert.Equal(grammar.Watts > 0.0 ? grammar.Watts : null, file.Watts);
        Assert.Equal(lamp.Along, file.Opening.Along, 6);
        Assert.Equal(lamp.Across, file.Opening.Across, 6);
        Matches(lamp, file, grammar.Factor);
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void A_eulumdat_file_gives_back_its_luminaire(int seed)
    {
        var random = new Random(1000 + seed);
        var lamp = LampModel.Random(random, seed % 5);
        var grammar = new EulumdatGrammar(random, lamp);
        var file = Read("lamp.ldt", grammar.Write());
        Assert.Equal("EULUMDAT", file.Form);
        Assert.Equal(grammar.LampLumens, file.LampLumens);
        Assert.Equal(18.0, file.Watts);
        Matches(lamp, file, 1.0);
    }

    [Theory]
    [MemberData(nameof(Seeds))]
    public void A_damaged_file_is_read_or_refused_with_its_place(int seed)
    {
        var random = new Random(2000 + seed);
        var lamp = LampModel.Random(random, seed % 5);
        string whole =
            seed % 2 == 0 ? new Lm63Grammar(random, lamp).Write() : new EulumdatGrammar(random, lamp).Write();
        for (int i = 0; i < 60; i++)
        {
            string damaged = Damaged(whole, random);
            var reading = LampFile.Read("lamp", Encoding.UTF8.GetBytes(damaged));
            Assert.NotEqual(reading.IsGood, reading.Faults.Count > 0);
            foreach (var fault in reading.Faults)
            {
                Assert.InRange(fault.Line, 1, damaged.Count(c => c is '\n' or '\r') + 2);
                Assert.NotEmpty(fault.Message);
                Assert.NotEmpty(fault.Expected);
            }

            if (reading.Value is { } file)
            {
                double lumens = PlacedLamp.Measured(file, new Point3(0.3, 0.2, 0.5), 20.0).Sum(l => l.Lumens);
                Assert.True(double.IsFinite(lumens) && lumens > 0.0);
                Assert.NotNull(PlacedLamp.Oddities(file).Length.ToString());
            }
        }
    }

    [Theory]
    [InlineData(
        "IESNA:LM-63-2002\nTILT=NONE\n1 1e308 1 2 1 1 2 0 0 0\n1 1 10\n0 90\n0\n1 1\n",
        "'1e308' stands where the lumens of a lamp"
    )]
    [InlineData(
        "IESNA:LM-63-2002\nTILT=NONE\n1 -1 5e-324 2 1 1 2 0 0 0\n1 1 10\n0 90\n0\n1 1\n",
        "'5e-324' stands where the multiplier"
    )]
    [InlineData(
        "IESNA:LM-63-2002\nTILT=NONE\n1 -1 1e-30 2 1 1 2 0 0 0\n1 1 10\n0 90\n0\n1 1\n",
        "the multiplier is out of range"
    )]
    [InlineData(
        "IESNA:LM-63-2002\nTILT=NONE\n1 -1 1 2 1 1 2 0 0 0\n1 1 10\n0 90\n0\n1e-9 1e-9\n",
        "every intensity is next to 0"
    )]
    [InlineData(
        "IESNA:LM-63-2002\nTILT=NONE\n1 -1 1 2 1 1 2 0 0 0\n1 1 10\n0 1e-300\n0\n1 1\n",
        "a vertical angle goes from 0 to 0"
    )]
    public void A_number_that_no_lamp_has_is_refused(string text, string message)
    {
        var fault = Assert.Single(LampFile.Read("lamp.ies", Encoding.UTF8.GetBytes(text)).Faults);
        Assert.Contains(message, fault.Message, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("", "the luminaire file is empty")]
    [InlineData(
        "IESNA:LM-63-2002\nTILT=NONE\n1 -1 1 2 1 2 2 0 0 0\n1 1 10\n0 90\n0\n1 1\n",
        "the photometry is of type B"
    )]
    [InlineData(
        "IESNA:LM-63-2002\nTILT=NONE\n1 -1 1 2 1 3 2 0 0 0\n1 1 10\n0 90\n0\n1 1\n",
        "the photometry is of type A"
    )]
    [InlineData(
        "IESNA:LM-63-2002\nTILT=NONE\n1 -1 1 2 1 1 2 0 0 0\n1 1 10\n0 90\n0\n1\n",
        "the file ends before an intensity"
    )]
    [InlineData(
        "IESNA:LM-63-2002\nTILT=NONE\n1 -1 1 2 1 1 2 0 0 0\n1 1 10\n0 90\n0\n1 1 1\n",
        "there are more numbers"
    )]
    [InlineData(
        "IESNA:LM-63-2002\nTILT=NONE\n1 -1 1 2 1 1 2 0 0 0\n1 1 10\n90 0\n0\n1 1\n",
        "a vertical angle goes from 90 to 0"
    )]
    [InlineData(
        "IESNA:LM-63-2002\nTILT=NONE\n1 -1 1 2 1 1 2 0 0 0\n1 1 10\n0 90\n0\n1 -1\n",
        "an intensity is negative"
    )]
    [InlineData(
        "IESNA:LM-63-2002\nTILT=NONE\n1 -1 1 2 2 1 2 0 0 0\n1 1 10\n0 90\n0 120\n1 1 1 1\n",
        "the horizontal angles run from 0° to 120°"
    )]
    [InlineData("IESNA91\n[BLOCK]\nTILT=NONE\n", "the file holds several luminaires")]
    [InlineData(
        "IESNA:LM-63-2002\nTILT=NONE\n1 -1 1 4000 4000 1 2 0 0 0\n",
        "more than a million intensities"
    )]
    [InlineData("nothing of a lamp\n", "this is neither LM-63")]
    public void A_wrong_file_gets_one_sentence(string text, string message)
    {
        var fault = Assert.Single(LampFile.Read("lamp.ies", Encoding.UTF8.GetBytes(text)).Faults);
        Assert.Contains(message, fault.Message, StringComparison.Ordinal);
    }

    /// <summary>
    /// Openings by the tables of the standard (summaries read): width, length, height with their signs.
    /// </summary>
    [Theory]
    [InlineData("IESNA:LM-63-2002", "0 0 0", OpeningForm.Point, 0.0, 0.0)]
    [InlineData("IESNA:LM-63-2002", "0.1 0.4 0", OpeningForm.Rectangle, 0.4, 0.1)]
    [InlineData("IESNA:LM-63-2002", "0.1 0.4 0.05", OpeningForm.Rectangle, 0.4, 0.1)]
    [InlineData("IESNA:LM-63-2002", "-0.2 -0.2 0", OpeningForm.Disc, 0.2, 0.2)]
    [InlineData("IES:LM-63-2019", "-0.2 -0.2 -0.2", OpeningForm.Disc, 0.2, 0.2)]
    [InlineData("IESNA:LM-63-1995", "-0.08 0 0", OpeningForm.Disc, 0.08, 0.08)]
    [InlineData("IESNA:LM-63-2002", "-0.080 0.000 0.000", OpeningForm.Disc, 0.08, 0.08)]
    [InlineData("IESNA91", "-0.08 0 0.1", OpeningForm.Disc, 0.08, 0.08)]
    [InlineData("IESNA:LM-63-1995", "0 0.5 -0.03", OpeningForm.Rectangle, 0.5, 0.03)]
    [InlineData("IESNA:LM-63-2002", "-0.03 0.5 -0.03", OpeningForm.Rectangle, 0.5, 0.03)]
    [InlineData("IESNA:LM-63-2002", "0 0.5 0", OpeningForm.Line, 0.5, 0.0)]
    public void Signs_of_the_opening_tell_its_form(
        string version,
        string sizes,
        OpeningForm form,
        double along,
        double across
    )
    {
        string text = $"{version}\nTILT=NONE\n1 -1 1 2 1 1 2 {sizes}\n1 1 10\n0 90\n0\n5 1\n";
        var opening = Read("lamp.ies", text).Opening;
        Assert.Equal(form, opening.Form);
        Assert.Equal(along, opening.Along, 9);
        Assert.Equal(across, opening.Across, 9);
    }

    /// <summary>
    /// The last number but one multiplies up to 1991; in 2019 it says how the file was made.
    /// </summary>
    [Theory]
    [InlineData("IESNA91", 8.0)]
    [InlineData("IESNA:LM-63-1995", 10.0)]
    [InlineData("IESNA:LM-63-2002", 10.0)]
    [InlineData("IES:LM-63-2019", 10.0)]
    public void The_number_after_the_ballast_factor_multiplies_only_in_old_files(
        string version,
        double candela
    )
    {
        string text = $"{version}\nTILT=NONE\n1 -1 1 2 1 1 2 0 0 0\n1 0.8 10\n0 90\n0\n10 1\n";
        Assert.Equal(candela, Read("lamp.ies", text).Candela[0], 9);
    }

    [Fact]
    public void A_latin_degree_sign_is_no_fault()
    {
        byte[] bytes = Encoding.Latin1.GetBytes(
            "IESNA91\n[TEST] 25 °C\nTILT=NONE\n1 -1 1 2 1 1 2 0 0 0\n1 1 10\n0 90\n0\n10 1\n"
        );
        Assert.Equal("25 °C", LampFile.Read("lamp.ies", bytes).Value!.Keywords[0].Text);
    }

    [Fact]
    public void More_light_than_its_lamps_send_out_is_said()
    {
        const string text = "IESNA91\nTILT=NONE\n1 100 1 2 1 1 2 0 0 0\n1 1 10\n0 90\n0\n1000 1000\n";
        Assert.Contains(PlacedLamp.Oddities(Read("lamp.ies", text)), n =>
            n.Contains("more than its lamps", StringComparison.Ordinal)
        );
    }

    private static LampFile Read(string name, string text)
    {
        var reading = LampFile.Read(name, Encoding.UTF8.GetBytes(text));
        Assert.True(reading.IsGood, string.Join("; ", reading.Faults));
        return reading.Value!;
    }

    /// <summary>
    /// At every node of the whole turn the intensity is that of the luminaire behind the file.
    /// </summary>
    private static void Matches(LampModel lamp, LampFile file, double factor)
    {
        var table = CandelaTable.Of(
            file.VerticalDegrees.AsSpan(),
            file.HorizontalDegrees.AsSpan(),
            file.Candela.AsSpan()
        );
        foreach (double around in lamp.Horizontal)
        {
            foreach (double down in lamp.Vertical)
            {
                var (sin, cos) = Math.SinCos(down * Math.PI / 180.0);
                var (s, c) = Math.SinCos(around * Math.PI / 180.0);
                double got = table.Toward(new Point3(sin * c, sin * s, -cos), 0.0);
                Assert.Equal(factor * lamp.At(down, around), got, 1e-4 * lamp.Peak);
            }
        }
    }

    private static string Damaged(string text, Random random)
    {
        for (int edits = random.Next(1, 4); edits > 0 && text.Length > 2; edits--)
        {
            int at = random.Next(text.Length);
            int length = Math.Min(random.Next(1, 20), text.Length - at);
            text = random.Next(4) switch
            {
                0 => text.Remove(at, length),
                1 => text.Insert(at, "-1e9 ,;x"[random.Next(8)..]),
                2 => text[..at],
                _ => text.Insert(at, text.Substring(random.Next(text.Length - length), length)),
            };
        }

        return text;
    }
}
