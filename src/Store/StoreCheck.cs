using System.Collections.Immutable;
using System.Globalization;
using System.Text;
using System.Text.Json;
using Microsoft.Data.Sqlite;

namespace Litterfall.Store;

/// <summary>A version that a damaged file still gives whole.</summary>
/// <param name="Design">Number of the design.</param>
/// <param name="Number">Number of the version.</param>
/// <param name="Text">The design file.</param>
public sealed record SoundVersion(Guid Design, int Number, string Text);

/// <summary>
/// Whether a file is a whole bench: pages, tables, kinds of values, every version's fingerprint, and, in
/// copies, the fingerprint of all. What passes here opens, lists, exports and takes changes.
/// </summary>
public static class StoreCheck
{
    private const string Signature = "SQLite format 3\0";
    private const int HeadLength = 100;

    // Kind of each value as the bench writes it; numbers of days lie between the years 1 and 9999.
    private static readonly (string Table, string Wrong)[] Kinds =
    [
        (
            "Designs",
            "typeof(Id) <> 'text' OR typeof(Name) <> 'text' OR typeof(Head) <> 'integer' "
                + "OR typeof(Stamp) <> 'integer' OR IsAway NOT IN (0, 1) OR typeof(IsAway) <> 'integer' "
                + "OR typeof(Verdict) NOT IN ('text', 'null') OR Head NOT BETWEEN 1 AND 1000000000 "
                + "OR Stamp NOT BETWEEN 0 AND 2000000000 OR "
                + Day("CreatedTicks")
                + " OR "
                + Day("ChangedTicks")
        ),
        (
            "Versions",
            "typeof(DesignId) <> 'text' OR typeof(Number) <> 'integer' OR typeof(Parent) <> 'integer' "
                + "OR Number NOT BETWEEN 1 AND 1000000000 OR Parent NOT BETWEEN 0 AND 1000000000 "
                + "OR typeof(Text) <> 'text' OR typeof(Hash) <> 'text' OR typeof(Note) <> 'text' "
                + "OR typeof(Engine) <> 'text' OR typeof(Library) <> 'text' OR "
                + Day("Ticks")
        ),
        (
            "Entries",
            "typeof(Id) <> 'integer' OR Id NOT BETWEEN 1 AND 1000000000 OR typeof(Key) <> 'text' "
                + "OR typeof(Json) <> 'text' OR typeof(Note) <> 'text' OR "
                + Day("Ticks")
        ),
        (
            "Files",
            "typeof(Id) <> 'integer' OR Id NOT BETWEEN 1 AND 1000000000 OR typeof(Name) <> 'text' "
                + "OR typeof(Bytes) <> 'blob' OR "
                + Day("Ticks")
        ),
        ("Choices", "typeof(Key) <> 'text' OR typeof(Value) <> 'text'"),
        (
            "Orders",
            "typeof(DesignId) <> 'text' OR typeof(Status) <> 'text' OR typeof(Customer) <> 'text' "
                + "OR typeof(DueDay) NOT IN ('integer', 'null') "
                + "OR COALESCE(DueDay, 0) NOT BETWEEN 0 AND 3652058"
        ),
        (
            "Devices",
            "typeof(Id) <> 'text' OR typeof(Name) <> 'text' OR "
                + Day("PairedTicks")
                + " OR "
                + Day("SeenTicks")
        ),
        (
            "Records",
            "typeof(Id) <> 'integer' OR typeof(Kind) <> 'text' OR typeof(Key) <> 'text' "
                + "OR typeof(Version) <> 'integer' OR Version NOT BETWEEN 1 AND 1000000000 "
                + "OR typeof(Json) <> 'text' OR typeof(Who) <> 'text' OR typeof(Note) <> 'text' "
                + "OR (Json <> '' AND NOT json_valid(Json)) OR "
                + Day("Ticks")
        ),
        (
            "Lots",
            "typeof(Id) <> 'text' OR typeof(Good) <> 'text' OR typeof(Json) <> 'text' "
                + "OR NOT json_valid(Json) OR "
                + Day("Ticks")
        ),
        (
            "Movements",
            "typeof(Id) <> 'integer' OR typeof(Lot) <> 'text' OR typeof(Kind) <> 'text' "
                + "OR typeof(Amount) <> 'real' OR typeof(\"Into\") NOT IN ('text', 'null') "
                + "OR typeof(Place) NOT IN ('text', 'null') OR typeof(Day) <> 'integer' "
                + "OR Day NOT BETWEEN 0 AND 3652058 OR typeof(Who) <> 'text' OR typeof(Note) <> 'text' "
                + "OR typeof(Reverses) NOT IN ('integer', 'null') OR "
                + Day("Ticks")
        ),
        (
            "Issued",
            "typeof(Kind) <> 'text' OR typeof(Number) <> 'integer' OR Number NOT BETWEEN 1 AND 1000000000 "
                + "OR typeof(OrderNumber) <> 'integer' OR typeof(Json) <> 'text' OR NOT json_valid(Json) "
                + "OR typeof(Hash) <> 'text' OR "
                + Day("Ticks")
        ),
        (
            "Care",
            "typeof(Id) <> 'integer' OR typeof(\"Key\") <> 'text' OR typeof(Tank) <> 'text' "
                + "OR typeof(Kind) <> 'text' OR typeof(Json) <> 'text' OR NOT json_valid(Json) OR "
                + Day("AtTicks")
                + " OR "
                + Day("Ticks")
        ),
        (
            "LogFiles",
            "typeof(Id) <> 'integer' OR typeof(Name) <> 'text' OR typeof(Hash) <> 'text' "
                + "OR typeof(Json) <> 'text' OR NOT json_valid(Json) OR typeof(Bytes) <> 'blob' "
                + "OR typeof(Who) <> 'text' OR "
                + Day("Ticks")
        ),
        (
            "LogBlocks",
            "typeof(Id) <> 'integer' OR typeof(Place) <> 'text' OR typeof(Quantity) <> 'text' "
                + "OR typeof(Count) <> 'integer' OR Count NOT BETWEEN 1 AND 1000000 "
                + "OR typeof(Bytes) <> 'blob' OR "
                + Day("FromTicks")
                + " OR "
                + Day("ToTicks")
        ),
    ];

