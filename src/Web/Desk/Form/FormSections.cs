using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Domain;
using Litterfall.Domain.DesignFile;

namespace Litterfall.Web.Desk.Form;

/// <summary>Records and lists below a part.</summary>
internal static class FormSections
{
    /// <summary>Sections of a record.</summary>
    /// <param name="document">The design.</param>
    /// <param name="type">The record.</param>
    /// <param name="path">Its path.</param>
    public static IEnumerable<PartSection> Of(DesignDocument document, Type type, string path)
    {
        foreach (var key in DesignKeys.Of(type).Where(k => k.Record is not null && !FormBook.IsInline(k)))
        {
            var at = $"{path}.{key.Name}";
            if (IsApart(key))
            {
                continue;
            }

            if (key.IsList)
            {
                foreach (var section in Several(document, key, at))
                {
                    yield return section;
                }
            }
            else
            {
                yield return One(document, key, at);
            }
        }
    }

    /// <summary>Parts of their own, and the two frames of the box.</summary>
    private static bool IsApart(DesignKey key) =>
        key.Record == typeof(Edges) || key.Record == typeof(Doors) || key.Record == typeof(MistHose);

    private static PartSection One(DesignDocument document, DesignKey key, string at)
    {
        var isThere = document.Spans.ContainsKey(at);
        var mustBegin = !isThere && DesignKeys.Of(key.Record!).Any(k => k.IsRequired);
        return new(at, FormWords.Of(key)!, mustBegin ? [] : [.. FormBook.FieldsOf(key.Record!, at)])
        {
            Begin = mustBegin ? FormBegin.Of(key.Record!) : null,
            CanGo = isThere,
            IsTable = key.Record == typeof(RoomYear),
            Sections = mustBegin ? [] : [.. Of(document, key.Record!, at)],
        };
    }

    private static IEnumerable<PartSection> Several(DesignDocument document, DesignKey key, string at)
    {
        var title = FormWords.Of(key)!;
        for (var i = 0; document.Spans.ContainsKey(Item(at, i)); i++)
        {
            yield return new(
                Item(at, i),
                string.Create(CultureInfo.InvariantCulture, $"{title} {i + 1}"),
                [.. FormBook.FieldsOf(key.Record!, Item(at, i))]
            )
            {
                CanGo = true,
                IsOpen = true,
            };
        }

        yield return new(at, title, []) { Begin = FormBegin.Of(key.Record!), IsList = true };
    }

    private static string Item(string at, int i) => string.Create(CultureInfo.InvariantCulture, $"{at}[{i}]");
}
