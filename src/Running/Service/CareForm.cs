using System.Collections.Immutable;
using Litterfall.Domain.Tanks;
using Litterfall.Domain.Units;

namespace Litterfall.Running.Service;

/// <summary>How one kind of line is written into a log: its words, its unit, what it asks for.</summary>
/// <param name="Kind">The kind.</param>
/// <param name="Button">On its button: "Drained".</param>
/// <param name="Past">In a sentence: "drained".</param>
public sealed record CareForm(CareKind Kind, string Button, string Past)
{
    /// <summary>Unit in which amounts are kept; null where they are counts, or there are none.</summary>
    public Unit? Kept { get; init; }

    /// <summary>Unit in which people say it, before their own choice; null as <see cref="Kept"/>.</summary>
    public Unit? Said { get; init; }

    /// <summary>What is counted where it has no unit: "drops"; empty where it asks for no amount.</summary>
    public string Counted { get; init; } = "";

    /// <summary>True where it may be written without an amount.</summary>
    public bool MayBeEmpty { get; init; }

    /// <summary>True for lines of animals: they name a species and how many.</summary>
    public bool IsOfAnimals { get; init; }

    /// <summary>What its line of words asks for; empty where it asks for none.</summary>
    public string Words { get; init; } = "";

    /// <summary>What its other party is called: "From", "To"; empty where it has none.</summary>
    public string OtherParty { get; init; } = "";

    /// <summary>Lines that can be written, the usual ones of a round first.</summary>
    public static ImmutableArray<CareForm> All { get; } =
    [
        new(CareKind.Drained, "Drained", "drained") { Kept = Unit.Milliliter, Said = Unit.Liter },
        new(CareKind.Level, "Level", "level") { Kept = Unit.Millimeter, Said = Unit.Centimeter },
        new(CareKind.Misted, "Misted", "misted by hand") { Kept = Unit.Milliliter, MayBeEmpty = true },
        new(CareKind.ToppedUp, "Topped up", "topped up with") { Kept = Unit.Milliliter, Said = Unit.Liter },
        new(CareKind.Weighed, "Weighed", "weighed") { Kept = Unit.Kilogram },
        new(CareKind.Squeezed, "Squeezed", "squeezed soil gave") { Counted = "drops" },
        new(CareKind.Fed, "Fed", "fed")
        {
            Counted = "flies",
            MayBeEmpty = true,
            Words = "What",
        },
        new(CareKind.Tended, "Tended", "tended") { MayBeEmpty = true, Words = "What you did" },
        new(CareKind.Added, "Added", "added")
        {
            MayBeEmpty = true,
            Words = "What you added",
            OtherParty = "From lot or culture",
        },
        new(CareKind.Air, "Air", "air") { Kept = Unit.Celsius },
        new(CareKind.NozzleFlow, "Nozzle", "one nozzle gives") { Kept = Unit.MilliliterPerMinute },
        new(CareKind.Changed, "Changed", "changed") { MayBeEmpty = true, Words = "Which setting, to what" },
        new(CareKind.AnimalsIn, "Animals in", "came in") { IsOfAnimals = true, OtherParty = "From" },
        new(CareKind.AnimalsOut, "Animals out", "went out") { IsOfAnimals = true, OtherParty = "To" },
        new(CareKind.Born, "Born", "born") { IsOfAnimals = true },
        new(CareKind.Died, "Died", "died") { IsOfAnimals = true, Words = "What you saw" },
        new(CareKind.Treated, "Treated", "treated or tested")
        {
            MayBeEmpty = true,
            Words = "What with, or which test and its result",
            OtherParty = "By whom",
        },
        new(CareKind.Moved, "Moved", "moved") { MayBeEmpty = true, Words = "Where to" },
        new(CareKind.Photo, "Photo", "photo") { MayBeEmpty = true, Words = "What it shows" },
        new(CareKind.Note, "Note", "note") { MayBeEmpty = true, Words = "What to remember" },
    ];

    /// <summary>The form of a kind.</summary>
    /// <param name="kind">The kind.</param>
    public static CareForm Find(CareKind kind) => All.First(f => f.Kind == kind);

    /// <summary>An amount as it is kept, from one as people said it.</summary>
    /// <param name="said">Number in the unit it was said in.</param>
    /// <param name="unit">That unit.</param>
    public double Keep(double said, Unit unit) => Kept is null ? said : Kept.FromSi(unit.ToSiValue(said));

    /// <summary>An amount in a unit, from one that is kept.</summary>
    /// <param name="kept">Amount as it is kept.</param>
    /// <param name="unit">The unit.</param>
    public double Say(double kept, Unit unit) => Kept is null ? kept : unit.FromSi(Kept.ToSiValue(kept));
}
