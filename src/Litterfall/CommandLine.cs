using System.CommandLine;
using System.CommandLine.Parsing;
using Litterfall.App.Files;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Faults;
using Litterfall.Domain.Figures;

namespace Litterfall.App;

/// <summary>The command line: its commands, and what is said when one cannot run.</summary>
internal static class CommandLine
{
    private static readonly InvocationConfiguration Plain = new() { EnableDefaultExceptionHandler = false };

    /// <summary>
    /// Runs one command; exit codes 0 done, 1 a stop, 2 unusable input, 3 numbers would not come out.
    /// </summary>
    /// <param name="args">Words of the command line.</param>
    /// <param name="commands">Commands of this program.</param>
    /// <param name="own">What an exception of its own libraries means to the user.</param>
    public static int Run(string[] args, IEnumerable<Command> commands, Func<Exception, TextFault?> own)
    {
        Console.OutputEncoding = new System.Text.UTF8Encoding(false);
        var root = new RootCommand(
            "The engineering desk of a maker of planted bioactive vivariums: true quantities from a "
                + "design file,\n"
                + "and every number can say where it comes from."
        );
        foreach (var command in commands)
        {
            root.Add(command);
        }

        try
        {
            var parsed = root.Parse(args);
            return parsed.Errors.Count > 0 ? WrongCommandLine(parsed, args) : parsed.Invoke(Plain);
        }
        catch (Exception e) when (Known(e, own) is not null)
        {
            var (code, fault) = Known(e, own)!.Value;
            var isJson = args.Contains("--json");
            Exit.Unusable(isJson, fault);
            return code;
        }
    }

    /// <summary>What an exception means to the user; null for one that nobody expects.</summary>
    private static (int Code, TextFault Fault)? Known(Exception e, Func<Exception, TextFault?> own)
    {
        if (own(e) is { } fault)
        {
            return (Exit.BadInput, fault);
        }

        var said = e.Message.TrimEnd('.');
        return e switch
        {
            IOException or UnauthorizedAccessException => (
                Exit.BadInput,
                new TextFault("", 1, 1, said, "a place that can be read and written")
            ),
            OperationCanceledException => (
                Exit.Interrupted,
                new TextFault("", 1, 1, "stopped before it was done", "the end of the run")
            ),
            NotFiniteException => (
                Exit.NoNumbers,
                new TextFault("", 1, 1, said, "sizes and amounts a box can have")
            ),
            // A failed assertion of ours: the input was let in and the numbers did not come out.
            InvalidOperationException or InvalidDataException or ArgumentException => (
                Exit.NoNumbers,
                new TextFault("", 1, 1, $"our mistake: {said}", "a report of this input to us")
            ),
            _ => null,
        };
    }

    private static int WrongCommandLine(ParseResult parsed, string[] args)
    {
        var help = $"see `litterfall {Name(parsed)}--help`";
        var faults = Unknown(parsed, args) is { } slip
            ? [slip]
            : parsed
                .Errors.Select(e =>
                    e.Message.TrimEnd('.').Split("; expected ", 2) is [var what, var expected]
                        ? new TextFault("command line", 1, 1, what, expected)
                        : new TextFault("command line", 1, 1, e.Message.TrimEnd('.'), help)
                )
                .DistinctBy(f => f.Message);
        return Exit.Unusable(args.Contains("--json"), [.. faults]);
    }

    /// <summary>
    /// A command or an option that is not there, with the one that was probably meant; else null.
    /// </summary>
    private static TextFault? Unknown(ParseResult parsed, string[] args)
    {
        var command = parsed.CommandResult.Command;
        if (command is RootCommand && args is [var first, ..] && !first.StartsWith('-'))
        {
            return Slip("command", first, command.Subcommands.Select(c => c.Name));
        }

        var options = command
            .Options.Concat(parsed.RootCommandResult.Command.Options)
            .SelectMany(o => o.Aliases.Append(o.Name))
            .ToList();
        var unknown = args.TakeWhile(a => a != "--")
            .Select(a => a.Split('=', ':')[0])
            .FirstOrDefault(a => a.StartsWith("--", StringComparison.Ordinal) && !options.Contains(a));
        return unknown is null
            ? null
            : Slip("option", unknown, options.Where(o => o.StartsWith("--", StringComparison.Ordinal)));
    }

    private static TextFault Slip(string kind, string typed, IEnumerable<string> known)
    {
        var all = known.Order(StringComparer.Ordinal).ToList();
        var near = NearWords.Of(typed, all).FirstOrDefault();
        return new TextFault(
            "command line",
            1,
            1,
            $"there is no {kind} '{typed}'" + (near is null ? "" : $"; did you mean {near}?"),
            near ?? "one of " + string.Join(", ", all)
        );
    }

    private static string Name(ParseResult parsed) =>
        parsed.CommandResult.Command is RootCommand ? "" : parsed.CommandResult.Command.Name + " ";
}
