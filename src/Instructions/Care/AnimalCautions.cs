using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Instructions.Parts;
using Litterfall.Judging.Rules;
using Litterfall.Quantities.Measures;
using Litterfall.Quantities.Stocking;

namespace Litterfall.Instructions.Care;

/// <summary>Warnings that protect animals, or the world outside the tank.</summary>
internal static class AnimalCautions
{
    /// <summary>Air temperature at which a keeper should act, for animals that stand heat as most
    /// do.</summary>
    public static readonly Figure HeatWarning = Limit("first warning of heat", 27);

    /// <summary>The same for animals of cool forests.</summary>
    public static readonly Figure CoolHeatWarning = Limit("first warning of heat, cool forest animals", 25);

    /// <summary>Air temperature at which lamps go off and something is done at once.</summary>
    public static readonly Figure HeatAlarm = Limit("alarm of heat", 28);

    /// <summary>Signs that need a veterinarian; a shed skin is none.</summary>
    public static readonly Caution Vet = Signs(
        "amphibians and exotic animals",
        $"red belly or legs, raw or open skin, cramps, anything hanging out of the vent, no food for more "
            + $"than {Told.Unfed} (a froglet {Told.UnfedFroglet}). Shed skin, which they mostly eat, is "
            + "normal."
    );

    private static readonly Caution VetForReptiles = Signs(
        "reptiles",
        $"old skin that stays on toes, tail or eyes, cramps, anything hanging out of the vent, no food for "
            + $"more than {Told.Unfed}. A skin that comes off whole or in pieces is a normal shed."
    );

    /// <summary>The signs of the animals of a design.</summary>
    /// <param name="animals">Its animals.</param>
    public static Caution Sick(IReadOnlyList<BoxAnimal> animals) =>
        animals.Any(a => a.Class == AnimalClass.Reptile) && animals.All(a => a.Class != AnimalClass.Amphibian)
            ? VetForReptiles
            : Vet;

    private static Caution Signs(string kind, string signs) =>
        new(
            "vet",
            "Sick animals",
            $"This paper names no illness and no drug. See a veterinarian for {kind} at once for: weight "
                + $"down by more than a tenth, {signs}",
            Protects.Animal,
            Cautions.Recalled("signs that need a veterinarian")
        );

    public static readonly Caution Supplements = new(
        "supplements",
        "Supplements",
        "Vitamins A and D3 can do harm in excess: keep to the calendar of the care sheet. No human "
            + "multivitamins, "
            + "no iron. Throw powder away six months after opening.",
        Protects.Animal,
        Cautions.Recalled("fat-soluble vitamins of feeder dusts")
    );

    public static readonly Caution Residues = new(
        "residues",
        "Pesticide and fertilizer",
        "Nursery plants can hold systemic insecticide that harms springtails and animals. Keep new plants "
            + $"apart {Practice.PlantsApart}, wash off all soil, pick out fertilizer prills, use no slug "
            + $"pellets.",
        Protects.Animal,
        Cautions.Recalled("systemic insecticides in nursery plants, 30 to 60 d apart")
    );

    public static readonly Caution Escape = new(
        "escape",
        "Flies and crew get out",
        $"Mesh of {Told.FlyMesh} or finer stops most wingless and flightless fruit flies "
            + $"({Told.FinerFlyMesh} with more care); springtails pass {Told.SpringtailMesh}. Close lids "
            + $"and cable holes. Keep new cultures apart and look for mites. Large "
            + "isopods are said to nibble eggs, moss and molting animals when they lack protein.",
        Protects.Animal,
        Cautions.Recalled("apertures that hold fruit flies and springtails")
    );

    public static readonly Caution Release = new(
        "release",
        "Never outdoors",
        "No animal, feeder, plant, soil, leaf or drain water from this tank goes outdoors or onto compost: "
            + "they can carry chytrid fungus and ranavirus and can become pests. Bag and bin solids; "
            + "disinfect "
            + "drain water before it goes down the drain.",
        Protects.Animal,
        Cautions.Recalled("hygiene protocols against chytrid fungus and ranavirus; invasive species")
    );

    public static readonly Caution Mold = new(
        "mold",
        "Mold and smell",
        $"Mold on new wood and leaves is normal for the first {Told.Mold}. A sour or rotten-egg smell is "
            + "not: draw off water and find out why.",
        Protects.Build,
        Told.Mold.Origin
    );

