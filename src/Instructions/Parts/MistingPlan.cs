using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Judging.Levers;
using Litterfall.Quantities.Measures;

namespace Litterfall.Instructions.Parts;

/// <summary>One misting of the day.</summary>
/// <param name="At">Time of day.</param>
/// <param name="Entered">How long, as the design has it.</param>
/// <param name="Advised">Seconds the settings card advises from planting on; null where it keeps it.</param>
public sealed record MistBurst(TimeOnly At, Figure Entered, double? Advised);

/// <summary>
/// The misting of a box as every paper tells it: the one program that the design holds and the forecast
/// judges, and beside it, in the same words everywhere, what the settings card advises from planting on.
/// </summary>
public sealed record MistingPlan
{
    private MistingPlan() { }

    /// <summary>The mistings in the order of the design; empty where no times are entered.</summary>
    public required ImmutableArray<MistBurst> Bursts { get; init; }

    /// <summary>What leaves the nozzles a day, as entered.</summary>
    public required Figure Entered { get; init; }

    /// <summary>The same as advised, in m³; null where the card keeps what is entered.</summary>
    public required double? Advised { get; init; }

    /// <summary>What the advised mist does to the water in the floor; null without advice.</summary>
    public required string? Level { get; init; }

    /// <summary>The misting of a design; null without a misting system.</summary>
    /// <param name="numbers">The design.</param>
    /// <param name="card">Its settings, season by season; null where they are not computed.</param>
    public static MistingPlan? Of(DesignNumbers numbers, SettingsCard? card)
    {
        var design = numbers.Design;
        if (design.Design.Misting is not { } misting || MistingDay.Misted(design) is not { } entered)
        {
            return null;
        }

        var first = card is { Settings: [var setting, ..] } && setting.IsOther(misting) ? setting : null;
        return new MistingPlan
        {
            Bursts =
            [
                .. misting.Times.Select(
                    (t, i) =>
                        new MistBurst(
                            t.At,
                            design.Figure(
                                $"misting.times[{NumberText.Integer(i)}].for",
                                "misting time",
                                t.For,
                                Unit.Second
                            ),
                            first?.MistSeconds[i]
                        )
                ),
            ],
            Entered = entered,
            Advised = first?.Cubic(design),
            Level = first?.Level,
        };
    }

    /// <summary>
    /// "07:30 for 20 s; 18:00 for 20 s", and where the card advises otherwise "07:30, entered 20 s, advised
    /// 17 s; …".
    /// </summary>
    public string Times =>
        string.Join("; ", Bursts.Select(b => $"{NumberText.Clock(b.At)}{Span(b.Entered, b.Advised)}"));

    /// <summary>"120 mL a day", or "entered 120 mL a day, advised 102 mL a day".</summary>
    public string PerDay =>
        Advised is { } advised
            ? $"entered {NumberText.Milliliters(Entered)} a day, advised {Milliliters(advised)} a day"
            : $"{NumberText.Milliliters(Entered)} a day";

    /// <summary>A number of the forecast, and what would become of it with the mist advised.</summary>
    /// <param name="number">The number in words, such as "172 mL a day".</param>
    public string Judged(string number) =>
        Level is { } level ? $"{number} with the mist entered; with the mist advised {level}" : number;

    /// <summary>One misting: " for 20 s", or ", entered 20 s, advised 17 s".</summary>
    /// <param name="entered">As the design has it.</param>
    /// <param name="advised">Seconds; null where nothing else is advised.</param>
    public static string Span(Figure entered, double? advised) =>
        advised is { } seconds
            ? $", entered {NumberText.Of(entered)}, advised "
                + string.Create(CultureInfo.InvariantCulture, $"{seconds:0} s")
            : $" for {NumberText.Of(entered)}";

    private static string Milliliters(double cubicMeters) =>
        string.Create(CultureInfo.InvariantCulture, $"{cubicMeters * 1e6:0} mL");
}