    /// <summary>
    /// What is wrong with a file as a copy of a bench, in one clause; null where it is whole.
    /// </summary>
    /// <param name="copy">The file; nothing is written to it, nor beside it.</param>
    public static string? Trouble(string copy)
    {
        if (!File.Exists(copy))
        {
            return "there is no such file";
        }

        if (!IsSqlite(copy))
        {
            return "this is no copy of a bench";
        }

        if (!IsWritable(copy))
        {
            return "the copy is damaged: its head";
        }

        try
        {
            using var looked = LookedAt.Of(copy);
            using var db = Open(looked);
            return Trouble(db);
        }
        catch (Exception e)
            when (e
                    is SqliteException
                        or FormatException
                        or InvalidCastException
                        or OverflowException
                        or IOException
                        or UnauthorizedAccessException
            )
        {
            return $"the copy cannot be read ({e.Message.TrimEnd('.')})";
        }
    }

    /// <summary>Every version that can be read whole, of a damaged file too.</summary>
    /// <param name="copy">The file; nothing is written to it, nor beside it.</param>
    public static ImmutableArray<SoundVersion> Sound(string copy)
    {
        var found = new Dictionary<(Guid, int), SoundVersion>();
        if (File.Exists(copy) && IsSqlite(copy))
        {
            using var looked = LookedAt.Of(copy);
            // From both ends: what lies before the damaged page, and what lies behind it.
            foreach (var order in new[] { "rowid", "rowid DESC" })
            {
                Walk(looked, order, found);
            }
        }

        return [.. found.Values.OrderBy(v => v.Design).ThenBy(v => v.Number)];
    }

