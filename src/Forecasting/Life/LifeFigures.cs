using System.Collections.Immutable;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Physics.Crew;

namespace Litterfall.Forecasting.Life;

/// <summary>Why animals may not go in before a day.</summary>
/// <param name="Words">In half a sentence.</param>
/// <param name="Day">First day it no longer holds them back; null where no day is known.</param>
public sealed record WaitReason(string Words, DateOnly? Day);

/// <summary>What goes through a floor.</summary>
public sealed record FloorMasses
{
    /// <summary>Milligram a day.</summary>
    internal static readonly Unit MilligramPerDay = new(
        "mg/d",
        1e-6 / 86400.0,
        Unit.Kilogram.Dimension / Unit.Second.Dimension
    );

    /// <summary>Days from planting until leaves cover less than 2 cm; null within five years.</summary>
    public Figure? LitterLow { get; init; }

    /// <summary>Leaves to lay on, dry.</summary>
    public required Figure TopUp { get; init; }

    /// <summary>Small flies a day for all animals.</summary>
    public required Figure FliesPerDay { get; init; }

    /// <summary>The same in a week.</summary>
    public required Figure FliesPerWeek { get; init; }

    /// <summary>Dry droppings of the animals.</summary>
    public required Figure Droppings { get; init; }

    /// <summary>Dry droppings the isopods could eat.</summary>
    public required Figure DroppingsEatable { get; init; }

    /// <summary>Nitrogen the food brings in.</summary>
    public required Figure Nitrogen { get; init; }

    /// <summary>Nitrogen plants can take up.</summary>
    public required Figure PlantNitrogen { get; init; }

    /// <summary>What the ledgers of litter and nitrogen miss.</summary>
    public required Figure LedgerError { get; init; }
}

/// <summary>The life of a floor as figures: crew, litter, food and nitrogen.</summary>
public sealed record LifeFigures
{
    /// <summary>Where simulated numbers come from.</summary>
    public static readonly Citation Engine = new(
        "own-derivation",
        "day cohorts of the crew, first-order litter and nitrogen on the forecast's ground; rates mostly "
            + "recalled",
        Provenance.Recalled
    );

    /// <summary>First day animals may go in.</summary>
    public required DateOnly AnimalsFrom { get; init; }

    /// <summary>What holds them back, the last first.</summary>
    public required ImmutableArray<WaitReason> Because { get; init; }

    /// <summary>
    /// Days from planting until the crew is ready; null where it never is, or there is none.
    /// </summary>
    public Figure? CrewReady { get; init; }

    /// <summary>The same with more young that live.</summary>
    public Figure? CrewReadyEarly { get; init; }

    /// <summary>The same with fewer young that live.</summary>
    public Figure? CrewReadyLate { get; init; }

    /// <summary>Hatched springtails on that first day.</summary>
    public required Banded SpringtailsThen { get; init; }

    /// <summary>Hatched isopods on that first day.</summary>
    public required Banded IsopodsThen { get; init; }

    /// <summary>Mean of the warmest day of the ground in a year.</summary>
    public required Figure WarmestGround { get; init; }

    /// <summary>Springtails the animals would take a day.</summary>
    public required Figure Appetite { get; init; }

    /// <summary>Springtails the crew bears to lose a day, when animals go in.</summary>
    public required Banded Bearable { get; init; }

    /// <summary>Least springtails for each square meter in the first year with animals.</summary>
    public required Figure LeastSpringtails { get; init; }

    /// <summary>True where the crew outlasts the appetite of the animals through five years.</summary>
    public bool CrewLasts => EatenUp is null;

    /// <summary>True where it is eaten up within a year of the animals' first day.</summary>
    public required bool IsEatenInFirstYear { get; init; }

    /// <summary>Days from planting until the crew is eaten up; null where it lasts.</summary>
    public Figure? EatenUp { get; init; }

    /// <summary>Springtails to add again and again; null where the crew lasts, or none keeps it up.</summary>
    public Figure? Reseed { get; init; }

    /// <summary>Longest time between these from the animals' first day on that keeps the crew up.</summary>
    public Figure? ReseedEvery { get; init; }

    /// <summary>Leaves, food, droppings and nitrogen.</summary>
    public required FloorMasses Masses { get; init; }

    /// <summary>The days of the run with animals.</summary>
    public required ImmutableArray<FloorLifeDay> Days { get; init; }

    /// <summary>Which stocks of a day are springtails.</summary>
    public required ImmutableArray<bool> IsSpringtail { get; init; }
}
