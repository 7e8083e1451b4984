using System.Globalization;
using Litterfall.Domain.Dispatch;
using Litterfall.Domain.Units;
using Litterfall.Quantities.Measures;
using Litterfall.Web.Library;
using Litterfall.Web.Shipping.Rules;
using Litterfall.Web.Shop.Terms;
using Microsoft.AspNetCore.Components;
using Microsoft.AspNetCore.Components.Forms;

namespace Litterfall.Web.Shipping.Forecasts;

/// <summary>A day of a forecast as it is typed.</summary>
/// <param name="day">The day.</param>
/// <param name="celsius">The reader's unit of temperature.</param>
public sealed class DayDraft(DateOnly day, Unit celsius)
{
    private static readonly (double, double) Range = (
        Unit.Celsius.ToSiValue(-60),
        Unit.Celsius.ToSiValue(60)
    );

    /// <summary>The day.</summary>
    public DateOnly Day { get; } = day;

    /// <summary>Coldest.</summary>
    public TypedText Low { get; } = new("Low", "");

    /// <summary>Warmest.</summary>
    public TypedText High { get; } = new("High", "");

    /// <summary>True where something is typed.</summary>
    public bool IsTyped => Low.Text.Trim().Length > 0 || High.Text.Trim().Length > 0;

    /// <summary>The day; null where a field has a fault.</summary>
    public TypedForecastDay? Read()
    {
        var (low, high) = (Celsius(Low), Celsius(High));
        if (Low.Fault is null && High.Fault is null && high < low)
        {
            High.Refuse("The warmest is below the coldest; enter them the other way round.");
        }

        return Low.Fault is null && High.Fault is null ? new(Day, low, high) : null;
    }

    private double Celsius(TypedText field) =>
        Math.Round(
            Unit.Celsius.FromSi(TypedMeasure.Read(field, QuantityKinds.Temperature, celsius, Range)),
            6
        );
}

/// <summary>Forecasts of the places of routes: typed by days, or read from a file of hours.</summary>
public sealed partial class ForecastPage : ComponentBase
{
    private const int DaysShown = 8;
    private DispatchView? view;
    private UnitPreferences units = UnitPreferences.Metric;
    private TypedText place = new("Place", "");
    private TypedText zone = new("Time zone", "");
    private RouteNode node;
    private List<DayDraft> days = [];
    private PlaceForecast? preview;
    private IReadOnlyList<string> notes = [];
    private string? told;
    private string? fault;

    /// <inheritdoc/>
    protected override async Task OnInitializedAsync()
    {
        units = await Preferences.LoadAsync();
        view = await Desk.LoadAsync();
        Begin(null);
    }

    private void Begin(PlaceForecast? known)
    {
        var home = view!.Home;
        place = new("Place", known?.Place ?? view.Rules.HomePlace);
        zone = new("Time zone", known?.Zone ?? home?.Zone ?? "Etc/UTC")
        {
            Help = "such as Europe/Berlin; days count by it",
        };
        node = known?.Node ?? RouteNode.Origin;
        days =
        [
            .. Enumerable
                .Range(0, DaysShown)
                .Select(d => new DayDraft(view.Today.AddDays(d), units.For(Unit.Celsius))),
        ];
        (preview, notes, told, fault) = (null, [], null, null);
    }

    private async Task FileAsync(InputFileChangeEventArgs chosen)
    {
        (told, fault, preview, notes) = (null, null, null, []);
        if (chosen.File.Size > DispatchDesk.LargestForecast)
        {
            fault = "The file is too large (limit 5 MB).";
            return;
        }

        using var bytes = new MemoryStream();
        await using var stream = chosen.File.OpenReadStream(DispatchDesk.LargestForecast);
        await stream.CopyToAsync(bytes);
        (preview, notes, fault) = Desk.ReadForecast(
            chosen.File.Name,
            bytes.ToArray(),
            (node, place.Required(), zone.Required())
        );
    }

    private async Task SaveAsync()
    {
        (told, fault) = (null, null);
        var (name, clock) = (place.Required(), zone.Required());
        if (place.Fault is not null || zone.Fault is not null)
        {
            return;
        }

        var forecast = preview is { } file
            ? file with
            {
                Node = node,
                Place = name,
            }
            : Typed((node, name, clock));
        if (forecast is not null && (fault = await Desk.KeepAsync(forecast)) is null)
        {
            view = await Desk.LoadAsync();
            Begin(forecast);
            told = $"Saved the forecast of {name}.";
        }
    }

    private PlaceForecast? Typed((RouteNode Node, string Place, string Zone) of)
    {
        var read = days.Where(d => d.IsTyped).Select(d => d.Read()).ToList();
        if (read.Count == 0)
        {
            fault = "Type the coldest and the warmest of at least one day, or choose a file.";
            return null;
        }

        if (read.Contains(null))
        {
            fault = "Some fields cannot be taken yet; each says why.";
            return null;
        }

        (var forecast, fault) = Desk.FromDays([.. read.OfType<TypedForecastDay>()], of);
        return forecast;
    }

    private static string Span(PlaceForecast one) =>
        one.Hours.Count == 0 ? "" : $"{When(one, one.Hours[0].At)} – {When(one, one.Hours[^1].At)}";

    private static string When(PlaceForecast one, DateTime at) =>
        DispatchDesk.Local(at, one.Zone).ToString("ddd d MMM HH:mm", CultureInfo.InvariantCulture);

    private string Warmth(PlaceForecast one) =>
        one.Hours.Count == 0
            ? ""
            : ShipWords.Span(units, one.Hours.Min(h => h.Celsius), one.Hours.Max(h => h.Celsius));

    private string Age(PlaceForecast one)
    {
        var hours = (view!.Now - one.TakenAt).TotalHours;
        return hours < 48
            ? $"{ShipWords.Count((int)hours, "hour", "hours")} ago"
            : NumberText.Day(DateOnly.FromDateTime(one.TakenAt));
    }
}
