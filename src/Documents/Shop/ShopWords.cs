using System.Globalization;

namespace Litterfall.Documents.Shop;

/// <summary>Money, days and amounts on papers for customers.</summary>
internal static class ShopWords
{
    /// <summary>"1,204.50 EUR".</summary>
    public static string Money(decimal amount, string currency) =>
        $"{amount.ToString("#,0.00", CultureInfo.InvariantCulture)} {currency}";

    /// <summary>"1,204.50"; the currency stands in the head of the column.</summary>
    public static string Money(decimal amount) => amount.ToString("#,0.00", CultureInfo.InvariantCulture);

    /// <summary>"16 October 2026".</summary>
    public static string Day(DateOnly day) => day.ToString("d MMMM yyyy", CultureInfo.InvariantCulture);

    /// <summary>"2", "0.5".</summary>
    public static string Amount(double amount) => amount.ToString("0.###", CultureInfo.InvariantCulture);

    /// <summary>"19 %".</summary>
    public static string Percent(decimal percent) =>
        percent.ToString("0.##", CultureInfo.InvariantCulture) + " %";
}
