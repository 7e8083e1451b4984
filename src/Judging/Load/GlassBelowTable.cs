using System.Globalization;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.Load;

/// <summary>Thinner than the trade's starting table for dry boxes.</summary>
internal static class GlassBelowTable
{
    public static readonly Rule Rule = new(
        "glass-below-table",
        Protects.Build,
        "thinner than the trade's starting table",
        Judge
    )
    {
        Needs = Stage.Shape,
    };

    private static readonly (double Edge, double Thickness)[] Table =
    [
        (0.45, 0.004),
        (0.60, 0.005),
        (0.90, 0.006),
        (1.20, 0.008),
        (1.50, 0.010),
    ];

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        if (n.Box.Walls is null || n.Box.OutsideLength is null)
        {
            yield break;
        }

        var longest = Figure
            .Max(n.Box.OutsideLength, n.Box.OutsideDepth!, n.Box.OutsideHeight!)
            .As("longest edge", Unit.Centimeter);
        var row = Array.Find(Table, t => longest.Si <= t.Edge * 1.03);
        var wanted = row.Thickness > 0 ? row.Thickness : Table[^1].Thickness;
        var limit = Figure.Given(
            "starting thickness for this edge",
            wanted,
            Unit.Millimeter,
            Citation.Habit("starting table: to 45 cm 4 mm, 60 cm 5 mm, 90 cm 6 mm, 120 cm 8 mm, 150 cm 10 mm")
        );
        if (n.Box.Walls.Si < wanted - 1e-9)
        {
            yield return Rule.Found(
                Severity.Note,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"For a longest edge of {longest.Value:0} cm the trade starts from {limit.Value:0} "
                        + $"mm glass; the walls are {n.Box.Walls.Value:0.#} mm. The plate estimate decides, "
                        + $"not the table."
                ),
                (n.Box.Walls, limit),
                "Ask the glazier before ordering thinner panes.",
                "box.glass.walls"
            );
        }
    }
}
