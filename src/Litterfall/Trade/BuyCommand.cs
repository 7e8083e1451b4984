using System.CommandLine;
using System.Diagnostics;
using Litterfall.App.Commands;
using Litterfall.App.Files;
using Litterfall.Domain.Faults;
using Litterfall.Laboratory.Cases;
using Litterfall.Workshop.Buying;

namespace Litterfall.App.Trade;

/// <summary><c>litterfall buy CASE.json</c>: the cheapest purchase of all needs.</summary>
internal static class BuyCommand
{
    private static readonly TimeSpan Moment = TimeSpan.FromSeconds(2);

    public static Command Create()
    {
        var path = new Argument<string>("CASE") { Description = "A case file (*.json)." };
        var json = Arguments.Json();
        var command = new Command("buy", "The cheapest packs from several suppliers, and why these.")
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
        var reading = CaseFile.Read(path, BuyForm.Read);
        if (!reading.IsGood)
        {
            return Exit.Unusable(json, [.. reading.Faults]);
        }

        using var ended = CancellationTokenSource.CreateLinkedTokenSource(cancel);
        if (reading.Value!.Seconds is { } seconds)
        {
            ended.CancelAfter(TimeSpan.FromSeconds(seconds));
        }

        try
        {
            var watch = Stopwatch.StartNew();
            var (plan, refusal) = Find(reading.Value.Purchase, ended.Token);
            var milliseconds = watch.Elapsed.TotalMilliseconds;
            if (plan is null)
            {
                var place = reading.Value.PlaceOf(refusal!.Key);
                return Exit.Unusable(
                    json,
                    new TextFault(path, place.Line, place.Column, refusal.Message, refusal.Expected)
                );
            }

            if (cancel.IsCancellationRequested)
            {
                Console.Error.WriteLine("Interrupted; this is the best purchase found so far.");
            }

            Console.Out.Write(
                json
                    ? BuyText.Json(reading.Value, plan, milliseconds) + "\n"
                    : BuyText.List(reading.Value, plan)
            );
            return Exit.Done;
        }
        catch (OperationCanceledException) when (cancel.IsCancellationRequested)
        {
            Console.Error.WriteLine("Interrupted before any purchase was found; nothing was printed.");
            return Exit.Interrupted;
        }
        catch (OperationCanceledException)
        {
            const string late = "the time was up before any purchase was found";
            return Exit.NotSolved(json, new TextFault(path, 1, 1, late, "more seconds"));
        }
    }

    /// <summary>Plans the purchase, and says on a terminal that it takes a while.</summary>
    private static (PurchasePlan? Plan, PurchaseRefusal? Refusal) Find(
        PurchaseCase asked,
        CancellationToken cancel
    )
    {
        var first = Console.IsErrorRedirected ? Timeout.InfiniteTimeSpan : Moment;
        using var progress = new Timer(_ => Tell(), null, first, Moment);
        return PurchasePlanner.Find(asked, cancel);
    }

    private static void Tell() => Console.Error.WriteLine("looking for a cheaper purchase …");
}
