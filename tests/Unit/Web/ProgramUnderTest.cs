using System.Net;
using Litterfall.App.Files;
using Litterfall.Store;
using Litterfall.Web;
using Litterfall.Web.Library;
using Litterfall.Web.Sharing;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.DataProtection;
using Microsoft.AspNetCore.Hosting;
using Microsoft.Data.Sqlite;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.Logging;

namespace Litterfall.UnitTests.Web;

/// <summary>
/// The whole bench on a port of this machine, with one difference: a request may say from which address it
/// comes, so that it can be a stranger's.
/// </summary>
internal sealed class ProgramUnderTest : IAsyncDisposable
{
    /// <summary>Head line by which a request says where it comes from.</summary>
    public const string From = "Test-From";

    /// <summary>An address of RFC 5737: nobody's.</summary>
    public const string Stranger = "192.0.2.77";

    private readonly string folder = Directory.CreateTempSubdirectory("litterfall-program").FullName;

    private ProgramUnderTest()
    {
        var builder = WebApplication.CreateSlimBuilder();
        builder.WebHost.ConfigureKestrel(server => server.Listen(IPAddress.Loopback, 0));
        builder.Logging.ClearProviders();
        builder.Services.AddDataProtection().UseEphemeralDataProtectionProvider();
        BenchHost.Add(
            builder.Services,
            new BenchOptions(Shop.Embedded(), [], "1.0"),
            StoreFile.Contexts(Path.Combine(folder, "bench.db"))
        );
        App = builder.Build();
        App.Use(
            (context, next) =>
            {
                if (context.Request.Headers.TryGetValue(From, out var from))
                {
                    context.Connection.RemoteIpAddress = IPAddress.Parse(from.ToString());
                }

                return next(context);
            }
        );
        App.Services.GetRequiredService<BenchPlace>().IsOpen = true;
        BenchHost.Map(App, new PageFiles());
    }

    /// <summary>The application.</summary>
    public WebApplication App { get; }

    /// <summary>Its port.</summary>
    public int Port => new Uri(App.Urls.First()).Port;

    /// <summary>Its store.</summary>
    public BenchStore Store => App.Services.GetRequiredService<BenchStore>();

    /// <summary>Its devices.</summary>
    public PairedDevices Devices => App.Services.GetRequiredService<PairedDevices>();

    /// <summary>Starts it.</summary>
    public static async Task<ProgramUnderTest> StartAsync()
    {
        var program = new ProgramUnderTest();
        await program.Store.OpenAsync();
        await program.App.StartAsync();
        return program;
    }

    /// <summary>Asks for something; redirects are not followed.</summary>
    public async Task<(int Code, string Body, HttpResponseMessage Answer)> AskAsync(
        string method,
        string path,
        string? from = Stranger,
        params (string Name, string Value)[] heads
    )
    {
        using var client = new HttpClient(
            new SocketsHttpHandler { AllowAutoRedirect = false, UseCookies = false }
        );
        using var request = new HttpRequestMessage(
            new HttpMethod(method),
            new Uri($"http://127.0.0.1:{Port}{path}")
        );
        if (from is not null)
        {
            request.Headers.Add(From, from);
        }

        foreach (var (name, value) in heads)
        {
            request.Headers.TryAddWithoutValidation(name, value);
        }

        var answer = await client.SendAsync(request);
        return ((int)answer.StatusCode, await answer.Content.ReadAsStringAsync(), answer);
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync()
    {
        await App.StopAsync();
        await App.DisposeAsync();
        SqliteConnection.ClearAllPools();
        Directory.Delete(folder, recursive: true);
    }
}
