using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Physics.Coupling;
using Litterfall.Quantities.Sizing;
using Litterfall.Web.Desk;
using Litterfall.Web.Library;

namespace Litterfall.Web.Charts;

/// <summary>
/// The picture of the time ribbon: nights behind, a tick for each mist, the air against the animal's band,
/// fog, and the water over the base against the barrier.
/// </summary>
public sealed class RibbonStrip
{
    /// <summary>Width of the picture; it is stretched to the page.</summary>
    public const double Wide = 600;

    private const double AirTop = 12;
    private const double AirFoot = 50;
    private const double FogTop = 54;
    private const double FogTall = 6;
    private const double WaterTop = 66;
    private const double WaterFoot = 102;
    private const double FoggedShare = 0.25;
    private readonly StringBuilder svg = new();
    private readonly DesignNumbers numbers;
    private readonly ImmutableArray<SimulationHour> hours;

    private RibbonStrip(DesignNumbers numbers, ImmutableArray<SimulationHour> hours) =>
        (this.numbers, this.hours) = (numbers, hours);

    /// <summary>The picture.</summary>
    public string Body { get; private set; } = "";

    /// <summary>Least and most of the air.</summary>
    public string Air { get; private set; } = "";

    /// <summary>How often there is fog on any pane.</summary>
    public string Fog { get; private set; } = "";

    /// <summary>Highest water.</summary>
    public string Water { get; private set; } = "";

    /// <summary>True where it mists.</summary>
    public bool Mist { get; private set; }

    /// <summary>True where there is a barrier over a drainage layer.</summary>
    public bool Barrier { get; private set; }

    /// <summary>Draws it.</summary>
    /// <param name="numbers">The design with its month.</param>
    /// <param name="hours">Its hours, at least one.</param>
    /// <param name="preferences">Units.</param>
    public static RibbonStrip Of(
        DesignNumbers numbers,
        ImmutableArray<SimulationHour> hours,
        UnitPreferences preferences
    )
    {
        var strip = new RibbonStrip(numbers, hours);
        strip.Nights();
        strip.AirLane(preferences);
        strip.FogLane();
        strip.Mists();
        strip.WaterLane(preferences);
        strip.Body = strip.svg.ToString();
        return strip;
    }

    private static string Number(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);

    private string X(int hour) => Number(Wide * hour / Math.Max(1, hours.Length - 1));

    private void Nights() => Runs(h => !DeskMoment.IsLit(numbers, h.Hour + 0.5), "night", 0, WaterFoot + 2);

    private void FogLane()
    {
        var panes = numbers.Climate!.Computed!.Run.Surfaces.Panes;
        bool Fogs(SimulationHour h) => panes.Any(p => h.Fogged[p.Place] > FoggedShare);
        Runs(Fogs, "fog", FogTop, FogTall);
        var count = hours.Count(Fogs);
        Fog =
            count == 0
                ? "no fog"
                : string.Create(
                    CultureInfo.InvariantCulture,
                    $"fog on a pane, {24.0 * count / hours.Length:0.#} h a day"
                );
    }

    /// <summary>Rectangles over the hours for which something holds.</summary>
    private void Runs(Func<SimulationHour, bool> holds, string kind, double top, double tall)
    {
        var wide = Wide / Math.Max(1, hours.Length - 1);
        for (var i = 0; i + 1 < hours.Length; i++)
        {
            var from = i;
            while (i + 1 < hours.Length && holds(hours[i]))
            {
                i++;
            }

            if (i > from)
            {
                svg.Append(
                    CultureInfo.InvariantCulture,
                    $"<rect class=\"{kind}\" x=\"{X(from)}\" y=\"{Number(top)}\" "
                        + $"width=\"{Number(wide * (i - from))}\" height=\"{Number(tall)}\"/>"
                );
            }
        }
    }

    private void Mists()
    {
        foreach (var hour in hours.Skip(1).Where(h => h.MistedKilograms > 0))
        {
            Mist = true;
            svg.Append(
                CultureInfo.InvariantCulture,
                $"<path class=\"mist\" d=\"M{X((int)Math.Round(hour.Hour))} 0V9\"/>"
            );
        }
    }

    private void AirLane(UnitPreferences preferences)
    {
        var (low, high) = (hours.Min(h => h.AirCelsius), hours.Max(h => h.AirCelsius));
        var band = SpeciesBand.Of(numbers.Design, a => a.CoolestNight, a => a.WarmestDay);
        var (least, most) = band is { } b
            ? (Math.Min(low, b.Low), Math.Max(high, b.High))
            : (low - 0.5, high + 0.5);
        string Y(double celsius) =>
            Number(AirFoot - ((AirFoot - AirTop) * (celsius - least) / Math.Max(0.1, most - least)));
        if (band is { } wanted)
        {
            svg.Append(
                CultureInfo.InvariantCulture,
                $"<path class=\"band\" d=\"M0 {Y(wanted.High)}H{Wide}V{Y(wanted.Low)}H0Z\"/>"
            );
        }

        svg.Append("<path class=\"line\" d=\"");
        for (var i = 0; i < hours.Length; i++)
        {
            svg.Append(
                CultureInfo.InvariantCulture,
                $"{(i == 0 ? 'M' : 'L')}{X(i)} {Y(hours[i].AirCelsius)}"
            );
        }

        svg.Append("\"/>");
        var unit = preferences.For(Unit.Celsius);
        Air = string.Create(
            CultureInfo.InvariantCulture,
            $"{unit.FromSi(low + 273.15):0.#} to {unit.FromSi(high + 273.15):0.#}"
                + $"{UnitPreferences.Symbol(unit)}"
        );
    }

    /// <summary>The level against the barrier, and drains.</summary>
    private void WaterLane(UnitPreferences preferences)
    {
        var barrier = numbers.Layers.FirstOrDefault(l => l.Kind == LayerKind.Drainage)?.Depth.Si;
        var highest = hours.Max(h => h.LevelMeters);
        var top = Math.Max(barrier ?? 0.0, Math.Max(0.01, highest));
        string Y(double level) => Number(WaterFoot - ((WaterFoot - WaterTop) * level / top));
        if (barrier is { } line)
        {
            Barrier = true;
            svg.Append(CultureInfo.InvariantCulture, $"<path class=\"barrier\" d=\"M0 {Y(line)}H{Wide}\"/>");
        }

        svg.Append(CultureInfo.InvariantCulture, $"<path class=\"level\" d=\"M0 {WaterFoot + 2}");
        var step = Math.Max(1, hours.Length / 300);
        for (var i = 0; i < hours.Length; i += step)
        {
            svg.Append(CultureInfo.InvariantCulture, $"L{X(i)} {Y(hours[i].LevelMeters)}");
        }

        svg.Append(CultureInfo.InvariantCulture, $"L{Wide} {WaterFoot + 2}Z\"/>");
        foreach (var drain in numbers.Climate!.Computed!.Days.Events.Where(e => e.Kind == "drain"))
        {
            var x = X((int)drain.Hour);
            svg.Append(
                CultureInfo.InvariantCulture,
                $"<path class=\"drain\" d=\"M{x} {WaterTop}V{WaterFoot}l-3 -5M{x} {WaterFoot}l3 -5\"/>"
            );
        }

        var unit = preferences.For(Unit.Millimeter);
        Water = string.Create(
            CultureInfo.InvariantCulture,
            $"water, at most {unit.FromSi(highest):0.#}{UnitPreferences.Symbol(unit)} over the base"
        );
    }
}
