using System.Globalization;
using System.Text;
using System.Text.Json;

namespace Litterfall.Dispatch.Forecasts;

/// <summary>
/// Lays a forecast in JSON out as a table with a head, whatever its shape: a list of objects, an object of
/// lists side by side, either of them some levels down, with units beside the lists.
/// </summary>
internal static class ForecastTable
{
    private const int MostLevels = 4;
    private const int MostRows = 20_000;
    private const int MostColumns = 60;
    private static readonly string[] UnitNames = ["units", "unit"];

    /// <summary>The table as tab-separated text; null where there is none in it.</summary>
    /// <param name="root">The whole text.</param>
    public static string? Read(JsonElement root) =>
        Find(root, new(), 0) is { } table && table.Rows.Count > 0 ? table.Text() : null;

    private static Table? Find(JsonElement item, Dictionary<string, string> units, int level)
    {
        if (level > MostLevels)
        {
            return null;
        }

        if (item.ValueKind == JsonValueKind.Array)
        {
            return Objects(item, units) ?? Pairs(item);
        }

        if (item.ValueKind != JsonValueKind.Object)
        {
            return null;
        }

        var known = new Dictionary<string, string>(units, StringComparer.Ordinal);
        Collect(item, known);
        if (Lists(item, known) is { } lists)
        {
            return lists;
        }

        // The finest table wins: hours before days.
        return item.EnumerateObject()
            .Select(p => Find(p.Value, known, level + 1))
            .OfType<Table>()
            .OrderByDescending(t => t.Rows.Count)
            .FirstOrDefault();
    }

    /// <summary>Units stand in an object whose name says so, or as "unit" beside the lists.</summary>
    private static void Collect(JsonElement item, Dictionary<string, string> units)
    {
        foreach (var member in item.EnumerateObject())
        {
            var isUnits = UnitNames.Any(u => member.Name.EndsWith(u, StringComparison.OrdinalIgnoreCase));
            if (!isUnits)
            {
                continue;
            }

            if (member.Value.ValueKind == JsonValueKind.String)
            {
                units[""] = member.Value.GetString() ?? "";
            }
            else if (member.Value.ValueKind == JsonValueKind.Object)
            {
                foreach (var unit in member.Value.EnumerateObject())
                {
                    if (unit.Value.ValueKind == JsonValueKind.String)
                    {
                        units[unit.Name] = unit.Value.GetString() ?? "";
                    }
                }
            }
        }
    }

    private static Table? Objects(JsonElement list, Dictionary<string, string> units)
    {
        var rows = new List<Dictionary<string, string>>();
        foreach (var item in list.EnumerateArray().Take(MostRows))
        {
            if (item.ValueKind == JsonValueKind.Object)
            {
                var row = new Dictionary<string, string>(StringComparer.Ordinal);
                Flatten(item, "", row, 0);
                rows.Add(row);
            }
        }

        if (rows.Count == 0)
        {
            return null;
        }

        var known = new Dictionary<string, string>(units, StringComparer.Ordinal);
        Beside(rows, known);
        List<string> heads = [.. rows.SelectMany(r => r.Keys).Distinct(StringComparer.Ordinal)];
        heads = heads.Count > MostColumns ? heads[..MostColumns] : heads;
        return new(
            [.. heads.Select(h => Headed(h, known))],
            [.. rows.Select(r => heads.Select(h => r.GetValueOrDefault(h) ?? "").ToArray())]
        );
    }

    /// <summary>"temperature" beside "temperatureUnit", which says the same in every row.</summary>
    private static void Beside(List<Dictionary<string, string>> rows, Dictionary<string, string> units)
    {
        foreach (var (name, unit) in rows[0])
        {
            var end = UnitNames.FirstOrDefault(u => name.EndsWith(u, StringComparison.OrdinalIgnoreCase));
            var of = end is null ? "" : name[..^end.Length].TrimEnd(' ', '_');
            if (rows[0].ContainsKey(of) && rows.TrueForAll(r => r.GetValueOrDefault(name) == unit))
            {
                units[of] = unit;
            }
        }
    }

