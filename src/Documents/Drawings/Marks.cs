using System.Collections.Immutable;

namespace Litterfall.Documents.Drawings;

/// <summary>A point in millimeters on paper, x to the right, y down.</summary>
public readonly record struct Spot(double X, double Y)
{
    /// <summary>The point moved by a distance.</summary>
    public Spot Moved(double dx, double dy) => new(X + dx, Y + dy);
}

/// <summary>What a color means; each has one ink on paper.</summary>
public enum Tone
{
    /// <summary>Text and outlines.</summary>
    Ink,

    /// <summary>Remarks and dimensions.</summary>
    Quiet,

    /// <summary>Rules and hatching.</summary>
    Rule,

    /// <summary>A light field behind text.</summary>
    Field,

    /// <summary>The sheet.</summary>
    Paper,

    /// <summary>A stop.</summary>
    Stop,

    /// <summary>A caution.</summary>
    Caution,

    /// <summary>A note.</summary>
    Note,

    /// <summary>All is well.</summary>
    Well,

    /// <summary>Open water.</summary>
    Water,

    /// <summary>Soil and bark.</summary>
    Earth,

    /// <summary>Plants and moss.</summary>
    Leaf,

    /// <summary>Glass.</summary>
    Glass,
}

/// <summary>The inks of the tones, chosen to stay apart in grey print too.</summary>
public static class Inks
{
    /// <summary>Red, green and blue as 0xRRGGBB.</summary>
    public static uint Of(Tone tone) =>
        tone switch
        {
            Tone.Ink => 0x22302B,
            Tone.Quiet => 0x56645D,
            Tone.Rule => 0xB9B2A2,
            Tone.Field => 0xF1ECE0,
            Tone.Paper => 0xFFFFFF,
            Tone.Stop => 0x9B1C31,
            Tone.Caution => 0x7A5000,
            Tone.Note => 0x2F5D8A,
            Tone.Well => 0x2E6B3B,
            Tone.Water => 0x2B6E9E,
            Tone.Earth => 0x6B5335,
            Tone.Leaf => 0x3F6B3F,
            Tone.Glass => 0x7C97A0,
            _ => throw new ArgumentOutOfRangeException(nameof(tone)),
        };
}

/// <summary>A line: its tone, its width in millimeters, and dashes where it is broken.</summary>
/// <param name="Tone">Its color.</param>
/// <param name="Width">Width in millimeters.</param>
/// <param name="Dash">Length of dash and gap in millimeters; 0 for a full line.</param>
public sealed record Pen(Tone Tone, double Width = 0.25, double Dash = 0)
{
    /// <summary>Outlines of what is cut through.</summary>
    public static readonly Pen Strong = new(Tone.Ink, 0.4);

    /// <summary>Outlines of what is seen.</summary>
    public static readonly Pen Thin = new(Tone.Ink, 0.2);

    /// <summary>Dimensions and leaders.</summary>
    public static readonly Pen Fine = new(Tone.Quiet, 0.13);

    /// <summary>Hidden edges.</summary>
    public static readonly Pen Hidden = new(Tone.Quiet, 0.2, 1.2);
}

/// <summary>A run of straight lines; closed ones may be filled.</summary>
public readonly record struct Contour(ImmutableArray<Spot> Spots, bool Closed);

/// <summary>A circle.</summary>
public readonly record struct Ring(Spot Center, double Radius);

/// <summary>Which way a text runs from its point.</summary>
public enum Align
{
    /// <summary>Starts at the point.</summary>
    Start,

    /// <summary>Centered on the point.</summary>
    Middle,

    /// <summary>Ends at the point.</summary>
    End,
}

/// <summary>
/// One mark of a drawing. Each carries the key of the design it shows, so that a reader (and later a hand)
/// can go from the mark to the value behind it, and the layer it lies on in a workshop file.
/// </summary>
public abstract record Mark
{
    /// <summary>Key in the design, such as "floor.soil.front"; "" for furniture of the page.</summary>
    public string Key { get; init; } = "";

    /// <summary>Layer in a workshop file.</summary>
    public string Layer { get; init; } = Layers.Outline;
}

/// <summary>Names of layers in workshop files.</summary>
public static class Layers
{
    /// <summary>Edges to cut.</summary>
    public const string Cut = "CUT";

    /// <summary>Lines to score and snap.</summary>
    public const string Score = "SCORE";

    /// <summary>Outline of the sheet that is cut.</summary>
    public const string Stock = "STOCK";

    /// <summary>Holes.</summary>
    public const string Drill = "DRILL";

    /// <summary>Marks to engrave.</summary>
    public const string Engrave = "ENGRAVE";

    /// <summary>The 100 mm reference.</summary>
    public const string Reference = "REF";

    /// <summary>Outlines of a drawing.</summary>
    public const string Outline = "OUTLINE";

    /// <summary>Hatching.</summary>
    public const string Hatch = "HATCH";

    /// <summary>Dimensions and leaders.</summary>
    public const string Dimension = "DIM";

    /// <summary>Text.</summary>
    public const string Label = "LABEL";
}

/// <summary>Lines and circles drawn with one pen and one filling.</summary>
public sealed record PathMark(ImmutableArray<Contour> Contours, ImmutableArray<Ring> Rings) : Mark
{
    /// <summary>The line; null for a filling alone.</summary>
    public Pen? Pen { get; init; }

    /// <summary>The filling; null for lines alone.</summary>
    public Tone? Fill { get; init; }

    /// <summary>A color of a map, 0xRRGGBB, in place of a tone; null for a tone.</summary>
    public uint? Shade { get; init; }

    /// <summary>How much of the filling shows, from 0 to 1.</summary>
    public double Strength { get; init; } = 1;
}

/// <summary>A line of text at its baseline.</summary>
public sealed record TextMark(Spot At, string Text, double Points) : Mark
{
    /// <summary>Its color.</summary>
    public Tone Tone { get; init; } = Tone.Ink;

    /// <summary>Heavier weight.</summary>
    public bool Bold { get; init; }

    /// <summary>Alignment.</summary>
    public Align Align { get; init; } = Align.Start;

    /// <summary>True when it runs upward instead of to the right.</summary>
    public bool Upright { get; init; }
}

/// <summary>A picture of dots, such as a still or the sign of a workshop, in a rectangle.</summary>
/// <param name="At">Upper left corner.</param>
/// <param name="Width">Width in millimeters.</param>
/// <param name="Height">Height in millimeters.</param>
/// <param name="File">PNG or JPEG.</param>
public sealed record PictureMark(Spot At, double Width, double Height, ImmutableArray<byte> File) : Mark;

/// <summary>A drawing of a fixed size, in millimeters on paper.</summary>
/// <param name="Width">Width in millimeters.</param>
/// <param name="Height">Height in millimeters.</param>
/// <param name="Scale">Millimeters on paper per millimeter of the thing; 1 for a page or a template.</param>
/// <param name="Marks">Marks from back to front.</param>
public sealed record Drawing(double Width, double Height, double Scale, ImmutableArray<Mark> Marks);
