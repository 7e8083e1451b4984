using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;

namespace Litterfall.Quantities.Sizing;

/// <summary>
/// Mass in kg and outside volume in m³ of a piece of wood or stone: one entered, the other by density.
/// </summary>
public static class HardscapeSize
{
    private static readonly Figure WoodDensity = Figure.Choice(
        "density of the piece",
        600,
        Unit.KilogramPerCubicMeter,
        "air-dry wood, where the library has no density"
    );

    /// <summary>Outside volume of a piece.</summary>
    public static Figure Volume(CheckedDesign design, int piece) =>
        design.Design.Hardscape[piece].Volume is { } volume
            ? design.Figure($"hardscape[{piece}].volume", "outside volume", volume, Unit.Liter)
            : (Mass(design, piece) / Density(design, piece)).As(
                $"volume of {Name(design, piece)}",
                Unit.Liter
            );

    /// <summary>Mass of a piece.</summary>
    public static Figure Mass(CheckedDesign design, int piece) =>
        design.Design.Hardscape[piece].Mass is { } mass
            ? design.Figure($"hardscape[{piece}].mass", $"mass of {Name(design, piece)}", mass, Unit.Kilogram)
            : (Volume(design, piece) * Density(design, piece)).As(
                $"mass of {Name(design, piece)}",
                Unit.Kilogram
            );

    /// <summary>Name with its number, since two pieces may be of one material.</summary>
    public static string Name(CheckedDesign design, int piece) =>
        $"{design.Entry<HardscapeEntry>($"hardscape[{piece}].material").Name} ({piece + 1})";

    private static Figure Density(CheckedDesign design, int piece) =>
        design.Entry<HardscapeEntry>($"hardscape[{piece}].material").EnvelopeDensity ?? WoodDensity;
}
