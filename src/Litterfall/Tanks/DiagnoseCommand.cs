using System.CommandLine;
using System.Diagnostics;
using Litterfall.App.Commands;
using Litterfall.App.Files;
using Litterfall.Domain.Faults;
using Litterfall.Laboratory.Cases;
using Litterfall.Running.Diagnosis.Finding;

namespace Litterfall.App.Tanks;

/// <summary>
/// <c>litterfall diagnose CASE.json</c>: what is wrong with a tank, and what to measure next.
/// </summary>
internal static class DiagnoseCommand
{
    public static Command Create()
    {
        var path = new Argument<string?>("CASE")
        {
            Description = "A case file (*.json): design, symptoms, readings, facts.",
            Arity = ArgumentArity.ZeroOrOne,
        };
        var (json, workshop) = (Arguments.Json(), Arguments.Workshop());
        var list = new Option<bool>("--list")
        {
            Description = "Print the symptoms and facts that are known.",
        };
        var command = new Command(
            "diagnose",
            "Why a tank goes wrong, what speaks for it, and what to measure next."
        )
        {
            path,
            json,
            workshop,
            list,
        };
        // Another thread, so that Ctrl-C is heard while it computes.
        command.SetAction(
            (parsed, cancel) =>
                Task.Run(
                    () =>
                        parsed.GetValue(list)
                            ? List(parsed.GetValue(json))
                            : Run(
                                parsed.GetValue(path),
                                parsed.GetValue(workshop),
                                parsed.GetValue(json),
                                cancel
                            ),
                    CancellationToken.None
                )
        );
        return command;
    }

    private static int List(bool json)
    {
        Console.Out.Write(json ? DiagnoseText.KnownJson() + "\n" : DiagnoseText.Known());
        return Exit.Done;
    }

    private static int Run(string? path, string? workshop, bool json, CancellationToken cancel)
    {
        if (path is null)
        {
            return Exit.Unusable(
                json,
                new TextFault("command line", 1, 1, "no case is named", "a case file, or --list")
            );
        }

        var form = new DiagnoseForm(path, workshop);
        var reading = CaseFile.Read(path, form.Read);
        if (!reading.IsGood || reading.Value is null)
        {
            return Exit.Unusable(json, [.. reading.Faults, .. form.Faults]);
        }

        try
        {
            var watch = Stopwatch.StartNew();
            var answer = FaultFinder.Find(reading.Value, cancel);
            var milliseconds = watch.Elapsed.TotalMilliseconds;
            Console.Out.Write(
                json ? DiagnoseText.Json(answer, milliseconds) + "\n" : DiagnoseText.Lines(answer)
            );
            return Exit.Done;
        }
        catch (OperationCanceledException)
        {
            Console.Error.WriteLine("Interrupted; nothing was printed.");
            return Exit.Interrupted;
        }
    }
}
