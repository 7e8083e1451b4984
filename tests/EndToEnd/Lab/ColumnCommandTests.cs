using System.Text.RegularExpressions;

namespace Litterfall.Tests.EndToEnd.Lab;

/// <summary>The command itself: keys, refusals, exit codes, what is printed.</summary>
public sealed partial class ColumnCommandTests
{
    private const string Head = """{ "kind": "head", "headCm": -20 }""";
    private const string Start = """{ "headCm": -20 }""";
    private static readonly string Column = $"[{Posed.Layer(8, 8, Posed.Mix)}]";

    /// <summary>Ways to write each part of a case, so that every key is accepted somewhere.</summary>
    public static TheoryData<string, string> Accepted =>
        new()
        {
            { "initial", """{ "waterTableDepthCm": 7.5 }""" },
            { "initial", """{ "headsCm": [-8, -7, -6, -5, -4, -3, -2, -1] }""" },
            { "top", """{ "kind": "flux", "cmPerHour": 0.01 }""" },
            { "top", """{ "kind": "flux", "cmPerHour": [[0, 0.1], [1, -0.01]] }""" },
            { "top", """{ "kind": "atmosphere" }""" },
            {
                "top",
                """
                    { "kind": "atmosphere", "rainCmPerHour": 0.1, "evaporationCmPerHour": [[1, 0.01]],
                      "driestHeadCm": -5000, "pondCm": 2 }
                    """
            },
            { "bottom", """{ "kind": "zeroFlux" }""" },
            { "bottom", """{ "kind": "zeroFlux", "overflow": { "headCm": 2, "perHour": 1000 } }""" },
            { "bottom", """{ "kind": "freeDrainage" }""" },
            { "bottom", """{ "kind": "seepage" }""" },
            { "bottom", """{ "kind": "reservoir", "startLevelCm": 3, "porosity": 0.34 }""" },
            { "gravity", "false" },
            { "soil", """{ "gardnerAlphaPerCm": 0.1, "thetaR": 0.06, "thetaS": 0.4, "ksCmPerHour": 1 }""" },
            {
                "soil",
                """
                    { "thetaR": 0.08, "thetaS": 0.78, "ksCmPerHour": 3600, "l": 0.5, "airEntryCm": 0.5,
                      "modes": [ { "weight": 0.77, "alphaPerCm": 1.26, "n": 2.8 },
                                 { "weight": 0.23, "alphaPerCm": 0.0231, "n": 1.2 } ] }
                    """
            },
            {
                "soil",
                """
                    { "thetaR": 0.1, "thetaS": 0.8, "alphaPerCm": 0.15, "n": 1.5, "ksCmPerHour": 30,
                      "airEntryCm": 1 }
                    """
            },
        };

    [Theory]
    [MemberData(nameof(Accepted))]
    public void Every_key_is_accepted(string part, string text)
    {
        string more = "\"hours\": 2, \"reportHours\": [0.5, 2]";
        var result = Posed.Solve(
            Posed.Case(
                part == "soil" ? $"[{Posed.Layer(8, 8, text)}]" : Column,
                part == "initial" ? text : Start,
                part == "top" ? text : Head,
                part == "bottom" ? text : Head,
                part == "gravity" ? $"\"gravity\": {text}, {more}" : more
            )
        );
        string[] keys =
        [
            "times",
            "balanceErrorCm",
            "steps",
            "iterations",
            "cutSteps",
            "frozenSteps",
            "elapsedMs",
        ];
        Assert.Equal(keys, result.AsObject().Select(m => m.Key));
        Assert.Equal([0.5, 2.0], result["times"]!.AsArray().Select(t => t!.Number("hour")));
        string[] inTimes =
        [
            "hour",
            "depthCm",
            "headCm",
            "waterContent",
            "inCm",
            "outCm",
            "evaporatedCm",
            "transpiredCm",
            "storageChangeCm",
            "pondCm",
            "levelCm",
        ];
        foreach (var time in result["times"]!.AsArray())
        {
            Assert.Equal(inTimes, time!.AsObject().Select(m => m.Key));
            Assert.Equal(time.Numbers("depthCm").Length, time.Numbers("headCm").Length);
            Assert.Equal(time.Numbers("depthCm").Length, time.Numbers("waterContent").Length);
        }
    }

