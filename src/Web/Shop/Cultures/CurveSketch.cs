using System.Globalization;
using System.Text;
using Litterfall.Domain.Cultures;
using Litterfall.Quantities.Measures;
using Litterfall.Workshop.Cultures;

namespace Litterfall.Web.Shop.Cultures;

/// <summary>
/// A culture over its days: the model with its band, what was counted, today, and the plateau.
/// </summary>
internal static class CurveSketch
{
    private const double Wide = 640;
    private const double Tall = 280;
    private const double Left = 64;
    private const double Right = 12;
    private const double Top = 16;
    private const double Bottom = 34;
    private const double Point = 5;

    /// <summary>Draws it as SVG.</summary>
    /// <param name="curve">The culture as the model leads it.</param>
    /// <param name="today">Today.</param>
    public static string Draw(CultureCurve curve, DateOnly today)
    {
        var points = curve.Points;
        var most = Math.Max(
            points.Max(p => p.High),
            curve.Culture.Counts.Select(c => c.Animals).DefaultIfEmpty().Max()
        );
        most = Math.Max(1, Math.Min(most, 3 * points.Max(p => p.Animals)));
        var first = points[0].Day.DayNumber;
        double X(DateOnly day) =>
            Left + ((Wide - Left - Right) * (day.DayNumber - first) / Math.Max(1, points.Length - 1));
        double Y(double animals) =>
            Tall - Bottom - ((Tall - Top - Bottom) * Math.Clamp(animals / most, 0, 1));
        var svg = new StringBuilder();
        Put(svg, $"<svg class='culturecurve' viewBox='0 0 {Wide} {Tall}' role='img' aria-label='");
        Put(svg, $"{Said(curve, today)}'>");
        foreach (var share in new[] { 0.0, 0.5, 1.0 })
        {
            Put(svg, $"<path class='rule' d='M{Left} {Y(share * most):0.#}H{Wide - Right}'/>");
            Put(svg, $"<text x='{Left - 6}' y='{Y(share * most) + 5:0.#}' text-anchor='end'>");
            svg.Append(CultureWords.About(share * most)).Append("</text>");
        }

        Put(svg, $"<path class='spread' d='");
        Trace(svg, points.Select(p => (X(p.Day), Y(p.High))), 'M');
        Trace(svg, points.Reverse().Select(p => (X(p.Day), Y(p.Low))), 'L');
        Put(svg, $"Z'/><path class='model' d='");
        Trace(svg, points.Select(p => (X(p.Day), Y(p.Animals))), 'M');
        Put(svg, $"'/>");
        if (curve.Plateau < most)
        {
            Put(svg, $"<path class='limit' d='M{Left} {Y(curve.Plateau):0.#}H{Wide - Right}'/>");
            Put(svg, $"<text x='{Left + 4}' y='{Y(curve.Plateau) - 4:0.#}'>full</text>");
        }

        Put(svg, $"<path class='today' d='M{X(today):0.#} {Top}V{Tall - Bottom}'/>");
        Put(svg, $"<text x='{X(today) + 4:0.#}' y='{Top + 10}'>today</text>");
        foreach (var count in curve.Culture.Counts)
        {
            Put(
                svg,
                $"<circle class='count' cx='{X(count.Day):0.#}' cy='{Y(count.Animals):0.#}' r='{Point}'/>"
            );
        }

        Put(svg, $"<text x='{Left}' y='{Tall - 10}'>{Day(points[0].Day)}</text>");
        Put(svg, $"<text x='{Wide - Right}' y='{Tall - 10}' text-anchor='end'>{Day(points[^1].Day)}</text>");
        return svg.Append("</svg>").ToString();
    }

    private static string Said(CultureCurve curve, DateOnly today)
    {
        var now = curve.On(today);
        var counts = curve.Culture.Counts.Count;
        return $"About {CultureWords.About(now.Animals)} animals today, between "
            + $"{CultureWords.About(now.Low)} and {CultureWords.About(now.High)}; "
            + $"{NumberText.Count(counts, "count", "counts")} so far";
    }

    private static void Trace(StringBuilder svg, IEnumerable<(double X, double Y)> all, char first)
    {
        var sign = first;
        foreach (var (x, y) in all)
        {
            Put(svg, $"{sign}{x:0.#} {y:0.#}");
            sign = 'L';
        }
    }

    private static string Day(DateOnly day) => day.ToString("d MMM", CultureInfo.InvariantCulture);

    private static void Put(StringBuilder svg, FormattableString text) =>
        svg.Append(text.ToString(CultureInfo.InvariantCulture));
}
