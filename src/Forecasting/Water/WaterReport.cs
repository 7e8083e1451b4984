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
            ("handMistMlPerDay", Maybe(water.ByHand, Unit.Milliliter, "nothing is misted by hand")),
            ("toppedUpMlPerDay", Maybe(balance.Basins?.ToppedUp.Value, Unit.Milliliter, NoBasin)),
            ("toppedUpMlPerDayLow", Maybe(balance.Basins?.ToppedUp.Low, Unit.Milliliter, NoBasin)),
            ("toppedUpMlPerDayHigh", Maybe(balance.Basins?.ToppedUp.High, Unit.Milliliter, NoBasin)),
            ("gainMlPerDay", Maybe(balance.Gain, Unit.Milliliter, NoMist)),
            ("gainMlPerDayLow", Maybe(balance.GainBand?.Low, Unit.Milliliter, NoGainBand(balance))),
            ("gainMlPerDayHigh", Maybe(balance.GainBand?.High, Unit.Milliliter, NoGainBand(balance))),
            ("drainsByItself", new ReportFlag(balance.DrainsByItself)),
            ("outlet", Outlet(balance)),
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

    private const string NoBasin = "there is no basin";
    private const string NoOutlet = "there is no outlet at a height, or the floor gains no water";
    private const string ByItself = "it drains by itself, by the outlet";
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
        : balance.DrainsByItself ? ByItself
        : balance.Misted is null ? NoMist
        : balance.Gains ? "the level does not get there"
        : "the air takes more water than is misted, so the level does not rise";

    private static string NoGainBand(WaterBalance balance) => balance.Misted is null ? NoMist : Held;

    private static ReportNode Outlet(WaterBalance balance) =>
        balance.Outlet is not { } outlet
            ? new ReportAbsent(NoOutlet)
            : ReportObject.Of(
                ("text", new ReportText(ByItself)),
                ("mlPerDay", new ReportNumber(outlet.PerDay, Unit.Milliliter)),
                ("mlPerDayLow", Maybe(outlet.PerDayBand?.Low, Unit.Milliliter, Held)),
                ("mlPerDayHigh", Maybe(outlet.PerDayBand?.High, Unit.Milliliter, Held)),
                ("bottleLitres", new ReportNumber(outlet.Bottle, Unit.Liter)),
                ("bottleFillsInDays", new ReportNumber(outlet.FillsIn, Unit.Day)),
                ("bottleFillsInDaysLow", Maybe(outlet.FillsInLow, Unit.Day, Held)),
                ("bottleFillsInDaysHigh", Maybe(outlet.FillsInHigh, Unit.Day, "it may never fill"))
            );

    private static ReportNode Drain(DrainFigure drain) =>
        ReportObject.Of(
            ("day", new ReportNumber(drain.Day, Unit.Day)),
            ("litres", new ReportNumber(drain.Liters, Unit.Liter))
        );

    private static ReportNode Maybe(Figure? figure, Unit unit, string reason) =>
        figure is null ? new ReportAbsent(reason) : new ReportNumber(figure, unit);
}
