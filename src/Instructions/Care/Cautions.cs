using System.Collections.Immutable;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Forecasting;
using Litterfall.Instructions.Parts;
using Litterfall.Quantities.Stocking;

namespace Litterfall.Instructions.Care;

/// <summary>A warning printed with a build.</summary>
/// <param name="Key">Stable slug, such as "bleach".</param>
/// <param name="Title">A few words.</param>
/// <param name="Text">What to do and what never to do.</param>
/// <param name="Protects">Whom it protects.</param>
/// <param name="Source">Where it comes from.</param>
public sealed record Caution(string Key, string Title, string Text, Protects Protects, Citation Source);

/// <summary>Only those warnings that this design calls for, those that protect people first.</summary>
public static class Cautions
{
    /// <summary>The warnings in the order they are printed.</summary>
    public static ImmutableArray<Caution> Of(DesignNumbers numbers)
    {
        var animals = BoxAnimal.Of(numbers.Design).ToArray();
        var goods = Goods.Of(numbers);
        var design = numbers.Design.Design;
        var vertebrates = animals.Where(a => a.Class != AnimalClass.Invertebrate).ToArray();
        var crew = design.Crew.Any(c => c.Count > 0);
        Caution?[] all =
        [
            When(design.Hygiene?.Bleach is not null || design.Plants.Count > 0, PeopleCautions.Bleach),
            When(goods.Any(Goods.IsDusty), PeopleCautions.Dust),
            When(ElectricalList.Of(numbers).Any, PeopleCautions.Electricity(numbers)),
            PeopleCautions.Glass(numbers),
            When(numbers.Sealants.FoamVolume is not null, PeopleCautions.Foam),
            When(vertebrates.Length > 0, PeopleCautions.Germs),
            When(goods.Any(Goods.IsSphagnum), PeopleCautions.Sphagnum),
            AnimalCautions.Toxins(animals),
            When(animals.Length > 0 || crew, AnimalCautions.Heat(numbers, animals)),
            When(animals.Length > 0, AnimalCautions.Sick(animals)),
            When(vertebrates.Length > 0, AnimalCautions.Supplements),
            When(design.Plants.Count > 0, AnimalCautions.Residues),
            AnimalCautions.Papers(numbers, animals),
            When(animals.Length > 0 || crew, AnimalCautions.Escape),
            AnimalCautions.Release,
            AnimalCautions.Mold,
        ];
        return [.. all.OfType<Caution>().OrderByDescending(c => c.Protects)];
    }

    internal static Citation Recalled(string what) =>
        new("keeper-practice", $"recalled: {what}", Provenance.Recalled);

    private static Caution? When(bool applies, Caution caution) => applies ? caution : null;
}
