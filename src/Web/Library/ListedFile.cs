using System.Collections.Immutable;
using System.Globalization;
using CsvHelper;
using CsvHelper.Configuration;
using Litterfall.Documents.Papers;

namespace Litterfall.Web.Library;

/// <summary>A list as a table, with the files it is kept in.</summary>
/// <param name="Title">What it is.</param>
/// <param name="Name">Name of the table.</param>
/// <param name="Calendar">Name of the same as a calendar; null where it is none.</param>
/// <param name="Heads">Heads of the columns.</param>
/// <param name="Rows">Its lines.</param>
public sealed record ListedFile(
    string Title,
    string Name,
    string? Calendar,
    ImmutableArray<string> Heads,
    IReadOnlyList<ImmutableArray<string>> Rows
)
{
    private static readonly CsvConfiguration Form = new(CultureInfo.InvariantCulture);

    /// <summary>All lists of a set.</summary>
    public static ImmutableArray<ListedFile> Of(IReadOnlyList<PaperFile> files) =>
        [
            .. files
                .Where(f => f.Name.EndsWith(".csv", StringComparison.Ordinal))
                .Select(table =>
                {
                    var stem = table.Name[..^".csv".Length];
                    var title = files.FirstOrDefault(f => f.Name == stem + ".pdf")?.Title ?? Plain(stem);
                    var rows = Read(table.Bytes);
                    return new ListedFile(
                        title,
                        table.Name,
                        files.FirstOrDefault(f => f.Name == stem + ".ics")?.Name,
                        rows.Count > 0 ? rows[0] : [],
                        [.. rows.Skip(1)]
                    );
                })
                .OrderBy(l => l.Name, StringComparer.Ordinal),
        ];

    private static List<ImmutableArray<string>> Read(byte[] bytes)
    {
        using var reader = new StreamReader(new MemoryStream(bytes));
        using var csv = new CsvParser(reader, Form);
        var rows = new List<ImmutableArray<string>>();
        while (csv.Read())
        {
            rows.Add([.. csv.Record!]);
        }

        return rows;
    }

    /// <summary>"05-shopping-list" as "Shopping list".</summary>
    private static string Plain(string stem)
    {
        var words = stem.TrimStart([.. "0123456789-"]).Replace('-', ' ');
        return words.Length == 0 ? stem : char.ToUpperInvariant(words[0]) + words[1..];
    }
}
