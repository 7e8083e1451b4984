using Microsoft.Data.Sqlite;

namespace Litterfall.Store;

/// <summary>What keeps the file of the bench from being read or written, in plain words.</summary>
public static class StoreTrouble
{
    private const int Busy = 5;
    private const int Locked = 6;
    private const int ReadOnly = 8;
    private const int Disk = 10;
    private const int Corrupt = 11;
    private const int Full = 13;
    private const int CannotOpen = 14;
    private const int Constraint = 19;
    private const int NoDatabase = 26;
    private const int BusySnapshot = 517;

    /// <summary>
    /// One sentence without a full stop; null where the fault has nothing to do with the file.
    /// </summary>
    /// <param name="fault">The fault.</param>
    public static string? Words(Exception fault)
    {
        for (var one = fault; one is not null; one = one.InnerException)
        {
            var words = one switch
            {
                SqliteException sqlite => Words(sqlite),
                UnauthorizedAccessException => "the file of the bench may not be written",
                IOException => $"the disk does not take it ({one.Message.TrimEnd('.')})",
                StoreRefusedException => one.Message,
                _ => null,
            };
            if (words is not null)
            {
                return words;
            }
        }

        return null;
    }

    /// <summary>True where somebody else was quicker: what is there now is to be looked at again.</summary>
    internal static bool IsRace(Exception fault) =>
        fault is Microsoft.EntityFrameworkCore.DbUpdateConcurrencyException
        || (fault as SqliteException ?? fault.InnerException as SqliteException)
            is { SqliteErrorCode: Constraint }
                or { SqliteExtendedErrorCode: BusySnapshot };

    private static string Words(SqliteException fault) =>
        fault.SqliteErrorCode switch
        {
            Full => "the disk is full",
            Busy or Locked => "another program holds the file of the bench",
            ReadOnly => "the file of the bench may only be read",
            Disk => "the disk does not take it",
            CannotOpen => "the file of the bench cannot be opened",
            Corrupt or NoDatabase => "the file of the bench is damaged",
            _ => $"the file of the bench does not take it ({fault.Message.TrimEnd('.')})",
        };
}
