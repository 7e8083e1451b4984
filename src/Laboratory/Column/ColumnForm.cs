using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Domain.Trees;
using Litterfall.Physics.Soil;

namespace Litterfall.Laboratory.Column;

/// <summary>The case of <c>lab column</c>: from the form to engine objects.</summary>
public static class ColumnForm
{
    /// <summary>Most cells of a column.</summary>
    public const int MostCells = 20_000;

    private const int MostReports = 100_000;
    private const int MostLayers = 1000;
    private const int MostValues = 4_000_000;
    private const double LongestHours = 87_660.0; // ten years
    private const double DeepestCm = 1e5;
    private const double ThinnestCm = 1e-4;

    /// <summary>The checked case, or null and faults on the form.</summary>
    public static ColumnCase? Read(TreeForm form)
    {
        var layers = Layers(form);
        bool gravity = form.Flag("gravity", true);
        double hours = form.Number("hours", NumberRange.Positive(LongestHours));
        var reports = Reports(form, hours);
        var (top, rain, evaporation) = EndForms.Top(form);
        var foot = EndForms.Foot(form);
        var (roots, transpiration) = RootForm.Read(form, LabUnits.Cm(layers.Sum(l => l.ThicknessMeters)));
        var start = StartForm.Read(form, layers, gravity);
        form.Close();
        if (!form.IsGood)
        {
            return null;
        }

        bool fineSurface = top is TopBoundary.FixedHead || !evaporation.IsZero;
        var spans = LabSpans.Of(rain, evaporation, transpiration, hours, reports);
        bool longWeather = spans.Length > LabAccuracy.MostSpans;
        var profile = new SoilProfile(LabGrid.Layers(layers, fineSurface, longWeather), roots);
        var columns = new SoilColumns([profile], gravity);
        if ((long)columns.Nodes * reports.Length > MostValues)
        {
            form.Refuse("reportHours", "the result would be too long to print", "fewer hours or fewer cells");
            return null;
        }

        return new ColumnCase
        {
            Columns = columns,
            Shown = ShownPoint.Of(columns, layers, reports.Length),
            Boundaries = new ColumnBoundaries(top!, foot!),
            Start = columns.From((_, depth) => start!.HeadMeters(depth)),
            Spans = spans,
            ReportHours = reports,
        };
    }

    private static ImmutableArray<LabLayer> Layers(TreeForm form)
    {
        var layers = ImmutableArray.CreateBuilder<LabLayer>();
        bool whole = true;
        foreach (var layer in form.Objects("layers", "a layer", MostLayers))
        {
            double thickness = layer.Number("thicknessCm", new NumberRange(1e-3, DeepestCm));
            int cells = layer.Whole("cells", 1, MostCells);
            var soil = layer.Object("soil", "a soil");
            var curve = soil is null ? null : SoilForm.Read(soil);
            layer.Close();
            if (thickness / cells < ThinnestCm)
            {
                layer.Refuse("cells", "the cells are thinner than 0.0001 cm", "fewer cells");
            }

            whole &= curve is not null && !double.IsNaN(thickness);
            if (curve is not null)
            {
                layers.Add(new LabLayer(Known(layers, curve), thickness * LabUnits.MetersPerCm, cells));
            }
        }

        int all = layers.Sum(l => l.Cells);
        if (all > MostCells)
        {
            form.Refuse("layers", $"the layers ask for {all} cells", $"at most {MostCells} cells in all");
        }

        if (layers.Sum(l => l.ThicknessMeters) > DeepestCm * LabUnits.MetersPerCm)
        {
            form.Refuse("layers", "the column is deeper than 1 km", "at most 100000 cm in all");
        }

        return whole ? layers.ToImmutable() : [];
    }

    /// <summary>
    /// Layers of the same soil share its table, and there is no boundary between them to refine at.
    /// </summary>
    private static HydraulicCurve Known(IEnumerable<LabLayer> layers, HydraulicCurve curve) =>
        layers.Select(l => l.Curve).FirstOrDefault(c => IsSame(c, curve)) ?? curve;

    private static bool IsSame(HydraulicCurve a, HydraulicCurve b) =>
        a is VanGenuchten va
            && b is VanGenuchten vb
            && va.Parameters with { Modes = vb.Parameters.Modes } == vb.Parameters
            && va.Parameters.Modes.SequenceEqual(vb.Parameters.Modes)
        || a is Gardner
            && b is Gardner
            && (a.ResidualWaterContent, a.SaturatedWaterContent, At(a, 0.0), At(a, -1.0))
                == (b.ResidualWaterContent, b.SaturatedWaterContent, At(b, 0.0), At(b, -1.0));

    private static double At(HydraulicCurve curve, double headMeters) =>
        curve.ConductivityMetersPerSecond(headMeters);

    private static ImmutableArray<double> Reports(TreeForm form, double hours)
    {
        var reports = form.Numbers("reportHours", NumberRange.UpTo(LongestHours), MostReports, [hours]);
        for (int i = 0; i < reports.Length; i++)
        {
            if (reports[i] > hours)
            {
                string late = reports[i].ToString(CultureInfo.InvariantCulture);
                form.Refuse("reportHours", $"hour {late} is after the end", "hours from 0 to 'hours'");
                break;
            }

            if (i > 0 && reports[i] <= reports[i - 1])
            {
                string next = reports[i].ToString(CultureInfo.InvariantCulture);
                form.Refuse("reportHours", $"hour {next} does not come after the one before", "rising hours");
                break;
            }
        }

        return reports;
    }
}
