using System.CommandLine;
using System.Globalization;
using Litterfall.App.Files;
using Litterfall.Documents.Json;
using Litterfall.Documents.Text;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Faults;
using Litterfall.Domain.Figures;
using Litterfall.Forecasting.Coefficients;

namespace Litterfall.App.Commands;

/// <summary><c>litterfall library [KIND] [NAME]</c>.</summary>
internal static class LibraryCommand
{
    public static Command Create()
    {
        var kind = new Argument<string?>("KIND")
        {
            Arity = ArgumentArity.ZeroOrOne,
            Description = "A kind, such as aggregate, or a key.",
        };
        var name = new Argument<string?>("NAME")
        {
            Arity = ArgumentArity.ZeroOrOne,
            Description = "A key of that kind.",
        };
        var (json, workshop) = (Arguments.Json(), Arguments.Workshop());
        var command = new Command("library", "What the library knows, with sources.")
        {
            kind,
            name,
            json,
            workshop,
        };
        command.SetAction(parsed =>
        {
            var catalog = Shop.Catalog(parsed.GetValue(workshop));
            return catalog.IsGood
                ? Run(catalog.Value!, parsed.GetValue(kind), parsed.GetValue(name), parsed.GetValue(json))
                : Exit.Unusable(parsed.GetValue(json), [.. catalog.Faults]);
        });
        return command;
    }

    private static int Run(TradeCatalog catalog, string? kind, string? name, bool json)
    {
        if (kind is not null && Singular(kind.ToLowerInvariant()) == CoefficientsText.Kind)
        {
            var found = CoefficientsText.Find(name);
            if (found.Count > 0)
            {
                Console.Out.Write(
                    json ? CoefficientsText.Json(catalog, found) + "\n" : CoefficientsText.Table(found)
                );
                return Exit.Done;
            }
        }

        var kinds = catalog.Entries.Select(e => e.Kind).Distinct().ToArray();
        var asked = kind is null ? null : Meant(kind, kinds);
        if (name is null && kind is not null && asked is null)
        {
            (kind, name) = (null, kind);
        }

        var entries = catalog
            .Entries.Where(e =>
                (kind is null || e.Kind == asked) && (name is null || e.Key == TradeCatalog.Canonical(name))
            )
            .ToArray();
        if (entries.Length == 0)
        {
            var near = catalog.Near(name ?? kind!, asked is { } one ? [one] : kinds);
            return Exit.Unusable(
                json,
                new TextFault(
                    "command line",
                    1,
                    1,
                    $"the library has no '{name ?? kind}'",
                    near.Length > 0
                        ? $"perhaps {string.Join(", ", near)}"
                        : $"one of the kinds {string.Join(", ", kinds.Select(k => k.Word()))}"
                )
            );
        }

        Console.Out.Write(
            json ? Json(catalog, entries) + "\n"
            : name is not null ? string.Join('\n', entries.Select(e => Whole(catalog, e)))
            : kind is null ? Kinds(catalog)
            : List(entries)
        );
        return Exit.Done;
    }

    /// <summary>
    /// The kind a word means, "meshes" and "plants" too; null where the library has none of it.
    /// </summary>
    private static EntryKind? Meant(string typed, EntryKind[] kinds)
    {
        var word = typed.ToLowerInvariant();
        var kind = word switch
        {
            "meshes" => EntryKind.Mesh,
            "species" => EntryKind.Animal,
            _ => EntryKinds.Find(Singular(word)),
        };
        return kind is { } known && kinds.Contains(known) ? kind : null;
    }

    private static string Singular(string word) =>
        word.EndsWith('s') && word is not "moss" ? word[..^1] : word;

    private static string Kinds(TradeCatalog catalog)
    {
        var table = new TextTable("kind", "entries", "for example");
        foreach (var group in catalog.Entries.GroupBy(e => e.Kind))
        {
            table.Add(
                group.Key.Word(),
                group.Count().ToString(CultureInfo.InvariantCulture),
                string.Join(", ", group.Take(3).Select(e => e.Key))
            );
        }

        table.Add(
            CoefficientsText.Kind,
            ModelCoefficients.Cited.Length.ToString(CultureInfo.InvariantCulture),
            string.Join(", ", ModelCoefficients.Cited.Take(3).Select(c => c.Key))
        );
        return $"{table}\nlitterfall library KIND lists one kind, litterfall library KIND NAME shows "
            + $"one entry with its sources.\n";
    }

