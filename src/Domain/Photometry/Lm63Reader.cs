using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Domain.Faults;

namespace Litterfall.Domain.Photometry;

/// <summary>
/// ANSI/IES LM-63 of 1986 to 2019, type C. Tolerant of layout, odd headers and unknown keywords; exact in
/// counts,
/// angles, signs and the meaning of every multiplier.
/// </summary>
/// <remarks>
/// Grammar by published summaries of the standard (read); the standard's own text is recalled.
/// </remarks>
internal sealed class Lm63Reader(string name, string[] lines)
{
    private const double MetersPerFoot = 0.3048;
    private const int MostAngles = 4000;
    private const int MostValues = 1_000_000;
    private const double MostLumens = 1e7;
    private const double MostWatts = 1e6;
    private const double LeastFactor = 1e-6;
    private const double MostFactor = 1e6;
    private readonly List<string> notes = [];
    private readonly List<(string Key, string Text)> keywords = [];
    private int edition = 1986;

    /// <summary>What the two lines of numbers say.</summary>
    private readonly record struct Head(
        int Lamps,
        double LumensPerLamp,
        double Multiplier,
        int Vertical,
        int Horizontal,
        LuminousOpening Opening,
        double Factor,
        double Watts,
        double Extra
    );

    /// <summary>True for a line that names the edition.</summary>
    public static bool IsVersion(string line) =>
        line.TrimStart().StartsWith("IESNA", StringComparison.OrdinalIgnoreCase)
        || line.TrimStart().StartsWith("IES:", StringComparison.OrdinalIgnoreCase);

    /// <summary>True for the line that says how tilt is given.</summary>
    public static bool IsTilt(string line)
    {
        string start = line.TrimStart();
        return start.StartsWith("TILT", StringComparison.OrdinalIgnoreCase)
            && start[4..].TrimStart().StartsWith('=');
    }

    /// <summary>Reads it.</summary>
    public Reading<LampFile> Read()
    {
        int tilt = Array.FindIndex(lines, IsTilt);
        if (tilt < 0)
        {
            return new(null, [new TextFault(name, 1, 1, "there is no TILT line", "a line TILT=NONE")]);
        }

        Edition();
        if (Labels(tilt) is { } fault)
        {
            return new(null, [fault]);
        }

        var numbers = new NumberStream(name, lines, tilt + 1, takesDecimalComma: false);
        double factor = Tilt(lines[tilt].Split('=', 2)[1].Trim(), numbers);
        var head = Numbers(numbers, factor);
        double[] vertical = numbers.Angles("a vertical angle", head.Vertical);
        CheckVertical(numbers, vertical);
        double[] horizontal = numbers.Angles("a horizontal angle", head.Horizontal);
        bool isOpenRing = CheckHorizontal(numbers, ref horizontal);
        double[] candela = Candela(numbers, vertical.Length * horizontal.Length, head.Factor);
        CheckEnd(numbers);
        if (numbers.Fault is { } wrong)
        {
            return new(null, [wrong]);
        }

        if (isOpenRing)
        {
            horizontal = [.. horizontal, 360.0];
            candela = [.. candela, .. candela.AsSpan(0, vertical.Length)];
        }

        return new(Done(head, vertical, horizontal, candela), []);
    }

    private LampFile Done(Head head, double[] vertical, double[] horizontal, double[] candela)
    {
        double? lumens = head.LumensPerLamp < 0.0 ? null : head.Lamps * head.LumensPerLamp;
        if (edition == 2019 && head.Extra != 1.0)
        {
            notes.Add("Its last number but one is the way the file was made, not a factor.");
        }

        return new LampFile
        {
            Form =
                edition == 1986
                    ? "LM-63-1986"
                    : string.Create(CultureInfo.InvariantCulture, $"LM-63-{edition}"),
            VerticalDegrees = [.. vertical],
            HorizontalDegrees = [.. horizontal],
            Candela = [.. candela],
            Opening = head.Opening,
            LampLumens = lumens,
            Watts = head.Watts > 0.0 ? head.Watts : null,
            Keywords = [.. keywords],
            Notes = [.. notes],
        };
    }

