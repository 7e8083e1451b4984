using System.Globalization;
using Litterfall.Domain.Units;
using Litterfall.Web.Library;
using Litterfall.Web.Shop.Terms;

namespace Litterfall.Web.Shipping.Rules;

/// <summary>Fields of lengths, masses and temperatures, typed with the unit that people think in.</summary>
public static class TypedMeasure
{
    private static readonly CultureInfo Invariant = CultureInfo.InvariantCulture;

    /// <summary>A field for a measure, begun in the reader's unit.</summary>
    /// <param name="label">Its label.</param>
    /// <param name="si">What stands in it, SI; null for nothing.</param>
    /// <param name="unit">The reader's unit.</param>
    /// <param name="help">A line below it.</param>
    public static TypedText Begin(string label, double? si, Unit unit, string help = "") =>
        new(
            label,
            si is { } value
                ? $"{unit.FromSi(value).ToString("0.###", Invariant)}{UnitPreferences.Symbol(unit)}"
                : ""
        )
        {
            Help = help,
        };

    /// <summary>The measure in SI; a bare number counts in the reader's unit.</summary>
    /// <param name="field">The field.</param>
    /// <param name="kind">What is measured.</param>
    /// <param name="unit">The reader's unit.</param>
    /// <param name="range">Least and most that is taken, SI.</param>
    public static double Read(
        TypedText field,
        QuantityKind kind,
        Unit unit,
        (double Least, double Most) range
    )
    {
        var said = field.Text.Trim();
        var asked =
            said.Length > 0 && !said.Any(char.IsLetter) && !said.Contains('"') && !said.Contains('\'')
                ? $"{said} {unit.Symbol}"
                : said;
        var problem = "Enter a number with its unit.";
        var fault = !QuantityText.TryParse(
            kind,
            asked.Replace("°", "", StringComparison.Ordinal),
            out var si,
            out problem
        )
            ? said.Length == 0
                ? "Enter a number with its unit."
                : problem
            : si < range.Least - 1e-9 || si > range.Most + 1e-9
                ? string.Create(
                    Invariant,
                    $"'{said}' is not taken here. Enter {unit.FromSi(range.Least):0.##} to "
                        + $"{unit.FromSi(range.Most):0.##}{UnitPreferences.Symbol(unit)}."
                )
                : null;
        field.Clear();
        if (fault is not null)
        {
            field.Refuse(fault);
        }

        return fault is null ? si : range.Least;
    }

    /// <summary>The measure, or nothing.</summary>
    /// <param name="field">The field.</param>
    /// <param name="kind">What is measured.</param>
    /// <param name="unit">The reader's unit.</param>
    /// <param name="range">Least and most that is taken, SI.</param>
    public static double? ReadOrNone(
        TypedText field,
        QuantityKind kind,
        Unit unit,
        (double Least, double Most) range
    )
    {
        if (field.Text.Trim().Length > 0)
        {
            return Read(field, kind, unit, range);
        }

        field.Clear();
        return null;
    }
}
