using System.Diagnostics;
using System.Globalization;
using System.Text.Json;
using Litterfall.Domain.Cutting;
using Litterfall.Workshop.Cutting;

namespace Litterfall.Bench.Cutting;

/// <summary>Cases of a workshop: fewest sheets, and the largest rest on them.</summary>
internal static class Workshops
{
    /// <summary>Runs all cases of a folder.</summary>
    public static void Run(string folder, double seconds)
    {
        var (reached, count) = (0, 0);
        var ratios = new List<double>();
        foreach (var path in Directory.GetFiles(folder, "ws-*.json").Order(StringComparer.Ordinal))
        {
            using var text = JsonDocument.Parse(File.ReadAllText(path));
            var root = text.RootElement;
            var watch = Stopwatch.StartNew();
            var first = 0.0;
            var plan = CuttingTable.Solve(
                Task(root),
                new()
                {
                    Limit = TimeSpan.FromSeconds(seconds),
                    Found = _ => first = first == 0 ? watch.Elapsed.TotalSeconds : first,
                },
                CancellationToken.None
            )!;
            var best = root.GetProperty("optimumSheets").GetInt32();
            var planted = root.GetProperty("plantedOffcut");
            var area = planted[0].GetDouble() * planted[1].GetDouble();
            var largest = plan
                .Sheets.SelectMany(s => s.Offcuts)
                .Select(o => o.Length * o.Width)
                .DefaultIfEmpty()
                .Max();
            count++;
            reached += plan.Sheets.Count == best ? 1 : 0;
            var isOffcut = root.GetProperty("kind").GetString() == "offcut";
            if (isOffcut && plan.Sheets.Count == best)
            {
                ratios.Add(largest / area);
            }

            Console.WriteLine(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{Path.GetFileName(path)} parts {root.GetProperty("nParts")} "
                        + $"sheets {plan.Sheets.Count} of {best} "
                        + $"bound {plan.Bound} rest {largest / area:0.000} of the planted "
                        + $"({root.GetProperty("kind")}) "
                        + $"{watch.Elapsed.TotalSeconds:0.0} s first {first:0.00} s"
                )
            );
        }

        Console.WriteLine(
            string.Create(
                CultureInfo.InvariantCulture,
                $"{reached} of {count} with the fewest sheets; "
                    + $"largest rest over planted, mean {ratios.DefaultIfEmpty().Average():0.000}"
            )
        );
    }

    private static CuttingTask Task(JsonElement root) =>
        new()
        {
            Kerf = root.GetProperty("kerf").GetDouble(),
            Trim = root.GetProperty("trim").GetDouble(),
            OffcutShort = 0,
            OffcutLong = 0,
            Stock =
            [
                .. root.GetProperty("sheets")
                    .EnumerateArray()
                    .Select(s => new StockSheet
                    {
                        Id = s.GetProperty("id").GetString()!,
                        Length = s.GetProperty("L").GetDouble(),
                        Width = s.GetProperty("W").GetDouble(),
                    }),
            ],
            Parts =
            [
                .. root.GetProperty("parts")
                    .EnumerateArray()
                    .Select(p => new CutDemand
                    {
                        Id = p.GetProperty("id").GetString()!,
                        Length = p.GetProperty("l").GetDouble(),
                        Width = p.GetProperty("w").GetDouble(),
                        Count = p.GetProperty("qty").GetInt32(),
                        MayTurn = p.GetProperty("rotate").GetBoolean(),
                    }),
            ],
        };
}
