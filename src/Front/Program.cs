using System.Runtime.Versioning;
using Litterfall.App;
using Litterfall.App.Commands;
using Litterfall.Domain.Faults;

[assembly: SupportedOSPlatform("linux")]

namespace Litterfall.Front;

/// <summary>
/// The program in front: answers what it can at once, and hands all else to the whole program.
/// </summary>
public static class Program
{
    /// <summary>Runs one command.</summary>
    public static int Main(string[] args)
    {
        var commands = DeskCommands.All().ToList();
        if (args is not [var word, ..] || commands.TrueForAll(c => c.Name != word))
        {
            return WholeProgram.Run(args);
        }

        WholeProgram.LendLibraries();
        return CommandLine.Run(args, commands, Fault);
    }

    private static TextFault? Fault(Exception e) =>
        e is DllNotFoundException
            ? new TextFault(
                "",
                1,
                1,
                e.Message.TrimEnd('.'),
                "a program that is whole, and room to unpack it"
            )
            : null;
}
