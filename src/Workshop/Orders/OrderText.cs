using System.Globalization;
using Litterfall.Domain.Trade;

namespace Litterfall.Workshop.Orders;

/// <summary>Amounts, days and money of orders as people write them.</summary>
public static class OrderText
{
    /// <summary>"12.5 L", "3 pieces", "0.84 m²".</summary>
    public static string Amount(double amount, StockUnit unit)
    {
        var digits =
            unit == StockUnit.Pieces ? 1
            : Math.Abs(amount) < 10 ? 2
            : 1;
        var number = Math.Round(amount, digits, MidpointRounding.AwayFromZero)
            .ToString("0.##", CultureInfo.InvariantCulture);
        return unit switch
        {
            StockUnit.Liters => $"{number} L",
            StockUnit.Kilograms => $"{number} kg",
            StockUnit.Meters => $"{number} m",
            StockUnit.SquareMeters => $"{number} m²",
            _ => number == "1" ? "1 piece" : $"{number} pieces",
        };
    }

    /// <summary>"1,204.50"; two decimals always.</summary>
    public static string Money(decimal amount) => amount.ToString("#,0.00", CultureInfo.InvariantCulture);

    /// <summary>"16 Oct 2026".</summary>
    public static string Day(DateOnly day) => day.ToString("d MMM yyyy", CultureInfo.InvariantCulture);
}
