using System.CommandLine;
using System.Diagnostics;
using Litterfall.App.Commands;
using Litterfall.App.Files;
using Litterfall.Domain.Cutting;
using Litterfall.Domain.Faults;
using Litterfall.Laboratory.Cases;
using Litterfall.Workshop.Cutting;

namespace Litterfall.App.Trade;

/// <summary><c>litterfall cut CASE.json</c>: parts from sheets, offcuts and rolls by straight cuts.</summary>
internal static class CutCommand
{
    private static readonly TimeSpan Moment = TimeSpan.FromSeconds(1);

    public static Command Create()
    {
        var path = new Argument<string>("CASE") { Description = "A case file (*.json)." };
        var json = Arguments.Json();
        var command = new Command(
            "cut",
            "How parts are cut from sheets, offcuts and rolls, and in what order."
        )
        {
            path,
            json,
        };
        // Another thread, so that Ctrl-C is heard while it computes.
        command.SetAction(
            (parsed, cancel) =>
                Task.Run(
                    () => Run(parsed.GetValue(path)!, parsed.GetValue(json), cancel),
                    CancellationToken.None
                )
        );
        return command;
    }

    private static int Run(string path, bool json, CancellationToken cancel)
    {
        var reading = CaseFile.Read(path, CutForm.Read);
        if (!reading.IsGood)
        {
            return Exit.Unusable(json, [.. reading.Faults]);
        }

        var asked = reading.Value!;
        if (CuttingRefusal.Find(asked.Task) is { } refusal)
        {
            return Refused(path, json, asked, refusal);
        }

        var watch = Stopwatch.StartNew();
        if (Solve(asked, cancel) is not { } plan)
        {
            return Refused(path, json, asked, CuttingRefusal.Short(asked.Task));
        }

        var milliseconds = watch.Elapsed.TotalMilliseconds;
        if (CuttingCheck.Faults(asked.Task, plan) is [var fault, ..])
        {
            return Exit.NotSolved(
                json,
                new TextFault(path, 1, 1, $"the plan does not hold: {fault}", "a report of this case")
            );
        }

        if (cancel.IsCancellationRequested)
        {
            Console.Error.WriteLine("Interrupted; this is the best plan found so far.");
        }

        Console.Out.Write(json ? CutText.Json(plan, milliseconds) + "\n" : CutText.List(asked.Task, plan));
        return Exit.Done;
    }

    private static int Refused(string path, bool json, CutCase asked, CuttingRefusal refusal)
    {
        var place = refusal.Part is { } part ? asked.PartPlaces[part] : asked.PlaceOf("stock");
        return Exit.Unusable(
            json,
            new TextFault(path, place.Line, place.Column, refusal.Message, refusal.Expected)
        );
    }

    /// <summary>Plans, and tells on a terminal how far it is.</summary>
    private static CuttingPlan? Solve(CutCase asked, CancellationToken cancel)
    {
        CuttingPlan? latest = null;
        var first = Console.IsErrorRedirected ? Timeout.InfiniteTimeSpan : Moment;
        using var progress = new Timer(
            _ =>
            {
                if (Volatile.Read(ref latest) is { } plan)
                {
                    Console.Error.WriteLine(
                        FormattableString.Invariant(
                            $"so far {plan.Value:0.##}; nothing beyond {plan.Bound:0.##} is possible …"
                        )
                    );
                }
            },
            null,
            first,
            Moment
        );
        return CuttingTable.Solve(
            asked.Task,
            new()
            {
                Limit = asked.Seconds is { } seconds ? TimeSpan.FromSeconds(seconds) : null,
                Found = plan => Volatile.Write(ref latest, plan),
            },
            cancel
        );
    }
}
