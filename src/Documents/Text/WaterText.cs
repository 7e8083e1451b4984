using System.Globalization;
using System.Text;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Forecasting.Water;

namespace Litterfall.Documents.Text;

/// <summary>The water of the floor as a maker reads it on a terminal.</summary>
internal static class WaterText
{
    /// <summary>Nothing where nothing says how much is misted and there is no reservoir.</summary>
    public static void Write(StringBuilder text, FloorWater water)
    {
        var balance = water.Balance;
        if (balance.Misted is null && balance.PerLevel is null)
        {
            return;
        }

        var table = new TextTable("", "", "");
        Add(table, "misted", balance.Misted, Unit.Milliliter, "mL a day");
        table.Add("vented", Of(balance.Vented, Unit.Milliliter), Air(balance));
        Add(table, "gained by the floor", balance.Gain, Unit.Milliliter, "mL a day");
        Add(table, "reservoir", balance.PerLevel, Unit.LiterPerCentimeter, "L per cm of level");
        Add(table, "usable", balance.Usable, Unit.Liter, "L up to 1 cm below the barrier");
        Add(table, "drain every", balance.DrainEvery, Unit.Day, Days(balance.DrainBand));
        Add(table, "first drain", water.FirstDrain, Unit.Day, FirstWords(water));
        Add(table, "at the barrier if nobody drains", water.BarrierReached, Unit.Day, "days from planting");
        Add(table, "least air at root depth", water.LeastAir, Unit.Percent, "% of the soil, first year");
        Add(table, "driest for the crew", water.MostSuction, Unit.Kilopascal, "kPa of suction, first year");
        text.Append("Water of the floor\n").Append(table).Append('\n');
    }

    private static void Add(TextTable table, string name, Figure? figure, Unit unit, string words)
    {
        if (figure is not null)
        {
            table.Add(name, Of(figure, unit), words);
        }
    }

    private static string Air(WaterBalance balance) =>
        balance.Air.IsHeld ? "mL a day, air of the box held"
        : balance.Air.IsComputed ? "mL a day, by the computed headspace"
        : string.Create(
            CultureInfo.InvariantCulture,
            $"mL a day, air changes assumed from the openings ({balance.Air.Changes.Value:0.#} per hour)"
        );

    private static string Days((Figure Low, Figure? High)? band) =>
        band is { } b ? $"days; {Range(b.Low, b.High)}" : "days";

    private static string FirstWords(FloorWater water) =>
        water.FirstDrainLow is { } low
            ? $"days from planting; {Range(low, water.FirstDrainHigh)} over what nobody measured"
            : "days from planting";

    private static string Range(Figure low, Figure? high) =>
        high is null ? $"{Of(low, Unit.Day)} or never" : $"{Of(low, Unit.Day)} to {Of(high, Unit.Day)}";

    private static string Of(Figure figure, Unit unit)
    {
        var value = unit.FromSi(figure.Si);
        return value.ToString(Math.Abs(value) < 10 ? "0.##" : "0", CultureInfo.InvariantCulture);
    }
}
