using System.Globalization;
using System.Text;
using CsCheck;
using Litterfall.Domain;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Faults;
using Litterfall.Domain.Keys;
using Litterfall.Domain.Lists;
using Litterfall.Domain.Trees;
using Litterfall.Laboratory.Cases;

namespace Litterfall.UnitTests.Cases;

/// <summary>The strict reader of JSON cases; expected places are counted by hand in the texts.</summary>
public sealed class CaseReaderTests
{
    private static readonly NumberRange Any = NumberRange.Within(1e6);

    public static TheoryData<string, int, int, string> Broken =>
        new()
        {
            { "", 1, 1, "not JSON" },
            { "{ \"a\": 1", 1, 9, "not JSON" },
            { "{ \"a\": 1, }", 1, 11, "not JSON" },
            { "{ \"a\": 1 } x", 1, 12, "not JSON" },
            { "{\n  \"a\": NaN }", 2, 8, "not JSON" },
            { "{\n  // why\n}", 2, 3, "not JSON" },
            { "{ \"é\": 'x' }", 1, 8, "not JSON" },
            { "[ 1 ]", 1, 1, "a list" },
            { "7", 1, 1, "holds 7" },
            { "{ \"a\": 1,\n  \"a\": 2 }", 2, 3, "twice" },
            { "{ \"a\": 1e999 }", 1, 8, "too large" },
            { "{ \"a\": \"\\ud800\" }", 1, 8, "half a character" },
            { "{ \"a\": \"\\u0000\" }", 1, 8, "control character" },
            { "{ \"a\": 5e-324 }", 1, 8, "too small" },
            { "{ \"a\": 1,\n\n    \"b\": 2 }", 3, 5, "no key 'b'" },
            { "{ \"a\": \"1\" }", 1, 8, "the text '1'" },
            { "{ \"a\": null }", 1, 8, "a is null" },
            { "{ }", 1, 1, "lacks 'a'" },
        };

    [Theory]
    [MemberData(nameof(Broken))]
    public void What_cannot_be_used_is_named_with_its_place(string text, int line, int column, string says)
    {
        var fault = Assert.Single(ReadA(text).Faults);
        Assert.Equal(("case.json", line, column), (fault.File, fault.Line, fault.Column));
        Assert.Contains(says, fault.Message, StringComparison.Ordinal);
        Assert.NotEqual("", fault.Expected);
    }

    [Fact]
    public void A_mark_at_the_start_is_no_sign_of_the_text()
    {
        Assert.True(ReadA("\uFEFF{ \"a\": 1 }").IsGood);
        Assert.Equal(8, Assert.Single(ReadA("\uFEFF{ \"a\": true }").Faults).Column);
    }

    [Fact]
    public void Bytes_that_are_no_text_are_refused_where_they_stand()
    {
        var reading = CaseFile.Read<object>("case.json", [(byte)'{', (byte)'\n', 0xE9, 0x20], _ => null);
        var fault = Assert.Single(reading.Faults);
        Assert.Equal((2, 1), (fault.Line, fault.Column));
    }

    [Fact]
    public void Depth_and_size_have_limits()
    {
        Assert.Contains("not JSON", Only(new string('[', 100)), StringComparison.Ordinal);
        Assert.Contains(
            "too large",
            Only(new string(' ', CaseFile.LargestFile + 1)),
            StringComparison.Ordinal
        );
        var many = "[" + string.Join(',', Enumerable.Repeat("1", 1_000_001)) + "]";
        Assert.Contains("a million", Only(many), StringComparison.Ordinal);
    }

