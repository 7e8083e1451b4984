using System.Collections.Immutable;
using System.CommandLine;
using System.Net;
using System.Reflection;
using Litterfall.Domain.Designs;
using Litterfall.Store;
using Litterfall.Web;

namespace Litterfall.App.Commands;

/// <summary><c>litterfall bench</c>.</summary>
internal static class BenchCommand
{
    private const string UsualAddress = "127.0.0.1:5080";

    private static readonly (string File, string About)[] Samples =
    [
        ("ld-201-flat", "a tenant, phantasmal frogs, a box by the wall"),
        ("ld-202-waiting-room", "a waiting room, typed in inches"),
        ("ld-203-museum-foyer", "a foyer, panes cut for it, outlet to a bucket"),
        ("ld-204-shop-kits", "eight small kits for a shop"),
        ("tall-raised-floor", "a tall box over open water"),
        ("arid-no-drainage", "sand and loam, no drainage layer"),
        ("ld-205-attic", "an attic too hot: it stops"),
    ];

    public static Command Create()
    {
        var demo = new Option<bool>("--demo") { Description = "Fill an empty bench with the demo workshop." };
        var listen = new Option<string>("--listen")
        {
            Description = "Address and port; only this machine can reach it unless told otherwise.",
            HelpName = "ADDRESS",
            DefaultValueFactory = _ => UsualAddress,
        };
        var store = new Option<string?>("--store")
        {
            Description = "File of the bench; in the user's data folder if left out.",
            HelpName = "FILE",
        };
        Arguments.RefuseOptionsAsValues(listen, store);
        var command = new Command("bench", "The bench in a browser: design by hand and eye.")
        {
            demo,
            listen,
            store,
        };
        command.SetAction(
            (parsed, cancel) =>
                RunAsync(
                    parsed.GetValue(demo),
                    parsed.GetValue(listen)!,
                    parsed.GetValue(store) ?? StoreFile.Usual,
                    cancel
                )
        );
        return command;
    }

    private static async Task<int> RunAsync(bool demo, string listen, string path, CancellationToken cancel)
    {
        if (
            !IPEndPoint.TryParse(listen, out var end)
            || end.Port == 0 && !listen.EndsWith(":0", StringComparison.Ordinal)
        )
        {
            return Exit.Unusable(
                false,
                new TextFault(
                    "command line",
                    1,
                    1,
                    $"'{listen}' is no address with a port",
                    $"--listen {UsualAddress}"
                )
            );
        }

        var contexts = StoreFile.Contexts(path);
        var builder = WebApplication.CreateSlimBuilder(
            new WebApplicationOptions { ApplicationName = "litterfall" }
        );
        builder.WebHost.UseStaticWebAssets();
        builder.WebHost.UseKestrelHttpsConfiguration();
        builder.WebHost.ConfigureKestrel(server => server.Listen(end));
        builder.Logging.ClearProviders();
        builder.Logging.AddSimpleConsole().SetMinimumLevel(LogLevel.Warning);
        builder.Services.Configure<HostOptions>(host => host.ShutdownTimeout = TimeSpan.FromSeconds(2));
        BenchHost.Add(builder.Services, new BenchOptions(Shop.Embedded(), Examples(), Version()), contexts);
        await using var app = builder.Build();
        BenchHost.Map(app);
        var store = app.Services.GetRequiredService<BenchStore>();
        await store.OpenAsync(cancel);
        await app.Services.GetRequiredService<BenchLibrary>().LoadAsync(cancel);
        if (demo && (await store.DesignsAsync(cancel)).Count == 0)
        {
            foreach (var example in Examples().Reverse())
            {
                await store.AddAsync(
                    DesignReader.Read(example.Name, example.Text).Value!.Design.Name,
                    example.Text,
                    "from the demo workshop",
                    cancel
                );
            }
        }

        await app.StartAsync(cancel);
        Console.Out.WriteLine($"The bench: {app.Urls.First()}  (stop it with Ctrl-C; kept in {path})");
        await app.WaitForShutdownAsync(cancel);
        return Exit.Done;
    }

    /// <summary>The samples built in.</summary>
    private static ImmutableArray<BenchExample> Examples() =>
        [
            .. Samples.Select(sample =>
            {
                using var stream = Assembly
                    .GetExecutingAssembly()
                    .GetManifestResourceStream($"samples/{sample.File}.viv.yaml")!;
                using var reader = new StreamReader(stream);
                var text = reader.ReadToEnd();
                return new BenchExample(Plain(text), sample.About, WithoutWorkshop(text));
            }),
        ];

    /// <summary>The demo has no folder beside it.</summary>
    private static string WithoutWorkshop(string text) =>
        DesignReader.Read("sample", text).Value is { Design.Workshop: not null } document
            ? DesignEdits.Remove(document, "workshop").Value!.Text
            : text;

    private static string Plain(string text) => DesignReader.Read("sample", text).Value!.Design.Name;

    private static string Version() =>
        Assembly
            .GetExecutingAssembly()
            .GetCustomAttribute<AssemblyInformationalVersionAttribute>()
            ?.InformationalVersion
        ?? "0";
}
