using Litterfall.Domain.Dispatch;
using Litterfall.Domain.Lists;
using static System.FormattableString;

namespace Litterfall.Dispatch.Packing;

/// <summary>What stands on cups and on the carton.</summary>
internal static class ParcelLabels
{
    /// <summary>Lines of the label of a cup; its number is counted when it is printed.</summary>
    public static Seq<string> Cup(Traveler traveler)
    {
        var lines = new List<string> { Capital(traveler.CommonName) };
        if (traveler.ScienceName.Length > 0)
        {
            lines.Add(traveler.ScienceName);
        }

        if (traveler.Content.From.Length > 0)
        {
            lines.Add($"From {traveler.Content.From}");
        }

        if (traveler.Cites.Length > 0)
        {
            lines.Add($"CITES Appendix {traveler.Cites}");
        }

        if (traveler.Toxin.Length > 0 && traveler.Kind == TravelerKind.Animal)
        {
            lines.Add(traveler.Toxin);
        }

        return [.. lines];
    }

    /// <summary>Lines of the label of the carton, the largest first.</summary>
    public static Seq<string> Carton(PackingCase asked, List<PackedItem> items)
    {
        var hasAnimal = items.Exists(i => i.Traveler.Kind != TravelerKind.Plant);
        var isHarmless = items.TrueForAll(i => i.Traveler.Toxin.Length == 0);
        var lines = new List<string>
        {
            !hasAnimal ? "LIVE PLANTS"
            : isHarmless ? "LIVE HARMLESS ANIMALS"
            : "LIVE ANIMALS",
            "THIS WAY UP",
        };
        if (asked is { BandLowCelsius: { } low, BandHighCelsius: { } high })
        {
            // The band of a label is never wider than the band of the animals.
            lines.Add(Invariant($"Keep between {Math.Ceiling(low):0} and {Math.Floor(high):0} °C"));
        }

        lines.Add("Do not leave in the sun, in a hot vehicle or in frost");
        lines.AddRange(
            items
                .GroupBy(i => i.Traveler.Name, StringComparer.Ordinal)
                .Select(g => Invariant($"{g.Sum(i => i.Cup.Count)} × {g.Key}{Cites(g.First())}"))
        );
        lines.AddRange(
            items
                .Where(i => i.Traveler.Kind == TravelerKind.Animal && i.Traveler.Toxin.Length > 0)
                .Select(i => i.Traveler.Toxin)
                .Distinct(StringComparer.Ordinal)
        );
        var phone = asked.Rules.EmergencyPhone.Length > 0 ? asked.Rules.EmergencyPhone : asked.ShopPhone;
        lines.Add(
            phone.Length > 0 ? $"In an emergency call {phone}" : "In an emergency call: ____________________"
        );
        return [.. lines];
    }

    private static string Cites(PackedItem item) =>
        item.Cup.Cites.Length > 0 ? $", CITES Appendix {item.Cup.Cites}" : "";

    private static string Capital(string text) => char.ToUpperInvariant(text[0]) + text[1..];
}