    [Fact]
    public void Several_faults_are_named_in_one_go_and_in_the_order_of_the_file()
    {
        var reading = Read(
            """
            { "x": 1,
              "kind": "blue",
              "parts": [ { "size": 1.5 }, 3, { "size": 2, "y": 1 } ] }
            """,
            form =>
            {
                foreach (var part in form.Objects("parts", "a part", 10))
                {
                    part.Whole("size", 1, 9);
                    part.Close();
                }

                form.Choice("kind", "red", "green");
                form.Close();
                return "read";
            }
        );
        Assert.Equal(
            [(1, 3), (2, 11), (3, 24), (3, 31), (3, 47)],
            reading.Faults.Select(f => (f.Line, f.Column))
        );
        Assert.Equal("parts[0].size is 1.5", reading.Faults[2].Message);
        Assert.Equal("one of red, green", reading.Faults[1].Expected);
    }

    [Theory]
    [InlineData("1.5", "0:1.5", "7:1.5")]
    [InlineData("[]", "0:0", "7:0")]
    [InlineData("[[2, 1], [5, -3]]", "0:0", "1.9:0", "2:1", "4.9:1", "5:-3", "99:-3")]
    [InlineData("[[0, 1], [0.5, 0]]", "0:1", "0.4:1", "0.5:0")]
    public void A_list_holds_each_value_until_the_next_hour(string text, params string[] values)
    {
        var series = Read($"{{ \"a\": {text} }}", form => form.Steps("a", Any)).Value!;
        foreach (var value in values)
        {
            double[] pair = [.. value.Split(':').Select(v => double.Parse(v, CultureInfo.InvariantCulture))];
            Assert.Equal(pair[1], series.At(pair[0]));
        }
    }

    [Theory]
    [InlineData("[[1, 0], [1, 2]]", "a[1] has the hour 1")]
    [InlineData("[[2, 0], [1, 2]]", "a[1] has the hour 1")]
    [InlineData("[[-1, 0]]", "a[0] has the hour -1")]
    [InlineData("[[1]]", "a[0] is a list of 1")]
    [InlineData("[[1, 2, 3]]", "a[0] is a list of 3")]
    [InlineData("[1, 2]", "a[0] is 1")]
    [InlineData("[[1, \"x\"]]", "a[0] is a list of 2")]
    [InlineData("[[1, 1e7]]", "a[0][1] is 10000000")]
    [InlineData("true", "a is true")]
    public void A_list_of_hours_that_is_not_clear_is_refused(string text, string says)
    {
        var faults = Read($"{{ \"a\": {text} }}", form => form.Steps("a", Any)).Faults;
        Assert.StartsWith(says, faults[0].Message, StringComparison.Ordinal);
    }

    /// <summary>No text, whatever it holds, ends in anything but a value or faults with a place.</summary>
    [Fact]
    public void Any_text_gives_a_value_or_faults()
    {
        char[] usual = [.. "{}[]\",:0123456789.eE+- \n\\utrfalsn"];
        var sign = Gen.Frequency((5, Gen.Int[0, usual.Length - 1].Select(i => usual[i])), (1, Gen.Char));
        sign.Array[0, 60]
            .Sample(signs =>
            {
                var reading = ReadA(new string(signs));
                Assert.All(reading.Faults, f => Assert.True(f.Line >= 1 && f.Column >= 1));
                Assert.True(reading.IsGood || reading.Faults.Count > 0);
            });
    }

    /// <summary>A minus before nothing is a slip where nothing below 0 is taken.</summary>
    [Fact]
    public void A_minus_before_nothing_is_refused_where_all_are_0_or_more()
    {
        Assert.True(double.IsPositive((double)ReadA("{ \"a\": -0 }").Value!));
        var reading = Read<object>("{ \"a\": -0 }", form => form.Number("a", NumberRange.UpTo(1)));
        Assert.Equal("a is -0", Assert.Single(reading.Faults).Message);
    }

    private static string Only(string text) => Assert.Single(ReadA(text).Faults).Message;

    private static Reading<object> ReadA(string text) => Read<object>(text, form =>
        {
            double a = form.Number("a", Any);
            form.Close();
            return a;
        });

    private static Reading<T> Read<T>(string text, Func<TreeForm, T?> read)
        where T : class => CaseFile.Read("case.json", Encoding.UTF8.GetBytes(text), read);
}
