using CsCheck;
using Litterfall.Documents.Drawings;

namespace Litterfall.UnitTests.Documents;

/// <summary>Widths and line breaks of the embedded type.</summary>
public sealed class LetteringTests
{
    /// <summary>A typographic point is 1/72 in of 25.4 mm, so widths grow evenly with it.</summary>
    [Fact]
    public void Width_is_the_sum_of_the_signs_and_grows_with_the_type()
    {
        var width = Lettering.Width("litter", 10);
        Assert.Equal("litter".Sum(c => Lettering.Width(c.ToString(), 10)), width, 1e-9);
        Assert.Equal(2 * width, Lettering.Width("litter", 20), 1e-9);
        Assert.True(Lettering.Width("litter", 10, bold: true) > width);
        Assert.Equal(0, Lettering.Width("", 10));
    }

    [Fact]
    public void A_wide_letter_is_wider_than_a_narrow_one() =>
        Assert.True(Lettering.Width("W", 10) > 2 * Lettering.Width("i", 10));

    /// <summary>
    /// No line is too wide, no sign is lost, no word is parted that fits, no line is broken before it must.
    /// </summary>
    [Fact]
    public void Lines_are_broken_where_they_must_be() =>
        Gen.Select(Words, Gen.Double[12, 90], Gen.Bool)
            .Sample(
                (words, width, bold) =>
                {
                    var lines = Lettering.Wrap(string.Join("  ", words), width, 9, bold);
                    Assert.All(lines, line =>
                        Assert.True(Lettering.Width(line, 9, bold) <= width || line.Length == 1)
                    );
                    Assert.Equal(string.Concat(words), string.Concat(lines).Replace(" ", "", Ordinal));
                    var fitting = words.Where(w => Lettering.Width(w, 9, bold) <= width).ToList();
                    var set = lines.SelectMany(line => line.Split(' ')).ToHashSet(StringComparer.Ordinal);
                    Assert.Empty(fitting.Except(set, StringComparer.Ordinal));
                    foreach (var (line, next) in lines.Zip(lines.Skip(1)))
                    {
                        var longer = $"{line} {next.Split(' ')[0]}";
                        // A word too wide for a line begins on one of its own, and is parted there.
                        bool wasParted =
                            !words.Any(w => line.EndsWith(w, Ordinal)) || !words.Contains(next.Split(' ')[0]);
                        Assert.True(wasParted || Lettering.Width(longer, 9, bold) > width, longer);
                    }
                },
                iter: LongRun.Cases(300, 5000)
            );

    [Theory]
    [InlineData("two\nlines\tof text", "two lines of text")]
    [InlineData("🐸👩‍🌾 box", "□□ box")]
    [InlineData("20 °C ± 3, 5 µmol/m²/s", "20 °C ± 3, 5 µmol/m²/s")]
    public void Signs_the_type_does_not_have_are_one_box_each(string text, string clean) =>
        Assert.Equal(clean, Lettering.Clean(text));

    [Fact]
    public void A_text_too_wide_ends_in_an_ellipsis_and_fits()
    {
        const string text = "Philodendron hederaceum, climbing on the background";
        var cut = Lettering.Cut(text, 40, 9);
        Assert.EndsWith("…", cut, Ordinal);
        Assert.StartsWith(cut[..^1], text, Ordinal);
        Assert.True(Lettering.Width(cut, 9) <= 40);
        Assert.Equal(text, Lettering.Cut(text, 400, 9));
    }

    private const StringComparison Ordinal = StringComparison.Ordinal;

    private static readonly Gen<string[]> Words = Gen.String[
        Gen.Char["abcdefghijklmnopqrstuvwxyzWM.,-"],
        1,
        24
    ].Array[1, 30];
}
