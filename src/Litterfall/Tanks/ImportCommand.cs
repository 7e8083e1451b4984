using System.CommandLine;
using System.Diagnostics;
using Litterfall.App.Commands;
using Litterfall.App.Files;
using Litterfall.Domain.Faults;
using Litterfall.Laboratory.Cases;
using Litterfall.Running.Loggers;
using Litterfall.Running.Loggers.Clocks;

namespace Litterfall.App.Tanks;

/// <summary><c>litterfall import FILE...</c>: reads logger files of any usual style.</summary>
internal static class ImportCommand
{
    private const int LargestFile = 256 * 1024 * 1024;
    private static readonly TimeSpan Moment = TimeSpan.FromSeconds(2);

    public static Command Create()
    {
        var files = new Argument<string[]>("FILE")
        {
            Description = "Logger files of any usual style.",
            Arity = ArgumentArity.OneOrMore,
        };
        var json = Arguments.Json();
        var zone = new Option<string?>("--zone")
        {
            Description = "Time zone of files that name none, such as Europe/Berlin.",
            HelpName = "ZONE",
        };
        zone.Validators.Add(result =>
        {
            if (result.Tokens.Count == 1 && ZoneChoice.Find(result.Tokens[0].Value) is null)
            {
                result.AddError(
                    $"there is no time zone '{result.Tokens[0].Value}'; "
                        + "expected a name such as Europe/Berlin or UTC+01:00"
                );
            }
        });
        var rows = new Option<string?>("--rows")
        {
            Description = "Also writes every kept reading to this file, one JSON line each.",
            HelpName = "FILE.jsonl",
        };
        var command = new Command("import", "What logger files hold: style, gaps, doubtful readings.")
        {
            files,
            json,
            zone,
            rows,
        };
        // Another thread, so that Ctrl-C is heard while it reads.
        command.SetAction(
            (parsed, cancel) =>
                Task.Run(
                    () =>
                        Run(
                            parsed.GetValue(files)!,
                            (parsed.GetValue(zone) ?? "", parsed.GetValue(rows)),
                            parsed.GetValue(json),
                            cancel
                        ),
                    CancellationToken.None
                )
        );
        return command;
    }

    private static int Run(
        string[] paths,
        (string Zone, string? Rows) wish,
        bool json,
        CancellationToken cancel
    )
    {
        var watch = Stopwatch.StartNew();
        try
        {
            var (read, faults) = Read(paths, wish.Zone, cancel);
            if (faults.Count > 0)
            {
                return Exit.Unusable(json, faults);
            }

            if (wish.Rows is { } rows)
            {
                ImportRows.Write(rows, read, cancel);
            }

            var milliseconds = watch.Elapsed.TotalMilliseconds;
            Console.Out.Write(json ? ImportText.Json(read, milliseconds) + "\n" : ImportText.Lines(read));
            return Exit.Done;
        }
        catch (OperationCanceledException)
        {
            Console.Error.WriteLine("Interrupted; nothing was written.");
            return Exit.Interrupted;
        }
    }

    private static (List<LoggerReading> Read, List<TextFault> Faults) Read(
        string[] paths,
        string zone,
        CancellationToken cancel
    )
    {
        var (read, faults) = (new List<LoggerReading>(), new List<TextFault>());
        var told = Stopwatch.StartNew();
        var known = new KnownReadings();
        for (var i = 0; i < paths.Length; i++)
        {
            cancel.ThrowIfCancellationRequested();
            if (told.Elapsed > Moment && !Console.IsErrorRedirected)
            {
                Console.Error.WriteLine($"reading file {i + 1} of {paths.Length} …");
                told.Restart();
            }

            var reading = Read(paths[i], zone);
            faults.AddRange(reading.Faults);
            if (reading.Value is { } value)
            {
                read.Add(known.Without(value));
            }
        }

        return (read, faults);
    }

    private static Reading<LoggerReading> Read(string path, string zone)
    {
        if (!File.Exists(path))
        {
            var what = Directory.Exists(path) ? "this is a folder" : "there is no such file";
            return new(null, [new TextFault(path, 1, 1, what, "a logger file such as a3.csv")]);
        }

        var bytes = BoundedFile.Bytes(path, LargestFile);
        if (bytes.Length > LargestFile)
        {
            return new(null, [new TextFault(path, 1, 1, "the file is too large", "at most 256 MB")]);
        }

        var reading = LoggerFile.Read(Path.GetFileName(path), bytes, new LoggerWish { Zone = zone });
        return reading.Value is null
            ? new(null, [.. reading.Faults.Select(f => f with { File = path })])
            : new(reading.Value with { Report = reading.Value.Report with { Name = path } }, []);
    }
}
