using System.Globalization;
using System.Net.WebSockets;
using System.Text.RegularExpressions;
using Litterfall.Web;
using Litterfall.Web.Sharing;
using Microsoft.AspNetCore.Routing;
using Microsoft.AspNetCore.Routing.Patterns;
using Microsoft.Extensions.DependencyInjection;

namespace Litterfall.UnitTests.Web;

/// <summary>
/// Phones and other computers, and nobody else. Routes are those of the program itself, so that a new one is
/// knocked at without a word here.
/// </summary>
public sealed partial class PairingTests
{
    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    /// <summary>A value that a route takes.</summary>
    private static string Filled(RoutePattern pattern, string design) =>
        "/"
        + string.Join(
            '/',
            pattern.PathSegments.Select(segment =>
                string.Concat(
                    segment.Parts.Select(part =>
                        part switch
                        {
                            RoutePatternLiteralPart literal => literal.Content,
                            RoutePatternParameterPart { Name: "id" or "Id" } => design,
                            RoutePatternSeparatorPart separator => separator.Content,
                            _ => "x",
                        }
                    )
                )
            )
        );

    [Fact]
    public async Task Without_a_pairing_every_route_and_file_gives_the_one_page()
    {
        await using var program = await ProgramUnderTest.StartAsync();
        var design = await program.Store.AddAsync("one", "litterfall: 1\nname: one\n", "begun", Stop);
        var routes = program
            .App.Services.GetServices<EndpointDataSource>()
            .SelectMany(source => source.Endpoints)
            .OfType<RouteEndpoint>()
            .ToList();
        List<(string Method, string Path)> paths = routes
            .SelectMany(r =>
                (r.Metadata.GetMetadata<HttpMethodMetadata>()?.HttpMethods ?? ["GET", "POST"]).Select(
                    method => (method, Filled(r.RoutePattern, $"{design.Id}"))
                )
            )
            .Concat(
                typeof(Litterfall.App.Files.PageFiles)
                    .Assembly.GetManifestResourceNames()
                    .Where(name => name.StartsWith("page/", StringComparison.Ordinal))
                    .Select(name => ("GET", name["page".Length..]))
            )
            .Concat([("GET", "/nowhere"), ("DELETE", "/"), ("GET", "/pair"), ("GET", "/pair/WRONG")])
            .Distinct()
            .ToList();
        Assert.Contains(("GET", "/export.zip"), paths);
        Assert.Contains(("GET", "/"), paths);
        Assert.Contains(("POST", "/_blazor/negotiate"), paths);
        Assert.Contains(("GET", $"/design/{design.Id}/papers.zip"), paths);
        Assert.Contains(("GET", "/_content/Litterfall.Web/bench.js"), paths);
        var open = new List<string>();
        for (var i = 0; i < paths.Count; i++)
        {
            // Each from an address of its own (RFC 2544): none is stopped for knocking too often.
            var from = string.Create(CultureInfo.InvariantCulture, $"198.18.{i / 250}.{1 + (i % 250)}");
            var (code, body, answer) = await program.AskAsync(paths[i].Method, paths[i].Path, from);
            using (answer)
            {
                if (code != 403 || body != DeviceGate.Page || answer.Headers.Contains("Set-Cookie"))
                {
                    open.Add($"{paths[i].Method} {paths[i].Path}: {code}");
                }

                Assert.Equal("DENY", answer.Headers.GetValues("X-Frame-Options").Single());
                Assert.Equal("no-store", answer.Headers.CacheControl?.ToString());
            }
        }

        Assert.Empty(open);
    }

