using System.Collections.Immutable;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;

namespace Litterfall.Workshop.Cultures;

/// <summary>When the flies of a cup come out, and when it is thrown away.</summary>
/// <param name="From">Days after the first fly.</param>
/// <param name="To">Days after the first fly, not included.</param>
/// <param name="Share">Share of all flies of the cup.</param>
public sealed record EmergenceStage(int From, int To, Figure Share);

/// <summary>Numbers of fly cups that no entry of the library holds.</summary>
public static class FlyPractice
{
    private const string Keepers = "keeper-practice";

    /// <summary>Medium of a cup that the yield of the library is told for.</summary>
    public static readonly Figure Medium = Figure.Given(
        "medium of a fly cup",
        Unit.Milliliter.ToSiValue(150),
        Unit.Milliliter,
        Citation.Recalled(Keepers, "150 mL of medium to a cup")
    );

    /// <summary>Days after which a cup is thrown away: mites find old medium.</summary>
    public static readonly Figure Discard = Figure.Given(
        "age at which fly cups are thrown away",
        Unit.Day.ToSiValue(30),
        Unit.Day,
        Citation.Recalled(Keepers, "replace fly cups at 30 days, before mites come")
    );

    /// <summary>Days that flies which came out can wait to be fed.</summary>
    public static readonly Figure Wait = Figure.Choice(
        "time flies wait in the cup",
        5,
        Unit.Day,
        "they live longer, but starve, drown and lay into old medium"
    );

    /// <summary>Warmest shelf: larvae heat the medium by two to four degrees more.</summary>
    public static readonly Figure Warmest = Figure.Given(
        "warmest shelf for fly cups",
        Unit.Celsius.ToSiValue(27),
        Unit.Celsius,
        Citation.Recalled(Keepers, "sterile from 29 to 30 C; larvae warm the medium by 2 to 4 K")
    );

    /// <summary>Sets of cups in a week.</summary>
    public static readonly Figure SetsPerWeek = Figure.Given(
        "sets of fly cups a week",
        2,
        Unit.One,
        Citation.Habit("start cups twice a week: all on one day are a famine in week four")
    );

    /// <summary>Shares of the flies of a cup by days after the first one.</summary>
    public static readonly ImmutableArray<EmergenceStage> Emergence =
    [
        new(0, 5, Share("flies of days 0 to 5 after the first", 0.40)),
        new(5, 10, Share("flies of days 5 to 10", 0.35)),
        new(10, 20, Share("flies of days 10 to 20", 0.25)),
    ];

    /// <summary>All, for the list of where numbers come from.</summary>
    public static ImmutableArray<Figure> All { get; } =
    [Medium, Discard, Wait, Warmest, SetsPerWeek, .. Emergence.Select(e => e.Share)];

    /// <summary>Share of all flies of a cup that come out on a day after the first one.</summary>
    /// <param name="day">Days after the first fly, from 0.</param>
    public static double ShareOn(int day) =>
        Emergence.FirstOrDefault(e => day >= e.From && day < e.To) is { } stage
            ? stage.Share.Si / (stage.To - stage.From)
            : 0;

    private static Figure Share(string name, double share) =>
        Figure.Given(
            name,
            share,
            Unit.Percent,
            Citation.Recalled(Keepers, "emergence of a fly cup by its age")
        );
}
