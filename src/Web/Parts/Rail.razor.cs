using Litterfall.Domain.Findings;
using Litterfall.Instructions.Care;
using Litterfall.Web.Desk;
using Litterfall.Web.Library;
using Microsoft.AspNetCore.Components;

namespace Litterfall.Web.Parts;

/// <summary>What follows from the design: the verdict, findings, four panels, quantities.</summary>
public sealed partial class Rail
{
    private string? told;

    /// <summary>The library.</summary>
    [Inject]
    public required BenchLibrary Library { get; set; }

    /// <summary>The design at hand.</summary>
    [Parameter, EditorRequired]
    public required DeskWork Work { get; set; }

    /// <summary>Units.</summary>
    [Parameter]
    public UnitPreferences UnitPreferences { get; set; } = UnitPreferences.Metric;

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

    private string Waiting => Work.Look.Faults.Length > 0 ? "Not calculated" : "Calculating…";

    private Forecasting.DesignNumbers? Month => Work.Look.Month;

    private IEnumerable<string> Panes => Month?.Climate?.Fog.Select(f => f.Pane) ?? [];

    /// <summary>True where something weighs enough to be solved, and may be.</summary>
    private bool CanImprove =>
        Work.Look.Whole is { } whole
        && (whole.Stops || whole.Open.Any(f => f.Severity == Severity.Caution && Work.Look.FixesOf(f).Any()));

    private async Task MakeBuildableAsync()
    {
        told = null;
        told = await Work.MakeBuildableAsync();
    }
}
