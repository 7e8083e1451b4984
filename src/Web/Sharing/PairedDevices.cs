using System.Buffers.Text;
using System.Collections.Concurrent;
using System.Collections.Immutable;
using System.Security.Cryptography;
using System.Text;
using Litterfall.Store;

namespace Litterfall.Web.Sharing;

/// <summary>
/// Phones, tablets and other computers that may come in. One comes in by a code that is shown at the desk,
/// works once and for ten minutes; from then on by a ticket that only this bench can have signed.
/// </summary>
/// <param name="store">Where devices are kept.</param>
/// <param name="key">Secret by which tickets are signed.</param>
/// <param name="clock">Tells when a code is too old.</param>
public sealed class PairedDevices(BenchStore store, ImmutableArray<byte> key, TimeProvider clock)
{
    /// <summary>How long a code works.</summary>
    public static readonly TimeSpan CodeLife = TimeSpan.FromMinutes(10);

    /// <summary>Longest name of a device, characters.</summary>
    public const int LongestName = 100;

    // 32 letters are five bits each: 130 bits. Capitals and digits make a small QR code.
    private const string Letters = "ABCDEFGHJKLMNPQRSTUVWXYZ23456789";
    private const int CodeLength = 26;
    private const int MostCodes = 20;
    private const int IdLength = 32;
    private const string Purpose = "litterfall device 1 ";

    private readonly Lock gate = new();
    private readonly Dictionary<string, Code> codes = new(StringComparer.Ordinal);
    private readonly ConcurrentDictionary<string, PairedDevice> known = new(StringComparer.Ordinal);
    private readonly ConcurrentDictionary<object, Held> held = new();

    /// <summary>A device came in, was named, or was turned away.</summary>
    public event EventHandler? Changed;

    /// <summary>All devices, the last paired first.</summary>
    public IReadOnlyList<PairedDevice> All => [.. known.Values.OrderByDescending(d => d.Paired)];

    /// <summary>Reads the devices of the store; before that nobody is known.</summary>
    public async Task LoadAsync(CancellationToken cancel = default)
    {
        foreach (var device in await store.DevicesAsync(cancel))
        {
            known[device.Id] = device;
        }
    }

    /// <summary>A code for one device.</summary>
    /// <param name="by">Device that asked for it; null for this machine.</param>
    public (string Code, DateTimeOffset Until) NewCode(string? by = null)
    {
        var code = RandomNumberGenerator.GetString(Letters, CodeLength);
        var until = clock.GetUtcNow() + CodeLife;
        lock (gate)
        {
            Sweep();
            while (codes.Count >= MostCodes)
            {
                codes.Remove(codes.MinBy(c => c.Value.Until).Key);
            }

            codes[Print(code)] = new(until, by);
        }

        return (code, until);
    }

    /// <summary>True while a code waits for its device.</summary>
    /// <param name="code">The code.</param>
    public bool IsOpen(string code)
    {
        lock (gate)
        {
            Sweep();
            return codes.ContainsKey(Print(code));
        }
    }

    /// <summary>Takes a code back that nobody needs any more.</summary>
    /// <param name="code">The code.</param>
    public void Forget(string code)
    {
        lock (gate)
        {
            codes.Remove(Print(code));
        }
    }

    /// <summary>Uses a code up; the ticket of the new device, or null where the code does not work.</summary>
    /// <param name="code">As it came.</param>
    /// <param name="name">What the device seems to be.</param>
    public async Task<string?> PairAsync(string code, string name)
    {
        lock (gate)
        {
            Sweep();
            if (code.Length > CodeLength || !codes.Remove(Print(code.ToUpperInvariant())))
            {
                return null;
            }
        }

        var id = Convert.ToHexStringLower(RandomNumberGenerator.GetBytes(IdLength / 2));
        var called = Unused(name);
        await store.AddDeviceAsync(id, called);
        var now = clock.GetUtcNow().UtcDateTime;
        known[id] = new(id, called, now, now);
        Changed?.Invoke(this, EventArgs.Empty);
        return Ticket(id);
    }

