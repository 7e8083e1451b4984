using System.CommandLine;
using System.CommandLine.Parsing;
using Litterfall.App.Commands;

namespace Litterfall.App;

/// <summary>The command line.</summary>
public static class Program
{
    /// <summary>
    /// Runs one command; exit codes 0 done, 1 a stop, 2 unusable input, 3 numbers would not come out.
    /// </summary>
    public static int Main(string[] args)
    {
        Console.OutputEncoding = new System.Text.UTF8Encoding(false);
        var root = new RootCommand(
            "The engineering desk of a maker of planted bioactive vivariums: true quantities from a "
                + "design file,\n"
                + "and every number can say where it comes from."
        )
        {
            CheckCommand.Create(),
            WhyCommand.Create(),
            NewCommand.Create(),
            LibraryCommand.Create(),
            SchemaCommand.Create(),
            VerifyCommand.Create(),
        };
        try
        {
            var parsed = root.Parse(args);
            return parsed.Errors.Count > 0 ? WrongCommandLine(parsed, args) : parsed.Invoke();
        }
        catch (IOException e)
        {
            return Exit.Unusable(
                args.Contains("--json"),
                new Litterfall.Domain.Designs.TextFault(
                    "",
                    1,
                    1,
                    e.Message,
                    "a place that can be read and written"
                )
            );
        }
        catch (UnauthorizedAccessException e)
        {
            return Exit.Unusable(
                args.Contains("--json"),
                new Litterfall.Domain.Designs.TextFault(
                    "",
                    1,
                    1,
                    e.Message,
                    "a place that can be read and written"
                )
            );
        }
    }

    private static int WrongCommandLine(ParseResult parsed, string[] args)
    {
        var faults = parsed
            .Errors.Select(e => new Litterfall.Domain.Designs.TextFault(
                "command line",
                1,
                1,
                e.Message.TrimEnd('.'),
                $"see `litterfall {Name(parsed)}--help`"
            ))
            .DistinctBy(f => f.Message);
        return Exit.Unusable(args.Contains("--json"), [.. faults]);
    }

    private static string Name(ParseResult parsed) =>
        parsed.CommandResult.Command is RootCommand ? "" : parsed.CommandResult.Command.Name + " ";
}
