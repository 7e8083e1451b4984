using Litterfall.Domain;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;

namespace Litterfall.Quantities.Sizing;

/// <summary>Volume that wood and stone take from the layers, in m³.</summary>
public sealed record Displacement(Figure FromDrainage, Figure FromSoil)
{
    /// <summary>
    /// Each piece displaces its buried share; one that stands on the base takes from drainage and soil in the
    /// proportion of their depths.
    /// </summary>
    public static Displacement Of(CheckedDesign design, Figure? drainageDepth, Figure? soilDepth)
    {
        var drainage = new List<Figure>();
        var soil = new List<Figure>();
        var drainageShare = Share(drainageDepth, soilDepth);
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
            Figure.Total(drainage, Unit.Liter.Dimension).As("displaced from the drainage layer", Unit.Liter),
            Figure.Total(soil, Unit.Liter.Dimension).As("displaced from the soil", Unit.Liter)
        );
    }

    /// <summary>What the piece stands on: as entered, else as the catalog says, else the soil.</summary>
    public static Seat SeatOf(CheckedDesign design, int piece) =>
        design.Design.Hardscape[piece].Seat
        ?? (
            design.Entry<HardscapeEntry>($"hardscape[{piece}].material").Seat?.Text == "base"
                ? Seat.Base
                : Seat.Soil
        );

    private static Figure Buried(CheckedDesign design, int i)
    {
        var share = design.Design.Hardscape[i].Buried is { } b
            ? design.Figure($"hardscape[{i}].buried", "buried share", b, Unit.Percent)
            : SizingPolicy.Buried;
        return (HardscapeSize.Volume(design, i) * share).As(
            $"buried volume of {HardscapeSize.Name(design, i)}",
            Unit.Liter
        );
    }

    private static Figure Share(Figure? drainage, Figure? soil) =>
        drainage is null || drainage.Si + (soil?.Si ?? 0) <= 0
            ? Figure.Choice(
                "drainage share of the floor depth",
                0,
                Unit.Percent,
                "there is no drainage layer"
            )
            : (soil is null ? drainage / drainage : drainage / (drainage + soil)).As(
                "drainage share of the floor depth",
                Unit.Percent
            );
}
