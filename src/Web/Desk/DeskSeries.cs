using System.Collections.Immutable;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Quantities.Sizing;
using Litterfall.Web.Library;

namespace Litterfall.Web.Desk;

/// <summary>Courses of a look that charts show.</summary>
public static class DeskSeries
{
    private const int Year = 365;
    private const int Week = 7;

    /// <summary>The unit of small depths.</summary>
    /// <param name="preferences">Units of the reader.</param>
    public static Unit LevelUnit(UnitPreferences preferences) => preferences.For(Unit.Millimeter);

    /// <summary>The unit of warmth.</summary>
    /// <param name="preferences">Units of the reader.</param>
    public static Unit AirUnit(UnitPreferences preferences) => preferences.For(Unit.Celsius);

    /// <summary>A warmth in the unit of the reader.</summary>
    /// <param name="celsius">In °C.</param>
    /// <param name="preferences">Units of the reader.</param>
    public static double Warmth(double celsius, UnitPreferences preferences) =>
        AirUnit(preferences).FromSi(Unit.Celsius.ToSiValue(celsius));

    /// <summary>Water over the base by day.</summary>
    /// <param name="look">What is computed.</param>
    /// <param name="preferences">Units of the reader.</param>
    public static ImmutableArray<double> Levels(DeskLook look, UnitPreferences preferences) =>
        look.Month?.Water.Forecast is { } forecast
            ? [.. forecast.Days.Take(Year).Select(d => LevelUnit(preferences).FromSi(d.LevelMeters))]
            : [];

    /// <summary>Height of the barrier with its word; null without a drainage layer.</summary>
    /// <param name="look">What is computed.</param>
    /// <param name="preferences">Units of the reader.</param>
    public static (double, string)? Barrier(DeskLook look, UnitPreferences preferences) =>
        look.Month?.Layers.FirstOrDefault(l => l.Kind == LayerKind.Drainage) is { } drainage
            ? (LevelUnit(preferences).FromSi(drainage.Depth.Si), "barrier")
            : null;

    /// <summary>Temperature of the air over a day.</summary>
    /// <param name="look">What is computed.</param>
    /// <param name="preferences">Units of the reader.</param>
    public static ImmutableArray<double> Airs(DeskLook look, UnitPreferences preferences) =>
        look.Month?.Climate?.Computed is { } climate
            ? [.. climate.Days.ByHour.Select(h => Warmth(h.Celsius, preferences))]
            : [];

    /// <summary>Warmth that the animals of the design want; null where nothing is known.</summary>
    /// <param name="look">What is computed.</param>
    /// <param name="preferences">Units of the reader.</param>
    public static (double, double, string)? AirBand(DeskLook look, UnitPreferences preferences) =>
        Band(look, a => a.CoolestNight, a => a.WarmestDay) is var (low, high, words)
            ? (Warmth(low, preferences), Warmth(high, preferences), words)
            : null;

    /// <summary>Humidity over a day, %.</summary>
    /// <param name="look">What is computed.</param>
    public static ImmutableArray<double> Humidities(DeskLook look) =>
        look.Month?.Climate?.Computed is { } climate
            ? [.. climate.Days.ByHour.Select(h => 100 * h.Humidity)]
            : [];

    /// <summary>Fog on the worst pane, % of each hour.</summary>
    /// <param name="look">What is computed.</param>
    public static ImmutableArray<double> Fogs(DeskLook look) =>
        look.Month?.Climate?.Computed is { } climate ? [.. climate.Days.FogByHour.Select(h => 100 * h)] : [];

    /// <summary>Springtails by week.</summary>
    /// <param name="look">What is computed.</param>
    public static ImmutableArray<double> Springtails(DeskLook look) =>
        look.Whole?.Numbers.Life is { } life && life.IsSpringtail.Contains(true)
            ?
            [
                .. life
                    .Days.Take(Year)
                    .Where((_, i) => i % Week == 0)
                    .Select(d => d.Mobile.Where((_, i) => life.IsSpringtail[i]).Sum()),
            ]
            : [];

    /// <summary>Tight and loose gaps: what nobody measures of a box moves its air between them.</summary>
    /// <param name="look">What is computed.</param>
    /// <param name="of">The value of an hour.</param>
    public static (ImmutableArray<double>, ImmutableArray<double>) Spread(
        DeskLook look,
        Func<(double Celsius, double Humidity), double> of
    ) =>
        look is { WholeIsOld: false, Whole.Numbers.Climate.Computed.Band: var (tight, loose) }
        && tight is not null
        && loose is not null
            ? ([.. tight.ByHour.Select(of)], [.. loose.ByHour.Select(of)])
            : ([], []);

    /// <summary>What the animals of the design want; null where nothing is known.</summary>
    /// <param name="look">What is computed.</param>
    /// <param name="low">Lower end.</param>
    /// <param name="high">Upper end.</param>
    public static (double, double, string)? Band(
        DeskLook look,
        Func<AnimalEntry, Figure?> low,
        Func<AnimalEntry, Figure?> high
    ) =>
        look.Month is { } month && SpeciesBand.Of(month.Design, low, high) is { } band
            ? (band.Low, band.High, "target")
            : null;
}
