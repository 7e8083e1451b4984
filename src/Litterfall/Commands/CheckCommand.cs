using System.CommandLine;
using System.Diagnostics;
using System.Globalization;
using Litterfall.App.Files;
using Litterfall.Documents.Json;
using Litterfall.Documents.Text;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Judging;
using Litterfall.Judging.Levers;

namespace Litterfall.App.Commands;

/// <summary><c>litterfall check DESIGN</c>.</summary>
internal static class CheckCommand
{
    public static Command Create()
    {
        var design = Arguments.Design();
        var (json, workshop) = (Arguments.Json(), Arguments.Workshop());
        var levers = new Option<bool>("--levers")
        {
            Description = "Also search what setting of mist, vents or lamps would clear a finding.",
        };
        var command = new Command("check", "Quantities, cut sizes, weights and findings of a design.")
        {
            design,
            json,
            workshop,
            levers,
        };
        command.SetAction(parsed =>
            Run(
                parsed.GetValue(design)!,
                parsed.GetValue(json),
                parsed.GetValue(workshop),
                parsed.GetValue(levers)
            )
        );
        return command;
    }

    private static int Run(string path, bool json, string? workshop, bool withLevers)
    {
        var watch = Stopwatch.StartNew();
        var reading = Shop.Design(path, workshop);
        if (!reading.IsGood)
        {
            return Exit.Unusable(json, [.. reading.Faults]);
        }

        var result = DesignRun.Execute(reading.Value!);
        if (withLevers)
        {
            result = LeverSearch.With(result);
        }

        if (json)
        {
            Console.Out.WriteLine(ReportJson.Write(Timed(result.Report, watch)));
        }
        else
        {
            Console.Out.Write(CheckText.Write(result));
        }

        return result.Stops ? Exit.Stopped : Exit.Done;
    }

    /// <summary>The report with the time it took, a number like all others.</summary>
    internal static ReportObject Timed(ReportObject report, Stopwatch watch) =>
        new(
            report.Members.Add(
                new(
                    "elapsedMs",
                    new ReportNumber(
                        Figure.Given(
                            "time this check took",
                            watch.Elapsed.TotalSeconds,
                            Milliseconds,
                            new Citation("own-derivation", "stopwatch of this run", Provenance.Measured)
                        ),
                        Milliseconds
                    )
                )
            )
        );

    private static readonly Unit Milliseconds = new("ms", 1e-3, Unit.Second.Dimension);
}

/// <summary>Arguments and options that commands share.</summary>
internal static class Arguments
{
    public static Argument<string> Design() => new("DESIGN") { Description = "A design file (*.viv.yaml)." };

    public static Option<bool> Json() =>
        new("--json") { Description = "Print one JSON document and nothing else." };

    public static Option<string?> Workshop()
    {
        var option = new Option<string?>("--workshop")
        {
            Description = "Folder with the workshop's own entries and prices.",
            HelpName = "DIR",
        };
        RefuseOptionsAsValues(option);
        return option;
    }

    /// <summary>A day to count from.</summary>
    public static Option<string?> From(string means)
    {
        var from = new Option<string?>("--from") { Description = means, HelpName = "DATE" };
        from.Validators.Add(result =>
        {
            if (result.Tokens.Count == 1 && Day(result.Tokens[0].Value) is null)
            {
                result.AddError($"'{result.Tokens[0].Value}' is not {PlausibleRanges.Dates}");
            }
        });
        return from;
    }

    /// <summary>A day as 2026-08-14, or null.</summary>
    public static DateOnly? Day(string? text) =>
        DateOnly.TryParseExact(
            text,
            "yyyy-MM-dd",
            CultureInfo.InvariantCulture,
            DateTimeStyles.None,
            out var day
        ) && PlausibleRanges.Holds(day)
            ? day
            : null;

    /// <summary>A forgotten value must not swallow the next option: `--out --json` is refused.</summary>
    public static void RefuseOptionsAsValues(params ReadOnlySpan<Option> options)
    {
        foreach (var option in options)
        {
            option.Validators.Add(result =>
            {
                if (result.Tokens.Any(token => token.Value.StartsWith("--", StringComparison.Ordinal)))
                {
                    result.AddError($"The option {option.Name} has no value");
                }
            });
        }
    }

    /// <summary>Titles of sources by key.</summary>
    public static Dictionary<string, string> Titles(TradeCatalog catalog) =>
        catalog.Sources.ToDictionary(s => s.Key, s => s.Value.Title, StringComparer.Ordinal);
}
