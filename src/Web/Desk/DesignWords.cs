using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.DesignFile;
using Litterfall.Web.Desk.Form;
using Litterfall.Web.Library;

namespace Litterfall.Web.Desk;

/// <summary>What differs between two designs, told as a maker would: by part and field.</summary>
public static class DesignWords
{
    private const int LongestValue = 60;
    private static readonly string[] Named = ["plants", "animals", "ratedFor", "crew", "hardscape", "lamps"];

    /// <summary>"Soil: depth 5 cm → 6 cm", "Added: Fittonia", "Removed: Lamp".</summary>
    /// <param name="one">Before.</param>
    /// <param name="other">After.</param>
    /// <param name="catalog">Gives entries their names.</param>
    public static IEnumerable<string> Of(DesignDocument one, DesignDocument other, TradeCatalog catalog)
    {
        var (before, after) = (Parts(one, catalog), Parts(other, catalog));
        foreach (var (was, now) in Paired(before, after))
        {
            if (was is null || now is null)
            {
                yield return now is null ? $"Removed: {was!.Name}" : $"Added: {now.Name}";
                continue;
            }

            foreach (var line in Fields(was, now, catalog))
            {
                yield return line;
            }
        }

        // What belongs to no part of the form, such as a line that only the design file has.
        foreach (var path in Loose(one, before).Union(Loose(other, after)).Order(StringComparer.Ordinal))
        {
            var (a, b) = (Single(one, path), Single(other, path));
            if (a != b)
            {
                yield return Line("", Plain(path), Told(a, catalog), Told(b, catalog));
            }
        }
    }

    /// <summary>A field by the name of its part and its own.</summary>
    /// <param name="document">The design.</param>
    /// <param name="path">Its path.</param>
    /// <param name="catalog">Gives entries their names.</param>
    public static string Label(DesignDocument document, string path, TradeCatalog catalog)
    {
        foreach (var form in FormBook.Of(document))
        {
            if (form.AllFields.FirstOrDefault(f => f.Path == path) is { } field)
            {
                return $"{NameOf(document, form, catalog)}: {field.Label}";
            }

            if (form.Key == path)
            {
                return NameOf(document, form, catalog);
            }
        }

        return Plain(path);
    }

    /// <summary>Parts of both, those of a list by what they are and not by their number.</summary>
    private static IEnumerable<(Part? Was, Part? Now)> Paired(List<Part> before, List<Part> after)
    {
        var left = new List<Part>(before);
        var right = new List<Part>(after);
        var pairs = new List<(Part, Part)>();
        // First what stayed as it is, then what has its place, then what is of the same kind.
        Func<Part, Part, bool>[] ways =
        [
            (a, b) => a.List == b.List && a.Text == b.Text,
            (a, b) => a.Key == b.Key && a.Name == b.Name,
            (a, b) => a.List.Length > 0 && a.List == b.List && a.Name == b.Name,
            (a, b) => a.List.Length == 0 && a.Key == b.Key,
            (a, b) => a.Key == b.Key && before.Count == after.Count,
        ];
        foreach (var fits in ways)
        {
            foreach (var a in left.ToList())
            {
                if (right.Find(b => fits(a, b)) is { } b)
                {
                    pairs.Add((a, b));
                    left.Remove(a);
                    right.Remove(b);
                }
            }
        }

        return
        [
            .. left.Select(a => ((Part?)a, (Part?)null)),
            .. right.Select(b => ((Part?)null, (Part?)b)),
            .. pairs.OrderBy(p => after.IndexOf(p.Item2)).Select(p => ((Part?)p.Item1, (Part?)p.Item2)),
        ];
    }

    private static IEnumerable<string> Fields(Part was, Part now, TradeCatalog catalog)
    {
        foreach (var path in was.Values.Keys.Union(now.Values.Keys))
        {
            var (a, b) = (was.Values.GetValueOrDefault(path), now.Values.GetValueOrDefault(path));
            if (a != b)
            {
                var label = now.Labels.GetValueOrDefault(path)
                    ?? was.Labels.GetValueOrDefault(path)
                    ?? Plain(path);
                yield return Line(now.Name, label, Told(a, catalog), Told(b, catalog));
            }
        }
    }

    private static string Line(string part, string label, string? was, string? now)
    {
        var head = part.Length == 0 ? label : $"{part}: {label}";
        return was is null ? $"{head} {now}"
            : now is null ? $"{head} {was} left out"
            : $"{head} {was} → {now}";
    }

