using System.Globalization;
using System.Net;
using System.Text;
using Litterfall.Domain.Cultures;
using Litterfall.Workshop.Cultures;

namespace Litterfall.Web.Shop.Cultures;

/// <summary>
/// A shelf from the front, to scale: boards, cups at their places in the shape and size of what stands
/// there. What is wrong is told by a sign and a word, not by color alone.
/// </summary>
internal static class ShelfSketch
{
    private const double Board = 18;
    private const double Side = 16;
    private const double Words = 38;
    private const double Least = 46;
    private const double HeightOfWidth = 1.2;
    private const double TubWider = 1.15;

    /// <summary>Draws a shelf as SVG, a millimeter for a unit.</summary>
    /// <param name="shelf">The shelf.</param>
    /// <param name="view">What stands on it.</param>
    public static string Draw(CultureShelf shelf, CultureView view)
    {
        var width = shelf.WidthMillimeters;
        var each = shelf.GapMillimeters + Board + Words;
        var tall = (shelf.Boards * each) + Board;
        var svg = new StringBuilder();
        Put(svg, $"<svg class='cultureshelf' viewBox='0 0 {width + (2 * Side)} {tall}' role='group'");
        Put(svg, $" aria-label='{WebUtility.HtmlEncode(shelf.Name)}, from the front'>");
        Put(svg, $"<path class='side' d='M{Side / 2} 0V{tall}M{width + (1.5 * Side)} 0V{tall}'/>");
        for (var board = 1; board <= shelf.Boards; board++)
        {
            var floor = tall - Board - ((board - 1) * each) - Words;
            Put(svg, $"<rect class='board' x='{Side}' y='{floor}' width='{width}' height='{Board}'/>");
            foreach (var culture in view.Book.Standing.Where(c => c.Shelf == shelf.Key && c.Board == board))
            {
                Cup(svg, culture, Place(shelf, culture.Place), floor, view);
            }
        }

        Scale(svg);
        return svg.Append("</svg>").ToString();
    }

    private static (double Middle, double Room) Place(CultureShelf shelf, int place)
    {
        var room = shelf.WidthMillimeters / shelf.PlacesPerBoard;
        return (Side + ((Math.Clamp(place, 1, shelf.PlacesPerBoard) - 0.5) * room), room);
    }

    private static void Cup(
        StringBuilder svg,
        Culture culture,
        (double Middle, double Room) at,
        double floor,
        CultureView view
    )
    {
        var (wide, tall) = Size(culture, view);
        var (x, y) = (at.Middle - (wide / 2), floor - tall);
        var age = view.Book.Today.DayNumber - culture.Since.DayNumber;
        var flags = CultureWords.Flags(culture, view.Book).ToList();
        var said = WebUtility.HtmlEncode(
            $"{culture.Number}, {view.Book.NameOf(culture.Species)}, line {culture.Line}, {age} days"
                + string.Concat(flags.Select(f => $", {f}"))
        );
        var state =
            culture.Held.Length > 0 ? "held"
            : flags.Count > 0 ? "minded"
            : "well";
        Put(svg, $"<a href='/cultures/{WebUtility.UrlEncode(culture.Number)}' aria-label='{said}'>");
        Put(svg, $"<rect class='touch' x='{at.Middle - (Least / 2)}' y='{y - 22}' width='{Least}'");
        Put(svg, $" height='{tall + Board + Words + 22}'/>");
        Put(svg, $"<path class='cup {state}' d='{Outline(culture, view, (x, y), (wide, tall))}'/>");
        var full = tall / 2;
        Put(svg, $"<rect class='fillof' x='{x + 1.5}' y='{floor - full}' width='{wide - 3}'");
        Put(svg, $" height='{full - 1}'/>");
        Put(svg, $"<text class='line' x='{at.Middle}' y='{floor - 6}'>");
        svg.Append(WebUtility.HtmlEncode(Short(culture.Line))).Append("</text>");
        Put(svg, $"<text x='{at.Middle}' y='{floor + Board + 15}'>");
        svg.Append(WebUtility.HtmlEncode(culture.Number)).Append("</text>");
        Put(svg, $"<text class='age' x='{at.Middle}' y='{floor + Board + 32}'>{age} d</text>");
        if (state != "well")
        {
            Sign(svg, at.Middle, y - 4, state == "held");
        }

        svg.Append("</a>");
    }

    /// <summary>Diameter and height of a cup that is filled half: V = π ÷ 4 · d² · h, h = 1.2 d; a tub of the
    /// same volume is wider and lower.</summary>
    private static (double Wide, double Tall) Size(Culture culture, CultureView view)
    {
        var volume = culture.Liters / CulturePractice.Filling.Si * 1e6;
        var across = Math.Cbrt(volume / (Math.PI / 4 * HeightOfWidth));
        return IsTub(culture, view)
            ? (across * TubWider, across * HeightOfWidth / (TubWider * TubWider))
            : (across, across * HeightOfWidth);
    }

    /// <summary>
    /// Springtails stand in straight cups, isopods in low tubs, flies in jars with a shoulder.
    /// </summary>
    private static string Outline(
        Culture culture,
        CultureView view,
        (double X, double Y) at,
        (double Wide, double Tall) size
    )
    {
        var (x, y) = at;
        var (wide, tall) = size;
        var (right, foot) = (x + wide, y + tall);
        FormattableString jar = $"M{x} {foot}V{y + 14}L{x + 8} {y}H{right - 8}L{right} {y + 14}V{foot}Z";
        FormattableString tub = $"M{x + 5} {foot}L{x} {y}H{right}L{right - 5} {foot}Z";
        FormattableString cup = $"M{x} {foot}V{y}H{right}V{foot}Z";
        return (
            view.Book.Kind(culture.Species) is null ? jar
            : IsTub(culture, view) ? tub
            : cup
        ).ToString(CultureInfo.InvariantCulture);
    }

    /// <summary>On hold: an octagon; to be minded: a triangle.</summary>
    private static void Sign(StringBuilder svg, double x, double y, bool isHeld)
    {
        if (isHeld)
        {
            Put(svg, $"<path class='sign held' d='M{x - 5} {y - 17}h10l5 5v7l-5 5h-10l-5 -5v-7z'/>");
        }
        else
        {
            Put(svg, $"<path class='sign minded' d='M{x} {y - 16}l10 16h-20z'/>");
        }
    }

    private static void Scale(StringBuilder svg)
    {
        Put(svg, $"<path class='scale' d='M{Side + 4} 12v8h100v-8'/>");
        Put(svg, $"<text class='scaleof' x='{Side + 112}' y='20'>10 cm</text>");
    }

    private static bool IsTub(Culture culture, CultureView view) =>
        view.Book.Kind(culture.Species)?.Entry.Brood is not null;

    private static string Short(string line) => line.Length <= 4 ? line : line[..4];

    private static void Put(StringBuilder svg, FormattableString text) =>
        svg.Append(text.ToString(CultureInfo.InvariantCulture));
}
