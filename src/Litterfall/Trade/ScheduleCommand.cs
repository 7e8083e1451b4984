using System.CommandLine;
using System.Diagnostics;
using Litterfall.App.Commands;
using Litterfall.App.Files;
using Litterfall.Domain.Faults;
using Litterfall.Laboratory.Cases;
using Litterfall.Workshop.Scheduling.Cases;
using Litterfall.Workshop.Scheduling.Chains;

namespace Litterfall.App.Trade;

/// <summary><c>litterfall schedule CASE.json</c>: the best days of all orders.</summary>
internal static class ScheduleCommand
{
    private const double UsualSeconds = 8;
    private static readonly TimeSpan Moment = TimeSpan.FromSeconds(2);

    public static Command Create()
    {
        var path = new Argument<string>("CASE") { Description = "A case file (*.json)." };
        var json = Arguments.Json();
        var command = new Command("schedule", "The best days of all orders, and what limits them.")
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
        var reading = CaseFile.Read(path, ScheduleForm.Read);
        if (!reading.IsGood)
        {
            return Exit.Unusable(json, [.. reading.Faults]);
        }

        using var ended = CancellationTokenSource.CreateLinkedTokenSource(cancel);
        ended.CancelAfter(TimeSpan.FromSeconds(reading.Value!.Seconds ?? UsualSeconds));
        try
        {
            var watch = Stopwatch.StartNew();
            var (plan, refusal) = Find(reading.Value.Shop, ended.Token);
            var milliseconds = watch.Elapsed.TotalMilliseconds;
            if (plan is null)
            {
                var place = reading.Value.PlaceOf(refusal!.Order, refusal.Key);
                return Exit.Unusable(
                    json,
                    new TextFault(path, place.Line, place.Column, refusal.Message, refusal.Expected)
                );
            }

            if (cancel.IsCancellationRequested)
            {
                Console.Error.WriteLine("Interrupted; this is the best plan found so far.");
            }

            Console.Out.Write(json ? ScheduleText.Json(plan, milliseconds) + "\n" : ScheduleText.List(plan));
            return Exit.Done;
        }
        catch (OperationCanceledException) when (cancel.IsCancellationRequested)
        {
            Console.Error.WriteLine("Interrupted before any plan was found; nothing was printed.");
            return Exit.Interrupted;
        }
        catch (OperationCanceledException)
        {
            const string late = "the time was up before any plan was found";
            return Exit.NotSolved(json, new TextFault(path, 1, 1, late, "more seconds"));
        }
    }

    /// <summary>Plans the orders, and says on a terminal that it takes a while.</summary>
    private static (CasePlan? Plan, CaseRefusal? Refusal) Find(ShopCase asked, CancellationToken cancel)
    {
        var first = Console.IsErrorRedirected ? Timeout.InfiniteTimeSpan : Moment;
        using var progress = new Timer(_ => Tell(), null, first, Moment);
        return CasePlanner.Find(asked, new SearchWish(), cancel);
    }

    private static void Tell() => Console.Error.WriteLine("looking for a better plan …");
}
