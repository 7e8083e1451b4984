using System.Collections.Immutable;
using Litterfall.Dispatch.Forecasts;
using Litterfall.Dispatch.Regions;
using Litterfall.Domain.Dispatch;
using Litterfall.Domain.Lists;
using Litterfall.Domain.Trees;
using Litterfall.Laboratory.Cases;

namespace Litterfall.App.Shipping;

/// <summary>Regions and forecasts of a case.</summary>
/// <param name="path">The case file; forecast files are seen from its folder.</param>
internal sealed class ShipPlaces(string path)
{
    private const int MostDays = 60;
    private const int MostHours = 24 * 60;
    private const string Home = "home";
    private const string Away = "destination";

    /// <summary>Regions of workshop and destination.</summary>
    public static (DeliveryRegion Home, DeliveryRegion Away) Regions(TreeForm top)
    {
        var form = top.ObjectOrNull("regions", "the regions");
        var home = Region(form, Home, "workshop", null);
        var away = Region(form, Away, "destination", home);
        form?.Close();
        return (home, away);
    }

    /// <summary>Forecasts of the three places, and what was guessed in their files.</summary>
    public (ImmutableArray<PlaceForecast> Forecasts, ImmutableArray<string> Notes) Forecasts(
        TreeForm top,
        DateOnly from,
        DateTime now,
        (DeliveryRegion Home, DeliveryRegion Away) regions
    )
    {
        var forecasts = ImmutableArray.CreateBuilder<PlaceForecast>();
        var notes = ImmutableArray.CreateBuilder<string>();
        var all = top.ObjectOrNull("forecasts", "the forecasts");
        foreach (
            var (key, node, region) in new[]
            {
                ("origin", RouteNode.Origin, regions.Home),
                ("hub", RouteNode.Hub, regions.Home),
                ("destination", RouteNode.Destination, regions.Away),
            }
        )
        {
            if (all?.ObjectOrNull(key, "a forecast") is { } form)
            {
                if (Forecast(form, node, (from, now, region.Zone), notes) is { } forecast)
                {
                    forecasts.Add(forecast);
                }

                form.Close();
            }
        }

        all?.Close();
        return (forecasts.ToImmutable(), notes.ToImmutable());
    }

    private static DeliveryRegion Region(TreeForm? all, string key, string name, DeliveryRegion? like)
    {
        var usual = new DeliveryRegion
        {
            Key = key,
            Name = name,
            Country = like?.Country ?? "",
            Part = like?.Part ?? "",
            Zone = like?.Zone ?? "Etc/UTC",
            Days = like?.Days ?? [],
            Worked = like?.Worked ?? [],
        };
        if (all?.ObjectOrNull(key, "a region") is not { } form)
        {
            return usual;
        }

        var region = new DeliveryRegion
        {
            Key = key,
            Name = form.OptionalText("name") ?? name,
            Country = form.OptionalText("country") ?? "",
            Part = form.OptionalText("part") ?? "",
            Zone = form.OptionalText("zone") ?? usual.Zone,
            Days = [.. Holidays(form)],
            Worked = [.. Worked(form)],
        };
        form.Close();
        if (HolidayLibrary.Refusal(region.Country, region.Part) is { Length: > 0 } refusal)
        {
            form.Refuse("country", refusal.TrimEnd('.'), "a country whose holidays are known, or none");
        }
        else if (PlaceClock.Find(region.Zone) is null)
        {
            form.Refuse(
                "zone",
                $"{TreeNode.Shown(region.Zone)} is no time zone",
                "one such as Europe/Berlin"
            );
        }

        return region;
    }

    private static ImmutableArray<RestDay> Holidays(TreeForm form)
    {
        var days = ImmutableArray.CreateBuilder<RestDay>();
        foreach (var item in form.ObjectsOrNull("holidays", "a holiday", MostDays))
        {
            days.Add(
                new(ShipFields.Day(item, "day"), item.OptionalText("name") ?? "a holiday")
                {
                    EveEndsAtHour = item.OptionalWhole("eveEndsAtHour", 0, 24),
                }
            );
            item.Close();
        }

        return days.ToImmutable();
    }

    private static ImmutableArray<DateOnly> Worked(TreeForm form)
    {
        var days = ImmutableArray.CreateBuilder<DateOnly>();
        foreach (var item in form.ObjectsOrNull("worked", "a day worked all the same", MostDays))
        {
            days.Add(ShipFields.Day(item, "day"));
            item.Close();
        }

        return days.ToImmutable();
    }

