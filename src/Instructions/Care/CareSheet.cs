using System.Collections.Immutable;
using Litterfall.Domain;
using Litterfall.Domain.Figures;
using Litterfall.Quantities.Measures;
using Litterfall.Quantities.Stocking;

namespace Litterfall.Instructions.Care;

/// <summary>One line of a care sheet.</summary>
/// <param name="Head">What it is about.</param>
/// <param name="Text">The advice.</param>
/// <param name="Source">Where it comes from; null where it only repeats the design.</param>
public sealed record CareLine(string Head, string Text, Citation? Source);

/// <summary>Care of one kind of animal in this box.</summary>
/// <param name="Species">Name of the animal.</param>
/// <param name="Key">Key of the design, such as "animals[0]".</param>
/// <param name="Count">How many per box.</param>
/// <param name="IsRatedOnly">True when the box is sold without them and only rated for them.</param>
/// <param name="Lines">Advice in reading order.</param>
/// <param name="ByHand">Facts of sale: filled in from the design, or left to be written in.</param>
public sealed record CareSheet(
    string Species,
    string Key,
    int Count,
    bool IsRatedOnly,
    ImmutableArray<CareLine> Lines,
    ImmutableArray<HandLine> ByHand
)
{
    /// <summary>One sheet for each animal that lives in the box or that it is rated for.</summary>
    /// <param name="tank">The tank.</param>
    public static ImmutableArray<CareSheet> All(TankPlan tank) =>
        [.. BoxAnimal.Of(tank.Numbers.Design).Select(animal => Of(tank, animal))];

    /// <summary>The sheet of one animal.</summary>
    /// <param name="tank">The tank.</param>
    /// <param name="animal">The animal.</param>
    public static CareSheet Of(TankPlan tank, BoxAnimal animal) =>
        new(
            animal.Entry.Name,
            animal.Path,
            animal.Resident.Count,
            animal.IsRatedOnly,
            [
                .. HousingLines.Of(tank, animal),
                .. FeedingLines.Of(tank.Numbers.Design.Catalog, animal),
                .. HealthLines.Of(animal),
            ],
            Hand(animal)
        );

    private static ImmutableArray<HandLine> Hand(BoxAnimal animal)
    {
        var resident = animal.Resident;
        return
        [
            new("Species", animal.Entry.Name),
            new("Number", NumberText.Integer(resident.Count)),
            new("Origin", Origin(resident.Origin)),
            new("Line or locality", resident.Line),
            new("Hatched or age", null),
            new("Sex", Sexes(resident)),
            new("Supplier", null),
            new("Proof of legal origin, number", null),
            new("Veterinarian, telephone", null),
            new("Handed over on, to", null),
        ];
    }

    private static string? Origin(AnimalOrigin? origin) =>
        origin switch
        {
            AnimalOrigin.CaptiveBred => "captive bred",
            AnimalOrigin.FarmBred => "farm bred",
            AnimalOrigin.WildCaught => "wild caught",
            _ => null,
        };

    private static string? Sexes(Resident resident) =>
        resident.Males is null && resident.Females is null
            ? null
            : $"{NumberText.Integer(resident.Males ?? 0)} male, {NumberText.Integer(resident.Females ?? 0)} "
                + "female";
}

/// <summary>A fact of sale; an empty one is a line to write on.</summary>
public sealed record HandLine(string Head, string? Text);
