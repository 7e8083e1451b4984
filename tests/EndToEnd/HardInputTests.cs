namespace Litterfall.Tests.EndToEnd;

/// <summary>Inputs at the edge of what is taken: each is answered within seconds.</summary>
[Collection("timed")]
public sealed class HardInputTests
{
    private const string Lamp = "{ lamp: led-bar-6500k, watts: 18, on: \"08:00\", off: \"20:00\" }";

    public static TheoryData<string, string> Inputs =>
        new()
        {
            { "the largest box", Of("3 m", "2 m", "3 m", "10 cm", "") },
            { "the smallest box", Of("8 cm", "8 cm", "15 cm", "5 cm", "") },
            { "a meter of soil", Of("60 cm", "45 cm", "2 m", "1 m", "") },
            {
                "forty lamps",
                Of(
                    "3 m",
                    "2 m",
                    "2 m",
                    "10 cm",
                    $"lamps: [ {string.Join(", ", Enumerable.Repeat(Lamp, 40))} ]"
                )
            },
            {
                "fog all day",
                Of(
                    "60 cm",
                    "45 cm",
                    "60 cm",
                    "8 cm",
                    "fogger: { rate: 500 mL/h, times: [ { at: \"00:00\", for: 24 h } ] }"
                )
            },
            {
                "a flood of mist",
                Of(
                    "60 cm",
                    "45 cm",
                    "60 cm",
                    "8 cm",
                    "misting: { nozzles: 4, each: 200 mL/min, times: [ { at: \"08:00\", for: 30 min } ] }"
                )
            },
            { "a heat mat of 500 W", Of("60 cm", "45 cm", "60 cm", "8 cm", "heating: { watts: 500 W }") },
        };

    private static string Of(string length, string depth, string height, string soil, string more) =>
        "litterfall: 1\nname: hard\n"
        + $"box: {{ inside: {{ length: {length}, depth: {depth}, height: {height} }}, "
        + "glass: { walls: 12 mm } }\n"
        + "floor:\n  drainage: { material: expanded-clay-8-16, depth: 5 cm }\n"
        + $"  soil: {{ recipe: ready-rainforest, depth: {soil} }}\n"
        + $"lid: {{ material: glass, thickness: 8 mm }}\n{more}\n";

    [Theory]
    [MemberData(nameof(Inputs))]
    public void Each_is_answered_within_five_seconds(string name, string text)
    {
        using var scratch = new Scratch();
        Cli.Run("--version"); // so that the runtime is in memory
        var ended = Cli.Run("check", scratch.Write("hard.viv.yaml", text));
        Cli.NoTrace(ended);
        Assert.True(ended.Code is 0 or 1 or 2, ended.ToString());
        Assert.True(ended.Milliseconds < 5000, $"{name} took {ended.Milliseconds} ms");
    }
}
