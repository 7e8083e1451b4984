using System.Collections.Immutable;
using System.CommandLine;
using System.Net;
using System.Net.Sockets;
using System.Reflection;
using Litterfall.App.Files;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Faults;
using Litterfall.Store;
using Litterfall.Web;
using Litterfall.Web.Library;
using Litterfall.Web.Sharing;
using Litterfall.Web.Shop;
using Microsoft.AspNetCore.DataProtection;

namespace Litterfall.App.Commands;

/// <summary><c>litterfall bench</c>.</summary>
internal static class BenchCommand
{
    private const string UsualAddress = "127.0.0.1:5080";

    // Choice under which a bench keeps that it was opened to the network on its page.
    private const string OpenChoice = "devices.network";

    // Files come through the live connection, in pieces of their own limit; a request itself is small.
    private const long LargestBody = 2 * 1024 * 1024;

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

    // Not offered as a beginning: tanks of the demo's breeding room, and one that went wrong.
    private static readonly (string File, string About)[] Running =
    [
        ("breeding-tank", "twenty-four of them in a room"),
        ("t-17-old-show-tank", "an old tank that went wrong"),
    ];

    public static Command Create()
    {
        var demo = new Option<bool>("--demo") { Description = "Fill an empty bench with the demo workshop." };
        var listen = new Option<string>("--listen")
        {
            Description =
                "Address and port, such as 0.0.0.0:5080 for the whole network; other machines come in when "
                + "they are paired.",
            HelpName = "ADDRESS",
            DefaultValueFactory = _ => UsualAddress,
        };
        var store = new Option<string?>("--store")
        {
            Description = "File of the bench; in the user's data folder if left out.",
            HelpName = "FILE",
        };
        var open = new Option<bool>("--open") { Description = "Show the bench in the browser." };
        // Asked for before devices were paired; shortcuts that still say it go on working.
        var network = new Option<bool>("--open-network") { Hidden = true };
        var workshop = Arguments.Workshop();
        Arguments.RefuseOptionsAsValues(listen, store);
        var command = new Command("bench", "The bench in a browser: design by hand and eye.")
        {
            demo,
            listen,
            store,
            open,
            network,
            workshop,
        };
        command.SetAction(
            (parsed, cancel) =>
                RunAsync(
                    new(
                        parsed.GetValue(demo),
                        parsed.GetValue(open),
                        parsed.GetValue(workshop),
                        parsed.GetResult(listen)?.Implicit != false
                    ),
                    parsed.GetValue(listen)!,
                    parsed.GetValue(store) ?? StoreFile.Usual,
                    cancel
                )
        );
        return command;
    }

    /// <summary>How a bench is wanted.</summary>
    private sealed record BenchWish(bool Demo, bool Open, string? Workshop, bool IsUsual);

    private static async Task<int> RunAsync(
        BenchWish wish,
        string listen,
        string path,
        CancellationToken cancel
    )
    {
        if (
            !IPEndPoint.TryParse(listen, out var end)
            || end.Port == 0 && !listen.EndsWith(":0", StringComparison.Ordinal)
        )
        {
            return Wrong($"'{listen}' is no address with a port", $"--listen {UsualAddress}");
        }

        var shop = Files(wish.Demo, wish.Workshop);
        if (!shop.IsGood)
        {
            return Exit.Unusable(false, [.. shop.Faults]);
        }

        using var taken = StoreLock.Take(path);
        if (taken is null)
        {
            // Started twice by two clicks, the one that runs is shown.
            return wish.Open && await Browser.IsBenchAsync($"http://{listen}", cancel)
                ? await BusyAsync(true, listen, cancel)
                : Exit.Unusable(
                    false,
                    new TextFault(path, 1, 1, "another bench has this file open", "one bench at a time")
                );
        }

        await using var app = Application(
            end,
            new BenchOptions(Shop.Embedded(), Examples(Samples), Version())
            {
                Running = Examples(Running),
                Workshop = [.. shop.Value!],
                DeviceKey = [.. DeviceKey.Of(path)],
            },
            path
        );
        try
        {
            return await ServeAsync(app, wish, (listen, end, path), cancel);
        }
        catch (OperationCanceledException)
        {
            // Stopped while it started.
            return Exit.Done;
        }
    }

    private static async Task<int> ServeAsync(
        WebApplication app,
        BenchWish wish,
        (string Listen, IPEndPoint End, string Path) at,
        CancellationToken cancel
    )
    {
        var store = app.Services.GetRequiredService<BenchStore>();
        await store.OpenAsync(cancel);
        await app.Services.GetRequiredService<BenchLibrary>().LoadAsync(cancel);
        await app.Services.GetRequiredService<PairedDevices>().LoadAsync(cancel);
        if (wish.Demo)
        {
            await app.Services.GetRequiredService<DemoBench>().FillAsync(cancel);
        }

        try
        {
            await app.StartAsync(cancel);
        }
        catch (IOException)
        {
            return await BusyAsync(wish.Open, at.Listen, cancel);
        }
        catch (SocketException e)
        {
            return Wrong(
                e.SocketErrorCode == SocketError.AccessDenied
                    ? $"this user may not listen at {at.Listen}"
                    : $"{at.Listen} is no address of this machine",
                $"--listen {UsualAddress}, or a port above 1023"
            );
        }

        var here = Reach.Here(at.End, app.Urls);
        Console.Out.WriteLine($"The bench: {here}  (stop it with Ctrl-C; kept in {at.Path})");
        await OpenAsync(app, wish, at.End);

        if (wish.Open)
        {
            Browser.Open(here);
        }

        await app.WaitForShutdownAsync(cancel);
        return Exit.Done;
    }

