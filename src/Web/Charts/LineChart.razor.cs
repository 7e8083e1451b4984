using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using Litterfall.Web.Library;
using Microsoft.AspNetCore.Components;

namespace Litterfall.Web.Charts;

/// <summary>A line over time with its band behind, labeled on the line, and as a table.</summary>
public sealed partial class LineChart
{
    private const double Wide = 270;
    private const double Tall = 120;
    private const double Left = 48;
    private const double Right = 8;
    private const double Top = 8;
    private const double Bottom = 22;
    private const int MostRows = 60;

    /// <summary>What is drawn.</summary>
    [Parameter, EditorRequired]
    public required string Title { get; set; }

    /// <summary>Its unit.</summary>
    [Parameter]
    public string Unit { get; set; } = "";

    /// <summary>What runs along, such as "day".</summary>
    [Parameter]
    public string Along { get; set; } = "day";

    /// <summary>Values at even steps; nulls are gaps.</summary>
    [Parameter, EditorRequired]
    public required ImmutableArray<double> Values { get; set; }

    /// <summary>Length of a step, in what runs along.</summary>
    [Parameter]
    public double Step { get; set; } = 1;

    /// <summary>Field of what is wanted; null for none.</summary>
    [Parameter]
    public (double Low, double High, string Label)? Band { get; set; }

    /// <summary>Between which the values may lie, of what nobody measures; empty for none.</summary>
    [Parameter]
    public (ImmutableArray<double> Low, ImmutableArray<double> High) Spread { get; set; } = ([], []);

    /// <summary>A line that should not be passed; null for none.</summary>
    [Parameter]
    public (double At, string Label)? Mark { get; set; }

    private string Said =>
        Values.IsDefaultOrEmpty
            ? $"{Title}: nothing to show"
            : $"{Title}: from {Text(Values[0])} to {Text(Values[^1])} {Unit}, least {Text(Values.Min())}, "
                + $"most {Text(Values.Max())}"
                + (Band is { } b ? $"; {b.Label} {Text(b.Low)} to {Text(b.High)}" : "")
                + (Mark is { } m ? $"; {m.Label} {Text(m.At)}" : "");

    private IEnumerable<(string X, string Y)> Rows
    {
        get
        {
            var every = Math.Max(1, (int)Math.Ceiling(Values.Length / (double)MostRows));
            for (var i = 0; i < Values.Length; i += every)
            {
                yield return (Text(i * Step), Text(Values[i]));
            }
        }
    }

    private string Body
    {
        get
        {
            if (Values.IsDefaultOrEmpty)
            {
                return "";
            }

            var (low, high) = Ends();
            double X(double i) => Left + ((Wide - Left - Right) * i / Math.Max(1, Values.Length - 1));
            double Y(double v) => Top + ((Tall - Top - Bottom) * (high - v) / (high - low));
            var svg = new StringBuilder();
            if (Band is { } band)
            {
                var (from, to) = (Y(Math.Min(high, band.High)), Y(Math.Max(low, band.Low)));
                svg.Append(
                    CultureInfo.InvariantCulture,
                    $"<rect class=\"band\" x=\"{Left}\" y=\"{from:0.#}\" width=\"{Wide - Left - Right}\" "
                        + $"height=\"{Math.Max(0.5, to - from):0.#}\"/>"
                );
                svg.Append(
                    CultureInfo.InvariantCulture,
                    $"<text class=\"quiet\" x=\"{Wide - Right - 2}\" y=\"{BandLabel(from, to, Y):0.#}\" "
                        + $"text-anchor=\"end\">{Escaped(band.Label)}</text>"
                );
            }

            foreach (var tick in Ticks(low, high))
            {
                svg.Append(
                    CultureInfo.InvariantCulture,
                    $"<path class=\"rule\" d=\"M{Left} {Y(tick):0.#}H{Wide - Right}\"/><text "
                        + $"class=\"tick\" x=\"{Left - 4}\" y=\"{Y(tick) + 5:0.#}\" "
                        + $"text-anchor=\"end\">{Text(tick)}</text>"
                );
            }

            Between(svg, X, Y);
            if (Mark is { } mark)
            {
                svg.Append(
                    CultureInfo.InvariantCulture,
                    $"<path class=\"limit\" d=\"M{Left} {Y(mark.At):0.#}H{Wide - Right}\"/><text "
                        + $"class=\"limit\" x=\"{Left + 3}\" "
                        + $"y=\"{Y(mark.At) - 3:0.#}\">{Escaped(mark.Label)}</text>"
                );
            }

            Line(svg, X, Y);
            svg.Append(
                CultureInfo.InvariantCulture,
                $"<text class=\"tick\" x=\"{Left}\" y=\"116\">{Along} 0</text><text class=\"tick\" "
                    + $"x=\"{Wide - Right}\" y=\"116\" text-anchor=\"end\">{Along} "
                    + $"{Text((Values.Length - 1) * Step)}</text>"
            );
            return svg.ToString();
        }
    }

