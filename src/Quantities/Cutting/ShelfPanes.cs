using System.Collections.Immutable;
using Litterfall.Domain;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Quantities.Openings;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Quantities.Cutting;

/// <summary>A shelf inside the box as it is cut; lengths in meters.</summary>
/// <param name="Name">shelf, or shelf-2 for the second.</param>
/// <param name="Path">Its key in the design.</param>
/// <param name="Sheet">Its material.</param>
/// <param name="Held">What carries it.</param>
public sealed record ShelfPane(string Name, string Path, SheetEntry Sheet, ShelfHold Held)
{
    /// <summary>Along the front.</summary>
    public required Figure Length { get; init; }

    /// <summary>Front to back.</summary>
    public required Figure Depth { get; init; }

    /// <summary>Thickness as ordered.</summary>
    public required Figure Thickness { get; init; }

    /// <summary>What stands on it, kg.</summary>
    public required Figure Load { get; init; }

    /// <summary>Its own mass, kg; null where the library has no density.</summary>
    public Figure? Mass { get; init; }

    /// <summary>Height of its upper face over the base; null where not entered.</summary>
    public Figure? Height { get; init; }

    /// <summary>Its middle from the left inside, m; null where not entered.</summary>
    public double? X { get; init; }

    /// <summary>True where no length was entered.</summary>
    public bool IsWholeLength { get; init; }
}

/// <summary>The shelves inside a box.</summary>
public static class ShelfPanes
{
    /// <summary>All shelves of a design.</summary>
    /// <param name="design">The design.</param>
    /// <param name="box">Its sizes.</param>
    public static ImmutableArray<ShelfPane> Of(CheckedDesign design, BoxGeometry box) =>
        [.. design.Design.Shelves.Select((_, i) => One(design, box, i)).OfType<ShelfPane>()];

    private static ShelfPane? One(CheckedDesign design, BoxGeometry box, int i)
    {
        var shelf = design.Design.Shelves[i];
        var path = FormattableString.Invariant($"shelves[{i}]");
        if (Sheets.Of(design, $"{path}.material") is not { } sheet)
        {
            return null;
        }

        var name = i == 0 ? "shelf" : FormattableString.Invariant($"shelf-{i + 1}");
        var length = shelf.Length is { } typed
            ? design.Figure($"{path}.length", "length of the shelf", typed, Unit.Millimeter)
            : CutList.Fit("length of the shelf", box.InsideLength - Figure.Number(2) * OpeningPolicy.Joint);
        var depth = design.Figure($"{path}.depth", "depth of the shelf", shelf.Depth, Unit.Millimeter);
        var thickness = design.Figure(
            $"{path}.thickness",
            "thickness of the shelf",
            shelf.Thickness,
            Unit.Millimeter
        );
        return new ShelfPane(name, path, sheet, shelf.Held)
        {
            Length = length,
            Depth = depth,
            Thickness = thickness,
            Load = design.Figure($"{path}.load", "load of the shelf", shelf.Load, Unit.Kilogram),
            Mass = sheet.Density is { } density
                ? (length * depth * thickness * density).As($"mass of the {name}", Unit.Kilogram)
                : null,
            Height = shelf.At?.Z is { } height
                ? design.Figure($"{path}.at.z", "height of the shelf", height, Unit.Centimeter)
                : null,
            X = shelf.At?.X.Si,
            IsWholeLength = shelf.Length is null,
        };
    }
}
