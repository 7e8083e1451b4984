using System.Globalization;
using Litterfall.Domain.Dispatch;
using Litterfall.Domain.Trade;
using Litterfall.Web.Shop.Terms;

namespace Litterfall.Web.Shipping.Rules;

/// <summary>A region as it is typed.</summary>
public sealed class RegionDraft
{
    private const int MostDays = 400;
    private static readonly CultureInfo Invariant = CultureInfo.InvariantCulture;
    private readonly DeliveryRegion? kept;

    /// <summary>Begins with a region; null for a new one.</summary>
    public RegionDraft(DeliveryRegion? region)
    {
        kept = region;
        Name = new("Name", region?.Name ?? "");
        Country = new("Country, two letters", region?.Country ?? "")
        {
            Help = "its public holidays count; empty for own days alone",
        };
        Part = new("State or part", region?.Part ?? "");
        Zone = new("Time zone", region?.Zone ?? "Etc/UTC") { Help = "such as Europe/Berlin" };
        Days = new("Own days without parcels", string.Join("\n", (region?.Days ?? []).Select(Told)))
        {
            IsLong = true,
            Help =
                "one a line: 2026-11-26 Harvest holiday, or 2026-11-26 from 12 Harvest holiday "
                + "where nothing moves from noon of the day before",
        };
        Worked = new(
            "Public holidays with parcels all the same",
            string.Join("\n", (region?.Worked ?? []).Select(d => d.ToString("yyyy-MM-dd", Invariant)))
        )
        {
            IsLong = true,
            Help = "one day a line",
        };
    }

    /// <summary>Name.</summary>
    public TypedText Name { get; }

    /// <summary>Country.</summary>
    public TypedText Country { get; }

    /// <summary>Part of the country.</summary>
    public TypedText Part { get; }

    /// <summary>Zone.</summary>
    public TypedText Zone { get; }

    /// <summary>Own days.</summary>
    public TypedText Days { get; }

    /// <summary>Days worked all the same.</summary>
    public TypedText Worked { get; }

    /// <summary>Fields in the order they are shown.</summary>
    public IReadOnlyList<TypedText> Fields => [Name, Country, Part, Zone, Days, Worked];

    /// <summary>The region; its fields say what is wrong with them.</summary>
    /// <param name="refusal">Why a region cannot be used, in one sentence; null where it can.</param>
    public DeliveryRegion Read(Func<DeliveryRegion, string?> refusal)
    {
        var name = Name.Required();
        var read = new DeliveryRegion
        {
            Key = kept?.Key ?? OwnKey.From(name),
            Name = name,
            Country = Country.Free().ToUpperInvariant(),
            Part = Part.Free(),
            Zone = Zone.Required(),
            Days = [.. OwnDays()],
            Worked = [.. WorkedDays()],
        };
        if (Fields.All(f => f.Fault is null) && refusal(read) is { } why)
        {
            (why.Contains("zone", StringComparison.OrdinalIgnoreCase) ? Zone : Country).Refuse(why);
        }

        return read;
    }

    private List<RestDay> OwnDays()
    {
        var days = new List<RestDay>();
        foreach (var line in Days.Lines().Take(MostDays))
        {
            var words = line.Split(' ', StringSplitOptions.RemoveEmptyEntries);
            var isEve = words.Length > 2 && words[1] == "from";
            var hour = 0;
            if (
                !DateOnly.TryParseExact(words[0], "yyyy-MM-dd", Invariant, DateTimeStyles.None, out var day)
                || (isEve && (!int.TryParse(words[2], NumberStyles.None, Invariant, out hour) || hour > 23))
            )
            {
                Days.Refuse($"'{line}' is no such day. Enter it such as 2026-11-26 from 12 Harvest holiday.");
                break;
            }

            var name = string.Join(' ', words.Skip(isEve ? 3 : 1));
            days.Add(new(day, name.Length > 0 ? name : "holiday") { EveEndsAtHour = isEve ? hour : null });
        }

        return days;
    }

    private List<DateOnly> WorkedDays()
    {
        var days = new List<DateOnly>();
        foreach (var line in Worked.Lines().Take(MostDays))
        {
            if (!DateOnly.TryParseExact(line, "yyyy-MM-dd", Invariant, DateTimeStyles.None, out var day))
            {
                Worked.Refuse($"'{line}' is no day. Enter it such as 2026-11-26.");
                break;
            }

            days.Add(day);
        }

        return days;
    }

    private static string Told(RestDay day) =>
        string.Create(
            Invariant,
            $"{day.Day:yyyy-MM-dd}{(day.EveEndsAtHour is { } hour ? $" from {hour}" : "")} {day.Name}"
        );
}
