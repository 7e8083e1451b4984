using System.Globalization;
using Litterfall.Bench.Schedule;

// Cases in JSON (a list of cases with their optimum) or a folder of public project files (*.sm).
if (args.Length == 0)
{
    Console.Error.WriteLine("ScheduleBench CASES.json|FOLDER [seconds] [--no-solver]");
    return 2;
}

var seconds = args.Skip(1)
    .Select(a => double.TryParse(a, NumberStyles.Float, CultureInfo.InvariantCulture, out var s) ? s : 0)
    .FirstOrDefault(s => s > 0, 10);
var hasSolver = !args.Contains("--no-solver");
if (Directory.Exists(args[0]))
{
    ProjectBench.Run(args[0], seconds, hasSolver);
}
else
{
    CaseBench.Run(args[0], seconds, hasSolver);
}

return 0;
