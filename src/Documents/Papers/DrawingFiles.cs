using System.Text;
using Litterfall.Documents.Drawings;
using Litterfall.Documents.Dxf;
using Litterfall.Documents.Svg;
using Litterfall.Quantities.Measures;

namespace Litterfall.Documents.Papers;

/// <summary>Section, plan and front as files of their own, for a workshop and for a screen.</summary>
internal static class DrawingFiles
{
    private static readonly (double, double) Room = (185, 240);

    public static IEnumerable<PaperFile> Write(PaperJob job)
    {
        foreach (
            var (name, drawing) in new[]
            {
                ("section", job.Views.Section(Room)),
                ("plan", job.Views.Plan(Room)),
                ("front", job.Views.Front(Room)),
            }
        )
        {
            yield return Svg(job, name, drawing);
            yield return PaperJob.Text($"drawings/{name}-mm.dxf", DxfWriter.Write(WithBar(drawing), true));
        }
    }

    /// <summary>Light maps, for screens alone: a workshop file has no colors.</summary>
    public static IEnumerable<PaperFile> Light(PaperJob job)
    {
        foreach (
            var (name, drawing) in new[]
            {
                ("light-plan", job.Views.LightPlan(Room)),
                ("light-section", job.Views.LightSection(Room)),
            }
        )
        {
            if (drawing is not null)
            {
                yield return Svg(job, name, drawing);
            }
        }
    }

    private static PaperFile Svg(PaperJob job, string name, Drawing drawing) =>
        new(
            $"drawings/{name}.svg",
            Encoding.UTF8.GetBytes(SvgWriter.Write(drawing, $"{name} of {job.Numbers.Design.Design.Name}"))
        )
        {
            Title = NumberText.Capital(name.Replace('-', ' ')),
            Scale = drawing.Scale,
        };

    /// <summary>The drawing with a line of 100 mm of the thing below it.</summary>
    private static Drawing WithBar(Drawing drawing)
    {
        var sketch = new Sketch();
        sketch.Place(drawing, new(0, 0));
        sketch.Line(
            new(0, drawing.Height + 3),
            new(100 * drawing.Scale, drawing.Height + 3),
            Pen.Fine,
            Layers.Reference
        );
        return sketch.Done(drawing.Width, drawing.Height + 6, drawing.Scale);
    }
}
