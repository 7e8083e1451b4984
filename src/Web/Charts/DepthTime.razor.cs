using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Litterfall.Documents.Views;
using Litterfall.Forecasting;
using Litterfall.Web.Desk;
using Microsoft.AspNetCore.Components;

namespace Litterfall.Web.Charts;

/// <summary>Wetness of the soil by depth and time, in the colors of the drawing.</summary>
public sealed partial class DepthTime
{
    private const double Left = 50;
    private const double Wide = 212;
    private const double Tall = 66;
    private object? drawnOf;
    private ImmutableArray<Moment> days = [];

    /// <summary>The design with its month.</summary>
    [Parameter]
    public DesignNumbers? Month { get; set; }

    private int Days => days.Length;

    private string Body { get; set; } = "";

    private string Said =>
        days.IsEmpty
            ? ""
            : string.Create(
                CultureInfo.InvariantCulture,
                $"wetness by depth and day: on day 1 {100 * days[0].Wetness[0].Share:0} % at the top and "
                    + $"{100 * days[0].Wetness[^1].Share:0} % at the bottom, on day {days.Length} "
                    + $"{100 * days[^1].Wetness[0].Share:0} and {100 * days[^1].Wetness[^1].Share:0} %"
            );

    private IEnumerable<(int Day, double Top, double Middle, double Foot)> Rows =>
        days.Select(
            (d, i) =>
                (
                    i + 1,
                    100 * d.Wetness[0].Share,
                    100 * d.Wetness[d.Wetness.Length / 2].Share,
                    100 * d.Wetness[^1].Share
                )
        );

    /// <inheritdoc/>
    protected override void OnParametersSet()
    {
        if (ReferenceEquals(drawnOf, Month))
        {
            return;
        }

        drawnOf = Month;
        var hours = DeskMoment.Hours(Month);
        days =
        [
            .. Enumerable
                .Range(0, hours.Length / 24)
                .Select(d => DeskMoment.Of(Month, (24 * d) + 12))
                .OfType<Moment>()
                .Where(m => m.Wetness.Length > 1),
        ];
        Body = days.IsEmpty ? "" : Draw();
    }

    private string Draw()
    {
        var svg = new StringBuilder();
        var width = Wide / days.Length;
        for (var d = 0; d < days.Length; d++)
        {
            var wet = days[d].Wetness;
            for (var i = 0; i + 1 < wet.Length; i++)
            {
                var (from, to) = (wet[i].Depth, wet[i + 1].Depth);
                svg.Append(
                    CultureInfo.InvariantCulture,
                    $"<rect x=\"{Left + (d * width):0.##}\" y=\"{8 + (Tall * from):0.##}\" "
                        + $"width=\"{width + 0.3:0.##}\" height=\"{(Tall * (to - from)) + 0.3:0.##}\" "
                        + $"fill=\"#{Moment.ColorOf(0.5 * (wet[i].Share + wet[i + 1].Share)):x6}\"/>"
                );
            }
        }

        svg.Append(
            CultureInfo.InvariantCulture,
            $"<text class=\"tick\" x=\"{Left - 4}\" y=\"18\" text-anchor=\"end\">top</text><text "
                + $"class=\"tick\" x=\"{Left - 4}\" y=\"{8 + Tall}\" text-anchor=\"end\">bottom</text>"
        );
        svg.Append(
            CultureInfo.InvariantCulture,
            $"<text class=\"tick\" x=\"{Left}\" y=\"94\">day 1</text><text class=\"tick\" "
                + $"x=\"{Left + Wide}\" y=\"94\" text-anchor=\"end\">day {days.Length}</text>"
        );
        return svg.ToString();
    }
}
