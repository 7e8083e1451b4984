namespace Litterfall.Physics.Soil;

/// <summary>
/// What follows from the cells of columns alone, made once for all their runs; runs read it and write
/// nothing.
/// </summary>
internal sealed class ColumnGeometry
{
    private const double LeastCapacityPerMeter = 1e-13;

    public ColumnGeometry(SoilColumns columns)
    {
        int nodes = columns.Nodes * columns.Zones;
        Width = new double[nodes];
        Knee = new double[nodes];
        IsSteep = new bool[nodes];
        ResidualWater = new double[nodes];
        LeastCapacity = new double[nodes];
        ElementMeters = columns.ElementMeters.ToArray();
        ElementTable = columns.ElementTable.ToArray();
        Tables = columns.Tables.ToArray();
        RootShare = columns.RootShare.ToArray();
        AreaShare = columns.AreaShare.ToArray();
        IsSteepElement = [.. ElementTable.Select(t => Tables[t].IsSteep)];
        Stress = [.. columns.Profiles.Select(p => p.Roots?.Heads ?? default)];
        RootNodes =
        [
            .. Enumerable
                .Range(0, nodes)
                .Where(i => RootShare[i] != 0.0 && columns.Profiles[i % columns.Zones].Roots is not null),
        ];
        RootZones = [.. RootNodes.Select(i => i % columns.Zones)];
        PerElement = [.. ElementMeters.Select(meters => 1.0 / meters)];
        Fill(columns);
        PerWidth = [.. Width.Select(meters => 1.0 / meters)];
    }

    /// <summary>Thickness of the half cells of each node together, m.</summary>
    public double[] Width { get; }

    /// <summary>One over it, 1/m.</summary>
    public double[] PerWidth { get; }

    /// <summary>Head below which a node is updated by its water content, m.</summary>
    public double[] Knee { get; }

    /// <summary>True where a node is updated by its conductivity on the wet side of its knee.</summary>
    public bool[] IsSteep { get; }

    /// <summary>Water of each node at the residual water content, m.</summary>
    public double[] ResidualWater { get; }

    /// <summary>Least slope in the Jacobian of each node.</summary>
    public double[] LeastCapacity { get; }

    /// <summary>Thickness of the elements, m.</summary>
    public double[] ElementMeters { get; }

    /// <summary>One over it, 1/m.</summary>
    public double[] PerElement { get; }

    /// <summary>Table of each element.</summary>
    public int[] ElementTable { get; }

    /// <summary>Tables of the materials.</summary>
    public CurveTable[] Tables { get; }

    /// <summary>Share of a zone's uptake that falls to each node.</summary>
    public double[] RootShare { get; }

    /// <summary>Share of the floor of each zone.</summary>
    public double[] AreaShare { get; }

    /// <summary>True for elements of steep materials.</summary>
    public bool[] IsSteepElement { get; }

    /// <summary>Heads between which roots of each zone draw.</summary>
    public FeddesHeads[] Stress { get; }

    /// <summary>Nodes with roots.</summary>
    public int[] RootNodes { get; }

    /// <summary>Zone of each of these.</summary>
    public int[] RootZones { get; }

    private void Fill(SoilColumns columns)
    {
        int zones = columns.Zones;
        Array.Fill(Knee, double.PositiveInfinity);
        for (int e = 0; e < ElementMeters.Length; e++)
        {
            double half = 0.5 * ElementMeters[e];
            var table = Tables[ElementTable[e]];
            double knee = table.SteepestHeadMeters;
            IsSteep[e] |= table.IsSteep;
            IsSteep[e + zones] |= table.IsSteep;
            Width[e] += half;
            Width[e + zones] += half;
            double residual = table.Curve.ResidualWaterContent;
            ResidualWater[e] += half * residual;
            ResidualWater[e + zones] += half * residual;
            LeastCapacity[e] += LeastCapacityPerMeter * half;
            LeastCapacity[e + zones] += LeastCapacityPerMeter * half;
            Knee[e] = Math.Min(Knee[e], knee);
            Knee[e + zones] = Math.Min(Knee[e + zones], knee);
        }
    }
}
