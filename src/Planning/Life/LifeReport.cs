using Litterfall.Domain.Figures;
using Litterfall.Domain.Quantities;

namespace Litterfall.Planning.Life;

/// <summary>The life of the floor as part of the report.</summary>
public static class LifeReport
{
    private const string NoCrew = "no crew is entered, or the box has no floor";
    private const string Lasts = "the crew lasts through five years";

    private const string Never = "no springtails are seeded, or they hardly breed in this ground";
    private const string NoneKeeps = "no seeding every four weeks or more keeps the springtails up";

    private static readonly Unit GramPerSquareMeter = Units.Find("g/m2")!;

    /// <summary>The part of the report.</summary>
    /// <param name="life">The life of the floor; null where there is none.</param>
    public static ReportNode Write(LifeFigures? life)
    {
        if (life is null)
        {
            return new ReportAbsent(NoCrew);
        }

        return ReportObject.Of(
            ("animalsInNoEarlierThan", new ReportText($"{life.AnimalsFrom:yyyy-MM-dd}")),
            (
                "because",
                new ReportList([
                    .. life.Because.Select(r =>
                        (ReportNode)
                            ReportObject.Of(
                                (
                                    "until",
                                    r.Day is { } day
                                        ? new ReportText($"{day:yyyy-MM-dd}")
                                        : new ReportAbsent("no day is known")
                                ),
                                ("text", new ReportText(r.Words))
                            )
                    ),
                ])
            ),
            ("readyAfterDays", Maybe(life.CrewReady, Units.Day, Never)),
            ("readyAfterDaysEarly", Maybe(life.CrewReadyEarly, Units.Day, Never)),
            ("readyAfterDaysLate", Maybe(life.CrewReadyLate, Units.Day, Never)),
            ("springtailsThen", new ReportNumber(life.SpringtailsThen, Units.One)),
            ("isopodsThen", new ReportNumber(life.IsopodsThen, Units.One)),
            ("springtailsEatenPerDay", new ReportNumber(life.Appetite, Units.One)),
            ("springtailsBearablePerDay", new ReportNumber(life.Bearable, Units.One)),
            ("lasts", new ReportFlag(life.CrewLasts)),
            ("leastSpringtailsPerM2", new ReportNumber(life.LeastSpringtails, Units.PerSquareMeter)),
            ("eatenUpAfterDays", Maybe(life.EatenUp, Units.Day, Lasts)),
            ("reseedSpringtails", Maybe(life.Reseed, Units.One, life.CrewLasts ? Lasts : NoneKeeps)),
            ("reseedEveryDays", Maybe(life.ReseedEvery, Units.Day, life.CrewLasts ? Lasts : NoneKeeps)),
            (
                "litterLowAfterDays",
                Maybe(life.LitterLow, Units.Day, "the leaves cover 2 cm through five years, or never did")
            ),
            ("litterGoneGramsPerYear", new ReportNumber(life.TopUp, Water.FloorWater.Gram)),
            ("smallFliesPerDay", new ReportNumber(life.FliesPerDay, Units.One)),
            ("smallFliesPerWeek", new ReportNumber(life.FliesPerWeek, Units.One)),
            ("droppingsMilligramsPerDay", new ReportNumber(life.Droppings, LifeFigures.MilligramPerDay)),
            ("droppingsEatableMilligramsPerDay", new ReportNumber(life.DroppingsEatable, LifeFigures.MilligramPerDay)),
            ("nitrogenGramsPerM2Year", new ReportNumber(life.Nitrogen, GramPerSquareMeter)),
            ("plantNitrogenGramsPerM2Year", new ReportNumber(life.PlantNitrogen, GramPerSquareMeter)),
            ("ledgerErrorGrams", new ReportNumber(life.LedgerError, Water.FloorWater.Gram))
        );
    }

    private static ReportNode Maybe(Figure? figure, Unit unit, string reason) =>
        figure is null ? new ReportAbsent(reason) : new ReportNumber(figure, unit);
}