    /// <summary>A case with one thing in it changed, and what the message must name.</summary>
    public static TheoryData<string, string, string> Refused =>
        new()
        {
            { "\"hours\"", "\"huors\"", "huors" },
            { "\"hours\": 24", "\"hours\": 0", "hours" },
            { "\"hours\": 24", "\"hours\": 100000", "hours" },
            { "\"reportHours\": [24]", "\"reportHours\": [25]", "after the end" },
            { "\"reportHours\": [24]", "\"reportHours\": [12, 12]", "does not come after" },
            { "\"reportHours\": [24]", "\"reportHours\": [-1]", "reportHours[0]" },
            { "\"reportHours\": [24]", "\"reportHours\": 24", "reportHours" },
            { "\"layers\": [", "\"layers\": [], \"x\": [", "layers" },
            { "\"cells\": 8", "\"cells\": 0", "cells" },
            { "\"cells\": 8", "\"cells\": 2.5", "cells" },
            { "\"cells\": 8", "\"cells\": 20001", "cells" },
            { "\"thicknessCm\": 8", "\"thicknessCm\": -8", "thicknessCm" },
            { "\"thetaR\": 0.1", "\"thetaR\": 0.8", "residual" },
            { "\"thetaS\": 0.8", "\"thetaS\": 1.2", "thetaS" },
            { "\"n\": 1.5", "\"n\": 1", "n is 1" },
            { "\"n\": 1.5", "\"modes\": []", "modes" },
            { "\"l\": 0.5", "\"l\": -20", "conductivity" },
            { "\"ksCmPerHour\": 30", "\"ksCmPerHour\": 0", "ksCmPerHour" },
            { "\"ksCmPerHour\": 30", "\"ks\": 30", "ksCmPerHour" },
            { "\"initial\": { \"headCm\": -20 }", "\"initial\": { }", "initial" },
            {
                "\"initial\": { \"headCm\": -20 }",
                "\"initial\": { \"headCm\": -20, \"waterTableDepthCm\": 8 }",
                "initial"
            },
            { "\"initial\": { \"headCm\": -20 }", "\"initial\": { \"headsCm\": [-1, -2] }", "2 heads" },
            { "\"headCm\": -25", "\"cmPerHour\": 1", "headCm" },
            { "\"kind\": \"head\", \"headCm\": -25", "\"kind\": \"rain\"", "rain" },
            { "\"kind\": \"head\", \"headCm\": -25", "\"kind\": \"flux\", \"headCm\": -25", "headCm" },
            { "\"kind\": \"head\", \"headCm\": -25", "\"kind\": \"flux\", \"cmPerHour\": 1e5", "cmPerHour" },
            {
                "\"kind\": \"head\", \"headCm\": -25",
                "\"kind\": \"atmosphere\", \"rainCmPerHour\": -1",
                "rainCmPerHour"
            },
            {
                "\"kind\": \"head\", \"headCm\": -25",
                "\"kind\": \"atmosphere\", \"driestHeadCm\": 0",
                "driestHeadCm"
            },
            {
                "\"kind\": \"head\", \"headCm\": -15",
                "\"kind\": \"seepage\", \"overflow\": { \"headCm\": 2, \"perHour\": 1 }",
                "overflow"
            },
            { "\"kind\": \"head\", \"headCm\": -15", "\"kind\": \"reservoir\"", "startLevelCm" },
            { "\"hours\": 24", "\"hours\": 24, \"transpirationCmPerHour\": 0.01", "no roots" },
            { "\"hours\": 24", Roots(2, 9, "[-1, -5, -300, -8000]"), "below the foot" },
            { "\"hours\": 24", Roots(5, 2, "[-1, -5, -300, -8000]"), "roots end" },
            { "\"hours\": 24", Roots(2, 5, "[-1, -5, -3, -8000]"), "do not fall" },
            { "\"hours\": 24", Roots(2, 5, "[-1, -5, -300]"), "3 heads" },
            { "\"gravity\": true", "\"gravity\": 1", "gravity" },
            { "\"gravity\": true", "\"gravity\": true, \"gravity\": true", "twice" },
        };

