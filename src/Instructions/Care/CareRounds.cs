using Litterfall.Domain;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Forecasting.Coefficients;
using Litterfall.Forecasting.Life;
using Litterfall.Instructions.Parts;
using Litterfall.Physics.Light;
using Litterfall.Quantities.Measures;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Instructions.Care;

/// <summary>The care that comes back: level, glass, lamps, leaves, trimming, crew, layers.</summary>
internal static class CareRounds
{
    private const double FourFifths = 0.8;

    public static IEnumerable<CareDate> Of(TankPlan tank) =>
        [
            .. Water(tank.Numbers, tank.Start, tank.Mist),
            .. Glass(tank.Numbers, tank.Start),
            .. LampAged(tank),
            .. Floor(tank),
            .. Living(tank),
            .. FoodDates.Of(tank),
        ];

    /// <summary>Days between top-ups, whole weeks and at least one; null without leaves.</summary>
    public static Figure? LitterTopUp(DesignNumbers numbers)
    {
        if (numbers.Layers.FirstOrDefault(l => l.Kind == LayerKind.Litter) is not { Material: { } leaves })
        {
            return null;
        }

        if (numbers.Life?.Masses.LitterLow is { } low)
        {
            return Weeks(
                low,
                FormattableString.Invariant($"days until the leaves cover less than {Cover(numbers):0.##} cm")
            );
        }

        var life = (leaves as LitterEntry)?.LayerLife ?? CareIntervals.LeafLife;
        var share = life * CareIntervals.LitterShare;
        return Weeks(share, share.Equation);
    }

    private static double Cover(DesignNumbers numbers) =>
        ModelCoefficients.Of(numbers.Design).Life.Cover.Number;

    /// <summary>A time in whole weeks, one at least.</summary>
    private static Figure Weeks(Figure time, string words)
    {
        var weeks = Math.Max(1, Math.Floor(time.Si / Unit.Day.ToSi / 7 + 1e-9));
        return Figure
            .Computed($"{words}, in whole weeks", Unit.Day.ToSiValue(weeks * 7), Unit.Day.Dimension, time)
            .As("time between litter top-ups", Unit.Day);
    }

    private static CareDate Round(
        string key,
        DateOnly planting,
        Figure every,
        (string Title, string Text) words,
        string where
    )
    {
        var days = Math.Max(1, GrowIn.WholeDays(every));
        return new CareDate(
            key,
            planting.AddDays(days),
            words.Title,
            words.Text,
            CareRepeat.Days(days),
            where
        )
        {
            Interval = every,
        };
    }

    private static IEnumerable<CareDate> Water(DesignNumbers numbers, DateOnly planting, MistingPlan? mist)
    {
        if (DrainMark.Of(numbers.Layers) is not { } mark)
        {
            yield break;
        }

        var check = CareIntervals.LevelCheck(numbers.Design);
        yield return numbers.Water.Balance.Outlet is { } outlet
            ? Round(
                "level-check",
                planting,
                Figure
                    .Min(check, outlet.FillsInLow ?? outlet.FillsIn)
                    .As("time between emptyings of the bottle", Unit.Day),
                (
                    "Empty the bottle, read the level",
                    $"Through the outlet: {Judged($"about {NumberText.Milliliters(outlet.PerDay)} a day")}. "
                        + $"A level over {NumberText.Whole(mark)} mm means that it is blocked."
                ),
                "drain"
            )
            : Round(
                "level-check",
                planting,
                check,
                (
                    "Read the water level",
                    $"Read the level in the dip tube and write it down. Drain when it reaches "
                        + $"{NumberText.Whole(mark)} mm over the base."
                ),
                "drain"
            );
        if (FirstDrain(numbers, planting, mark) is { } drain)
        {
            yield return mist?.Level is null
                ? drain
                : drain with
                {
                    Text = $"{drain.Text} {NumberText.Capital(Judged("forecast"))}.",
                };
        }

        string Judged(string number) => mist?.Judged(number) ?? number;
    }

    /// <summary>
    /// The forecast day of the first drain, a whole day early rather than late, and every interval from then;
    /// null where water leaves by an outlet, or the level does not get there.
    /// </summary>
    private static CareDate? FirstDrain(DesignNumbers numbers, DateOnly planting, Figure mark)
    {
        if (
            !DrainMark.IsDrawnOff(numbers.Design.Design)
            || numbers.Water is not { FirstDrain: { } first, Balance.DrainEvery: { } every }
        )
        {
            return null;
        }

        return new CareDate(
            "drain",
            planting.AddDays((int)Math.Floor(first.Value)),
            "Drain the reservoir",
            $"By forecast the level is near {NumberText.Whole(mark)} mm over the base: read it, and draw the "
                + "water off. Earlier if the dip tube says so.",
            CareRepeat.Days(Math.Max(1, (int)Math.Floor(every.Value))),
            "drain"
        )
        {
            Interval = every,
        };
    }

    private static IEnumerable<CareDate> Glass(DesignNumbers numbers, DateOnly planting)
    {
        var design = numbers.Design.Design;
        yield return Round(
            "front-glass",
            planting,
            CareIntervals.FrontGlass,
            (
                "Wipe the front glass",
                "Wipe the front with water only."
                    + (
                        design is { Box.Opening: Opening.Front }
                        && design.Animals.Count + design.RatedFor.Count > 0
                            ? " Keep animals clear of the door line."
                            : ""
                    )
            ),
            "box"
        );
        if (design.Lid is not null)
        {
            yield return Round(
                "lid-cleaning",
                planting,
                CareIntervals.Lid,
                (
                    "Clean the lid",
                    (design.Lamps.Count > 0 ? "Unplug the lamp and let it cool, then clean" : "Clean")
                        + " the lid with water only: dirt costs light and air."
                ),
                "lid"
            );
        }

        if (design.Lamps.Count > 0)
        {
            yield return Round(
                "lamp-check",
                planting,
                CareIntervals.Lamp,
                ("Check the lamp", "Measure its light at the same spot as before, or replace an aged lamp."),
                "lamps"
            );
        }
    }