    private bool HasSpread =>
        !Spread.Low.IsDefaultOrEmpty
        && Spread.Low.Length == Values.Length
        && Spread.High.Length == Values.Length;

    /// <summary>The lighter band of what is not known.</summary>
    private void Between(StringBuilder svg, Func<double, double> x, Func<double, double> y)
    {
        if (!HasSpread)
        {
            return;
        }

        svg.Append("<path class=\"spread\" d=\"");
        for (var i = 0; i < Values.Length; i++)
        {
            svg.Append(
                CultureInfo.InvariantCulture,
                $"{(i == 0 ? 'M' : 'L')}{x(i):0.#} {y(Math.Max(Spread.Low[i], Spread.High[i])):0.#}"
            );
        }

        for (var i = Values.Length - 1; i >= 0; i--)
        {
            svg.Append(
                CultureInfo.InvariantCulture,
                $"L{x(i):0.#} {y(Math.Min(Spread.Low[i], Spread.High[i])):0.#}"
            );
        }

        svg.Append("Z\"/>");
    }

    /// <summary>The name of the band stands at its upper or lower edge, away from the line.</summary>
    private double BandLabel(double from, double to, Func<double, double> y)
    {
        var last = Values.Skip(Values.Length * 2 / 3).ToArray();
        var (highest, lowest) = (y(last.Max()), y(last.Min()));
        return to - lowest > highest - from ? to - 5 : from + 14;
    }

    /// <summary>At most a point for each pixel and its extremes.</summary>
    private void Line(StringBuilder svg, Func<double, double> x, Func<double, double> y)
    {
        svg.Append("<path class=\"line\" d=\"");
        var width = Math.Max(1, Values.Length / 220);
        for (var i = 0; i < Values.Length; i += width)
        {
            var part = Values.AsSpan(i, Math.Min(width, Values.Length - i));
            var (least, most) = (double.MaxValue, double.MinValue);
            foreach (var v in part)
            {
                (least, most) = (Math.Min(least, v), Math.Max(most, v));
            }

            svg.Append(CultureInfo.InvariantCulture, $"{(i == 0 ? 'M' : 'L')}{x(i):0.#} {y(least):0.#}");
            if (most > least)
            {
                svg.Append(CultureInfo.InvariantCulture, $"L{x(i):0.#} {y(most):0.#}");
            }
        }

        svg.Append("\"/>");
    }

    private (double Low, double High) Ends()
    {
        var (low, high) = (Values.Min(), Values.Max());
        if (HasSpread)
        {
            low = Math.Min(low, Math.Min(Spread.Low.Min(), Spread.High.Min()));
            high = Math.Max(high, Math.Max(Spread.Low.Max(), Spread.High.Max()));
        }

        if (Mark is { } mark)
        {
            (low, high) = (Math.Min(low, mark.At), Math.Max(high, mark.At));
        }

        if (Band is { } band)
        {
            (low, high) = (Math.Min(low, band.Low), Math.Max(high, band.High));
        }

        if (high - low < 1e-9 && Math.Abs(high) < 1e-9)
        {
            return (0, 1);
        }

        var room = Math.Max((high - low) * 0.08, Math.Max(Math.Abs(high) * 0.01, 1e-6));
        return (low >= 0 && low - room < 0 ? 0 : low - room, high + room);
    }

    private static IEnumerable<double> Ticks(double low, double high)
    {
        var raw = (high - low) / 3;
        var power = Math.Pow(10, Math.Floor(Math.Log10(raw)));
        var step = new[] { 1.0, 2.0, 5.0, 10.0 }.Select(m => m * power).First(s => s >= raw);
        for (var tick = Math.Ceiling(low / step) * step; tick <= high; tick += step)
        {
            yield return Math.Abs(tick) < step * 1e-9 ? 0 : tick;
        }
    }

    private static string Text(double value) => UnitPreferences.Digits(value);

    private static string Escaped(string text) => Documents.Svg.SvgWriter.Escaped(text);
}