    private static void Flatten(JsonElement item, string name, Dictionary<string, string> row, int level)
    {
        foreach (var member in item.EnumerateObject())
        {
            var full = name.Length == 0 ? member.Name : $"{name} {member.Name}";
            if (member.Value.ValueKind == JsonValueKind.Object && level < 2)
            {
                Flatten(member.Value, full, row, level + 1);
            }
            else if (Cell(member.Value) is { } cell)
            {
                row[full] = cell;
            }
        }
    }

    /// <summary>[[time, value], …]</summary>
    private static Table? Pairs(JsonElement list)
    {
        var rows = new List<string[]>();
        foreach (var item in list.EnumerateArray().Take(MostRows))
        {
            if (item.ValueKind == JsonValueKind.Array && item.GetArrayLength() is >= 2 and <= MostColumns)
            {
                rows.Add([.. item.EnumerateArray().Select(c => Cell(c) ?? "")]);
            }
        }

        return rows.Count == 0 ? null : new([], rows);
    }

    private static Table? Lists(JsonElement item, Dictionary<string, string> units)
    {
        List<(string Name, List<string> Cells)> lists = [];
        foreach (var member in item.EnumerateObject())
        {
            if (member.Value.ValueKind == JsonValueKind.Array && member.Value.GetArrayLength() > 1)
            {
                var cells = member.Value.EnumerateArray().Take(MostRows).Select(Cell).ToList();
                if (cells.TrueForAll(c => c is not null))
                {
                    lists.Add((member.Name, [.. cells.OfType<string>()]));
                }
            }
        }

        var same = lists.GroupBy(l => l.Cells.Count).OrderByDescending(g => g.Count()).FirstOrDefault();
        if (same is null || same.Count() < 2)
        {
            return null;
        }

        (string Name, List<string> Cells)[] columns = [.. same.Take(MostColumns)];
        return new(
            [.. columns.Select(c => Headed(c.Name, units))],
            [.. Enumerable.Range(0, same.Key).Select(i => columns.Select(c => c.Cells[i]).ToArray())]
        );
    }

    private static string Headed(string name, Dictionary<string, string> units)
    {
        var last = name.Split(' ')[^1];
        var unit = units.GetValueOrDefault(name) ?? units.GetValueOrDefault(last) ?? "";
        var spaced = Spaced(name);
        return unit.Length is > 0 and < 12 ? $"{spaced} ({unit})"
            : units.TryGetValue("", out var all)
            && spaced.Contains("temp", StringComparison.OrdinalIgnoreCase)
                ? $"{spaced} ({all})"
            : spaced;
    }

    /// <summary>"airTempF" as "air Temp F", so that a unit at the end is seen.</summary>
    private static string Spaced(string name)
    {
        var text = new StringBuilder(name.Length + 8);
        for (var i = 0; i < name.Length; i++)
        {
            if (i > 0 && char.IsAsciiLetterUpper(name[i]) && char.IsAsciiLetterLower(name[i - 1]))
            {
                text.Append(' ');
            }

            text.Append(name[i]);
        }

        return text.ToString();
    }

    private static string? Cell(JsonElement value) =>
        value.ValueKind switch
        {
            JsonValueKind.String => value.GetString()!.ReplaceLineEndings(" ").Replace('\t', ' '),
            JsonValueKind.Number => value.TryGetDouble(out var number)
                ? number.ToString("R", CultureInfo.InvariantCulture)
                : "",
            JsonValueKind.Null => "",
            JsonValueKind.True => "1",
            JsonValueKind.False => "0",
            _ => null,
        };

    private sealed record Table(IReadOnlyList<string> Heads, List<string[]> Rows)
    {
        public string Text()
        {
            var text = new StringBuilder();
            if (Heads.Count > 0)
            {
                text.AppendJoin('\t', Heads).Append('\n');
            }

            foreach (var row in Rows)
            {
                text.AppendJoin('\t', row).Append('\n');
            }

            return text.ToString();
        }
    }
}
