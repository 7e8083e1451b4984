using Litterfall.Documents.Drawings;

namespace Litterfall.Documents.Views;

/// <summary>A value of the design along one axis of a drawing.</summary>
/// <param name="Path">Its path in the design.</param>
/// <param name="Meters">Where it stands, m.</param>
/// <param name="Least">Least it may be, m.</param>
/// <param name="Most">Most it may be, m.</param>
public sealed record GripAxis(string Path, double Meters, double Least, double Most);

/// <summary>A point of a drawing that can be taken hold of to change the design.</summary>
/// <param name="Part">What it belongs to, such as "plants[0]".</param>
/// <param name="Label">In words.</param>
/// <param name="At">Where, mm in the drawing.</param>
/// <param name="MillimetersPerMeter">Length in the drawing of a meter of the thing, mm.</param>
public sealed record Grip(string Part, string Label, Spot At, double MillimetersPerMeter)
{
    /// <summary>What moving it up raises; null where it does not move so.</summary>
    public GripAxis? Up { get; init; }

    /// <summary>The axis the drawing does not show, where it has one: a place is written whole.</summary>
    public GripAxis? Hidden { get; init; }

    /// <summary>What moving it to the right raises; null where it does not move so.</summary>
    public GripAxis? Across { get; init; }
}
