using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;

namespace Litterfall.Instructions.Parts;

/// <summary>Something to lift and how many people it takes.</summary>
/// <param name="Item">What is lifted.</param>
/// <param name="Mass">Its mass in kg; null when it is not known.</param>
/// <param name="Persons">People needed; two where the mass is not known.</param>
/// <param name="Note">What to mind.</param>
public sealed record Lift(string Item, Figure? Mass, int Persons, string Note);

/// <summary>Lifts of one box: the empty glass and the planted box with its reservoir drained.</summary>
public static class Lifts
{
    /// <summary>Most one person lifts.</summary>
    public static readonly Figure PerPerson = Figure.Given(
        "most one person lifts",
        25,
        Unit.Kilogram,
        Citation.Habit("25 kg, and a wet glass box is a bad handle: less is better")
    );

    /// <summary>The empty box first.</summary>
    public static ImmutableArray<Lift> Of(DesignNumbers numbers)
    {
        var drainage = numbers.Design.Design.Floor.Drainage is not null;
        var stones = numbers.Design.Design.Hardscape.Count > 0;
        return
        [
            new(
                "empty box",
                numbers.Weights.Box,
                Persons(numbers.Weights.Box),
                numbers.Weights.Box is null
                    ? "The glass thickness is not entered, so its mass is not known: two people."
                    : "Dry hands or gloves, hands under the base, never by the rim."
            ),
            new(
                drainage ? "planted box, reservoir drained" : "filled box",
                numbers.Weights.Planted,
                Math.Max(Persons(numbers.Weights.Planted), Persons(numbers.Weights.Box)),
                numbers.Weights.Missing.IsDefaultOrEmpty
                    ? $"{(stones ? "Take out loose pieces" : "Take off the lid")}"
                        + $"{(drainage ? ", drain the water" : "")}, keep it level."
                    : $"Heavier than shown: without {string.Join(", ", numbers.Weights.Missing)}."
            ),
        ];
    }

    /// <summary>One person for each 25 kg begun; two where the mass is not known.</summary>
    public static int Persons(Figure? mass) =>
        mass is null ? 2 : Math.Max(1, (int)Math.Ceiling(mass.Si / PerPerson.Si - 1e-9));

    /// <summary>"1 person", "2 people".</summary>
    public static string People(int persons) =>
        string.Create(CultureInfo.InvariantCulture, $"{persons} {(persons == 1 ? "person" : "people")}");
}
