using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Findings;
using Litterfall.UnitTests.House;
using Xunit;

namespace Litterfall.UnitTests.Judging.Rules;

/// <summary>A posed cube and the two halves of a rule's test.</summary>
internal static class RuleCheck
{
    /// <summary>45 cm outside, 5 mm glass: 44 × 44 × 44.5 cm inside.</summary>
    public const string Cube =
        "{ outside: { length: 45 cm, depth: 45 cm, height: 45 cm }, glass: { walls: 5 mm, base: 5 mm } }";

    /// <summary>A level floor that no rule minds.</summary>
    public const string Floor = "{ soil: { recipe: ready-rainforest, depth: 7 cm } }";

    /// <summary>Three small frogs.</summary>
    public const string Frogs = "animals: [ { animal: epipedobates-anthonyi, count: 3 } ]";

    /// <summary>One design trips the rule, the other is just inside.</summary>
    public static void Check(string slug, Severity severity, PosedDesign trips, PosedDesign inside)
    {
        Trips(slug, severity, trips);
        Assert.Null(inside.Finding(slug));
    }

    /// <summary>The design trips the rule with this severity.</summary>
    public static Finding Trips(string slug, Severity severity, PosedDesign design) =>
        Told(severity, design.Finding(slug));

    /// <summary>A finding is there, as severe as it should be, and well told.</summary>
    public static Finding Told(Severity severity, Finding? finding)
    {
        Assert.NotNull(finding);
        Assert.Equal(severity, finding.Severity);
        Assert.NotEmpty(finding.Where);
        Assert.EndsWith(".", finding.Text, StringComparison.Ordinal);
        Assert.EndsWith(".", finding.Fix, StringComparison.Ordinal);
        Assert.NotEqual("", finding.Source.Place);
        if (finding is { Measured: { } measured, Limit: { } limit })
        {
            Assert.Equal(measured.Dimension, limit.Dimension);
        }

        return finding;
    }

    /// <summary>The cube with a floor, for a workshop with entries and prices of its own.</summary>
    public static PosedDesign PoseFor(Litterfall.Domain.Catalog.Workshop workshop, string floor) =>
        Posed.Text(
            $"litterfall: 1\nname: posed\nbox: {Cube}\nfloor: {floor}\n",
            SampleFiles.Catalog.With(workshop)
        );

    /// <summary>A cube with a floor and more lines; "FROGS" stands for three small frogs.</summary>
    public static PosedDesign Pose(string more, string floor = Floor, string box = Cube) =>
        Posed.Run(box, floor, more.Replace("FROGS", Frogs, StringComparison.Ordinal));
}
