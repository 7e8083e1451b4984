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
        Add(table, "misted", balance.Misted, Unit.Milliliter, Misted(water));
        table.Add("vented", Of(balance.Vented, Unit.Milliliter), Air(balance));
        Add(
            table,
            "filled up in basins",
            balance.Basins?.ToppedUp.Value,
            Unit.Milliliter,
            "mL a day, by hand"
        );
        Add(table, "gained by the floor", balance.Gain, Unit.Milliliter, "mL a day");
        Add(table, "reservoir", balance.PerLevel, Unit.LiterPerCentimeter, "L per cm of level");
        Add(table, "usable", balance.Usable, Unit.Liter, "L up to 1 cm below the barrier");
        Add(table, "drain every", balance.DrainEvery, Unit.Day, Days(balance.DrainBand));
        Outlet(table, balance);
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

    /// <summary>Hand misting beside a system is in the sum, and said.</summary>
    private static string Misted(FloorWater water) =>
        water.ByHand is { } hand && water.Balance.Misted is { } all && all.Si > hand.Si + 1e-12
            ? $"mL a day, {Of(hand, Unit.Milliliter)} of them by hand beside the system"
            : "mL a day";

    private static void Outlet(TextTable table, WaterBalance balance)
    {
        if (balance.Outlet is { } outlet)
        {
            table.Add(
                "drains by itself",
                Of(outlet.PerDay, Unit.Milliliter),
                $"mL a day by the outlet; a bottle of {Of(outlet.Bottle, Unit.Liter)} L fills in "
                    + $"{Of(outlet.FillsIn, Unit.Day)} days"
            );
        }
        else if (balance.DrainsByItself)
        {
            table.Add("drains by itself", "0", "mL a day: the level does not rise to the outlet");
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
