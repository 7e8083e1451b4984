using Litterfall.Domain.Tanks;
using Litterfall.Running.Loggers;
using Litterfall.Running.Loggers.Clocks;
using Microsoft.AspNetCore.Components;

namespace Litterfall.Web.Tanks.Loggers;

/// <summary>A chosen file: what was guessed, its first rows, and what can be fixed.</summary>
public sealed partial class LoggerPreview : ComponentBase
{
    private static readonly string[] Warm = ["", "°C", "°F", "K"];
    private static readonly string[] Pressed = ["", "hPa", "mbar", "kPa", "mmHg", "inHg"];
    private string wrong = "";

    /// <summary>The file.</summary>
    [Parameter, EditorRequired]
    public required ChosenLog Log { get; set; }

    /// <summary>Places a sensor can hang in.</summary>
    [Parameter, EditorRequired]
    public required IReadOnlyList<string> Places { get; set; }

    /// <summary>True while files are taken in.</summary>
    [Parameter]
    public bool Disabled { get; set; }

    /// <summary>Told what was fixed.</summary>
    [Parameter]
    public EventCallback<LoggerStyle> OnFixed { get; set; }

    /// <summary>Told that the file is not wanted.</summary>
    [Parameter]
    public EventCallback OnDiscard { get; set; }

    private string Id { get; } = "log" + Guid.NewGuid().ToString("N")[..8];

    private static string First(string text) => char.ToUpperInvariant(text[0]) + text[1..];

    private static string Meaning(ShownColumn column)
    {
        if (column.IsTime || column.Channel is not { } channel)
        {
            return column.IsTime ? "time" : "left out";
        }

        var unit = column.Unit.Length > 0 ? $", {column.Unit}" : "";
        var place = channel.Place.Length > 0 ? $", in {channel.Place}" : "";
        return LoggerWords.Of(channel.Quantity).ToLowerInvariant() + unit + place;
    }

    private static IEnumerable<string> UnitChoices(ShownColumn column) =>
        (
            column.Channel?.Quantity switch
            {
                LogQuantity.Temperature or LogQuantity.DewPoint => Warm,
                LogQuantity.Pressure => Pressed,
                _ => (string[])[""],
            }
        )
            .Append(column.Unit)
            .Distinct(StringComparer.Ordinal);

    private Task MeanAsync(ShownColumn column, string? quantity) =>
        FixAsync(column, c =>
            Enum.TryParse<LogQuantity>(quantity, out var q)
                ? c with
                {
                    IsRead = true,
                    Quantity = q,
                }
                : c with
                {
                    IsRead = false,
                }
        );

    private Task UnitAsync(ShownColumn column, string? unit) =>
        FixAsync(column, c => c with { Unit = unit ?? "" });

    private Task PlaceAsync(ShownColumn column, string? place)
    {
        var text = (place ?? "").Trim();
        if (text.Length > 60)
        {
            wrong = "A place has at most 60 characters.";
            return Task.CompletedTask;
        }

        return FixAsync(column, c => c with { Place = text });
    }

    private Task ZoneAsync(string? zone)
    {
        var text = (zone ?? "").Trim();
        wrong =
            text.Length > 0 && ZoneChoice.Find(text) is null
                ? "There is no such time zone; choose one of the list."
                : "";
        return wrong.Length > 0 ? Task.CompletedTask : OnFixed.InvokeAsync(Style() with { Zone = text });
    }

    private Task DatesAsync(string? order) =>
        OnFixed.InvokeAsync(
            Style() with
            {
                Dates = Enum.TryParse<DateOrder>(order, out var o) ? o : DateOrder.Guessed,
            }
        );

    private Task FixAsync(ShownColumn column, Func<LoggerColumn, LoggerColumn> change)
    {
        wrong = "";
        var style = Style();
        var columns = style.Columns.ToList();
        var at = columns.FindIndex(c => c.Index == column.Index);
        var now =
            at >= 0
                ? columns[at]
                : new LoggerColumn
                {
                    Index = column.Index,
                    IsRead = column.Channel is not null,
                    Quantity = column.Channel?.Quantity ?? LogQuantity.Other,
                    Unit = column.Unit,
                };
        if (at < 0)
        {
            columns.Add(now);
            at = columns.Count - 1;
        }

        columns[at] = change(now);
        return OnFixed.InvokeAsync(style with { Columns = [.. columns] });
    }

    private LoggerStyle Style() =>
        Log.Fixed ?? new LoggerStyle { Fingerprint = Log.Reading!.Report.Fingerprint };
}
