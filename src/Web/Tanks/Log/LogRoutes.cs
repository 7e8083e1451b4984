using System.Globalization;
using System.Text.Json;
using Litterfall.Domain.Tanks;
using Litterfall.Running.Service;
using Litterfall.Store;
using Litterfall.Web.Library;
using Litterfall.Web.Sharing;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace Litterfall.Web.Tanks.Log;

/// <summary>
/// The log of a tank on a phone: a page that works alone, what it works with, and the door by which its lines
/// come in, however often they are sent.
/// </summary>
internal static class LogRoutes
{
    private const int MostLines = 200;

    public static void Map(IEndpointRouteBuilder app)
    {
        app.MapGet("/t/{code}", Scan);
        app.MapGet("/tanks/{code}/log", Page);
        app.MapGet("/tanks/log.json", SheetAsync);
        app.MapPost("/tanks/{code}/log", TakeAsync);
    }

    /// <summary>A code on a label or passport, scanned with the camera of a phone.</summary>
    private static async Task<IResult> Scan(string code, TankDesk desk, CancellationToken cancel)
    {
        var tank = (await desk.LoadAsync(cancel)).Find(code)?.Value;
        return Results.Redirect(
            tank is null
                ? $"/tanks/{Uri.EscapeDataString(code)}"
                : $"/tanks/{Uri.EscapeDataString(tank.Code)}/log"
        );
    }

    /// <summary>The same page for every tank: it finds its tank by its address.</summary>
    private static IResult Page(string code) => Results.Content(LogPage.Html, "text/html; charset=utf-8");

    private static async Task<IResult> SheetAsync(
        Guid? who,
        TankDesk desk,
        BenchStore store,
        CancellationToken cancel
    )
    {
        var view = await desk.LoadAsync(cancel);
        var units = SavedPreferences.Read(await store.ChoicesAsync(cancel), who);
        return Results.Json(
            new LogSheets(view, new CareTelling(units.For, view.NameOf)).Make(),
            LogTalk.Form
        );
    }

    private static async Task<IResult> TakeAsync(
        string code,
        [AsParameters] LogDoor door,
        HttpContext context
    )
    {
        if (!context.Request.HasJsonContentType())
        {
            return Results.Text(
                "Lines are sent as JSON.\n",
                statusCode: StatusCodes.Status415UnsupportedMediaType
            );
        }

        SentLine[] sent;
        try
        {
            sent = await context.Request.ReadFromJsonAsync<SentLine[]>(LogTalk.Form, context.RequestAborted)
                ?? [];
        }
        catch (JsonException)
        {
            return Results.Text("These lines do not read.\n", statusCode: StatusCodes.Status400BadRequest);
        }

        if (sent.Length is 0 or > MostLines)
        {
            return Results.Text(
                string.Create(CultureInfo.InvariantCulture, $"Send 1 to {MostLines} lines at a time.\n"),
                statusCode: StatusCodes.Status400BadRequest
            );
        }

        return Results.Json(await door.TakeAsync(code, sent, context.User.Identity?.Name), LogTalk.Form);
    }
}

/// <summary>Takes lines in.</summary>
/// <param name="Desk">The tanks.</param>
/// <param name="Store">Where they are kept.</param>
/// <param name="Photos">Where photos are kept.</param>
/// <param name="Devices">Names of phones.</param>
internal sealed record LogDoor(TankDesk Desk, BenchStore Store, Photos Photos, PairedDevices Devices)
{
    /// <summary>Keeps what is new of the lines of one tank.</summary>
    /// <param name="code">Number of the tank, or of its label.</param>
    /// <param name="sent">Lines.</param>
    /// <param name="device">Number of the device they come from; null for this machine.</param>
    public async Task<LogAnswer> TakeAsync(string code, IReadOnlyList<SentLine> sent, string? device)
    {
        var tank = (await Desk.LoadAsync()).Find(code)?.Value;
        var known = tank is null
            ? []
            : (await Store.CareAsync(tank.Code)).Select(l => l.Key).ToHashSet(StringComparer.Ordinal);
        var who = Devices.All.FirstOrDefault(d => d.Id == device)?.Name ?? await Desk.WhoAsync();
        var (taken, refused) = (new List<string>(), new List<RefusedLine>());
        foreach (var line in sent)
        {
            var key = line.Key ?? "";
            var why =
                tank is null ? $"There is no tank {code} in service here."
                : known.Contains(key) ? null
                : await KeepAsync(tank.Code, line, who);
            if (why is null)
            {
                taken.Add(key);
                known.Add(key);
            }
            else
            {
                refused.Add(new(key, why));
            }
        }

        return new(taken, refused);
    }

    private async Task<string?> KeepAsync(string tank, SentLine sent, string who)
    {
        if (KindOf(sent.Kind) is not { } kind)
        {
            return "This kind of line is not known here; load the page anew.";
        }

        var line = new CareEntry
        {
            Key = sent.Key ?? "",
            Tank = tank,
            At = sent.At?.UtcDateTime ?? Desk.Now,
            Kind = kind,
            Amount = sent.Amount,
            HumidityPercent = sent.Humidity,
            Species = sent.Species ?? "",
            Other = (sent.Other ?? "").Trim(),
            Note = (sent.Note ?? "").Trim(),
            TakesBack = sent.TakesBack ?? "",
            Who = who,
        };
        var (photo, trouble) = await PictureAsync(sent.Picture);
        if ((CareLines.Refusal(line, Desk.Now) ?? trouble) is { } refusal)
        {
            return refusal;
        }

        return await Attempt.AtAsync(() => Store.AddCareAsync([line with { Photo = photo }]));
    }

    private async Task<(string Name, string? Trouble)> PictureAsync(string? base64)
    {
        if (base64 is not { Length: > 0 })
        {
            return ("", null);
        }

        var bytes = new byte[base64.Length];
        if (!Convert.TryFromBase64String(base64, bytes, out var size))
        {
            return ("", "The photo does not read; take it again.");
        }

        var (name, trouble) = await Photos.TakeAsync(size, () => new MemoryStream(bytes, 0, size));
        return (name ?? "", trouble);
    }

    private static CareKind? KindOf(string? word) =>
        Enum.GetValues<CareKind>().Cast<CareKind?>().FirstOrDefault(k => LogSheets.Word(k!.Value) == word);
}
