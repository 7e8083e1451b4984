using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Litterfall.Domain.Quantities;
using Litterfall.Physics;
using Litterfall.Planning.Climate;
using Litterfall.Web.Desk;
using Microsoft.AspNetCore.Components;

namespace Litterfall.Web.Parts;

/// <summary>
/// Day and night, mist, level and drains of the forecast; moving along it moves the drawing.
/// </summary>
public sealed partial class Ribbon
{
    private ImmutableArray<SimulationHour> hours = [];
    private string Strip = "";
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
    public Taste Taste { get; set; } = Taste.Metric;

    private SimulationHour Now => hours[Math.Clamp(Hour, 0, hours.Length - 1)];

    private string Words
    {
        get
        {
            var first = BoxRun.FirstDay(Look.Month!.Design);
            var when = first.ToDateTime(TimeOnly.MinValue).AddHours(Now.Hour);
            var celsius = Taste.For(Units.Celsius);
            var length = Taste.For(Units.Millimeter);
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

    private static string Number(Domain.Quantities.Unit unit, double si, string form) =>
        unit.FromSi(si).ToString(form, CultureInfo.InvariantCulture) + Taste.Symbol(unit);

    /// <inheritdoc/>
    protected override void OnParametersSet()
    {
        if (ReferenceEquals(drawnOf, Look.Month))
        {
            return;
        }

        drawnOf = Look.Month;
        hours = DeskMoment.Hours(Look.Month);
        Strip = hours.IsEmpty ? "" : Draw();
    }

    private async Task Turn(ChangeEventArgs e)
    {
        if (int.TryParse(e.Value?.ToString(), CultureInfo.InvariantCulture, out var hour))
        {
            await HourChanged.InvokeAsync(hour);
        }
    }

    private string X(int hour) => Number(600.0 * hour / Math.Max(1, hours.Length - 1));

    private static string Number(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);

    private string Draw()
    {
        var svg = new StringBuilder();
        var numbers = Look.Month!;
        for (var i = 0; i + 1 < hours.Length; i++)
        {
            if (!DeskMoment.IsLit(numbers, hours[i].Hour + 0.5))
            {
                var from = i;
                while (i + 2 < hours.Length && !DeskMoment.IsLit(numbers, hours[i + 1].Hour + 0.5))
                {
                    i++;
                }

                svg.Append(
                    CultureInfo.InvariantCulture,
                    $"<rect class=\"night\" x=\"{X(from)}\" y=\"0\" "
                        + $"width=\"{Number(600.0 * (i + 1 - from) / (hours.Length - 1))}\" height=\"64\"/>"
                );
            }
        }

        foreach (var hour in hours.Skip(1).Where(h => h.MistedKilograms > 0))
        {
            var x = X((int)Math.Round(hour.Hour));
            svg.Append(CultureInfo.InvariantCulture, $"<path class=\"mist\" d=\"M{x} 0V7\"/>");
        }

        Level(svg, numbers.Layers.FirstOrDefault(l => l.Layer == "drainage")?.Depth.Si);
        foreach (var drain in numbers.Climate!.Computed!.Days.Events.Where(e => e.Kind == "drain"))
        {
            svg.Append(
                CultureInfo.InvariantCulture,
                $"<path class=\"drain\" d=\"M{X((int)drain.Hour)} 64v-12l-3 5M{X((int)drain.Hour)} 52l3 5\"/>"
            );
        }

        return svg.ToString();
    }

    /// <summary>The level against the barrier.</summary>
    private void Level(StringBuilder svg, double? barrier)
    {
        var top = Math.Max(barrier ?? 0.0, Math.Max(0.01, hours.Max(h => h.LevelMeters)));
        string Y(double level) => Number(62.0 - (48.0 * level / top));
        if (barrier is { } line)
        {
            svg.Append(CultureInfo.InvariantCulture, $"<path class=\"barrier\" d=\"M0 {Y(line)}H600\"/>");
        }

        svg.Append("<path class=\"level\" d=\"M0 64");
        var step = Math.Max(1, hours.Length / 300);
        for (var i = 0; i < hours.Length; i += step)
        {
            svg.Append(CultureInfo.InvariantCulture, $"L{X(i)} {Y(hours[i].LevelMeters)}");
        }

        svg.Append("L600 64Z\"/>");
    }
}
