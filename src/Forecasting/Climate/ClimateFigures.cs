using System.Collections.Immutable;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Figures;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Forecasting.Climate;

/// <summary>The climate of a box as figures that name what they rest on.</summary>
public sealed record ClimateFigures
{
    /// <summary>Where simulated numbers come from.</summary>
    public static readonly Citation Engine = new(
        "own-derivation",
        "balance of heat and vapor of the headspace, coupled to the floor",
        Provenance.Recomputed
    );

    /// <summary>Least temperature of the air.</summary>
    public required Banded AirMin { get; init; }

    /// <summary>Mean temperature.</summary>
    public required Banded AirMean { get; init; }

    /// <summary>Highest temperature.</summary>
    public required Banded AirMax { get; init; }

    /// <summary>Least relative humidity.</summary>
    public required Banded HumidityMin { get; init; }

    /// <summary>Mean relative humidity.</summary>
    public required Banded HumidityMean { get; init; }

    /// <summary>Highest relative humidity.</summary>
    public required Banded HumidityMax { get; init; }

    /// <summary>Mean air changes.</summary>
    public required Banded AirChanges { get; init; }

    /// <summary>Vented a day; null where the water balance computes it.</summary>
    public Banded? Vented { get; init; }

    /// <summary>Evaporated a day.</summary>
    public Figure? Evaporated { get; init; }

    /// <summary>Water of basins; null without, and where the water balance computes it.</summary>
    public BasinFigures? Basins { get; init; }

    /// <summary>Largest vapor pressure deficit.</summary>
    public required Figure DeficitMax { get; init; }

    /// <summary>Smallest distance of a pane to the dew point.</summary>
    public required Figure DewMargin { get; init; }

    /// <summary>Hours of dew a day on each pane.</summary>
    public required ImmutableArray<(string Pane, Figure Hours)> Fog { get; init; }

    /// <summary>Least and most of these; empty where the air is held.</summary>
    public ImmutableArray<(string Pane, Banded Hours)> FogBand { get; init; } = [];

    /// <summary>Hours a day with a film on each pane, dew or mist.</summary>
    public ImmutableArray<(string Pane, Figure Hours)> Wet { get; init; } = [];

    /// <summary>Hours a day with wet leaves; null without leaves.</summary>
    public Figure? LeafWet { get; init; }

    /// <summary>Humidity of the box below which the coldest pane clears; held air only.</summary>
    public Figure? ClearsBelowHumidity { get; init; }

    /// <summary>Room above which it clears; held air only.</summary>
    public Figure? ClearsAboveRoom { get; init; }

    /// <summary>Inner face of the coldest pane; held air only.</summary>
    public Figure? PaneInside { get; init; }

    /// <summary>Film of still air on each side of a pane; held air only.</summary>
    public Figure? PaneFilm { get; init; }

    /// <summary>Dew point of the air; held air only.</summary>
    public Figure? DewPoint { get; init; }

    /// <summary>What the water balance misses; null where the air is held.</summary>
    public Figure? LedgerError { get; init; }

    /// <summary>What was computed; null where the air is held.</summary>
    public BoxClimate? Computed { get; init; }

    /// <summary>The climate of a design whose headspace is held.</summary>
    /// <param name="design">The design.</param>
    /// <param name="box">Its sizes.</param>
    public static ClimateFigures Held(CheckedDesign design, BoxGeometry box) => HeldClimate.Of(design, box);

    /// <summary>The climate of a design as it was computed.</summary>
    /// <param name="climate">What was computed.</param>
    /// <param name="setup">The design made ready.</param>
    public static ClimateFigures From(BoxClimate climate, BoxSetup setup) =>
        new ComputedClimate(
            climate,
            ClimateInputs.Of(setup.Design, (setup.Box, setup.Layers, setup.Headspace), climate.Run)
        ).Figures();

    /// <summary>The same over a few days and without a band, to compare many designs.</summary>
    /// <param name="setup">The design made ready.</param>
    internal static ClimateFigures? Briefly(BoxSetup setup) =>
        setup.Design.Design.Headspace is not null ? HeldClimate.Of(setup.Design, setup.Box)
        : BoxClimate.From(setup, isBrief: true) is { } climate
            ? new ComputedClimate(climate.MonthAlone(), []).Figures()
        : null;
}
