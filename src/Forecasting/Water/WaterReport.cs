using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Forecasting.Coefficients;

namespace Litterfall.Forecasting.Water;

/// <summary>The water of the floor as part of the report; simulated numbers name what they rest on.</summary>
public static class WaterReport
{
    private const int DrainsTold = 6;

    /// <summary>The part of the report.</summary>
    public static ReportObject Write(FloorWater water)
    {
        var balance = water.Balance;
        return ReportObject.Of(
            ("assumes", new ReportText(Assumes(balance))),
            ("litresPerCmLevel", Maybe(balance.PerLevel, Unit.LiterPerCentimeter, NoReservoir)),
            ("usableLitres", Maybe(balance.Usable, Unit.Liter, NoReservoir)),
            ("capillaryRiseMm", Maybe(water.CapillaryRise, Unit.Millimeter, "the grains have no size")),
            ("mistMlPerDay", Maybe(balance.Misted, Unit.Milliliter, NoMist)),
            ("ventedMlPerDay", new ReportNumber(balance.Vented, Unit.Milliliter)),
            ("ventedMlPerDayLow", Maybe(balance.VentedBand?.Low, Unit.Milliliter, Held)),
            ("ventedMlPerDayHigh", Maybe(balance.VentedBand?.High, Unit.Milliliter, Held)),
            ("gainMlPerDay", Maybe(balance.Gain, Unit.Milliliter, NoMist)),
            ("drainEveryDays", Maybe(balance.DrainEvery, Unit.Day, Never(balance))),
            ("drainEveryDaysLow", Maybe(balance.DrainBand?.Low, Unit.Day, Never(balance))),
            (
                "drainEveryDaysHigh",
                Maybe(balance.DrainBand?.High, Unit.Day, "it may not fill within five years")
            ),
            ("firstDrainDay", Maybe(water.FirstDrain, Unit.Day, Never(balance))),
            ("firstDrainDayLow", Maybe(water.FirstDrainLow, Unit.Day, Never(balance))),
            ("firstDrainDayHigh", Maybe(water.FirstDrainHigh, Unit.Day, "it may not come within a year")),
            ("barrierReachedDay", Maybe(water.BarrierReached, Unit.Day, Never(balance))),
            ("drains", new ReportList([.. water.Drains.Take(DrainsTold).Select(Drain)])),
            ("levelMmAfterMonth", Maybe(water.LevelAfterMonth, Unit.Millimeter, NoForecast)),
            ("leastAirAtRootsPercent", Maybe(water.LeastAir, Unit.Percent, NoForecast)),
            ("daysWithoutAirAtRoots", Maybe(water.AirlessDays, Unit.Day, NoForecast)),
            ("mostSuctionForCrewKPa", Maybe(water.MostSuction, Unit.Kilopascal, NoForecast)),
            ("ledgerErrorGrams", Maybe(water.LedgerError, Unit.Gram, NoForecast))
        );
    }

    private const string NoReservoir = "there is no drainage layer";
    private const string NoMist =
        "nothing says how much is misted; enter misting, or habits: { handMist: ... }";
    private const string Held = "the headspace is held, so it has no band";
    private const string NoForecast =
        "the forecast needs a soil with a water curve, and how much is misted a day";

    private static string Assumes(WaterBalance balance) =>
        balance.Air.IsHeld ? "the headspace is held by the design"
        : balance.Air.IsComputed
            ? $"the headspace computed with its floor, {HeadspacePolicy.Settled} from planting"
        : "air of the box assumed from its openings; hold it with headspace: { hold: ... } to be exact";

    private static string Never(WaterBalance balance) =>
        balance.PerLevel is null ? NoReservoir
        : balance.Misted is null ? NoMist
        : balance.Gains ? "the level does not get there"
        : "the air takes more water than is misted, so the level does not rise";

    private static ReportNode Drain(DrainFigure drain) =>
        ReportObject.Of(
            ("day", new ReportNumber(drain.Day, Unit.Day)),
            ("litres", new ReportNumber(drain.Liters, Unit.Liter))
        );

    private static ReportNode Maybe(Figure? figure, Unit unit, string reason) =>
        figure is null ? new ReportAbsent(reason) : new ReportNumber(figure, unit);
}
