using System.Globalization;
using Litterfall.Running.Loggers;
using Litterfall.Store;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;
using Microsoft.Extensions.DependencyInjection;

namespace Litterfall.Web.Tanks.Loggers;

/// <summary>The door for live readings, and files as they were taken in.</summary>
internal static class ReadingRoutes
{
    private const int MostBytes = 2 * 1024 * 1024;

    public static void Add(IServiceCollection services)
    {
        services.AddSingleton<LoggerDesk>();
        services.AddSingleton<RoomEvents>();
        services.AddSingleton<LoggerSourcesWatch>();
    }

    public static void Map(IEndpointRouteBuilder app)
    {
        app.MapPost("/readings", TakeAsync);
        app.MapGet("/loggers/file/{id:int}", FileAsync);
    }

    private static async Task<IResult> TakeAsync(HttpContext context, BenchStore store, TimeProvider clock)
    {
        if (!context.Request.HasJsonContentType())
        {
            return Results.Text(
                "Readings are sent as JSON.\n",
                statusCode: StatusCodes.Status415UnsupportedMediaType
            );
        }

        if (context.Request.ContentLength is null or > MostBytes)
        {
            return Results.Text(
                "Send at most 2 MB at a time.\n",
                statusCode: StatusCodes.Status413PayloadTooLarge
            );
        }

        using var body = new StreamReader(context.Request.Body);
        var text = await body.ReadToEndAsync(context.RequestAborted);
        var readings = LiveForm.Read(text, clock.GetUtcNow().UtcDateTime, out var refusal);
        if (refusal.Length > 0)
        {
            return Results.Text(refusal + "\n", statusCode: StatusCodes.Status400BadRequest);
        }

        var kept = await store.AddReadingsAsync(readings, context.RequestAborted);
        return Results.Json(new { kept, known = readings.Count - kept });
    }

    private static async Task<IResult> FileAsync(int id, BenchStore store, CancellationToken cancel) =>
        await store.LogFileAsync(id, cancel) is { } file
            ? Results.File(
                file.Bytes,
                "application/octet-stream",
                string.Create(CultureInfo.InvariantCulture, $"{file.Name}")
            )
            : Results.NotFound();
}