    private void Edition()
    {
        string first = lines.FirstOrDefault(l => l.Trim().Length > 0)?.Trim() ?? "";
        if (!IsVersion(first))
        {
            return;
        }

        edition =
            first.Contains("2019", StringComparison.Ordinal) ? 2019
            : first.Contains("2002", StringComparison.Ordinal) ? 2002
            : first.Contains("95", StringComparison.Ordinal) ? 1995
            : first.Contains("91", StringComparison.Ordinal) ? 1991
            : first.Contains("86", StringComparison.Ordinal) ? 1986
            : 2002;
        if (edition == 2002 && !first.Contains("2002", StringComparison.Ordinal))
        {
            notes.Add("Its first line names no known edition; read as of 2002.");
        }
    }

    private TextFault? Labels(int tilt)
    {
        for (int i = 0; i < tilt; i++)
        {
            string line = lines[i].Trim();
            int close = line.IndexOf(']', StringComparison.Ordinal);
            if (!line.StartsWith('[') || close < 0)
            {
                continue;
            }

            string key = line[1..close].Trim();
            string text = line[(close + 1)..].Trim();
            if (key.Equals("BLOCK", StringComparison.OrdinalIgnoreCase))
            {
                return new TextFault(
                    name,
                    i + 1,
                    1,
                    "the file holds several luminaires",
                    "one luminaire a file"
                );
            }

            if (key.Equals("MORE", StringComparison.OrdinalIgnoreCase) && keywords.Count > 0)
            {
                keywords[^1] = (keywords[^1].Key, $"{keywords[^1].Text} {text}");
            }
            else
            {
                keywords.Add((key, text));
            }
        }

        return null;
    }

    /// <summary>Factor of a luminaire that hangs level, as ours do.</summary>
    private double Tilt(string word, NumberStream numbers)
    {
        if (word.Equals("NONE", StringComparison.OrdinalIgnoreCase))
        {
            return 1.0;
        }

        if (!word.Equals("INCLUDE", StringComparison.OrdinalIgnoreCase))
        {
            notes.Add(
                "Its tilt factors stand in another file; the luminaire hangs level, so they are not needed."
            );
            return 1.0;
        }

        numbers.Whole("the position of the lamp for tilt", 1, 3);
        int count = numbers.Whole("the number of tilt angles", 1, MostAngles);
        double[] angles = numbers.Angles("a tilt angle", count);
        double[] factors = numbers.Many("a tilt factor", count);
        if (!numbers.IsGood || angles[0] > 0.0)
        {
            return 1.0;
        }

        int at = Array.FindLastIndex(angles, a => a <= 0.0);
        double level =
            at + 1 < count
                ? factors[at]
                    + ((0.0 - angles[at]) / (angles[at + 1] - angles[at]) * (factors[at + 1] - factors[at]))
                : factors[at];
        if (level is not (>= 0.0 and <= 10.0))
        {
            numbers.Refuse("the tilt factor of a level luminaire is out of range", "a factor from 0 to 10");
        }

        notes.Add("Its tilt factors are read; for a level luminaire the one at 0° counts.");
        return level;
    }

    private Head Numbers(NumberStream n, double tilt)
    {
        int lamps = n.Whole("the number of lamps", 0, 10_000);
        double lumens = n.Next("the lumens of a lamp");
        Require(n, lumens <= MostLumens, "the lumens of a lamp are beyond all lamps", "lumens of one lamp");
        double multiplier = n.Next("the multiplier");
        Require(n, multiplier > 0.0, "the multiplier is not above 0", "a number above 0");
        Require(n, IsFactor(multiplier), "the multiplier is out of range", "a factor near 1");
        int vertical = n.Whole("the number of vertical angles", 2, MostAngles);
        int horizontal = n.Whole("the number of horizontal angles", 1, MostAngles);
        Require(
            n,
            (long)vertical * horizontal <= MostValues,
            "the file announces more than a million intensities",
            "fewer angles"
        );
        int type = n.Whole("the photometric type", 1, 3);
        Require(
            n,
            type == 1,
            type == 2 ? "the photometry is of type B" : "the photometry is of type A",
            "type C (1), as for lamps that hang over something"
        );
        int units = n.Whole("the unit of lengths", 1, 2);
        double scale = units == 1 ? MetersPerFoot : 1.0;
        double width = scale * n.Next("the width of the opening");
        double length = scale * n.Next("the length of the opening");
        double height = scale * n.Next("the height of the opening");
        Require(
            n,
            Math.Abs(width) <= 100.0 && Math.Abs(length) <= 100.0 && Math.Abs(height) <= 100.0,
            "the luminous opening is larger than 100 m",
            "sizes in the unit announced"
        );
        double ballast = n.Next("the ballast factor");
        Require(n, ballast > 0.0, "the ballast factor is not above 0", "a number above 0");
        Require(n, IsFactor(ballast), "the ballast factor is out of range", "a factor near 1");
        double extra = n.Next("the number after the ballast factor");
        double watts = n.Next("the input watts");
        Require(n, watts >= 0.0, "the input watts are negative", "0 or more");
        Require(n, watts <= MostWatts, "the input watts are beyond all lamps", "watts of the luminaire");
        if (n.IsGood && lumens < 0.0 && lumens != -1.0)
        {
            notes.Add("Its lamp lumens are negative but not −1; read as absolute photometry.");
        }

        double photometric = edition <= 1991 && extra > 0.0 ? extra : 1.0;
        Require(n, IsFactor(photometric), "the photometric factor is out of range", "a factor near 1");
        return new Head(
            lamps,
            lumens,
            multiplier,
            vertical,
            horizontal,
            n.IsGood ? OpeningCodes.Of(edition, (width, length, height), notes) : default,
            multiplier * ballast * photometric * tilt,
            watts,
            extra
        );
    }

