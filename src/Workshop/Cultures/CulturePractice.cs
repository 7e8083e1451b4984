using System.Collections.Immutable;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;

namespace Litterfall.Workshop.Cultures;

/// <summary>
/// Numbers of the culture shelf that no entry of the library holds, each with where it comes from. Those
/// recalled are from memory; own choices say why.
/// </summary>
public static class CulturePractice
{
    private const string Keepers = "keeper-practice";

    /// <summary>Share of cultures that fail before they are used: mites, mold, drying.</summary>
    public static readonly Figure Failing = Figure.Given(
        "share of cultures that fail",
        0.15,
        Unit.Percent,
        Citation.Recalled(Keepers, "share of cultures lost to mites, mold and drying")
    );

    /// <summary>Days a started culture rests before it is used or sold.</summary>
    public static readonly Figure Conditioning = Figure.Given(
        "rest of a culture before it is used",
        Unit.Day.ToSiValue(3),
        Unit.Day,
        Citation.Recalled(Keepers, "three days for a culture to settle after a split")
    );

    /// <summary>Share of a culture that a split takes out.</summary>
    public static readonly Figure SplitShare = Figure.Choice(
        "share of a culture that a split takes",
        50,
        Unit.Percent,
        "half of the substrate with what is in it; the other half refills the mother"
    );

    /// <summary>Share of the weekly surplus that is taken near the plateau.</summary>
    public static readonly Figure PlateauHarvest = Figure.Given(
        "share of the surplus taken near the plateau",
        0.5,
        Unit.Percent,
        Citation.Recalled(Keepers, "near the plateau take half of the weekly surplus")
    );

    /// <summary>From this share of the plateau on a culture counts as near it.</summary>
    public static readonly Figure NearPlateau = Figure.Choice(
        "share of the plateau that counts as near it",
        50,
        Unit.Percent,
        "crowding slows growth from about there"
    );

    /// <summary>Cultures of a line that are never given away.</summary>
    public static readonly Figure Backup = Figure.Given(
        "backup cultures of a line",
        2,
        Unit.One,
        Citation.Recalled(Keepers, "two backup cultures of each line; the last one is never sold")
    );

    /// <summary>Lines of a species that are kept apart.</summary>
    public static readonly Figure Lines = Figure.Given(
        "lines of a species",
        2,
        Unit.One,
        Citation.Habit("two lines that never touch, on separate shelves")
    );

    /// <summary>Chance that a whole line is lost in the time a plan looks ahead.</summary>
    public static readonly Figure LineLoss = Figure.Choice(
        "chance that a whole line is lost",
        10,
        Unit.Percent,
        "mites walk from cup to cup of a line; nobody counts how often, one line in ten taken"
    );

    /// <summary>Days between feedings of springtails and isopods.</summary>
    public static readonly Figure FeedEvery = Figure.Given(
        "time between feedings of cultures",
        Unit.Day.ToSiValue(5),
        Unit.Day,
        Citation.Habit("every 3 to 7 days, and only what is gone by the next time; 5 taken")
    );

    /// <summary>Days between looks with a lens.</summary>
    public static readonly Figure LookEvery = Figure.Choice(
        "time between looks for mites and mold",
        7,
        Unit.Day,
        "mites show within a week, before they reach the next cup"
    );

    /// <summary>Substrate in a liter of cup.</summary>
    public static readonly Figure Filling = Figure.Given(
        "substrate in a cup",
        0.5,
        Unit.Percent,
        Citation.Habit("cups are filled half")
    );

    /// <summary>Error of a count of all animals, as the logarithm.</summary>
    public static readonly Figure CountError = Figure.Choice(
        "error of a full count",
        5,
        Unit.Percent,
        "some hide while the rest is counted"
    );

    /// <summary>Error of a count of a sample.</summary>
    public static readonly Figure SampleError = Figure.Choice(
        "error of a sampled count",
        25,
        Unit.Percent,
        "animals sit in clusters: two spoonfuls differ by about a quarter"
    );

    /// <summary>Error of a judgment by eye.</summary>
    public static readonly Figure EyeError = Figure.Choice(
        "error of a count by eye",
        60,
        Unit.Percent,
        "people who judge a swarm are a factor of two off"
    );

    /// <summary>Error of what a culture is said to be started with.</summary>
    public static readonly Figure StartError = Figure.Choice(
        "error of the number a culture is started with",
        30,
        Unit.Percent,
        "spooned or poured, not counted"
    );

    /// <summary>Error that the model gathers in a day; it grows with the square root of the days.</summary>
    public static readonly Figure DriftError = Figure.Choice(
        "error of the growth model over a day",
        6,
        Unit.Percent,
        "a third after a month: food and damp of a cup are not measured"
    );

    /// <summary>Most error of the model.</summary>
    public static readonly Figure MostError = Figure.Choice(
        "most error of the growth model",
        70,
        Unit.Percent,
        "a cup has an end: its plateau is known to a factor of two each way"
    );

    /// <summary>All, for the list of where numbers come from.</summary>
    public static ImmutableArray<Figure> All { get; } =
    [
        Failing,
        Conditioning,
        SplitShare,
        PlateauHarvest,
        NearPlateau,
        Backup,
        Lines,
        LineLoss,
        FeedEvery,
        LookEvery,
        Filling,
        CountError,
        SampleError,
        EyeError,
        StartError,
        DriftError,
        MostError,
    ];

    internal static int Days(Figure time) => (int)Math.Round(Unit.Day.FromSi(time.Si));
}