    private static List<Part> Parts(DesignDocument document, TradeCatalog catalog) =>
        [
            .. FormBook
                .Of(document)
                .Where(form => form.IsThere)
                .Select(form => new Part(
                    form.Key,
                    form.Key.EndsWith(']') ? form.Key[..form.Key.LastIndexOf('[')] : "",
                    NameOf(document, form, catalog),
                    TypedLength.TextAt(document, form.Key),
                    Values(document, form),
                    form.AllFields.DistinctBy(f => Within(f.Path, form.Key))
                        .ToImmutableDictionary(f => Within(f.Path, form.Key), f => f.Label)
                )),
        ];

    /// <summary>One of several is called by what it is: "Pilea", not "Plant 2"; a vent by its side.</summary>
    private static string NameOf(DesignDocument document, PartForm form, TradeCatalog catalog)
    {
        var list = form.Key.EndsWith(']') ? form.Key[..form.Key.LastIndexOf('[')] : "";
        var side = TypedLength.TextAt(document, form.Key + ".side");
        var entry = Named.Contains(list)
            ? form.AllFields.FirstOrDefault(f => f.Form == FieldForm.Entry)
            : null;
        var key = entry is null ? "" : TypedLength.TextAt(document, entry.Path);
        return key.Length > 0 && catalog.Find(key) is { } found ? EntryWords.Common(found)
            : list.Length > 0 && side.Length > 0 ? $"{Short(form.Name)}, {side}"
            : Short(form.Name);
    }

    private static ImmutableDictionary<string, string> Values(DesignDocument document, PartForm form)
    {
        var fields = form.AllFields.Select(f => f.Path).ToHashSet(StringComparer.Ordinal);
        return document
            .Spans.Keys.Where(path => fields.Contains(path) || IsWithin(path, form.Key))
            .Select(path => (Path: Within(path, form.Key), Text: Single(document, path)))
            .Where(v => v.Text is not null)
            .DistinctBy(v => v.Path)
            .ToImmutableDictionary(v => v.Path, v => v.Text!);
    }

    private static IEnumerable<string> Loose(DesignDocument document, List<Part> parts)
    {
        var told = FormBook
            .Of(document)
            .SelectMany(form => form.AllFields.Select(f => f.Path))
            .ToHashSet(StringComparer.Ordinal);
        return document.Spans.Keys.Where(path =>
            !told.Contains(path)
            && Single(document, path) is not null
            && !parts.Exists(part => IsWithin(path, part.Key))
        );
    }

    private static bool IsWithin(string path, string key) =>
        key.Length > 0
        && (
            path.StartsWith(key + ".", StringComparison.Ordinal)
            || path.StartsWith(key + "[", StringComparison.Ordinal)
        );

    private static string Within(string path, string key) => IsWithin(path, key) ? path[key.Length..] : path;

    /// <summary>The text of a single value; null for a part with keys of its own, or none.</summary>
    private static string? Single(DesignDocument document, string path)
    {
        var text = TypedLength.TextAt(document, path).Trim();
        return
            text.Length == 0
            || text[0] == '{'
            || text.Contains('\n', StringComparison.Ordinal)
            || (text[0] == '[' && text.Contains('{', StringComparison.Ordinal))
            ? null
            : text.Trim('[', ']', ' ', '"', '\'');
    }

    /// <summary>An entry by its name, yes and no in words.</summary>
    private static string? Told(string? text, TradeCatalog catalog)
    {
        if (text is null)
        {
            return null;
        }

        var told = text switch
        {
            "true" => "yes",
            "false" => "no",
            _ => catalog.Find(text)?.Name is { } name ? Short(name) : text,
        };
        return told.Length > LongestValue ? told[..LongestValue] + "…" : told;
    }

    private static string Short(string name) =>
        name.Length > LongestValue ? name[..LongestValue] + "…" : name;

    /// <summary>"floor.barrier.upturn" as "Barrier upturn".</summary>
    private static string Plain(string path)
    {
        var steps = path.Split('.', StringSplitOptions.RemoveEmptyEntries).TakeLast(2);
        var words = new StringBuilder();
        foreach (var c in string.Join(' ', steps))
        {
            _ =
                c is '[' or ']' || char.IsDigit(c) ? words
                : char.IsUpper(c) ? words.Append(' ').Append(char.ToLower(c, CultureInfo.InvariantCulture))
                : words.Append(c);
        }

        var text = words.ToString().Trim();
        return text.Length == 0 ? "Value" : char.ToUpperInvariant(text[0]) + text[1..];
    }

    private sealed record Part(
        string Key,
        string List,
        string Name,
        string Text,
        ImmutableDictionary<string, string> Values,
        ImmutableDictionary<string, string> Labels
    );
}
