using System.Collections.Immutable;
using Litterfall.App.Cases;

namespace Litterfall.App.Labs;

/// <summary>The <c>initial</c> heads of a column case, as points joined by straight lines.</summary>
internal sealed class StartForm
{
    private static readonly string[] Ways = ["headCm", "waterTableDepthCm", "headsCm"];
    private readonly double[] depthMeters;
    private readonly double[] headMeters;

    private StartForm(double[] depthMeters, double[] headMeters) =>
        (this.depthMeters, this.headMeters) = (depthMeters, headMeters);

    /// <summary>The initial heads; null and faults when unusable.</summary>
    public static StartForm? Read(CaseForm outer, ImmutableArray<LabLayer> layers, bool gravity)
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

    private static StartForm? Cells(CaseForm form, ImmutableArray<LabLayer> layers)
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

        var middles = new double[cells];
        double top = 0.0;
        int cell = 0;
        foreach (var layer in layers)
        {
            for (int i = 0; i < layer.Cells; i++)
            {
                middles[cell++] = top + ((i + 0.5) * layer.ThicknessMeters / layer.Cells);
            }

            top += layer.ThicknessMeters;
        }

        return new StartForm(middles, [.. heads.Select(h => h * LabUnits.MetersPerCm)]);
    }
}
