using System.Globalization;

namespace Litterfall.Web.Shop.Terms;

/// <summary>What is typed into one field of a form, and what is wrong with it.</summary>
/// <param name="label">Its label.</param>
/// <param name="text">What stands in it.</param>
public sealed class TypedText(string label, string text)
{
    private const int Longest = 4000;

    /// <summary>Its label.</summary>
    public string Label { get; } = label;

    /// <summary>What stands in it.</summary>
    public string Text { get; set; } = text;

    /// <summary>What is wrong with it; null where nothing is.</summary>
    public string? Fault { get; private set; }

    /// <summary>A line below it; empty for none.</summary>
    public string Help { get; init; } = "";

    /// <summary>True for several lines.</summary>
    public bool IsLong { get; init; }

    /// <summary>True for numbers: phones show their keys.</summary>
    public bool IsNumber { get; init; }

    /// <summary>A field for an amount of money.</summary>
    public static TypedText ForMoney(string label, decimal? amount, string help = "") =>
        new(label, amount?.ToString("0.00##", CultureInfo.InvariantCulture) ?? "")
        {
            IsNumber = true,
            Help = help,
        };

    /// <summary>A field for a number.</summary>
    public static TypedText ForNumber(string label, double? number, string help = "") =>
        new(label, number?.ToString("0.######", CultureInfo.InvariantCulture) ?? "")
        {
            IsNumber = true,
            Help = help,
        };

    /// <summary>Text of 1 to 200 characters.</summary>
    public string Required()
    {
        var said = Text.Trim();
        Fault = said.Length is 0 or > 200 ? "Enter 1 to 200 characters." : null;
        return said;
    }

    /// <summary>Text of at most 4,000 characters.</summary>
    public string Free()
    {
        Fault = Text.Length > Longest ? $"Enter at most {Longest} characters." : null;
        return Text.Trim();
    }

    /// <summary>Lines that say something.</summary>
    public IEnumerable<string> Lines() =>
        Free().Split('\n').Select(line => line.Trim()).Where(line => line.Length > 0);

    /// <summary>An amount of money; 0 where nothing is typed.</summary>
    /// <param name="most">Most that is taken.</param>
    public decimal Money(decimal most = 1_000_000)
    {
        var amount = Amount(0);
        Fault = amount is null or < 0 || amount > most ? Within(0, (double)most) : null;
        return amount ?? 0;
    }

    /// <summary>An amount of money, or nothing.</summary>
    public decimal? MoneyOrNone() => Text.Trim().Length == 0 ? Cleared() : Money();

    /// <summary>A number, or nothing.</summary>
    /// <param name="least">Least that is taken.</param>
    /// <param name="most">Most that is taken.</param>
    public double? NumberOrNone(double least, double most) =>
        Text.Trim().Length == 0 ? (double?)Cleared() : Number(least, most);

    /// <summary>A number; 0 where nothing is typed and 0 is taken.</summary>
    /// <param name="least">Least that is taken.</param>
    /// <param name="most">Most that is taken.</param>
    public double Number(double least, double most)
    {
        var number = (double?)Amount(least <= 0 ? 0 : null);
        Fault = number is null || number < least || number > most ? Within(least, most) : null;
        return number ?? least;
    }

    /// <summary>A whole number.</summary>
    /// <param name="least">Least that is taken.</param>
    /// <param name="most">Most that is taken.</param>
    public int Whole(int least, int most)
    {
        var number = Number(least, most);
        if (Fault is null && number != Math.Floor(number))
        {
            Fault = Within(least, most);
        }

        return (int)number;
    }

    /// <summary>A whole number, or nothing.</summary>
    /// <param name="least">Least that is taken.</param>
    /// <param name="most">Most that is taken.</param>
    public int? WholeOrNone(int least, int most)
    {
        if (Text.Trim().Length > 0)
        {
            return Whole(least, most);
        }

        Fault = null;
        return null;
    }

    /// <summary>Takes a fault away before the field is read anew.</summary>
    public void Clear() => Fault = null;

    /// <summary>Puts a fault beside the field that only the form can know.</summary>
    /// <param name="fault">What is wrong.</param>
    public void Refuse(string fault) => Fault = fault;

    private decimal? Cleared()
    {
        Fault = null;
        return null;
    }

    /// <summary>Decimal comma and point are the same; no groups of thousands are needed here.</summary>
    private decimal? Amount(decimal? empty)
    {
        var said = Text.Trim().Replace(',', '.');
        if (said.Length == 0)
        {
            return empty;
        }

        const NumberStyles plain = NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign;
        return decimal.TryParse(said, plain, CultureInfo.InvariantCulture, out var value) ? value : null;
    }

    private string Within(double least, double most) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"'{Text.Trim()}' is not taken here. Enter a number from {least:0.###} to {most:0.###}."
        );
}
