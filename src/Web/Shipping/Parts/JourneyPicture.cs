using System.Globalization;
using System.Text;
using Litterfall.Domain.Dispatch;
using Litterfall.Domain.Lists;
using Litterfall.Domain.Units;
using Litterfall.Web.Library;

namespace Litterfall.Web.Shipping.Parts;

/// <summary>
/// Inside of a parcel over its journeys: the band to keep as a quiet field, nine tenths of the journeys as a
/// lighter band, the middle as a line, the air outside dashed, and below the share that left the band.
/// </summary>
/// <param name="choice">The way of packing with its hours.</param>
/// <param name="band">Band to keep, °C; null for none.</param>
/// <param name="units">The reader's units.</param>
public sealed class JourneyPicture(PackChoice choice, (double Low, double High)? band, UnitPreferences units)
{
    /// <summary>Width of the drawing.</summary>
    public const double Wide = 720;

    /// <summary>Height of the drawing.</summary>
    public const double Tall = 320;

    private const double Left = 70;
    private const double Right = 92;
    private const double Top = 12;
    private const double Foot = 252;
    private const double OddsTop = 268;
    private const double OddsFoot = 296;
    private static readonly CultureInfo Invariant = CultureInfo.InvariantCulture;
    private readonly Seq<JourneyHour> hours = choice.Hours;
    private readonly double start = choice.HandOverHour;
    private readonly Unit unit = units.For(Unit.Celsius);
    private readonly double least = Math.Floor(
        Math.Min(choice.Hours.Min(h => Math.Min(h.Low, h.AmbientCelsius)), band?.Low ?? 100) - 1
    );

    private readonly double most = Math.Ceiling(
        Math.Max(choice.Hours.Max(h => Math.Max(h.High, h.AmbientCelsius)), band?.High ?? -100) + 1
    );

    private double Last => Math.Max(1, hours[^1].Hour);

    private double X(double hour) => Left + ((Wide - Left - Right) * hour / Last);

    private double Y(double celsius) => Foot - ((Foot - Top) * (celsius - least) / (most - least));

    /// <summary>What it shows, for those who hear it.</summary>
    public string Said
    {
        get
        {
            var inside = ShipWords.Span(units, hours.Min(h => h.Low), hours.Max(h => h.High));
            var outside = ShipWords.Span(
                units,
                hours.Min(h => h.AmbientCelsius),
                hours.Max(h => h.AmbientCelsius)
            );
            return string.Create(
                Invariant,
                $"Inside of the parcel over {Last:0} hours: {inside} in nine of ten journeys, outside "
                    + $"{outside}; {100 * choice.OutShare:0.#} % of the journeys leave the band"
            );
        }
    }

    /// <summary>The drawing.</summary>
    public string Body
    {
        get
        {
            var svg = new StringBuilder();
            Field(svg);
            Rules(svg);
            svg.Append("<path class=\"spread\" d=\"M");
            svg.Append(Points(hours, h => h.High)).Append('L');
            svg.Append(Points(hours.Reverse(), h => h.Low)).Append("Z\"/>");
            Line(svg, "outside", h => h.AmbientCelsius, "outside");
            Line(svg, "inside", h => h.Middle, "inside");
            Odds(svg);
            return svg.ToString();
        }
    }

    /// <summary>The same as a table.</summary>
    public IEnumerable<(string When, string Inside, string Outside, string Left)> Rows
    {
        get
        {
            var every = Math.Max(1, hours.Count / 24);
            return hours
                .Where((_, i) => i % every == 0 || i == hours.Count - 1)
                .Select(h =>
                    (
                        Clock(h.Hour),
                        ShipWords.Span(units, h.Low, h.High),
                        ShipWords.Degrees(units, h.AmbientCelsius),
                        string.Create(Invariant, $"{100 * h.OutShare:0.#} %")
                    )
                );
        }
    }

    private string Clock(double hour)
    {
        var at = start + hour;
        return string.Create(
            Invariant,
            $"{(at >= 24 ? $"day {1 + (int)(at / 24)}, " : "")}{(int)at % 24:00}:00"
        );
    }

