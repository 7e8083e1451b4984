using System.Globalization;
using Litterfall.Domain.Cutting;

namespace Litterfall.Bench.Cutting;

/// <summary>Reads published instances in their text form.</summary>
internal static class Instances
{
    private static readonly string[] CountFirst = ["christofides1977", "ngcut"];

    /// <summary>One sheet, most value.</summary>
    public static CuttingTask OneSheet(string root, string family, string file, Variant variant)
    {
        var rows = Rows(Path.Combine(root, "data", family, file));
        // A row of one number is a count; the first family of Wang has the number of sheets before it.
        var wide = rows.Where(r => r.Length >= 2)
            .Skip(file.StartsWith("WANG", StringComparison.Ordinal) ? 1 : 0)
            .ToList();
        var sheet = wide[0];
        var isCopiesFirst = CountFirst.Contains(family);
        var isValueThird = family == "beasley1985" || file.StartsWith("UW", StringComparison.Ordinal);
        return new()
        {
            Stock = [Sheet("sheet", sheet[0], sheet[1], 1, null)],
            Parts =
            [
                .. wide.Skip(1).Select((p, i) => Part(i, p, variant.MayTurn, (isCopiesFirst, isValueThird))),
            ],
            Kerf = variant.Kerf,
            Trim = variant.Trim,
            Goal = CuttingGoal.MostValue,
            OffcutShort = 0,
            OffcutLong = 0,
        };
    }

    /// <summary>Many sheets.</summary>
    public static CuttingTask ManySheets(string root, string file, bool isOneSize, Variant variant)
    {
        var rows = Rows(Path.Combine(root, "data", "cintra2008", file));
        var (sheets, parts) = ((int)rows[0][1], (int)rows[0][2]);
        return new()
        {
            Stock =
            [
                .. rows.Skip(1)
                    .Take(isOneSize ? 1 : sheets)
                    .Select(
                        (s, i) => Sheet($"sheet {i}", s[0], s[1], null, isOneSize ? null : (decimal)s[2])
                    ),
            ],
            Parts =
            [
                .. rows.Skip(1 + sheets)
                    .Take(parts)
                    .Select(
                        (p, i) =>
                            new CutDemand
                            {
                                Id = $"part {i}",
                                Length = p[0],
                                Width = p[1],
                                Count = (int)p[2],
                                MayTurn = variant.MayTurn,
                            }
                    ),
            ],
            Kerf = variant.Kerf,
            Trim = variant.Trim,
            OffcutShort = 0,
            OffcutLong = 0,
        };
    }

    private static StockSheet Sheet(string id, double length, double width, int? count, decimal? price) =>
        new()
        {
            Id = id,
            Length = length,
            Width = width,
            Count = count,
            Price = price,
        };

    /// <summary>
    /// Length, width, then value and copies where they are given, in the order of the family.
    /// </summary>
    private static CutDemand Part(
        int index,
        double[] row,
        bool mayTurn,
        (bool IsCopiesFirst, bool IsValueThird) form
    )
    {
        var (value, copies) = row.Length switch
        {
            2 => ((double?)null, (double?)null),
            3 => form.IsValueThird ? (row[2], (double?)null) : (null, row[2]),
            _ => form.IsCopiesFirst ? (row[3], row[2]) : (row[2], row[3]),
        };
        return new()
        {
            Id = $"part {index}",
            Length = row[0],
            Width = row[1],
            Count = copies is null ? null : (int)copies,
            MayTurn = mayTurn,
            Value = value,
        };
    }

    private static List<double[]> Rows(string path) =>
        [
            .. File.ReadLines(path)
                .Select(line => line.Split([' ', '\t', ','], StringSplitOptions.RemoveEmptyEntries))
                .Where(words => words.Length > 0 && words.All(IsNumber))
                .Select(words => words.Select(w => double.Parse(w, CultureInfo.InvariantCulture)).ToArray()),
        ];

    private static bool IsNumber(string word) =>
        double.TryParse(word, NumberStyles.Float, CultureInfo.InvariantCulture, out _);
}

/// <summary>How an instance is cut.</summary>
/// <param name="MayTurn">True where all parts may be turned.</param>
/// <param name="Kerf">Kerf.</param>
/// <param name="Trim">Trim.</param>
internal readonly record struct Variant(bool MayTurn, double Kerf, double Trim);
