using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Faults;
using Litterfall.Domain.Findings;

namespace Litterfall.Web.Desk;

/// <summary>What the fixes of findings have in common.</summary>
internal static class FixText
{
    /// <summary>A length at a path, in the unit typed there before.</summary>
    public static Reading<DesignDocument> Length(DesignDocument document, string path, double meters) =>
        DesignEdits.Set(document, path, Written(document, path, meters));

    /// <summary>The same as text, for the words of a fix.</summary>
    public static string Written(DesignDocument document, string path, double meters) =>
        TypedLength.Write(meters, TypedLength.TextAt(document, path), "cm");

    /// <summary>The soil thicker or thinner by as much throughout.</summary>
    /// <param name="document">The design.</param>
    /// <param name="by">By how much, m.</param>
    /// <param name="atFront">At the front alone, where a slope has its own depth there.</param>
    public static Reading<DesignDocument> Soil(DesignDocument document, double by, bool atFront = false)
    {
        var soil = document.Design.Floor.Soil;
        (string Path, double? Now)[] places =
        [
            ("floor.soil.depth", soil?.Depth?.Si),
            ("floor.soil.front", soil?.Front?.Si),
            ("floor.soil.back", atFront ? null : soil?.Back?.Si),
        ];
        var with = new Reading<DesignDocument>(document, []);
        foreach (var (path, now) in places)
        {
            if (now is { } meters && with.Value is { } so)
            {
                with = Length(so, path, Rounded(meters + by));
            }
        }

        return with;
    }

    /// <summary>An edge that was measured once or more, m.</summary>
    public static double Mean(Domain.Lists.Seq<Domain.Units.Typed<Domain.Units.Length>> edge) =>
        edge.Average(e => e.Si);

    /// <summary>Up to the next 5 mm: nobody lays soil finer.</summary>
    public static double Rounded(double meters) => Math.Ceiling((meters * 200.0) - 1e-6) / 200.0;

    /// <summary>How much the limit is above what is there; null where either is missing.</summary>
    public static double? Short(Finding finding) =>
        finding is { Measured: { } measured, Limit: { } limit } ? limit.Si - measured.Si : null;

    /// <summary>How many times what is there the limit is; null where either is missing or nothing.</summary>
    public static double? Times(Finding finding) =>
        finding is { Measured.Si: > 0 and var measured, Limit.Si: > 0 and var limit }
            ? limit / measured
            : null;
}
