using System.Globalization;

namespace Litterfall.Web.Library;

/// <summary>What is typed for an own entry, kept as typed until it reads.</summary>
public sealed class OwnForm
{
    private readonly Dictionary<string, string> typed = new(StringComparer.Ordinal);

    /// <summary>True where the copy is added; false where it replaces what it was made from.</summary>
    public bool IsNew { get; set; }

    /// <summary>Its name.</summary>
    public string Name { get; set; } = "";

    /// <summary>Where the own values come from.</summary>
    public string Place { get; set; } = "";

    /// <summary>What is typed for a value.</summary>
    public string Text(string name) => typed.GetValueOrDefault(name, "");

    /// <summary>Takes what is typed for a value.</summary>
    public void Set(string name, string? text) => typed[name] = text ?? "";

    /// <summary>The values typed in, or one sentence on what does not read.</summary>
    /// <param name="was">Name of the entry it is made from.</param>
    /// <param name="values">Value and where it comes from, by name.</param>
    public string? Read(string was, out IReadOnlyDictionary<string, (double Number, string Place)> values)
    {
        var read = new Dictionary<string, (double, string)>(StringComparer.Ordinal);
        values = read;
        foreach (var (name, text) in typed.Where(t => !string.IsNullOrWhiteSpace(t.Value)))
        {
            var plain = text.Trim().Replace(',', '.');
            if (
                !double.TryParse(plain, NumberStyles.Float, CultureInfo.InvariantCulture, out var number)
                || !double.IsFinite(number)
            )
            {
                return $"{LibraryWords.Plain(name)}: '{text}' is no number; expected one such as 0.14, in "
                    + "the unit shown.";
            }

            read[name] = (number, Place.Trim().Length > 0 ? Place.Trim() : "entered at the bench");
        }

        if (Name.Trim().Length == 0)
        {
            return "It needs a name.";
        }

        if (IsNew && string.Equals(Name.Trim(), was, StringComparison.OrdinalIgnoreCase))
        {
            return "An entry that is added needs a name of its own.";
        }

        return read.Count == 0 && Name.Trim() == was
            ? "Nothing is changed; fill in at least one value, or another name."
            : null;
    }
}
