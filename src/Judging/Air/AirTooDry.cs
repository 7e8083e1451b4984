using System.Globalization;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;
using Litterfall.Quantities.Stocking;

namespace Litterfall.Judging.Air;

/// <summary>
/// Frogs lose water through their skin: the air is drier than the species' band on a day's mean, or below
/// 60 %
/// for more than four hours a day.
/// </summary>
internal static class AirTooDry
{
    private static readonly Figure Longest = Figure.Given(
        $"longest time below {Share(Dip)}",
        Unit.Hour.ToSiValue(4),
        Unit.Hour,
        new Citation(
            "keeper-practice",
            "recalled: dips to 60 % for up to 4 hours where a wet refuge exists",
            Provenance.Recalled
        )
    );

    private const double Dip = 0.6;

    private static string Share(double of) => FormattableString.Invariant($"{100 * of:0.#} %");

    public static readonly Rule Rule = new(
        "air-too-dry",
        Protects.Animal,
        "the mean humidity of some season is below the species' band, or the air is drier than "
            + FormattableString.Invariant($"{Share(Dip)} for more than {Longest.Value:0.#} hours a day; ")
            + "a note where no misting is entered",
        Judge
    )
    {
        Needs = Stage.WaterAndAir,
        Levers = LeverReach.Air,
        Fix = (_, design) => FixEdit.MistingPump(design.Document),
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        // Where neither room nor misting is entered, nothing is known of the air.
        foreach (
            var species in StockedSpecies
                .Of(n.Design)
                .Where(s => s.IsFrog && (IsMisted(n) || n.Design.Design.Room is not null))
        )
        {
            if (Seasons.Worst(n, d => d.HoursDrier(Dip)) is { } dip && dip.Value > Longest.Value)
            {
                yield return Rule.Found(
                    IsMisted(n) ? Severity.Stop : Severity.Note,
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"The air is drier than {Share(Dip)} for {dip.Value:0.#} hours a day "
                            + $"{dip.Season.Name}{Unknown(n)}, down to "
                            + $"{100 * dip.Season.Days.Humidity.Least:0} %: {species.Species.Name} can "
                            + $"dry out; "
                            + $"the bound is from memory."
                    ),
                    (Seasons.Hours(n, dip.Season, $"time a day below {Share(Dip)}", dip.Value), Longest),
                    "Let less air through, mist longer or more often, or keep no frogs in it.",
                    Where(n)
                );
            }
            else if (
                species.Species.LeastHumidity is { } low
                && Seasons.Worst(n, d => -d.Humidity.Mean) is { } dry
                && -dry.Value < low.Si
            )
            {
                bool isNear = ModelError.IsHumidityNear(-dry.Value, low);
                yield return Rule.Found(
                    IsMisted(n) && !isNear ? Severity.Caution : Severity.Note,
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"The air is at {-100 * dry.Value:0} % on a day's mean "
                            + $"{dry.Season.Name}{Unknown(n)}; "
                            + $"{species.Species.Name} is kept at {low.Value:0} % or more."
                    ) + ModelError.Words(isNear),
                    (Seasons.Number(n, dry.Season, "mean humidity", -dry.Value, Unit.Percent), low),
                    "Let less air through, or mist longer or more often.",
                    Where(n)
                );
            }
        }
    }

    private static bool IsMisted(DesignNumbers n) =>
        n.Design.Design is not { Misting: null, Habits: null or { HandMist: null } };

    private static string Unknown(DesignNumbers n) => IsMisted(n) ? "" : ", no misting being entered";

    private static string Where(DesignNumbers n) => Controls.Mist(n.Design.Design);
}
