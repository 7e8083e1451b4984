using System.Globalization;

namespace Litterfall.Workshop.Orders;

/// <summary>Running numbers as they are printed.</summary>
public static class IssuedName
{
    /// <summary>"I-0012": letters of the shop and at least four digits.</summary>
    /// <param name="prefix">Letters before it.</param>
    /// <param name="number">The number.</param>
    public static string From(string prefix, int number) =>
        prefix + number.ToString("0000", CultureInfo.InvariantCulture);
}
