using System.CommandLine;
using System.Diagnostics;
using Litterfall.App.Files;
using Litterfall.Documents.Json;
using Litterfall.Documents.Text;
using Litterfall.Domain.Faults;
using Litterfall.Domain.Figures;
using Litterfall.Forecasting.Tracing;
using Litterfall.Judging;

namespace Litterfall.App.Commands;

/// <summary><c>litterfall why DESIGN KEY</c>.</summary>
internal static class WhyCommand
{
    public static Command Create()
    {
        var design = Arguments.Design();
        var key = new Argument<string>("KEY")
        {
            Description =
                "A number of check --json, such as weights.dryKg, quantities[0].toBuyLitres or "
                + "cuts[lid].lengthMm.",
        };
        var (json, workshop) = (Arguments.Json(), Arguments.Workshop());
        var command = new Command("why", "Where a number of a check comes from.")
        {
            design,
            key,
            json,
            workshop,
        };
        command.SetAction(parsed =>
            Run(
                parsed.GetValue(design)!,
                parsed.GetValue(key)!,
                parsed.GetValue(json),
                parsed.GetValue(workshop)
            )
        );
        return command;
    }

    private static int Run(string path, string key, bool json, string? workshop)
    {
        var watch = Stopwatch.StartNew();
        var reading = Shop.Design(path, workshop);
        if (!reading.IsGood)
        {
            return Exit.Unusable(json, [.. reading.Faults]);
        }

        var result = DesignRun.Execute(reading.Value!);
        var report = CheckCommand.Timed(result.Report, watch);
        var node = ReportPath.Find(report, key);
        if (node is not (ReportNumber or ReportAbsent))
        {
            return Exit.Unusable(json, NotANumber(report, node, key));
        }

        var titles = Arguments.Titles(reading.Value!.Catalog);
        var weights = node is ReportNumber number ? Sensitivity.Of(result.Numbers, key, number) : null;
        Console.Out.Write(
            json
                ? ReportJson.Why(key, node, titles, weights) + "\n"
                : WhyText.Write(key, node, titles, weights)
        );
        return Exit.Done;
    }

    private static TextFault NotANumber(ReportObject report, ReportNode? node, string key)
    {
        var below = node
            ?.Leaves(key)
            .Where(leaf => leaf.Node is ReportNumber or ReportAbsent)
            .Select(leaf => leaf.Path)
            .Take(8)
            .ToArray();
        if (below is { Length: > 0 } && node is ReportObject or ReportList)
        {
            return new(
                "command line",
                1,
                1,
                $"'{key}' is a group of numbers",
                $"one of them: {string.Join(", ", below!)}"
            );
        }

        var near = ReportPath.Near(report, key);
        return new(
            "command line",
            1,
            1,
            node is null ? $"the check has no '{key}'" : $"'{key}' is a text, not a number",
            near.Length > 0
                ? $"perhaps {string.Join(", ", near)}"
                : "a key as in check --json, such as weights.dryKg"
        );
    }
}