    /// <summary>
    /// Listening beyond this machine, the bench is open; else a page can open it, and what was chosen there
    /// counts where the start does not say otherwise.
    /// </summary>
    private static async Task OpenAsync(WebApplication app, BenchWish wish, IPEndPoint end)
    {
        var place = app.Services.GetRequiredService<BenchPlace>();
        if (!IPAddress.IsLoopback(end.Address))
        {
            place.IsOpen = true;
            place.Urls = Reach.Others(end, app.Urls);
            TellOthers(app, place);
            return;
        }

        var store = app.Services.GetRequiredService<BenchStore>();
        var ends = app.Services.GetRequiredService<NetworkEnds>();
        var port = new Uri(app.Urls.First()).Port;
        place.Switch = async open =>
        {
            var others = open ? Reach.Own(port) : [];
            place.IsOpen = open && await ends.SetAsync(others) && !others.IsEmpty;
            if (!place.IsOpen)
            {
                await ends.SetAsync([]);
            }

            place.Urls = place.IsOpen ? [.. others.Select(Reach.Url)] : [];
            await store.ChooseAsync(OpenChoice, place.IsOpen ? "yes" : "no");
            return place.IsOpen == open;
        };
        if (wish.IsUsual && (await store.ChoicesAsync()).GetValueOrDefault(OpenChoice) == "yes")
        {
            await place.Switch(true);
        }
    }

    /// <summary>
    /// Other machines come in when they are paired; a machine without a screen has this line only.
    /// </summary>
    private static void TellOthers(WebApplication app, BenchPlace place)
    {
        var url = place.Urls.FirstOrDefault() ?? "http://ADDRESS-OF-THIS-MACHINE";
        var (code, _) = app.Services.GetRequiredService<PairedDevices>().NewCode();
        Console.Out.WriteLine(
            $"Other machines: paired devices only. Pair the first one within ten minutes at {url}"
                + $"{DeviceGate.PairPath}/{code} , others on the page Devices. Nothing is encrypted: use a "
                + "network that you trust."
        );
    }

    /// <summary>Started twice by two clicks, the bench that runs already is shown.</summary>
    private static async Task<int> BusyAsync(bool open, string listen, CancellationToken cancel)
    {
        if (open && await Browser.IsBenchAsync($"http://{listen}", cancel))
        {
            Console.Out.WriteLine($"The bench runs already: http://{listen}");
            Browser.Open($"http://{listen}");
            return Exit.Done;
        }

        return Wrong(
            $"something else answers at {listen} already",
            "another port, such as --listen 127.0.0.1:5081"
        );
    }

    private static int Wrong(string message, string expected) =>
        Exit.Unusable(false, new TextFault("command line", 1, 1, message, expected));

    private static WebApplication Application(IPEndPoint end, BenchOptions options, string path)
    {
        var builder = WebApplication.CreateSlimBuilder(
            // The user's folder is no part of the bench: settings files that lie there are not ours.
            new WebApplicationOptions
            {
                ApplicationName = "litterfall",
                ContentRootPath = AppContext.BaseDirectory,
            }
        );
        var network = new NetworkEnds();
        ((IConfigurationBuilder)builder.Configuration).Add(network);
        builder.Services.AddSingleton(network);
        builder.WebHost.ConfigureKestrel(server =>
        {
            server.Configure(builder.Configuration.GetSection(NetworkEnds.Section), reloadOnChange: true);
            server.AddServerHeader = false;
            server.Limits.MaxConcurrentUpgradedConnections = BenchDoor.MostFromHere;
            server.Limits.MaxRequestBodySize = LargestBody;
            foreach (var one in Reach.Ends(end))
            {
                server.Listen(one);
            }
        });
        builder.Logging.ClearProviders();
        builder.Logging.AddSimpleConsole().SetMinimumLevel(LogLevel.Warning);
        builder.Logging.AddFilter("Microsoft.AspNetCore.DataProtection", LogLevel.Error);
        builder.Logging.AddFilter("Microsoft.Extensions.Hosting", LogLevel.None);
        // Keys live as long as the bench: pages that outlive it load anew.
        builder.Services.AddDataProtection().UseEphemeralDataProtectionProvider();
        builder.Services.Configure<HostOptions>(host => host.ShutdownTimeout = TimeSpan.FromSeconds(2));
        BenchHost.Add(builder.Services, options, StoreFile.Contexts(path));
        var app = builder.Build();
        BenchHost.Map(app, new PageFiles());
        return app;
    }

    /// <summary>A workshop's folder, that of the demo, or none.</summary>
    private static Reading<IReadOnlyList<CatalogFile>> Files(bool demo, string? workshop)
    {
        if (workshop is { } folder)
        {
            var good = Shop.Catalog(folder);
            return good.IsGood ? Shop.WorkshopFiles(folder) : new(null, good.Faults);
        }

        var assembly = Assembly.GetExecutingAssembly();
        return new(
            [
                .. assembly
                    .GetManifestResourceNames()
                    .Where(n => demo && n.StartsWith("demo/own-", StringComparison.Ordinal))
                    .Select(n => new CatalogFile(n, Text(assembly, n))),
            ],
            []
        );
    }

    private static string Text(Assembly assembly, string name)
    {
        using var reader = new StreamReader(assembly.GetManifestResourceStream(name)!);
        return reader.ReadToEnd();
    }

    /// <summary>The samples built in.</summary>
    private static ImmutableArray<BenchExample> Examples((string File, string About)[] files) =>
        [
            .. files.Select(sample =>
            {
                var text = Text(Assembly.GetExecutingAssembly(), $"samples/{sample.File}.viv.yaml");
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
