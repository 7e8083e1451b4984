using Microsoft.EntityFrameworkCore;

namespace Litterfall.Store;

/// <summary>A device that may come in.</summary>
/// <param name="Id">Its number.</param>
/// <param name="Name">As its people call it.</param>
/// <param name="Paired">When it was paired, UTC.</param>
/// <param name="Seen">When it was last here, UTC.</param>
public sealed record PairedDevice(string Id, string Name, DateTime Paired, DateTime Seen);

/// <summary>Devices beside this machine.</summary>
public sealed partial class BenchStore
{
    /// <summary>All devices, the last paired first.</summary>
    public async Task<IReadOnlyList<PairedDevice>> DevicesAsync(CancellationToken cancel = default)
    {
        await using var db = await contexts.CreateDbContextAsync(cancel);
        var rows = await db
            .Devices.AsNoTracking()
            .OrderByDescending(d => d.PairedTicks)
            .ThenBy(d => d.Id)
            .ToListAsync(cancel);
        return [.. rows.Select(d => new PairedDevice(d.Id, d.Name, At(d.PairedTicks), At(d.SeenTicks)))];
    }

    /// <summary>Lets a device in.</summary>
    /// <param name="id">Its number.</param>
    /// <param name="name">As its people call it.</param>
    /// <param name="cancel">Cancels before it is written.</param>
    public async Task AddDeviceAsync(string id, string name, CancellationToken cancel = default)
    {
        await using var db = await contexts.CreateDbContextAsync(cancel);
        var now = clock.GetUtcNow().UtcTicks;
        db.Devices.Add(
            new DeviceRow
            {
                Id = id,
                Name = name,
                PairedTicks = now,
                SeenTicks = now,
            }
        );
        await db.SaveChangesAsync(cancel);
    }

    /// <summary>Gives a device another name.</summary>
    public async Task NameDeviceAsync(string id, string name, CancellationToken cancel = default)
    {
        await using var db = await contexts.CreateDbContextAsync(cancel);
        await db
            .Devices.Where(d => d.Id == id)
            .ExecuteUpdateAsync(s => s.SetProperty(d => d.Name, name), cancel);
    }

    /// <summary>Remembers that a device was here.</summary>
    public async Task SeeDeviceAsync(string id, CancellationToken cancel = default)
    {
        await using var db = await contexts.CreateDbContextAsync(cancel);
        var now = clock.GetUtcNow().UtcTicks;
        await db
            .Devices.Where(d => d.Id == id)
            .ExecuteUpdateAsync(s => s.SetProperty(d => d.SeenTicks, now), cancel);
    }

    /// <summary>Turns a device away for good.</summary>
    public async Task RemoveDeviceAsync(string id, CancellationToken cancel = default)
    {
        await using var db = await contexts.CreateDbContextAsync(cancel);
        await db.Devices.Where(d => d.Id == id).ExecuteDeleteAsync(cancel);
    }
}
