using System.Text.Json.Nodes;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Units;

namespace Litterfall.Domain.DesignFile;

/// <summary>
/// The JSON Schema (2020-12) of the design file, generated from the same shapes the reader uses.
/// </summary>
public static class DesignSchema
{
    /// <summary>
    /// The schema; catalog keys are offered for completion, a workshop's own keys stay allowed.
    /// </summary>
    public static JsonObject Write(TradeCatalog catalog)
    {
        var definitions = new JsonObject();
        var root = Record(typeof(Design), catalog, definitions);
        var schema = new JsonObject
        {
            ["$schema"] = "https://json-schema.org/draft/2020-12/schema",
            ["$id"] = "urn:litterfall:design:1",
            ["title"] = "Litterfall design file",
        };
        foreach (var (key, node) in root.ToList())
        {
            root.Remove(key);
            schema[key] = node;
        }

        schema["$defs"] = definitions;
        return schema;
    }

    private static JsonObject Record(Type type, TradeCatalog catalog, JsonObject definitions)
    {
        var shape = FileShape.Of(type);
        var properties = new JsonObject();
        foreach (var member in shape.Members)
        {
            foreach (var key in member.Also.Prepend(member.Key))
            {
                var value = Member(member, catalog, definitions);
                if (Range(type, member) is { } range)
                {
                    value["description"] = $"{member.Means} Takes {range}.";
                }

                properties[key] = value;
            }
        }

        var record = new JsonObject
        {
            ["type"] = "object",
            ["description"] = shape.Means,
            ["properties"] = properties,
        };
        var required = shape.Members.Where(m => m.IsRequired).Select(m => (JsonNode)m.Key).ToArray();
        if (required.Length > 0)
        {
            record["required"] = new JsonArray(required);
        }

        record["additionalProperties"] = false;
        return record;
    }

    /// <summary>What a key takes, beyond what its form says; null where it takes all.</summary>
    private static string? Range(Type type, FileMember member) =>
        member.Type == typeof(DateOnly)
            ? PlausibleRanges.Dates
            : PlausibleRanges.Find(type, member.Key)?.Words;

    private static JsonObject Member(FileMember member, TradeCatalog catalog, JsonObject definitions)
    {
        var value = member.IsList
            ? List(member, catalog, definitions)
            : One(member.Type, member, catalog, definitions);
        var choices = new JsonArray { value };
        if (member.AcceptsNone)
        {
            choices.Add(new JsonObject { ["const"] = "none" });
        }

        return choices.Count == 1
            ? Described(value, member, choices)
            : new JsonObject { ["description"] = member.Means, ["anyOf"] = choices };
    }

    private static JsonObject Described(JsonObject value, FileMember member, JsonArray choices)
    {
        choices.Clear();
        value["description"] = member.Means;
        return value;
    }

    private static JsonObject List(FileMember member, TradeCatalog catalog, JsonObject definitions)
    {
        var item = member.Type.GenericTypeArguments[0];
        var list = new JsonObject
        {
            ["type"] = "array",
            ["minItems"] = 1,
            ["maxItems"] = member.MostItems,
            ["items"] = One(item, member, catalog, definitions),
        };
        return FileTypes.IsRecord(item)
            ? list
            : new JsonObject { ["anyOf"] = new JsonArray(One(item, member, catalog, definitions), list) };
    }

    private static JsonObject One(Type type, FileMember member, TradeCatalog catalog, JsonObject definitions)
    {
        if (FileTypes.IsRecord(type))
        {
            if (!definitions.ContainsKey(type.Name))
            {
                definitions[type.Name] = new JsonObject();
                definitions[type.Name] = Record(type, catalog, definitions);
            }

            return new JsonObject { ["$ref"] = $"#/$defs/{type.Name}" };
        }

        if (FileTypes.KindOf(type) is { } kind)
        {
            return Quantity(kind);
        }

        return member.Kinds.Length > 0 ? CatalogKey(member.Kinds, catalog) : Plain(type, member);
    }

    private static JsonObject Plain(Type type, FileMember member) =>
        type.IsEnum
            ? new JsonObject
            {
                ["enum"] = new JsonArray([
                    .. FileMember
                        .EnumValues(type)
                        .SelectMany(v =>
                            new[] { FileMember.EnumWord(v), FileMember.EnumWord(v).Replace('-', ' ') }
                        )
                        .Distinct()
                        .Select(word => (JsonNode)word),
                ]),
            }
        : type == typeof(int)
            ? new JsonObject
            {
                ["type"] = "integer",
                ["minimum"] = member.Whole?.From ?? 0,
                ["maximum"] = member.Whole?.To ?? int.MaxValue,
            }
        : type == typeof(bool) ? new JsonObject { ["type"] = "boolean" }
        : type == typeof(DateOnly) ? Pattern("^\\d{4}-\\d{2}-\\d{2}$")
        : type == typeof(TimeOnly) ? Pattern("^\\d{1,2}:\\d{2}$")
        : new JsonObject
        {
            ["type"] = "string",
            ["minLength"] = 1,
            ["maxLength"] = 200,
        };

    private static JsonObject Pattern(string pattern) => new() { ["type"] = "string", ["pattern"] = pattern };

    private static JsonObject CatalogKey(EntryKind[] kinds, TradeCatalog catalog) =>
        new()
        {
            ["anyOf"] = new JsonArray(
                new JsonObject
                {
                    ["enum"] = new JsonArray([
                        .. catalog.Entries.Where(e => kinds.Contains(e.Kind)).Select(e => (JsonNode)e.Key),
                    ]),
                },
                new JsonObject { ["type"] = "string", ["pattern"] = "^[A-Za-z0-9].*$" }
            ),
        };

    /// <summary>
    /// A number, optional fraction and unit; the reader is stricter about ambiguous commas.
    /// </summary>
    private static JsonObject Quantity(QuantityKind kind)
    {
        const string number = "[-−+]?(\\d+([.,]\\d+)?|\\d+/\\d+|\\d+[ -]\\d+/\\d+|\\d*\\s*[½¼¾⅛⅜⅝⅞])";
        var words = string.Join('|', kind.Words.Select(w => CaseBlind(w.Word)));
        var bare = kind.BareFactor is not null;
        var text = new JsonObject
        {
            ["type"] = "string",
            ["pattern"] = $"^\\s*({number}\\s*({words}){(bare ? "?" : "")}\\s*)+$",
            ["examples"] = new JsonArray(kind.Expected),
        };
        return bare
            ? new JsonObject
            {
                ["anyOf"] = new JsonArray(new JsonObject { ["type"] = "number", ["minimum"] = 0 }, text),
            }
            : text;
    }

    private static string CaseBlind(string word) =>
        string.Concat(
            word.Select(c =>
                char.IsAsciiLetter(c)
                    ? $"[{char.ToLowerInvariant(c)}{char.ToUpperInvariant(c)}]"
                    : c.ToString()
            )
        );
}
