using Litterfall.Documents.Drawings;

namespace Litterfall.Documents.Views;

/// <summary>Where the inside of the box lies in a drawing.</summary>
/// <param name="Origin">Its front left corner, or the foot of it, mm in the drawing.</param>
/// <param name="PerMeter">Length of a meter in the drawing, mm.</param>
/// <param name="Across">The edge of a place that runs to the right: x or y.</param>
/// <param name="Up">The edge of a place that runs up: y or z.</param>
public sealed record DrawnFrame(Spot Origin, double PerMeter, char Across, char Up)
{
    /// <summary>A point of the drawing inside the box, m to the right and up.</summary>
    /// <param name="spot">The point, mm in the drawing.</param>
    public (double Across, double Up) At(Spot spot) =>
        ((spot.X - Origin.X) / PerMeter, (Origin.Y - spot.Y) / PerMeter);
}
