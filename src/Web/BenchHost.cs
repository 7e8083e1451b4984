using System.IO.Compression;
using System.Text;
using Litterfall.Documents.Papers;
using Litterfall.Store;
using Litterfall.Web.Desk;
using Litterfall.Web.Library;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Microsoft.EntityFrameworkCore;
using Microsoft.Extensions.DependencyInjection;

namespace Litterfall.Web;

/// <summary>Puts the bench into a web application.</summary>
public static class BenchHost
{
    /// <summary>Pages with all they need.</summary>
    public static void Add(
        IServiceCollection services,
        BenchOptions options,
        IDbContextFactory<BenchContext> contexts
    )
    {
        services.AddRazorComponents().AddInteractiveServerComponents();
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
        services.AddScoped<Tastes>();
    }

    /// <summary>Pages and files.</summary>
    public static void Map(WebApplication app)
    {
        app.UseAntiforgery();
        app.MapGet("/design/{id:guid}/file", FileAsync);
        app.MapGet("/design/{id:guid}/paper/{name}", PaperAsync);
        app.MapGet("/design/{id:guid}/papers.zip", PapersAsync);
        app.MapGet("/export.zip", ExportAsync);
        app.MapRazorComponents<App>().AddInteractiveServerRenderMode();
    }

    private static async Task<IResult> FileAsync(Guid id, int? version, BenchStore store)
    {
        var design = version is { } v ? await store.DesignAsync(id, v) : await store.DesignAsync(id);
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
        bool? slips,
        PaperSources from
    )
    {
        var files = await from.Shelf.FilesAsync(id, (sheet, slips ?? false), from);
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

    private static async Task<IResult> PapersAsync(Guid id, string? sheet, bool? slips, PaperSources from)
    {
        if (await from.Shelf.FilesAsync(id, (sheet, slips ?? false), from) is not { } files)
        {
            return Results.NotFound();
        }

        using var bytes = new MemoryStream();
        using (var zip = new ZipArchive(bytes, ZipArchiveMode.Create, leaveOpen: true))
        {
            foreach (var file in files)
            {
                await using var entry = zip.CreateEntry(file.Name, CompressionLevel.Fastest).Open();
                await entry.WriteAsync(file.Bytes);
            }
        }

        return Results.File(bytes.ToArray(), "application/zip", "papers.zip");
    }

    private static async Task<IResult> ExportAsync(IDbContextFactory<BenchContext> contexts) =>
        Results.File(await StoreFile.ExportAsync(contexts), "application/zip", "litterfall-export.zip");
}
