using System.Collections.Immutable;
using System.Text;
using Litterfall.Domain.Faults;

namespace Litterfall.Domain.Photometry;

/// <summary>Form of the luminous opening of a measured luminaire.</summary>
public enum OpeningForm
{
    /// <summary>A point.</summary>
    Point,

    /// <summary>A line.</summary>
    Line,

    /// <summary>A rectangle, or a box with luminous sides.</summary>
    Rectangle,

    /// <summary>A disc, or a body of revolution about the vertical.</summary>
    Disc,
}

/// <summary>The luminous opening, m: along the 0° plane, along the 90° plane, and up.</summary>
/// <param name="Form">Form.</param>
/// <param name="Along">Along the 0° plane, m.</param>
/// <param name="Across">Along the 90° plane, m.</param>
/// <param name="Height">Height, m.</param>
public readonly record struct LuminousOpening(OpeningForm Form, double Along, double Across, double Height);

/// <summary>
/// A measured luminaire: intensities by direction, type C. Vertical angles count from straight down,
/// horizontal ones
/// counter-clockwise seen from above; cd, everything multiplied out.
/// </summary>
public sealed record LampFile
{
    /// <summary>Largest file read, bytes.</summary>
    public const int LargestFile = 4 * 1024 * 1024;

    /// <summary>Least intensity of the brightest direction, cd: below it a lamp is none.</summary>
    internal const double LeastCandela = 1e-6;

    /// <summary>Most intensity of any direction, cd: beyond all lamps.</summary>
    internal const double MostCandela = 1e9;

    /// <summary>Form of the file, such as "LM-63-2002" or "EULUMDAT".</summary>
    public required string Form { get; init; }

    /// <summary>Vertical angles, °, rising.</summary>
    public required ImmutableArray<double> VerticalDegrees { get; init; }

    /// <summary>Horizontal angles as stored, °, rising: 0; 0 to 90, 180 or 360; or 90 to 270.</summary>
    public required ImmutableArray<double> HorizontalDegrees { get; init; }

    /// <summary>Intensities, cd: all vertical angles of the first horizontal one, then the next.</summary>
    public required ImmutableArray<double> Candela { get; init; }

    /// <summary>The luminous opening.</summary>
    public required LuminousOpening Opening { get; init; }

    /// <summary>Flux of the bare lamps by the file, lm; null where the file is absolute.</summary>
    public double? LampLumens { get; init; }

    /// <summary>Electrical power by the file, W; null where it says 0.</summary>
    public double? Watts { get; init; }

    /// <summary>Keywords and their texts, in the order of the file.</summary>
    public ImmutableArray<(string Key, string Text)> Keywords { get; init; } = [];

    /// <summary>What a reader should know: guesses made, oddities found.</summary>
    public ImmutableArray<string> Notes { get; init; } = [];

    /// <summary>Reads a luminaire file of either form.</summary>
    /// <param name="name">Name used in messages.</param>
    /// <param name="bytes">Its bytes.</param>
    public static Reading<LampFile> Read(string name, ReadOnlySpan<byte> bytes)
    {
        if (bytes.Length > LargestFile)
        {
            return Refused(name, "the luminaire file is too large", "at most 4 MB");
        }

        if (bytes.Contains((byte)0))
        {
            return Refused(name, "the luminaire file is not text", "a text file of LM-63 or EULUMDAT");
        }

        string text = Decode(bytes).TrimStart('\uFEFF').TrimEnd('\u001A');
        if (string.IsNullOrWhiteSpace(text))
        {
            return Refused(name, "the luminaire file is empty", "a text file of LM-63 or EULUMDAT");
        }

        string[] lines = text.ReplaceLineEndings("\n").Split('\n');
        return LooksLikeLm63(lines)
            ? new Lm63Reader(name, lines).Read()
            : new EulumdatReader(name, lines).Read();
    }

    internal static Reading<LampFile> Refused(string name, string message, string expected) =>
        new(null, [new TextFault(name, 1, 1, message, expected)]);

    /// <summary>LM-63 has a line that begins with TILT; the other form never does.</summary>
    private static bool LooksLikeLm63(string[] lines) =>
        Lm63Reader.IsVersion(lines.FirstOrDefault(l => l.Trim().Length > 0) ?? "")
        || lines.Any(Lm63Reader.IsTilt);

    /// <summary>UTF-8, or Latin-1 where it is not: a degree sign occurs in both.</summary>
    private static string Decode(ReadOnlySpan<byte> bytes)
    {
        try
        {
            return new UTF8Encoding(false, true).GetString(bytes);
        }
        catch (DecoderFallbackException)
        {
            return Encoding.Latin1.GetString(bytes);
        }
    }
}
