using System.Globalization;
using System.Text;

namespace Litterfall.UnitTests.Domain.Photometry;

/// <summary>
/// Writes luminaires in the grammar of LM-63, in every way the standard and the wild allow: editions, labels,
/// tilt, wrapped
/// lines, blanks and commas, feet and meters, factors that multiply.
/// </summary>
internal sealed class Lm63Grammar(Random random, LampModel lamp)
{
    private static readonly (string? Line, int Edition)[] Editions =
    [
        (null, 1986),
        ("IESNA91", 1991),
        ("IESNA:LM-63-1995", 1995),
        ("IESNA:LM-63-2002", 2002),
        ("IES:LM-63-2019", 2019),
    ];

    private readonly StringBuilder text = new();
    private string end = "\n";

    /// <summary>What the reader must find.</summary>
    public double Factor { get; private set; } = 1.0;

    public int Edition { get; private set; }

    public double? LampLumens { get; private set; }

    public double Watts { get; private set; }

    /// <summary>Planes as stored.</summary>
    public double[] Stored =>
        lamp.Symmetry switch
        {
            1 => [0.0],
            2 => [.. lamp.Horizontal.Where(h => h <= 180.0)],
            3 => [.. lamp.Horizontal.Where(h => h is >= 90.0 and <= 270.0)],
            4 => [.. lamp.Horizontal.Where(h => h <= 90.0)],
            _ => lamp.Horizontal,
        };

    /// <summary>The file.</summary>
    public string Write()
    {
        end = random.Next(2) == 0 ? "\n" : "\r\n";
        var (line, edition) = Editions[random.Next(Editions.Length)];
        Edition = edition;
        if (line is not null)
        {
            Line(line);
        }

        Labels();
        Tilt();
        Head();
        Numbers(lamp.Vertical);
        Numbers(Stored);
        foreach (double plane in Stored)
        {
            Numbers([.. lamp.Vertical.Select(v => lamp.At(v, plane))]);
        }

        return text.ToString();
    }

    private void Line(string line) => text.Append(line).Append(end);

    private void Labels()
    {
        if (Edition == 1986)
        {
            Line("A lamp for tests, written as free text");
            return;
        }

        string[] keys = ["TEST", "TESTLAB", "ISSUEDATE", "MANUFAC", "LUMCAT", "OTHER", "_OWN", "NEARFIELD"];
        foreach (string key in keys.Take(random.Next(1, keys.Length)))
        {
            Line($"[{key}] made up {random.Next(1000)} ° x");
            if (random.Next(3) == 0)
            {
                Line("[MORE] and more of it");
            }
        }
    }

    private void Tilt()
    {
        if (random.Next(4) > 0)
        {
            Line(random.Next(2) == 0 ? "TILT=NONE" : "TILT = NONE ");
            return;
        }

        Line("TILT=INCLUDE");
        Line($"{random.Next(1, 4)}");
        Line("3");
        Numbers([0.0, 45.0, 90.0]);
        Numbers([0.9, 0.8, 0.7]);
        Factor *= 0.9;
    }

    private void Head()
    {
        bool isFeet = random.Next(2) == 0;
        double multiplier = random.Next(2) == 0 ? 1.0 : 0.5;
        double ballast = random.Next(2) == 0 ? 1.0 : 0.95;
        double extra =
            Edition == 2019 ? 1.1
            : random.Next(2) == 0 ? 1.0
            : 0.8;
        int lamps = random.Next(1, 4);
        bool isAbsolute = random.Next(2) == 0;
        Factor *= multiplier * ballast * (Edition <= 1991 ? extra : 1.0);
        LampLumens = isAbsolute ? null : lamps * 900.0;
        Watts = random.Next(2) == 0 ? 0.0 : 18.0;
        double unit = isFeet ? 0.3048 : 1.0;
        Numbers([
            lamps,
            isAbsolute ? -1.0 : 900.0,
            multiplier,
            lamp.Vertical.Length,
            Stored.Length,
            1.0,
            isFeet ? 1.0 : 2.0,
            lamp.Across / unit,
            lamp.Along / unit,
            0.0,
        ]);
        Numbers([ballast, extra, Watts]);
    }

    /// <summary>Numbers with any divider, wrapped anywhere.</summary>
    private void Numbers(IReadOnlyList<double> numbers)
    {
        for (int i = 0; i < numbers.Count; i++)
        {
            text.Append(Form(numbers[i]));
            text.Append(
                i == numbers.Count - 1 ? end
                : random.Next(9) == 0 ? end
                : random.Next(8) switch
                {
                    0 => ", ",
                    1 => "\t",
                    2 => "   ",
                    3 => ",",
                    _ => " ",
                }
            );
        }
    }

    private string Form(double value) =>
        random.Next(12) == 0
            ? value.ToString("0.0000000E+0", CultureInfo.InvariantCulture)
            : value.ToString("0.############", CultureInfo.InvariantCulture);
}
