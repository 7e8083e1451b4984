using System.Net;
using System.Net.Sockets;
using System.Security.Claims;
using System.Threading.RateLimiting;
using Litterfall.Store;
using Litterfall.Web.Sharing;
using Microsoft.AspNetCore.Http;

namespace Litterfall.Web;

/// <summary>
/// Lets this machine and paired devices in. Everybody else gets one page that says so, whatever was asked
/// for: pages, files, scripts and the live connection.
/// </summary>
public sealed class DeviceGate(PairedDevices devices) : IDisposable
{
    /// <summary>The cookie that holds a device's ticket.</summary>
    public const string Cookie = "litterfall-device";

    /// <summary>Codes that one address may try in a minute.</summary>
    public const int CodesAMinute = 5;

    /// <summary>Requests that a paired device may make at once; a tenth comes back each second.</summary>
    public const int RequestsOfDevice = 600;

    /// <summary>Requests that a stranger may make at once; a tenth of them comes back each second.</summary>
    public const int RequestsOfStranger = 60;

    /// <summary>Path under which codes are taken.</summary>
    public const string PairPath = "/pair";

    /// <summary>The only page for who is not paired.</summary>
    public const string Page = """
        <!DOCTYPE html><html lang="en"><head><meta charset="utf-8"><title>Not paired · Litterfall</title>
        <meta name="viewport" content="width=device-width, initial-scale=1">
        <meta name="color-scheme" content="light dark">
        <style>body{margin:0;min-height:100vh;display:grid;place-content:center;background:#fbf8f2}
        body{color:#22302b;font:1rem/1.5 system-ui,sans-serif}main{max-width:34rem;padding:1.5rem}
        h1{font-size:1.5rem;line-height:1.2;margin:0 0 .75rem}p{margin:0 0 .75rem}
        @media (prefers-color-scheme:dark){body{background:#17201d;color:#e8e4d8}}</style></head>
        <body><main><h1>This device isn't paired with this bench</h1>
        <p>The bench serves its own computer and paired devices only.</p>
        <p>To pair this one: at the bench, open Devices and scan the code shown there with this device. A
        code works once, within ten minutes; if this page followed a scan, ask for a new one.</p>
        </main></body></html>
        """;

    // Longest that browsers keep a cookie; renewed on every day of use.
    private static readonly TimeSpan Life = TimeSpan.FromDays(400);

    // What a proxy adds: the connection is then not that of the person it serves.
    private static readonly string[] Forwarded =
    [
        "Forwarded",
        "X-Forwarded-For",
        "X-Forwarded-Host",
        "X-Real-IP",
        "Via",
    ];

    private readonly PartitionedRateLimiter<string> codes = PartitionedRateLimiter.Create<string, string>(
        address =>
            RateLimitPartition.GetFixedWindowLimiter(address, _ =>
                new() { PermitLimit = CodesAMinute, Window = TimeSpan.FromMinutes(1) }
            ),
        StringComparer.Ordinal
    );

    private readonly PartitionedRateLimiter<(string Who, int Most)> requests = PartitionedRateLimiter.Create<
        (string Who, int Most),
        string
    >(one => RateLimitPartition.GetTokenBucketLimiter(one.Who, _ => new()
    {
        TokenLimit = one.Most,
        TokensPerPeriod = one.Most / 10,
        ReplenishmentPeriod = TimeSpan.FromSeconds(1),
    }), StringComparer.Ordinal);

    /// <summary>Stands before pages, files and the live connection.</summary>
    public async Task PassAsync(HttpContext context, RequestDelegate next)
    {
        if (IsHere(context))
        {
            await next(context);
            return;
        }

        var device = devices.Find(context.Request.Cookies[Cookie]);
        var who = device?.Id ?? Address(context);
        using var lease = requests.AttemptAcquire(
            (who, device is null ? RequestsOfStranger : RequestsOfDevice)
        );
        if (!lease.IsAcquired)
        {
            await TooManyAsync(context, TimeSpan.FromSeconds(1));
        }
        else if (
            context.Request.Path.StartsWithSegments(
                PairPath,
                StringComparison.OrdinalIgnoreCase,
                out var code
            )
        )
        {
            await PairAsync(context, code.Value!.Trim('/'));
        }
        else if (device is null || devices.Hold(device.Id, context.Abort) is not { } hold)
        {
            await RefuseAsync(context);
        }
        else
        {
            using (hold)
            {
                if (await devices.SeeAsync(device))
                {
                    Give(context, devices.Ticket(device.Id));
                }

                // Pages know by it which device they are on.
                context.User = new(new ClaimsIdentity([new(ClaimTypes.Name, device.Id)], Cookie));
                await next(context);
            }
        }
    }