    /// <summary>"Lamp at 80 % output".</summary>
    private static string LampOutput => FormattableString.Invariant($"Lamp at {100 * FourFifths:0} % output");

    private static IEnumerable<CareDate> LampAged(TankPlan tank)
    {
        var planting = tank.Planting;
        if (Aged(tank.Numbers) is { } aged && planting.AddDays(GrowIn.WholeDays(aged)) >= tank.Start)
        {
            yield return new CareDate(
                "lamp-aged",
                planting.AddDays(GrowIn.WholeDays(aged)),
                LampOutput,
                "By its life a lamp gives about as much of its light by now: measure, and replace it before "
                    + "plants thin.",
                null,
                "lamps"
            )
            {
                Interval = aged,
            };
        }
    }

    /// <summary>
    /// Time until the first lamp gives four fifths of its light, by the law of the light forecast; null where
    /// no life is known.
    /// </summary>
    private static Figure? Aged(DesignNumbers numbers)
    {
        var lamps = numbers
            .Light?.Lamps.Where(l => l is { LifeHours: > 0, OnSeconds: > 0 })
            .Select(l =>
                (l.Name, Days: DailyLight.HoursTo(FourFifths, l.LifeHours!.Value) * 3600.0 / l.OnSeconds)
            )
            .ToArray();
        if (lamps is not { Length: > 0 })
        {
            return null;
        }

        var (name, days) = lamps.MinBy(l => l.Days);
        return Figure
            .Computed(
                FormattableString.Invariant(
                    $"ln {FourFifths:0.#} ÷ ln 0.7 × hours to seven tenths of its light ÷ hours a day, {name}"
                ),
                Unit.Day.ToSiValue(Math.Floor(days)),
                Unit.Day.Dimension
            )
            .As(
                "time until a lamp gives four fifths of its light",
                Unit.Day,
                new Citation("lamp-catalogs", "recalled: hours to 70 % of the flux", Provenance.Recalled)
            );
    }

    private static IEnumerable<CareDate> Floor(TankPlan tank)
    {
        var design = tank.Numbers.Design.Design;
        if (design.Floor.Soil is null)
        {
            yield break;
        }

        if (!tank.IsRunning)
        {
            yield return new CareDate(
                "settle-check",
                tank.Planting.AddDays(GrowIn.WholeDays(CareIntervals.SettleCheck)),
                "Check the settled soil",
                "Measure the soil at the four corners and write it down. Fill up where it sank too far.",
                null,
                "floor.soil"
            )
            {
                Interval = CareIntervals.SettleCheck,
            };
        }

        var again = GrowIn.WholeDays(CareIntervals.LaterReview);
        var review = tank.Planting.AddDays(GrowIn.WholeDays(CareIntervals.LayerReview));
        while (review < tank.Start)
        {
            review = review.AddDays(again);
        }

        yield return new CareDate(
            "layer-review",
            review,
            "Review the layers",
            "Dig a small hole and smell it, look for mud and roots "
                + (design.Floor.Barrier is null ? "at the base" : "in the barrier")
                + ", time how fast water sinks. Plan a rebuild if it stands.",
            CareRepeat.Days(again),
            "floor"
        )
        {
            Interval = CareIntervals.LayerReview,
        };
    }

    private static IEnumerable<CareDate> Living(TankPlan tank)
    {
        var (numbers, planting) = (tank.Numbers, tank.Start);
        var design = numbers.Design.Design;
        if (LitterTopUp(numbers) is { } topUp)
        {
            yield return Round(
                "litter-top-up",
                planting,
                topUp,
                (
                    "Top up the leaves",
                    FormattableString.Invariant(
                        $"Add cleaned leaves until {Cover(numbers):0.#} cm or more lie everywhere."
                    )
                ),
                "floor.litter"
            );
        }

        if (design.Plants.Count > 0)
        {
            yield return Round(
                "trim",
                planting,
                CareIntervals.Trim,
                ("Trim", "Cut back at most a third of each plant. Keep vents, lamp and front clear."),
                "plants"
            );
        }

        if (design.Crew.Any(c => c.Count > 0))
        {
            yield return Reseed(tank);
        }
    }

    /// <summary>
    /// Where the animals eat the crew up, as often as keeps it up, from their first day on; else by habit.
    /// </summary>
    private static CareDate Reseed(TankPlan tank)
    {
        var numbers = tank.Numbers;
        bool isComputed = numbers.Life is { Reseed: not null, ReseedEvery: not null };
        return Round(
            "crew-reseed",
            isComputed ? tank.Animals?.Earliest ?? tank.Start : tank.Start,
            isComputed ? numbers.Life!.ReseedEvery! : CareIntervals.Reseed,
            (
                "Seed crew again",
                isComputed
                    ? $"Add {NumberText.Whole(numbers.Life!.Reseed!)} springtails: the animals eat more than "
                        + "breed. Sooner if a trap stays empty overnight."
                    : "Count a trap overnight; seed a fresh cup, sooner if the trap stays low."
            ),
            "crew"
        );
    }
}
