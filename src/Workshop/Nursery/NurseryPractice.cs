using System.Collections.Immutable;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;

namespace Litterfall.Workshop.Nursery;

/// <summary>
/// Numbers of the nursery. Nothing here was measured: times are habits of growers, told as such, and the
/// losses of the workshop's own trays take their place as they come in.
/// </summary>
public static class NurseryPractice
{
    private const string Keepers = "keeper-practice";

    /// <summary>Temperature the times below are told for.</summary>
    public static readonly Figure Warmth = Figure.Choice(
        "temperature that rooting times are told for",
        22,
        Unit.Celsius,
        "a room bench without a heating mat"
    );

    /// <summary>Below this nothing roots.</summary>
    public static readonly Figure Threshold = Figure.Choice(
        "temperature below which nothing roots",
        10,
        Unit.Celsius,
        "tropical plants; times are stretched by degree days over it"
    );

    /// <summary>Inspections before plants are released.</summary>
    public static readonly Figure Inspections = Figure.Given(
        "inspections in quarantine",
        2,
        Unit.One,
        Citation.Recalled(Keepers, "plant quarantine of 21 to 30 days with two inspections")
    );

    /// <summary>Days after the start of the clock of the first inspection.</summary>
    public static readonly Figure FirstLook = Figure.Choice(
        "first inspection after",
        14,
        Unit.Day,
        "eggs of snails and scale have hatched by then"
    );

    /// <summary>The last inspection is no older than this on the day of release.</summary>
    public static readonly Figure LastLook = Figure.Choice(
        "last inspection before release within",
        3,
        Unit.Day,
        "what is released was looked at just before"
    );

    /// <summary>Days from potted to usable.</summary>
    public static readonly Figure GrowOn = Figure.Given(
        "time from potted to usable",
        Unit.Day.ToSiValue(28),
        Unit.Day,
        Citation.Habit("four weeks in a pot before a cutting is planted out")
    );

    /// <summary>Losses of bought plants that the prior counts for, of twenty.</summary>
    public static readonly Figure BoughtLoss = Figure.Choice(
        "bought plants lost of twenty, before anything was seen",
        2,
        Unit.One,
        "one in ten, worth twenty plants: two trays of your own weigh more"
    );

    /// <summary>Losses of cuttings that the prior counts for, of twenty.</summary>
    public static readonly Figure CuttingLoss = Figure.Choice(
        "cuttings lost of twenty, before anything was seen",
        5,
        Unit.One,
        "one in four does not root, worth twenty cuttings"
    );

    /// <summary>Plants that a prior counts for.</summary>
    public static readonly Figure PriorWeight = Figure.Choice(
        "plants that the guess before the first tray counts for",
        20,
        Unit.One,
        "two trays of ten"
    );

    /// <summary>From this share on a supplier loses too many.</summary>
    public static readonly Figure TooMany = Figure.Choice(
        "share of plants lost that is too much",
        20,
        Unit.Percent,
        "one in five costs more than the difference between suppliers"
    );

    /// <summary>Days in which losses show.</summary>
    public static readonly Figure ShowsAfter = Figure.Choice(
        "time after which losses of a tray have shown",
        21,
        Unit.Day,
        "plants that fail after a journey fail within three weeks"
    );

    /// <summary>Rooting times by form; the last one for all others.</summary>
    private static readonly ImmutableArray<(string[] Forms, Figure Days)> Rooting =
    [
        (["trailing", "creeping", "vine", "shingling", "mat"], Root("runners and vines", 21)),
        (["moss"], Root("mosses", 28)),
        (["fern", "nest", "antler", "grass", "tuft"], Root("ferns and grasses, divided", 35)),
        (["tank", "star", "air"], Root("offsets of bromeliads", 42)),
        ([], Root("other plants", 28)),
    ];

    /// <summary>All, for the list of where numbers come from.</summary>
    public static ImmutableArray<Figure> All { get; } =
    [
        Inspections,
        FirstLook,
        LastLook,
        Warmth,
        Threshold,
        GrowOn,
        BoughtLoss,
        CuttingLoss,
        PriorWeight,
        TooMany,
        ShowsAfter,
        .. Rooting.Select(r => r.Days),
    ];

    /// <summary>
    /// Days a cutting takes to root at a temperature: those told, times (22 − T0) ÷ (T − T0).
    /// </summary>
    /// <param name="plant">The plant; null for one that the library does not have.</param>
    /// <param name="celsius">Temperature of the bench, °C.</param>
    /// <returns>Whole days, rounded up; ten times the usual at most.</returns>
    public static int RootingDays(PlantEntry? plant, double celsius)
    {
        const double longest = 10;
        var form = plant?.Form?.Text ?? "";
        var usual = Days(Rooting.First(r => r.Forms.Length == 0 || r.Forms.Contains(form)).Days);
        var threshold = Unit.Celsius.FromSi(Threshold.Si);
        var over = Math.Max(celsius - threshold, 0);
        var reach = Unit.Celsius.FromSi(Warmth.Si) - threshold;
        return (int)Math.Ceiling(usual * Math.Min(longest, over > 0 ? reach / over : longest) - 1e-9);
    }

    internal static int Days(Figure time) => (int)Math.Round(Unit.Day.FromSi(time.Si));

    private static Figure Root(string what, double days) =>
        Figure.Given(
            $"rooting time of {what}",
            Unit.Day.ToSiValue(days),
            Unit.Day,
            Citation.Habit("growers count three weeks for runners, four to six for the rest")
        );
}
