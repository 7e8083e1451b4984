using Litterfall.Domain.Figures;
using Litterfall.Domain.Quantities;
using Litterfall.Planning.Climate;

namespace Litterfall.Planning.Light;

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
        Add(rows, "soilPpfdMean", light.GroundMean, Units.Micromole);
        Add(rows, "soilDli", light.GroundDaily, Units.MolePerDay);
        rows.Add(("soilLuxMean", new ReportNumber(light.GroundLux, Units.Lux)));
        rows.Add(("soilLeastOverMean", new ReportNumber(light.LeastOverMean, Units.One)));
        if (light.MossMean is { } moss)
        {
            Add(rows, "mossPpfdMean", moss, Units.Micromole);
        }
        else
        {
            rows.Add(("mossPpfdMean", new ReportAbsent("there is no moss on the floor")));
        }

        rows.Add(("refugePercent", new ReportNumber(light.Refuge.Share, Units.Percent)));
        rows.Add(("refugePatches", new ReportNumber(light.Refuge.Patches, Units.One)));
        rows.Add(("darkOverBright", new ReportNumber(light.Refuge.DarkToBright, Units.One)));
        rows.Add(("uncertaintyPercent", new ReportNumber(light.Absolute, Units.Percent)));
        rows.Add(("betweenPlacesPercent", new ReportNumber(light.Relative, Units.Percent)));
        rows.Add(("readingTurns", Maybe(light.Turned, Units.One, "no reading of a lux meter was entered")));
        rows.Add(("lamps", new ReportList([.. light.Lamps.Select(Lamp)])));
        rows.Add(("plants", new ReportList([.. light.Plants.Select(Plant)])));
        return ReportObject.Of([.. rows]);
    }

    private static ReportNode Lamp(LampLight lamp) =>
        ReportObject.Of(
            ("lamp", new ReportText(lamp.Name)),
            ("lumens", new ReportNumber(lamp.Lumens, Units.Lumen)),
            ("umolPerKilolumen", new ReportNumber(lamp.Photons, Units.MicromolePerKilolumen)),
            ("hoursAtFullLight", new ReportNumber(lamp.FullHours, Units.Hour)),
            ("takenInsidePercent", new ReportNumber(lamp.TakenInside, Units.Percent)),
            ("heatInsideWatts", new ReportNumber(lamp.HeatInside, Units.Watt))
        );

    private static ReportNode Plant(PlantLight plant)
    {
        List<(string, ReportNode)> rows =
        [
            ("plant", new ReportText(plant.Species.Key)),
            ("name", new ReportText(plant.Spot.Name)),
            ("verdict", new ReportText(plant.Words)),
        ];
        Add(rows, "ppfd", plant.Photons, Units.Micromole);
        Add(rows, "dli", plant.Daily, Units.MolePerDay);
        rows.Add(("lux", new ReportNumber(plant.Lux, Units.Lux)));
        rows.Add(("facing", new ReportText(plant.Facing)));
        rows.Add(("leafHeightCm", new ReportNumber(plant.LeafHeight, Units.Centimeter)));
        rows.Add(("ppfdLevel", new ReportNumber(plant.Level, Units.Micromole)));
        rows.Add(("ppfdAllRound", new ReportNumber(plant.AllRound, Units.Micromole)));
        rows.Add(("bandDliLow", Maybe(plant.Band?.Low, Units.MolePerDay, NoBand)));
        rows.Add(("bandDliHigh", Maybe(plant.Band?.High, Units.MolePerDay, NoBand)));
        rows.Add(("compensationPpfd", new ReportNumber(plant.Compensation, Units.Micromole)));
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
