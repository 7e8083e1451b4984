using System.Globalization;
using System.Text;

namespace Litterfall.UnitTests.Domain.Photometry;

/// <summary>
/// Writes luminaires in the grammar of EULUMDAT: every symmetry, decimal commas, absolute and relative.
/// </summary>
internal sealed class EulumdatGrammar(Random random, LampModel lamp)
{
    private readonly StringBuilder text = new();
    private bool hasComma;
    private string end = "\n";

    /// <summary>What the reader must find.</summary>
    public double? LampLumens { get; private set; }

    /// <summary>Planes as stored; from 270 over 0 to 90 for the third symmetry.</summary>
    public double[] Stored
    {
        get
        {
            double[] turn = [.. lamp.Horizontal.Where(h => h < 360.0)];
            return lamp.Symmetry switch
            {
                1 => [0.0],
                2 => [.. turn.Where(h => h <= 180.0)],
                3 => [.. turn.Where(h => h >= 270.0), .. turn.Where(h => h <= 90.0)],
                4 => [.. turn.Where(h => h <= 90.0)],
                _ => turn,
            };
        }
    }

    /// <summary>The file.</summary>
    public string Write()
    {
        end = random.Next(2) == 0 ? "\n" : "\r\n";
        hasComma = random.Next(2) == 0;
        double[] turn = [.. lamp.Horizontal.Where(h => h < 360.0)];
        double lumens = 500 + random.Next(3000);
        double factor = random.Next(2) == 0 ? 1.0 : 0.5;
        bool isAbsolute = random.Next(2) == 0;
        LampLumens = isAbsolute ? null : lumens;
        Lines("made up", lamp.Symmetry == 1 ? 1 : 2, lamp.Symmetry);
        Lines(
            turn.Length,
            lamp.Symmetry == 1 ? 0
                : turn.Length > 1 ? turn[1]
                : 0
        );
        Lines(lamp.Vertical.Length, lamp.Vertical[1] - lamp.Vertical[0]);
        Lines("report", "a lamp", "number 1", "file.ldt", "today");
        Lines(600, 100, 50, Math.Round(lamp.Along * 1000.0), Math.Round(lamp.Across * 1000.0), 0, 0, 0, 0);
        Lines(100, 80, factor, 0, 1);
        Lines(isAbsolute ? -1 : 1, "LED", lumens, "6500 K", "1B", 18);
        for (int i = 0; i < 10; i++)
        {
            Lines(0.5);
        }

        Lines([.. turn.Select(t => (object)t)]);
        Lines([.. lamp.Vertical.Select(v => (object)v)]);
        foreach (double plane in Stored)
        {
            Lines([.. lamp.Vertical.Select(v => (object)(lamp.At(v, plane) * 1000.0 / (lumens * factor)))]);
        }

        return text.ToString();
    }

    private void Lines(params object[] values)
    {
        foreach (object value in values)
        {
            string written = value switch
            {
                double d => d.ToString("0.############", CultureInfo.InvariantCulture),
                int i => i.ToString(CultureInfo.InvariantCulture),
                _ => (string)value,
            };
            bool isNumber = value is double;
            text.Append(isNumber && hasComma ? written.Replace('.', ',') : written).Append(end);
        }
    }
}