    /// <summary>The live connection itself, as a web socket.</summary>
    [Fact]
    public async Task A_device_that_is_turned_away_loses_what_it_has_open()
    {
        await using var program = await ProgramUnderTest.StartAsync();
        var cookie = await PairAsync(program);
        using (var stranger = new ClientWebSocket())
        {
            await Assert.ThrowsAsync<WebSocketException>(() => ConnectAsync(program, stranger, null));
        }

        using var live = new ClientWebSocket();
        await ConnectAsync(program, live, cookie);
        Assert.Equal(WebSocketState.Open, live.State);
        Assert.Equal(200, (await program.AskAsync("GET", "/", heads: ("Cookie", cookie))).Code);
        await program.Devices.RemoveAsync(program.Devices.All.Single().Id);
        await Assert.ThrowsAnyAsync<WebSocketException>(async () =>
        {
            while (true)
            {
                await live.ReceiveAsync(new ArraySegment<byte>(new byte[100]), Stop);
            }
        });
        Assert.Equal(403, (await program.AskAsync("GET", "/", heads: ("Cookie", cookie))).Code);
        using var again = new ClientWebSocket();
        await Assert.ThrowsAsync<WebSocketException>(() => ConnectAsync(program, again, cookie));
    }

    [Fact]
    public async Task A_code_works_once_and_its_cookie_lives_long()
    {
        await using var program = await ProgramUnderTest.StartAsync();
        var code = program.Devices.NewCode().Code;
        // 128 bits or more: 32 letters are five bits each.
        Assert.Matches("^[A-Z2-9]{26,}$", code);
        Assert.Equal(
            403,
            (await program.AskAsync("GET", $"/pair/{code}", heads: ("Sec-Purpose", "prefetch"))).Code
        );
        Assert.Equal(403, (await program.AskAsync("HEAD", $"/pair/{code}")).Code);
        // Cameras and people change capitals.
        var (first, _, answer) = await program.AskAsync("GET", $"/PAIR/{code.ToLowerInvariant()}");
        Assert.Equal(302, first);
        var cookie = answer.Headers.GetValues("Set-Cookie").Single();
        Assert.Contains("httponly", cookie, StringComparison.OrdinalIgnoreCase);
        Assert.Contains("samesite=lax", cookie, StringComparison.OrdinalIgnoreCase);
        var age = int.Parse(MaxAge().Match(cookie).Groups["age"].Value, CultureInfo.InvariantCulture);
        Assert.True(age > 300 * 24 * 3600, cookie);
        Assert.Equal(403, (await program.AskAsync("GET", $"/pair/{code}")).Code);
        var mine = cookie.Split(';')[0];
        Assert.Equal(200, (await program.AskAsync("GET", "/units", heads: ("Cookie", mine))).Code);
        var last = mine[^1] == 'A' ? 'B' : 'A';
        var forged = mine[..^2] + last + mine[^1];
        Assert.Equal(403, (await program.AskAsync("GET", "/units", heads: ("Cookie", forged))).Code);
    }

    [Fact]
    public async Task A_code_is_too_old_after_ten_minutes()
    {
        await using var program = await ProgramUnderTest.StartAsync();
        var clock = new HandClock();
        var devices = new PairedDevices(program.Store, [1, 2, 3], clock);
        var (code, until) = devices.NewCode();
        Assert.Equal(TimeSpan.FromMinutes(10), until - clock.GetUtcNow());
        clock.Now += TimeSpan.FromMinutes(10) - TimeSpan.FromSeconds(1);
        Assert.True(devices.IsOpen(code));
        clock.Now += TimeSpan.FromSeconds(1);
        Assert.Null(await devices.PairAsync(code, "Phone"));
    }

    [Fact]
    public async Task Codes_are_tried_a_few_times_a_minute_only()
    {
        await using var program = await ProgramUnderTest.StartAsync();
        for (var i = 0; i < DeviceGate.CodesAMinute; i++)
        {
            Assert.Equal(403, (await program.AskAsync("GET", $"/pair/WRONG{i}")).Code);
        }

        var code = program.Devices.NewCode().Code;
        var (refused, words, answer) = await program.AskAsync("GET", $"/pair/{code}");
        Assert.Equal(429, refused);
        Assert.Contains("wait a minute", words, StringComparison.Ordinal);
        Assert.Equal("60", answer.Headers.GetValues("Retry-After").Single());
        Assert.True(program.Devices.IsOpen(code));
        Assert.Equal(302, (await program.AskAsync("GET", $"/pair/{code}", "192.0.2.78")).Code);
    }