    private static void Walk(LookedAt copy, string order, Dictionary<(Guid, int), SoundVersion> found)
    {
        try
        {
            using var db = Open(copy);
            using var command = db.CreateCommand();
            command.CommandText =
                $"SELECT DesignId, Number, Text, Hash FROM Versions NOT INDEXED ORDER BY {order}";
            using var rows = command.ExecuteReader();
            while (rows.Read())
            {
                if (
                    rows.GetValue(0) is string id
                    && Guid.TryParse(id, out var design)
                    && rows.GetValue(1) is long and > 0 and <= int.MaxValue and var number
                    && rows.GetValue(2) is string text
                    && rows.GetValue(3) is string hash
                    && Fingerprint.Of(text) == hash
                )
                {
                    found[(design, (int)number)] = new(design, (int)number, text);
                }
            }
        }
        catch (SqliteException)
        {
            // Here the damage begins; what was read before it counts.
        }
    }

    private static string? Trouble(SqliteConnection db)
    {
        if (StoreSchema.Scalar(db, "PRAGMA integrity_check(1)") as string is var pages && pages != "ok")
        {
            return "the copy is damaged";
        }

        const string tables = "SELECT COUNT(*) FROM sqlite_master WHERE name IN ('Designs', 'Versions')";
        if (StoreSchema.Scalar(db, tables) is not 2L)
        {
            return "this is no copy of a bench";
        }

        const string history =
            "SELECT COUNT(*) FROM pragma_table_info('__EFMigrationsHistory') "
            + "WHERE name IN ('MigrationId', 'ProductVersion')";
        if (StoreSchema.Scalar(db, history) is not (0L or 2L))
        {
            return "the copy is damaged: its history of changes is not as this program makes it";
        }

        if (StoreSchema.Newer(db) is { } newer)
        {
            return $"{newer.What}; it needs {newer.Needs}";
        }

        if (!StoreSchema.IsKnown(db))
        {
            return "the copy is damaged: its tables are not those of a bench";
        }

        return Rows(db) ?? Versions(db) ?? Issued(db) ?? Entries(db) ?? Sum(db);
    }

    /// <summary>Kinds of values, and what names what.</summary>
    private static string? Rows(SqliteConnection db)
    {
        foreach (var (table, wrong) in Kinds)
        {
            if (
                Has(db, $"sqlite_master WHERE name = '{table}'")
                && Has(db, $"{table} WHERE COALESCE({wrong}, 1)")
            )
            {
                return $"the copy is damaged: {table.ToLowerInvariant()} hold values of another kind";
            }
        }

        if (Has(db, "sqlite_sequence WHERE typeof(seq) <> 'integer' OR seq NOT BETWEEN 0 AND 1000000000"))
        {
            return "the copy is damaged: the numbers of entries";
        }

        if (Has(db, "pragma_foreign_key_check"))
        {
            return "the copy is damaged: versions of no design";
        }

        if (
            Has(
                db,
                "Designs d WHERE NOT EXISTS (SELECT 1 FROM Versions v WHERE v.DesignId = d.Id AND "
                    + "v.Number = d.Head)"
            )
        )
        {
            return "the copy is damaged: the version worked on is not there";
        }

        return Has(
            db,
            "Versions v WHERE v.Parent > 0 AND NOT EXISTS (SELECT 1 FROM Versions p WHERE "
                + "p.DesignId = v.DesignId AND p.Number = v.Parent)"
        )
            ? "the copy is damaged: the version before one is not there"
            : null;
    }

    private static string? Versions(SqliteConnection db)
    {
        using var command = db.CreateCommand();
        command.CommandText = "SELECT DesignId, Number, Text, Hash FROM Versions";
        using var rows = command.ExecuteReader();
        while (rows.Read())
        {
            var (id, text) = (rows.GetString(0), rows.GetString(2));
            // The bench looks a design up by exactly this writing of its number.
            if (!Guid.TryParseExact(id, "D", out _) || id.Any(char.IsAsciiLetterLower))
            {
                return "the copy is damaged: the number of a design";
            }

            if (Fingerprint.Of(text) != rows.GetString(3))
            {
                return string.Create(
                    CultureInfo.InvariantCulture,
                    $"the copy is damaged: version {rows.GetInt32(1)} of a design is not as it was written"
                );
            }
        }

        return null;
    }

