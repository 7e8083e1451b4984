using Litterfall.Documents.Drawings;
using SkiaSharp;

namespace Litterfall.Documents.Pdf;

/// <summary>
/// Pages as a PDF with embedded type. The dates in the file are the ones given, so the same pages give the
/// same bytes.
/// </summary>
public static class PdfWriter
{
    private const float PointsPerMillimeter = 72 / 25.4f;

    /// <summary>Writes pages.</summary>
    /// <param name="title">Title of the document.</param>
    /// <param name="day">Date put into the file.</param>
    /// <param name="pages">Pages in order.</param>
    public static byte[] Write(string title, DateOnly day, IEnumerable<Drawing> pages)
    {
        var stamp = day.ToDateTime(TimeOnly.MinValue, DateTimeKind.Utc);
        using var stream = new SKDynamicMemoryWStream();
        var metadata = new SKDocumentPdfMetadata
        {
            Title = Lettering.Clean(title),
            Creator = "Litterfall",
            Producer = "Litterfall",
            Creation = stamp,
            Modified = stamp,
            RasterDpi = 72,
            EncodingQuality = 100,
        };
        using (var document = SKDocument.CreatePdf(stream, metadata))
        {
            foreach (var page in pages)
            {
                var canvas = document.BeginPage(
                    (float)page.Width * PointsPerMillimeter,
                    (float)page.Height * PointsPerMillimeter
                );
                canvas.Scale(PointsPerMillimeter);
                using (var brush = new SkiaBrush(canvas))
                {
                    brush.Draw(page);
                }

                document.EndPage();
            }

            document.Close();
        }

        using var data = stream.DetachAsData();
        return data.ToArray();
    }
}
