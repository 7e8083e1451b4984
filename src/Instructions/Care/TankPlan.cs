using System.Collections.Immutable;
using Litterfall.Domain.Findings;
using Litterfall.Forecasting;
using Litterfall.Instructions.Parts;
using Litterfall.Judging.Levers;
using Litterfall.Quantities.Measures;

namespace Litterfall.Instructions.Care;

/// <summary>
/// What all papers of one tank tell alike: the day it counts from, its misting, and the day for animals.
/// </summary>
public sealed record TankPlan
{
    private TankPlan() { }

    /// <summary>Its numbers.</summary>
    public required DesignNumbers Numbers { get; init; }

    /// <summary>The planting day.</summary>
    public required DateOnly Planting { get; init; }

    /// <summary>
    /// First day of the papers of a tank in service, which the design tells by its state at the start; null
    /// for a tank that is still to be built.
    /// </summary>
    public required DateOnly? Now { get; init; }

    /// <summary>Its misting; null without a misting system.</summary>
    public required MistingPlan? Mist { get; init; }

    /// <summary>The day for animals; null where none are to move in.</summary>
    public required AnimalDay? Animals { get; init; }

    /// <summary>Said where days are not the maker's own, or not told; null otherwise.</summary>
    public required string? Note { get; init; }

    /// <summary>True for a tank in service.</summary>
    public bool IsRunning => Now is not null;

    /// <summary>The day from which rounds of care count.</summary>
    public DateOnly Start => Now ?? Planting;

    /// <summary>The plan of a design.</summary>
    /// <param name="numbers">The design.</param>
    /// <param name="findings">What was found; a stop takes away the day for animals.</param>
    /// <param name="card">Settings season by season; null where they are not computed.</param>
    /// <param name="from">
    /// Planting day, or the first day of the papers of a tank in service; the design's own when null.
    /// </param>
    public static TankPlan Of(
        DesignNumbers numbers,
        ImmutableArray<Finding> findings = default,
        SettingsCard? card = null,
        DateOnly? from = null
    )
    {
        var design = numbers.Design.Design;
        var isRunning = design.Start is not null;
        var planting = (isRunning ? null : from) ?? design.Planted ?? CareDates.StandIn;
        var animals = isRunning ? null : AnimalDay.Of(numbers, findings, planting);
        var now = from ?? (planting > CareDates.StandIn ? planting : CareDates.StandIn);
        string?[] notes =
        [
            from is not null ? null
            : isRunning ? $"No day is given for a tank in service; dates count from {NumberText.Day(now)}."
            : design.Planted is null
                ? $"The design names no planting day; dates count from {NumberText.Day(planting)} instead."
            : null,
            animals?.Held is { } stop ? $"No day for animals while this stop stands: {stop}" : null,
        ];
        var note = string.Join(" ", notes.OfType<string>());
        return new TankPlan
        {
            Numbers = numbers,
            Planting = planting,
            Now = isRunning ? now : null,
            Mist = MistingPlan.Of(numbers, card),
            Animals = animals,
            Note = note.Length > 0 ? note : null,
        };
    }
}
