using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Domain.Faults;

namespace Litterfall.Domain.Photometry;

/// <summary>
/// EULUMDAT (Stockmar 1990, 1998): one value a line, intensities in cd per 1000 lm of all lamps. The planes
/// stored by
/// symmetry become a table of LM-63 kind. The length of a luminaire lies across its C0 plane.
/// </summary>
internal sealed class EulumdatReader(string name, string[] lines)
{
    private const int MostPlanes = 1441;
    private const int MostAngles = 1441;
    private const double Millimeter = 1e-3;
    private const double LeastFactor = 1e-6;
    private const double MostFactor = 1e6;
    private const double LeastLumens = 1e-3;
    private const double MostLumens = 1e8;
    private const double MostWatts = 1e6;
    private readonly List<string> notes = [];

    /// <summary>Planes that are stored, and those of the whole turn.</summary>
    private readonly record struct Planes(int Symmetry, int Count)
    {
        public int Stored =>
            Symmetry switch
            {
                1 => 1,
                2 or 3 => (Count / 2) + 1,
                4 => (Count / 4) + 1,
                _ => Count,
            };
    }

    /// <summary>What stands before the intensities.</summary>
    private sealed record Head(int Kind, Planes Planes, int Angles, LuminousOpening Opening)
    {
        public double Factor { get; init; }

        public int Sets { get; init; }

        public double Lumens { get; init; }

        public double Watts { get; init; }

        public bool IsAbsolute { get; init; }
    }

    /// <summary>Reads it.</summary>
    public Reading<LampFile> Read()
    {
        if (lines.Length < 26)
        {
            return LampFile.Refused(
                name,
                "this is neither LM-63 (no TILT line) nor EULUMDAT (fewer than 26 lines)",
                "a luminaire file of one of these forms"
            );
        }

        var first = new NumberStream(name, lines, 0, takesDecimalComma: true);
        var head = Announced(first);
        if (!first.IsGood)
        {
            return new(null, [first.Fault!]);
        }

        var planes = head.Planes;
        var numbers = new NumberStream(name, lines, 26 + (6 * head.Sets), takesDecimalComma: true);
        numbers.Many("a direct ratio", 10);
        double[] turns = numbers.Angles("a C angle", planes.Count);
        double[] vertical = numbers.Angles("a G angle", head.Angles);
        double[] stored = numbers.Many("an intensity", planes.Stored * head.Angles);
        Check(numbers, planes, turns, vertical, stored);
        if (!numbers.IsGood)
        {
            return new(null, [numbers.Fault!]);
        }

        var (horizontal, table) = Turn(planes, turns, stored, head.Angles);
        if (!Fits(planes, horizontal))
        {
            Refuse(
                numbers,
                4,
                "the C angles do not meet the planes of symmetry",
                "planes at 0°, 90°, 180°, 270°"
            );
            return new(null, [numbers.Fault!]);
        }

        double scale = head.Factor * head.Lumens / 1000.0;
        double[] candela = [.. table.Select(v => v * scale)];
        if (candela.Max() is not (>= LampFile.LeastCandela and < LampFile.MostCandela))
        {
            Refuse(
                numbers,
                29,
                "flux, factor and intensities make no lamp",
                FormattableString.Invariant(
                    $"a brightest direction of {LampFile.LeastCandela} to {LampFile.MostCandela} cd"
                )
            );
            return new(null, [numbers.Fault!]);
        }

        return new(Done(head, vertical, horizontal, candela), []);
    }

    private LampFile Done(Head head, double[] vertical, double[] horizontal, double[] candela) =>
        new()
        {
            Form = "EULUMDAT",
            VerticalDegrees = [.. vertical],
            HorizontalDegrees = [.. horizontal],
            Candela = [.. candela],
            Opening = head.Opening,
            LampLumens = head.IsAbsolute ? null : head.Lumens,
            Watts = head.Watts > 0.0 ? head.Watts : null,
            Keywords =
            [
                ("company", lines[0].Trim()),
                ("name", lines[8].Trim()),
                ("number", lines[9].Trim()),
                ("kind", head.Kind.ToString(CultureInfo.InvariantCulture)),
            ],
            Notes = [.. notes],
        };

