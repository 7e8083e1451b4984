using Litterfall.Domain;
using Litterfall.Domain.DesignFile;

namespace Litterfall.Web.Desk;

/// <summary>Sizes that a tank can have, told before a design is kept.</summary>
public static class TankSize
{
    private static readonly PlausibleRange Edge = PlausibleRanges.Find(typeof(Edges), "length")!;

    /// <summary>The smallest and the largest edge in a sentence.</summary>
    public static string Words => $"Each edge of a tank measures {Edge.Words}.";

    /// <summary>One sentence where an edge is too small or too large; null where all can be.</summary>
    /// <param name="document">A design.</param>
    public static string? Refusal(DesignDocument document)
    {
        var edges = document.Design.Box.Inside ?? document.Design.Box.Outside;
        if (edges is null)
        {
            return null;
        }

        foreach (
            var (name, readings) in new[]
            {
                ("length", edges.Length),
                ("depth", edges.Depth),
                ("height", edges.Height),
            }
        )
        {
            if (readings.FirstOrDefault(r => !Edge.Holds(r.Si)) is { Si: > 0 } wrong)
            {
                var how = wrong.Si < Edge.Least ? "small" : "large";
                return $"The {name} of {wrong.Text} is too {how}. {Words}";
            }
        }

        return null;
    }
}
