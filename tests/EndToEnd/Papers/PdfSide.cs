using System.Text;
using UglyToad.PdfPig;
using UglyToad.PdfPig.Content;
using UglyToad.PdfPig.Core;
using UglyToad.PdfPig.Tokens;

namespace Litterfall.Tests.EndToEnd.Papers;

/// <summary>A rectangle in millimeters from the upper left corner of the sheet.</summary>
internal readonly record struct Field(double Left, double Top, double Right, double Bottom)
{
    public double Width => Right - Left;

    public double Height => Bottom - Top;
}

/// <summary>A letter as it is read back.</summary>
internal sealed record Sign(string Text, Field Field, double X, double Baseline, double End, Letter Letter);

/// <summary>A run of lines as it is read back.</summary>
/// <param name="Field">Its bounds.</param>
/// <param name="Closed">True when it returns to its start.</param>
/// <param name="Stroked">True when a line is drawn along it.</param>
/// <param name="Corners">How many points it has.</param>
internal sealed record Shape(Field Field, bool Closed, bool Stroked, int Corners);

/// <summary>One side of a paper as PdfPig reads it.</summary>
internal sealed class PdfSide
{
    private const double Millimeters = 25.4 / 72;
    private readonly List<List<string>> lines;
    private readonly List<List<Sign>> levels;

    public PdfSide(Page page)
    {
        (Width, Height) = (page.Width * Millimeters, page.Height * Millimeters);
        Signs = [.. page.Letters.Select(Read)];
        Words = [.. page.GetWords().Select(w => w.Text)];
        Shapes = [.. page.Paths.SelectMany(path => path.Select(part => Read(path, part)).OfType<Shape>())];
        Running = Run();
        levels = [.. Level()];
        lines = [.. levels.Select(Tokens)];
    }

    public double Width { get; }

    public double Height { get; }

    public IReadOnlyList<Sign> Signs { get; }

    /// <summary>Words as PdfPig finds them from the places of the letters alone.</summary>
    public IReadOnlyList<string> Words { get; }

    public IReadOnlyList<Shape> Shapes { get; }

    /// <summary>The text in the order in which it was set, lines joined by blanks.</summary>
    public string Running { get; }

    /// <summary>Lines from top to bottom, each over all columns.</summary>
    public IEnumerable<string> Lines => lines.Select(l => string.Join(' ', l));

    /// <summary>The same lines with the place at which each begins.</summary>
    public IEnumerable<(double Down, double Across, string Text)> Placed =>
        levels
            .Zip(Lines)
            .Where(pair => pair.Second.Length > 0)
            .Select(pair => (pair.First[0].Baseline, pair.First.Min(s => s.X), pair.Second));

    /// <summary>True when these words follow each other on one line.</summary>
    public bool Says(string phrase) =>
        lines.Any(line => $" {string.Join(' ', line)} ".Contains($" {phrase} ", StringComparison.Ordinal));

    /// <summary>
    /// True when a row of a table begins with a name, which may run on in further lines, and has these cells.
    /// </summary>
    public bool HasRow(string name, string cells)
    {
        var words = name.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        return Enumerable
            .Range(1, words.Length)
            .Any(count => Says($"{string.Join(' ', words.Take(count))} {cells}"));
    }

    private Sign Read(Letter letter)
    {
        var box = letter.BoundingBox;
        return new Sign(
            letter.Value,
            Read(box.Left, box.Bottom, box.Right, box.Top),
            letter.StartBaseLine.X * Millimeters,
            Height - letter.StartBaseLine.Y * Millimeters,
            letter.EndBaseLine.X * Millimeters,
            letter
        );
    }

    private Shape? Read(UglyToad.PdfPig.Graphics.PdfPath path, PdfSubpath part)
    {
        if (part.GetBoundingRectangle() is not { } box)
        {
            return null;
        }

        var corners = part.Commands.Count(c => c is PdfSubpath.Line) + 1;
        return new Shape(
            Read(box.Left, box.Bottom, box.Right, box.Top),
            part.IsClosed(),
            path.IsStroked,
            corners
        );
    }

    private Field Read(double left, double bottom, double right, double top) =>
        new(
            Math.Min(left, right) * Millimeters,
            Height - Math.Max(top, bottom) * Millimeters,
            Math.Max(left, right) * Millimeters,
            Height - Math.Min(top, bottom) * Millimeters
        );

    private string Run()
    {
        var text = new StringBuilder();
        Sign? last = null;
        foreach (var sign in Signs)
        {
            if (last is not null && !Follows(last, sign))
            {
                text.Append(' ');
            }

            text.Append(sign.Text);
            last = sign;
        }

        return string.Join(' ', text.ToString().Split(' ', StringSplitOptions.RemoveEmptyEntries));
    }

    private static bool Follows(Sign last, Sign next) =>
        Math.Abs(last.Baseline - next.Baseline) < 0.05 && Math.Abs(next.X - last.End) < 0.15;

    private IEnumerable<List<Sign>> Level()
    {
        var level = Signs.Where(s => s.Letter.TextOrientation == TextOrientation.Horizontal);
        var line = new List<Sign>();
        foreach (var sign in level.OrderBy(s => s.Baseline))
        {
            if (line.Count > 0 && sign.Baseline - line[^1].Baseline > 0.1)
            {
                yield return line;
                line = [];
            }

            line.Add(sign);
        }

        yield return line;
    }

    private static List<string> Tokens(List<Sign> line)
    {
        var text = new StringBuilder();
        Sign? last = null;
        foreach (var sign in line.OrderBy(s => s.X))
        {
            if (last is not null && sign.X - last.End > 0.3)
            {
                text.Append(' ');
            }

            text.Append(sign.Text);
            last = sign;
        }

        return [.. text.ToString().Split(' ', StringSplitOptions.RemoveEmptyEntries)];
    }
}

/// <summary>A paper as PdfPig reads it.</summary>
internal sealed class PdfPaper
{
    private PdfPaper(PdfDocument document)
    {
        Title = document.Information.Title ?? "";
        Sides = [.. document.GetPages().Select(p => new PdfSide(p))];
        Fonts = [.. Dictionaries(document, "Font")];
        Programs = [.. Dictionaries(document, "FontDescriptor").Select(d => Program(document, d))];
    }

    public string Title { get; }

    public IReadOnlyList<PdfSide> Sides { get; }

    /// <summary>Every font dictionary of the file.</summary>
    public IReadOnlyList<DictionaryToken> Fonts { get; }

    /// <summary>The embedded program of every font descriptor; null where there is none.</summary>
    public IReadOnlyList<byte[]?> Programs { get; }

    public static PdfPaper Open(byte[] bytes)
    {
        using var document = PdfDocument.Open(bytes);
        return new PdfPaper(document);
    }

    private static IEnumerable<DictionaryToken> Dictionaries(PdfDocument document, string type) =>
        document
            .Structure.CrossReferenceTable.ObjectOffsets.Keys.Select(k =>
                document.Structure.GetObject(k).Data
            )
            .OfType<DictionaryToken>()
            .Where(d => d.TryGet(NameToken.Type, out NameToken name) && name.Data == type);

    private static byte[]? Program(PdfDocument document, DictionaryToken descriptor)
    {
        foreach (var key in new[] { "FontFile2", "FontFile3", "FontFile" })
        {
            if (
                descriptor.TryGet(NameToken.Create(key), out IndirectReferenceToken reference)
                && document.Structure.GetObject(reference.Data).Data is StreamToken stream
            )
            {
                return stream.Data.ToArray();
            }
        }

        return null;
    }
}
