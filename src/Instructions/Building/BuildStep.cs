using System.Collections.Immutable;
using Litterfall.Domain.Figures;

namespace Litterfall.Instructions.Building;

/// <summary>One thing to do at the bench.</summary>
/// <param name="Text">What to do, in the imperative, with the numbers.</param>
/// <param name="Why">Why, where it is not plain; null otherwise.</param>
/// <param name="Key">Key of the design it shows, such as "floor.soil".</param>
/// <param name="Cautions">Warnings that belong right beside it.</param>
public sealed record BuildStep(string Text, string? Why, string Key, ImmutableArray<string> Cautions)
{
    /// <summary>The numbers in the text, in order, so that each can be asked where it comes from.</summary>
    public ImmutableArray<Figure> Figures { get; init; } = [];

    /// <summary>
    /// What must be done before it, as places of other steps: "group" or "group/key"; only those a design has
    /// count.
    /// </summary>
    public ImmutableArray<string> Needs { get; init; } = [];

    /// <summary>Sources of what the text says besides its numbers.</summary>
    public ImmutableArray<Citation> Sources { get; init; } = [];
}

/// <summary>Steps that are done together.</summary>
/// <param name="Title">Heading on the card.</param>
/// <param name="Key">Stable name: pack, clean, stand, box, drainage, soil, plants, fittings or weeks.</param>
/// <param name="Steps">In working order; never empty.</param>
/// <param name="Part">
/// Part of the build its picture shows: parts, background, drainage, soil, plants, lid or whole.
/// </param>
public sealed record StepGroup(string Title, string Key, ImmutableArray<BuildStep> Steps, string Part);
