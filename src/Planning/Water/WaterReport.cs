using System.Collections.Immutable;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Quantities;
using Litterfall.Physics.Soil;

namespace Litterfall.Planning.Water;

/// <summary>The water of the floor as part of the report; simulated numbers name what they rest on.</summary>
public static class WaterReport
{
    private const int DrainsTold = 6;
    private static readonly Citation Engine = new(
        "own-derivation",
        "Richards' equation on the layers of the floor, day by day",
        Provenance.Recomputed
    );

    /// <summary>The part of the report.</summary>
    public static ReportObject Write(FloorWater water)
    {
        var balance = water.Balance;
        return ReportObject.Of(
            ("assumes", new ReportText(Assumes(balance))),
            ("litresPerCmLevel", Maybe(balance.PerLevel, Units.LiterPerCentimeter, NoReservoir)),
            ("usableLitres", Maybe(balance.Usable, Units.Liter, NoReservoir)),
            ("capillaryRiseMm", Maybe(water.CapillaryRise, Units.Millimeter, "the grains have no size")),
            ("mistMlPerDay", Maybe(balance.Misted, Units.Milliliter, NoMist)),
            ("ventedMlPerDay", new ReportNumber(balance.Vented, Units.Milliliter)),
            ("ventedMlPerDayLow", Maybe(balance.VentedBand?.Low, Units.Milliliter, Held)),
            ("ventedMlPerDayHigh", Maybe(balance.VentedBand?.High, Units.Milliliter, Held)),
            ("gainMlPerDay", Maybe(balance.Gain, Units.Milliliter, NoMist)),
            ("drainEveryDays", Maybe(balance.DrainEvery, Units.Day, Never(balance))),
            ("drainEveryDaysLow", Maybe(balance.DrainBand?.Low, Units.Day, Never(balance))),
            (
                "drainEveryDaysHigh",
                Maybe(balance.DrainBand?.High, Units.Day, "it may not fill within five years")
            ),
            ("firstDrainDay", Maybe(water.FirstDrain, Units.Day, Never(balance))),
            ("firstDrainDayLow", Maybe(water.FirstDrainLow, Units.Day, Never(balance))),
            ("firstDrainDayHigh", Maybe(water.FirstDrainHigh, Units.Day, "it may not come within a year")),
            ("barrierReachedDay", Maybe(water.BarrierReached, Units.Day, Never(balance))),
            ("drains", new ReportList([.. water.Drains.Take(DrainsTold).Select(Drain)])),
            ("levelMmAfterMonth", Maybe(water.LevelAfterMonth, Units.Millimeter, NoForecast)),
            ("leastAirAtRootsPercent", Maybe(water.LeastAir, Units.Percent, NoForecast)),
            ("daysWithoutAirAtRoots", Maybe(water.AirlessDays, Units.Day, NoForecast)),
            ("mostSuctionForCrewKPa", Maybe(water.MostSuction, Units.Kilopascal, NoForecast)),
            ("ledgerErrorGrams", Maybe(water.LedgerError, FloorWater.Gram, NoForecast))
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
        : balance.Air.IsComputed ? "the headspace computed with its floor, days 8 to 30 from planting"
        : "air of the box assumed from its openings; hold it with headspace: { hold: ... } to be exact";

    private static string Never(WaterBalance balance) =>
        balance.PerLevel is null ? NoReservoir
        : balance.Misted is null ? NoMist
        : balance.Gains ? "the level does not get there"
        : "the air takes more water than is misted, so the level does not rise";

    private static ReportNode Drain(DrainFigure drain) =>
        ReportObject.Of(
            ("day", new ReportNumber(drain.Day, Units.Day)),
            ("litres", new ReportNumber(drain.Liters, Units.Liter))
        );

    private static ReportNode Maybe(Figure? figure, Unit unit, string reason) =>
        figure is null ? new ReportAbsent(reason) : new ReportNumber(figure, unit);

    /// <summary>A simulated number as a figure that names the inputs of the simulation.</summary>
    internal static Figure Simulated(
        string name,
        double si,
        Unit unit,
        string how,
        ImmutableArray<Figure> inputs
    ) => Figure.Computed(how, si, unit.Dimension, inputs.AsSpan()).As(name, unit, Engine);
}
