using System.Collections.Immutable;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Instructions.Care;
using Litterfall.Judging;
using Litterfall.Judging.Levers;
using Litterfall.Judging.Rules;
using Litterfall.Quantities.Sizing;
using Litterfall.Web.Desk;
using Litterfall.Web.Library;
using Microsoft.AspNetCore.Components;

namespace Litterfall.Web.Parts;

/// <summary>What follows from the design: the verdict, findings, four panels, quantities.</summary>
public sealed partial class Rail
{
    private const int Most = 5;
    private const int Year = 365;
    private readonly Dictionary<Finding, DesignFix?> fixes = [];
    private Domain.DesignFile.DesignDocument? fixedFor;
    private bool all;

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

    /// <summary>A number is asked where it comes from.</summary>
    [Parameter]
    public EventCallback<string> OnAsk { get; set; }

    private AnimalDay? AnimalDay =>
        Work.Look.Whole is { } whole ? TankPlan.Of(whole.Numbers, whole.Findings).Animals : null;

    private string Waiting => Work.Look.Faults.Length > 0 ? "not computed" : "computing…";

    private Forecasting.DesignNumbers? Month => Work.Look.Month;

    private ImmutableArray<double> Levels =>
        Month?.Water.Forecast is { } forecast
            ? [.. forecast.Days.Take(Year).Select(d => d.LevelMeters * 1000)]
            : [];

    private (double, string)? Barrier =>
        Month?.Layers.FirstOrDefault(l => l.Kind == LayerKind.Drainage) is { } drainage
            ? (drainage.Depth.Si * 1000, "barrier")
            : null;

    private ImmutableArray<double> Airs =>
        Month?.Climate?.Computed is { } climate ? [.. climate.Days.ByHour.Select(h => h.Celsius)] : [];

    private ImmutableArray<double> Humidities =>
        Month?.Climate?.Computed is { } climate ? [.. climate.Days.ByHour.Select(h => 100 * h.Humidity)] : [];

    private ImmutableArray<double> Fogs =>
        Month?.Climate?.Computed is { } climate ? [.. climate.Days.FogByHour.Select(h => 100 * h)] : [];

    /// <summary>Tight and loose gaps: what nobody measures of a box moves its air between them.</summary>
    private (ImmutableArray<double>, ImmutableArray<double>) AirSpread => Spread(h => h.Celsius);

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

    private (double, double, string)? AnimalBand => Band(a => a.CoolestNight, a => a.WarmestDay);

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
            ? (band.Low, band.High, "wanted")
            : null;

    /// <summary>Looked for once for each finding of a document.</summary>
    private DesignFix? Quick(Finding finding)
    {
        if (Work.Look.WholeIsOld)
        {
            return null;
        }

        if (!ReferenceEquals(fixedFor, Work.Document))
        {
            fixedFor = Work.Document;
            fixes.Clear();
        }

        if (!fixes.TryGetValue(finding, out var fix))
        {
            fix = Work.Look.Whole is { } whole ? RuleBook.Fix(finding, whole.Numbers.Design) : null;
            fixes[finding] = fix;
        }

        return fix;
    }

    private void TryLever(LeverFix fix)
    {
        if (Work.Look.Whole is { } whole && LeverSearch.Turned(whole.Numbers.Design, fix) is { } turned)
        {
            Work.Try(turned.Document, $"{fix.Lever} {Taste.Show(fix.To, fix.To.Unit!)}");
        }
    }
}
