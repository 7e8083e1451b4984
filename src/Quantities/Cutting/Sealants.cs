using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Quantities.Cutting;

/// <summary>Foam cans, silicone cartridges and cure days of one box.</summary>
public sealed record Sealants
{
    /// <summary>Foam to expand in liters; null when nothing is foamed.</summary>
    public Figure? FoamVolume { get; init; }

    /// <summary>Whole cans for all boxes.</summary>
    public Figure? FoamCans { get; init; }

    /// <summary>Silicone in mL.</summary>
    public required Figure Silicone { get; init; }

    /// <summary>Whole cartridges for all boxes.</summary>
    public Figure? Cartridges { get; init; }

    /// <summary>Days from the last bead to planting.</summary>
    public Figure? CureBeforePlanting { get; init; }

    /// <summary>Days from the last bead to animals.</summary>
    public Figure? CureBeforeAnimals { get; init; }

    /// <summary>Reckons what a design needs.</summary>
    public static Sealants Of(CheckedDesign design, BoxGeometry box)
    {
        var foam = design.Find<BackgroundEntry>("background.material")?.PouredFrom?.Text is { } poured
            ? design.Catalog.Find<AdhesiveEntry>(poured)
            : null;
        var silicone = design.Catalog.Find<AdhesiveEntry>("silicone-neutral");
        var volume = foam is null ? null : Foam(box);
        var glue = Glue(design, box, silicone);
        var boxes = design.Count("boxes", "number of boxes", design.Design.Boxes);
        var used = new[] { glue.Si > 0 ? silicone : null, volume is null ? null : foam }
            .OfType<AdhesiveEntry>()
            .ToArray();
        return new Sealants
        {
            FoamVolume = volume,
            FoamCans =
                volume is not null && foam?.CanYield is { } can
                    ? Whole("foam cans", volume * boxes, can)
                    : null,
            Silicone = glue,
            Cartridges = silicone?.Cartridge is { } tube
                ? Whole("silicone cartridges", glue * boxes, tube)
                : null,
            CureBeforePlanting = Longest(
                "days of cure before planting",
                used.Select(e => e.CureBeforePlanting)
            ),
            CureBeforeAnimals = Longest("days of cure before animals", used.Select(e => e.CureBeforeAnimals)),
        };
    }

    private static Figure Foam(BoxGeometry box) =>
        Figure
            .NotNegative((box.GrossFloor - box.OpenFloor) * (box.InsideHeight - box.BackgroundFrom!))
            .As("foam to expand", Unit.Liter);

    /// <summary>Spots that hold the barrier, and glue behind a panel background.</summary>
    private static Figure Glue(CheckedDesign design, BoxGeometry box, AdhesiveEntry? silicone)
    {
        var parts = new List<Figure>();
        if (
            design.Design.Floor.Barrier is not null
            && silicone?.SpotSpacing is { } spacing
            && silicone.SpotVolume is { } spot
        )
        {
            var around = (Figure.Number(2) * (box.OpenLength + box.OpenDepth)).As(
                "edge of the barrier",
                Unit.Centimeter
            );
            parts.Add(around / spacing * spot);
        }

        if (
            box.BackgroundThickness is not null
            && design.Entry<BackgroundEntry>("background.material").AdhesiveCoverage is { } coverage
        )
        {
            var panel = Figure
                .NotNegative(
                    (box.GrossFloor - box.OpenFloor)
                        / box.BackgroundThickness
                        * (box.InsideHeight - box.BackgroundFrom!)
                )
                .As("glued area of the background", Unit.SquareCentimeter);
            parts.Add(
                coverage.Dimension == Unit.Meter.Dimension
                    ? panel * coverage
                    : panel / coverage * Cartridge(silicone)
            );
        }

        return Figure.Total(parts, Unit.Liter.Dimension).As("silicone", Unit.Milliliter);
    }

    /// <summary>One cartridge, where a coverage is given as area per cartridge.</summary>
    private static Figure Cartridge(AdhesiveEntry? silicone) =>
        silicone?.Cartridge ?? Figure.Choice("cartridge", 310, Unit.Milliliter, "the usual cartridge");

    private static Figure Whole(string name, Figure amount, Figure pack) =>
        Figure
            .Computed(
                $"({amount.Equation}) ÷ {pack.Name}, rounded up",
                Math.Max(0, Math.Ceiling(amount.Si / pack.Si - 1e-9)),
                Dimension.None,
                amount,
                pack
            )
            .As(name, Unit.One);

    private static Figure? Longest(string name, IEnumerable<Figure?> cures)
    {
        var days = cures.OfType<Figure>().ToArray();
        return days.Length == 0 ? null : Figure.Max(days).As(name, Unit.Day);
    }
}
