using Litterfall.Domain;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;

namespace Litterfall.Judging.Fittings;

/// <summary>Where a heat mat lies.</summary>
internal static class HeatMat
{
    private static readonly Figure Half = Figure.Choice(
        "heated share of the floor",
        50,
        Unit.Percent,
        "half the floor, unless the design says otherwise"
    );

    /// <summary>Share of the floor it lies under.</summary>
    public static Figure Cover(DesignNumbers n, Heating heating) =>
        heating.Cover is { } cover
            ? n.Design.Figure("heating.cover", "heated share of the floor", cover, Unit.Percent)
            : Half;

    /// <summary>Footprint of the box, as a mat lies under its base; else the inside floor.</summary>
    public static Figure Floor(DesignNumbers n) =>
        n.Box.OutsideLength is { } length
            ? (length * n.Box.OutsideDepth!).As("footprint of the box", Unit.SquareMeter)
            : n.Box.GrossFloor;
}
