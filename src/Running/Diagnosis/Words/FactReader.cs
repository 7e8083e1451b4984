using System.Globalization;

namespace Litterfall.Running.Diagnosis.Words;

/// <summary>Facts from text: "yes", "no", a number, a day.</summary>
public static class FactReader
{
    /// <summary>The fact; null where the text says nothing that fits its form.</summary>
    /// <param name="fact">Which fact.</param>
    /// <param name="text">As it was written.</param>
    public static ToldFact? Read(TankFact fact, string text)
    {
        var plain = text.Trim();
        if (plain.ToLowerInvariant() is "yes" or "true")
        {
            return new ToldFact(fact, true, null, null);
        }

        if (plain.ToLowerInvariant() is "no" or "false")
        {
            return new ToldFact(fact, false, null, null);
        }

        if (
            FactWords.Form(fact) == FactForm.Number
            && double.TryParse(
                plain.Replace(',', '.'),
                NumberStyles.Float,
                CultureInfo.InvariantCulture,
                out var number
            )
            && Math.Abs(number) < 1e6
        )
        {
            return new ToldFact(fact, true, number, null);
        }

        return
            FactWords.Form(fact) != FactForm.Number
            && DateOnly.TryParseExact(
                plain.Length > 10 ? plain[..10] : plain,
                "yyyy-MM-dd",
                CultureInfo.InvariantCulture,
                DateTimeStyles.None,
                out var day
            )
            ? new ToldFact(fact, true, null, day)
            : null;
    }
}
