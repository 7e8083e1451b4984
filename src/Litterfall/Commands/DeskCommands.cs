using System.CommandLine;

namespace Litterfall.App.Commands;

/// <summary>The commands that need neither pages nor the bench's file.</summary>
internal static class DeskCommands
{
    public static IEnumerable<Command> All() =>
        [
            CheckCommand.Create(),
            ForecastCommand.Create(),
            PapersCommand.Create(),
            WhyCommand.Create(),
            NewCommand.Create(),
            LibraryCommand.Create(),
            SchemaCommand.Create(),
            VerifyCommand.Create(),
            LabCommand.Create(),
        ];
}