    /// <inheritdoc/>
    public void Dispose()
    {
        codes.Dispose();
        requests.Dispose();
    }

    /// <summary>True for a connection from this machine, asked for by a name of its own.</summary>
    private static bool IsHere(HttpContext context) =>
        context.Connection.RemoteIpAddress is { } from
        && IPAddress.IsLoopback(from.IsIPv4MappedToIPv6 ? from.MapToIPv4() : from)
        && BenchDoor.IsOwn(context.Request.Host.Host)
        && !Forwarded.Any(context.Request.Headers.ContainsKey);

    private async Task PairAsync(HttpContext context, string code)
    {
        // What a browser fetches ahead, nobody has opened.
        var isOpened =
            HttpMethods.IsGet(context.Request.Method)
            && !context
                .Request.Headers["Sec-Purpose"]
                .ToString()
                .Contains("prefetch", StringComparison.Ordinal);
        if (!isOpened)
        {
            await RefuseAsync(context);
            return;
        }

        using var lease = codes.AttemptAcquire(Address(context));
        if (!lease.IsAcquired)
        {
            await TooManyAsync(context, TimeSpan.FromMinutes(1));
        }
        else if (
            await devices.PairAsync(code, Kind(context.Request.Headers.UserAgent.ToString())) is { } ticket
        )
        {
            Give(context, ticket);
            context.Response.Redirect("/");
        }
        else
        {
            await RefuseAsync(context);
        }
    }

    private static void Give(HttpContext context, string ticket) =>
        context.Response.Cookies.Append(
            Cookie,
            ticket,
            new()
            {
                HttpOnly = true,
                SameSite = SameSiteMode.Lax,
                Secure = context.Request.IsHttps,
                MaxAge = Life,
                Path = "/",
                IsEssential = true,
            }
        );

    private static Task RefuseAsync(HttpContext context) =>
        SayAsync(context, StatusCodes.Status403Forbidden, "text/html; charset=utf-8", Page);

    private static Task TooManyAsync(HttpContext context, TimeSpan wait)
    {
        context.Response.Headers.RetryAfter = FormattableString.Invariant($"{wait.TotalSeconds:0}");
        return SayAsync(
            context,
            StatusCodes.Status429TooManyRequests,
            "text/plain; charset=utf-8",
            "Too many requests from this device; wait a minute and try again.\n"
        );
    }

    private static Task SayAsync(HttpContext context, int code, string type, string words)
    {
        context.Response.StatusCode = code;
        context.Response.ContentType = type;
        return HttpMethods.IsHead(context.Request.Method)
            ? Task.CompletedTask
            : context.Response.WriteAsync(words);
    }

    /// <summary>What a device calls itself, in one word; its people may give it a better name.</summary>
    private static string Kind(string agent) =>
        agent.Contains("iPad", StringComparison.Ordinal)
        || agent.Contains("Android", StringComparison.Ordinal)
            && !agent.Contains("Mobile", StringComparison.Ordinal)
            ? "Tablet"
        : agent.Contains("Mobile", StringComparison.Ordinal) ? "Phone"
        : "Computer";

    /// <summary>One address, or the network of 64 bits that one machine may have to itself.</summary>
    private static string Address(HttpContext context)
    {
        var from = context.Connection.RemoteIpAddress ?? IPAddress.None;
        var plain = from.IsIPv4MappedToIPv6 ? from.MapToIPv4() : from;
        return plain.AddressFamily == AddressFamily.InterNetworkV6
            ? Convert.ToHexStringLower(plain.GetAddressBytes().AsSpan(0, 8))
            : plain.ToString();
    }
}
