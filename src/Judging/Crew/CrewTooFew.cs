using System.Globalization;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.Crew;

/// <summary>So few to start with that mold and waste win.</summary>
internal static class CrewTooFew
{
    public static readonly Rule Rule = new(
        "crew-too-few",
        Protects.Build,
        "springtails or isopods are seeded at less than half of the usual density",
        Judge
    )
    {
        Needs = Stage.Shape,
        Fix = (finding, design) => CrewFix.More(finding, design),
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        if (n.Box.GrossFloor.Si <= 0)
        {
            yield break;
        }

        foreach (
            var kind in Crews
                .Of(n)
                .GroupBy(c => c.Species.Taxon?.Text ?? c.Species.Key, StringComparer.Ordinal)
        )
        {
            var usual = kind.Select(c => c.Species.SeedDensity).OfType<Figure>().MinBy(f => f.Si);
            if (usual is null)
            {
                continue;
            }

            var least = (usual / Figure.Number(2)).As(
                $"least {kind.Key}s for each square meter",
                Unit.PerSquareMeter,
                usual.Origin
            );
            var has = (Figure.Total([.. kind.Select(c => c.Count)], Dimension.None) / n.Box.GrossFloor).As(
                $"{kind.Key}s for each square meter of floor",
                Unit.PerSquareMeter
            );
            if (has.Si >= least.Si - 1e-9)
            {
                continue;
            }

            yield return Rule.Found(
                Severity.Caution,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{has.Value:0} {kind.Key}s for each square meter are few: practice seeds "
                        + $"{usual.Value:0}, and less than {least.Value:0} may not build up in time."
                ),
                (has, least),
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"Seed {Math.Ceiling(usual.Si * n.Box.GrossFloor.Si):0} in all, or let the box grow "
                        + $"in longer."
                ),
                $"{kind.First().Path}.count"
            );
        }
    }
}