    private Head Announced(NumberStream first)
    {
        int kind = At(first, 2, "the kind of luminaire", 0, 3);
        var planes = new Planes(
            At(first, 3, "the kind of symmetry", 0, 4),
            At(first, 4, "the number of C planes", 1, MostPlanes)
        );
        int angles = At(first, 6, "the number of intensities a plane", 2, MostAngles);
        var opening = Opening(first);
        double factor = Number(first, 24, "the factor of intensities");
        int sets = At(first, 26, "the number of lamp sets", 1, 20);
        var (lumens, watts, isAbsolute) = first.IsGood ? Lamps(first, sets) : default;
        if (first.IsGood && factor <= 0.0)
        {
            Refuse(first, 24, "the factor of intensities is not above 0", "a number above 0");
        }

        if (first.IsGood && factor is < LeastFactor or > MostFactor)
        {
            Refuse(first, 24, "the factor of intensities is out of range", "a factor near 1");
        }

        bool isOdd = planes.Symmetry is 2 or 3 && planes.Count % 2 != 0;
        if (first.IsGood && (isOdd || (planes.Symmetry is 3 or 4 && planes.Count % 4 != 0)))
        {
            Refuse(first, 4, "the number of C planes does not fit the symmetry", "a multiple of 2, or of 4");
        }

        return new Head(kind, planes, angles, opening)
        {
            Factor = factor,
            Sets = sets,
            Lumens = lumens,
            Watts = watts,
            IsAbsolute = isAbsolute,
        };
    }

    private LuminousOpening Opening(NumberStream head)
    {
        double length = Millimeter * Number(head, 16, "the luminous length");
        double width = Millimeter * Number(head, 17, "the luminous width");
        double height = Millimeter * Enumerable.Range(18, 4).Max(l => Number(head, l, "a luminous height"));
        if (!(length is >= 0.0 and <= 100.0 && width is >= 0.0 and <= 100.0 && height is >= 0.0 and <= 100.0))
        {
            Refuse(head, 16, "the luminous area is out of range", "lengths in mm, 0 to 100000");
        }

        if (height > 0.0)
        {
            notes.Add("Its luminous area has a height; it is taken as level.");
        }

        // A width of 0 says round; the length is then the diameter.
        return length > 0.0 && width == 0.0
            ? new LuminousOpening(OpeningForm.Disc, length, length, height)
            : OpeningCodes.Level(width, length, height);
    }

    private (double Lumens, double Watts, bool IsAbsolute) Lamps(NumberStream head, int sets)
    {
        int count = At(head, 27, "the number of lamps", -10_000, 10_000);
        double lumens = Number(head, 29, "the flux of the lamps");
        double watts = Number(head, 32, "the watts of the lamps");
        if (head.IsGood && lumens <= 0.0)
        {
            Refuse(head, 29, "the flux of the lamps is not above 0", "lumens of all lamps together");
        }

        if (head.IsGood && lumens is < LeastLumens or > MostLumens)
        {
            Refuse(head, 29, "the flux of the lamps is out of range", "lumens of all lamps together");
        }

        if (head.IsGood && watts is < 0.0 or > MostWatts)
        {
            Refuse(head, 32, "the watts of the lamps are out of range", "watts of all lamps together");
        }

        if (sets > 1)
        {
            notes.Add("It has several lamp sets; the first one counts.");
        }

        return (lumens, watts, count < 0);
    }

