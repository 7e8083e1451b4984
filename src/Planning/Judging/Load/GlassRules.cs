using System.Globalization;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Quantities;
using Litterfall.Planning.Sizing;

namespace Litterfall.Planning.Judging.Load;

/// <summary>A pane too thin for a flooded floor can break under a person's hands.</summary>
internal static class GlassTooThin
{
    public static IEnumerable<Finding> Judge(DesignNumbers n) =>
        n
            .Panes.Where(pane => pane.Stress.Si > pane.Allowable.Si)
            .Select(pane => new Finding(
                "glass-too-thin",
                Severity.Stop,
                Protects.Person,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{(pane.Needed is null ? "Under its own weight" : "With the floor flooded")} the "
                        + $"{pane.Pane} "
                        + $"pane is stressed to "
                        + $"{pane.Stress.Value:0.#} MPa, above {pane.Allowable.Value:0.#} MPa. This is an "
                        + $"estimate: ask a glazier."
                ),
                pane.Stress,
                pane.Allowable,
                pane.Needed is { } needed
                    ? string.Create(
                        CultureInfo.InvariantCulture,
                        $"Take glass of at least {needed.Value + 0.2:0.#} mm, or hold the upper edge."
                    )
                    : "Take a thicker lid, or set a bar under its middle."
            )
            {
                Where = pane.Needed is null ? "lid.thickness" : "box.glass.walls",
            });
}

/// <summary>A pane that would not carry the box filled by mistake.</summary>
internal static class GlassNotForWater
{
    public static IEnumerable<Finding> Judge(DesignNumbers n) =>
        n
            .Panes.Where(pane =>
                pane.Stress.Si <= pane.Allowable.Si && pane.LargestWaterDepth?.Si < pane.Height.Si - 1e-6
            )
            .OrderBy(pane => pane.LargestWaterDepth!.Si)
            .Take(1)
            .Select(pane => new Finding(
                "glass-not-for-water",
                Severity.Note,
                Protects.Person,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"The {pane.Pane} pane carries water up to about "
                        + $"{pane.LargestWaterDepth!.Value / 10:0} cm; a blocked drain or misting left on "
                        + $"must not fill the box above that. This is an estimate: ask a glazier."
                ),
                pane.LargestWaterDepth,
                pane.Height,
                "Keep an overflow or a leak alarm below that height."
            )
            {
                Where = "box.glass.walls",
            });
}

/// <summary>Thinner than the trade's starting table for dry boxes.</summary>
internal static class GlassBelowTable
{
    private static readonly (double Edge, double Thickness)[] Table =
    [
        (0.45, 0.004),
        (0.60, 0.005),
        (0.90, 0.006),
        (1.20, 0.008),
        (1.50, 0.010),
    ];

    public static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        if (n.Box.Walls is null || n.Box.OutsideLength is null)
        {
            yield break;
        }

        var longest = Figure
            .Max(n.Box.OutsideLength, n.Box.OutsideDepth!, n.Box.OutsideHeight!)
            .As("longest edge", Units.Centimeter);
        var row = Array.Find(Table, t => longest.Si <= t.Edge * 1.03);
        var wanted = row.Thickness > 0 ? row.Thickness : Table[^1].Thickness;
        var limit = Figure.Given(
            "starting thickness for this edge",
            wanted,
            Units.Millimeter,
            Citation.Habit("starting table: to 45 cm 4 mm, 60 cm 5 mm, 90 cm 6 mm, 120 cm 8 mm, 150 cm 10 mm")
        );
        if (n.Box.Walls.Si < wanted - 1e-9)
        {
            yield return new Finding(
                "glass-below-table",
                Severity.Note,
                Protects.Build,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"For a longest edge of {longest.Value:0} cm the trade starts from {limit.Value:0} "
                        + $"mm glass; the walls are {n.Box.Walls.Value:0.#} mm. The plate estimate decides, "
                        + $"not the table."
                ),
                n.Box.Walls,
                limit,
                "Ask the glazier before ordering thinner panes."
            )
            {
                Where = "box.glass.walls",
            };
        }
    }
}
