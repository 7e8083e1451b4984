using System.CommandLine;

namespace Litterfall.App.Tanks;

/// <summary>The commands of running tanks.</summary>
internal static class TankCommands
{
    public static IEnumerable<Command> All() =>
        [ImportCommand.Create(), CorrectCommand.Create(), DiagnoseCommand.Create()];
}
