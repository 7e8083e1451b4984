using System.Collections.Immutable;
using Litterfall.Domain;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;

namespace Litterfall.Quantities.Sizing;

/// <summary>
/// Masses in kg: dry, planted at squeeze wetness, and wet at its worst (saturated, reservoir full).
/// </summary>
public sealed record Weights
{
    /// <summary>Glass of the box; null when no glass was entered.</summary>
    public Figure? Box { get; init; }

    /// <summary>Lid; null without one or without its thickness.</summary>
    public Figure? Lid { get; init; }

    /// <summary>Doors; null without their kind or thickness.</summary>
    public Figure? Doors { get; init; }

    /// <summary>Shelves inside; null without.</summary>
    public Figure? Shelves { get; init; }

    /// <summary>Everything dry.</summary>
    public required Figure Dry { get; init; }

    /// <summary>The least and the most of it.</summary>
    public required (Figure Low, Figure High) DryBand { get; init; }

    /// <summary>With plants and water at squeeze wetness.</summary>
    public required Figure Planted { get; init; }

    /// <summary>The least and the most of it.</summary>
    public required (Figure Low, Figure High) PlantedBand { get; init; }

    /// <summary>Saturated, reservoir filled to the barrier.</summary>
    public required Figure Wet { get; init; }

    /// <summary>The least and the most of it.</summary>
    public required (Figure Low, Figure High) WetBand { get; init; }

    /// <summary>Water that fills the reservoir to the barrier.</summary>
    public required Figure ReservoirWater { get; init; }

    /// <summary>Water in full basins; null without.</summary>
    public Figure? BasinWater { get; init; }

    /// <summary>What could not be weighed, in words.</summary>
    public ImmutableArray<string> Missing { get; init; } = [];

    /// <summary>Weighs a design.</summary>
    /// <param name="design">The design.</param>
    /// <param name="box">Its sizes.</param>
    /// <param name="layers">Its layers.</param>
    /// <param name="panes">Lid, doors and shelves as they are cut.</param>
    public static Weights Of(
        CheckedDesign design,
        BoxGeometry box,
        ImmutableArray<FloorLayer> layers,
        LoosePanes panes
    )
    {
        var missing = ImmutableArray.CreateBuilder<string>();
        var glass = BoxMass(design, box, panes);
        var dry = new List<Figure>();
        Add(dry, glass, "the box (no glass entered)", missing);
        AddPanes(design, dry, panes, missing);
        foreach (var layer in layers.Where(l => l.Material is not null))
        {
            Add(dry, layer.DryMass, $"the {layer.Layer} (no density in the library)", missing);
        }

        dry.AddRange(
            Enumerable.Range(0, design.Design.Hardscape.Count).Select(i => HardscapeSize.Mass(design, i))
        );
        Add(
            dry,
            BackgroundMass(design, box),
            design.Design.Background is null ? null : "the background (no density)",
            missing
        );
        foreach (var basin in WaterBasins.Of(design, box))
        {
            Add(dry, basin.Mass, "the empty basin (enter its mass)", missing);
        }

        var dryMass = Figure.Total(dry, Unit.Kilogram.Dimension).As("dry mass", Unit.Kilogram);
        var open = WaterBasins.Water(design, box);
        var planted = PlantedMass(design, layers, dryMass, open);
        var reservoir = Reservoir(layers);
        var saturated = Water(layers, l => l.SaturatedWater, "water in the saturated layers");
        var squeezed = Water(layers, l => l.SqueezeWater, "water in the moist layers");
        var wet = (planted + (saturated - squeezed) * SizingPolicy.Water + reservoir * SizingPolicy.Water).As(
            "wet mass at its worst",
            Unit.Kilogram
        );
        var spread = new WeightSpread(glass, panes, dryMass, Plants(design));
        return new Weights
        {
            Box = glass,
            Lid = panes.Lid,
            Doors = panes.Doors,
            Shelves = panes.Shelves,
            Dry = dryMass,
            DryBand = spread.Dry(),
            Planted = planted,
            PlantedBand = spread.Planted(planted, squeezed),
            ReservoirWater = reservoir,
            BasinWater = open,
            Wet = wet,
            WetBand = spread.Wet(wet, saturated + reservoir),
            Missing = missing.ToImmutable(),
        };
    }

