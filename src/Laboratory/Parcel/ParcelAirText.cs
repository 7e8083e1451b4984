using System.Globalization;
using System.Text;
using System.Text.Json;

namespace Litterfall.Laboratory.Parcel;

/// <summary>Air of packs, carton and cup as it is printed; nothing where nothing was asked.</summary>
internal static class ParcelAirText
{
    /// <summary>Objects <c>iron</c>, <c>vents</c> and <c>cup</c>, each where it was in the case.</summary>
    public static void Json(Utf8JsonWriter json, ParcelAirOutcome air)
    {
        if (air.Pack is { } pack)
        {
            json.WriteStartObject("iron");
            json.WriteNumber("meanWatts", pack.MeanWatts);
            json.WriteNumber("oxygenLiters", pack.OxygenLiters);
            json.WriteNumber("airLiters", pack.AirLiters);
            json.WriteNumber("airLitersPerHour", pack.AirLitersPerHour);
            json.WriteEndObject();
        }

        if (air.Carton is { } carton)
        {
            json.WriteStartObject("vents");
            json.WriteNumber("packSupplyPercent", carton.SupplyPercent);
            json.WriteNumber("oxygenPercent", carton.OxygenPercent);
            json.WriteEndObject();
        }

        if (air.Cup is { } cup)
        {
            json.WriteStartObject("cup");
            json.WriteNumber("atC", air.Celsius);
            json.WriteNumber("oxygenMlPerHour", cup.OxygenMillilitersPerHour);
            json.WriteNumber("heatMilliwatts", cup.HeatMilliwatts);
            ParcelText.Number(json, "sealedHoursTo19Percent", cup.SealedHours);
            json.WriteNumber("oxygenPercent", cup.OxygenPercent);
            json.WriteNumber("carbonDioxidePercent", cup.CarbonDioxidePercent);
            json.WriteNumber("waterGrams", cup.WaterGrams);
            json.WriteEndObject();
        }
    }

    /// <summary>A line each.</summary>
    public static string Words(ParcelAirOutcome air)
    {
        var words = new StringBuilder();
        if (air.Pack is { } pack)
        {
            words.Append(
                CultureInfo.InvariantCulture,
                $"rust uses {pack.OxygenLiters:0.0} L of oxygen ({pack.AirLiters:0} L of air, "
            );
            words.Append(CultureInfo.InvariantCulture, $"{pack.AirLitersPerHour:0.00} L an hour)\n");
        }

        if (air.Carton is { } carton)
        {
            words.Append(
                CultureInfo.InvariantCulture,
                $"vents and seams let it give {carton.SupplyPercent:0} % of its power; oxygen in the carton "
            );
            words.Append(CultureInfo.InvariantCulture, $"{carton.OxygenPercent:0.0} %\n");
        }

        if (air.Cup is { } cup)
        {
            words.Append(
                CultureInfo.InvariantCulture,
                $"cup at {air.Celsius:0.0} C: oxygen {cup.OxygenPercent:0.0} %, carbon dioxide "
            );
            words.Append(
                CultureInfo.InvariantCulture,
                $"{cup.CarbonDioxidePercent:0.00} %, {cup.WaterGrams:0.00} g of water lost\n"
            );
        }

        return words.ToString();
    }
}
