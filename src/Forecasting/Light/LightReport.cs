using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;

namespace Litterfall.Forecasting.Light;

/// <summary>The light of the box as part of the report.</summary>
public static class LightReport
{
    private const string NoLight = "there is no lamp, or no air for it to shine through";
    private const string NoBand = "the library has no light band for it";

    /// <summary>The part of the report.</summary>
    /// <param name="light">The light; null where there is none.</param>
    public static ReportNode Write(LightFigures? light)
    {
        if (light is null)
        {
            return new ReportAbsent(NoLight);
        }

        List<(string, ReportNode)> rows =
        [
            (
                "assumes",
                new ReportText(
                    "level light at full lamps on the open ground, plants between young and grown, black "
                        + "outside the panes"
                )
            ),
        ];
        Add(rows, "soilPpfdMean", light.GroundMean, Unit.Micromole);
        Add(rows, "soilDli", light.GroundDaily, Unit.MolePerDay);
        Add(rows, "soilLuxMean", light.GroundLux, Unit.Lux);
        Litter(rows, "litterPpfdMean", light.LitterMean, Unit.Micromole);
        Litter(rows, "litterDli", light.LitterDaily, Unit.MolePerDay);
        rows.Add(("soilLeastOverMean", new ReportNumber(light.LeastOverMean, Unit.One)));
        if (light.MossMean is { } moss)
        {
            Add(rows, "mossPpfdMean", moss, Unit.Micromole);
        }
        else
        {
            rows.Add(("mossPpfdMean", new ReportAbsent("there is no moss on the floor")));
        }

        rows.Add(("refugePercent", new ReportNumber(light.Refuge.Share, Unit.Percent)));
        rows.Add(("refugePatches", new ReportNumber(light.Refuge.Patches, Unit.One)));
        rows.Add(("refugePlaces", new ReportNumber(light.Refuge.Places, Unit.One)));
        rows.Add(("refugeReachCm", new ReportNumber(light.Refuge.Reach, Unit.Centimeter)));
        rows.Add(("darkOverBright", new ReportNumber(light.Refuge.DarkToBright, Unit.One)));
        rows.Add(("uncertaintyPercent", new ReportNumber(light.Absolute, Unit.Percent)));
        rows.Add(("betweenPlacesPercent", new ReportNumber(light.Relative, Unit.Percent)));
        rows.Add(("readingTurns", Maybe(light.Turned, Unit.One, "no reading of a lux meter was entered")));
        rows.Add(("lamps", new ReportList([.. light.Lamps.Select(Lamp)])));
        rows.Add(("plants", new ReportList([.. light.Plants.Select(Plant)])));
        return ReportObject.Of([.. rows]);
    }

    private static void Litter(List<(string, ReportNode)> rows, string key, Banded? number, Unit unit)
    {
        if (number is not null)
        {
            Add(rows, key, number, unit);
        }
        else
        {
            rows.Add((key, new ReportAbsent("there is no leaf litter")));
        }
    }

    private static ReportNode Lamp(LampLight lamp) =>
        ReportObject.Of(
            ("lamp", new ReportText(lamp.Name)),
            ("lumens", new ReportNumber(lamp.Lumens, Unit.Lumen)),
            ("umolPerKilolumen", new ReportNumber(lamp.Photons, Unit.MicromolePerKilolumen)),
            ("hoursAtFullLight", new ReportNumber(lamp.FullHours, Unit.Hour)),
            ("takenInsidePercent", new ReportNumber(lamp.TakenInside, Unit.Percent)),
            ("heatInsideWatts", new ReportNumber(lamp.HeatInside, Unit.Watt))
        );

    private static ReportNode Plant(PlantLight plant)
    {
        List<(string, ReportNode)> rows =
        [
            ("plant", new ReportText(plant.Species.Key)),
            ("name", new ReportText(plant.Spot.Name)),
            ("verdict", new ReportText(plant.Words)),
        ];
        Add(rows, "ppfd", plant.Photons, Unit.Micromole);
        Add(rows, "dli", plant.Daily, Unit.MolePerDay);
        rows.Add(("lux", new ReportNumber(plant.Lux, Unit.Lux)));
        rows.Add(("facing", new ReportText(plant.Facing)));
        rows.Add(("leafHeightCm", new ReportNumber(plant.LeafHeight, Unit.Centimeter)));
        rows.Add(("ppfdLevel", new ReportNumber(plant.Level, Unit.Micromole)));
        rows.Add(("ppfdAllRound", new ReportNumber(plant.AllRound, Unit.Micromole)));
        rows.Add(("bandDliLow", Maybe(plant.Band?.Low, Unit.MolePerDay, NoBand)));
        rows.Add(("bandDliHigh", Maybe(plant.Band?.High, Unit.MolePerDay, NoBand)));
        rows.Add(("survivalDli", new ReportNumber(plant.Survival, Unit.MolePerDay)));
        rows.Add(("colorDliLow", Maybe(plant.ColorBand?.Low, Unit.MolePerDay, NoBand)));
        rows.Add(("colorDliHigh", Maybe(plant.ColorBand?.High, Unit.MolePerDay, NoBand)));
        rows.Add(("compensationPpfd", new ReportNumber(plant.Compensation, Unit.Micromole)));
        var source = plant.Band?.Low.Origin ?? plant.Compensation.Origin;
        rows.Add(("source", new ReportText(source.Source)));
        rows.Add(("place", new ReportText(source.Place)));
        rows.Add(("provenance", new ReportText(source.Provenance.Word())));
        rows.Add(
            (
                "placeIs",
                new ReportText(
                    plant.Spot.PlaceIsOpen ? "a usual place; the design leaves it open" : "entered"
                )
            )
        );
        return ReportObject.Of([.. rows]);
    }

    private static void Add(List<(string, ReportNode)> rows, string key, Banded number, Unit unit)
    {
        rows.Add((key, new ReportNumber(number.Value, unit)));
        rows.Add((key + "Low", Maybe(number.Low, unit, NoBand)));
        rows.Add((key + "High", Maybe(number.High, unit, NoBand)));
    }

    private static ReportNode Maybe(Figure? figure, Unit unit, string reason) =>
        figure is null ? new ReportAbsent(reason) : new ReportNumber(figure, unit);
}
