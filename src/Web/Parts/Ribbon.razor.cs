using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Domain.Units;
using Litterfall.Forecasting.Climate;
using Litterfall.Physics.Coupling;
using Litterfall.Web.Desk;
using Litterfall.Web.Library;
using Microsoft.AspNetCore.Components;

namespace Litterfall.Web.Parts;

/// <summary>
/// Day and night, mist, air, fog, level and drains of the forecast; moving along it moves the drawing.
/// </summary>
public sealed partial class Ribbon
{
    private ImmutableArray<SimulationHour> hours = [];
    private object? drawnOf;

    /// <summary>What is shown.</summary>
    [Parameter, EditorRequired]
    public required DeskLook Look { get; set; }

    /// <summary>The hour.</summary>
    [Parameter]
    public int Hour { get; set; }

    /// <summary>Another hour.</summary>
    [Parameter]
    public EventCallback<int> HourChanged { get; set; }

    /// <summary>Units.</summary>
    [Parameter]
    public UnitPreferences UnitPreferences { get; set; } = UnitPreferences.Metric;

    private SimulationHour Now => hours[Math.Clamp(Hour, 0, hours.Length - 1)];

    private string Words
    {
        get
        {
            var first = BoxRun.FirstDay(Look.Month!.Design);
            var when = first.ToDateTime(TimeOnly.MinValue).AddHours(Now.Hour);
            var celsius = UnitPreferences.For(Unit.Celsius);
            var length = UnitPreferences.For(Unit.Millimeter);
            var fog = Look
                .Month.Climate!.Computed!.Run.Surfaces.Panes.Where(p => Now.Fogged[p.Place] > 0.25)
                .Select(p => p.Name)
                .ToArray();
            string[] words =
            [
                FormattableString.Invariant(
                    $"{when:ddd d MMM, HH:mm}, day {Math.Floor(Now.Hour / 24) + 1:0}: air"
                ),
                Number(celsius, Now.AirCelsius + 273.15, "0.0"),
                FormattableString.Invariant($"{100 * Now.Humidity:0} % humid"),
                $"water {Number(length, Now.LevelMeters, "0.#")} over the base",
            ];
            var told = $"{words[0]} {string.Join(", ", words[1..])}";
            return fog.Length > 0 ? $"{told}, fog on {string.Join(" and ", fog)}" : told;
        }
    }

    private static string Number(Unit unit, double si, string form) =>
        unit.FromSi(si).ToString(form, CultureInfo.InvariantCulture) + UnitPreferences.Symbol(unit);

    /// <inheritdoc/>
    protected override void OnParametersSet()
    {
        if (ReferenceEquals(drawnOf, Look.Month))
        {
            return;
        }

        drawnOf = Look.Month;
        hours = DeskMoment.Hours(Look.Month);
    }

    private async Task Turn(ChangeEventArgs e)
    {
        if (int.TryParse(e.Value?.ToString(), CultureInfo.InvariantCulture, out var hour))
        {
            await HourChanged.InvokeAsync(hour);
        }
    }
}
