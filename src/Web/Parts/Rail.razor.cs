using System.Collections.Immutable;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Instructions.Care;
using Litterfall.Judging;
using Litterfall.Quantities.Sizing;
using Litterfall.Web.Desk;
using Litterfall.Web.Library;
using Microsoft.AspNetCore.Components;

namespace Litterfall.Web.Parts;

/// <summary>What follows from the design: the verdict, findings, four panels, quantities.</summary>
public sealed partial class Rail
{
    private const int Year = 365;
    private string? told;

    /// <summary>The library.</summary>
    [Inject]
    public required BenchLibrary Library { get; set; }

    /// <summary>The design at hand.</summary>
    [Parameter, EditorRequired]
    public required DeskWork Work { get; set; }

    /// <summary>Units.</summary>
    [Parameter]
    public Taste Taste { get; set; } = Taste.Metric;

    /// <summary>Hour of the forecast.</summary>
    [Parameter]
    public int Hour { get; set; }

    /// <summary>A part is to be shown.</summary>
    [Parameter]
    public EventCallback<string?> OnSelect { get; set; }

    /// <summary>A field is gone to; gives its path.</summary>
    [Parameter]
    public EventCallback<string> OnGoTo { get; set; }

    /// <summary>A number is asked where it comes from.</summary>
    [Parameter]
    public EventCallback<string> OnAsk { get; set; }

    private string VerdictText =>
        Work.Look.Faults.Length > 0 ? "The design cannot be calculated as entered."
        : Work.Look.Whole is not { } whole ? "Calculating…"
        : Verdict.Of(whole, Taste) + (Work.Look.WholeIsOld ? " (recalculating…)" : "");

    private AnimalDay? AnimalDay =>
        Work.Look.Whole is { } whole ? TankPlan.Of(whole.Numbers, whole.Findings).Animals : null;

    private string Waiting => Work.Look.Faults.Length > 0 ? "Not calculated" : "Calculating…";

    private string VerdictClass =>
        Work.Look.Whole is not { } whole || Work.Look.WholeIsOld ? "old"
        : whole.Stops ? "stop"
        : whole.Open.Any(f => f.Severity == Severity.Caution) ? "caution"
        : "well";

    private Forecasting.DesignNumbers? Month => Work.Look.Month;

    private ImmutableArray<double> Levels =>
        Month?.Water.Forecast is { } forecast
            ? [.. forecast.Days.Take(Year).Select(d => LevelUnit.FromSi(d.LevelMeters))]
            : [];

    private (double, string)? Barrier =>
        Month?.Layers.FirstOrDefault(l => l.Kind == LayerKind.Drainage) is { } drainage
            ? (LevelUnit.FromSi(drainage.Depth.Si), "barrier")
            : null;

    private ImmutableArray<double> Airs =>
        Month?.Climate?.Computed is { } climate
            ? [.. climate.Days.ByHour.Select(h => Warmth(h.Celsius))]
            : [];

    private ImmutableArray<double> Humidities =>
        Month?.Climate?.Computed is { } climate ? [.. climate.Days.ByHour.Select(h => 100 * h.Humidity)] : [];

    private ImmutableArray<double> Fogs =>
        Month?.Climate?.Computed is { } climate ? [.. climate.Days.FogByHour.Select(h => 100 * h)] : [];

    /// <summary>Tight and loose gaps: what nobody measures of a box moves its air between them.</summary>
    private (ImmutableArray<double>, ImmutableArray<double>) AirSpread => Spread(h => Warmth(h.Celsius));

    private (ImmutableArray<double>, ImmutableArray<double>) HumidSpread => Spread(h => 100 * h.Humidity);

    private (ImmutableArray<double>, ImmutableArray<double>) Spread(
        Func<(double Celsius, double Humidity), double> of
    ) =>
        Work.Look is { WholeIsOld: false, Whole.Numbers.Climate.Computed.Band: var (tight, loose) }
        && tight is not null
        && loose is not null
            ? ([.. tight.ByHour.Select(of)], [.. loose.ByHour.Select(of)])
            : ([], []);

    private IEnumerable<string> Panes => Month?.Climate?.Fog.Select(f => f.Pane) ?? [];

    private (double, double, string)? AnimalBand =>
        Band(a => a.CoolestNight, a => a.WarmestDay) is var (low, high, words)
            ? (Warmth(low), Warmth(high), words)
            : null;

    private Unit LevelUnit => Taste.For(Unit.Millimeter);

    private Unit AirUnit => Taste.For(Unit.Celsius);

    private double Warmth(double celsius) => AirUnit.FromSi(Unit.Celsius.ToSiValue(celsius));

    private (double, double, string)? HumidBand => Band(a => a.LeastHumidity, a => a.LargestHumidity);

    private ImmutableArray<double> Springtails =>
        Work.Look.Whole?.Numbers.Life is { } life && life.IsSpringtail.Contains(true)
            ?
            [
                .. life
                    .Days.Take(Year)
                    .Where((_, i) => i % 7 == 0)
                    .Select(d => d.Mobile.Where((_, i) => life.IsSpringtail[i]).Sum()),
            ]
            : [];

    private (double, double, string)? Band(Func<AnimalEntry, Figure?> low, Func<AnimalEntry, Figure?> high) =>
        Month is { } month && SpeciesBand.Of(month.Design, low, high) is { } band
            ? (band.Low, band.High, "target")
            : null;

    /// <summary>True where something weighs enough to be solved, and may be.</summary>
    private bool CanImprove =>
        Work.Look.Whole is { } whole
        && (whole.Stops || whole.Open.Any(f => f.Severity == Severity.Caution && Work.Look.FixesOf(f).Any()));

    private async Task MakeBuildableAsync()
    {
        told = null;
        told = await Work.MakeBuildableAsync();
    }

    private Task GoToAsync(string path) =>
        OnGoTo.HasDelegate ? OnGoTo.InvokeAsync(path)
        : PartFields.PartOf(path) is { } part ? OnSelect.InvokeAsync(part)
        : Task.CompletedTask;
}
