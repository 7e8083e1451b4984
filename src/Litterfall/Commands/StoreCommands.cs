using System.CommandLine;
using Litterfall.App.Files;
using Litterfall.Domain.Faults;
using Litterfall.Store;
using Microsoft.Data.Sqlite;

namespace Litterfall.App.Commands;

/// <summary><c>litterfall backup</c>, <c>restore</c> and <c>export</c>.</summary>
internal static class StoreCommands
{
    public static Command Backup()
    {
        var (file, store) = (File("The copy to write."), Store());
        var command = new Command("backup", "Copies the whole bench into one file, running or not.")
        {
            file,
            store,
        };
        command.SetAction(parsed =>
        {
            var (copy, path) = (parsed.GetValue(file)!, parsed.GetValue(store) ?? StoreFile.Usual);
            if (!System.IO.File.Exists(path))
            {
                return NoBench(path);
            }

            StoreFile.Backup(path, copy);
            Console.Out.WriteLine($"Wrote {copy}. Bring it back with: litterfall restore {copy}");
            return Exit.Done;
        });
        return command;
    }

    public static Command Restore()
    {
        var (file, store) = (File("A copy written by backup."), Store());
        var command = new Command(
            "restore",
            "Puts a copy in the place of the bench; what was there is kept beside it."
        )
        {
            file,
            store,
        };
        command.SetAction(parsed =>
        {
            var (copy, path) = (parsed.GetValue(file)!, parsed.GetValue(store) ?? StoreFile.Usual);
            if (StoreFile.Trouble(copy) is { } trouble)
            {
                return Exit.Unusable(
                    false,
                    new TextFault(copy, 1, 1, trouble, "a file written by litterfall backup")
                );
            }

            try
            {
                var kept = StoreFile.Restore(path, copy, TimeProvider.System.GetUtcNow());
                Console.Out.WriteLine(
                    $"Restored {path}." + (kept is null ? "" : $" What was there is kept as {kept}.")
                );
                return Exit.Done;
            }
            catch (SqliteException e)
            {
                return Exit.Unusable(
                    false,
                    new TextFault(
                        path,
                        1,
                        1,
                        $"the bench is in use ({e.Message.TrimEnd('.')})",
                        "a bench that is not running"
                    )
                );
            }
        });
        return command;
    }

    public static Command Export()
    {
        var (file, store) = (File("The zip to write."), Store());
        var command = new Command(
            "export",
            "Everything in open formats: design files, versions, own entries."
        )
        {
            file,
            store,
        };
        command.SetAction(
            async (parsed, cancel) =>
            {
                var (zip, path) = (parsed.GetValue(file)!, parsed.GetValue(store) ?? StoreFile.Usual);
                if (!System.IO.File.Exists(path))
                {
                    return NoBench(path);
                }

                Shop.WriteWhole(zip, await StoreFile.ExportAsync(StoreFile.Contexts(path), cancel));
                Console.Out.WriteLine($"Wrote {zip}.");
                return Exit.Done;
            }
        );
        return command;
    }

    private static Argument<string> File(string means) => new("FILE") { Description = means };

    private static Option<string?> Store()
    {
        var store = new Option<string?>("--store")
        {
            Description = "File of the bench; in the user's data folder if left out.",
            HelpName = "FILE",
        };
        Arguments.RefuseOptionsAsValues(store);
        return store;
    }

    private static int NoBench(string path) =>
        Exit.Unusable(
            false,
            new TextFault(
                path,
                1,
                1,
                "there is no bench yet",
                "a bench that was opened once: litterfall bench"
            )
        );
}
