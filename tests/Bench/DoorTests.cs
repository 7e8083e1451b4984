using System.Net;
using System.Net.Sockets;
using System.Text;

namespace Litterfall.Tests.Bench;

/// <summary>Who may come in, over plain HTTP as a stranger would send it.</summary>
public sealed class DoorTests(SharedBench shared)
{
    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    /// <summary>
    /// HTTP/1.1 asks for a host, RFC 9112, 3.2; a bench of this machine has its names only. Lines of the head
    /// stand apart by a bar here.
    /// </summary>
    [Theory]
    [InlineData("GET / HTTP/1.1|Host: evil.example", 400)]
    [InlineData("GET / HTTP/1.1|Host:", 400)]
    [InlineData("GET / HTTP/1.0", 400)]
    [InlineData("GET /export.zip HTTP/1.1|Host: evil.example", 400)]
    [InlineData("GET /export.zip HTTP/1.1|Host: own|Origin: http://evil.example", 403)]
    [InlineData("GET /export.zip HTTP/1.1|Host: own|Sec-Fetch-Site: cross-site", 403)]
    [InlineData("POST /_blazor/negotiate HTTP/1.1|Host: own|Origin: http://evil.example", 403)]
    [InlineData("GET /_blazor HTTP/1.1|Host: own|Origin: http://localhost.evil.example", 403)]
    [InlineData("GET / HTTP/1.1|Host: own", 200)]
    [InlineData("GET /design/x/file HTTP/1.1|Host: own", 404)]
    public async Task Only_names_and_pages_of_this_machine_come_in(string request, int code)
    {
        var answer = await AskAsync(request);
        Assert.Equal(code.ToString(System.Globalization.CultureInfo.InvariantCulture), answer.Split(' ')[1]);
        Assert.DoesNotContain("   at ", answer, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("/")]
    [InlineData("/nowhere")]
    [InlineData("/export.zip")]
    [InlineData("/_content/Litterfall.Web/bench.css")]
    public async Task Every_answer_says_what_a_browser_may_do_with_it(string path)
    {
        using var client = new HttpClient();
        using var answer = await client.GetAsync(new Uri(shared.Url + path), Stop);
        string Head(string name) => string.Join(' ', answer.Headers.GetValues(name));
        Assert.Contains("frame-ancestors 'none'", Head("Content-Security-Policy"), StringComparison.Ordinal);
        Assert.Equal("nosniff", Head("X-Content-Type-Options"));
        Assert.Equal("DENY", Head("X-Frame-Options"));
        Assert.False(answer.Headers.Contains("Server"));
    }

    /// <summary>Twenty sets of papers are asked for and dropped; soon nothing works on them.</summary>
    [Fact]
    public async Task What_nobody_waits_for_any_more_stops()
    {
        using var bench = await RunningBench.StartAsync(demo: true);
        var designs = new List<string>();
        for (var i = 0; i < 20; i++)
        {
            designs.Add(await bench.CopyAsync("LD-201 flat tenant"));
        }

        // What opening the bench and copying took is not counted.
        var before = bench.Worked;
        using var client = new HttpClient();
        using (var drop = new CancellationTokenSource(500))
        {
            await Task.WhenAll(
                designs.Select(async d =>
                {
                    try
                    {
                        await client.GetByteArrayAsync(new Uri($"{d}/papers.zip?slips=true"), drop.Token);
                    }
                    catch (OperationCanceledException)
                    {
                        // Dropped, as meant.
                    }
                })
            );
        }

        // Work is told by the processor time of the bench, which other work on the machine does not change.
        for (var i = 0; i < 60 && await bench.WorkAsync(TimeSpan.FromSeconds(1)) > 0.3; i++)
        {
            Assert.True(bench.Worked - before < 15, $"{bench.Worked - before} s of work");
        }

        Assert.True(bench.Worked - before < 15, $"{bench.Worked - before} s of work");
    }

    private async Task<string> AskAsync(string request)
    {
        using var client = new TcpClient();
        await client.ConnectAsync(IPAddress.Loopback, new Uri(shared.Url).Port, Stop);
        await using var stream = client.GetStream();
        var port = new Uri(shared.Url).Port;
        var sent =
            request
                .Replace("Host: own", $"Host: localhost:{port}", StringComparison.Ordinal)
                .Replace("|", "\r\n", StringComparison.Ordinal) + "\r\nConnection: close\r\n\r\n";
        await stream.WriteAsync(Encoding.ASCII.GetBytes(sent), Stop);
        using var reader = new StreamReader(stream);
        var first = await reader.ReadLineAsync(Stop);
        var rest = new char[4000];
        var count = await reader.ReadAsync(rest, Stop);
        return first + "\n" + new string(rest, 0, count);
    }
}
