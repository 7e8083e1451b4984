using Litterfall.Domain.DesignFile;

namespace Litterfall.Web.Desk;

/// <summary>What differs between two design files, value by value.</summary>
public static class TextDifference
{
    /// <summary>Single values that differ, are new, or are gone.</summary>
    public static IEnumerable<string> Of(DesignDocument one, DesignDocument other)
    {
        foreach (var path in one.Spans.Keys.Union(other.Spans.Keys).Order(StringComparer.Ordinal))
        {
            var (a, b) = (Single(one, path), Single(other, path));
            if (a != b && (a is not null || b is not null))
            {
                yield return a is null ? $"{path}: {b} is new"
                : b is null ? $"{path}: {a} is gone"
                : $"{path}: {a} → {b}";
            }
        }
    }

    /// <summary>The text of a single value; null for a part with keys of its own, or none.</summary>
    private static string? Single(DesignDocument document, string path)
    {
        var text = TypedLength.TextAt(document, path);
        return text.Length == 0 || text[0] is '{' or '[' || text.Contains('\n', StringComparison.Ordinal)
            ? null
            : text;
    }
}
