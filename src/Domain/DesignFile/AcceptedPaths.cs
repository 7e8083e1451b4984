using System.Globalization;
using Litterfall.Domain.Faults;

namespace Litterfall.Domain.DesignFile;

/// <summary>
/// Acceptances follow the part they were given for: where one before it is taken out, its number falls by
/// one; where it goes itself, its acceptance goes with it.
/// </summary>
internal static class AcceptedPaths
{
    /// <summary>A design after an item of one of its lists was taken out.</summary>
    /// <param name="document">The design without the item.</param>
    /// <param name="path">The item that was taken out, such as "plants[1]".</param>
    public static Reading<DesignDocument> Follow(DesignDocument document, string path)
    {
        var open = path.LastIndexOf('[');
        var list = path[..(open + 1)];
        var gone = int.Parse(path[(open + 1)..^1], CultureInfo.InvariantCulture);
        var with = new Reading<DesignDocument>(document, []);
        for (var i = document.Design.Accepted.Count - 1; i >= 0; i--)
        {
            if (
                with.Value is { } so
                && document.Design.Accepted[i].For is { } place
                && place.StartsWith(list, StringComparison.Ordinal)
                && place.IndexOf(']', open) is > 0 and var close
                && int.TryParse(place.AsSpan(open + 1, close - open - 1), out var index)
                && index >= gone
            )
            {
                var at = string.Create(CultureInfo.InvariantCulture, $"accepted[{i}]");
                with =
                    index == gone
                        ? DesignEdits.Remove(so, at)
                        : DesignEdits.Set(
                            so,
                            $"{at}.for",
                            string.Create(CultureInfo.InvariantCulture, $"{list}{index - 1}{place[close..]}")
                        );
            }
        }

        return with;
    }
}
