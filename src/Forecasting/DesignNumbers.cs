using System.Collections.Immutable;
using Litterfall.Domain.Checking;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Forecasting;
using Litterfall.Forecasting.Climate;
using Litterfall.Forecasting.Coefficients;
using Litterfall.Forecasting.Floor;
using Litterfall.Forecasting.Life;
using Litterfall.Forecasting.Light;
using Litterfall.Forecasting.Water;
using Litterfall.Judging.Rules;
using Litterfall.Quantities.Cutting;
using Litterfall.Quantities.Hygiene;
using Litterfall.Quantities.Measures;
using Litterfall.Quantities.Packs;
using Litterfall.Quantities.Sizing;
using Litterfall.Quantities.Stocking;

namespace Litterfall.Forecasting;

/// <summary>Everything computed from one design, before it is judged.</summary>
public sealed record DesignNumbers
{
    /// <summary>The design.</summary>
    public required CheckedDesign Design { get; init; }

    /// <summary>True sizes.</summary>
    public required BoxGeometry Box { get; init; }

    /// <summary>Layers from the base up.</summary>
    public required ImmutableArray<FloorLayer> Layers { get; init; }

    /// <summary>Air above them.</summary>
    public required AirSpace Headspace { get; init; }

    /// <summary>Climate of the box; null where it cannot be computed.</summary>
    public ClimateFigures? Climate { get; init; }

    /// <summary>Light of the box; null without lamps, and where a design is only glimpsed at.</summary>
    public LightFigures? Light { get; init; }

    /// <summary>Life of the floor; null without a crew, and where a design is only glimpsed at.</summary>
    public LifeFigures? Life { get; init; }

    /// <summary>Water of the floor.</summary>
    public required FloorWater Water { get; init; }

    /// <summary>Masses.</summary>
    public required Weights Weights { get; init; }

    /// <summary>Load on the shelf.</summary>
    public required ShelfLoad Shelf { get; init; }

    /// <summary>Parts to cut.</summary>
    public required ImmutableArray<CutPart> Cuts { get; init; }

    /// <summary>Foam, silicone, cure.</summary>
    public required Sealants Sealants { get; init; }

    /// <summary>Packs to buy.</summary>
    public required ImmutableArray<PackNeed> Packs { get; init; }

    /// <summary>Panes under load.</summary>
    public required ImmutableArray<PaneCheck> Panes { get; init; }

    /// <summary>What each stocking rule allows of each species; empty without animals.</summary>
    public required ImmutableArray<StockingRow> Stocking { get; init; }

    /// <summary>Float check; null without aggregate.</summary>
    public FloatCheck? Float { get; init; }

    /// <summary>Plant dip; null without a label strength.</summary>
    public PlantDip? Dip { get; init; }
}
