using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Judging;

/// <summary>The basins of open water as part of the report, one row each.</summary>
internal static class BasinReport
{
    private const string NoMass = "the design does not say what it weighs";

    /// <summary>The rows; of what the basins evaporate together, each has its share by area.</summary>
    /// <param name="n">The design.</param>
    public static ReportList Write(DesignNumbers n) =>
        new([.. WaterBasins.Of(n.Design, n.Box).Select(b => Row(n, b))]);

    private static ReportNode Row(DesignNumbers n, WaterBasin basin)
    {
        var water = n.Water.Balance.Basins;
        var all = WaterBasins.Area(n.Design, n.Box);
        ReportNode Share(Figure? whole, string name) =>
            whole is null || all is null
                ? new ReportAbsent("the air of the box is not known")
                : new ReportNumber((whole * basin.Area / all).As(name, Unit.Milliliter), Unit.Milliliter);
        return ReportObject.Of(
            ("basin", new ReportText(basin.Path)),
            ("assumed", new ReportFlag(basin.IsAssumed)),
            ("lengthCm", new ReportNumber(basin.Length, Unit.Centimeter)),
            ("widthCm", new ReportNumber(basin.Width, Unit.Centimeter)),
            ("areaCm2", new ReportNumber(basin.Area, Unit.SquareCentimeter)),
            ("depthCm", new ReportNumber(basin.Depth, Unit.Centimeter)),
            ("edgeCm", new ReportNumber(basin.Edge, Unit.Centimeter)),
            ("litres", new ReportNumber(basin.Volume, Unit.Liter)),
            (
                "waterKg",
                new ReportNumber(
                    (basin.Volume * SizingPolicy.Water).As("water in the basin", Unit.Kilogram),
                    Unit.Kilogram
                )
            ),
            (
                "massKg",
                basin.Mass is { } mass ? new ReportNumber(mass, Unit.Kilogram) : new ReportAbsent(NoMass)
            ),
            ("evaporatedMlPerDay", Share(water?.Evaporated.Value, "evaporated from the basin a day")),
            ("evaporatedMlPerDayLow", Share(water?.Evaporated.Low, "least evaporated from the basin a day")),
            ("evaporatedMlPerDayHigh", Share(water?.Evaporated.High, "most evaporated from the basin a day")),
            ("toppedUpMlPerDay", Share(water?.ToppedUp.Value, "filled up in the basin a day"))
        );
    }
}
