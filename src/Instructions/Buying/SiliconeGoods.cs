using Litterfall.Domain;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Quantities.Equipping;
using Litterfall.Quantities.Measures;

namespace Litterfall.Instructions.Buying;

/// <summary>
/// Silicone for everything that is glued: barrier and background as reckoned for the check, joints of a box
/// whose panes are cut, ledges, mesh, and the bed of a pressed cover. One line, so that a rest is not bought
/// three times.
/// </summary>
internal static class SiliconeGoods
{
    private const string Silicone = "silicone-neutral";
    private const string Pack = "pack-silicone-neutral-cartridge";

    /// <summary>Foam that is bought as board, carved and covered.</summary>
    private const string FoamBoard = "foam-board";

    private static readonly Figure Two = Figure.Number(2);
    private static readonly Figure Corners = Figure.Number(4);

    /// <summary>The line; null where nothing is glued.</summary>
    public static ShoppingLine? Of(DesignNumbers numbers)
    {
        var boxes = numbers.Design.Count("boxes", "number of boxes", numbers.Design.Design.Boxes);
        if (numbers.Design.Catalog.Find<AdhesiveEntry>(Silicone) is not { Cartridge: { } tube } entry)
        {
            return null;
        }

        (string For, Figure? Volume)[] parts =
        [
            (
                "barrier and background",
                (boxes * numbers.Sealants.Silicone).As("silicone of the floor", Unit.Milliliter)
            ),
            ("joints, ledges and mesh", Beads(numbers, entry)),
            ("bed of the cover", Bed(numbers, tube)),
        ];
        var used = parts.Where(p => p.Volume is { Si: > 0 }).ToList();
        if (used.Count == 0)
        {
            return null;
        }

        var all = Figure
            .Total([.. used.Select(p => p.Volume!)], Unit.Liter.Dimension)
            .As("silicone of all boxes", Unit.Milliliter);
        var words = used.Select(p => $"{p.For} {NumberText.Milliliters(p.Volume!)}");
        return GoodLines.Priced(
            numbers,
            Pack,
            new ShoppingLine
            {
                Kind = ShoppingKind.Sealant,
                Key = Silicone,
                Item = "neutral-cure silicone, cartridge",
                Pieces = EquipmentPick.Whole("silicone cartridges to buy", all, tube),
                Where = "floor.barrier",
                Note = $"{string.Join(", ", words)}; no mildew inhibitor",
            }
        );
    }

    /// <summary>Face of a background of foam, which gets a pressed cover, of one box; null without.</summary>
    public static Figure? Covered(DesignNumbers numbers)
    {
        var (design, box) = (numbers.Design, numbers.Box);
        return
            box.BackgroundThickness is { } thick
            && design.Find<BackgroundEntry>("background.material") is { } entry
            && (entry.PouredFrom is not null || entry.Key == FoamBoard)
            ? Figure
                .NotNegative(
                    (box.GrossFloor - box.OpenFloor) / thick * (box.InsideHeight - box.BackgroundFrom!)
                )
                .As("face of the background", Unit.SquareMeter)
            : null;
    }

    private static Figure? Beads(DesignNumbers numbers, AdhesiveEntry silicone)
    {
        var box = numbers.Box;
        var boxes = numbers.Design.Count("boxes", "number of boxes", numbers.Design.Design.Boxes);
        var runs = new List<Figure>();
        if (numbers.Design.Design.Box.Panes == PaneSource.Cut)
        {
            runs.Add(
                (
                    boxes
                    * (Two * (box.InsideLength + box.InsideDepth) + Corners * box.InsideHeight).As(
                        "joints of a box",
                        Unit.Meter
                    )
                ).As("joints of the boxes", Unit.Meter)
            );
        }

        foreach (var part in numbers.Cuts)
        {
            if (part.Part.StartsWith("ledge", StringComparison.Ordinal))
            {
                runs.Add((part.Count * part.Length).As("beads under ledges", Unit.Meter));
            }
            else if (part.Part == "vent-mesh")
            {
                runs.Add((part.Count * Two * (part.Length + part.Width)).As("beads round mesh", Unit.Meter));
            }
        }

        return runs.Count == 0 || silicone.BeadVolume is not { } bead
            ? null
            : (
                Figure.Total(runs, Unit.Meter.Dimension).As("beads of joints, ledges and mesh", Unit.Meter)
                * bead
            ).As("silicone of joints, ledges and mesh", Unit.Milliliter);
    }

    private static Figure? Bed(DesignNumbers numbers, Figure tube)
    {
        var boxes = numbers.Design.Count("boxes", "number of boxes", numbers.Design.Design.Boxes);
        return
            Covered(numbers) is { } area
            && numbers.Design.Catalog.Find<BackgroundEntry>("background-cover")?.AdhesiveCoverage
                is { } coverage
            ? (boxes * area / coverage * tube).As("silicone under the cover", Unit.Milliliter)
            : null;
    }
}
