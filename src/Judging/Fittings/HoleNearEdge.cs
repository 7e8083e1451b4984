using System.Globalization;
using Litterfall.Domain;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;
using Litterfall.Quantities.Cutting;
using Litterfall.Quantities.Openings;

namespace Litterfall.Judging.Fittings;

/// <summary>A hole too near to the edge of its pane, to another hole or to the joint at the base.</summary>
internal static class HoleNearEdge
{
    private static readonly Citation Standard = new(
        "en-12150-1",
        "as a summary of the 2016 edition gives it: the rim of a hole is over 2 d from an edge and from "
            + "another hole, over 6 d from a corner; fabricators add at least 6 mm",
        Provenance.Read
    );

    private static readonly Figure Times = Figure.Given(
        "rim of a hole to the edge, thicknesses",
        2,
        Unit.One,
        Standard
    );

    private static readonly Figure Least = Figure.Given(
        "rim of a hole to the edge",
        0.006,
        Unit.Millimeter,
        Standard
    );

    public static readonly Rule Rule = new(
        "hole-near-edge",
        Protects.Person,
        "the rim of a hole in glass is nearer to an edge of its pane or to another hole than "
            + FormattableString.Invariant($"{Times.Value:0} thicknesses and {Least.Value:0.#} mm"),
        Judge
    )
    {
        Needs = Stage.Quantities,
    };

    public static readonly Rule Joint = new(
        "hole-in-joint",
        Protects.Person,
        "a hole cuts into the joint at the edge of its pane, or lies beyond it",
        JudgeJoint
    )
    {
        Needs = Stage.Quantities,
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        foreach (var hole in Holes(n).Where(h => h.Distance.Si > 0))
        {
            var least = Figure
                .Max(Times * hole.Thickness, Least)
                .As("least distance of a hole from an edge", Unit.Millimeter);
            if (hole.Distance.Si < least.Si - Gaps.Slack)
            {
                yield return Rule.Found(
                    Severity.Caution,
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"The hole for {hole.For} leaves {hole.Distance.Value:0.#} mm of glass to "
                            + $"{hole.To}; a glazier wants {least.Value:0.#} mm."
                    ),
                    (hole.Distance, least),
                    "Move the hole farther in; a glazier decides, and toughened glass is never drilled.",
                    Place(hole.Key),
                    Standard
                );
            }
        }
    }

    private static IEnumerable<Finding> JudgeJoint(DesignNumbers n)
    {
        foreach (var hole in Holes(n).Where(h => h.Distance.Si <= 0))
        {
            yield return Joint.Found(
                Severity.Stop,
                $"The hole for {hole.For} cuts into {hole.To}: it can be neither drilled nor sealed.",
                (hole.Distance, null),
                "Move the hole so that glass stays all round it.",
                Place(hole.Key),
                Standard
            );
        }
    }

    /// <summary>Each hole in glass with its shortest way to an edge or another hole.</summary>
    private static IEnumerable<EdgeHole> Holes(DesignNumbers n)
    {
        foreach (var part in n.Cuts.Where(c => c.Holes.Length > 0 && c.Thickness is not null))
        {
            if (!SheetKind.IsPlastic(n.Design.Catalog.Find<SheetEntry>(part.Material)))
            {
                foreach (var hole in part.Holes)
                {
                    yield return Nearest(hole, part.Holes, (part.Length, part.Width), part.Thickness!);
                }
            }
        }

        if (
            n.Design.Design is { Drain: { Kind: DrainKind.Bulkhead } drain, Box.Panes: PaneSource.Bought }
            && n.Box.Walls is { } walls
            && !SheetKind.IsPlastic(n.Design.Find<SheetEntry>("box.material"))
            && BoxPanes.Hole(n.Design, n.Box, drain.Side ?? Side.Back) is { Diameter: { } across } place
        )
        {
            var run = drain.Side is Side.Left or Side.Right ? n.Box.InsideDepth : n.Box.InsideLength;
            var hole = new CutHole(place.Along, place.Height, across, "drain", "drain");
            yield return Nearest(hole, [hole], (run, n.Box.InsideHeight), walls);
        }
    }

    private static EdgeHole Nearest(
        CutHole hole,
        IEnumerable<CutHole> all,
        (Figure Length, Figure Width) pane,
        Figure thickness
    )
    {
        var radius = hole.Diameter / Figure.Number(2);
        var ways = new List<(Figure Way, string To)>
        {
            (hole.FromBottom - radius, "the joint at the lower edge"),
            (hole.FromLeft - radius, "the left edge"),
            (pane.Length - hole.FromLeft - radius, "the right edge"),
            (pane.Width - hole.FromBottom - radius, "the upper edge"),
        };
        foreach (var other in all.Where(o => o != hole))
        {
            var (x, y) = (other.FromLeft.Si - hole.FromLeft.Si, other.FromBottom.Si - hole.FromBottom.Si);
            var apart = Figure.Computed(
                "distance of the middles",
                Math.Sqrt((x * x) + (y * y)),
                Unit.Meter.Dimension,
                hole.FromLeft,
                hole.FromBottom,
                other.FromLeft,
                other.FromBottom
            );
            ways.Add((apart - radius - other.Diameter / Figure.Number(2), $"the hole for {other.Named}"));
        }

        var (way, to) = ways.MinBy(w => w.Way.Si);
        return new EdgeHole(
            way.As("glass left beside the hole", Unit.Millimeter),
            to,
            thickness,
            hole.Named,
            hole.Key
        );
    }

    /// <summary>A hole is moved up or down, whatever goes through it.</summary>
    private static Control Place(string key) => key.Contains('.') ? key : new Control($"{key}.height", key);

    private sealed record EdgeHole(Figure Distance, string To, Figure Thickness, string For, string Key);
}
