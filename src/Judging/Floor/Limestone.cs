using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Judging.Floor;

/// <summary>Limestone hardens the water.</summary>
internal static class Limestone
{
    public static readonly Rule Rule = new(
        "limestone-in-soft-water",
        Protects.Build,
        "a piece of limestone stands in the box",
        Judge
    )
    {
        Needs = Stage.Shape,
    };

    private static readonly Citation Habit = Citation.Habit("no limestone where soft water is wanted");

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        for (var i = 0; i < n.Design.Design.Hardscape.Count; i++)
        {
            var entry = n.Design.Entry<HardscapeEntry>($"hardscape[{i}].material");
            if (entry.Key == "limestone")
            {
                yield return Rule.Found(
                    Severity.Note,
                    $"{Materials.Sentence(HardscapeSize.Name(n.Design, i))}: "
                        + $"{Lowered(entry.Note ?? "it raises hardness and pH.")}",
                    (null, null),
                    "Take slate, granite or lava where soft-water mosses or acid mixes are used.",
                    $"hardscape[{i}].material",
                    Habit
                );
            }
        }
    }

    private static string Lowered(string sentence) => $"{char.ToLowerInvariant(sentence[0])}{sentence[1..]}";
}
