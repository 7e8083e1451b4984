using System.Collections.Immutable;

namespace Litterfall.Physics.Soil;

/// <summary>
/// Ground zones cut into nodes and elements. Nodes stand on every layer boundary, the first at the surface,
/// the last at the foot; the material belongs to the element, so that a node on a boundary carries two half
/// cells with two curves and one head. All zones have the same number of nodes and share the foot: one level
/// below all of them. Values of nodes and elements lie zone beside zone, <c>[node × zones + zone]</c>.
/// </summary>
public sealed class SoilColumns
{
    private readonly double[] elementMeters;
    private readonly int[] elementTable;
    private readonly double[] depthMeters;
    private readonly double[] rootShare;
    private readonly double[] areaShare;
    private readonly CurveTable[] tables;
    private readonly Lazy<ColumnGeometry> geometry;

    /// <summary>Columns of one or more zones.</summary>
    /// <param name="zones">The zones; all with the same number of elements.</param>
    /// <param name="gravity">False for a column that lies flat.</param>
    /// <exception cref="ArgumentException">Sizes do not fit together.</exception>
    public SoilColumns(ImmutableArray<SoilProfile> zones, bool gravity = true)
    {
        if (zones.IsDefaultOrEmpty || Elements(zones[0]) == 0)
        {
            throw new ArgumentException("there must be a zone with an element", nameof(zones));
        }

        if (zones.Any(z => Elements(z) != Elements(zones[0])))
        {
            throw new ArgumentException("all zones must have as many elements", nameof(zones));
        }

        if (Math.Abs(zones.Sum(z => z.AreaShare) - 1.0) > 1e-9 || zones.Any(z => !(z.AreaShare > 0.0)))
        {
            throw new ArgumentException("the shares of the zones must add to 1", nameof(zones));
        }

        if (zones.Any(z => z.Layers.Any(l => l.ElementMeters.Any(t => !(t > 0.0 && double.IsFinite(t))))))
        {
            throw new ArgumentException("every element must be thicker than 0", nameof(zones));
        }

        Profiles = zones;
        HasGravity = gravity;
        Zones = zones.Length;
        Nodes = Elements(zones[0]) + 1;
        elementMeters = new double[(Nodes - 1) * Zones];
        elementTable = new int[elementMeters.Length];
        depthMeters = new double[Nodes * Zones];
        rootShare = new double[Nodes * Zones];
        areaShare = [.. zones.Select(z => z.AreaShare)];
        var curves = zones.SelectMany(z => z.Layers).Select(l => l.Curve).Distinct().ToArray();
        tables = [.. curves.Select(CurveTable.Of)];
        for (int zone = 0; zone < Zones; zone++)
        {
            Fill(zone, curves);
        }

        geometry = new(() => new ColumnGeometry(this));
    }

    /// <summary>What follows from the cells alone.</summary>
    internal ColumnGeometry Geometry => geometry.Value;

    /// <summary>The zones it was made from.</summary>
    public ImmutableArray<SoilProfile> Profiles { get; }

    /// <summary>False for columns that lie flat.</summary>
    public bool HasGravity { get; }

    /// <summary>Number of zones.</summary>
    public int Zones { get; }

    /// <summary>Number of nodes of each zone.</summary>
    public int Nodes { get; }

    /// <summary>Thickness of the elements, m, <c>[element × zones + zone]</c>.</summary>
    public ReadOnlySpan<double> ElementMeters => elementMeters;

    /// <summary>Table of each element, an index into <see cref="Tables"/>.</summary>
    public ReadOnlySpan<int> ElementTable => elementTable;

    /// <summary>Depth of the nodes below the surface, m, <c>[node × zones + zone]</c>.</summary>
    public ReadOnlySpan<double> DepthMeters => depthMeters;

    /// <summary>Share of a zone's root uptake that falls to a node; adds to 1 or 0 in each zone.</summary>
    public ReadOnlySpan<double> RootShare => rootShare;

    /// <summary>Share of the floor of each zone.</summary>
    public ReadOnlySpan<double> AreaShare => areaShare;

    /// <summary>Tables of the materials.</summary>
    public ReadOnlySpan<CurveTable> Tables => tables;

