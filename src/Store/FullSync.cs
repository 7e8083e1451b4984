using System.Data.Common;
using Microsoft.EntityFrameworkCore.Diagnostics;

namespace Litterfall.Store;

/// <summary>Each change is on the disk before it is told as saved, so that a power cut takes none.</summary>
internal sealed class FullSync : DbConnectionInterceptor
{
    private const string Pragma = "PRAGMA synchronous=FULL";

    public override void ConnectionOpened(DbConnection connection, ConnectionEndEventData eventData)
    {
        using var command = connection.CreateCommand();
        command.CommandText = Pragma;
        command.ExecuteNonQuery();
    }

    public override async Task ConnectionOpenedAsync(
        DbConnection connection,
        ConnectionEndEventData eventData,
        CancellationToken cancellationToken = default
    )
    {
        await using var command = connection.CreateCommand();
        command.CommandText = Pragma;
        await command.ExecuteNonQueryAsync(cancellationToken);
    }
}
