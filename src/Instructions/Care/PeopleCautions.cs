using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Forecasting;
using Litterfall.Instructions.Parts;
using Litterfall.Quantities.Measures;

namespace Litterfall.Instructions.Care;

/// <summary>Warnings that protect the people who build and look after a tank.</summary>
internal static class PeopleCautions
{
    public static readonly Caution Bleach = new(
        "bleach",
        "Bleach",
        "Bleach with acid, vinegar, descaler, ammonia or urine gives off poison gas: never together. Gloves, "
            + "goggles, open window. Pour bleach into water, not water into bleach. Bleach must never reach "
            + "an "
            + "animal: rinse five times.",
        Protects.Person,
        Cautions.Recalled("labels of bleach; toxic gas with acid or ammonia")
    );

    public static readonly Caution Dust = new(
        "dust",
        "Dust",
        "Clay aggregate, perlite, vermiculite, pumice, sand, charcoal and dry peat or coir give off dust "
            + "that "
            + $"can harm the lungs, and some of it is crystalline silica with a legal limit "
            + $"({Told.Silica} over "
            + $"{Told.SilicaShift} in many places, from memory). Wet it before you pour and wear an FFP2 "
            + $"or N95 mask.",
        Protects.Person,
        Told.Silica.Origin
    );

    public static readonly Caution Foam = new(
        "foam",
        "Expanding foam",
        "Foam swells for hours. Poured behind trapped wood or into a closed space it can break the "
            + "glass. Thin "
            + "lifts, one open face, gloves, open window, no flame. No animals before it has cured.",
        Protects.Person,
        new Citation("foam-forum", "threads on a tank burst the day after pouring", Provenance.CommonPractice)
    );

    public static readonly Caution Germs = new(
        "germs",
        "Germs from animals",
        "Amphibians and reptiles can carry Salmonella, even healthy ones, and tank water can carry "
            + "Mycobacterium marinum. Wash hands after every contact. Nothing from the tank goes into a "
            + "kitchen sink or bath. "
            + "Homes with children under five, old people or people with weakened immune systems: ask a "
            + "doctor "
            + "first.",
        Protects.Person,
        Cautions.Recalled("public health advice on Salmonella from reptiles and amphibians")
    );

    public static readonly Caution Sphagnum = new(
        "sphagnum",
        "Sphagnum",
        "Living or dried sphagnum can carry the fungus Sporothrix, which enters by scratches. Wear gloves, "
            + "cover cuts.",
        Protects.Person,
        Cautions.Recalled("sporotrichosis of people who handle sphagnum")
    );

    public static Caution Electricity(DesignNumbers numbers)
    {
        bool isUnitedStates = TripLimits.IsUnitedStates(numbers.Design.Design);
        return new Caution(
            "electricity",
            "Electricity and water",
            $"{TripLimits.Feed(isUnitedStates)} Hang cables in drip loops. Use lamps and foggers made "
                + "for wet places and pumps of extra-low voltage. Unplug before hands go in. Local code "
                + "and a licensed electrician decide.",
            Protects.Person,
            (isUnitedStates ? TripLimits.UnitedStates : TripLimits.Europe).Origin
        );
    }

    public static Caution Glass(DesignNumbers numbers)
    {
        var planted =
            $"{NumberText.Kilograms(numbers.Weights.Planted)} planted, "
            + $"{NumberText.Kilograms(numbers.Weights.Wet)} at its wettest";
        var persons = Lifts.Of(numbers)[0].Persons;
        var text = numbers.Weights.Box is { } mass
            ? $"The empty box weighs {NumberText.Kilograms(mass)}, {planted}."
            : $"The glass thickness is not entered, so the glass is not in these weights: {planted}.";
        return new Caution(
            "glass",
            "Glass and weight",
            $"{text} Never move it planted. Empty, it takes {Lifts.People(persons)}. Seam all edges that "
                + "hands touch. Check the rating of the shelf. Glass and shelf results are estimates: a "
                + "glazier "
                + "or an engineer decides, above all for panes that hold water, overhead glass and racks.",
            Protects.Person,
            Lifts.PerPerson.Origin
        );
    }
}