    [Theory]
    [MemberData(nameof(Refused))]
    public void What_is_not_physical_or_not_clear_is_refused(string good, string bad, string says)
    {
        string text = Posed.Case(
            Column,
            Start,
            """{ "kind": "head", "headCm": -25 }""",
            """{ "kind": "head", "headCm": -15 }""",
            "\"gravity\": true, \"hours\": 24, \"reportHours\": [24]"
        );
        Assert.Contains(good, text, StringComparison.Ordinal);
        using var scratch = new Scratch();
        var path = scratch.Write("case.json", text.Replace(good, bad, StringComparison.Ordinal));
        var errors = Cli.RefusesInJson("lab", "column", path);
        var messages = errors.Select(e => e!["message"]!.GetValue<string>()).ToArray();
        Assert.Contains(messages, m => m.Contains(says, StringComparison.Ordinal));
        Assert.All(errors, e => Assert.Equal(path, e!["file"]!.GetValue<string>()));
    }

    [Fact]
    public void A_file_that_cannot_be_read_is_refused()
    {
        using var scratch = new Scratch();
        Cli.RefusesInJson("lab", "column", scratch.At("no.json"));
        Cli.RefusesInJson("lab", "column", scratch.Folder);
        Cli.RefusesInJson("lab", "column", scratch.Write("large.json", new string(' ', 5_000_000)));
        Cli.Refuses("lab", "column", scratch.Write("broken.json", "{ \"layers\": [ }"));
        Cli.RefusesInJson("lab", "column");
        Cli.RefusesInJson("lab");
        Cli.RefusesInJson("lab", "nothing", scratch.At("no.json"));
    }

    /// <summary>More water than a closed, full column can hold: no numbers can come out.</summary>
    [Fact]
    public void A_column_that_would_burst_ends_with_exit_3_and_says_when_where_and_why()
    {
        using var scratch = new Scratch();
        string text = Posed.Case(
            Column,
            """{ "headCm": 0 }""",
            """{ "kind": "flux", "cmPerHour": [[1, 1]] }""",
            """{ "kind": "zeroFlux" }"""
        );
        var path = scratch.Write("case.json", text);
        var ended = Cli.Run("lab", "column", path, "--json");
        Assert.Equal(3, ended.Code);
        Cli.NoTrace(ended);
        string message = ended.Json["errors"]![0]!["message"]!.GetValue<string>();
        Assert.Contains("hour 1,", message, StringComparison.Ordinal);
        Assert.Contains("depth", message, StringComparison.Ordinal);
        var text3 = Cli.Run("lab", "column", path);
        Assert.Equal((3, ""), (text3.Code, text3.Out));
        Assert.Contains("hour 1,", text3.Error, StringComparison.Ordinal);
    }

    [Fact]
    public void The_same_case_gives_the_same_bytes()
    {
        using var scratch = new Scratch();
        var path = scratch.Write("case.json", Posed.Case(Column, Start, Head, """{ "kind": "seepage" }"""));
        string Bytes() => Elapsed().Replace(Cli.Run("lab", "column", path, "--json").Out, "");
        string first = Bytes();
        Assert.Equal(first, Bytes());
        Assert.DoesNotContain("NaN", first, StringComparison.Ordinal);
        Assert.DoesNotContain("elapsedMs", first, StringComparison.Ordinal);
    }

    [Fact]
    public void People_get_a_small_table()
    {
        using var scratch = new Scratch();
        var path = scratch.Write("case.json", Posed.Case(Column, Start, Head, """{ "kind": "seepage" }"""));
        var ended = Cli.Run("lab", "column", path);
        Assert.Equal((0, ""), (ended.Code, ended.Error));
        Assert.Contains("water content", ended.Out, StringComparison.Ordinal);
        Assert.InRange(ended.Out.Split('\n').Length, 10, 50);
        Assert.Contains("column", Cli.Run("lab", "--help").Out, StringComparison.Ordinal);
        Assert.Contains("CASE", Cli.Run("lab", "column", "--help").Out, StringComparison.Ordinal);
    }

    private static string Roots(double from, double to, string heads) =>
        FormattableString.Invariant(
            $$"""
            "transpirationCmPerHour": 0.01,
            "roots": { "fromCm": {{from}}, "toCm": {{to}}, "feddesCm": {{heads}} }, "hours": 24
            """
        );

    [GeneratedRegex("\"elapsedMs\": [0-9.]+", RegexOptions.None, 1000)]
    private static partial Regex Elapsed();
}
