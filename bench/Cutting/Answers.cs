using System.Globalization;
using Litterfall.Domain.Cutting;

namespace Litterfall.Bench.Cutting;

/// <summary>A known value of an instance in one variant.</summary>
/// <param name="Line">The row as it stands.</param>
/// <param name="Words">Its columns.</param>
internal sealed record Answers(string Line, string[] Words)
{
    /// <summary>The best value known.</summary>
    public double Best => double.Parse(Words[^4], CultureInfo.InvariantCulture);

    /// <summary>The best bound known.</summary>
    public double Bound => double.Parse(Words[^3], CultureInfo.InvariantCulture);

    /// <summary>Instance and variant.</summary>
    public string Name => $"{Words[1]} {Words[^7]} k{Words[^6]} t{Words[^5]}";

    /// <summary>Rows with known values.</summary>
    public static IEnumerable<Answers> Read(string root) =>
        File.ReadLines(Path.Combine(root, "answers.csv"))
            .Skip(1)
            .Select(line => new Answers(line, Columns(line)));

    /// <summary>The task.</summary>
    public CuttingTask Task(string root)
    {
        var variant = new Variant(
            Words[^7] == "R",
            double.Parse(Words[^6], CultureInfo.InvariantCulture),
            double.Parse(Words[^5], CultureInfo.InvariantCulture)
        );
        return Words[0] == "cintra2008"
            ? Instances.ManySheets(
                root,
                Words[1],
                Line.Contains("single size", StringComparison.Ordinal),
                variant
            )
            : Instances.OneSheet(root, Words[0], Words[1], variant);
    }

    /// <summary>Columns with quoted commas.</summary>
    private static string[] Columns(string line)
    {
        var columns = new List<string> { "" };
        var isQuoted = false;
        foreach (var sign in line)
        {
            if (sign == '"')
            {
                isQuoted = !isQuoted;
            }
            else if (sign == ',' && !isQuoted)
            {
                columns.Add("");
            }
            else
            {
                columns[^1] += sign;
            }
        }

        return [.. columns];
    }
}
