using Litterfall.Domain;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Judging.Floor;

/// <summary>Wood brings in snails, pests and the frog chytrid unless it was heated.</summary>
internal static class RawWood
{
    public static readonly Rule Rule = new(
        "raw-wood",
        Protects.Animal,
        "wood or cork is not boiled, baked or steamed, or its cleaning is not entered",
        Judge
    )
    {
        Needs = Stage.Shape,
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        // Stones carry "base" as their seat; everything else is wood or cork.
        var wood = Enumerable
            .Range(0, n.Design.Design.Hardscape.Count)
            .Where(i => n.Design.Entry<HardscapeEntry>($"hardscape[{i}].material").Seat?.Text != "base")
            .ToList();
        var raw = wood.Where(i =>
                n.Design.Design.Hardscape[i].Prepared is Preparation.Raw or Preparation.Soaked
            )
            .ToList();
        var unknown = wood.Where(i => n.Design.Design.Hardscape[i].Prepared is null).ToList();
        if (raw.Count > 0)
        {
            yield return Found(
                n,
                raw,
                Severity.Caution,
                "goes in without being boiled, baked or steamed, and may bring pests and disease"
            );
        }

        if (unknown.Count > 0)
        {
            yield return Found(
                n,
                unknown,
                Severity.Note,
                "has no cleaning recorded; see the step on the build sheet"
            );
        }
    }

    private static Finding Found(DesignNumbers n, List<int> pieces, Severity severity, string what)
    {
        var path = $"hardscape[{pieces[0]}]";
        var entry = n.Design.Entry<HardscapeEntry>($"{path}.material");
        return Rule.Found(
            severity,
            Materials.Sentence(
                $"{Materials.Listed([.. pieces.Select(i => HardscapeSize.Name(n.Design, i))])} {what}."
            ),
            (null, null),
            entry.Preparation?.Text
                ?? $"Boil {Practice.BoiledWood}, bake or steam, then enter how it was cleaned.",
            $"{path}.prepared",
            entry.Preparation?.Origin ?? Practice.BoiledWood.Origin
        );
    }
}
