using System.Globalization;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Judging.Crew;

/// <summary>One entry of the clean-up crew with its place in the file.</summary>
internal sealed record SeededCrew(string Path, CrewEntry Species, Figure Count);

/// <summary>The clean-up crew of a design.</summary>
internal static class Crews
{
    public static IEnumerable<SeededCrew> Of(DesignNumbers n)
    {
        var crew = n.Design.Design.Crew;
        return Enumerable
            .Range(0, crew.Count)
            .Where(i => crew[i].Count > 0)
            .Select(i =>
            {
                var path = $"crew[{i.ToString(CultureInfo.InvariantCulture)}]";
                var species = n.Design.Entry<CrewEntry>($"{path}.animal");
                return new SeededCrew(
                    path,
                    species,
                    n.Design.Count($"{path}.count", $"{species.Name} seeded", crew[i].Count)
                );
            });
    }

    /// <summary>Depth of the loose leaves; zero without any.</summary>
    public static Figure Litter(DesignNumbers n) =>
        n.Layers.FirstOrDefault(l => l.Kind == LayerKind.Litter)?.Depth
        ?? Figure.Choice("leaf litter", 0, Unit.Centimeter, "the design has none");
}
