using System.Globalization;
using Litterfall.Domain;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Forecasting;

namespace Litterfall.Judging.Animals;

/// <summary>The animals entered as living in the box, one entry after the other.</summary>
internal static class Residents
{
    public static IEnumerable<PresentAnimal> Present(DesignNumbers n)
    {
        var animals = n.Design.Design.Animals;
        return Enumerable
            .Range(0, animals.Count)
            .Where(i => animals[i].Count > 0)
            .Select(i =>
            {
                var path = $"animals[{i.ToString(CultureInfo.InvariantCulture)}]";
                return new PresentAnimal(path, n.Design.Entry<AnimalEntry>($"{path}.animal"), animals[i]);
            });
    }
}

/// <summary>One entry of animals with its place in the file.</summary>
internal sealed record PresentAnimal(string Path, AnimalEntry Species, Resident Entry);
