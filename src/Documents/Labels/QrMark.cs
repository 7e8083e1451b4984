using System.Collections.Immutable;
using Litterfall.Documents.Drawings;
using QRCoder;

namespace Litterfall.Documents.Labels;

/// <summary>A QR code (ISO/IEC 18004) as one sharp path with its quiet zone.</summary>
public static class QrMark
{
    /// <summary>Modules of the quiet zone on each side; the standard asks for four.</summary>
    public const int Quiet = 4;

    /// <summary>
    /// Draws a text of 0-9, A-Z and $%*+-./: with the error correction for wet benches (Q).
    /// </summary>
    /// <param name="text">What the code holds.</param>
    /// <param name="module">Edge of one module in millimeters; at least 0.5 on a wet bench.</param>
    public static Drawing Draw(string text, double module)
    {
        using var generator = new QRCodeGenerator();
        using var code = generator.CreateQrCode(text, QRCodeGenerator.ECCLevel.Q);
        var rows = code.ModuleMatrix;
        // The matrix of the library carries the quiet zone of four modules already.
        var contours = ImmutableArray.CreateBuilder<Contour>();
        for (var y = 0; y < rows.Count; y++)
        {
            for (var x = 0; x < rows[y].Count;)
            {
                var run = x;
                while (run < rows[y].Count && rows[y][run])
                {
                    run++;
                }

                if (run > x)
                {
                    contours.Add(
                        new(Sketch.Corners(new(x * module, y * module), (run - x) * module, module), true)
                    );
                }

                x = Math.Max(run, x + 1);
            }
        }

        var sketch = new Sketch();
        var size = rows.Count * module;
        sketch.Rectangle(new(0, 0), size, size, null, Tone.Paper);
        sketch.Add(new PathMark(contours.ToImmutable(), []) { Fill = Tone.Ink, Layer = Layers.Label });
        return sketch.Done(size, size);
    }
}
