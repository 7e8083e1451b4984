using System.Security.Cryptography;
using System.Text;
using Microsoft.Data.Sqlite;

namespace Litterfall.Store;

/// <summary>Fingerprint of all that a file of the bench holds, whatever pages it lies on.</summary>
internal static class StoreSum
{
    private static readonly (string Table, string Order)[] Tables =
    [
        ("Designs", "Id"),
        ("Versions", "DesignId, Number"),
        ("Entries", "Id"),
        ("Files", "Id"),
        ("Choices", "Key"),
        ("Orders", "DesignId"),
        ("Devices", "Id"),
        ("Records", "Id"),
        ("Lots", "Id"),
        ("Movements", "Id"),
        ("Issued", "Kind, Number"),
        ("Care", "Id"),
        ("LogFiles", "Id"),
        ("LogBlocks", "Id"),
    ];

    /// <summary>SHA-256 over every value of every row, in hexadecimal.</summary>
    public static string Of(SqliteConnection db)
    {
        using var sum = IncrementalHash.CreateHash(HashAlgorithmName.SHA256);
        foreach (var (table, order) in Tables)
        {
            var columns = Columns(db, table);
            if (columns.Count == 0)
            {
                continue;
            }

            using var command = db.CreateCommand();
            command.CommandText =
                $"SELECT {string.Join(", ", columns.Select(c => $"typeof(\"{c}\"), CAST(\"{c}\" AS BLOB)"))} "
                + $"FROM {table}"
                + (table == "Choices" ? $" WHERE Key <> '{StoreSchema.Sum}'" : "")
                + $" ORDER BY {order}";
            using var rows = command.ExecuteReader();
            while (rows.Read())
            {
                for (var i = 0; i < rows.FieldCount; i += 2)
                {
                    var bytes = rows.IsDBNull(i + 1) ? [] : rows.GetFieldValue<byte[]>(i + 1);
                    sum.AppendData(Encoding.UTF8.GetBytes($"{table} {rows.GetString(i)} {bytes.Length}:"));
                    sum.AppendData(bytes);
                }
            }
        }

        return Convert.ToHexStringLower(sum.GetHashAndReset());
    }

    private static List<string> Columns(SqliteConnection db, string table)
    {
        using var command = db.CreateCommand();
        command.CommandText = $"SELECT name FROM pragma_table_info('{table}') ORDER BY cid";
        using var rows = command.ExecuteReader();
        var names = new List<string>();
        while (rows.Read())
        {
            names.Add(rows.GetString(0));
        }

        return names;
    }
}
