using Litterfall.Instructions.Parts;
using Litterfall.Quantities.Measures;
using Litterfall.Quantities.Stocking;

namespace Litterfall.Instructions.Care;

/// <summary>Hygiene, quarantine, signs of illness, life span and papers.</summary>
internal static class HealthLines
{
    public static IEnumerable<CareLine> Of(BoxAnimal animal) =>
        new[]
        {
            Hygiene(animal),
            Toxin(animal),
            Quarantine(animal),
            Signs(animal),
            Life(animal),
            Papers(animal),
            Release,
        }.OfType<CareLine>();

    private static CareLine Hygiene(BoxAnimal animal) =>
        animal.Class == AnimalClass.Invertebrate
            ? new("Hygiene", "Wash hands after every contact.", PeopleCautions.Germs.Source)
            : new("Hygiene", PeopleCautions.Germs.Text, PeopleCautions.Germs.Source);

    private static CareLine? Toxin(BoxAnimal animal) =>
        animal.Entry.Toxin?.Text is { } note ? new CareLine("Skin", note, animal.Entry.Toxin!.Origin) : null;

    private static CareLine Quarantine(BoxAnimal animal)
    {
        var (least, usual, most) = (
            NumberText.Whole(CareIntervals.LeastQuarantine),
            NumberText.Whole(CareIntervals.Quarantine),
            NumberText.Whole(CareIntervals.LongQuarantine)
        );
        var tests = animal.Class switch
        {
            AnimalClass.Amphibian =>
                " Three fecal checks two weeks apart; swab for chytrid fungus at entry and "
                    + "before release; ranavirus test after any death.",
            AnimalClass.Reptile => " Three fecal checks two weeks apart.",
            _ => "",
        };
        return new CareLine(
            "New animals",
            $"Quarantine of {least} days at least, {usual} as a rule, {most} for animals of unknown source: "
                + $"a "
                + "bare tank, tools of its own, looked after last. A new arrival starts the count again."
                + tests,
            CareIntervals.Quarantine.Origin
        );
    }

    private static CareLine Signs(BoxAnimal animal) =>
        new(
            "See a veterinarian",
            animal.Class == AnimalClass.Invertebrate
                ? "No food or no movement for days, weak after a molt, wounds: ask a veterinarian for "
                    + "exotic animals. This paper names no illness and no drug."
                : AnimalCautions.Sick([animal]).Text,
            AnimalCautions.Vet.Source
        );

    private static CareLine Life(BoxAnimal animal) =>
        animal.Entry.Longevity is { } years
            ? new CareLine(
                "Life expectancy",
                $"Longest life on record {CareText.Number(years.Value)} years; plan for many years of care.",
                animal.Entry.Longevity!.Origin
            )
            : new CareLine("Life expectancy", "Not in the library: ask the breeder and write it here.", null);

    private static CareLine? Papers(BoxAnimal animal)
    {
        if (animal.Entry.Cites?.Text is not { } cites)
        {
            return null;
        }

        var text = cites is "I" or "II"
            ? $"CITES Appendix {cites}: keep the proof of legal origin and captive breeding with this "
                + "sheet; it passes on with the animal. Lists change: check the current one."
            : $"CITES: {cites}. Lists change: check the current one.";
        return new CareLine(
            "Papers",
            $"{text} Keeping can need a license or a notice: the authority of your place decides.",
            animal.Entry.Cites!.Origin
        );
    }

    private static readonly CareLine Release = new(
        "Never outdoors",
        "Never release an animal. If you cannot keep it, give it back.",
        AnimalCautions.Release.Source
    );
}
