using Litterfall.Documents.Drawings;

namespace Litterfall.Documents.Layout;

/// <summary>How close a page is set: the size of its text and the air around it.</summary>
/// <param name="Points">Size of running text in points, never under 9 on paper.</param>
/// <param name="Air">Factor on every gap.</param>
public sealed record Style(double Points, double Air)
{
    /// <summary>From roomy to tight; a page takes the first that fits on one side.</summary>
    public static readonly IReadOnlyList<Style> RoomyToTight =
    [
        new(10.5, 1),
        new(10, 0.9),
        new(9.5, 0.75),
        new(9, 0.6),
        new(9, 0.35),
        new(9, 0.25),
        new(9, 0.15),
    ];

    /// <summary>The same for cards read at arm's length.</summary>
    public static readonly IReadOnlyList<Style> LargeToTight =
    [
        new(13, 1),
        new(12, 0.9),
        new(11, 0.8),
        .. RoomyToTight,
    ];

    /// <summary>True for a reader of inches, who gets US units first.</summary>
    public bool IsUs { get; init; }

    /// <summary>A text as this reader gets it.</summary>
    /// <param name="text">The text.</param>
    public string Said(string text) => UsUnits.Degrees(IsUs ? UsUnits.Of(text) : text);

    /// <summary>True at the tightest, where tables may run on in the next column.</summary>
    public bool Breaks => Air < 0.5;

    /// <summary>Distance of two baselines in millimeters.</summary>
    public double Line => Points * Lettering.Point * (1.16 + 0.12 * Air);

    /// <summary>A gap in millimeters.</summary>
    public double Gap(double millimeters) => millimeters * Air;
}

/// <summary>A rectangle that takes blocks, in millimeters.</summary>
public readonly record struct Room(double X, double Y, double Width, double Height);

/// <summary>The sheets people have.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Width">Width in millimeters.</param>
/// <param name="Height">Height in millimeters.</param>
public sealed record PaperSize(string Name, double Width, double Height)
{
    /// <summary>ISO 216 A4.</summary>
    public static readonly PaperSize A4 = new("A4", 210, 297);

    /// <summary>ANSI letter, 8.5 × 11 in.</summary>
    public static readonly PaperSize Letter = new("Letter", 215.9, 279.4);
}
