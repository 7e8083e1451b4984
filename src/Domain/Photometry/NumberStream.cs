using System.Globalization;
using Litterfall.Domain.Faults;

namespace Litterfall.Domain.Photometry;

/// <summary>
/// Numbers of a text one after the other, with their place. After the first fault nothing more is read:
/// numbers
/// are then NaN.
/// </summary>
internal sealed class NumberStream
{
    private const int ShownCharacters = 24;

    /// <summary>Angles that lie closer are one: between them no intensity can be read off.</summary>
    private const double LeastDegrees = 1e-6;

    /// <summary>No number of a luminaire file is larger.</summary>
    private const double Largest = 1e12;
    private readonly string name;
    private readonly string[] lines;
    private readonly bool takesDecimalComma;
    private int line;
    private int column;

    /// <param name="name">File name used in messages.</param>
    /// <param name="lines">The lines.</param>
    /// <param name="first">Index of the first line to read.</param>
    /// <param name="takesDecimalComma">
    /// True where a comma stands for a decimal point, else it divides.
    /// </param>
    public NumberStream(string name, string[] lines, int first, bool takesDecimalComma)
    {
        (this.name, this.lines, line, this.takesDecimalComma) = (name, lines, first, takesDecimalComma);
    }

    /// <summary>The first fault.</summary>
    public TextFault? Fault { get; private set; }

    /// <summary>True while nothing is wrong.</summary>
    public bool IsGood => Fault is null;

    /// <summary>Place of the last number read, both from 1.</summary>
    public (int Line, int Column) Place { get; private set; } = (1, 1);

    /// <summary>True where no more words follow.</summary>
    public bool IsAtEnd => Find() is null;

    /// <summary>The next number.</summary>
    /// <param name="what">What it is, for messages.</param>
    public double Next(string what)
    {
        if (Fault is not null)
        {
            return double.NaN;
        }

        if (Find() is not { } word)
        {
            Place = (Math.Max(1, lines.Length), 1);
            Refuse($"the file ends before {what}", "a number");
            return double.NaN;
        }

        Place = (line + 1, column + 1);
        column += word.Length;
        string plain = takesDecimalComma ? word.Replace(',', '.') : word;
        if (
            double.TryParse(plain, NumberStyles.Float, CultureInfo.InvariantCulture, out double value)
            && IsUsable(value)
        )
        {
            // A minus before nothing means nothing.
            return value == 0.0 ? 0.0 : value;
        }

        Refuse($"'{Shown(word)}' stands where {what} should be", "a number");
        return double.NaN;
    }

    /// <summary>The next number, which must be whole and within limits.</summary>
    public int Whole(string what, int least, int most)
    {
        double value = Next(what);
        if (Fault is not null)
        {
            return least;
        }

        if (value == Math.Floor(value) && value >= least && value <= most)
        {
            return (int)value;
        }

        Refuse(
            string.Create(CultureInfo.InvariantCulture, $"{what} is {value:0.######}"),
            string.Create(CultureInfo.InvariantCulture, $"a whole number from {least} to {most}")
        );
        return least;
    }

    /// <summary>Many numbers.</summary>
    public double[] Many(string what, int count)
    {
        double[] values = new double[count];
        for (int i = 0; i < count && IsGood; i++)
        {
            values[i] = Next(what);
        }

        return values;
    }

    /// <summary>Angles that must rise, °.</summary>
    public double[] Angles(string what, int count)
    {
        double[] values = new double[count];
        for (int i = 0; i < count && IsGood; i++)
        {
            values[i] = Next(what);
            if (i > 0 && IsGood && values[i] - values[i - 1] < LeastDegrees)
            {
                Refuse(
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"{what} goes from {values[i - 1]:0.####} to {values[i]:0.####}"
                    ),
                    "angles that rise"
                );
            }
        }

        return values;
    }

    /// <summary>Says that the last number will not do.</summary>
    public void Refuse(string message, string expected) =>
        Fault ??= new TextFault(name, Place.Line, Place.Column, message, expected);

    /// <summary>Says that a line will not do.</summary>
    public void RefuseAt(int lineNumber, string message, string expected) =>
        Fault ??= new TextFault(name, lineNumber, 1, message, expected);

    /// <summary>Words left, at most a few.</summary>
    public List<string> Rest(int most)
    {
        var words = new List<string>();
        while (words.Count < most && Find() is { } word)
        {
            Place = (line + 1, column + 1);
            words.Add(word);
            column += word.Length;
        }

        return words;
    }

    /// <summary>True for a number to compute with: finite, and neither huge nor next to nothing.</summary>
    /// <param name="value">A number.</param>
    public static bool IsUsable(double value) => Math.Abs(value) <= Largest && !double.IsSubnormal(value);

    private static string Shown(string word) =>
        word.Length <= ShownCharacters ? word : word[..ShownCharacters] + "...";

    private bool Divides(char c) => char.IsWhiteSpace(c) || (c == ',' && !takesDecimalComma);

    private string? Find()
    {
        while (line < lines.Length)
        {
            string text = lines[line];
            while (column < text.Length && Divides(text[column]))
            {
                column++;
            }

            if (column < text.Length)
            {
                int end = column;
                while (end < text.Length && !Divides(text[end]))
                {
                    end++;
                }

                return text[column..end];
            }

            line++;
            column = 0;
        }

        return null;
    }
}
