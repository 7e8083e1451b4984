using System.Text;
using Litterfall.Web.Library;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace Litterfall.Web;

/// <summary>Documents of a design, their pages as pictures, all in one file to print or to keep.</summary>
internal static class PaperRoutes
{
    // The address carries the mark of what is pictured: another content has another address.
    private const string Kept = "private, max-age=604800, immutable";

    public static void Map(IEndpointRouteBuilder app)
    {
        app.MapGet("/design/{id:guid}/paper/{**name}", PaperAsync);
        app.MapGet("/design/{id:guid}/page/{number:int}.png", PageAsync);
        app.MapGet("/design/{id:guid}/print.pdf", PrintAsync);
        app.MapGet("/design/{id:guid}/papers.zip", ZipAsync);
    }

    private static Task<PaperSet?> SetAsync(
        Guid id,
        PaperAsk ask,
        PaperSources from,
        CancellationToken cancel
    ) => from.Shelf.SetAsync(id, (ask.Sheet, ask.Slips == "true"), from, cancel: cancel);

    private static async Task<IResult> PaperAsync(
        Guid id,
        string name,
        [AsParameters] PaperAsk ask,
        PaperSources from,
        CancellationToken cancel
    )
    {
        var found = (await SetAsync(id, ask, from, cancel))?.Find(name);
        var (type, isShown) = Path.GetExtension(name) switch
        {
            ".pdf" => ("application/pdf", true),
            ".svg" => ("image/svg+xml", true),
            ".csv" => ("text/csv; charset=utf-8", false),
            ".ics" => ("text/calendar; charset=utf-8", false),
            _ => ("application/octet-stream", false),
        };
        if (found is null)
        {
            return Results.NotFound();
        }

        return ask.Small == "true" && type == "image/svg+xml" && found.Scale == 1
            ? Results.Text(Strong(Encoding.UTF8.GetString(found.Bytes)), type)
            : Results.File(found.Bytes, type, isShown && ask.Keep != "true" ? null : Path.GetFileName(name));
    }

    /// <summary>Hair lines of a cut file are lost in a small picture: there they are a pixel wide.</summary>
    private static string Strong(string svg)
    {
        const string style = "<style>[stroke]{vector-effect:non-scaling-stroke;stroke-width:1.2px}</style>";
        var end = svg.IndexOf('>', svg.IndexOf("<svg", StringComparison.Ordinal));
        return svg.Insert(end + 1, style);
    }

    private static async Task<IResult> PageAsync(
        [AsParameters] PageAsk page,
        [AsParameters] PaperAsk ask,
        PaperSources from,
        HttpContext context
    )
    {
        var set = await SetAsync(page.Id, ask, from, context.RequestAborted);
        if (
            set is null
            || await Task.Run(() => set.Picture(page.Name, page.Number, page.Width)) is not { } picture
        )
        {
            return Results.NotFound();
        }

        if (ask.Mark == set.Mark)
        {
            context.Response.Headers.CacheControl = Kept;
        }

        return Results.File(picture, "image/png");
    }

    private static async Task<IResult> PrintAsync(
        Guid id,
        [AsParameters] PaperAsk ask,
        PaperSources from,
        CancellationToken cancel
    ) =>
        await SetAsync(id, ask, from, cancel) is { } set
            ? Results.File(await Task.Run(() => set.Print, cancel), "application/pdf")
            : Results.NotFound();

    private static async Task<IResult> ZipAsync(
        Guid id,
        [AsParameters] PaperAsk ask,
        PaperSources from,
        CancellationToken cancel
    ) =>
        await SetAsync(id, ask, from, cancel) is { } set
            ? Results.File(await Task.Run(() => set.Zip, cancel), "application/zip", "papers.zip")
            : Results.NotFound();
}

/// <summary>A page that is asked for as a picture.</summary>
/// <param name="Id">The design.</param>
/// <param name="Number">1 for the first page.</param>
/// <param name="Name">The document.</param>
/// <param name="Width">Pixels.</param>
internal sealed record PageAsk(Guid Id, int Number, string Name, int Width);

/// <summary>How documents are asked for in an address.</summary>
/// <param name="Sheet">"letter", or A4.</param>
/// <param name="Slips">"true" with the sources of each number.</param>
/// <param name="Mark">Mark of the set that the page showed.</param>
/// <param name="Keep">"true" to keep a file that would be shown.</param>
/// <param name="Small">"true" for a drawing in small.</param>
internal sealed record PaperAsk(string? Sheet, string? Slips, string? Mark, string? Keep, string? Small);
