using Litterfall.Domain.Checking;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Forecasting.Climate;
using Litterfall.Forecasting.Coefficients;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Forecasting.Water;

/// <summary>
/// Water of basins where the air is held or assumed: of the mist, and of the vapor that does not come from
/// leaves, their share of the floor.
/// </summary>
internal static class BasinShare
{
    /// <summary>The water of a design's basins; null without.</summary>
    /// <param name="design">The design.</param>
    /// <param name="balance">What is misted and vented.</param>
    public static BasinFigures? Of(CheckedDesign design, WaterBalance balance)
    {
        var box = BoxGeometry.Of(design);
        if (WaterBasins.Area(design, box) is not { } area || box.OpenFloor.Si <= 0)
        {
            return null;
        }

        var share = (area / box.OpenFloor).As("share of the floor that is open water", Unit.Percent);
        var rooted = design.Design.Plants.Any(p => !p.Mounted && p.Count > 0);
        var ground = rooted
            ? Figure.Number(1) - ModelCoefficients.Of(design).Water.LeafShare.Figure
            : Figure.Number(1);
        var caught = (
            balance.Misted is null
                ? Figure.Computed("nothing is misted", 0, Unit.Milliliter.Dimension)
                : balance.Misted * share
        ).As("mist that falls on basins a day", Unit.Milliliter);
        Figure Dried(Figure vented, string which) =>
            (vented * ground * share).As($"{which}water evaporated from basins a day", Unit.Milliliter);
        Figure Filled(Figure dried, string which) =>
            Figure.NotNegative(dried - caught).As($"{which}water filled up in basins a day", Unit.Milliliter);
        Figure Left(Figure vented, Figure filled, string which) =>
            (vented - filled).As($"{which}water vented less filled up a day", Unit.Milliliter);
        var (low, high) = (balance.VentedBand?.Low, balance.VentedBand?.High);
        var dried = Dried(balance.Vented, "");
        var (least, most) = (
            low is null ? null : Dried(low, "least "),
            high is null ? null : Dried(high, "most ")
        );
        var filled = Filled(dried, "");
        var fill = new Banded(
            filled,
            least is null ? null : Filled(least, "least "),
            most is null ? null : Filled(most, "most ")
        );
        return new BasinFigures
        {
            Evaporated = new Banded(dried, least, most),
            Caught = caught,
            ToppedUp = fill,
            Overflow = Figure
                .NotNegative(caught - dried)
                .As("water run over from basins a day", Unit.Milliliter),
            Lost = new Banded(
                Left(balance.Vented, filled, ""),
                low is null ? null : Left(low, fill.Low!, "least "),
                high is null ? null : Left(high, fill.High!, "most ")
            ),
        };
    }
}
