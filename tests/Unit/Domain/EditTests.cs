using Litterfall.Domain;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Trees;
using Litterfall.Domain.Faults;
using Litterfall.Domain.Keys;
using Litterfall.UnitTests.House;

namespace Litterfall.UnitTests.Domain;

/// <summary>Editing one value touches that value and nothing else.</summary>
public sealed class EditTests
{
    /// <summary>At least one of these can stand at any place that holds a single value.</summary>
    private static readonly string[] Values =
    [
        "7 mm",
        "5 1/2 in",
        "2.5 cm2",
        "3 kg",
        "22.5 C",
        "1.5 K",
        "41 %",
        "91 mL/min",
        "21 s",
        "19 W",
        "2001 lm",
        "2.5 /h",
        "1,5 L",
        "1",
        "3",
        "true",
        "false",
        "2026-08-15",
        "07:31",
        "top",
        "front",
        "planted",
        "kit",
        "siphon",
        "standpipe",
        "held",
        "free",
        "base",
        "soil",
        "back",
        "room",
        "window",
        "purified",
        "bought",
        "tap",
        "31 mA",
        "9 m3/h",
        "clips",
        "stir",
        "vent",
        "rim",
        "brush",
        "lip",
        "sliding",
        "hinged",
        "a new: #name",
    ];

    public static TheoryData<string> Paths => [.. SampleFiles.Paths];

    [Theory]
    [MemberData(nameof(Paths))]
    public void Only_the_edited_value_changes(string path)
    {
        var document = SampleFiles.Read(path);
        var scalars = document.Spans.Where(s => IsScalar(document, s.Value)).ToList();
        Assert.True(scalars.Count > 10);
        foreach (var (key, span) in scalars)
        {
            var edited = Values
                .Select(value => (Value: value, Reading: document.WithValue(key, value)))
                .Where(edit => edit.Reading.IsGood && Slice(document, span).Trim('"') != edit.Value)
                .ToList();
            Assert.True(key == "litterfall" || edited.Count > 0, key);
            Assert.All(edited, edit => OnlyThat(document, edit.Reading.Value!, key, edit.Value));
        }
    }

    [Fact]
    public void A_value_that_is_not_written_or_has_parts_is_refused()
    {
        var document = SampleFiles.Read(SampleFiles.Paths[0]);
        foreach (var key in new[] { "floor", "no.such.key", "", "floor.soil.loss" })
        {
            var reading = document.WithValue(key, "1 cm");
            Assert.False(reading.IsGood);
            Assert.NotEmpty(reading.Faults);
        }
    }

    [Fact]
    public void An_edit_that_cannot_be_read_is_refused_with_its_place()
    {
        const string text =
            "litterfall: 1\nname: t\nbox: { inside: { length: 1 m, depth: 1 m, height: 1 m } }\n"
            + "floor:\n  soil: { recipe: r, depth: 7 cm }\n";
        var document = DesignReader.Read("t", text).Value!;
        var fault = document.WithValue("floor.soil.depth", "7 kg").Faults[0];
        // "  soil: { recipe: r, depth: " is 28 characters
        Assert.Equal((5, 29), (fault.Line, fault.Column));
    }

    private static void OnlyThat(DesignDocument before, DesignDocument after, string key, string value)
    {
        var (old, now) = (before.Spans[key], after.Spans[key]);
        Assert.Equal(before.Text[..old.Start], after.Text[..now.Start]);
        Assert.Equal(before.Text[old.End..], after.Text[now.End..]);
        Assert.Equal(value, Slice(after, now).Trim('"'));
        Assert.Equal(
            before.Spans.Keys.Order(StringComparer.Ordinal),
            after.Spans.Keys.Order(StringComparer.Ordinal)
        );
        foreach (var (other, span) in before.Spans)
        {
            if (other != key && IsScalar(before, span) && !Encloses(span, old))
            {
                Assert.Equal(Slice(before, span), Slice(after, after.Spans[other]));
            }
        }
    }

    /// <summary>An edge given once stands both under its own key and as the first of its list.</summary>
    private static bool Encloses(TextSpan outer, TextSpan inner) =>
        outer.Start <= inner.Start && outer.End >= inner.End;

    private static string Slice(DesignDocument document, TextSpan span) =>
        document.Text[span.Start..span.End];

    private static bool IsScalar(DesignDocument document, TextSpan span)
    {
        var text = Slice(document, span);
        return text is not ("" or "none")
            && !text.Contains('\n', StringComparison.Ordinal)
            && text[0] is not ('{' or '[');
    }
}
