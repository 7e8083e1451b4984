using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Figures;
using Litterfall.Quantities.Placing;

namespace Litterfall.Forecasting.Light;

/// <summary>How the light of a plant stands to its band.</summary>
public enum LightVerdict
{
    /// <summary>The library has no band for it.</summary>
    NoBand,

    /// <summary>Less than it takes to live.</summary>
    BelowSurvival,

    /// <summary>Below its good band, whatever the uncertainty.</summary>
    TooDark,

    /// <summary>Below its good band by less than the uncertainty.</summary>
    PerhapsDark,

    /// <summary>Within its good band, or between it and its color band.</summary>
    Within,

    /// <summary>Within its color band.</summary>
    Colored,

    /// <summary>Above all it bears by less than the uncertainty.</summary>
    PerhapsBright,

    /// <summary>Above all it bears, whatever the uncertainty.</summary>
    TooBright,
}

/// <summary>The light of one plant, its own crown left out.</summary>
/// <param name="Spot">Where it stands.</param>
/// <param name="Species">Its catalog entry.</param>
public sealed record PlantLight(PlantSpot Spot, PlantEntry Species)
{
    /// <summary>Height of its leaves over the base.</summary>
    public required Figure LeafHeight { get; init; }

    /// <summary>Which way its leaves face, in words.</summary>
    public required string Facing { get; init; }

    /// <summary>Photons on its leaves at full light.</summary>
    public required Banded Photons { get; init; }

    /// <summary>Photons on its leaves in a day.</summary>
    public required Banded Daily { get; init; }

    /// <summary>Illuminance of its leaves at full light.</summary>
    public required Figure Lux { get; init; }

    /// <summary>Photons on a level leaf there.</summary>
    public required Figure Level { get; init; }

    /// <summary>Mean of six faces of a small cube there.</summary>
    public required Figure AllRound { get; init; }

    /// <summary>Least and largest of its good band, a day; null where the library has none.</summary>
    public (Figure Low, Figure High)? Band { get; init; }

    /// <summary>Least and largest of its color band, a day; null where the library has none.</summary>
    public (Figure Low, Figure High)? ColorBand { get; init; }

    /// <summary>Most light of a day it bears; null where the library has no band.</summary>
    public Figure? Most => ColorBand?.High ?? Band?.High;

    /// <summary>
    /// Light of a day below which it slowly dies: that of the library, or the light at which its kind just
    /// lives over
    /// the hours the lamps burn.
    /// </summary>
    public required Figure Survival { get; init; }

    /// <summary>Photons at which its leaves just live.</summary>
    public required Figure Compensation { get; init; }

    /// <summary>How it stands to its band.</summary>
    public LightVerdict Verdict =>
        Daily.Value.Si < Survival.Si ? LightVerdict.BelowSurvival
        : Band is not { } band ? LightVerdict.NoBand
        : Daily.Value.Si < band.Low.Si
            ? (Daily.High ?? Daily.Value).Si < band.Low.Si ? LightVerdict.TooDark
                : LightVerdict.PerhapsDark
        : Daily.Value.Si > Most!.Si
            ? (Daily.Low ?? Daily.Value).Si > Most.Si ? LightVerdict.TooBright
                : LightVerdict.PerhapsBright
        : ColorBand is { } color && Daily.Value.Si >= color.Low.Si ? LightVerdict.Colored
        : LightVerdict.Within;

    /// <summary>The verdict in words.</summary>
    public string Words =>
        Verdict switch
        {
            LightVerdict.BelowSurvival => "too dark to live",
            LightVerdict.TooDark => "darker than good",
            LightVerdict.PerhapsDark => "perhaps darker than good",
            LightVerdict.Within => "within its good band",
            LightVerdict.Colored => "within its color band",
            LightVerdict.PerhapsBright => "perhaps too bright",
            LightVerdict.TooBright => "too bright",
            _ => "no band in the library",
        };
}
