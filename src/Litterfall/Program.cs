using Litterfall.App.Commands;
using Litterfall.App.Shipping;
using Litterfall.App.Tanks;
using Litterfall.App.Trade;
using Litterfall.Domain.Faults;

namespace Litterfall.App;

/// <summary>The whole program; without a word it opens the bench.</summary>
public static class Program
{
    /// <summary>Runs one command.</summary>
    public static int Main(string[] args) =>
        CommandLine.Run(
            args.Length == 0 ? ["bench", "--open"] : args,
            [
                BenchCommand.Create(),
                StoreCommands.Backup(),
                StoreCommands.Restore(),
                StoreCommands.Export(),
                .. DeskCommands.All(),
                .. TradeCommands.All(),
                .. TankCommands.All(),
                .. ShippingCommands.All(),
            ],
            Fault
        );

    private static TextFault? Fault(Exception e)
    {
        var said = e.Message.TrimEnd('.');
        return e switch
        {
            Store.StoreRefusedException refused => new TextFault("the bench", 1, 1, said, refused.Expected),
            Microsoft.Data.Sqlite.SqliteException => new TextFault(
                "the bench",
                1,
                1,
                $"its file cannot be opened: {said}",
                "a file of the bench; `litterfall restore FILE` brings a copy back"
            ),
            _ => null,
        };
    }
}
