using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;

namespace Litterfall.Forecasting.Coefficients;

/// <summary>Parts of the uncertainty of computed light; our own estimates.</summary>
/// <param name="list">Takes them, changed where they are to be.</param>
public sealed class LightUncertaintyCoefficients(CoefficientList list)
{
    /// <summary>One standard deviation of the sums.</summary>
    public Coefficient Numerics { get; } =
        list.Add(
            "numerics",
            "uncertainty of the sums",
            0.6,
            Unit.Percent,
            null,
            Citation.Choice("estimate of one standard deviation: steps and cells")
        );

    /// <summary>The same of where lamps and leaves are.</summary>
    public Coefficient Geometry { get; } =
        list.Add(
            "geometry",
            "uncertainty of places",
            1.3,
            Unit.Percent,
            null,
            Citation.Choice("estimate of one standard deviation: a centimeter at the lamp")
        );

    /// <summary>The same of what is thrown back.</summary>
    public Coefficient Surroundings { get; } =
        list.Add(
            "surroundings",
            "uncertainty of what is thrown back",
            3,
            Unit.Percent,
            null,
            Citation.Choice("estimate of one standard deviation: reflectances of ground, wood and background")
        );

    /// <summary>The same of the flux of a measured lamp.</summary>
    public Coefficient FluxOfFile { get; } =
        list.Add(
            "fluxOfFile",
            "uncertainty of a measured flux",
            1.7,
            Unit.Percent,
            null,
            Citation.Choice("estimate of one standard deviation: a laboratory's file")
        );

    /// <summary>The same of a flux by label.</summary>
    public Coefficient FluxOfLabel { get; } =
        list.Add(
            "fluxOfLabel",
            "uncertainty of a flux by label",
            5.8,
            Unit.Percent,
            null,
            Citation.Choice("estimate of one standard deviation: a tenth either way, evenly")
        );

    /// <summary>The same of the distribution of a measured lamp.</summary>
    public Coefficient SpreadOfFile { get; } =
        list.Add(
            "spreadOfFile",
            "uncertainty of a measured distribution",
            2,
            Unit.Percent,
            null,
            Citation.Choice("estimate of one standard deviation: a laboratory's file")
        );

    /// <summary>The same of a distribution by kind.</summary>
    public Coefficient SpreadOfLabel { get; } =
        list.Add(
            "spreadOfLabel",
            "uncertainty of a distribution by kind of lamp",
            5,
            Unit.Percent,
            null,
            Citation.Choice("estimate of one standard deviation: cosine law or beam")
        );

    /// <summary>The same of photons by spectrum.</summary>
    public Coefficient PhotonsOfSpectrum { get; } =
        list.Add(
            "photonsOfSpectrum",
            "uncertainty of photons by spectrum",
            1,
            Unit.Percent,
            null,
            Citation.Choice("estimate of one standard deviation: a measured spectrum")
        );

    /// <summary>The same of photons by kind of lamp.</summary>
    public Coefficient PhotonsOfKind { get; } =
        list.Add(
            "photonsOfKind",
            "uncertainty of photons by kind of lamp",
            3,
            Unit.Percent,
            null,
            Citation.Choice("estimate of one standard deviation: lamps of one kind")
        );

    /// <summary>The same of a pane.</summary>
    public Coefficient PaneIndex { get; } =
        list.Add(
            "paneIndex",
            "uncertainty of a pane",
            1.2,
            Unit.Percent,
            null,
            Citation.Choice("estimate of one standard deviation: glass itself")
        );

    /// <summary>The same of dirt on a pane.</summary>
    public Coefficient PaneDirt { get; } =
        list.Add(
            "paneDirt",
            "uncertainty of dirt",
            3,
            Unit.Percent,
            null,
            Citation.Choice("estimate of one standard deviation: between two wipes")
        );

    /// <summary>The same of drops under a pane.</summary>
    public Coefficient PaneDrops { get; } =
        list.Add(
            "paneDrops",
            "uncertainty of drops",
            4,
            Unit.Percent,
            null,
            Citation.Choice("estimate of one standard deviation: greenhouse measurements")
        );

    /// <summary>The same of mesh and open lids.</summary>
    public Coefficient OpenLid { get; } =
        list.Add(
            "openLid",
            "uncertainty of mesh and open lids",
            2,
            Unit.Percent,
            null,
            Citation.Choice("estimate of one standard deviation: wires and frames")
        );

    /// <summary>Two standard deviations of photons by a reading, with a spectrum.</summary>
    public Coefficient ReadWithSpectrum { get; } =
        list.Add(
            "readWithSpectrum",
            "uncertainty of photons by a lux reading, spectrum known",
            2,
            Unit.Percent,
            null,
            Citation.Choice("estimate of one standard deviation: meter against spectrum, doubled")
        );

    /// <summary>The same without a spectrum.</summary>
    public Coefficient ReadWithout { get; } =
        list.Add(
            "readWithout",
            "uncertainty of photons by a lux reading, spectrum unknown",
            6,
            Unit.Percent,
            null,
            Citation.Choice("estimate of one standard deviation: kind of lamp, doubled")
        );

    /// <summary>What a lux meter may be off where nothing is typed, k = 2.</summary>
    public Coefficient Meter { get; } =
        list.Add(
            "meter",
            "uncertainty of a lux meter, k = 2",
            8,
            Unit.Percent,
            (5, 15),
            Citation.Choice("handheld meters")
        );
}
