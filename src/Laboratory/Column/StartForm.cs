using System.Collections.Immutable;
using Litterfall.Domain.Trees;

namespace Litterfall.Laboratory.Column;

/// <summary>The <c>initial</c> heads of a column case, as points joined by straight lines.</summary>
public sealed class StartForm
{
    private static readonly string[] Ways = ["headCm", "waterTableDepthCm", "headsCm"];
    private const double JumpMeters = 1e-8;
    private const double SteepestSmooth = 2.0;
    private readonly double[] depthMeters;
    private readonly double[] headMeters;

    private StartForm(double[] depthMeters, double[] headMeters) =>
        (this.depthMeters, this.headMeters) = (depthMeters, headMeters);

    /// <summary>The initial heads; null and faults when unusable.</summary>
    public static StartForm? Read(TreeForm outer, ImmutableArray<LabLayer> layers, bool gravity)
    {
        if (outer.Object("initial", "the initial state") is not { } form)
        {
            return null;
        }

        if (Ways.Count(form.Has) != 1)
        {
            form.Refuse("the initial state is not given in one way", $"one of {string.Join(", ", Ways)}");
            return null;
        }

        StartForm? start = null;
        if (form.Has("headCm"))
        {
            double head = form.Number("headCm", EndForms.Heads) * LabUnits.MetersPerCm;
            start = new StartForm([0.0], [head]);
        }
        else if (form.Has("waterTableDepthCm"))
        {
            double depth = form.Number("waterTableDepthCm", NumberRange.Within(EndForms.Heads.Highest));
            depth *= LabUnits.MetersPerCm;
            start = new StartForm([0.0, 1.0], [-depth, 1.0 - depth]);
            if (!gravity)
            {
                form.Refuse("waterTableDepthCm", "without gravity water does not rest so", "headCm");
            }
        }
        else
        {
            start = Cells(form, layers);
        }

        form.Close();
        return start;
    }

    /// <summary>Head at a depth, m.</summary>
    public double HeadMeters(double atMeters)
    {
        int last = depthMeters.Length - 1;
        if (last == 0)
        {
            return headMeters[0];
        }

        int i = Array.BinarySearch(depthMeters, atMeters);
        i = Math.Clamp(i < 0 ? ~i - 1 : i, 0, last - 1);
        double slope = (headMeters[i + 1] - headMeters[i]) / (depthMeters[i + 1] - depthMeters[i]);
        bool isOutside = atMeters < depthMeters[0] || atMeters > depthMeters[last];
        int from = atMeters > depthMeters[last] ? last : i;
        return headMeters[from] + ((isOutside ? Mild(slope) : slope) * (atMeters - depthMeters[from]));
    }

    /// <summary>
    /// The half cells at both ends go on with the slope inside, so that water at rest stays at rest, but no
    /// steeper than rest, so that a jump between the outermost cells does not go on.
    /// </summary>
    private static double Mild(double slope) => Math.Clamp(slope, -1.0, 1.0);

    private static StartForm? Cells(TreeForm form, ImmutableArray<LabLayer> layers)
    {
        var heads = form.Numbers("headsCm", EndForms.Heads, ColumnForm.MostCells);
        int cells = layers.Sum(l => l.Cells);
        if (layers.IsEmpty || !form.IsGood)
        {
            return null;
        }

        if (heads.Length != cells)
        {
            form.Refuse("headsCm", $"there are {heads.Length} heads", $"one for each of the {cells} cells");
            return null;
        }

        return Middles(layers, [.. heads.Select(h => h * LabUnits.MetersPerCm)]);
    }

    /// <summary>
    /// Straight lines between the middles of the cells. Where heads jump between two soils, far steeper than
    /// beside it, the jump stands at their boundary: a line across would wet or dry half a cell on each side.
    /// </summary>
    private static StartForm Middles(ImmutableArray<LabLayer> layers, double[] heads)
    {
        var (depths, boundaries) = Depths(layers);
        double Slope(int from) =>
            from >= 0 && from + 1 < depths.Count
                ? (heads[from + 1] - heads[from]) / (depths[from + 1] - depths[from])
                : 0.0;
        var (knots, values) = (new List<double>(), new List<double>());
        for (int i = 0; i < depths.Count; i++)
        {
            knots.Add(depths[i]);
            values.Add(heads[i]);
            double beside = Math.Max(Math.Abs(Slope(i - 1)), Math.Abs(Slope(i + 1)));
            if (
                boundaries.TryGetValue(i, out double boundary)
                && Math.Abs(Slope(i)) > SteepestSmooth * (1.0 + beside)
            )
            {
                double above = boundary - JumpMeters;
                double below = boundary + JumpMeters;
                knots.Add(above);
                values.Add(heads[i] + (Mild(Slope(i - 1)) * (above - depths[i])));
                knots.Add(below);
                values.Add(heads[i + 1] - (Mild(Slope(i + 1)) * (depths[i + 1] - below)));
            }
        }

        return new StartForm([.. knots], [.. values]);
    }

    /// <summary>Middles of all cells, and boundaries to another soil by the cell above.</summary>
    private static (List<double> Middles, Dictionary<int, double> Boundaries) Depths(
        ImmutableArray<LabLayer> layers
    )
    {
        var middles = new List<double>();
        var boundaries = new Dictionary<int, double>();
        double top = 0.0;
        for (int l = 0; l < layers.Length; l++)
        {
            var layer = layers[l];
            for (int i = 0; i < layer.Cells; i++)
            {
                middles.Add(top + ((i + 0.5) * layer.ThicknessMeters / layer.Cells));
            }

            top += layer.ThicknessMeters;
            if (l + 1 < layers.Length && layer.Curve != layers[l + 1].Curve)
            {
                boundaries[middles.Count - 1] = top;
            }
        }

        return (middles, boundaries);
    }
}
