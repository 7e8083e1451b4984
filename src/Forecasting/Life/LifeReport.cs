using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;

namespace Litterfall.Forecasting.Life;

/// <summary>The life of the floor as part of the report.</summary>
public static class LifeReport
{
    private const string NoBand = "no springtails are seeded, or the crew is not followed that long";
    private const string NoFloor = "the box has no floor";
    private const string Lasts = "the crew lasts through five years";

    private const string Never = "no springtails are seeded, or they hardly breed in this ground";
    private const string NoneKeeps = "no seeding every four weeks or more keeps the springtails up";

    private static readonly Unit GramPerSquareMeter = Unit.Find("g/m2")!;

    /// <summary>The part of the report.</summary>
    /// <param name="life">The life of the floor; null where there is none.</param>
    /// <param name="findings">Findings of the design: what stops animals on any day.</param>
    public static ReportNode Write(LifeFigures? life, IEnumerable<Finding> findings)
    {
        if (life is null)
        {
            return new ReportAbsent(NoFloor);
        }

        return ReportObject.Of(
            ("animalsInNoEarlierThan", new ReportText($"{life.AnimalsFrom:yyyy-MM-dd}")),
            (
                "because",
                new ReportList([
                    .. life.Because.Select(r =>
                        Reason(r.Day is { } day ? $"{day:yyyy-MM-dd}" : null, r.Words)
                    ),
                    .. FloorWaits.Stops(findings).Select(s => Reason(null, s)),
                ])
            ),
            ("readyAfterDays", Maybe(life.CrewReady, Unit.Day, Never)),
            ("readyAfterDaysEarly", Maybe(life.CrewReadyEarly, Unit.Day, Never)),
            ("readyAfterDaysLate", Maybe(life.CrewReadyLate, Unit.Day, Never)),
            ("springtailsThen", new ReportNumber(life.SpringtailsThen.Value, Unit.One)),
            ("springtailsThenLow", Maybe(life.SpringtailsThen.Low, Unit.One, NoBand)),
            ("springtailsThenHigh", Maybe(life.SpringtailsThen.High, Unit.One, NoBand)),
            ("isopodsThen", new ReportNumber(life.IsopodsThen.Value, Unit.One)),
            ("isopodsThenLow", Maybe(life.IsopodsThen.Low, Unit.One, NoBand)),
            ("isopodsThenHigh", Maybe(life.IsopodsThen.High, Unit.One, NoBand)),
            ("springtailsEatenPerDay", new ReportNumber(life.Appetite, Unit.One)),
            ("springtailsBearablePerDay", new ReportNumber(life.Bearable.Value, Unit.One)),
            ("springtailsBearablePerDayLow", Maybe(life.Bearable.Low, Unit.One, NoBand)),
            ("springtailsBearablePerDayHigh", Maybe(life.Bearable.High, Unit.One, NoBand)),
            ("lasts", new ReportFlag(life.CrewLasts)),
            ("leastSpringtailsPerM2", new ReportNumber(life.LeastSpringtails, Unit.PerSquareMeter)),
            ("eatenUpAfterDays", Maybe(life.EatenUp, Unit.Day, Lasts)),
            ("reseedSpringtails", Maybe(life.Reseed, Unit.One, life.CrewLasts ? Lasts : NoneKeeps)),
            ("reseedEveryDays", Maybe(life.ReseedEvery, Unit.Day, life.CrewLasts ? Lasts : NoneKeeps)),
            (
                "litterLowAfterDays",
                Maybe(
                    life.Masses.LitterLow,
                    Unit.Day,
                    "the leaves cover 2 cm through five years, or never did"
                )
            ),
            ("litterGoneGramsPerYear", new ReportNumber(life.Masses.TopUp, Unit.Gram)),
            ("smallFliesPerDay", new ReportNumber(life.Masses.FliesPerDay, Unit.One)),
            ("smallFliesPerWeek", new ReportNumber(life.Masses.FliesPerWeek, Unit.One)),
            (
                "droppingsMilligramsPerDay",
                new ReportNumber(life.Masses.Droppings, FloorMasses.MilligramPerDay)
            ),
            (
                "droppingsEatableMilligramsPerDay",
                new ReportNumber(life.Masses.DroppingsEatable, FloorMasses.MilligramPerDay)
            ),
            ("nitrogenGramsPerM2Year", new ReportNumber(life.Masses.Nitrogen, GramPerSquareMeter)),
            ("plantNitrogenGramsPerM2Year", new ReportNumber(life.Masses.PlantNitrogen, GramPerSquareMeter)),
            ("ledgerErrorGrams", new ReportNumber(life.Masses.LedgerError, Unit.Gram))
        );
    }

    private static ReportNode Reason(string? until, string words) =>
        ReportObject.Of(
            ("until", until is null ? new ReportAbsent("no day is known") : new ReportText(until)),
            ("text", new ReportText(words))
        );

    private static ReportNode Maybe(Figure? figure, Unit unit, string reason) =>
        figure is null ? new ReportAbsent(reason) : new ReportNumber(figure, unit);
}
