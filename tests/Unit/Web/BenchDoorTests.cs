using System.Net;
using Litterfall.Store;
using Litterfall.Web;
using Litterfall.Web.Sharing;
using Microsoft.AspNetCore.Http;
using Microsoft.Data.Sqlite;

namespace Litterfall.UnitTests.Web;

/// <summary>What one address may hold open, and by which names a bench answers.</summary>
public sealed class BenchDoorTests : IDisposable
{
    private readonly string folder = Directory.CreateTempSubdirectory("litterfall-door").FullName;

    /// <summary>A door, and the cookie of a device that was paired.</summary>
    private async Task<(BenchDoor Door, string Cookie)> DoorAsync(bool isOpen)
    {
        var store = new BenchStore(
            StoreFile.Contexts(Path.Combine(folder, "bench.db")),
            new("1.0", "abc"),
            TimeProvider.System
        );
        await store.OpenAsync(TestContext.Current.CancellationToken);
        var devices = new PairedDevices(store, [1, 2, 3], TimeProvider.System);
        var ticket = await devices.PairAsync(devices.NewCode().Code, "Phone");
        return (new(new() { IsOpen = isOpen }, new DeviceGate(devices)), $"{DeviceGate.Cookie}={ticket}");
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        SqliteConnection.ClearAllPools();
        Directory.Delete(folder, recursive: true);
    }

    private static DefaultHttpContext From(string address, string host, string cookie)
    {
        var context = new DefaultHttpContext();
        context.Connection.RemoteIpAddress = IPAddress.Parse(address);
        context.Request.Method = "GET";
        context.Request.Scheme = "http";
        context.Request.Path = "/_blazor";
        context.Request.Host = new HostString(host);
        context.Request.Headers.Cookie = cookie;
        context.Response.Body = new MemoryStream();
        return context;
    }

    /// <summary>Addresses of RFC 5737: nobody's.</summary>
    [Fact]
    public async Task One_address_holds_so_many_pages_and_another_is_not_touched_by_it()
    {
        var (door, cookie) = await DoorAsync(isOpen: true);
        var end = new TaskCompletionSource();
        var held = Enumerable
            .Range(0, BenchDoor.MostFromOne)
            .Select(_ => door.PassAsync(From("192.0.2.7", "192.0.2.1:5080", cookie), _ => end.Task))
            .ToList();
        var over = From("192.0.2.7", "192.0.2.1:5080", cookie);
        await door.PassAsync(over, _ => end.Task);
        Assert.Equal(StatusCodes.Status429TooManyRequests, over.Response.StatusCode);
        var other = From("192.0.2.8", "192.0.2.1:5080", cookie);
        held.Add(door.PassAsync(other, _ => end.Task));
        end.SetResult();
        await Task.WhenAll(held);
        var again = From("192.0.2.7", "192.0.2.1:5080", cookie);
        await door.PassAsync(again, _ => Task.CompletedTask);
        Assert.Equal(StatusCodes.Status200OK, again.Response.StatusCode);
    }

    [Theory]
    [InlineData(false, "localhost:5080", 200)]
    [InlineData(false, "[::1]:5080", 200)]
    [InlineData(false, "192.0.2.1:5080", 400)]
    [InlineData(false, "bench.example", 400)]
    [InlineData(true, "192.0.2.1:5080", 200)]
    [InlineData(true, "[2001:db8::1]:5080", 200)]
    [InlineData(true, "bench.example", 400)]
    [InlineData(true, "localhost.evil.example", 400)]
    public async Task It_answers_to_numbers_and_to_its_own_name(bool isOpen, string host, int code)
    {
        var (door, cookie) = await DoorAsync(isOpen);
        var context = From("127.0.0.1", host, cookie);
        await door.PassAsync(context, _ => Task.CompletedTask);
        Assert.Equal(code, context.Response.StatusCode);
    }
}
