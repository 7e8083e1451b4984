using System.Globalization;
using Litterfall.Domain.Stock;
using Litterfall.Domain.Trade;
using Litterfall.Domain.Units;
using Litterfall.Web.Library;
using Litterfall.Workshop.Stock;

namespace Litterfall.Web.Shop.Stock;

/// <summary>Stock in the words and units of the reader.</summary>
public static class StockWords
{
    /// <summary>An amount with its unit: "21.6 L", "3 pieces".</summary>
    /// <param name="amount">In the unit of the good.</param>
    /// <param name="unit">What the good is counted in.</param>
    /// <param name="preferences">Units of the reader.</param>
    public static string Amount(double amount, StockUnit unit, UnitPreferences preferences) =>
        unit == StockUnit.Liters && preferences.For(Unit.Liter) == Unit.Liter ? Liters(amount)
        : Shown(unit, preferences) is { } shown
            ? $"{Number(shown.FromSi(Stored(unit)!.ToSiValue(amount)))}{UnitPreferences.Symbol(shown)}"
        : unit switch
        {
            StockUnit.Meters => $"{Number(amount)} m",
            StockUnit.SquareMeters => $"{Number(amount)} m²",
            _ => Number(amount) == "1" ? "1 piece" : $"{Number(amount)} pieces",
        };

    /// <summary>Liters as a jug shows them, to a tenth; below one liter in milliliters.</summary>
    private static string Liters(double liters) =>
        Math.Abs(liters) is > 0.0005 and < 0.9995
            ? $"{Math.Round(liters * 1000).ToString("0", CultureInfo.InvariantCulture)} mL"
            : $"{Number(Math.Round(liters, 1, MidpointRounding.AwayFromZero))} L";

    /// <summary>The amount alone, for a field.</summary>
    public static string Field(double amount, StockUnit unit, UnitPreferences preferences) =>
        Number(
            Shown(unit, preferences) is { } shown ? shown.FromSi(Stored(unit)!.ToSiValue(amount)) : amount
        );

    /// <summary>Unit as it stands behind a field.</summary>
    public static string UnitWord(StockUnit unit, UnitPreferences preferences) =>
        Shown(unit, preferences) is { } shown ? UnitPreferences.Symbol(shown).Trim()
        : unit == StockUnit.Meters ? "m"
        : unit == StockUnit.SquareMeters ? "m²"
        : "pieces";

    /// <summary>What was typed, in the unit of the good; in the reader's where no unit is typed.</summary>
    /// <param name="text">As typed.</param>
    /// <param name="unit">What the good is counted in.</param>
    /// <param name="preferences">Units of the reader.</param>
    public static double? Read(string text, StockUnit unit, UnitPreferences preferences)
    {
        if (Shown(unit, preferences) is not { } shown)
        {
            return Plain(text);
        }

        if (Plain(text) is { } number)
        {
            return Stored(unit)!.FromSi(shown.ToSiValue(number));
        }

        return unit == StockUnit.Liters
            ? QuantityText.TryParse<Volume>(text.Trim().Replace(',', '.'), out var liters, out _)
                ? Unit.Liter.FromSi(liters.Si)
                : null
            : QuantityText.TryParse<Mass>(text.Trim().Replace(',', '.'), out var mass, out _)
                ? mass.Si
                : null;
    }

    /// <summary>A plain number as typed, with point or comma; null where it is none.</summary>
    /// <param name="text">As typed.</param>
    public static double? Plain(string text) =>
        double.TryParse(
            text.Replace(',', '.').Trim(),
            NumberStyles.Float,
            CultureInfo.InvariantCulture,
            out var value
        ) && double.IsFinite(value)
            ? value
            : null;

    /// <summary>Money as typed; null where it is none.</summary>
    /// <param name="text">As typed.</param>
    public static decimal? Price(string text) =>
        decimal.TryParse(
            text.Replace(',', '.').Trim(),
            NumberStyles.AllowDecimalPoint,
            CultureInfo.InvariantCulture,
            out var value
        )
            ? value
            : null;

    /// <summary>Money.</summary>
    public static string Money(decimal amount, string currency) =>
        string.Create(CultureInfo.InvariantCulture, $"{amount:0.00} {currency}");

    /// <summary>A day.</summary>
    public static string Day(DateOnly day) => day.ToString("d MMM yyyy", CultureInfo.InvariantCulture);

    /// <summary>A number as tools show it: one decimal from ten on, two below.</summary>
    public static string Number(double value) =>
        Math.Round(value, Math.Abs(value) >= 10 ? 1 : 2, MidpointRounding.AwayFromZero)
            .ToString("0.##", CultureInfo.InvariantCulture)
            is var text
        && text == "-0"
            ? "0"
            : text;

    /// <summary>What happened, in a word or two.</summary>
    /// <param name="line">The line.</param>
    public static string What(Movement line) =>
        (line.Reverses is null ? "" : "taken back: ")
        + line.Kind switch
        {
            MovementKind.Received => "received",
            MovementKind.Made => "made here",
            MovementKind.Used => "used",
            MovementKind.Moved => "moved",
            MovementKind.Sold => "sold",
            MovementKind.Died => "died",
            MovementKind.Scrapped => "thrown away",
            MovementKind.Counted => "counted",
            MovementKind.Held => "put on hold",
            _ => "released",
        };

    /// <summary>The state of a lot in words; empty where it may be used.</summary>
    public static string State(LotAccount lot, DateOnly day) => lot.Bar(day) ?? "";

    private static Unit? Stored(StockUnit unit) =>
        unit switch
        {
            StockUnit.Liters => Unit.Liter,
            StockUnit.Kilograms => Unit.Kilogram,
            _ => null,
        };

    private static Unit? Shown(StockUnit unit, UnitPreferences preferences) =>
        Stored(unit) is { } stored ? preferences.For(stored) : null;
}
