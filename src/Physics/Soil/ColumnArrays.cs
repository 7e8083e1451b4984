namespace Litterfall.Physics.Soil;

/// <summary>
/// Scratch of one run, private to it: values of nodes and elements, zone beside zone, so that the inner
/// loops walk memory in order and many columns can be stepped side by side.
/// </summary>
internal sealed class ColumnArrays
{
    public ColumnArrays(SoilColumns columns)
    {
        int nodes = columns.Nodes * columns.Zones;
        int elements = (columns.Nodes - 1) * columns.Zones;
        Head = new double[nodes];
        OldHead = new double[nodes];
        LastHead = new double[nodes];
        Water = new double[nodes];
        OldWater = new double[nodes];
        Capacity = new double[nodes];
        Residual = new double[nodes];
        Diagonal = new double[nodes];
        Right = new double[nodes];
        Change = new double[nodes];
        Rate = new double[nodes];
        Owed = new double[nodes];
        Given = new double[nodes];
        Upper = new double[elements];
        Lower = new double[elements];
        Top = new CurvePoint[elements];
        Foot = new CurvePoint[elements];
        var geometry = columns.Geometry;
        Width = geometry.Width;
        PerWidth = geometry.PerWidth;
        Knee = geometry.Knee;
        IsSteep = geometry.IsSteep;
        ResidualWater = geometry.ResidualWater;
        LeastCapacity = geometry.LeastCapacity;
    }

    /// <summary>Pressure heads of the iterate, m.</summary>
    public double[] Head { get; }

    /// <summary>Heads at the start of the step, m.</summary>
    public double[] OldHead { get; }

    /// <summary>Heads of the iterate before, m.</summary>
    public double[] LastHead { get; }

    /// <summary>Water of each node, m.</summary>
    public double[] Water { get; }

    /// <summary>Water at the start of the step, less what the last step's equations missed, m.</summary>
    public double[] OldWater { get; }

    /// <summary>Slope of the water with the head.</summary>
    public double[] Capacity { get; }

    /// <summary>What the equations miss, m.</summary>
    public double[] Residual { get; }

    /// <summary>Diagonal of the Jacobian.</summary>
    public double[] Diagonal { get; }

    /// <summary>Right side while it is eliminated, m.</summary>
    public double[] Right { get; }

    /// <summary>Newton's change of the heads, m.</summary>
    public double[] Change { get; }

    /// <summary>Rate of change of the water in the last step, m/s.</summary>
    public double[] Rate { get; }

    /// <summary>What earlier steps missed and no later one has made good yet, m.</summary>
    public double[] Owed { get; }

    /// <summary>What was missed and stands in <see cref="OldWater"/> to be made good, m.</summary>
    public double[] Given { get; }

    /// <summary>Thickness of the half cells of each node together, m.</summary>
    public double[] Width { get; }

    /// <summary>One over <see cref="Width"/>, 1/m: each division costs as much as many products.</summary>
    public double[] PerWidth { get; }

    /// <summary>Head below which a node is updated by its water content, m.</summary>
    public double[] Knee { get; }

    /// <summary>True where a node is updated by its conductivity on the wet side of its knee.</summary>
    public bool[] IsSteep { get; }

    /// <summary>Water of each node at the residual water content, m.</summary>
    public double[] ResidualWater { get; }

    /// <summary>
    /// Least slope in the Jacobian: a node so dry that neither water nor conductivity answers to its head
    /// stays solvable. It does not enter the residual.
    /// </summary>
    public double[] LeastCapacity { get; }

    /// <summary>Slope of the upper node's equation with the lower node's head.</summary>
    public double[] Upper { get; }

    /// <summary>Slope of the lower node's equation with the upper node's head.</summary>
    public double[] Lower { get; }

    /// <summary>Each element's material at its upper node.</summary>
    public CurvePoint[] Top { get; }

    /// <summary>Each element's material at its lower node.</summary>
    public CurvePoint[] Foot { get; }
}
