using System.CommandLine;
using System.Diagnostics;
using Litterfall.App.Commands;
using Litterfall.App.Files;
using Litterfall.Dispatch.Verdicts;
using Litterfall.Domain.Dispatch;
using Litterfall.Domain.Faults;
using Litterfall.Laboratory.Cases;

namespace Litterfall.App.Shipping;

/// <summary><c>litterfall ship CASE.json</c>: on which day a parcel with live goods may leave.</summary>
internal static class ShipCommand
{
    public static Command Create()
    {
        var path = new Argument<string?>("CASE")
        {
            Description = "A case file (*.json): what lives in it, days, carrier, forecasts.",
            Arity = ArgumentArity.ZeroOrOne,
        };
        var check = new Option<string>("--check")
        {
            Description = "Checks an exported evidence file instead (*.zip).",
            HelpName = "FILE",
        };
        var json = Arguments.Json();
        var command = new Command(
            "ship",
            "On which day a parcel with live goods may leave, how it is packed, or why it is held."
        )
        {
            path,
            check,
            json,
        };
        // Another thread, so that Ctrl-C is heard while it computes.
        command.SetAction(
            (parsed, cancel) =>
                Task.Run(
                    () =>
                        (parsed.GetValue(path), parsed.GetValue(check)) switch
                        {
                            ({ } asked, null) => Run(asked, parsed.GetValue(json), cancel),
                            (null, { } zip) => CheckEvidence.Run(zip, parsed.GetValue(json)),
                            _ => Exit.Unusable(
                                parsed.GetValue(json),
                                new TextFault(
                                    "ship",
                                    1,
                                    1,
                                    "one file is asked for",
                                    "a case, or --check with an exported evidence file"
                                )
                            ),
                        },
                    CancellationToken.None
                )
        );
        return command;
    }

    private static int Run(string path, bool json, CancellationToken cancel)
    {
        var form = new ShipForm(path, Shop.Embedded);
        var reading = CaseFile.Read(path, form.Read);
        if (!reading.IsGood || reading.Value is not { } asked)
        {
            return Exit.Unusable(json, [.. reading.Faults]);
        }

        try
        {
            var watch = Stopwatch.StartNew();
            var week = WeekJudge.Judge(asked.Task, cancel);
            var milliseconds = watch.Elapsed.TotalMilliseconds;
            Console.Out.Write(
                json ? ShipJson.Text(asked, week, milliseconds) + "\n" : ShipText.Lines(asked, week)
            );
            return May(asked, week) ? Exit.Done : Exit.Stopped;
        }
        catch (OperationCanceledException)
        {
            Console.Error.WriteLine("Interrupted; nothing was printed.");
            return Exit.Interrupted;
        }
    }

    private static bool May(ShipCase asked, WeekVerdict week) =>
        asked.Day is { } day ? week.Days.Any(d => d.Day == day && d.MayShip) : week.Days.Any(d => d.MayShip);
}
