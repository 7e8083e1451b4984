using System.Collections.Immutable;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Figures;
using Litterfall.Forecasting.Coefficients;
using Litterfall.Physics.Light;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Forecasting.Light;

/// <summary>Light on the ground, cell by cell: rows from front to back, x rising within.</summary>
/// <param name="CellsX">Cells along the front.</param>
/// <param name="CellsY">Cells from front to back.</param>
/// <param name="Left">Where the first cell begins, from the left inside, m.</param>
/// <param name="Front">Where it begins from the front inside, m.</param>
public sealed record LightMap(int CellsX, int CellsY, double Left, double Front)
{
    /// <summary>Edges of a cell, m.</summary>
    public required (double X, double Y) Cell { get; init; }

    /// <summary>Photons at full light, µmol/(m² s); 0 under wood and stone.</summary>
    public required ImmutableArray<double> Micromoles { get; init; }

    /// <summary>True where wood or stone stands.</summary>
    public required ImmutableArray<bool> IsCovered { get; init; }

    /// <summary>Statistics of the open ground, µmol/(m² s).</summary>
    public required MapStatistics Statistics { get; init; }
}

/// <summary>Light of one lamp.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Path">Its key in the design.</param>
public sealed record LampLight(string Name, string Path)
{
    /// <summary>Flux today.</summary>
    public required Figure Lumens { get; init; }

    /// <summary>Photons of each lumen.</summary>
    public required Figure Photons { get; init; }

    /// <summary>Time at full light with the same sum of a day.</summary>
    public required Figure FullHours { get; init; }

    /// <summary>Share of its light that is taken inside.</summary>
    public required Figure TakenInside { get; init; }

    /// <summary>Heat of it that stays inside while it burns.</summary>
    public required Figure HeatInside { get; init; }

    /// <summary>Share of its light that meets mesh; 0 without.</summary>
    public required double OverMesh { get; init; }

    /// <summary>Its share of the light on the ground.</summary>
    public required double GroundShare { get; init; }

    /// <summary>Time it goes on, s after midnight; time on and each ramp, s.</summary>
    public required (double On, double For, double Ramp) Clock { get; init; }

    /// <summary>Hours to 70 % of its flux; null where the library does not say.</summary>
    public double? LifeHours { get; init; }

    /// <summary>Seconds on a day.</summary>
    public double OnSeconds => Clock.For;

    /// <summary>Share of its full light at a time of day, s after midnight.</summary>
    public double PowerAt(double seconds) => LightDay.Power(Clock.On, Clock.For, Clock.Ramp, seconds);

    /// <summary>Outlines of what shines from above, m inside the box.</summary>
    public required ImmutableArray<ImmutableArray<(double X, double Y)>> Outlines { get; init; }

    /// <summary>Its height over the base, m.</summary>
    public required double Height { get; init; }

    /// <summary>What its file made the reader guess.</summary>
    public ImmutableArray<string> Notes { get; init; } = [];
}

/// <summary>Shade on the ground for animals.</summary>
/// <param name="Share">Share of the ground that is dark or under a cover.</param>
/// <param name="Patches">Number of such patches of 10 × 10 cm or more.</param>
/// <param name="DarkToBright">Darkest open ground over the brightest place the map or a plant shows.</param>
public sealed record LightRefuge(Figure Share, Figure Patches, Figure DarkToBright)
{
    /// <summary>How many animals the shade holds, one on each 10 × 10 cm of it.</summary>
    public required Figure Places { get; init; }

    /// <summary>Longest way from open ground to the nearest shade.</summary>
    public required Figure Reach { get; init; }
}

/// <summary>The light of a design.</summary>
public sealed record LightFigures
{
    /// <summary>Where computed light comes from.</summary>
    internal static readonly Citation Engine = new(
        "own-derivation",
        "sum over the lamps' openings through the lid, mirrors of panes, diffuse faces",
        Provenance.Recomputed
    );

    /// <summary>The map of the ground.</summary>
    public required LightMap Map { get; init; }

    /// <summary>Mean photons on the open ground at full light, at the height of soil and moss.</summary>
    public required Banded GroundMean { get; init; }

    /// <summary>The same in a day.</summary>
    public required Banded GroundDaily { get; init; }

    /// <summary>Mean illuminance of the open ground.</summary>
    public required Banded GroundLux { get; init; }

    /// <summary>Mean photons on top of the leaf litter, at its full depth everywhere; null without.</summary>
    public Banded? LitterMean { get; init; }

    /// <summary>The same in a day.</summary>
    public Banded? LitterDaily { get; init; }

    /// <summary>Least over mean of the open ground.</summary>
    public required Figure LeastOverMean { get; init; }

    /// <summary>Mean on the moss of the floor; null without.</summary>
    public Banded? MossMean { get; init; }

    /// <summary>Shade for animals.</summary>
    public required LightRefuge Refuge { get; init; }

    /// <summary>Uncertainty of all, k = 2.</summary>
    public required Figure Absolute { get; init; }

    /// <summary>Uncertainty between places, k = 2.</summary>
    public required Figure Relative { get; init; }

    /// <summary>What a reading turned the computed light by; null without.</summary>
    public Figure? Turned { get; init; }

    /// <summary>The lamps.</summary>
    public required ImmutableArray<LampLight> Lamps { get; init; }

    /// <summary>The plants.</summary>
    public required ImmutableArray<PlantLight> Plants { get; init; }

    /// <summary>The computed light itself, for drawings.</summary>
    internal LightField Field { get; init; } = null!;

    /// <summary>Level photons at places of a section, µmol/(m² s); 0 inside wood and stone.</summary>
    /// <param name="places">From the left, from the front, over the base; m inside the box.</param>
    public ImmutableArray<double> Along(IEnumerable<(double X, double Y, double Z)> places) =>
        Field.Along(places);

    /// <summary>The light of a design; null without lamps or air.</summary>
    /// <param name="design">The design.</param>
    /// <param name="box">Its sizes.</param>
    /// <param name="layers">Its layers.</param>
    /// <param name="shares">Where the light of its lamps ends.</param>
    /// <param name="cancel">Ends it; a light that is there is not part of any run.</param>
    internal static LightFigures? Of(
        CheckedDesign design,
        BoxGeometry box,
        ImmutableArray<FloorLayer> layers,
        LampShares.Traced shares,
        CancellationToken cancel = default
    ) =>
        design.Design.Lamps.Count > 0
        && LightBox.Of(design, box, layers, ModelCoefficients.Of(design)) is { } light
            ? Kept(Noted(light, shares, cancel).Figures())
            : null;

    private static LightFigures Kept(LightFigures figures)
    {
        figures.Field.Keep();
        return figures;
    }

    private static ComputedLight Noted(LightBox light, LampShares.Traced shares, CancellationToken cancel)
    {
        light.With.Note(shares.Keys);
        return new ComputedLight(light.Design, light, shares.Lamps, cancel);
    }

    /// <summary>The same on a coarse map and without the heat of lamps, to compare many designs.</summary>
    /// <param name="design">The design.</param>
    /// <param name="box">Its sizes.</param>
    /// <param name="layers">Its layers.</param>
    internal static LightFigures? Briefly(
        CheckedDesign design,
        BoxGeometry box,
        ImmutableArray<FloorLayer> layers
    ) =>
        design.Design.Lamps.Count > 0
        && LightBox.Of(design, box, layers, ModelCoefficients.Of(design)) is { } light
            ? Kept(
                new ComputedLight(design, light, LampShares.Untraced(design)).Figures(
                    LightPolicy.CoarseMeters
                )
            )
            : null;
}
