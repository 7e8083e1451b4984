using Litterfall.Domain.Checking;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;

namespace Litterfall.Quantities.Sizing;

/// <summary>
/// What the shelf carries: pressure on the footprint in Pa, mass per meter of shelf, all boxes together.
/// </summary>
/// <param name="Total">Wet mass of all boxes on it.</param>
/// <param name="Pressure">Pressure on the footprint; null when the outside is unknown.</param>
/// <param name="PerMeter">Mass per meter along the front; null when the outside is unknown.</param>
/// <param name="Rated">Load entered for the shelf; null when not entered.</param>
public sealed record ShelfLoad(Figure Total, Figure? Pressure, Figure? PerMeter, Figure? Rated)
{
    /// <summary>
    /// Loads a shelf with one box at its wettest; each box is taken to have a shelf of its own.
    /// </summary>
    public static ShelfLoad Of(CheckedDesign design, BoxGeometry box, Weights weights)
    {
        var rated = design.Design.Shelf?.Rated is { } r
            ? design.Figure("shelf.rated", "load the shelf is rated for", r, Unit.Kilogram)
            : null;
        if (box.OutsideLength is null || box.OutsideLength.Si <= 0 || box.OutsideDepth!.Si <= 0)
        {
            return new ShelfLoad(weights.Wet, null, null, rated);
        }

        return new ShelfLoad(
            weights.Wet,
            (weights.Wet * SizingPolicy.Gravity / (box.OutsideLength * box.OutsideDepth)).As(
                "pressure on the footprint",
                Unit.Kilopascal
            ),
            (weights.Wet / box.OutsideLength).As("mass per meter of shelf", Unit.KilogramPerMeter),
            rated
        );
    }
}
