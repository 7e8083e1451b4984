namespace Litterfall.UnitTests;

/// <summary>
/// How many cases a test of properties takes: few in every run, many in `./test --long`, which sets
/// LITTERFALL_LONG=1.
/// </summary>
internal static class LongRun
{
    public static bool IsAsked { get; } = Environment.GetEnvironmentVariable("LITTERFALL_LONG") == "1";

    public static int Cases(int few, int many) => IsAsked ? many : few;
}
