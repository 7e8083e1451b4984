using System.Collections.Immutable;

namespace Litterfall.Instructions.Building;

/// <summary>
/// What a step needs to be done before it, by its place among the groups. The order is that of the trade: the
/// empty box in its place before anything makes it heavy, the floor from the base up, what stands on the base
/// glass before what is poured round it, the crew last.
/// </summary>
internal static class StepOrder
{
    /// <summary>The steps a step needs, as "group" or "group/key".</summary>
    /// <param name="group">Its group.</param>
    /// <param name="step">The step.</param>
    public static ImmutableArray<string> Needs(StepGroup group, BuildStep step) =>
        (group.Key, Part(step.Key)) switch
        {
            ("stand", "heating") => ["stand/shelf"],
            ("stand", "box") => ["glue", "stand/shelf", "stand/heating"],
            ("box", "drain") => ["stand"],
            ("box", "background") => ["stand", "box/box", "box/drain"],
            ("box", _) => ["stand"],
            ("drainage", "drain") => ["box"],
            ("drainage", "hardscape") => ["box", "clean/hardscape"],
            ("drainage", "floor.drainage") => ["box", "clean/floor.drainage", "drainage/hardscape"],
            ("drainage", "floor.barrier") => ["drainage/floor.drainage", "drainage/hardscape"],
            ("soil", "hardscape") => ["soil/floor.soil", "clean/hardscape"],
            ("soil", _) => ["box", "drainage"],
            ("plants", "floor.moss") => ["soil", "plants/plants"],
            ("plants", "floor.litter") =>
            [
                "soil",
                "clean/floor.litter",
                "plants/plants",
                "plants/floor.moss",
            ],
            ("plants", _) => ["soil", "drainage", "clean/plants"],
            ("fittings", "lid") => ["plants", "soil"],
            ("fittings", "lamps") => ["fittings/lid"],
            ("fittings", "electrics") => ["fittings/lamps", "fittings/misting"],
            ("fittings", "crew") => ["plants", "fittings/lid", "fittings/lamps", "fittings/misting"],
            ("fittings", _) => ["box"],
            ("weeks", _) => ["fittings"],
            _ => [],
        };

    /// <summary>"hardscape[0]" as "hardscape", "lid.strip" as "lid"; layers of the floor keep their name.
    /// </summary>
    /// <param name="key">Key of a step.</param>
    public static string Part(string key)
    {
        if (key.StartsWith("floor.soil", StringComparison.Ordinal))
        {
            return "floor.soil";
        }

        var end = key.IndexOfAny(['[', '.']);
        return end < 0 || key.StartsWith("floor.", StringComparison.Ordinal) ? key : key[..end];
    }
}
