using System.CommandLine;
using System.Diagnostics;
using Litterfall.App.Commands;
using Litterfall.App.Files;
using Litterfall.Domain.Faults;
using Litterfall.Domain.Trees;
using Litterfall.Laboratory.Cases;

namespace Litterfall.App.Trade;

/// <summary>A command that reads one case file and tells one result.</summary>
/// <typeparam name="TCase">What the file holds.</typeparam>
/// <typeparam name="TResult">What is told.</typeparam>
internal sealed record CaseCommand<TCase, TResult>
    where TCase : class
    where TResult : class
{
    private const string Beyond = "the amounts grow beyond what is computed with";

    /// <summary>Reads the file.</summary>
    public required Func<TreeForm, TCase?> Read { get; init; }

    /// <summary>Solves the case.</summary>
    public required Func<TCase, CancellationToken, TResult> Solve { get; init; }

    /// <summary>The result as one JSON document, with the milliseconds it took.</summary>
    public required Func<TCase, TResult, double, string> Json { get; init; }

    /// <summary>The result for people.</summary>
    public required Func<TCase, TResult, string> Text { get; init; }

    /// <summary>Largest file, bytes.</summary>
    public int LargestFile { get; init; } = CaseFile.LargestFile;

    /// <summary>The command.</summary>
    public Command Create(string name, string description)
    {
        var path = new Argument<string>("CASE") { Description = "A case file (*.json)." };
        var json = Arguments.Json();
        var command = new Command(name, description) { path, json };
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

    private int Run(string path, bool json, CancellationToken cancel)
    {
        var reading = CaseFile.Read(path, Read, LargestFile);
        if (!reading.IsGood)
        {
            return Exit.Unusable(json, [.. reading.Faults]);
        }

        try
        {
            var watch = Stopwatch.StartNew();
            var solved = Solve(reading.Value!, cancel);
            var milliseconds = watch.Elapsed.TotalMilliseconds;
            Console.Out.Write(
                json ? Json(reading.Value!, solved, milliseconds) + "\n" : Text(reading.Value!, solved)
            );
            return Exit.Done;
        }
        catch (OverflowException)
        {
            return Exit.NotSolved(json, new TextFault(path, 1, 1, Beyond, "smaller amounts"));
        }
        catch (OperationCanceledException)
        {
            Console.Error.WriteLine("Interrupted; nothing was printed.");
            return Exit.Interrupted;
        }
    }
}