    [Fact]
    public async Task Who_knocks_too_often_waits()
    {
        await using var program = await ProgramUnderTest.StartAsync();
        var codes = new List<int>();
        for (var i = 0; i < 3 * DeviceGate.RequestsOfStranger; i++)
        {
            codes.Add((await program.AskAsync("GET", "/")).Code);
        }

        Assert.Contains(429, codes);
        Assert.Equal(200, (await program.AskAsync("GET", "/", from: null)).Code);
    }

    /// <summary>
    /// This machine is told by the connection and by the name it asks for; a proxy that speaks for others
    /// says so in its head lines (RFC 7239, and what was usual before it).
    /// </summary>
    [Theory]
    [InlineData("Host", "localhost", 200)]
    [InlineData("Host", "192.0.2.1", 403)]
    [InlineData("X-Forwarded-For", "203.0.113.9", 403)]
    [InlineData("Forwarded", "for=203.0.113.9", 403)]
    [InlineData("Via", "1.1 proxy", 403)]
    public async Task This_machine_needs_no_pairing_but_what_it_passes_on_does(
        string head,
        string value,
        int code
    )
    {
        await using var program = await ProgramUnderTest.StartAsync();
        var said = head == "Host" ? $"{value}:{program.Port}" : value;
        Assert.Equal(code, (await program.AskAsync("GET", "/units", from: null, (head, said))).Code);
    }

    [Fact]
    public async Task Devices_outlive_the_program_and_can_be_named()
    {
        await using var program = await ProgramUnderTest.StartAsync();
        await PairAsync(program);
        await PairAsync(program);
        Assert.Equal(["Computer", "Computer 2"], program.Devices.All.Select(d => d.Name).Order());
        var id = program.Devices.All[0].Id;
        await program.Devices.NameAsync(id, "  the greenhouse tablet ");
        await program.Devices.NameAsync(id, "   ");
        var later = new PairedDevices(program.Store, [7], TimeProvider.System);
        Assert.Null(later.Find(program.Devices.Ticket(id)));
        await later.LoadAsync(Stop);
        Assert.Equal("the greenhouse tablet", later.Find(later.Ticket(id))!.Name);
        // The secret lies elsewhere: who has the store alone cannot sign.
        Assert.Null(later.Find(program.Devices.Ticket(id)));
    }

    /// <summary>Pairs a device; its cookie.</summary>
    private static async Task<string> PairAsync(ProgramUnderTest program)
    {
        var code = program.Devices.NewCode().Code;
        var (_, _, answer) = await program.AskAsync("GET", $"/pair/{code}");
        return answer.Headers.GetValues("Set-Cookie").Single().Split(';')[0];
    }

    private static Task ConnectAsync(ProgramUnderTest program, ClientWebSocket socket, string? cookie)
    {
        socket.Options.SetRequestHeader(ProgramUnderTest.From, ProgramUnderTest.Stranger);
        if (cookie is not null)
        {
            socket.Options.SetRequestHeader("Cookie", cookie);
        }

        return socket.ConnectAsync(new Uri($"ws://127.0.0.1:{program.Port}/_blazor"), Stop);
    }

    [GeneratedRegex("max-age=(?<age>[0-9]+)", RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex MaxAge();

    private sealed class HandClock : TimeProvider
    {
        public DateTimeOffset Now { get; set; } = new(2026, 12, 1, 8, 0, 0, TimeSpan.Zero);

        public override DateTimeOffset GetUtcNow() => Now;
    }
}