    /// <summary>The device of a ticket; null where it is none of ours, or was turned away.</summary>
    /// <param name="ticket">As the browser sent it.</param>
    public PairedDevice? Find(string? ticket)
    {
        if (ticket is null || ticket.Length <= IdLength)
        {
            return null;
        }

        var id = ticket[..IdLength];
        return CryptographicOperations.FixedTimeEquals(
            Encoding.UTF8.GetBytes(ticket),
            Encoding.UTF8.GetBytes(Ticket(id))
        )
            ? known.GetValueOrDefault(id)
            : null;
    }

    /// <summary>The ticket of a device.</summary>
    /// <param name="id">Its number.</param>
    public string Ticket(string id) =>
        id
        + Base64Url.EncodeToString(HMACSHA256.HashData(key.AsSpan(), Encoding.UTF8.GetBytes(Purpose + id)));

    /// <summary>
    /// Something that a device has open, ended when it is turned away; null where it already was.
    /// </summary>
    /// <param name="id">Its number.</param>
    /// <param name="end">Ends it.</param>
    public IDisposable? Hold(string id, Action end)
    {
        var hold = new Held(held, id, end);
        if (known.ContainsKey(id))
        {
            return hold;
        }

        hold.Dispose();
        return null;
    }

    /// <summary>Remembers the day on which a device was here; false where that is known.</summary>
    /// <param name="device">The device.</param>
    public async Task<bool> SeeAsync(PairedDevice device)
    {
        var now = clock.GetUtcNow().UtcDateTime;
        if (device.Seen.Date == now.Date || !known.TryUpdate(device.Id, device with { Seen = now }, device))
        {
            return false;
        }

        try
        {
            await store.SeeDeviceAsync(device.Id);
        }
        catch (Exception e) when (StoreTrouble.Words(e) is not null)
        {
            // The day is nice to know; nobody is kept out for it.
        }

        return true;
    }

    /// <summary>Gives a device another name.</summary>
    public async Task NameAsync(string id, string name)
    {
        if (name.Trim() is not { Length: > 0 and <= LongestName } called || !known.ContainsKey(id))
        {
            return;
        }

        await store.NameDeviceAsync(id, called);
        if (known.TryGetValue(id, out var device))
        {
            known[id] = device with { Name = called };
        }

        Changed?.Invoke(this, EventArgs.Empty);
    }

    /// <summary>Turns a device away: at once, with what it has open and the codes it asked for.</summary>
    /// <param name="id">Its number.</param>
    public async Task RemoveAsync(string id)
    {
        await store.RemoveDeviceAsync(id);
        known.TryRemove(id, out _);
        lock (gate)
        {
            foreach (var code in codes.Where(c => c.Value.By == id).Select(c => c.Key).ToList())
            {
                codes.Remove(code);
            }
        }

        foreach (var one in held.Values.Where(h => h.Device == id))
        {
            one.End();
        }

        Changed?.Invoke(this, EventArgs.Empty);
    }

    private string Unused(string name)
    {
        var taken = known.Values.Select(d => d.Name).ToHashSet(StringComparer.OrdinalIgnoreCase);
        var called = name;
        for (var i = 2; taken.Contains(called); i++)
        {
            called = FormattableString.Invariant($"{name} {i}");
        }

        return called;
    }

    private void Sweep()
    {
        var now = clock.GetUtcNow();
        foreach (var old in codes.Where(c => c.Value.Until <= now).Select(c => c.Key).ToList())
        {
            codes.Remove(old);
        }
    }

    /// <summary>Codes are looked up by their fingerprint: how long that takes tells nothing.</summary>
    private static string Print(string code) =>
        Convert.ToHexStringLower(SHA256.HashData(Encoding.UTF8.GetBytes(code)));

    private sealed record Code(DateTimeOffset Until, string? By);

    private sealed class Held : IDisposable
    {
        private readonly ConcurrentDictionary<object, Held> all;

        public Held(ConcurrentDictionary<object, Held> all, string device, Action end)
        {
            (this.all, Device, End) = (all, device, end);
            all[this] = this;
        }

        public string Device { get; }

        public Action End { get; }

        public void Dispose() => all.TryRemove(this, out _);
    }
}
