using System.Globalization;
using System.Text;
using Litterfall.Documents.Papers;
using Litterfall.Store;
using Litterfall.Web.Desk;
using Litterfall.Web.Library;
using Litterfall.Web.Sharing;
using Litterfall.Web.Shop;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Components.Server.Circuits;
using Microsoft.AspNetCore.Diagnostics;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;
using Microsoft.Extensions.FileProviders;

namespace Litterfall.Web;

/// <summary>Puts the bench into a web application.</summary>
public static class BenchHost
{
    /// <summary>
    /// Largest message of a page, bytes: four times what a field of a page lets be typed (see bench.js).
    /// </summary>
    private const long LargestMessage = 1024 * 1024;

    /// <summary>Pages with all they need.</summary>
    public static void Add(
        IServiceCollection services,
        BenchOptions options,
        IDbContextFactory<BenchContext> contexts
    )
    {
        services
            .AddRazorComponents()
            .AddInteractiveServerComponents()
            .AddHubOptions(hub => hub.MaximumReceiveMessageSize = LargestMessage);
        AddStore(services, options, contexts);
        services.AddHostedService<VerdictKeeper>();
        services.AddHostedService(all => all.GetRequiredService<Tanks.Loggers.LoggerSourcesWatch>());
    }

    /// <summary>What the pages need.</summary>
    public static void AddStore(
        IServiceCollection services,
        BenchOptions options,
        IDbContextFactory<BenchContext> contexts
    )
    {
        services.AddSingleton(options);
        services.AddSingleton(contexts);
        services.AddSingleton(TimeProvider.System);
        services.AddSingleton(
            new StoreMarks(
                options.Version,
                Fingerprint.Of(
                    string.Join(
                        '\n',
                        options.Catalog.Entries.Select(e => e.Key).Order(StringComparer.Ordinal)
                    )
                )[..12]
            )
        );
        services.AddSingleton<BenchStore>();
        services.AddSingleton<BenchLibrary>();
        services.AddSingleton<Shop.Stock.StockShelf>();
        services.AddSingleton<Shop.Batches.OrderNumbers>();
        services.AddSingleton<Shop.Batches.BatchDesk>();
        services.AddSingleton<Shop.Kits.KitDesk>();
        services.AddSingleton<Shop.Cutting.CuttingDesk>();
        services.AddSingleton(Shop.Cutting.CutSolver.Own);
        services.AddSingleton<Shop.Cutting.CuttingRuns>();
        services.AddSingleton<Shop.Cultures.CultureDesk>();
        services.AddSingleton<Shop.Nursery.NurseryDesk>();
        services.AddSingleton<Shop.Schedule.PlanDesk>();
        services.AddSingleton<Shop.Schedule.TaskSources>();
        services.AddSingleton<Shop.Schedule.TaskRounds>();
        AddTanks(services);
        services.AddSingleton<Shipping.DispatchDesk>();
        services.AddSingleton<DemoBench>();
        services.AddSingleton<SmallDrawings>();
        services.AddSingleton<UploadAllowance>();
        services.AddSingleton<Photos>();
        services.AddSingleton<PaperShelf>();
        services.AddSingleton<PaperSources>();
        services.AddSingleton<StillShelf>();
        services.AddSingleton(DeskRoom.OfMachine());
        services.AddSingleton(new BenchPlace());
        services.AddSingleton<PairedDevices>(all =>
            new(
                all.GetRequiredService<BenchStore>(),
                options.DeviceKey,
                all.GetRequiredService<TimeProvider>()
            )
        );
        services.AddSingleton<DeviceGate>();
        services.AddScoped<SavedPreferences>();
        services.AddScoped<Presence>();
        services.AddScoped<CircuitHandler>(all => all.GetRequiredService<Presence>());
    }

    private static void AddTanks(IServiceCollection services)
    {
        services.AddSingleton<Tanks.Faults.FaultDesk>();
        services.AddSingleton<Tanks.TankDesk>();
        Tanks.Loggers.ReadingRoutes.Add(services);
        services.AddSingleton<Tanks.TankForecasts>();
        services.AddSingleton<Tanks.Forecasts.TankCases>();
        services.AddSingleton<Tanks.Forecasts.CorrectionRuns>();
        services.AddSingleton<Tanks.Rounds.RoundFindings>();
        services.AddSingleton<Tanks.Rounds.RoomReadings>();
        services.AddSingleton<Tanks.Rounds.RoundDesk>();
        services.AddSingleton<Tanks.Register.RegisterDesk>();
        services.AddSingleton<Tanks.Visits.VisitDesk>();
    }