    private void Field(StringBuilder svg)
    {
        if (band is { } keep)
        {
            svg.Append(
                Invariant,
                $"<rect class=\"keep\" x=\"{Left}\" y=\"{Y(keep.High):0.#}\" width=\"{Wide - Left - Right}\" "
                    + $"height=\"{Y(keep.Low) - Y(keep.High):0.#}\"/><text class=\"keep\" x=\"{Left + 6}\" "
                    + $"y=\"{Y(keep.High) + 15:0.#}\">keep "
                    + $"{ShipWords.Span(units, keep.Low, keep.High)}</text>"
            );
        }
    }

    private void Rules(StringBuilder svg)
    {
        var step = most - least > 24 ? 10 : 5;
        for (var tick = step * Math.Ceiling(least / step); tick <= most; tick += step)
        {
            svg.Append(
                Invariant,
                $"<path class=\"rule\" d=\"M{Left} {Y(tick):0.#}H{Wide - Right}\"/><text class=\"tick\" "
                    + $"x=\"{Left - 6}\" y=\"{Y(tick) + 5:0.#}\" text-anchor=\"end\">"
                    + $"{unit.FromSi(Unit.Celsius.ToSiValue(tick)):0}{UnitPreferences.Symbol(unit)}</text>"
            );
        }

        var every = Last > 40 ? 12 : 6;
        for (var at = every * Math.Ceiling(start / every); at - start <= Last; at += every)
        {
            svg.Append(
                Invariant,
                $"<path class=\"rule\" d=\"M{X(at - start):0.#} {Top}V{OddsFoot}\"/><text class=\"tick\" "
                    + $"x=\"{X(at - start):0.#}\" y=\"{Tall - 6}\" text-anchor=\"middle\">"
                    + $"{(int)at % 24:00}:00</text>"
            );
        }
    }

    private string Points(IEnumerable<JourneyHour> all, Func<JourneyHour, double> value) =>
        string.Join('L', all.Select(h => string.Create(Invariant, $"{X(h.Hour):0.#} {Y(value(h)):0.#}")));

    private void Line(StringBuilder svg, string look, Func<JourneyHour, double> value, string word) =>
        svg.Append(
            Invariant,
            $"<path class=\"{look}\" d=\"M{Points(hours, value)}\"/><text class=\"{look}\" "
                + $"x=\"{Wide - Right + 6}\" y=\"{LabelOf(look):0.#}\">{word}</text>"
        );

    /// <summary>Labels at the ends of their lines, apart where the lines meet.</summary>
    private double LabelOf(string look)
    {
        var (inside, outside) = (Y(hours[^1].Middle), Y(hours[^1].AmbientCelsius));
        var apart = 16 - Math.Abs(inside - outside);
        var shift = apart > 0 ? apart / 2 : 0;
        var isOver = inside <= outside;
        return look == "inside"
            ? inside + (isOver ? -shift : shift) + 5
            : outside + (isOver ? shift : -shift) + 5;
    }

    private void Odds(StringBuilder svg)
    {
        double High(double share) => OddsFoot - ((OddsFoot - OddsTop) * Math.Min(1, share));
        var line = string.Join(
            'L',
            hours.Select(h => string.Create(Invariant, $"{X(h.Hour):0.#} {High(h.OutShare):0.#}"))
        );
        svg.Append(
            Invariant,
            $"<path class=\"odds\" d=\"M{X(0):0.#} {OddsFoot}L{line}L{X(Last):0.#} {OddsFoot}Z\"/>"
                + $"<path class=\"rule\" d=\"M{Left} {OddsFoot}H{Wide - Right}\"/><text class=\"tick\" "
                + $"x=\"{Left - 6}\" y=\"{OddsFoot - 6}\" text-anchor=\"end\">out of it</text><text "
                + $"class=\"tick\" x=\"{Wide - Right + 6}\" y=\"{OddsFoot - 6}\">"
                + $"{100 * choice.OutShare:0.#} % in all</text>"
        );
    }
}
