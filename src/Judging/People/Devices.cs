using Litterfall.Forecasting;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.People;

/// <summary>What in a design runs on electricity.</summary>
internal static class Devices
{
    /// <summary>True when anything does.</summary>
    public static bool Any(DesignNumbers n) => Names(n).Count > 0;

    /// <summary>"Lamps and misting", as the beginning of a sentence.</summary>
    public static string Listed(DesignNumbers n) => Materials.Sentence(Materials.Listed(Names(n)));

    private static List<string> Names(DesignNumbers n)
    {
        var names = new List<string>();
        if (n.Design.Design.Lamps.Count > 0)
        {
            names.Add("lamps");
        }

        if (n.Design.Design.Misting is not null)
        {
            names.Add("the misting pump");
        }

        if (n.Design.Design.Heating is not null)
        {
            names.Add("the heating");
        }

        if (n.Design.Design.Fan is not null)
        {
            names.Add("the fan");
        }

        if (n.Design.Design.Fogger is not null)
        {
            names.Add("the fogger");
        }

        return names.Count == 1 && names[0] != "lamps" ? [$"{names[0]} and its cable"] : names;
    }
}