    private PlaceForecast? Forecast(
        TreeForm form,
        RouteNode node,
        (DateOnly From, DateTime Now, string Zone) known,
        ImmutableArray<string>.Builder notes
    )
    {
        var zone = form.OptionalText("zone") ?? known.Zone;
        var taken = ShipFields.OptionalTime(form, "takenAt") ?? known.Now;
        var place = form.OptionalText("place") ?? "";
        form.Ignore("hourly", "days", "file", "unit", "column");
        if (PlaceClock.Find(zone) is not { } clock)
        {
            form.Refuse("zone", $"{TreeNode.Shown(zone)} is no time zone", "one such as Europe/Berlin");
            return null;
        }

        var (hours, source) =
            form.Has("file") ? File(form, zone, notes)
            : form.Has("days") ? (TypedDays.Hours(Days(form), clock), "typed by day")
            : (Hourly(form, known.From, clock), "typed by hour");
        return form.IsGood
            ? new()
            {
                Node = node,
                Place = place,
                Zone = zone,
                TakenAt = taken,
                From = source,
                Hours = hours,
            }
            : null;
    }

    private static ImmutableArray<TypedForecastDay> Days(TreeForm form)
    {
        var days = ImmutableArray.CreateBuilder<TypedForecastDay>();
        foreach (var item in form.Objects("days", "a day of the forecast", MostDays))
        {
            var day = ShipFields.Day(item, "day");
            var low = item.Number("lowC", ShipFields.Air);
            var high = item.Number("highC", ShipFields.Air);
            item.Close();
            if (item.IsGood && high < low)
            {
                item.Refuse("highC", "highC is below lowC", "the coldest in lowC, the warmest in highC");
            }

            if (item.IsGood)
            {
                days.Add(new(day, low, high));
            }
        }

        return days.ToImmutable();
    }

    /// <summary>Points [hour, °C] from the first day's midnight on, joined by straight lines.</summary>
    private static Seq<ForecastHour> Hourly(TreeForm form, DateOnly from, PlaceClock clock)
    {
        var points = form.Steps("hourly", ShipFields.Air);
        if (points.Hours.Any(h => h is not (>= 0 and <= MostHours)))
        {
            form.Refuse("hourly", "an hour is out of range", "hours from 0 on, of some weeks at most");
        }

        if (!form.IsGood)
        {
            return [];
        }

        var hours = ImmutableArray.CreateBuilder<ForecastHour>();
        for (var i = 0; i < points.Hours.Length && hours.Count < MostHours; i++)
        {
            hours.Add(new(clock.Utc(from, points.Hours[i]), points.Values[i]));
            var next = i + 1 < points.Hours.Length ? points.Hours[i + 1] : points.Hours[i];
            for (var h = Math.Floor(points.Hours[i]) + 1; h < next && hours.Count < MostHours; h++)
            {
                var share = (h - points.Hours[i]) / (next - points.Hours[i]);
                var celsius = points.Values[i] + (share * (points.Values[i + 1] - points.Values[i]));
                hours.Add(new(clock.Utc(from, h), celsius));
            }
        }

        return [.. hours];
    }

    private (Seq<ForecastHour> Hours, string Source) File(
        TreeForm form,
        string zone,
        ImmutableArray<string>.Builder notes
    )
    {
        var name = form.Text("file") ?? "";
        var unit = form.Has("unit") ? form.Choice("unit", "C", "F", "K") ?? "" : "";
        var column = form.OptionalText("column") ?? "";
        var full = Path.Combine(Path.GetDirectoryName(Path.GetFullPath(path)) ?? ".", name);
        if (!form.IsGood || !System.IO.File.Exists(full))
        {
            form.Refuse(
                "file",
                $"there is no file {TreeNode.Shown(name)}",
                "a forecast file beside the case"
            );
            return ([], name);
        }

        var bytes = BoundedFile.Bytes(full, ForecastFile.LargestFile);
        var reading = ForecastFile.Read(
            Path.GetFileName(name),
            bytes,
            new()
            {
                Zone = zone,
                Unit = unit,
                Column = column,
            }
        );
        if (reading.Value is not { } read)
        {
            var fault = reading.Faults[0];
            form.Refuse("file", $"{fault.File}, line {fault.Line}: {fault.Message}", fault.Expected);
            return ([], name);
        }

        notes.AddRange(read.Notes.Select(n => $"{Path.GetFileName(name)}: {n}"));
        return (read.Hours, Path.GetFileName(name));
    }
}
