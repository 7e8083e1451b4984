using System.Globalization;
using System.IO.Compression;
using System.Text;
using Litterfall.Documents.Papers;
using Litterfall.Store;
using Litterfall.Web.Desk;
using Litterfall.Web.Library;
using Litterfall.Web.Sharing;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Components.Server.Circuits;
using Microsoft.AspNetCore.Diagnostics;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;

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
        services.AddSingleton<PaperShelf>();
        services.AddSingleton<PaperSources>();
        services.AddSingleton<StillShelf>();
        services.AddSingleton(DeskRoom.OfMachine());
        services.AddScoped<Tastes>();
        services.AddScoped<Presence>();
        services.AddScoped<CircuitHandler>(all => all.GetRequiredService<Presence>());
    }

    /// <summary>Pages and files.</summary>
    /// <param name="app">The application.</param>
    public static void Map(WebApplication app)
    {
        app.UseExceptionHandler(failed => failed.Run(FailedAsync));
        app.UseStatusCodePages(NothingAsync);
        app.UseAntiforgery();
        app.MapGet("/design/{id:guid}/file", FileAsync);
        app.MapGet("/design/{id:guid}/paper/{name}", PaperAsync);
        app.MapGet("/design/{id:guid}/papers.zip", PapersAsync);
        app.MapGet("/export.zip", ExportAsync);
        ViewRoutes.Map(app);
        app.MapRazorComponents<App>().AddInteractiveServerRenderMode();
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

    /// <summary>What is not here is told with a way back.</summary>
    private static Task NothingAsync(StatusCodeContext status)
    {
        var response = status.HttpContext.Response;
        response.ContentType = "text/html; charset=utf-8";
        return response.WriteAsync(
            "<!DOCTYPE html><html lang=\"en\"><title>Not here · Litterfall</title><h1>"
                + (
                    response.StatusCode == StatusCodes.Status404NotFound
                        ? "There is no such page here"
                        : "The bench does not take this"
                )
                + "</h1><p><a href=\"/\">All designs</a></p></html>"
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

    private static async Task<IResult> PaperAsync(
        Guid id,
        string name,
        string? sheet,
        string? slips,
        PaperSources from,
        CancellationToken cancel
    )
    {
        var files = await from.Shelf.FilesAsync(id, (sheet, slips == "true"), from, cancel);
        var found = files?.FirstOrDefault(f => f.Name == name);
        return found is null
            ? Results.NotFound()
            : Results.File(
                found.Bytes,
                name.EndsWith(".pdf", StringComparison.Ordinal)
                    ? "application/pdf"
                    : "application/octet-stream",
                name.EndsWith(".pdf", StringComparison.Ordinal) ? null : Path.GetFileName(name)
            );
    }

    private static async Task<IResult> PapersAsync(
        Guid id,
        string? sheet,
        string? slips,
        PaperSources from,
        CancellationToken cancel
    )
    {
        if (await from.Shelf.FilesAsync(id, (sheet, slips == "true"), from, cancel) is not { } files)
        {
            return Results.NotFound();
        }

        using var bytes = new MemoryStream();
        using (var zip = new ZipArchive(bytes, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (var file in files)
            {
                await using var entry = zip.CreateEntry(file.Name, CompressionLevel.Fastest).Open();
                await entry.WriteAsync(file.Bytes, cancel);
            }
        }

        return Results.File(bytes.ToArray(), "application/zip", "papers.zip");
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
