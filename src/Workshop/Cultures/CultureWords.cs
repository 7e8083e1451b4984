using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Domain.Cultures;
using Litterfall.Quantities.Measures;

namespace Litterfall.Workshop.Cultures;

/// <summary>Plans and cautions of the culture shelf in plain sentences.</summary>
public static class CultureWords
{
    /// <summary>Cautions that stand beside every work at the shelf.</summary>
    public static ImmutableArray<string> Cautions { get; } =
    [
        "Clean line first, the doubtful one last; wash hands and spoon between lines.",
        "Mites: close the cup where it stands, bag it, throw it away outside. Wipe the board, keep the line "
            + "on hold.",
        "Old fly cups give off carbon dioxide and ammonia: open them outside or by an open window, not over "
            + "the face.",
        "No wild flies or springtails into a line: they bring mites and make flightless flies fly again.",
        "Some places ask for a permit to move or keep springtails and isopods: ask the plant health agency.",
    ];

    /// <summary>Animals, as sure as they are: "about 340", "about 2,600".</summary>
    /// <param name="animals">Animals that walk.</param>
    public static string About(double animals)
    {
        var step = animals switch
        {
            < 20 => 1,
            < 200 => 5,
            < 2000 => 10,
            _ => 100,
        };
        return (Math.Round(animals / step) * step).ToString("#,0", CultureInfo.InvariantCulture);
    }

    /// <summary>What a step of a plan asks for.</summary>
    /// <param name="step">The step.</param>
    public static string Told(SplitStep step) =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{NumberText.Day(step.Day)}: {(step.IsForMothers ? "divide" : "split")} {step.Mother}"
        )
        + (step.Mothers > 1 ? $" ({NumberText.Count(step.Mothers, "mother", "mothers")})" : "")
        + $", line {step.Line}: {NumberText.Count(step.Cups, "new cup", "new cups")}, "
        + $"about {About(step.AnimalsEach)} animals each"
        + (step.IsForMothers ? "; they become mothers" : "");

    /// <summary>What comes of a plan, in one or two sentences.</summary>
    /// <param name="plan">The plan.</param>
    /// <param name="kind">The animal.</param>
    /// <param name="celsius">Temperature of the shelf, °C.</param>
    public static string Outcome(SplitPlan plan, CultureKind kind, double celsius)
    {
        var order = plan.Order;
        var wanted =
            $"{NumberText.Count(order.Cups, "cup", "cups")} of {About(order.Animals)} animals by "
            + NumberText.Day(order.Due);
        return plan.Bar switch
        {
            SplitBar.None => $"{wanted}: ready {NumberText.Day(plan.Ready!.Value)}. "
                + $"{NumberText.Count(plan.Started, "cup is", "cups are")} started so that enough are left.",
            SplitBar.NoMother => $"{wanted}: not possible, there is no mother. Buy a clean culture.",
            SplitBar.Temperature => $"{wanted}: not possible, at {Celsius(celsius)} they do not multiply. "
                + $"They grow fastest near {Celsius(plan.Celsius!.Value)}.",
            SplitBar.CupTooSmall => $"{wanted}: not possible, a cup with "
                + order.Liters.ToString("0.##", CultureInfo.InvariantCulture)
                + $" L of substrate holds about {About(kind.PlateauOf(order.Liters) / kind.Females)} "
                + "animals. Take a larger cup or fewer animals.",
            _ => $"{wanted}: not possible with these mothers at {Celsius(celsius)}. " + Nearest(plan),
        };
    }

    private static string Nearest(SplitPlan plan)
    {
        string[] ways =
        [
            plan.Earliest is { } day ? $"All would be ready on {NumberText.Day(day)}" : "",
            plan.MothersMore is { } more
                ? $"with {NumberText.Count(more, "mother more", "mothers more")} the day is kept"
                : "",
            plan.Celsius is { } warm ? $"at {Celsius(warm)} the day is kept" : "",
            plan.CupsToBuy < plan.Order.Cups
                ? $"{NumberText.Count(plan.CupsPossible, "cup", "cups")} can be ready: buy "
                    + NumberText.Integer(plan.CupsToBuy)
                : $"buy {NumberText.Count(plan.CupsToBuy, "cup", "cups")}",
        ];
        return NumberText.Capital(string.Join("; or ", ways.Where(w => w.Length > 0))) + ".";
    }

    /// <summary>A famine in one sentence, and what can be done.</summary>
    /// <param name="famine">The famine.</param>
    /// <param name="fly">Name of the flies.</param>
    /// <param name="today">Today.</param>
    public static string Told(Famine famine, string fly, DateOnly today)
    {
        var cups = NumberText.Count(famine.Cups, "cup", "cups");
        var first =
            $"Too few {fly} from {NumberText.Day(famine.Day)} on: about {About(famine.Missing)} are missing "
            + $"that day, on {NumberText.Count(famine.Days, "day", "days")} of the next two weeks.";
        return famine.StartBy is not { } by ? $"{first} The shelf is too cold for flies."
            : by < today
                ? $"{first} The start of {cups} on {NumberText.Day(by)} was missing. Buy {cups}, or feed "
                    + "something else on those days."
            : $"{first} Start {cups} by {NumberText.Day(by)}.";
    }

    /// <summary>What somebody should mind about a culture, worst first.</summary>
    /// <param name="culture">The culture.</param>
    /// <param name="book">The shelf.</param>
    public static IEnumerable<string> Flags(Culture culture, CultureBook book)
    {
        if (culture.Held.Length > 0)
        {
            yield return $"on hold: {culture.Held}";
        }

        var warm = book.Celsius(culture, book.Today);
        var isFly = book.Kind(culture.Species) is null;
        if (isFly ? warm > FlyWarmest : book.Kind(culture.Species)!.Rates(warm).GrowthFactor() <= 1)
        {
            yield return $"too warm at {Celsius(warm)}";
        }

        var age = book.Today.DayNumber - culture.Since.DayNumber;
        if (isFly && age >= CulturePractice.Days(FlyPractice.Discard))
        {
            yield return $"throw away: {NumberText.Count(age, "day", "days")} old";
        }

        if (
            !isFly
            && book.Today.DayNumber - culture.LastFed.DayNumber is var hungry
            && hungry > CulturePractice.Days(CulturePractice.FeedEvery)
        )
        {
            yield return $"fed {NumberText.Count(hungry, "day", "days")} ago";
        }
    }

    /// <summary>A temperature of the shelf.</summary>
    /// <param name="celsius">°C.</param>
    public static string Celsius(double celsius) =>
        string.Create(CultureInfo.InvariantCulture, $"{celsius:0.#} °C");

    private static double FlyWarmest => Domain.Units.Unit.Celsius.FromSi(FlyPractice.Warmest.Si);
}
