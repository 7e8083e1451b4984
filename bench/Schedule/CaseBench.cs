using System.Diagnostics;
using System.Text.Json;
using Litterfall.Workshop.Scheduling.Cases;
using Litterfall.Workshop.Scheduling.Chains;

namespace Litterfall.Bench.Schedule;

/// <summary>Cases of a workshop: value and bound against the value that stands with the case.</summary>
internal static class CaseBench
{
    /// <summary>Plans each case of a list.</summary>
    /// <param name="path">File with a list of cases.</param>
    /// <param name="seconds">Most that a case may take.</param>
    /// <param name="hasSolver">False to do without the solver.</param>
    public static void Run(string path, double seconds, bool hasSolver)
    {
        using var list = JsonDocument.Parse(File.ReadAllText(path));
        foreach (var one in list.RootElement.EnumerateArray())
        {
            using var end = new CancellationTokenSource(TimeSpan.FromSeconds(seconds));
            var watch = Stopwatch.StartNew();
            var (plan, refusal) = CasePlanner.Find(
                Read(one),
                new SearchWish { HasSolver = hasSolver },
                end.Token
            );
            var name = one.TryGetProperty("name", out var n) ? n.GetString() : "case";
            var known = one.TryGetProperty("optimum", out var k) ? k.GetInt64() : (long?)null;
            Console.WriteLine(
                plan is null
                    ? $"{name}: {refusal!.Message}"
                    : FormattableString.Invariant($"{name}: {plan.Objective}, bound {plan.Bound}, ")
                        + FormattableString.Invariant(
                            $"{(plan.IsProved ? "proved" : "found")}, known {known}, "
                        )
                        + FormattableString.Invariant(
                            $"ratio {(double)plan.Objective / (known ?? plan.Objective):0.0000}, "
                        )
                        + FormattableString.Invariant($"{watch.Elapsed.TotalSeconds:0.00} s")
            );
        }
    }

    private static ShopCase Read(JsonElement one)
    {
        int Whole(string key) => one.GetProperty(key).GetInt32();
        return new ShopCase
        {
            HorizonDays = Whole("horizonDays"),
            Holidays = [.. one.GetProperty("holidays").EnumerateArray().Select(h => h.GetInt32())],
            TransitWorkDays = Whole("transitWorkdays"),
            StaffHours = one.GetProperty("staffHoursPerDay").GetDouble(),
            BenchPlaces = Whole("benchPlaces"),
            QuarantinePlaces = Whole("quarantinePlaces"),
            Orders = [.. one.GetProperty("orders").EnumerateArray().Select(Order)],
        };
    }

    private static CaseOrder Order(JsonElement one)
    {
        int Whole(string key) => one.GetProperty(key).GetInt32();
        return new CaseOrder
        {
            Id = Whole("id"),
            Release = Whole("release"),
            Due = Whole("due"),
            QuarantineDays = Whole("quarantineDays"),
            GrowInDays = Whole("growInDays"),
            PlantHours = one.GetProperty("plantHours").GetDouble(),
            PackHours = one.GetProperty("packHours").GetDouble(),
            QuarantinePlaces = Whole("quarantinePlacesUsed"),
            BenchPlaces = Whole("benchPlacesUsed"),
            Weight = Whole("weight"),
        };
    }
}
