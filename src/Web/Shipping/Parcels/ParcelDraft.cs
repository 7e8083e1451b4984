using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Dispatch;
using Litterfall.Domain.Trade;
using Litterfall.Domain.Units;
using Litterfall.Web.Library;
using Litterfall.Web.Shipping.Rules;
using Litterfall.Web.Shop.Terms;

namespace Litterfall.Web.Shipping.Parcels;

/// <summary>Something alive as it is typed.</summary>
public sealed class ContentDraft
{
    /// <summary>Begins with a content; null for a new one.</summary>
    public ContentDraft(LiveContent? content, TradeCatalog catalog)
    {
        What = new(
            "What",
            content is null ? ""
                : catalog.Find(content.Key) is { } entry ? EntryWords.Common(entry)
                : content.Key
        );
        Key = content?.Key ?? "";
        Count = TypedText.ForNumber("How many", content?.Count ?? 1);
        From = new("From tank or lot", content?.From ?? "");
        Length = new("Body length, if not adult", content?.LengthMeters is { } m ? Millimeters(m) : "");
    }

    /// <summary>Key in the library as long as nobody typed another name.</summary>
    public string Key { get; private set; }

    /// <summary>Name as typed.</summary>
    public TypedText What { get; }

    /// <summary>How many.</summary>
    public TypedText Count { get; }

    /// <summary>Tank or lot.</summary>
    public TypedText From { get; }

    /// <summary>Length from snout to vent.</summary>
    public TypedText Length { get; }

    /// <summary>Fields in the order they are shown.</summary>
    public IReadOnlyList<TypedText> Fields => [Count, From, Length];

    private static string Millimeters(double meters) =>
        $"{(1000 * meters).ToString("0.#", System.Globalization.CultureInfo.InvariantCulture)} mm";

    /// <summary>Takes a name.</summary>
    public void Name(string? typed) => (What.Text, Key) = (typed ?? "", "");

    /// <summary>The content; its fields say what is wrong with them.</summary>
    public LiveContent Read(TradeCatalog catalog)
    {
        What.Clear();
        var entry = catalog.Find(Key.Length > 0 ? Key : What.Text) ?? Named(catalog, What.Text.Trim());
        if (entry is not (AnimalEntry or CrewEntry or FeederEntry or PlantEntry or MossEntry))
        {
            What.Refuse(
                What.Text.Trim().Length == 0
                    ? "Choose an animal, a culture or a plant from the list."
                    : $"The library has no living '{What.Text.Trim()}'. Choose one from the list."
            );
        }

        return new(entry?.Key ?? "", Count.Whole(1, 500))
        {
            From = From.Free(),
            LengthMeters = TypedMeasure.ReadOrNone(
                Length,
                QuantityKinds.Length,
                Unit.Millimeter,
                (0.003, 0.3)
            ),
        };
    }

    /// <summary>Entries that can travel, with the names that the list shows.</summary>
    public static IEnumerable<(string Name, CatalogEntry Entry)> Living(TradeCatalog catalog) =>
        catalog
            .Entries.Where(e => e is AnimalEntry or CrewEntry or FeederEntry or PlantEntry)
            .Select(e => (EntryWords.Common(e), e))
            .OrderBy(e => e.Item1, StringComparer.OrdinalIgnoreCase);

    private static CatalogEntry? Named(TradeCatalog catalog, string name) =>
        Living(catalog)
            .FirstOrDefault(e => string.Equals(e.Name, name, StringComparison.OrdinalIgnoreCase))
            .Entry;
}

/// <summary>A parcel as it is typed.</summary>
public sealed class ParcelDraft
{
    private readonly Parcel? kept;
    private readonly TradeCatalog catalog;

    /// <summary>Begins with a parcel; null for a new one.</summary>
    public ParcelDraft(Parcel? parcel, DispatchRules rules, TradeCatalog catalog)
    {
        (kept, this.catalog) = (parcel, catalog);
        Recipient = new("Recipient", parcel?.Recipient ?? "");
        Order = parcel?.Order;
        Region = parcel?.Region ?? rules.HomeRegion;
        Carrier = parcel?.Carrier ?? (rules.Carriers.Count > 0 ? rules.Carriers[0].Key : "");
        Hub = new("Place of the hub", parcel?.HubPlace ?? "");
        Place = new("Place it goes to", parcel?.DestinationPlace ?? "");
        Wished = parcel?.WishedDay;
        IsDepot = parcel?.IsDepotPickUp ?? false;
        Note = new("What to remember", parcel?.Note ?? "") { IsLong = true };
        Contents = [.. (parcel?.Contents ?? []).Select(c => new ContentDraft(c, catalog))];
        if (Contents.Count == 0)
        {
            Add();
        }
    }

    /// <summary>Recipient.</summary>
    public TypedText Recipient { get; }

    /// <summary>Number of the order; null for none.</summary>
    public int? Order { get; set; }

    /// <summary>Key of the region.</summary>
    public string Region { get; set; }

    /// <summary>Key of the carrier.</summary>
    public string Carrier { get; set; }

    /// <summary>Place of the hub.</summary>
    public TypedText Hub { get; }

    /// <summary>Place it goes to.</summary>
    public TypedText Place { get; }

    /// <summary>Wished day.</summary>
    public DateOnly? Wished { get; set; }

    /// <summary>True where it is picked up at the depot.</summary>
    public bool IsDepot { get; set; }

    /// <summary>What to remember.</summary>
    public TypedText Note { get; }

    /// <summary>What lives in it.</summary>
    public List<ContentDraft> Contents { get; }

    /// <summary>Fields in the order they are shown.</summary>
    public IReadOnlyList<TypedText> Fields => [Recipient, Place, Hub];

    /// <summary>One line more.</summary>
    public void Add() => Contents.Add(new(null, catalog));

    /// <summary>The parcel, or a sentence on what is wrong.</summary>
    public (Parcel? Parcel, string? Fault) Read()
    {
        var read = (
            kept
            ?? new Parcel
            {
                Number = 0,
                Recipient = "",
                Contents = [],
                Region = "",
                Carrier = "",
            }
        ) with
        {
            Recipient = Recipient.Required(),
            Order = Order,
            Region = Region,
            Carrier = Carrier,
            HubPlace = Hub.Free(),
            DestinationPlace = Place.Free(),
            WishedDay = Wished,
            IsDepotPickUp = IsDepot,
            Note = Note.Free(),
            Contents = [.. Contents.Select(c => c.Read(catalog))],
        };
        var fields = Fields.Append(Note).Concat(Contents.SelectMany(c => c.Fields.Append(c.What)));
        return fields.Any(f => f.Fault is not null)
                ? (null, "Some fields cannot be taken yet; each says why.")
            : read.Contents.Count == 0 ? (null, "Enter at least one animal, culture or plant.")
            : read.Carrier.Length == 0
                ? (null, "There is no carrier yet; enter one on the page Rules of dispatch.")
            : (read, null);
    }
}
