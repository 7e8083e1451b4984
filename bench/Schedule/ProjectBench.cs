using System.Diagnostics;
using System.Globalization;
using Google.OrTools.Sat;

namespace Litterfall.Bench.Schedule;

/// <summary>
/// Public instances of project scheduling with resources (Kolisch and Sprecher 1997), read from their text
/// form: the same solver and settings as the plan of the workshop, on activities of a net instead of stages
/// of
/// orders. What it tells is how far the solver of this machine comes, not the workshop's own model.
/// </summary>
internal static class ProjectBench
{
    private const string Settings = "num_workers:2,random_seed:1";

    /// <summary>An activity: days it takes, what it takes of each resource, and what waits for it.</summary>
    private sealed record Activity(int Days, int[] Takes, int[] After);

    /// <summary>Solves every file of a folder.</summary>
    /// <param name="folder">The folder.</param>
    /// <param name="seconds">Most that an instance may take.</param>
    /// <param name="hasSolver">Nothing is done without the solver.</param>
    public static void Run(string folder, double seconds, bool hasSolver)
    {
        var files = Directory.GetFiles(folder, "*.sm").Order(StringComparer.Ordinal).ToList();
        if (files.Count == 0 || !hasSolver)
        {
            Console.WriteLine(
                "Put the public files (*.sm) into this folder; they are solved with the solver."
            );
            return;
        }

        var (proved, sum, longest) = (0, 0L, 0.0);
        foreach (var file in files)
        {
            var watch = Stopwatch.StartNew();
            var (span, isProved) = Solve(File.ReadAllLines(file), seconds);
            (proved, sum) = (proved + (isProved ? 1 : 0), sum + span);
            longest = Math.Max(longest, watch.Elapsed.TotalSeconds);
        }

        Console.WriteLine(
            FormattableString.Invariant(
                $"{files.Count} instances, {proved} proved ({100.0 * proved / files.Count:0.0} %) "
            )
                + FormattableString.Invariant(
                    $"within {seconds:0} s each, sum of spans {sum}, longest {longest:0.0} s"
                )
        );
    }

    private static (long Span, bool IsProved) Solve(string[] lines, double seconds)
    {
        var (activities, capacity) = Read(lines);
        var model = new CpModel();
        var horizon = activities.Sum(a => a.Days);
        var starts = activities.Select(_ => model.NewIntVar(0, horizon, "")).ToArray();
        var intervals = activities
            .Select((a, i) => model.NewFixedSizeIntervalVar(starts[i], a.Days, ""))
            .ToArray();
        for (var i = 0; i < activities.Count; i++)
        {
            foreach (var next in activities[i].After)
            {
                model.Add(starts[next] >= starts[i] + activities[i].Days);
            }
        }

        for (var r = 0; r < capacity.Length; r++)
        {
            var used = model.AddCumulative(capacity[r]);
            for (var i = 0; i < activities.Count; i++)
            {
                if (activities[i].Takes[r] > 0)
                {
                    used.AddDemand(intervals[i], activities[i].Takes[r]);
                }
            }
        }

        model.Minimize(starts[^1]);
        var solver = new CpSolver
        {
            StringParameters =
                Settings + string.Create(CultureInfo.InvariantCulture, $",max_time_in_seconds:{seconds}"),
        };
        var status = solver.Solve(model);
        return status is CpSolverStatus.Optimal or CpSolverStatus.Feasible
            ? ((long)solver.ObjectiveValue, status == CpSolverStatus.Optimal)
            : (0, false);
    }

    /// <summary>
    /// Precedences, durations with requests, and availabilities stand below their headings.
    /// </summary>
    private static (List<Activity> Activities, int[] Capacity) Read(string[] lines)
    {
        int Heading(string start) =>
            Array.FindIndex(lines, l => l.StartsWith(start, StringComparison.OrdinalIgnoreCase));
        int[] Numbers(string line) =>
            [
                .. line.Split(' ', StringSplitOptions.RemoveEmptyEntries)
                    .Where(w => int.TryParse(w, CultureInfo.InvariantCulture, out _))
                    .Select(w => int.Parse(w, CultureInfo.InvariantCulture)),
            ];
        var after = lines
            .Skip(Heading("PRECEDENCE") + 2)
            .TakeWhile(l => l.Trim().Length > 0 && char.IsWhiteSpace(l[0]))
            .Select(Numbers);
        var requests = lines
            .Skip(Heading("REQUESTS") + 3)
            .TakeWhile(l => l.Trim().Length > 0 && char.IsWhiteSpace(l[0]))
            .Select(Numbers);
        var activities = after
            .Zip(requests, (a, r) => new Activity(r[2], r[3..], [.. a[3..].Select(n => n - 1)]))
            .ToList();
        return (activities, Numbers(lines[Heading("RESOURCEAVAILABILITIES") + 2]));
    }
}
