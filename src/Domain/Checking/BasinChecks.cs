namespace Litterfall.Domain.Checking;

/// <summary>Whether basins fit the floor they are let into.</summary>
internal static class BasinChecks
{
    private const double MostShare = 0.9;
    private const double UsualEdgeMeters = 0.01;

    /// <summary>What is wrong with the basins of a design, each at its place.</summary>
    /// <param name="design">The design.</param>
    public static IEnumerable<(string Path, string Message, string Expected)> Faults(Design design)
    {
        if (design.WaterArea is { } share && (share.Si < 0 || share.Si > MostShare))
        {
            yield return ("waterArea", "the floor needs a part that is not water", "0 to 90 %");
        }

        if (design.Basins.Count == 0 || (design.Box.Inside ?? design.Box.Outside) is not { } edges)
        {
            yield break;
        }

        if (design.WaterArea is not null)
        {
            yield return ("waterArea", "open water is told twice", "basins alone");
        }

        var (length, depth) = (edges.Length.Min(e => e.Si), edges.Depth.Min(e => e.Si));
        var area = design.Basins.Sum(b => b.Length.Si * b.Width.Si);
        if (area > MostShare * length * depth)
        {
            yield return (
                "basins",
                FormattableString.Invariant(
                    $"the basins cover {100 * area / (length * depth):0} % of the floor"
                ),
                "at most 90 % of it"
            );
        }

        for (var i = 0; i < design.Basins.Count; i++)
        {
            foreach (var fault in One(design, (length, depth), i))
            {
                yield return fault;
            }
        }
    }

    private static IEnumerable<(string Path, string Message, string Expected)> One(
        Design design,
        (double Length, double Depth) box,
        int i
    )
    {
        var basin = design.Basins[i];
        var path = FormattableString.Invariant($"basins[{i}]");
        if (basin.Length.Si <= 0 || basin.Width.Si <= 0 || basin.Depth.Si <= 0)
        {
            yield return (path, "the basin has no size", "length, width and depth above 0");
            yield break;
        }

        if (basin.Length.Si > box.Length || basin.Width.Si > box.Depth)
        {
            yield return (path, "the basin is larger than the floor", "length and width inside the box");
        }
        else if (
            basin.At is { } at
            && (Sticks(at.X.Si, basin.Length.Si, box.Length) || Sticks(at.Y.Si, basin.Width.Si, box.Depth))
        )
        {
            yield return (
                $"{path}.at",
                "the basin runs through a wall",
                "its middle, so far inside that it fits"
            );
        }

        var floor = FloorMeters(design.Floor);
        var needs = basin.Depth.Si + (basin.Edge?.Si ?? UsualEdgeMeters);
        if (needs > floor + 1e-9)
        {
            yield return (
                $"{path}.depth",
                FormattableString.Invariant(
                    $"water and edge are {100 * needs:0.#} cm, soil and drainage {100 * floor:0.#} cm"
                ),
                "a basin that stands in the floor, its edge level with the soil"
            );
        }

        for (var k = 0; k < i; k++)
        {
            if (Overlaps(basin, design.Basins[k]))
            {
                yield return (
                    $"{path}.at",
                    FormattableString.Invariant($"the basin lies over basin {k + 1}"),
                    "basins beside each other"
                );
            }
        }
    }

    private static bool Sticks(double middle, double size, double edge) =>
        middle - (0.5 * size) < -1e-9 || middle + (0.5 * size) > edge + 1e-9;

    private static bool Overlaps(Basin a, Basin b) =>
        a.At is { } one
        && b.At is { } two
        && Math.Abs(one.X.Si - two.X.Si) < 0.5 * (a.Length.Si + b.Length.Si) - 1e-9
        && Math.Abs(one.Y.Si - two.Y.Si) < 0.5 * (a.Width.Si + b.Width.Si) - 1e-9;

    /// <summary>Drainage and the deepest soil, m.</summary>
    private static double FloorMeters(Floor floor)
    {
        var below = (floor.Drainage?.Raised ?? floor.Drainage?.Depth)?.Si ?? 0;
        if (floor.Soil is not { } soil)
        {
            return below;
        }

        double[] depths =
        [
            soil.Depth?.Si ?? 0,
            soil.Front?.Si ?? 0,
            soil.Back?.Si ?? 0,
            .. soil.Zones.SelectMany(z => new[] { z.Depth?.Si ?? 0, z.Front?.Si ?? 0, z.Back?.Si ?? 0 }),
        ];
        return below + depths.Max();
    }
}