    /// <summary>Quotes and invoices are as they were issued, and none is missing between.</summary>
    private static string? Issued(SqliteConnection db)
    {
        if (StoreSchema.Scalar(db, "SELECT COUNT(*) FROM sqlite_master WHERE name = 'Issued'") is 0L)
        {
            return null;
        }

        using var command = db.CreateCommand();
        command.CommandText = "SELECT Kind, Number, Json, Hash FROM Issued ORDER BY Kind, Number";
        using var rows = command.ExecuteReader();
        var (kind, last) = ("", 0);
        while (rows.Read())
        {
            (kind, last) = rows.GetString(0) == kind ? (kind, last) : (rows.GetString(0), 0);
            var number = rows.GetInt32(1);
            if (number != last + 1 || Fingerprint.Of(rows.GetString(2)) != rows.GetString(3))
            {
                return string.Create(
                    CultureInfo.InvariantCulture,
                    $"the copy is damaged: {kind.ToLowerInvariant()} {number} is not as it was issued"
                );
            }

            last = number;
        }

        return null;
    }

    private static string? Entries(SqliteConnection db)
    {
        using var command = db.CreateCommand();
        command.CommandText = "SELECT Json FROM Entries WHERE Json <> ''";
        using var rows = command.ExecuteReader();
        while (rows.Read())
        {
            try
            {
                using var _ = JsonDocument.Parse(rows.GetString(0));
            }
            catch (JsonException)
            {
                return "the copy is damaged: an own entry does not read";
            }
        }

        return null;
    }

    private static string? Sum(SqliteConnection db) =>
        StoreSchema.Scalar(db, $"SELECT Value FROM Choices WHERE Key = '{StoreSchema.Sum}'") is string sum
        && sum != StoreSum.Of(db)
            ? "the copy is damaged: it is not as it was written"
            : null;

    private static bool Has(SqliteConnection db, string from) =>
        StoreSchema.Scalar(db, $"SELECT EXISTS (SELECT 1 FROM {from})") is 1L;

    private static string Day(string column) =>
        $"typeof({column}) <> 'integer' OR {column} NOT BETWEEN 0 AND 3155378975999999999";

    private static bool IsSqlite(string copy)
    {
        using var file = new FileStream(copy, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
        var head = new byte[HeadLength];
        return file.ReadAtLeast(head, head.Length, false) == head.Length
            && Encoding.ASCII.GetString(head, 0, Signature.Length) == Signature;
    }

    /// <summary>
    /// The head of a file that may be written (https://www.sqlite.org/fileformat2.html, 1.3, from memory):
    /// both versions of the form 1 or 2, and no pages that move by themselves.
    /// </summary>
    private static bool IsWritable(string copy)
    {
        using var file = new FileStream(copy, FileMode.Open, FileAccess.Read, FileShare.ReadWrite);
        var head = new byte[HeadLength];
        file.ReadExactly(head);
        return head[18] is 1 or 2
            && head[19] is 1 or 2
            && head.AsSpan(52, 4).IndexOfAnyExcept((byte)0) < 0
            && head.AsSpan(64, 4).IndexOfAnyExcept((byte)0) < 0;
    }

    private static SqliteConnection Open(LookedAt copy)
    {
        var mode = copy.IsOurs ? SqliteOpenMode.ReadWrite : SqliteOpenMode.ReadOnly;
        var db = new SqliteConnection(StoreFile.Connection(copy.Path, mode));
        db.Open();
        using var command = db.CreateCommand();
        // The tables of a stranger run nothing, and every cell is looked at.
        command.CommandText = "PRAGMA trusted_schema = OFF; PRAGMA cell_size_check = ON";
        command.ExecuteNonQuery();
        return db;
    }
}
