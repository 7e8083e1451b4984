using System.Collections.Concurrent;
using System.Net;
using Litterfall.Web.Sharing;
using Microsoft.AspNetCore.Http;

namespace Litterfall.Web;

/// <summary>
/// Who may come in: pages, downloads and the live connection answer to the names of this machine only, and to
/// pages of their own; of other machines, to paired devices alone. Every answer says what a browser may do
/// with it.
/// </summary>
public sealed class BenchDoor(BenchPlace place, DeviceGate gate)
{
    /// <summary>Live connections that one other machine may hold.</summary>
    public const int MostFromOne = 64;

    /// <summary>Live connections that this machine may hold.</summary>
    public const int MostFromHere = 1024;

    private const string Live = "/_blazor";

    private static readonly string[] Own = ["localhost", "127.0.0.1", "[::1]", "::1"];

    // Scripts, type and pictures are ours; drawings carry their own colors as attributes of style.
    private const string Policy =
        "default-src 'self'; img-src 'self' data:; style-src 'self' 'unsafe-inline'; object-src 'none'; "
        + "base-uri 'self'; form-action 'self'; frame-ancestors 'none'";

    private readonly ConcurrentDictionary<IPAddress, int> live = new();

    /// <summary>Stands before everything else.</summary>
    public async Task PassAsync(HttpContext context, RequestDelegate next)
    {
        // At the last moment: an answer that fails half-way begins anew, and needs them too.
        context.Response.OnStarting(() =>
        {
            Head(context.Response);
            return Task.CompletedTask;
        });
        if (Refusal(context.Request) is { } refusal)
        {
            await SayAsync(context, refusal.Code, refusal.Words);
            return;
        }

        await gate.PassAsync(context, within => WithinAsync(within, next));
    }

    private Task WithinAsync(HttpContext context, RequestDelegate next) =>
        context.Request.Path.StartsWithSegments(Live, StringComparison.Ordinal) && IsHeld(context)
            ? LiveAsync(context, next)
            : next(context);

    /// <summary>Counts what an address holds open while it does.</summary>
    private async Task LiveAsync(HttpContext context, RequestDelegate next)
    {
        var from = context.Connection.RemoteIpAddress ?? IPAddress.None;
        var most = IPAddress.IsLoopback(from) ? MostFromHere : MostFromOne;
        try
        {
            if (live.AddOrUpdate(from, 1, (_, n) => n + 1) > most)
            {
                await SayAsync(
                    context,
                    StatusCodes.Status429TooManyRequests,
                    $"{most} pages are open from your address, the most this bench takes; close one."
                );
                return;
            }

            await next(context);
        }
        finally
        {
            if (live.AddOrUpdate(from, 0, (_, n) => n - 1) <= 0)
            {
                live.TryRemove(new(from, 0));
            }
        }
    }

    /// <summary>A web socket, or a request that waits for what comes.</summary>
    private static bool IsHeld(HttpContext context) =>
        context.WebSockets.IsWebSocketRequest || HttpMethods.IsGet(context.Request.Method);

    private (int Code, string Words)? Refusal(HttpRequest request)
    {
        if (!request.Host.HasValue || !IsName(request.Host.Host))
        {
            return (
                StatusCodes.Status400BadRequest,
                "The bench answers to the name or number of its own machine only; open the address it "
                    + "printed when it started."
            );
        }

        var origin = request.Headers.Origin.ToString();
        var isForeign =
            origin.Length > 0
            && !string.Equals(
                origin,
                $"{request.Scheme}://{request.Host}",
                StringComparison.OrdinalIgnoreCase
            );
        var site = request.Headers["Sec-Fetch-Site"].ToString();
        var mode = request.Headers["Sec-Fetch-Mode"].ToString();
        // A link on another site may lead to a page; nothing of ours is read or sent from there.
        var isAcross = site is "cross-site" or "same-site" && (mode != "navigate" || !IsPage(request));
        return isForeign || isAcross
            ? (StatusCodes.Status403Forbidden, "The bench takes nothing from the pages of others.")
            : null;
    }

    /// <summary>A name by which this machine speaks of itself.</summary>
    internal static bool IsOwn(string host) =>
        Own.Contains(host, StringComparer.OrdinalIgnoreCase)
        || string.Equals(host, Dns.GetHostName(), StringComparison.OrdinalIgnoreCase)
        || string.Equals(host, $"{Dns.GetHostName()}.local", StringComparison.OrdinalIgnoreCase);

    private static bool IsPage(HttpRequest request) =>
        HttpMethods.IsGet(request.Method)
        && request.Path.Value is { } path
        && !path.EndsWith(".zip", StringComparison.Ordinal)
        && !path.EndsWith("/file", StringComparison.Ordinal)
        && !path.Contains("/paper/", StringComparison.Ordinal);

    /// <summary>
    /// A name that another site could point at this machine is none of ours; a number cannot be pointed.
    /// </summary>
    private bool IsName(string host) =>
        Own.Contains(host, StringComparer.OrdinalIgnoreCase)
        || (place.IsOpen && (IPAddress.TryParse(host.Trim('[', ']'), out _) || IsOwn(host)));

    private static void Head(HttpResponse response)
    {
        var headers = response.Headers;
        headers.ContentSecurityPolicy = Policy;
        headers.XContentTypeOptions = "nosniff";
        headers.XFrameOptions = "DENY";
        headers["Referrer-Policy"] = "same-origin";
        headers["Cross-Origin-Opener-Policy"] = "same-origin";
        headers["Cross-Origin-Resource-Policy"] = "same-origin";
        headers["Permissions-Policy"] = "camera=(), geolocation=(), microphone=(), usb=()";
        if (headers.CacheControl.Count == 0)
        {
            // Designs of the shop stay in no cache between; what may be kept says so itself.
            headers.CacheControl = "no-store";
        }
    }

    private static Task SayAsync(HttpContext context, int code, string words)
    {
        context.Response.StatusCode = code;
        context.Response.ContentType = "text/plain; charset=utf-8";
        return context.Response.WriteAsync(words + "\n");
    }
}
