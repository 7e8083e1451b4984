using Litterfall.Domain.Checking;
using Litterfall.Domain.Designs;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Quantities;

namespace Litterfall.Planning.Sizing;

/// <summary>Volume that wood and stone take from the layers, in m³.</summary>
public sealed record Displacement(Figure FromDrainage, Figure FromSoil)
{
    /// <summary>
    /// Each piece displaces its buried share; one that stands on the base takes from drainage and soil in the
    /// proportion of their depths.
    /// </summary>
    public static Displacement Of(CheckedDesign design, BoxGeometry box)
    {
        var drainage = new List<Figure>();
        var soil = new List<Figure>();
        var drainageShare = DrainageShare(design);
        for (var i = 0; i < design.Design.Hardscape.Count; i++)
        {
            var buried = Buried(design, i);
            if (SeatOf(design, i) == Seat.Soil)
            {
                soil.Add(buried);
                continue;
            }

            drainage.Add(buried * drainageShare);
            soil.Add(buried * (Figure.Number(1) - drainageShare));
        }

        return new Displacement(
            Figure
                .Total(drainage, Units.Liter.Dimension)
                .As("displaced from the drainage layer", Units.Liter),
            Figure.Total(soil, Units.Liter.Dimension).As("displaced from the soil", Units.Liter)
        );
    }

    /// <summary>What the piece stands on: as entered, else as the catalog says, else the soil.</summary>
    public static Seat SeatOf(CheckedDesign design, int piece) =>
        design.Design.Hardscape[piece].Seat
        ?? (design.Entry($"hardscape[{piece}].material").Text("seat") == "base" ? Seat.Base : Seat.Soil);

    private static Figure Buried(CheckedDesign design, int i)
    {
        var piece = design.Design.Hardscape[i];
        var entry = design.Entry($"hardscape[{i}].material");
        var share = piece.Buried is { } b
            ? design.Figure($"hardscape[{i}].buried", "buried share", b, Units.Percent)
            : SizingPolicy.Buried;
        return (VolumeOf(design, i, entry.Figure("envelopeDensity")) * share).As(
            $"buried volume of {entry.Name} ({i + 1})",
            Units.Liter
        );
    }

    private static Figure VolumeOf(CheckedDesign design, int i, Figure? density)
    {
        var piece = design.Design.Hardscape[i];
        if (piece.Volume is { } volume)
        {
            return design.Figure($"hardscape[{i}].volume", "outside volume", volume, Units.Liter);
        }

        var mass = design.Figure(
            $"hardscape[{i}].mass",
            "mass of the piece",
            piece.Mass!.Value,
            Units.Kilogram
        );
        return mass
            / (
                density
                ?? Figure.Choice(
                    "density of the piece",
                    600,
                    Units.KilogramPerCubicMeter,
                    "air-dry wood, where the catalog has no density"
                )
            );
    }

    private static Figure DrainageShare(CheckedDesign design)
    {
        var drainage = design.Design.Floor.Drainage;
        var deep = drainage?.Raised?.Si ?? drainage?.Depth?.Si ?? 0;
        var soil = design.Design.Floor.Soil is { } s ? SoilDepths.Of(design, s).Mean.Si : 0;
        return Figure
            .Computed(
                "drainage depth ÷ (drainage depth + mean soil depth)",
                deep + soil > 0 ? deep / (deep + soil) : 0,
                Dimension.None
            )
            .As("drainage share of the floor depth", Units.Percent);
    }
}
