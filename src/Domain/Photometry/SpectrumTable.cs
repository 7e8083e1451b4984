using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Domain.Faults;

namespace Litterfall.Domain.Photometry;

/// <summary>A spectrum: power per wavelength in any unit.</summary>
/// <param name="Nanometers">Wavelengths, nm, rising; two or more, reaching from 400 to 700.</param>
/// <param name="Values">Values, not negative, not all 0.</param>
public sealed record SpectrumTable(ImmutableArray<double> Nanometers, ImmutableArray<double> Values)
{
    /// <summary>Largest file read, bytes.</summary>
    public const int LargestFile = 1024 * 1024;

    private const double LargestValue = 1e12;
    private const double LeastBrightest = 1e-12;
    private const double Least = 400;
    private const double Most = 700;
    private static readonly char[] Splits = [';', '\t', ' '];

    /// <summary>
    /// Reads a table of two columns, wavelength in nm and value, split by semicolon, tab, blanks or comma; a
    /// head line
    /// and lines that begin with # are skipped; decimal comma where the comma does not split.
    /// </summary>
    /// <param name="file">Name used in messages.</param>
    /// <param name="text">Its text.</param>
    public static Reading<SpectrumTable> Read(string file, string text)
    {
        var lines = text.TrimStart('\uFEFF').ReplaceLineEndings("\n").Split('\n');
        var rows = new List<(double Nm, double Value)>();
        for (var i = 0; i < lines.Length; i++)
        {
            var line = lines[i].Trim();
            if (line.Length == 0 || line[0] == '#')
            {
                continue;
            }

            if (Row(line) is not { } row)
            {
                const string message = "this line is not a row of a spectrum";
                if (rows.Count == 0 && !char.IsAsciiDigit(line[0]))
                {
                    continue;
                }

                return Refused(file, i + 1, message, "a wavelength in nm and a value");
            }

            if (row.Nm is < 100 or > 3000 || row.Value is < 0 or > LargestValue)
            {
                return Refused(
                    file,
                    i + 1,
                    "this row cannot belong to a spectrum",
                    "a wavelength of 100 to 3000 nm and a value of 0 or more, not huge"
                );
            }

            if (rows.Count > 0 && row.Nm <= rows[^1].Nm)
            {
                return Refused(
                    file,
                    i + 1,
                    "the wavelengths do not rise",
                    "each wavelength above the one before"
                );
            }

            rows.Add(row);
        }

        return
            rows.Count < 2
            || rows[0].Nm > Least
            || rows[^1].Nm < Most
            || rows.Max(r => r.Value) < LeastBrightest
            ? Refused(
                file,
                1,
                "the spectrum does not cover visible light",
                "rows from 400 nm or below to 700 nm or above"
            )
            : new(new SpectrumTable([.. rows.Select(r => r.Nm)], [.. rows.Select(r => r.Value)]), []);
    }

    private static (double Nm, double Value)? Row(string line)
    {
        var cells = line.Split(
            Splits,
            StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries
        );
        var comma = cells.Length >= 2;
        if (!comma)
        {
            cells = line.Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        }

        return cells.Length >= 2 && Number(cells[0], comma) is { } nm && Number(cells[1], comma) is { } value
            ? (nm, value)
            : null;
    }

    private static double? Number(string cell, bool hasComma) =>
        double.TryParse(
            hasComma ? cell.TrimEnd(',').Replace(',', '.') : cell,
            NumberStyles.Float,
            CultureInfo.InvariantCulture,
            out var number
        ) && double.IsFinite(number)
            ? number == 0 ? 0
                : number
            : null;

    private static Reading<SpectrumTable> Refused(string file, int line, string message, string expected) =>
        new(null, [new TextFault(file, line, 1, message, expected)]);
}