    /// <summary>Depth of the foot of a zone, m.</summary>
    /// <param name="zone">The zone.</param>
    public double LowerBoundaryMeters(int zone) => depthMeters[((Nodes - 1) * Zones) + zone];

    /// <summary>
    /// The state at rest over free water at a height above the foot, negative for below: h = level − height.
    /// </summary>
    /// <param name="levelMeters">Level above the foot, m.</param>
    public ColumnState AtRest(double levelMeters) =>
        From((zone, depth) => levelMeters - (HasGravity ? LowerBoundaryMeters(zone) - depth : 0.0));

    /// <summary>A state from a head at every depth of every zone; the foot takes that of the first.</summary>
    /// <param name="headMeters">Head, m, from zone and depth in m.</param>
    public ColumnState From(Func<int, double, double> headMeters)
    {
        var heads = new double[Nodes * Zones];
        for (int i = 0; i < heads.Length; i++)
        {
            heads[i] = headMeters(i % Zones, depthMeters[i]);
        }

        heads.AsSpan((Nodes - 1) * Zones).Fill(heads[(Nodes - 1) * Zones]);
        return new ColumnState(0.0, ImmutableArray.Create(heads));
    }

    /// <summary>
    /// Water content of a node: what its half cells hold over their thickness, m³/m³; on a boundary between
    /// materials the mean of both.
    /// </summary>
    /// <param name="state">The state.</param>
    /// <param name="node">The node.</param>
    /// <param name="zone">The zone.</param>
    public double WaterContent(ColumnState state, int node, int zone)
    {
        double head = state.HeadMeters[(node * Zones) + zone];
        double water = 0.0;
        double width = 0.0;
        for (int element = Math.Max(node - 1, 0); element <= Math.Min(node, Nodes - 2); element++)
        {
            double half = 0.5 * elementMeters[(element * Zones) + zone];
            water += half * tables[elementTable[(element * Zones) + zone]].WaterContent(head);
            width += half;
        }

        return water / width;
    }

    /// <summary>Water in the soil, m over the whole area, pond and sump left out.</summary>
    /// <param name="state">The state.</param>
    public double StorageMeters(ColumnState state)
    {
        double sum = 0.0;
        for (int i = 0; i < elementMeters.Length; i++)
        {
            var table = tables[elementTable[i]];
            sum +=
                areaShare[i % Zones]
                * 0.5
                * elementMeters[i]
                * (table.WaterContent(state.HeadMeters[i]) + table.WaterContent(state.HeadMeters[i + Zones]));
        }

        return sum;
    }

    private static int Elements(SoilProfile profile) => profile.Layers.Sum(l => l.ElementMeters.Length);

    private void Fill(int zone, HydraulicCurve[] curves)
    {
        int element = 0;
        double depth = 0.0;
        foreach (var layer in Profiles[zone].Layers)
        {
            foreach (double thickness in layer.ElementMeters)
            {
                elementMeters[(element * Zones) + zone] = thickness;
                elementTable[(element * Zones) + zone] = Array.IndexOf(curves, layer.Curve);
                depthMeters[(element * Zones) + zone] = depth;
                depth += thickness;
                element++;
            }
        }

        depthMeters[(element * Zones) + zone] = depth;
        if (Profiles[zone].Roots is { } roots)
        {
            FillRoots(zone, roots);
        }
    }

    /// <summary>Roots are integrated over the half cells exactly, not sampled at nodes.</summary>
    private void FillRoots(int zone, RootZone roots)
    {
        double sum = 0.0;
        for (int node = 0; node < Nodes; node++)
        {
            int i = (node * Zones) + zone;
            double top = node == 0 ? depthMeters[i] : 0.5 * (depthMeters[i - Zones] + depthMeters[i]);
            double foot =
                node == Nodes - 1 ? depthMeters[i] : 0.5 * (depthMeters[i] + depthMeters[i + Zones]);
            rootShare[i] = Math.Max(0.0, Math.Min(foot, roots.ToMeters) - Math.Max(top, roots.FromMeters));
            sum += rootShare[i];
        }

        for (int i = zone; sum > 0.0 && i < rootShare.Length; i += Zones)
        {
            rootShare[i] /= sum;
        }
    }
}
