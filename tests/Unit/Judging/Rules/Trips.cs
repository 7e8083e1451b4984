using Litterfall.Domain.Findings;
using Xunit;

namespace Litterfall.UnitTests.Judging.Rules;

/// <summary>A roomy box, and the check that a rule trips on one design and not on the next.</summary>
internal static class Trips
{
    /// <summary>Inside 440 × 440 × 445 mm, floor 0.1936 m².</summary>
    public const string Cube =
        "{ outside: { length: 45 cm, depth: 45 cm, height: 45 cm }, glass: { walls: 5 mm, base: 5 mm } }";

    public const string Large =
        "{ outside: { length: 120 cm, depth: 60 cm, height: 60 cm }, glass: { walls: 6 mm } }";

    public const string Soil = "{ soil: { recipe: ready-rainforest, depth: 7 cm } }";

    public static PosedDesign In(string more, string box = Large, string floor = Soil) =>
        Posed.Run(box, floor, more);

    public static string Animals(string animal, int count, string more = "") =>
        FormattableString.Invariant(
            $"animals: [ {{ animal: {animal}, count: {count}{(more.Length > 0 ? ", " + more : "")} }} ]"
        );

    public static Finding Check(string slug, Severity severity, PosedDesign trips, PosedDesign inside)
    {
        var finding = trips.Finding(slug);
        Assert.NotNull(finding);
        Assert.Equal(severity, finding.Severity);
        Assert.NotEmpty(finding.Fix);
        Assert.NotEmpty(finding.Where);
        Assert.Null(inside.Finding(slug));
        return finding;
    }
}
