using Litterfall.Domain.Catalog.Entries;

namespace Litterfall.Web.Library;

/// <summary>A small drawing of an entry of the library, for lists.</summary>
public static class EntryPicture
{
    /// <summary>An SVG of 32 units; empty for kinds without one.</summary>
    /// <param name="entry">An entry.</param>
    public static string Of(CatalogEntry entry)
    {
        var strokes = entry switch
        {
            PlantEntry plant => Plant($"{plant.Key} {plant.Habit?.Text} {plant.RootPlace?.Text}"),
            AnimalEntry => "<path d='M6 22q-3-6 4-9 2-5 7-5t6 5q6 2 4 8l4 3m-4-2l2 5m-23-5l-4 4m5-3l-1 5'/>"
                + "<circle cx='21' cy='12' r='1'/>",
            CrewEntry =>
                "<path d='M5 18q11-12 22 0q-11 7-22 0zM10 15v7M15 13v9M20 13v9M7 20l-2 4M27 18l3-3'/>",
            LampEntry => "<path d='M4 8h24v6H4zM8 17v6M16 17v8M24 17v6'/>",
            HardscapeEntry => "<path d='M3 22q6-10 13-9t8-7m-8 7q5 2 12 1M3 22q10 2 16-3'/>",
            _ => "",
        };
        return strokes.Length == 0
            ? ""
            : "<svg viewBox='0 0 32 32' fill='none' stroke='currentColor' stroke-width='1.5' "
                + $"stroke-linecap='round' stroke-linejoin='round'>{strokes}</svg>";
    }

    private static string Plant(string habit) =>
        Says(habit, "tank", "bromeliad", "atmospheric", "rosette")
            ? "<path d='"
                + "M16 27q-8-4-12-14q7 3 12 14q-4-10-4-18q5 7 4 18"
                + "q0-11 5-18q1 9-5 18q4-11 12-14q-4 10-12 14'/>"
        : Says(habit, "climber", "hemiepiphyte", "vine")
            ? "<path d='M16 30q-4-8 0-14t0-14M16 24q-6 0-7-5q6 0 7 5M16 18q6 0 7-5q-6 0-7 5"
                + "M16 12q-6 0-7-5q6 0 7 5'/>"
        : Says(habit, "nest", "fern", "nephrolepis", "adiantum", "davallia")
            ? "<path d='M16 28q-2-12-10-16M16 28q-1-14-2-22M16 28q2-12 11-17M9 17l-4 2"
                + "M12 20l-4 3M14 13l-4-2M15 18l4-2"
                + "M22 16l4 3M19 20l5 3'/>"
        : Says(habit, "moss") ? "<path d='M3 26q2-8 6-8q2-5 7-5t7 5q4 0 6 8zM9 22l1-3M14 20l1-3M20 21l1-3'/>"
        : Says(habit, "mat", "creeping")
            ? "<path d='M3 25h26M6 25q-3-4 0-6q4 2 0 6M13 25q-4-5 0-8q4 3 0 8"
                + "M20 25q-4-5 0-8q4 3 0 8M26 25q-3-4 0-6q4 2 0 6'/>"
        : Says(habit, "grass", "tuft")
            ? "<path d='M16 28q-1-12-8-18M16 28q0-14-2-22M16 28q1-14 4-21M16 28q2-10 9-15'/>"
        : "<path d='M16 28V14M16 20q-8 0-9-8q8 0 9 8M16 16q8 0 9-8q-8 0-9 8'/>";

    private static bool Says(string habit, params ReadOnlySpan<string> words)
    {
        foreach (var word in words)
        {
            if (habit.Contains(word, StringComparison.Ordinal))
            {
                return true;
            }
        }

        return false;
    }
}
