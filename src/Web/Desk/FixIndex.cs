using System.Globalization;

namespace Litterfall.Web.Desk;

/// <summary>The number in a path such as <c>plants[2].at</c>.</summary>
internal static class FixIndex
{
    /// <summary>The number; null where there is none.</summary>
    public static int? Of(string path)
    {
        var (open, close) = (
            path.IndexOf('[', StringComparison.Ordinal),
            path.IndexOf(']', StringComparison.Ordinal)
        );
        return
            open > 0
            && close > open
            && int.TryParse(
                path.AsSpan(open + 1, close - open - 1),
                NumberStyles.None,
                CultureInfo.InvariantCulture,
                out var i
            )
            ? i
            : null;
    }
}
