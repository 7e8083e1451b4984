using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Domain;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.DesignFile;

namespace Litterfall.Web.Desk.Form;

/// <summary>
/// All parts of a design with all their fields, made from the keys of the design file: a key that is new
/// there is a field here, or fails a test.
/// </summary>
public static class FormBook
{
    /// <summary>The part of what belongs to the build as a whole.</summary>
    public const string OrderKey = "order";

    /// <summary>The part of water that animals need.</summary>
    public const string WaterKey = "water";

    private const string NotesKey = "notes";
    private static readonly CultureInfo Plain = CultureInfo.InvariantCulture;

    /// <summary>All parts of a design, those that can be added too, in the order of the strip.</summary>
    /// <param name="document">The design.</param>
    public static ImmutableArray<PartForm> Of(DesignDocument document) =>
        [
            Root(OrderKey, "Order", PartGroup.Order, Order),
            Single(document, "habits", typeof(Habits), PartGroup.Order),
            Root(NotesKey, "Notes and photos", PartGroup.Order, ["notes", "photos"]),
            .. Parts(document),
        ];

    /// <summary>The part that has a path, or holds what is at it; null where none does.</summary>
    /// <param name="document">The design.</param>
    /// <param name="path">A path of the design, such as "floor.soil.depth".</param>
    public static PartForm? Find(DesignDocument document, string path)
    {
        var parts = Of(document);
        return parts.FirstOrDefault(p => p.AllFields.Any(f => f.Path == path))
            ?? parts
                .Where(p => path == p.Key || IsBelow(path, p.Key))
                .OrderByDescending(p => p.Key.Length)
                .FirstOrDefault()
            // What is not there yet is added under the name of its list.
            ?? parts.FirstOrDefault(p => !p.IsThere && path.StartsWith(p.Key, StringComparison.Ordinal));
    }

    private static readonly ImmutableArray<string> Order =
    [
        "name",
        "planted",
        "animalsIn",
        "boxes",
        "form",
        "tank",
        "workshop",
    ];

    private static bool IsBelow(string path, string key) =>
        path.StartsWith(key + ".", StringComparison.Ordinal)
        || path.StartsWith(key + "[", StringComparison.Ordinal);

    private static IEnumerable<PartForm> Parts(DesignDocument document) =>
        [
            Box(document),
            .. Doors(document),
            Single(document, "lid", typeof(Lid), PartGroup.Box),
            Single(document, "background", typeof(Background), PartGroup.Box),
            .. Several(document, "passages", typeof(Passage), PartGroup.Box),
            .. Several(document, "shelves", typeof(InsideShelf), PartGroup.Box),
            .. Floor(document),
            .. Several(document, "hardscape", typeof(HardscapePiece), PartGroup.Floor),
            .. Several(document, "basins", typeof(Basin), PartGroup.Floor),
            Single(document, "start", typeof(Domain.Running), PartGroup.Floor),
            .. Several(document, "vents", typeof(Vent), PartGroup.Air),
            Single(document, "misting", typeof(Misting), PartGroup.Air),
            .. document.Design.Misting is null
                ? Array.Empty<PartForm>()
                : [Single(document, "misting.hose", typeof(MistHose), PartGroup.Air)],
            Single(document, "drain", typeof(Drain), PartGroup.Air),
            Single(document, "fogger", typeof(Fogger), PartGroup.Air),
            Single(document, "fan", typeof(Fan), PartGroup.Air),
            Single(document, "heating", typeof(Heating), PartGroup.Air),
            Single(document, "headspace", typeof(Headspace), PartGroup.Air),
            .. Several(document, "lamps", typeof(Lamp), PartGroup.Light),
            Single(document, "light", typeof(KnownLight), PartGroup.Light),
            .. Several(document, "plants", typeof(Planting), PartGroup.Plants),
            Single(document, "hygiene", typeof(Hygiene), PartGroup.Plants),
            .. Several(document, "animals", typeof(Resident), PartGroup.Animals),
            .. Several(document, "ratedFor", typeof(Resident), PartGroup.Animals),
            .. Several(document, "crew", typeof(Inhabitant), PartGroup.Animals),
            Root(WaterKey, "Water for the animals", PartGroup.Animals, ["waterCups", "waterArea"]),
            Single(document, "room", typeof(Room), PartGroup.Room),
            Single(document, "shelf", typeof(Shelf), PartGroup.Room),
            Single(document, "electrics", typeof(Electrics), PartGroup.Room),
        ];

    private static PartForm Root(string key, string name, PartGroup group, ImmutableArray<string> keys) =>
        new(key, name, group)
        {
            Fields = [.. keys.Select(k => Field(DesignKeys.Of(typeof(Design)).First(d => d.Name == k), k))],
        };

    private static PartForm Box(DesignDocument document)
    {
        var frame = document.Design.Box.Outside is null ? "inside" : "outside";
        return new("box", "Box", PartGroup.Box)
        {
            Fields =
            [
                new("box.frame", "Measured", FieldForm.Switch) { Switch = FormSwitch.Frame },
                .. FieldsOf(typeof(Edges), $"box.{frame}"),
                .. FieldsOf(typeof(Domain.Box), "box"),
            ],
        };
    }

    /// <summary>Only where the box opens in front.</summary>
    private static IEnumerable<PartForm> Doors(DesignDocument document) =>
        document.Design.Box.Opening == Opening.Front || document.Design.Box.Doors is not null
            ? [Single(document, "box.doors", typeof(Doors), PartGroup.Box)]
            : [];

