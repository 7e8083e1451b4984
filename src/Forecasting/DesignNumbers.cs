using System.Collections.Immutable;
using Litterfall.Domain.Checking;
using Litterfall.Forecasting.Climate;
using Litterfall.Forecasting.Life;
using Litterfall.Forecasting.Light;
using Litterfall.Forecasting.Water;
using Litterfall.Quantities.Cutting;
using Litterfall.Quantities.Hygiene;
using Litterfall.Quantities.Packs;
using Litterfall.Quantities.Sizing;
using Litterfall.Quantities.Stocking;

namespace Litterfall.Forecasting;

/// <summary>
/// Everything computed from one design, before it is judged. Each number is computed once, when it is first
/// asked for; views of another reach share what has been computed.
/// </summary>
/// <param name="stages">The stages of the design.</param>
/// <param name="reach">How far this view looks.</param>
/// <param name="last">The last stage that may be asked for.</param>
public sealed class DesignNumbers(DesignStages stages, Reach reach, Stage last = Stage.Life)
{
    private FloorWater? water;

    /// <summary>Numbers of a design, all the way.</summary>
    /// <param name="design">The design.</param>
    /// <param name="cancel">Ends what is being computed.</param>
    public DesignNumbers(CheckedDesign design, CancellationToken cancel = default)
        : this(new DesignStages(design, null, cancel), Reach.Whole) { }

    /// <summary>Sizes, quantities and cost of a design: nothing is simulated. Within milliseconds.</summary>
    /// <param name="design">The design.</param>
    /// <param name="earlier">Numbers of an earlier version; those that no change reaches are kept.</param>
    public static DesignNumbers Shape(CheckedDesign design, DesignNumbers? earlier = null) =>
        new(new DesignStages(design, earlier?.Stages), Reach.Shape);

    /// <summary>The same with a month of air and floor, without bands, light and crew.</summary>
    /// <param name="design">The design.</param>
    /// <param name="earlier">Numbers of an earlier version.</param>
    public static DesignNumbers Month(CheckedDesign design, DesignNumbers? earlier = null) =>
        new(new DesignStages(design, earlier?.Stages), Reach.Month);

    /// <summary>The stages behind this view.</summary>
    public DesignStages Stages => stages;

    /// <summary>How far this view looks.</summary>
    public Reach Reach => reach;

    /// <summary>The same numbers, seen only so far.</summary>
    /// <param name="other">How far.</param>
    public DesignNumbers Upto(Reach other) =>
        other == reach ? this : new(stages, other, last) { water = water };

    /// <summary>The same numbers as far as a stage; asking for more is our mistake.</summary>
    /// <param name="stage">The last stage.</param>
    public DesignNumbers Within(Stage stage) =>
        stage == last ? this : new(stages, reach, stage) { water = water };

    /// <summary>The same numbers where the water of the floor were another.</summary>
    /// <param name="other">Water of the floor.</param>
    public DesignNumbers With(FloorWater other) => new(stages, reach, last) { water = other };

    /// <summary>The design.</summary>
    public CheckedDesign Design => stages.Design;

    /// <summary>True sizes.</summary>
    public BoxGeometry Box => stages.Box;

    /// <summary>Layers from the base up.</summary>
    public ImmutableArray<FloorLayer> Layers => stages.Layers;

    /// <summary>Air above them.</summary>
    public AirSpace Headspace => stages.Headspace;

    /// <summary>Climate of the box; null where it cannot be computed, or is not looked at.</summary>
    public ClimateFigures? Climate => From(Stage.WaterAndAir).Climate(reach);

    /// <summary>Light of the box; null without lamps, and where it is not looked at.</summary>
    public LightFigures? Light => From(Stage.Light) is var all && reach == Reach.Whole ? all.Light : null;

    /// <summary>Life of the floor; null without a floor, and where it is not looked at.</summary>
    public LifeFigures? Life =>
        From(Stage.Life) is var all && (reach is Reach.Whole or Reach.WholeWithoutBands)
            ? all.Life(reach)
            : null;

    /// <summary>Water of the floor.</summary>
    public FloorWater Water => water ?? From(Stage.WaterAndAir).Water(reach);

    /// <summary>Masses.</summary>
    public Weights Weights => From(Stage.Quantities).Weights;

    /// <summary>Load on the shelf.</summary>
    public ShelfLoad Shelf => From(Stage.Quantities).Shelf;

    /// <summary>Doors as they are cut; null without their kind or thickness.</summary>
    public DoorPanes? Doors => From(Stage.Quantities).Doors;

    /// <summary>Parts to cut.</summary>
    public ImmutableArray<CutPart> Cuts => From(Stage.Quantities).Cuts;

    /// <summary>Foam, silicone, cure.</summary>
    public Sealants Sealants => From(Stage.Quantities).Sealants;

    /// <summary>Packs to buy.</summary>
    public ImmutableArray<PackNeed> Packs => From(Stage.Quantities).Packs;

    /// <summary>Panes under load.</summary>
    public ImmutableArray<PaneCheck> Panes => From(Stage.Quantities).Panes;

    /// <summary>What each stocking rule allows of each species; empty without animals.</summary>
    public ImmutableArray<StockingRow> Stocking => From(Stage.Quantities).Stocking;

    /// <summary>Float check; null without aggregate.</summary>
    public FloatCheck? Float => From(Stage.Quantities).Float;

    /// <summary>Plant dip; null without a label strength.</summary>
    public PlantDip? Dip => From(Stage.Quantities).Dip;

    private DesignStages From(Stage stage) =>
        stage <= last
            ? stages
            : throw new InvalidOperationException($"{stage} was asked for by one that needs {last} alone.");
}
