using System.Globalization;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Tanks;
using Litterfall.Running.Service;
using Microsoft.AspNetCore.Components;

namespace Litterfall.Web.Tanks.Charts;

/// <summary>
/// Temperature and humidity of a place over any span up to all that is kept; pans and zooms in the browser,
/// with the field of the animal behind.
/// </summary>
public sealed partial class ReadingChart : ComponentBase
{
    /// <summary>Tank or other place.</summary>
    [Parameter, EditorRequired]
    public required string Place { get; set; }

    /// <summary>All tanks; names the room and the animal.</summary>
    [Parameter, EditorRequired]
    public required TankView View { get; set; }

    private Tank? Tank => View.Find(Place)?.Value;

    private string Zone =>
        (Tank is { } tank ? View.RoomOf(tank) : View.Places.FirstOrDefault())?.TimeZone ?? "";

    private string Said => $"Temperature and humidity in {Place}";

    /// <summary>"°C from, to, % from, to, name"; empty without an animal.</summary>
    private string Band
    {
        get
        {
            var species = Tank is { } tank
                ? AnimalCounts.Find(View.Care[tank.Code]).FirstOrDefault(c => c.Count > 0)?.Species
                : null;
            if (species is not { Length: > 0 } key || View.Catalog.Find(key) is not AnimalEntry animal)
            {
                return "";
            }

            var celsius = (Low: animal.CoolestNight?.Value, High: animal.WarmestDay?.Value);
            var percent = (Low: animal.LeastHumidity?.Value, High: animal.LargestHumidity?.Value);
            return string.Join(
                ';',
                Text(celsius.Low),
                Text(celsius.High),
                Text(percent.Low),
                Text(percent.High),
                "target: " + animal.Name
            );
        }
    }

    private static string Text(double? value) =>
        value is { } v ? v.ToString("0.#", CultureInfo.InvariantCulture) : "";
}