    /// <summary>The door, then pages and files.</summary>
    /// <param name="app">The application.</param>
    /// <param name="files">Style sheets, scripts and type.</param>
    public static void Map(WebApplication app, IFileProvider files)
    {
        var door = new BenchDoor(
            app.Services.GetRequiredService<BenchPlace>(),
            app.Services.GetRequiredService<DeviceGate>()
        );
        app.Use(next => context => door.PassAsync(context, next));
        app.UseStaticFiles(new StaticFileOptions { FileProvider = files, OnPrepareResponse = Prepare });
        app.UseExceptionHandler(failed => failed.Run(FailedAsync));
        app.UseStatusCodePages(NothingAsync);
        app.UseAntiforgery();
        app.MapGet("/design/{id:guid}/file", FileAsync);
        app.MapGet("/design/{id:guid}/small.svg", SmallAsync);
        app.MapGet("/photo/{name}", PhotoAsync);
        PaperRoutes.Map(app);
        Shop.OrderRoutes.Map(app);
        app.MapGet("/export.zip", ExportAsync);
        ViewRoutes.Map(app);
        Shop.StockRoutes.Map(app);
        Shop.CultureRoutes.Map(app);
        BuyingRoutes.Map(app);
        CuttingRoutes.Map(app);
        Shop.ScheduleRoutes.Map(app);
        Tanks.Log.LogRoutes.Map(app);
        Tanks.Loggers.ReadingRoutes.Map(app);
        Tanks.Charts.ChartRoutes.Map(app);
        Tanks.Papers.TankRoutes.Map(app);
        Shipping.Papers.DispatchRoutes.Map(app);
        app.MapRazorComponents<App>().AddInteractiveServerRenderMode();
    }

    /// <summary>A newer program may answer at the same address tomorrow.</summary>
    private static void Prepare(Microsoft.AspNetCore.StaticFiles.StaticFileResponseContext sent)
    {
        sent.Context.Response.Headers.CacheControl = "no-cache";
        if (sent.File.Name.EndsWith("tank-worker.js", StringComparison.Ordinal))
        {
            // It stands among the files and looks after the pages of tanks.
            sent.Context.Response.Headers["Service-Worker-Allowed"] = "/tanks/";
        }
    }

    /// <summary>A download that fails says why in a sentence.</summary>
    private static Task FailedAsync(HttpContext context)
    {
        var fault = context.Features.Get<IExceptionHandlerFeature>()?.Error;
        context.Response.ContentType = "text/plain; charset=utf-8";
        return context.Response.WriteAsync(
            fault is not null && StoreTrouble.Words(fault) is { } words
                ? $"This cannot be handed out now: {words}.\n"
                : "Our program failed here; what is saved is safe. Go back and try again.\n"
        );
    }

    /// <summary>What is not here is told in the look of the bench, with a way back.</summary>
    private static Task NothingAsync(StatusCodeContext status)
    {
        var response = status.HttpContext.Response;
        var words =
            response.StatusCode == StatusCodes.Status404NotFound
                ? ("There is no such page here", "The address may be mistyped, or what it showed is gone.")
                : ("The bench does not take this", "Go back and try it from its page.");
        response.ContentType = "text/html; charset=utf-8";
        return response.WriteAsync(
            $"""
            <!DOCTYPE html><html lang="en"><head><meta charset="utf-8" /><title>Not here · Litterfall</title>
            <meta name="viewport" content="width=device-width, initial-scale=1" />
            <meta name="color-scheme" content="light dark" />
            <link rel="icon" href="data:," />
            <link rel="stylesheet" href="/_content/Litterfall.Web/bench.css" />
            <link rel="stylesheet" href="/_content/Litterfall.Web/pages.css" /></head>
            <body><header class="bar"><a class="brand" href="/">Litterfall</a>
            <nav aria-label="bench"><a href="/">Designs</a><a href="/orders">Orders</a>
            <a href="/buying">Buying</a><a href="/stock">Stock</a><a href="/library">Library</a>
            <a href="/workshop">Workshop</a><a href="/measure">Measure</a><a href="/units">Units</a>
            <a href="/devices">Devices</a></nav></header>
            <main id="main"><h1>{words.Item1}</h1><p>{words.Item2}</p>
            <p><a class="button main" href="/">All designs</a></p></main></body></html>
            """
        );
    }

    private static async Task<IResult> FileAsync(
        Guid id,
        string? version,
        BenchStore store,
        CancellationToken cancel
    )
    {
        var design = int.TryParse(version, NumberStyles.None, CultureInfo.InvariantCulture, out var v)
            ? await store.DesignAsync(id, v, cancel)
            : await store.DesignAsync(id, cancel);
        return design is null
            ? Results.NotFound()
            : Results.File(
                Encoding.UTF8.GetBytes(design.Text),
                "application/yaml",
                $"{PaperJob.FileWord(design.Name)}.viv.yaml"
            );
    }

    private static async Task<IResult> SmallAsync(
        Guid id,
        string? version,
        SmallDrawings small,
        HttpContext context
    )
    {
        if (await small.OfAsync(id, context.RequestAborted) is not { } svg)
        {
            return Results.NotFound();
        }

        if (version is not null)
        {
            context.Response.Headers.CacheControl = "private, max-age=86400";
        }

        return Results.File(svg, "image/svg+xml");
    }

    private static async Task<IResult> PhotoAsync(string name, Photos photos, HttpContext context)
    {
        if (await photos.FindAsync(name, context.RequestAborted) is not { } picture)
        {
            return Results.NotFound();
        }

        context.Response.Headers.CacheControl = "private, max-age=604800, immutable";
        return Results.File(picture, "image/jpeg");
    }

    private static async Task<IResult> ExportAsync(
        IDbContextFactory<BenchContext> contexts,
        CancellationToken cancel
    ) =>
        Results.File(
            await BenchExport.WriteAsync(contexts, cancel),
            "application/zip",
            "litterfall-export.zip"
        );
}
