using Litterfall.Documents.Drawings;
using Litterfall.Documents.Labels;
using Litterfall.Documents.Layout;
using Litterfall.Instructions.Care;
using Litterfall.Quantities.Measures;

namespace Litterfall.Documents.Papers;

/// <summary>A label for each box, to cut out and stick on: its number as a code and as text.</summary>
internal static class TankLabels
{
    private const double Module = 0.8;
    private const double Width = 92;
    private const double Height = 40;
    private const double Gap = 4;
    private const double Pad = 3;
    private const int Columns = 2;

    /// <summary>"box 3 of 8".</summary>
    public static string Which(PaperJob job, int box) =>
        $"box {NumberText.Integer(box)} of {NumberText.Integer(job.Boxes)}";

    /// <summary>Sheets of labels.</summary>
    public static PaperFile Write(PaperJob job)
    {
        var inside = PageFrame.Inside(job.Wish.Size);
        var rows = (int)((inside.Height + Gap) / (Height + Gap));
        return job.Pdf(
            "09-labels.pdf",
            "Labels",
            Enumerable
                .Range(1, job.Boxes)
                .Chunk(rows * Columns)
                .Select(boxes =>
                {
                    var sketch = PageFrame.Framed(job.Wish.Size, job.Head("Labels, to cut out"));
                    for (var i = 0; i < boxes.Length; i++)
                    {
                        var at = new Spot(
                            inside.X + (i % Columns) * (Width + Gap),
                            inside.Y + (i / Columns) * (Height + Gap)
                        );
                        Label(sketch, job, boxes[i], at);
                    }

                    return sketch.Done(job.Wish.Size.Width, job.Wish.Size.Height);
                })
        );
    }

    private static void Label(Sketch sketch, PaperJob job, int box, Spot at)
    {
        var tank = TankNumber.Of(job.Numbers, box);
        sketch.Rectangle(at, Width, Height, Pen.Fine);
        var code = QrMark.Draw(job.Wish.Code(tank), Module);
        sketch.Place(code, new(at.X + Pad, at.Y + (Height - code.Height) / 2));
        var left = at.X + Pad + code.Width + Pad;
        var room = Width - code.Width - 3 * Pad;
        sketch.Add(new TextMark(new(left, at.Y + 10), tank, 13) { Bold = true, Layer = Layers.Label });
        var lines = Lettering.Wrap(Lettering.Clean(job.Numbers.Design.Design.Name), room, 10);
        for (var i = 0; i < Math.Min(2, lines.Count); i++)
        {
            sketch.Text(new(left, at.Y + 17 + 4.5 * i), lines[i], 10);
        }

        if (job.Boxes > 1)
        {
            sketch.Text(new(left, at.Y + 29), Which(job, box), 10);
        }

        sketch.Text(
            new(left, at.Y + 35),
            $"planted {NumberText.Day(job.Plan.Planting)}",
            9,
            Align.Start,
            Tone.Quiet
        );
    }
}
