using System.Text;
using System.Text.Encodings.Web;
using System.Text.Json;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Figures;

namespace Litterfall.Web.Library;

/// <summary>Entries of the workshop's own as JSON, and measured values put into a copy of ours.</summary>
public static class OwnEntry
{
    private const int LongestKey = 100;

    private static readonly JsonWriterOptions Pretty = new()
    {
        Indented = true,
        Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
    };

    /// <summary>An entry as JSON of the library's form.</summary>
    /// <param name="entry">The entry.</param>
    /// <param name="measured">A value that was measured, in the unit of the entry; null for none.</param>
    public static string Json(
        CatalogEntry entry,
        (string Name, double Number, string Place)? measured = null
    ) =>
        Json(
            entry,
            (entry.Key, entry.Name),
            measured is { } one
                ? new Dictionary<string, (double, string)>(StringComparer.Ordinal)
                {
                    [one.Name] = (one.Number, one.Place),
                }
                : []
        );

    /// <summary>A copy of an entry under a key and name, with some values of the workshop's own.</summary>
    /// <param name="entry">The entry copied.</param>
    /// <param name="named">Key and name of the copy.</param>
    /// <param name="own">Values in the units of the entry and where each comes from, by name.</param>
    public static string Json(
        CatalogEntry entry,
        (string Key, string Name) named,
        IReadOnlyDictionary<string, (double Number, string Place)> own
    )
    {
        using var bytes = new MemoryStream();
        using (var json = new Utf8JsonWriter(bytes, Pretty))
        {
            json.WriteStartObject();
            json.WriteString("key", named.Key);
            json.WriteString("kind", entry.Kind.Word());
            json.WriteString("name", named.Name);
            if (entry.Note is not null)
            {
                json.WriteString("note", entry.Note);
            }

            if (entry is PackEntry { Material: { } material })
            {
                json.WriteString("material", material);
            }

            json.WriteStartObject("values");
            foreach (var value in entry.Values)
            {
                Value(json, value, own.TryGetValue(value.Name, out var mine) ? mine : null);
            }

            json.WriteEndObject();
            Parts(json, entry);
            json.WriteEndObject();
        }

        return Encoding.UTF8.GetString(bytes.ToArray());
    }

    /// <summary>Saves an entry; null when it is good, else what is wrong with it.</summary>
    public static async Task<string?> AddAsync(BenchLibrary library, string text, string note)
    {
        var read = CatalogReader.ReadKey("the entry", text);
        if (read.Value is not { } key)
        {
            var first = read.Faults[0];
            return $"Line {first.Line}: {first.Message}; expected {first.Expected}.";
        }

        if (key.Length is 0 or > LongestKey || key.Any(char.IsControl))
        {
            return $"The key does not read; expected 1 to {LongestKey} letters, digits and hyphens.";
        }

        var faults = await library.AddAsync(key, text, note);
        return faults.IsEmpty ? null : $"{faults[0].Message}; expected {faults[0].Expected}.";
    }

    private static void Value(
        Utf8JsonWriter json,
        CatalogValue value,
        (double Number, string Place)? measured
    )
    {
        var isMeasured = measured is not null;
        json.WriteStartObject(value.Name);
        if (value.Text is not null)
        {
            json.WriteString("text", value.Text);
        }
        else
        {
            json.WriteNumber("value", isMeasured ? measured!.Value.Number : value.Number ?? 0);
            if (!isMeasured && value.Low is { } low && value.High is { } high)
            {
                json.WriteNumber("low", low);
                json.WriteNumber("high", high);
            }

            json.WriteString("unit", value.Unit?.Symbol ?? "1");
        }

        json.WriteString("source", isMeasured ? "workshop" : value.Origin.Source);
        json.WriteString("place", isMeasured ? measured!.Value.Place : value.Origin.Place);
        json.WriteString("provenance", isMeasured ? "measured" : Word(value.Origin.Provenance));
        json.WriteEndObject();
    }

    private static void Parts(Utf8JsonWriter json, CatalogEntry entry)
    {
        if (entry.Parts.IsDefaultOrEmpty)
        {
            return;
        }

        json.WriteStartArray("parts");
        foreach (var part in entry.Parts)
        {
            json.WriteStartObject();
            json.WriteString("material", part.Material);
            json.WriteNumber("parts", part.Parts);
            json.WriteEndObject();
        }

        json.WriteEndArray();
    }

    private static string Word(Provenance provenance) =>
        provenance switch
        {
            Provenance.CommonPractice => "common practice",
            Provenance.OwnChoice => "own choice",
            _ => provenance.ToString().ToLowerInvariant(),
        };
}