    private static bool IsFactor(double value) => value is >= LeastFactor and <= MostFactor;

    private void CheckVertical(NumberStream n, double[] angles)
    {
        if (!n.IsGood)
        {
            return;
        }

        Require(
            n,
            angles[0] >= 0.0 && angles[^1] <= 180.0,
            "the vertical angles leave 0° to 180°",
            "vertical angles of type C, 0° straight down"
        );
        if (angles[0] is not (0.0 or 90.0) || angles[^1] is not (90.0 or 180.0))
        {
            notes.Add(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"Its vertical angles run from {angles[0]:0.##}° to {angles[^1]:0.##}°; beyond them it "
                        + $"is dark."
                )
            );
        }
    }

    /// <summary>True for a full turn whose last sweep, the same as the first, is left out.</summary>
    private bool CheckHorizontal(NumberStream n, ref double[] angles)
    {
        if (!n.IsGood)
        {
            return false;
        }

        if (angles.Length == 1)
        {
            if (angles[0] != 0.0)
            {
                notes.Add("Its only horizontal angle is not 0°; read as the same all round.");
                angles = [0.0];
            }

            return false;
        }

        double first = angles[0];
        double last = angles[^1];
        if (first == 0.0 && last is 90.0 or 180.0 or 360.0 || (first == 90.0 && last == 270.0))
        {
            return false;
        }

        double step = angles[1] - angles[0];
        if (first == 0.0 && last > 180.0 && Math.Abs(last + step - 360.0) < 1e-6)
        {
            notes.Add("Its horizontal angles stop before 360°; the first sweep closes the turn.");
            return true;
        }

        n.Refuse(
            string.Create(
                CultureInfo.InvariantCulture,
                $"the horizontal angles run from {first:0.##}° to {last:0.##}°"
            ),
            "0 alone, 0 to 90, 0 to 180, 0 to 360 or 90 to 270"
        );
        return false;
    }

    private static double[] Candela(NumberStream n, int count, double factor)
    {
        double[] values = new double[n.IsGood ? count : 0];
        double most = 0.0;
        for (int i = 0; i < values.Length && n.IsGood; i++)
        {
            values[i] = n.Next("an intensity") * factor;
            Require(n, values[i] >= 0.0, "an intensity is negative", "0 or more");
            Require(
                n,
                values[i] < LampFile.MostCandela,
                "an intensity is beyond all lamps",
                FormattableString.Invariant($"less than {LampFile.MostCandela} cd")
            );
            most = Math.Max(most, values[i]);
        }

        Require(n, most > 0.0, "every intensity is 0", "a luminaire that shines");
        Require(
            n,
            most >= LampFile.LeastCandela,
            "every intensity is next to 0",
            "a luminaire that shines"
        );
        return values;
    }

    private void CheckEnd(NumberStream n)
    {
        if (!n.IsGood)
        {
            return;
        }

        var rest = n.Rest(1);
        if (rest.Count == 0)
        {
            return;
        }

        if (double.TryParse(rest[0], NumberStyles.Float, CultureInfo.InvariantCulture, out _))
        {
            n.Refuse(
                "there are more numbers than the file announced",
                "as many intensities as angles ask for"
            );
            return;
        }

        notes.Add("Words after the intensities are left aside.");
    }

    private static void Require(NumberStream n, bool isMet, string message, string expected)
    {
        if (!isMet && n.IsGood)
        {
            n.Refuse(message, expected);
        }
    }
}
