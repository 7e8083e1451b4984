using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Physics.Soil;

namespace Litterfall.Bench.Column;

/// <summary>A soil column read from a case file in cm and hours, as the engine takes it in m and s.</summary>
/// <param name="Columns">One zone.</param>
/// <param name="Boundaries">Open to the air above, fixed head or closed below.</param>
/// <param name="Start">Heads at the start.</param>
/// <param name="Spans">Forcing.</param>
internal sealed record ColumnCase(
    SoilColumns Columns,
    ColumnBoundaries Boundaries,
    ColumnState Start,
    ImmutableArray<ForcingSpan> Spans
)
{
    private const double Cm = 0.01;
    private const double CmPerHour = 0.01 / 3600.0;

    /// <summary>The layers end at 2 and 8 cm; a node on a boundary belongs to both.</summary>
    private static readonly double[] layerEnds = [2.0, 8.0, double.PositiveInfinity];

    /// <summary>Reads a case.</summary>
    /// <param name="path">The file.</param>
    public static ColumnCase Read(string path)
    {
        var rows = File.ReadAllLines(path)
            .Where(line => line.Length > 0 && line[0] != '#')
            .Select(line => line.Split(' ', StringSplitOptions.RemoveEmptyEntries))
            .ToArray();
        double[][] Named(string word) => [.. rows.Where(r => r[0] == word).Select(r => Numbers(r[1..]))];
        double[][] Listed(string word)
        {
            int at = Array.FindIndex(rows, r => r[0] == word);
            return [.. rows.Skip(at + 1).Take((int)Numbers(rows[at][1..])[0]).Select(Numbers)];
        }

        var nodes = Listed("nodes");
        var foot = Named("bot")[0];
        var zone = new SoilProfile(Layers(Named("mat"), nodes), Roots(Named("feddes")[0], nodes));
        return new ColumnCase(
            new SoilColumns([zone]),
            new ColumnBoundaries(
                new TopBoundary.Air(-1000.0, 1000.0),
                foot[0] == 1.0 ? new LowerBoundary.FixedHead(foot[1] * Cm) : new LowerBoundary.Closed()
            ),
            new ColumnState(0.0, [.. nodes.Select(n => n[1] * Cm)]),
            [
                .. Listed("events")
                    .Select(e => new ForcingSpan(
                        e[0] * 3600.0,
                        new SurfaceForcing(e[1] * CmPerHour, e[2] * CmPerHour, e[3] * CmPerHour)
                    )),
            ]
        );
    }

    private static double[] Numbers(string[] words) =>
        [.. words.Select(w => double.Parse(w, CultureInfo.InvariantCulture))];

    private static ImmutableArray<ColumnLayer> Layers(double[][] materials, double[][] nodes)
    {
        var elements = nodes
            .Zip(nodes.Skip(1), (a, b) => (Middle: 0.5 * (a[0] + b[0]), Thickness: (b[0] - a[0]) * Cm))
            .ToLookup(e => Array.FindIndex(layerEnds, end => e.Middle < end), e => e.Thickness);
        return [.. materials.Select((m, i) => new ColumnLayer(Curve(m), [.. elements[i]]))];
    }

    private static VanGenuchten Curve(double[] m) =>
        VanGenuchten.Single((m[0], m[1]), m[2] / Cm, m[3], m[4] * CmPerHour, m[5]);

    /// <summary>Roots are given at nodes: they fill the whole cells of those that have any.</summary>
    private static RootZone? Roots(double[] heads, double[][] nodes)
    {
        int first = Array.FindIndex(nodes, n => n[3] > 0.0);
        int last = Array.FindLastIndex(nodes, n => n[3] > 0.0);
        return first < 0
            ? null
            : new RootZone(
                0.5 * (nodes[first - 1][0] + nodes[first][0]) * Cm,
                0.5 * (nodes[last][0] + nodes[last + 1][0]) * Cm,
                new FeddesHeads(heads[0] * Cm, heads[1] * Cm, heads[2] * Cm, heads[3] * Cm)
            );
    }
}
