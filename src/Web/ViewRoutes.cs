using System.Globalization;
using Litterfall.Documents.Perspective;
using Litterfall.Web.Desk;
using Microsoft.AspNetCore.Builder;
using Microsoft.AspNetCore.Http;
using Microsoft.AspNetCore.Routing;

namespace Litterfall.Web;

/// <summary>
/// Pictures of designs as files: for lists, papers, quotes and browsers that draw nothing in space.
/// </summary>
public static class ViewRoutes
{
    private const int UsualWidth = 960;
    private const int MostHours = 24 * 31;
    private const double LeastZoom = 0.5;
    private const double MostZoom = 2.5;

    /// <summary>Puts the routes in.</summary>
    public static void Map(IEndpointRouteBuilder app) =>
        app.MapGet("/design/{id:guid}/still.png", StillAsync);

    private static async Task<IResult> StillAsync(
        Guid id,
        HttpContext context,
        StillShelf shelf,
        CancellationToken cancel
    )
    {
        var asked = new Asked(context.Request.Query);
        var width = asked.Whole("width", StillWriter.Least, StillWriter.Most) ?? UsualWidth;
        var height = (int)Math.Round(width * StillWriter.UsualShape);
        var wish = new StillWish(
            width,
            asked.Whole("height", StillWriter.Least, StillWriter.Most) ?? Math.Max(StillWriter.Least, height)
        )
        {
            Hour = asked.Whole("hour", 0, MostHours),
            Months = asked.Whole("month", 0, BoxPicture.OldestMonths) ?? 12,
            HasAnimals = asked.IsSet("animals"),
            Turn = asked.Number("turn", -360, 360),
            Rise = asked.Number("rise", -15, 85) ?? Camera.UsualRise,
            Zoom = asked.Number("zoom", LeastZoom, MostZoom) ?? 1,
        };
        if (asked.Trouble is { } trouble)
        {
            return Results.Text(
                trouble + "\n",
                "text/plain; charset=utf-8",
                null,
                StatusCodes.Status400BadRequest
            );
        }

        if (await shelf.PngAsync(id, wish, cancel) is not { } still)
        {
            return Results.NotFound();
        }

        context.Response.Headers.CacheControl = "private, no-cache";
        return Results.File(
            still.Png,
            "image/png",
            asked.IsSet("save") ? "picture.png" : null,
            entityTag: new($"\"{still.Tag}\"")
        );
    }

    /// <summary>What an address asks for; the first that does not read is told in a sentence.</summary>
    private sealed class Asked(IQueryCollection query)
    {
        public string? Trouble { get; private set; }

        public int? Whole(string name, int least, int most)
        {
            if (query[name].ToString() is not { Length: > 0 } text)
            {
                return null;
            }

            if (
                int.TryParse(
                    text,
                    NumberStyles.AllowLeadingSign,
                    CultureInfo.InvariantCulture,
                    out var number
                )
                && number >= least
                && number <= most
            )
            {
                return number;
            }

            Trouble ??= string.Create(
                CultureInfo.InvariantCulture,
                $"{name} is '{Short(text)}'; expected a whole number from {least} to {most}."
            );
            return null;
        }

        public double? Number(string name, double least, double most)
        {
            if (query[name].ToString() is not { Length: > 0 } text)
            {
                return null;
            }

            if (
                double.TryParse(text, NumberStyles.Float, CultureInfo.InvariantCulture, out var number)
                && number >= least
                && number <= most
            )
            {
                return number;
            }

            Trouble ??= string.Create(
                CultureInfo.InvariantCulture,
                $"{name} is '{Short(text)}'; expected a number from {least} to {most}."
            );
            return null;
        }

        public bool IsSet(string name)
        {
            var text = query[name].ToString();
            if (text is not ("" or "true" or "false"))
            {
                Trouble ??= $"{name} is '{Short(text)}'; expected true or false.";
            }

            return text == "true";
        }

        private static string Short(string text) => text.Length > 40 ? $"{text[..40]}…" : text;
    }
}