    private void Check(NumberStream n, Planes planes, double[] turns, double[] vertical, double[] stored)
    {
        if (!n.IsGood)
        {
            return;
        }

        if (vertical[0] < 0.0 || vertical[^1] > 180.0)
        {
            n.Refuse("the G angles leave 0° to 180°", "G angles from straight down");
        }

        if (stored.Any(v => v < 0.0) || stored.All(v => v <= 0.0))
        {
            n.Refuse("an intensity is negative, or all are 0", "intensities of 0 or more");
        }

        if (planes.Symmetry != 1 && (turns[0] != 0.0 || turns[^1] > 360.0))
        {
            n.Refuse("the C angles do not start at 0° or go past 360°", "C angles from 0° on");
        }

        if (n.IsGood && planes.Symmetry is >= 2 && !IsEven(turns))
        {
            n.Refuse(
                "the C angles are not the same on both sides",
                "C angles evenly about the planes of symmetry"
            );
        }

        if (n.IsGood && n.Rest(1).Count > 0)
        {
            notes.Add("Words after the intensities are left aside.");
        }
    }

    private static bool Fits(Planes planes, double[] horizontal) =>
        horizontal.Length == 1
        || planes.Symmetry switch
        {
            2 => horizontal[^1] == 180.0,
            3 => horizontal[0] == 90.0 && horizontal[^1] == 270.0,
            4 => horizontal[^1] == 90.0,
            _ => horizontal[^1] == 360.0,
        };

    /// <summary>True where each angle has its mirror image about 0° and 180°.</summary>
    private static bool IsEven(double[] turns) =>
        turns.All(a => a == 0.0 || turns.Any(b => Math.Abs(a + b - 360.0) < 1e-6));

    private static (double[] Horizontal, double[] Table) Turn(
        Planes planes,
        double[] turns,
        double[] stored,
        int angles
    )
    {
        switch (planes.Symmetry)
        {
            case 1:
                return ([0.0], stored);
            case 2 or 4:
                return (turns[..planes.Stored], stored);
            case 3:
                return Back(planes, turns, stored, angles);
            default:
                bool isClosed = turns[^1] == 360.0;
                return turns.Length == 1 ? ([0.0], stored)
                    : isClosed ? (turns, stored)
                    : ([.. turns, 360.0], [.. stored, .. stored.AsSpan(0, angles)]);
        }
    }

    /// <summary>
    /// Stored from C270 over C0 to C90: the same about the C90-C270 plane, read as 90 to 270.
    /// </summary>
    private static (double[] Horizontal, double[] Table) Back(
        Planes planes,
        double[] turns,
        double[] stored,
        int angles
    )
    {
        // Plane C in 270..360..450 is the mirror of 180 − C, which lies in 90..270.
        int n = planes.Count;
        double[] horizontal = new double[planes.Stored];
        double[] table = new double[stored.Length];
        for (int i = 0; i < planes.Stored; i++)
        {
            double c = turns[(((3 * n) / 4) + i) % n];
            double mirrored = 180.0 - (c >= 270.0 - 1e-6 ? c - 360.0 : c);
            int place = planes.Stored - 1 - i;
            horizontal[place] = mirrored;
            stored.AsSpan(i * angles, angles).CopyTo(table.AsSpan(place * angles));
        }

        return (horizontal, table);
    }

    private int At(NumberStream head, int line, string what, int least, int most)
    {
        double value = Number(head, line, what);
        if (head.IsGood && value == Math.Floor(value) && value >= least && value <= most)
        {
            return (int)value;
        }

        Refuse(
            head,
            line,
            $"{what} is out of range",
            string.Create(CultureInfo.InvariantCulture, $"a whole number from {least} to {most}")
        );
        return least;
    }

    /// <summary>The number on a line, counted from 1; an empty line says 0.</summary>
    private double Number(NumberStream head, int line, string what)
    {
        if (!head.IsGood)
        {
            return double.NaN;
        }

        if (line > lines.Length)
        {
            Refuse(head, lines.Length, $"the file ends before {what}", "one value on each line");
            return double.NaN;
        }

        string text = lines[line - 1].Trim().Replace(',', '.');
        if (text.Length == 0)
        {
            return 0.0;
        }

        if (
            double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out double value)
            && NumberStream.IsUsable(value)
        )
        {
            return value == 0.0 ? 0.0 : value;
        }

        Refuse(head, line, $"{what} is no number", "a number on this line");
        return double.NaN;
    }

    private static void Refuse(NumberStream head, int line, string message, string expected) =>
        head.RefuseAt(line, message, expected);
}
