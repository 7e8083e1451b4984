using System.Net;
using Litterfall.Web;
using Microsoft.AspNetCore.Http;

namespace Litterfall.UnitTests.Web;

/// <summary>What one address may hold open, and by which names a bench answers.</summary>
public sealed class BenchDoorTests
{
    private static DefaultHttpContext From(string address, string host)
    {
        var context = new DefaultHttpContext();
        context.Connection.RemoteIpAddress = IPAddress.Parse(address);
        context.Request.Method = "GET";
        context.Request.Scheme = "http";
        context.Request.Path = "/_blazor";
        context.Request.Host = new HostString(host);
        context.Response.Body = new MemoryStream();
        return context;
    }

    /// <summary>Addresses of RFC 5737: nobody's.</summary>
    [Fact]
    public async Task One_address_holds_so_many_pages_and_another_is_not_touched_by_it()
    {
        var door = new BenchDoor(isOpen: true);
        var end = new TaskCompletionSource();
        var held = Enumerable
            .Range(0, BenchDoor.MostFromOne)
            .Select(_ => door.PassAsync(From("192.0.2.7", "192.0.2.1:5080"), _ => end.Task))
            .ToList();
        var over = From("192.0.2.7", "192.0.2.1:5080");
        await door.PassAsync(over, _ => end.Task);
        Assert.Equal(StatusCodes.Status429TooManyRequests, over.Response.StatusCode);
        var other = From("192.0.2.8", "192.0.2.1:5080");
        held.Add(door.PassAsync(other, _ => end.Task));
        end.SetResult();
        await Task.WhenAll(held);
        var again = From("192.0.2.7", "192.0.2.1:5080");
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
        var context = From("127.0.0.1", host);
        await new BenchDoor(isOpen).PassAsync(context, _ => Task.CompletedTask);
        Assert.Equal(code, context.Response.StatusCode);
    }
}
