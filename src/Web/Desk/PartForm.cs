using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Domain.DesignFile;

namespace Litterfall.Web.Desk;

/// <summary>How a field is filled in.</summary>
public enum FieldForm
{
    /// <summary>A quantity with its unit, as typed.</summary>
    Quantity,

    /// <summary>A whole number.</summary>
    Whole,

    /// <summary>Text.</summary>
    Text,

    /// <summary>A day.</summary>
    Day,

    /// <summary>A time of day.</summary>
    Time,

    /// <summary>Yes or no.</summary>
    Flag,

    /// <summary>One of several words.</summary>
    Choice,

    /// <summary>An entry of the library.</summary>
    Entry,

    /// <summary>Name of a file that was brought to the bench.</summary>
    File,
}

/// <summary>A field of a part.</summary>
/// <param name="Path">Path in the design.</param>
/// <param name="Label">What it is.</param>
/// <param name="Form">How it is filled in.</param>
/// <param name="Of">Kinds of the library, or the words to choose from.</param>
public sealed record PartField(string Path, string Label, FieldForm Form, params ImmutableArray<string> Of);

/// <summary>A part of the design with its fields.</summary>
/// <param name="Key">Its key, such as "plants[0]"; what is not there yet has none of its fields.</param>
/// <param name="Name">What it is called.</param>
/// <param name="IsThere">True where the design has it.</param>
/// <param name="CanGo">True where it may be taken away.</param>
/// <param name="Fields">Its fields.</param>
public sealed partial record PartForm(
    string Key,
    string Name,
    bool IsThere,
    bool CanGo,
    ImmutableArray<PartField> Fields
)
{
    /// <summary>
    /// The part in flow form that it begins with where it is not there; null where it has none.
    /// </summary>
    public string? Begin { get; init; }

    /// <summary>All parts of a design, in the order of building.</summary>
    /// <param name="document">The design.</param>
    public static ImmutableArray<PartForm> Of(DesignDocument document) =>
        [
            Build(document),
            Box(document),
            .. Floor(document),
            .. Walls(document),
            .. Openings(document),
            .. Inside(document),
            .. Misting(document),
            .. Lamps(document),
            .. Living(document),
            .. Around(document),
        ];

    private static ImmutableArray<PartForm> Walls(DesignDocument document) =>
        [
            Part(
                document,
                "background",
                "Background",
                true,
                "{ material: cork-tile, thickness: 2 cm }",
                new("material", "material", FieldForm.Entry, "background"),
                new("thickness", "thickness", FieldForm.Quantity)
            ),
            .. Items(
                document,
                "hardscape",
                "Wood and stone",
                document.Design.Hardscape.Select(h => h.Material),
                "{ material: cork-bark, mass: 0.5 kg }",
                new("material", "material", FieldForm.Entry, "hardscape"),
                new("mass", "weight", FieldForm.Quantity),
                new("buried", "buried share", FieldForm.Quantity),
                new("at.x", "from the left", FieldForm.Quantity),
                new("at.y", "from the front", FieldForm.Quantity)
            ),
        ];

    private static ImmutableArray<PartForm> Lamps(DesignDocument document) =>
        [
            .. Items(
                document,
                "lamps",
                "Lamp",
                document.Design.Lamps.Select(l => l.Kind),
                "{ lamp: led-bar-6500k, lumens: 2000, watts: 18, above: 3 cm, on: \"08:00\", off: "
                    + "\"20:00\" }",
                new("lamp", "lamp", FieldForm.Entry, "lamp"),
                new("lumens", "lumens", FieldForm.Quantity),
                new("watts", "watts", FieldForm.Quantity),
                new("above", "height over the lid", FieldForm.Quantity),
                new("on", "on", FieldForm.Time),
                new("off", "off", FieldForm.Time),
                new("ramp", "dawn and dusk", FieldForm.Quantity),
                new("at.x", "its middle from the left", FieldForm.Quantity),
                new("at.y", "its middle from the front", FieldForm.Quantity),
                new("turn", "turned by", FieldForm.Quantity),
                new("file", "measured luminaire file", FieldForm.File),
                new("spectrum", "spectrum file", FieldForm.File)
            ),
        ];

    private static ImmutableArray<PartForm> Living(DesignDocument document) =>
        [
            .. Items(
                document,
                "plants",
                "Plant",
                document.Design.Plants.Select(p => p.Kind),
                "{ plant: fittonia-albivenis, count: 1 }",
                new("plant", "plant", FieldForm.Entry, "plant"),
                new("count", "how many", FieldForm.Whole),
                new("mounted", "on wood or background", FieldForm.Flag),
                new("at.x", "from the left", FieldForm.Quantity),
                new("at.y", "from the front", FieldForm.Quantity),
                new("at.z", "height of its foot", FieldForm.Quantity)
            ),
            .. Items(
                document,
                "crew",
                "Crew",
                document.Design.Crew.Select(c => c.Kind),
                "{ animal: folsomia-candida, count: 400 }",
                new("animal", "animal", FieldForm.Entry, "crew"),
                new("count", "how many", FieldForm.Whole)
            ),
            .. Items(
                document,
                "animals",
                "Animals",
                document.Design.Animals.Select(a => a.Kind),
                "{ animal: dendrobates-leucomelas, count: 3 }",
                new("animal", "animal", FieldForm.Entry, "animal"),
                new("count", "how many", FieldForm.Whole),
                new("males", "males", FieldForm.Whole),
                new("females", "females", FieldForm.Whole),
                new("quarantined", "quarantine so far", FieldForm.Quantity)
            ),
        ];

    private static ImmutableArray<PartForm> Around(DesignDocument document) =>
        [
            Part(
                document,
                "room",
                "Room",
                true,
                "{ temperature: 21 C, swing: 2 K, humidity: 50 % }",
                new("temperature", "mean temperature", FieldForm.Quantity),
                new("swing", "swing by day and night", FieldForm.Quantity),
                new("humidity", "humidity", FieldForm.Quantity)
            ),
            Part(
                document,
                "habits",
                "Habits",
                true,
                "{ levelCheck: 7 d }",
                new("levelCheck", "level read every", FieldForm.Quantity),
                new("feeding", "fed every", FieldForm.Quantity),
                new("away", "longest away", FieldForm.Quantity),
                new("handMist", "misted by hand a day", FieldForm.Quantity)
            ),
        ];

    private static PartForm Build(DesignDocument document) =>
        new(
            "name",
            "Build",
            true,
            false,
            [
                new("name", "name", FieldForm.Text),
                new("planted", "planting day", FieldForm.Day),
                new("boxes", "equal boxes", FieldForm.Whole),
                new("animalsIn", "animals in on", FieldForm.Day),
            ]
        );

    private static PartForm Box(DesignDocument document)
    {
        var frame = document.Design.Box.Outside is null ? "inside" : "outside";
        return new(
            "box",
            "Box",
            true,
            false,
            [
                new($"box.{frame}.length", $"{frame} length", FieldForm.Quantity),
                new($"box.{frame}.depth", $"{frame} depth", FieldForm.Quantity),
                new($"box.{frame}.height", $"{frame} height", FieldForm.Quantity),
                new("box.glass.walls", "glass of the walls", FieldForm.Quantity),
                new("box.opening", "opens", FieldForm.Choice, "top", "front"),
                new("box.sill", "height of the sill", FieldForm.Quantity),
            ]
        );
    }

    private static IEnumerable<PartForm> Floor(DesignDocument document)
    {
        var floor = document.Design.Floor;
        yield return floor.Drainage?.Raised is not null
            ? Part(
                document,
                "floor.drainage",
                "Raised floor",
                true,
                null,
                new PartField("raised", "height", FieldForm.Quantity)
            )
            : Part(
                document,
                "floor.drainage",
                "Drainage layer",
                true,
                "{ material: expanded-clay-8-16, depth: 5 cm }",
                new("material", "material", FieldForm.Entry, "aggregate"),
                new("depth", "depth", FieldForm.Quantity)
            );
        yield return Part(
            document,
            "floor.barrier",
            "Barrier mesh",
            true,
            "{ material: glass-fibre-screen, upturn: 15 mm }",
            new("material", "material", FieldForm.Entry, "mesh"),
            new("upturn", "upturn", FieldForm.Quantity)
        );
        yield return Soil(document);
        yield return Part(
            document,
            "floor.moss",
            "Moss",
            true,
            "{ material: sheet-moss, depth: 2 cm, cover: 30 % }",
            new("material", "material", FieldForm.Entry, "moss"),
            new("depth", "depth", FieldForm.Quantity),
            new("cover", "share covered", FieldForm.Quantity)
        );
        yield return Part(
            document,
            "floor.litter",
            "Leaf litter",
            true,
            "{ material: oak-leaves, depth: 3 cm }",
            new("material", "leaves", FieldForm.Entry, "litter"),
            new("depth", "depth", FieldForm.Quantity)
        );
    }

    private static PartForm Soil(DesignDocument document)
    {
        var tilted = document.Design.Floor.Soil is { Front: not null };
        return Part(
            document,
            "floor.soil",
            "Soil",
            false,
            "{ recipe: standard-rainforest, depth: 7 cm }",
            [
                new("recipe", "mix", FieldForm.Entry, "recipe"),
                .. tilted
                    ? new PartField[]
                    {
                        new("front", "depth in front", FieldForm.Quantity),
                        new("back", "depth at the back", FieldForm.Quantity),
                    }
                    : [new("depth", "depth", FieldForm.Quantity)],
                new("settling", "settling", FieldForm.Quantity),
            ]
        );
    }

    private static IEnumerable<PartForm> Misting(DesignDocument document)
    {
        var times = document.Design.Misting?.Times.Count ?? 0;
        yield return Part(
            document,
            "misting",
            "Misting",
            true,
            "{ nozzles: 2, each: 85 mL/min, times: [ { at: \"08:00\", for: 15 s }, { at: \"20:00\", for: "
                + "20 s } ] }",
            [
                new("nozzles", "nozzles", FieldForm.Whole),
                new("each", "each gives", FieldForm.Quantity),
                .. Enumerable
                    .Range(0, times)
                    .SelectMany(i =>
                        new PartField[]
                        {
                            new(
                                FormattableString.Invariant($"times[{i}].at"),
                                $"mist {i + 1} at",
                                FieldForm.Time
                            ),
                            new(
                                FormattableString.Invariant($"times[{i}].for"),
                                $"mist {i + 1} for",
                                FieldForm.Quantity
                            ),
                        }
                    ),
            ]
        );
        if (document.Design.Misting is not null)
        {
            yield return Part(
                document,
                "misting.hose",
                "Mist hose",
                true,
                "{ length: 2 m, bore: 4 mm }",
                new("length", "length of all hose", FieldForm.Quantity),
                new("bore", "inner diameter", FieldForm.Quantity),
                new("fill", "pump's flow into the empty hose", FieldForm.Quantity),
                new("checkValve", "a check valve keeps it full", FieldForm.Flag)
            );
        }
    }

    private static PartForm Part(
        DesignDocument document,
        string key,
        string name,
        bool canGo,
        string? begin,
        params ImmutableArray<PartField> fields
    )
    {
        var isThere = document.Spans.Keys.Any(s => s.StartsWith(key + ".", StringComparison.Ordinal));
        return new(key, name, isThere, canGo, [.. fields.Select(f => f with { Path = $"{key}.{f.Path}" })])
        {
            Begin = begin,
        };
    }

    private static IEnumerable<PartForm> Items(
        DesignDocument document,
        string key,
        string name,
        IEnumerable<string> kinds,
        string begin,
        params ImmutableArray<PartField> fields
    )
    {
        var i = 0;
        foreach (var kind in kinds)
        {
            var at = string.Create(CultureInfo.InvariantCulture, $"{key}[{i++}]");
            yield return new(
                at,
                $"{name} {i}",
                true,
                true,
                [.. fields.Select(f => f with { Path = $"{at}.{f.Path}" })]
            );
        }

        yield return new(key, name, false, false, []) { Begin = begin };
    }
}
