using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Checking;
using Litterfall.Forecasting.Coefficients;

namespace Litterfall.Forecasting.Light;

/// <summary>
/// Power of a lamp by how it leaves: light, infrared of a glowing wire, and heat of its case; W.
/// </summary>
/// <param name="LightWatts">Light out of lamp and hood.</param>
/// <param name="InfraredWatts">Infrared in the beam; only a glowing wire has any that passes glass.</param>
/// <param name="CaseWatts">All other.</param>
/// <param name="DownShare">Share of the heat of its case that crosses the lid.</param>
internal readonly record struct LampHeat(
    double LightWatts,
    double InfraredWatts,
    double CaseWatts,
    double DownShare
)
{
    /// <summary>Electrical power of a lamp, W: typed, of its file, or its kind's.</summary>
    /// <param name="design">The design.</param>
    /// <param name="lamp">Place of the lamp.</param>
    /// <param name="with">Coefficients.</param>
    public static double Watts(CheckedDesign design, int lamp, LightCoefficients with) =>
        design.Design.Lamps[lamp].Watts?.Si
        ?? (
            design.Design.Lamps[lamp].File is { } file
                ? design.Files.Lamps.GetValueOrDefault(file)?.Watts
                : null
        )
        ?? Kind(design, lamp)?.Power?.Si
        ?? with.LampWatts.UseSi();

    /// <summary>The power of a lamp, split.</summary>
    /// <param name="design">The design.</param>
    /// <param name="lamp">Place of the lamp.</param>
    /// <param name="ends">Where its light ends.</param>
    /// <param name="with">Coefficients.</param>
    public static LampHeat Of(CheckedDesign design, int lamp, LampShares.Lit ends, LightCoefficients with)
    {
        var kind = Kind(design, lamp);
        double watts = Watts(design, lamp, with);
        double visible = kind?.VisibleShare?.Si ?? with.VisibleShare.UseSi();
        if (
            design.Design.Lamps[lamp].Lumens is { } lumens
            && kind?.RadiationEfficacy?.Si is { } efficacy
            && watts > 0.0
        )
        {
            visible = Math.Clamp(lumens.Si / efficacy / watts, 0.02, 0.7);
        }

        double light = watts * visible * (kind?.OutputRatio?.Si ?? 1.0);
        double infrared = ends.Infrared is null
            ? 0.0
            : watts * Math.Min(kind?.InfraredShare?.Si ?? 0.0, 1.0 - visible);
        return new LampHeat(
            light,
            infrared,
            watts - light - infrared,
            kind?.DownShare?.Si ?? with.DownShare.UseSi()
        );
    }

    private static LampEntry? Kind(CheckedDesign design, int lamp) =>
        design.Find<LampEntry>(FormattableString.Invariant($"lamps[{lamp}].lamp"));
}
