using System.Collections.Immutable;
using System.CommandLine;
using Litterfall.App.Files;
using Litterfall.Domain.Faults;
using Litterfall.Store;
using Litterfall.Web.Library;
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
        var rescue = new Option<string?>("--rescue")
        {
            Description = "Of a damaged copy: write what is whole in it into this zip, and restore nothing.",
            HelpName = "ZIP",
        };
        Arguments.RefuseOptionsAsValues(rescue);
        var command = new Command(
            "restore",
            "Puts a copy in the place of the bench; what was there is kept beside it."
        )
        {
            file,
            store,
            rescue,
        };
        command.SetAction(parsed =>
        {
            var (copy, path) = (parsed.GetValue(file)!, parsed.GetValue(store) ?? StoreFile.Usual);
            return parsed.GetValue(rescue) is { } zip ? Rescue(copy, zip) : Restore(copy, path);
        });
        return command;
    }

    private static int Restore(string copy, string path)
    {
        try
        {
            var kept = StoreFile.Restore(path, copy, TimeProvider.System.GetUtcNow());
            Console.Out.WriteLine(
                $"Restored {path}." + (kept is null ? "" : $" What was there is kept as {kept}.")
            );
            return Exit.Done;
        }
        catch (StoreRefusedException e)
        {
            var isOfCopy = StoreFile.Trouble(copy) is not null;
            return Refused(isOfCopy ? copy : path, e.Message + (isOfCopy ? Left(copy) : ""), e.Expected);
        }
        catch (SqliteException e)
        {
            return Refused(
                path,
                $"the bench is in use ({e.Message.TrimEnd('.')})",
                "a bench that is not running"
            );
        }
    }

    /// <summary>What can be saved from a damaged copy.</summary>
    private static string Left(string copy)
    {
        var sound = StoreCheck.Sound(copy);
        return sound.IsEmpty
            ? ""
            : $"; {Count(sound)} in it can be read: litterfall restore {copy} --rescue designs.zip writes "
                + "them";
    }

    private static string Count(ImmutableArray<SoundVersion> sound) =>
        $"{sound.Length} versions of {sound.DistinctBy(v => v.Design).Count()} designs";

    private static int Rescue(string copy, string zip)
    {
        var sound = StoreCheck.Sound(copy);
        if (sound.IsEmpty)
        {
            return Refused(copy, "no version in it can be read", "a file of a bench, damaged or not");
        }

        Shop.WriteWhole(zip, BenchExport.Rescued(sound));
        Console.Out.WriteLine($"Wrote {zip}: {Count(sound)}, each as it was written.");
        return Exit.Done;
    }

    private static int Refused(string file, string what, string expected) =>
        Exit.Unusable(false, new TextFault(file, 1, 1, what, expected));

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

                StoreSchema.RefuseNewer(path);
                Shop.WriteWhole(zip, await BenchExport.WriteAsync(StoreFile.Contexts(path), cancel));
                Console.Out.WriteLine($"Wrote {zip}.");
                return Exit.Done;
            }
        );
        return command;
    }

    private static Argument<string> File(string means) => new("FILE") { Description = means };

    internal static Option<string?> Store()
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
        Refused(path, "there is no bench yet", "a bench that was opened once: litterfall bench");
}
