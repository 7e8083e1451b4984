using System.Text.RegularExpressions;
using Litterfall.Documents.Drawings;

namespace Litterfall.UnitTests.Documents;

/// <summary>
/// What must not stand on any page: text that is cut, struck, under another text, off the sheet or too small,
/// and numbers that no tape, scale or jug shows.
/// </summary>
internal static class PageFaults
{
    /// <summary>Smallest type that is read at a bench (common practice, no source).</summary>
    private const double SmallestPoints = 9;

    /// <summary>Heights of the signs over and under the baseline, in type sizes; figures and capitals of a
    /// grotesque are about seven tenths high, and the tails under the line are left out.</summary>
    private const double Over = 0.70;

    private const double Under = 0.02;

    /// <summary>Boxes may touch by as much, in mm.</summary>
    private const double Touch = 0.15;

    private static readonly TimeSpan Soon = TimeSpan.FromMinutes(1);

    private static readonly Regex Twice = new(
        @"\b(?<same>\d+(?:\.\d+)? (?:W|mL|L|kg|mm|cm|in)) \k<same>\b",
        RegexOptions.ExplicitCapture,
        Soon
    );

    private static readonly (string What, Regex Form)[] Wrong =
    [
        Form("every 1 of something", @"\bevery 1 (?:day|week|hour)s?\b"),
        Form(
            "one of many",
            @"(?=1 )(?<![\d.,/–×:] ?)\b1 (?:days|weeks|hours|minutes|seconds|animals|water cups|cups|plants|"
                + @"people|pieces|nozzles|lamps|boxes|vents|pots|packs|doors|panes|holes|kits|lines|reasons|"
                + @"cautions|steps|shelves|lamps|layers|springtails)\b"
        ),
        // Meshes are named to a hundredth of a millimeter; no tape is read so.
        Form("parts of a tenth of a millimeter", @"(?:\d\.\d{3,}|(?:\d\d|[2-9])\.\d{2,}) ?mm\b"),
        Form("parts of a tenth of a liter", @"(?<!0)\.\d\d+ L\b"),
        Form("parts of a minute", @"\d\.\d+ min(?:ute)?s?\b"),
        Form("minutes past two hours", @"\b(?:1[2-9]\d|[2-9]\d\d|\d{4,}) minutes\b"),
        Form("two spellings", @"\b[Ll]itres?\b"),
        Form("not a number", @"\bNaN\b|Infinity|∞"),
    ];

    /// <summary>All faults of one page, in words.</summary>
    public static IEnumerable<string> Of(Drawing page)
    {
        var texts = page.Marks.OfType<TextMark>().Where(m => m.Text.Trim().Length > 0).ToList();
        foreach (var text in texts)
        {
            if (text.Points < SmallestPoints - 1e-9)
            {
                yield return $"{text.Points} points: {text.Text}";
            }

            if (Twice.IsMatch(text.Text))
            {
                yield return $"twice the same: {text.Text}";
            }

            if (text.Text.Contains('…', StringComparison.Ordinal))
            {
                yield return $"cut: {text.Text}";
            }
        }

        var words = string.Join(" ", texts.Select(t => t.Text));
        foreach (var (what, form) in Wrong)
        {
            foreach (Match match in form.Matches(words))
            {
                var from = Math.Max(0, match.Index - 30);
                yield return $"{what}: {words.AsSpan(from, Math.Min(80, words.Length - from))}";
            }
        }

        foreach (var fault in Placed(page, texts))
        {
            yield return fault;
        }
    }

    private static IEnumerable<string> Placed(Drawing page, List<TextMark> texts)
    {
        var boxes = texts.ConvertAll(t => (Text: t, Box: Box(t)));
        foreach (var (text, box) in boxes)
        {
            if (box.Left < 0 || box.Top < 0 || box.Right > page.Width || box.Bottom > page.Height)
            {
                yield return $"off the sheet: {text.Text}";
            }
        }

        for (var i = 0; i < boxes.Count; i++)
        {
            for (var k = i + 1; k < boxes.Count; k++)
            {
                if (boxes[i].Box.Meets(boxes[k].Box))
                {
                    yield return $"one on the other: {boxes[i].Text.Text} | {boxes[k].Text.Text}";
                }
            }
        }

        var lines = page
            .Marks.OfType<PathMark>()
            .Where(m => m is { Pen: not null, Layer: Layers.Dimension })
            .SelectMany(m => m.Contours.Select(c => (m.Key, c.Spots)))
            .SelectMany(c => c.Spots.Zip(c.Spots.Skip(1), (a, b) => (c.Key, From: a, To: b)))
            .ToList();
        foreach (var (text, box) in boxes)
        {
            foreach (var (key, from, to) in lines)
            {
                if (box.IsCrossed(from, to))
                {
                    yield return $"struck by {key}: {text.Text}";
                    break;
                }
            }
        }
    }

    private static TextBox Box(TextMark text)
    {
        var (width, size) = (
            Lettering.Width(text.Text, text.Points, text.Bold),
            text.Points * Lettering.Point
        );
        var start = text.Align switch
        {
            Align.Middle => -width / 2,
            Align.End => -width,
            _ => 0,
        };
        return text.Upright
            ? new(
                text.At.X - Over * size,
                text.At.Y - start - width,
                text.At.X + Under * size,
                text.At.Y - start
            )
            : new(
                text.At.X + start,
                text.At.Y - Over * size,
                text.At.X + start + width,
                text.At.Y + Under * size
            );
    }

    private static (string, Regex) Form(string what, string form) =>
        (what, new Regex(form, RegexOptions.ExplicitCapture | RegexOptions.Compiled, Soon));

    /// <summary>What a text covers, mm.</summary>
    private readonly record struct TextBox(double Left, double Top, double Right, double Bottom)
    {
        public bool Meets(TextBox other) =>
            Left + Touch < other.Right
            && other.Left + Touch < Right
            && Top + Touch < other.Bottom
            && other.Top + Touch < Bottom;

        /// <summary>True where a line runs through the inside.</summary>
        public bool IsCrossed(Spot from, Spot to)
        {
            var (enter, leave) = (0.0, 1.0);
            return Clip(from.X, to.X - from.X, Left + Touch, Right - Touch, ref enter, ref leave)
                && Clip(from.Y, to.Y - from.Y, Top + Touch, Bottom - Touch, ref enter, ref leave)
                && (leave - enter) * Math.Sqrt(Square(to.X - from.X) + Square(to.Y - from.Y)) > Touch;
        }

        private static double Square(double x) => x * x;

        private static bool Clip(
            double at,
            double along,
            double low,
            double high,
            ref double enter,
            ref double leave
        )
        {
            if (high <= low)
            {
                return false;
            }

            if (Math.Abs(along) < 1e-12)
            {
                return at > low && at < high;
            }

            var (a, b) = ((low - at) / along, (high - at) / along);
            (enter, leave) = (Math.Max(enter, Math.Min(a, b)), Math.Min(leave, Math.Max(a, b)));
            return enter < leave;
        }
    }
}
