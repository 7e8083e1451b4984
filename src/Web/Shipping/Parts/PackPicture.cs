using System.Globalization;
using System.Net;
using System.Text;
using Litterfall.Domain.Dispatch;

namespace Litterfall.Web.Shipping.Parts;

/// <summary>The carton seen from above, with its foam, to scale: what lies where.</summary>
/// <param name="plan">How it is packed.</param>
public sealed class PackPicture(PackingPlan plan)
{
    /// <summary>Width of the drawing.</summary>
    public const double Wide = 420;

    private const double Edge = 14;
    private const double Under = 34;
    private static readonly CultureInfo Invariant = CultureInfo.InvariantCulture;
    private readonly double scale =
        (Wide - (2 * Edge)) / (plan.Carton.LengthMeters + (2 * plan.Carton.WallMeters));

    /// <summary>Height of the drawing.</summary>
    public double Tall =>
        Math.Round(
            (scale * (plan.Carton.WidthMeters + (2 * plan.Carton.WallMeters))) + (2 * Edge) + Under,
            1
        );

    /// <summary>What it shows, for those who hear it.</summary>
    public string Said
    {
        get
        {
            var things = plan
                .Places.GroupBy(p => p.Label, StringComparer.Ordinal)
                .Select(g => string.Create(Invariant, $"{g.Count()} {g.Key}"));
            return $"{plan.Carton.Name} from above: {string.Join(", ", things)}";
        }
    }

    private double X(double meters) => Edge + (scale * (plan.Carton.WallMeters + meters));

    private double Y(double meters) =>
        Edge + (scale * (plan.Carton.WallMeters + plan.Carton.WidthMeters - meters));

    /// <summary>The drawing.</summary>
    public string Body
    {
        get
        {
            var svg = new StringBuilder();
            var (length, width) = (plan.Carton.LengthMeters, plan.Carton.WidthMeters);
            svg.Append(
                Invariant,
                $"<rect class=\"foam\" x=\"{Edge}\" y=\"{Edge}\" width=\"{Wide - (2 * Edge):0.#}\" "
                    + $"height=\"{Tall - (2 * Edge) - Under:0.#}\"/><rect class=\"room\" x=\"{X(0):0.#}\" "
                    + $"y=\"{Y(width):0.#}\" width=\"{scale * length:0.#}\" height=\"{scale * width:0.#}\"/>"
            );
            foreach (var thing in plan.Places.OrderBy(p => p.Layer))
            {
                Thing(svg, thing);
            }

            var bar = scale * 0.1;
            svg.Append(
                Invariant,
                $"<path class=\"scale\" d=\"M{Edge} {Tall - 22:0.#}v6h{bar:0.#}v-6\"/><text x=\"{Edge + bar + 6:0.#}\""
                    + $" y=\"{Tall - 14:0.#}\">10 cm, seen from above</text>"
            );
            return svg.ToString();
        }
    }

    private void Thing(StringBuilder svg, PlacedThing thing)
    {
        var (left, top) = (X(thing.XMeters), Y(thing.YMeters + thing.WidthMeters));
        var (wide, deep) = (scale * thing.LengthMeters, scale * thing.WidthMeters);
        var look = WebUtility.HtmlEncode(thing.Kind);
        if (thing.IsRound)
        {
            svg.Append(
                Invariant,
                $"<ellipse class=\"{look} of{thing.Layer}\" cx=\"{left + (wide / 2):0.#}\" "
                    + $"cy=\"{top + (deep / 2):0.#}\" rx=\"{wide / 2:0.#}\" ry=\"{deep / 2:0.#}\"/>"
            );
        }
        else
        {
            svg.Append(
                Invariant,
                $"<rect class=\"{look} of{thing.Layer}\" x=\"{left:0.#}\" y=\"{top:0.#}\" "
                    + $"width=\"{wide:0.#}\" height=\"{deep:0.#}\"/>"
            );
        }

        svg.Append(
            Invariant,
            $"<text x=\"{left + (wide / 2):0.#}\" y=\"{top + (deep / 2) + 4:0.#}\" text-anchor=\"middle\">"
                + $"{WebUtility.HtmlEncode(thing.Label)}</text>"
        );
    }
}