    private static string List(IEnumerable<CatalogEntry> entries)
    {
        var table = new TextTable("key", "name", "also called");
        foreach (var entry in entries)
        {
            table.Add(
                entry.Key,
                entry.Name,
                string.Join(", ", entry.Synonyms) + (entry.IsWorkshops ? " (workshop)" : "")
            );
        }

        return table.ToString();
    }

    private static string Whole(TradeCatalog catalog, CatalogEntry entry)
    {
        var table = new TextTable("value", "", "unit", "provenance", "source", "place");
        foreach (var value in entry.Values)
        {
            table.Add(
                value.Name,
                Shown(value),
                value.Unit?.Symbol ?? "",
                value.Origin.Provenance.Word(),
                value.Origin.Source,
                value.Origin.Place
            );
        }

        var parts = entry.Parts.IsDefaultOrEmpty
            ? ""
            : "  parts by loose volume: "
                + string.Join(
                    ", ",
                    entry.Parts.Select(p =>
                        string.Create(CultureInfo.InvariantCulture, $"{p.Parts:0.##} {p.Material}")
                    )
                )
                + "\n";
        var sources = string.Concat(
            entry
                .Values.Select(v => v.Origin.Source)
                .Distinct()
                .Order(StringComparer.Ordinal)
                .Select(s =>
                    Terminal.Wrapped(
                        $"{s}: {catalog.Sources.GetValueOrDefault(s)?.Title ?? "the workshop's own"}",
                        "  "
                    )
                )
        );
        return $"{entry.Key} ({entry.Kind.Word()}): {Terminal.Clean(entry.Name)}\n"
            + (entry.Note is null ? "" : Terminal.Wrapped(entry.Note, "  "))
            + parts
            + table
            + "\n"
            + sources;
    }

    private static string Shown(CatalogValue value) =>
        value.Number is not { } number ? value.Text!
        : value is { Low: { } low, High: { } high }
            ? string.Create(
                CultureInfo.InvariantCulture,
                $"{number:0.######} ({low:0.######}–{high:0.######})"
            )
        : string.Create(CultureInfo.InvariantCulture, $"{number:0.######}");

    private static string Json(TradeCatalog catalog, IEnumerable<CatalogEntry> entries) =>
        ReportJson.Text(json =>
        {
            json.WriteStartObject();
            json.WriteStartArray("entries");
            foreach (var entry in entries)
            {
                json.WriteStartObject();
                json.WriteString("key", entry.Key);
                json.WriteString("kind", entry.Kind.Word());
                json.WriteString("name", entry.Name);
                json.WriteString("note", entry.Note);
                json.WriteString("material", (entry as PackEntry)?.Material);
                json.WriteBoolean("workshop", entry.IsWorkshops);
                json.WriteStartArray("parts");
                foreach (var part in entry.Parts)
                {
                    json.WriteStartObject();
                    json.WriteString("material", part.Material);
                    json.WriteNumber("parts", part.Parts);
                    json.WriteEndObject();
                }

                json.WriteEndArray();
                json.WriteStartObject("values");
                foreach (var value in entry.Values)
                {
                    WriteValue(json, catalog, value);
                }

                json.WriteEndObject();
                json.WriteEndObject();
            }

            json.WriteEndArray();
            json.WriteEndObject();
        });

    private static void WriteValue(
        System.Text.Json.Utf8JsonWriter json,
        TradeCatalog catalog,
        CatalogValue value
    )
    {
        json.WriteStartObject(value.Name);
        if (value.Number is { } number)
        {
            json.WriteNumber("value", number);
            json.WriteString("unit", value.Unit!.Symbol);
        }
        else
        {
            json.WriteString("text", value.Text);
        }

        if (value is { Low: { } low, High: { } high })
        {
            json.WriteNumber("low", low);
            json.WriteNumber("high", high);
        }

        json.WriteString("source", value.Origin.Source);
        json.WriteString("sourceTitle", catalog.Sources.GetValueOrDefault(value.Origin.Source)?.Title);
        json.WriteString("place", value.Origin.Place);
        json.WriteString("provenance", value.Origin.Provenance.Word());
        json.WriteEndObject();
    }
}
