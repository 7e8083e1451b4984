using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Dispatch;

namespace Litterfall.Dispatch.Packing;

/// <summary>How something alive travels.</summary>
public enum TravelerKind
{
    /// <summary>An animal, alone in its cup.</summary>
    Animal,

    /// <summary>A culture of springtails or isopods in its own cup.</summary>
    Culture,

    /// <summary>A culture or tub of feeders.</summary>
    Feeder,

    /// <summary>A plant in its pot.</summary>
    Plant,
}

/// <summary>Something alive of a parcel with what the library knows of it.</summary>
public sealed record Traveler
{
    /// <summary>Mass over length cubed, g/mm³; own regression for frogs, within 25 %.</summary>
    private const double GramsPerCubicMillimeter = 9.1e-5;

    /// <summary>What the parcel says.</summary>
    public required LiveContent Content { get; init; }

    /// <summary>The entry of the library.</summary>
    public required CatalogEntry Entry { get; init; }

    /// <summary>How it travels.</summary>
    public required TravelerKind Kind { get; init; }

    /// <summary>Common name first: "dyeing poison frog (Dendrobates tinctorius)".</summary>
    public string Name => Entry.CommonFirst;

    /// <summary>Common name alone; the scientific one where it has no other.</summary>
    public string CommonName => Name.Split(" (", 2)[0];

    /// <summary>Scientific name; empty where it is the only one.</summary>
    public string ScienceName => Name.Split(" (", 2) is [_, var rest] ? rest.TrimEnd(')') : "";

    /// <summary>Length from snout to vent, or of the body, m; null where nobody knows it.</summary>
    public double? LengthMeters =>
        Content.LengthMeters
        ?? (Entry as AnimalEntry)?.LongestAdult?.Si
        ?? (Entry as AnimalEntry)?.LongestOnRecord?.Si;

    /// <summary>True where its length is that of an adult.</summary>
    public bool IsAdult =>
        Content.LengthMeters is not { } length
        || Entry is not AnimalEntry animal
        || length >= (animal.ShortestAdult ?? animal.LongestAdult ?? animal.LongestOnRecord)?.Si - 1e-9;

    /// <summary>frog, gecko or what else it is; empty where nobody says.</summary>
    public string Taxon => (Entry as AnimalEntry)?.Taxon?.Text ?? "";

    /// <summary>True for frogs and toads.</summary>
    public bool IsFrog => Taxon.Contains("frog", StringComparison.Ordinal) || Taxon is "toad" or "mantella";

    /// <summary>Mass of one animal, kg; from its length where nobody weighed it.</summary>
    public double Kilograms
    {
        get
        {
            var animal = Entry as AnimalEntry;
            var grown = animal?.Mass?.Si;
            var adult = (animal?.LongestAdult ?? animal?.LongestOnRecord)?.Si;
            return (grown, adult, LengthMeters) switch
            {
                ({ } mass, { } full, { } length) when !IsAdult => mass * Math.Pow(length / full, 3),
                ({ } mass, _, _) => mass,
                (null, _, { } length) => GramsPerCubicMillimeter * Math.Pow(length * 1000, 3) / 1000,
                _ => 0,
            };
        }
    }

    /// <summary>Appendix of the convention on trade in endangered species; empty for none.</summary>
    public string Cites => CitesText is "I" or "II" or "III" ? CitesText : "";

    /// <summary>What its skin or sap does to people; empty for nothing known.</summary>
    public string Toxin =>
        Entry switch
        {
            AnimalEntry { Toxin: { } toxin } => toxin.Text,
            PlantEntry { Toxicity: { } sap } when !sap.Text.StartsWith("none", StringComparison.Ordinal) =>
                sap.Text,
            _ => "",
        };

    private string CitesText =>
        Entry switch
        {
            AnimalEntry { Cites: { } appendix } => appendix.Text,
            PlantEntry { Cites: { } appendix } => appendix.Text,
            _ => "",
        };

    /// <summary>
    /// What lives in a parcel, with its entry; what the library does not know is left out and named.
    /// </summary>
    /// <param name="parcel">The parcel.</param>
    /// <param name="catalog">The library.</param>
    /// <returns>What lives in it, and the first key that is not known; empty for none.</returns>
    public static (IReadOnlyList<Traveler> All, string Unknown) Read(Parcel parcel, TradeCatalog catalog)
    {
        var all = new List<Traveler>();
        var unknown = "";
        foreach (var content in parcel.Contents)
        {
            var entry = catalog.Find(content.Key);
            TravelerKind? kind = entry switch
            {
                AnimalEntry => TravelerKind.Animal,
                CrewEntry => TravelerKind.Culture,
                FeederEntry => TravelerKind.Feeder,
                PlantEntry => TravelerKind.Plant,
                _ => null,
            };
            if (entry is null || kind is not { } known)
            {
                unknown = unknown.Length > 0 ? unknown : content.Key;
                continue;
            }

            all.Add(
                new()
                {
                    Content = content,
                    Entry = entry,
                    Kind = known,
                }
            );
        }

        return (all, unknown);
    }
}