    /// <summary>
    /// Air temperatures at which a keeper acts and at which lamps go off: never below the top of the day band
    /// of the animal.
    /// </summary>
    public static (Figure Act, Figure Alarm) HeatBounds(BoxAnimal animal)
    {
        var act = animal.Entry.TransportClass?.Text == "A" ? CoolHeatWarning : HeatWarning;
        return animal.Entry.WarmestDay is { } top
            ? (
                Figure.Max(act, top).As("first warning of heat", Unit.Celsius),
                Figure.Max(HeatAlarm, top).As("alarm of heat", Unit.Celsius)
            )
            : (act, HeatAlarm);
    }

    /// <summary>Heat, with the bounds of the animal of this design that stands it least.</summary>
    public static Caution Heat(DesignNumbers numbers, IReadOnlyList<BoxAnimal> animals)
    {
        var (act, alarm) =
            animals.Count == 0
                ? (HeatWarning, HeatAlarm)
                : animals.Select(HeatBounds).OrderBy(b => b.Act.Si).ThenBy(b => b.Alarm.Si).First();
        var inches = Imperial.IsUsed(numbers.Design.Design);
        var who =
            animals.Count == 0
                ? "The crew stops breeding in heat and may die"
                : "It harms these animals sooner than cold does";
        return new Caution(
            "heat",
            "Heat",
            $"{who}. {CareText.Alarm(act, alarm, inches)} Never in the sun, not for an hour. Guard every "
                + $"lamp "
                + "and put every heater on a thermostat.",
            Protects.Animal,
            HeatAlarm.Origin
        );
    }

    /// <summary>Secretions and toxins; null when the library names none for these animals.</summary>
    public static Caution? Toxins(IReadOnlyList<BoxAnimal> animals)
    {
        var notes = animals
            .Where(a => a.Entry.Toxin?.Text is not null)
            .DistinctBy(a => a.Entry.Key)
            .Select(a => $"{a.Entry.Name}: {a.Entry.Toxin?.Text}")
            .ToArray();
        return notes.Length == 0
            ? null
            : new Caution(
                "toxins",
                "Skin toxins",
                $"{string.Join(" ", notes)} Wet gloves without powder, no hands to eyes or mouth, one "
                    + $"species "
                    + "in a box.",
                Protects.Person,
                animals.First(a => a.Entry.Toxin?.Text is not null).Entry.Toxin!.Origin
            );
    }

    /// <summary>Papers of protected animals and permits for crew; null when neither is in the
    /// design.</summary>
    public static Caution? Papers(DesignNumbers numbers, IReadOnlyList<BoxAnimal> animals)
    {
        var listed = animals
            .Where(a => a.Entry.Cites?.Text is "I" or "II")
            .DistinctBy(a => a.Entry.Key)
            .ToArray();
        var parts = new List<string>();
        foreach (var group in listed.GroupBy(a => a.Entry.Cites!.Text, StringComparer.Ordinal))
        {
            parts.Add(
                $"{string.Join(", ", group.Select(a => a.Entry.Name))}: CITES appendix {group.Key}. Sell and "
                    + "buy only with proof of legal origin and captive breeding, and refuse animals without "
                    + "papers."
            );
        }

        if (animals.Count > 0)
        {
            parts.Add("Keeping can need a license or a notice.");
        }

        var crew = numbers.Design.Design.Crew.Select(
            (_, i) => numbers.Design.Entry<CrewEntry>($"crew[{NumberText.Integer(i)}].animal").LegalNote?.Text
        );
        parts.AddRange(crew.OfType<string>().Distinct(StringComparer.Ordinal));
        if (parts.Count == 0)
        {
            return null;
        }

        parts.Add(
            "Plant health and invasive species rules differ by place: the authority decides, ask it first."
        );
        return new Caution(
            "papers",
            "Papers",
            string.Join(" ", parts),
            Protects.Animal,
            listed.Length > 0
                ? listed[0].Entry.Cites!.Origin
                : Cautions.Recalled("licenses, plant health and invasive species rules")
        );
    }

    private static Figure Limit(string name, double celsius) =>
        Figure.Given(
            name,
            Unit.Celsius.ToSiValue(celsius),
            Unit.Celsius,
            Cautions.Recalled("heat limits of frogs in keeping")
        );
}