    private static IEnumerable<PartForm> Floor(DesignDocument document)
    {
        var drainage = Single(document, "floor.drainage", typeof(DrainageLayer), PartGroup.Floor);
        var isRaised = document.Design.Floor.Drainage?.Raised is not null;
        string[] other = isRaised ? ["material", "depth", "loss"] : ["raised", "grid"];
        yield return drainage with
        {
            Fields =
            [
                new("floor.drainage.kind", "Kind", FieldForm.Switch) { Switch = FormSwitch.Drainage },
                .. drainage.Fields.Where(f => !other.Contains(f.Key!.Name)),
            ],
        };
        yield return Single(document, "floor.barrier", typeof(Domain.Barrier), PartGroup.Floor);
        yield return Soil(document);
        yield return Single(document, "floor.moss", typeof(MossLayer), PartGroup.Floor);
        yield return Single(document, "floor.litter", typeof(LeafLitter), PartGroup.Floor);
    }

    private static PartForm Soil(DesignDocument document)
    {
        var soil = Single(document, "floor.soil", typeof(SoilLayer), PartGroup.Floor);
        var now = document.Design.Floor.Soil;
        string[] other =
            now is { Zones.Count: > 0 } ? ["depth", "front", "back"]
            : now is { Front: not null } or { Back: not null } ? ["depth"]
            : ["front", "back"];
        return soil with
        {
            Fields =
            [
                .. soil.Fields.Take(1),
                new("floor.soil.shape", "Surface", FieldForm.Switch) { Switch = FormSwitch.Soil },
                .. soil.Fields.Skip(1).Where(f => !other.Contains(f.Key!.Name)),
            ],
            Sections = now is { Zones.Count: > 0 } ? soil.Sections : [],
        };
    }

    private static PartForm Single(DesignDocument document, string key, Type type, PartGroup group)
    {
        var isThere = document.Spans.Keys.Any(s => s.StartsWith(key + ".", StringComparison.Ordinal));
        return new(key, NameOf(key), group)
        {
            IsThere = isThere,
            CanGo = isThere,
            Begin = FormBegin.Of(key),
            Fields = isThere ? [.. FieldsOf(type, key)] : [],
            Sections = isThere ? [.. FormSections.Of(document, type, key)] : [],
        };
    }

    private static IEnumerable<PartForm> Several(
        DesignDocument document,
        string key,
        Type type,
        PartGroup group
    )
    {
        var name = NameOf(key);
        var entry = DesignKeys.Of(type).FirstOrDefault(k => k.Form == KeyForm.Entry && k.IsRequired);
        for (var i = 0; document.Spans.ContainsKey(At(key, i)); i++)
        {
            var at = At(key, i);
            yield return new(at, string.Create(Plain, $"{name} {i + 1}"), group)
            {
                CanGo = true,
                IsList = true,
                EntryKey = entry is null ? null : $"{at}.{entry.Name}",
                Fields = [.. FieldsOf(type, at)],
                Sections = [.. FormSections.Of(document, type, at)],
            };
        }

        yield return new(key, name, group)
        {
            IsThere = false,
            IsList = true,
            Begin = FormBegin.Of(key),
            Kinds = entry is null ? [] : [.. entry.Kinds.Select(k => k.Word())],
        };
    }

    private static string At(string key, int i) => string.Create(Plain, $"{key}[{i}]");

    /// <summary>What the last key of a path is called.</summary>
    private static string NameOf(string key) =>
        key switch
        {
            "box.doors" => FormWords.Of(Key(typeof(Domain.Box), "doors"))!,
            "misting.hose" => FormWords.Of(Key(typeof(Misting), "hose"))!,
            _ when key.StartsWith("floor.", StringComparison.Ordinal) => FormWords.Of(
                Key(typeof(Domain.Floor), key[6..])
            )!,
            _ => FormWords.Of(Key(typeof(Design), key))!,
        };

    private static DesignKey Key(Type owner, string name) => DesignKeys.Of(owner).First(k => k.Name == name);

    /// <summary>Fields of a record: its own values, and those of records that are places or glass.</summary>
    internal static IEnumerable<PartField> FieldsOf(Type type, string path)
    {
        foreach (var key in DesignKeys.Of(type))
        {
            var at = path.Length == 0 ? key.Name : $"{path}.{key.Name}";
            if (key.Record is null)
            {
                yield return Field(key, at);
            }
            else if (IsInline(key))
            {
                foreach (var field in FieldsOf(key.Record, at))
                {
                    yield return field;
                }
            }
        }
    }

    /// <summary>A place, the glass and constant air have no title of their own.</summary>
    internal static bool IsInline(DesignKey key) =>
        !key.IsList
        && (
            key.Record == typeof(Place)
            || key.Record == typeof(OverBox)
            || key.Record == typeof(Glass)
            || key.Record == typeof(HeldAir)
        );

    private static PartField Field(DesignKey key, string path) =>
        new(path, FormWords.Of(key) ?? key.Name, FormOf(key)) { Key = key, IsRare = FormWords.IsRare(key) };

    private static FieldForm FormOf(DesignKey key) =>
        key.Form switch
        {
            KeyForm.Quantity => key.IsList ? FieldForm.Readings : FieldForm.Quantity,
            KeyForm.Whole => FieldForm.Whole,
            KeyForm.Day => FieldForm.Day,
            KeyForm.Time => FieldForm.Time,
            KeyForm.Flag => FieldForm.Flag,
            KeyForm.Choice => key.IsList ? FieldForm.Checks : FieldForm.Choice,
            KeyForm.Entry => FieldForm.Entry,
            _ => (key.Owner.Name, key.Name) switch
            {
                ("Design", "photos") => FieldForm.Photos,
                ("Lamp", "file" or "spectrum") or ("Room", "log") => FieldForm.File,
                _ when key.IsList => FieldForm.Lines,
                _ => FieldForm.Text,
            },
        };
}
