using System.Collections.Immutable;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;

namespace Litterfall.Judging.Starting;

/// <summary>Plants a first build is offered, each with how it is set.</summary>
/// <param name="Key">Key of the library.</param>
/// <param name="Along">Place along the front, share of the length.</param>
/// <param name="Behind">Place from the front, share of the depth.</param>
/// <param name="Up">Height of a mounted foot, share of the height; null in the ground.</param>
internal sealed record OfferedPlant(string Key, double Along, double Behind, double? Up);

/// <summary>
/// Our own choices for a first build, each with its reason. None is measured: the build they lead to is
/// computed, and what it misses is found by the same rules as of any other design.
/// </summary>
internal static class FirstBuildPolicy
{
    /// <summary>
    /// Low light, wet air and small: a mat on the ground, a climber on the background, a creeping fern on
    /// it higher up, a second mat, a taller one where there is room. Those whose bands of light do not meet
    /// are left out.
    /// </summary>
    public static readonly ImmutableArray<OfferedPlant> Plants =
    [
        new("fittonia-albivenis", 0.72, 0.42, null),
        new("marcgravia", 0.25, 0.94, 0.45),
        new("lemmaphyllum-microphyllum", 0.6, 0.94, 0.5),
        new("selaginella-kraussiana", 0.22, 0.4, null),
        new("maranta", 0.5, 0.7, null),
    ];

    /// <summary>
    /// Width of both vents from wide to narrow, m: a strip of mesh is sold by the centimeter, and below
    /// 3 mm it clogs.
    /// </summary>
    public static readonly ImmutableArray<double> VentWidths = [0.03, 0.02, 0.015, 0.01, 0.006, 0.003, 0.05];

    /// <summary>Share of the front the vents take: the ends are needed to glue or clamp the frame.</summary>
    public const double VentShare = 0.85;

    /// <summary>Two mistings a day, at lights-on and before dusk, as is the habit of the trade.</summary>
    public const int MistingsADay = 2;

    /// <summary>Flow of a usual nozzle, kg/s: 90 mL/min.</summary>
    public const double NozzleKilogramsPerSecond = 0.09 / 60.0;

    /// <summary>A nozzle wets about 30 cm to each side of itself.</summary>
    public const double NozzleSpacingMeters = 0.45;

    /// <summary>
    /// Misted over vented: the drainage layer may fill slowly, the floor must not dry; a person can siphon
    /// but not see a dry soil.
    /// </summary>
    public const double MistOverVented = 1.05;

    /// <summary>Mist and vented agree when they are as near as this; a second of mist is 2 %.</summary>
    public const double MistTolerance = 0.04;

    /// <summary>
    /// Where an animal has no band, or nobody lives there yet, the air of a planted box, share.
    /// </summary>
    public static readonly (double Low, double High) UsualHumidity = (0.75, 0.95);

    /// <summary>
    /// How far into its band the mean humidity must lie, share of the band: the day dips below it.
    /// </summary>
    public const double HumidityAboveLow = 0.3;

    /// <summary>
    /// How far from the top of its band it must stay: a month is searched, a year is judged.
    /// </summary>
    public const double HumidityBelowHigh = 0.1;

    /// <summary>Fog beyond so many hours a day counts against a width of vents, h.</summary>
    public const double BearableFogHours = 4;

    /// <summary>An hour of fog weighs as much as this much humidity off the band, share.</summary>
    public const double FogHourAsHumidity = 0.01;

    /// <summary>Lumens of a bar or panel are sold in about these steps, lm.</summary>
    public const double LumenStep = 100;

    /// <summary>Lumens per watt of a usual LED bar, driver included, lm/W.</summary>
    public const double LumensPerWatt = 110;

    /// <summary>Most light a lid of this size is given, lm/m²: brighter boxes overheat.</summary>
    public const double MostLumensPerSquareMeter = 40_000;

    /// <summary>Distance kept to both ends of a plant's band, share.</summary>
    public const double BandMargin = 0.1;

    /// <summary>Air drier than this, share, counts by the hour: amphibians lose water fast in it.</summary>
    public const double DryAir = 0.6;

    /// <summary>
    /// The sill stands over the soil by this, m: leaves and crew stay in when the doors open.
    /// </summary>
    public const double SillOverSoil = 0.04;

    /// <summary>Boxes lower than this get thinner layers, so that air is left over them, m.</summary>
    public const double LowBoxMeters = 0.35;

    /// <summary>Drainage, soil at the front and at the back of a box of a height, m.</summary>
    public static (double Drainage, double Front, double Back) Floor(double heightMeters) =>
        heightMeters < LowBoxMeters ? (0.04, 0.03, 0.06) : (0.05, 0.05, 0.09);

    /// <summary>Figures of the library the choice rests on.</summary>
    public static (double Low, double High) Humidity(AnimalEntry? animal) =>
        animal?.LeastHumidity is { } low && animal.LargestHumidity is { } high
            ? (low.Si, high.Si)
            : UsualHumidity;
}
