using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Litterfall.Running.Correcting;

namespace Litterfall.Web.Tanks.Forecasts;

/// <summary>
/// The level over time: before the readings as a light band, after them as a darker one with its line, and
/// the readings as dots.
/// </summary>
/// <param name="correction">What came out.</param>
/// <param name="highest">Level at which it is drained, mm; null where nobody drains it by hand.</param>
public sealed class LevelPicture(TankCorrection correction, double? highest)
{
    private const double Wide = 640;
    private const double Tall = 260;
    private const double Left = 64;
    private const double Right = 12;
    private const double Top = 14;
    private const double Bottom = 34;
    private const int EveryHours = 6;
    private const int MostTicks = 6;
    private static readonly CultureInfo Invariant = CultureInfo.InvariantCulture;
    private readonly double most = Most(correction, highest);

    private int Hours => correction.After.Level.Millimeters.Length - 1;

    private IEnumerable<ReadingSight> Levels => correction.Sights.Where(s => s.Kind == SightKind.Level);

    private static double Most(TankCorrection of, double? highest)
    {
        var read = of
            .Sights.Where(s => s.Kind == SightKind.Level)
            .Select(s => s.Value)
            .DefaultIfEmpty(0)
            .Max();
        return 1.08
            * Math.Max(
                Math.Max(of.Before.Level.High.Max(), of.After.Level.High.Max()),
                Math.Max(read, Math.Max(highest ?? 0, 5))
            );
    }

    private double X(double hour) => Left + ((Wide - Left - Right) * hour / Math.Max(1, Hours));

    private double Y(double millimeters) => Top + ((Tall - Top - Bottom) * (1 - (millimeters / most)));

    /// <summary>What it shows, for those who hear it.</summary>
    public string Said =>
        string.Create(
            Invariant,
            $"Water over the base for {correction.Days} days from {correction.First:MMM d}: at the end "
                + $"{Range(correction.Before.Level, Hours)} before the readings, "
                + $"{Range(correction.After.Level, Hours)} after them; "
                + $"{Levels.Count()} levels were read"
        );

    /// <summary>The drawing.</summary>
    public string Body
    {
        get
        {
            var svg = new StringBuilder();
            Rules(svg);
            Band(svg, "was", correction.Before.Level);
            Band(svg, "now", correction.After.Level);
            Line(svg, correction.After.Level.Millimeters);
            Mark(svg);
            foreach (var sight in Levels)
            {
                svg.Append(
                    Invariant,
                    $"<circle class=\"dot\" cx=\"{X(sight.Hour):0.#}\" "
                        + $"cy=\"{Y(sight.Value):0.#}\" r=\"4.5\"/>"
                );
            }

            return svg.ToString();
        }
    }

    /// <summary>The same as a table: a row for each week.</summary>
    public IEnumerable<(string Day, string Before, string After)> Rows
    {
        get
        {
            const int week = 7 * 24;
            for (var h = 0; h <= Hours; h += week)
            {
                yield return (
                    correction.First.AddDays(h / 24).ToString("MMM d", Invariant),
                    Range(correction.Before.Level, h),
                    Range(correction.After.Level, h)
                );
            }
        }
    }

    private static string Range(LevelBand band, int hour) =>
        string.Create(Invariant, $"{band.Low[hour]:0}–{band.High[hour]:0} mm");

    private void Rules(StringBuilder svg)
    {
        var step = Step(most / 4);
        for (var tick = 0.0; tick <= most; tick += step)
        {
            svg.Append(
                Invariant,
                $"<path class=\"rule\" d=\"M{Left} {Y(tick):0.#}H{Wide - Right}\"/><text class=\"tick\" "
                    + $"x=\"{Left - 6}\" y=\"{Y(tick) + 5:0.#}\" text-anchor=\"end\">{tick:0} mm</text>"
            );
        }

        var days = Math.Max(1, (int)Math.Ceiling(correction.Days / (double)MostTicks / 7)) * 7;
        for (var day = 0; day <= correction.Days; day += days)
        {
            svg.Append(
                Invariant,
                $"<text class=\"tick\" x=\"{X(24.0 * day):0.#}\" y=\"{Tall - 10}\" "
                    + $"text-anchor=\"{(day == 0 ? "start" : "middle")}\">"
                    + $"{correction.First.AddDays(day):MMM d}</text>"
            );
        }
    }

    private void Mark(StringBuilder svg)
    {
        if (highest is { } mark)
        {
            svg.Append(
                Invariant,
                $"<path class=\"limit\" d=\"M{Left} {Y(mark):0.#}H{Wide - Right}\"/><text class=\"limit\" "
                    + $"x=\"{Wide - Right}\" y=\"{Y(mark) - 4:0.#}\" text-anchor=\"end\">"
                    + $"drain at {mark:0} mm</text>"
            );
        }
    }

    private void Band(StringBuilder svg, string name, LevelBand band)
    {
        svg.Append(Invariant, $"<path class=\"{name}\" d=\"");
        for (var h = 0; h <= Hours; h += EveryHours)
        {
            svg.Append(Invariant, $"{(h == 0 ? 'M' : 'L')}{X(h):0.#} {Y(band.High[h]):0.#}");
        }

        for (var h = Hours - (Hours % EveryHours); h >= 0; h -= EveryHours)
        {
            svg.Append(Invariant, $"L{X(h):0.#} {Y(band.Low[h]):0.#}");
        }

        svg.Append("Z\"/>");
    }

    private void Line(StringBuilder svg, ImmutableArray<double> values)
    {
        svg.Append("<path class=\"line\" d=\"");
        for (var h = 0; h <= Hours; h += EveryHours)
        {
            svg.Append(Invariant, $"{(h == 0 ? 'M' : 'L')}{X(h):0.#} {Y(values[h]):0.#}");
        }

        svg.Append("\"/>");
    }

    private static double Step(double raw)
    {
        var power = Math.Pow(10, Math.Floor(Math.Log10(raw)));
        return new[] { 1.0, 2.0, 5.0, 10.0 }.Select(m => m * power).First(s => s >= raw);
    }
}