    private static void AddPanes(
        CheckedDesign design,
        List<Figure> dry,
        LoosePanes panes,
        ImmutableArray<string>.Builder missing
    )
    {
        Add(dry, panes.Lid, design.Design.Lid is null ? null : "the lid (no thickness entered)", missing);
        dry.AddRange(panes.All.Where(pane => pane != panes.Lid));
        missing.AddRange(panes.Missing);
    }

    private static void Add(
        List<Figure> parts,
        Figure? part,
        string? what,
        ImmutableArray<string>.Builder missing
    )
    {
        if (part is not null)
        {
            parts.Add(part);
        }
        else if (what is not null)
        {
            missing.Add(what);
        }
    }

    private static Figure Plants(CheckedDesign design) =>
        (
            design.Count("plants", "number of plants", design.Design.Plants.Sum(p => p.Count))
            * SizingPolicy.PlantMass
        ).As("mass of the plants", Unit.Kilogram);

    private static Figure PlantedMass(
        CheckedDesign design,
        ImmutableArray<FloorLayer> layers,
        Figure dry,
        Figure? basins
    )
    {
        var plants = Plants(design);
        var moist =
            dry
            + Water(layers, l => l.SqueezeWater, "water in the moist layers") * SizingPolicy.Water
            + plants;
        return (basins is null ? moist : moist + basins * SizingPolicy.Water).As(
            "planted mass",
            Unit.Kilogram
        );
    }

    private static Figure Water(
        ImmutableArray<FloorLayer> layers,
        Func<FloorLayer, Figure?> of,
        string name
    ) =>
        Figure
            .Total([.. layers.Select(of).Where(w => w is not null).Select(w => w!)], Unit.Liter.Dimension)
            .As(name, Unit.Liter);

    private static Figure Reservoir(ImmutableArray<FloorLayer> layers)
    {
        if (layers.FirstOrDefault(l => l.Kind == LayerKind.Drainage) is not { } drainage)
        {
            return Figure.Choice("water in the reservoir", 0, Unit.Liter, "there is no drainage layer");
        }

        return (drainage.Finished * Voids(drainage)).As("water in the full reservoir", Unit.Liter);
    }

    /// <summary>
    /// Share of the drainage layer that free water fills: all of the space under a raised floor.
    /// </summary>
    public static Figure Voids(FloorLayer drainage) =>
        drainage.Material is null
            ? Figure.Choice(
                "open share of a raised floor",
                100,
                Unit.Percent,
                "under a raised floor stands open water"
            )
            : (drainage.Material as AggregateEntry)?.InterparticleVoids ?? SizingPolicy.Voids;

    /// <summary>The walls and the base; doors are weighed apart and take the place of the front.</summary>
    private static Figure? BoxMass(CheckedDesign design, BoxGeometry box, LoosePanes panes)
    {
        if (box.OutsideLength is null || Density(design, "box.material") is not { } density)
        {
            return null;
        }

        var outer = box.OutsideLength * box.OutsideDepth! * box.OutsideHeight!;
        var inner = box.InsideLength * box.InsideDepth * box.InsideHeight;
        var glass = panes.DoorOpening is { } open ? outer - inner - open * box.Walls! : outer - inner;
        // Without a lid a box that opens in front has a top glued between its walls.
        var closed = design.Design is { Lid: null, Box.Opening: Opening.Front }
            ? glass + box.InsideLength * box.InsideDepth * box.Walls!
            : glass;
        return Figure.NotNegative(closed * density).As("mass of the box", Unit.Kilogram);
    }

    /// <summary>Density of a sheet named in the design; float glass where none is named.</summary>
    private static Figure? Density(CheckedDesign design, string path) =>
        (design.Find<SheetEntry>(path) ?? design.Catalog.Find<SheetEntry>("float-glass"))?.Density;

    private static Figure? BackgroundMass(CheckedDesign design, BoxGeometry box)
    {
        if (
            box.BackgroundThickness is null
            || design.Entry<BackgroundEntry>("background.material").Density is not { } density
        )
        {
            return null;
        }

        return Figure
            .NotNegative(
                (box.GrossFloor - box.OpenFloor) * (box.InsideHeight - box.BackgroundFrom!) * density
            )
            .As("mass of the background", Unit.Kilogram);
    }
}
