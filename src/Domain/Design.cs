using Litterfall.Domain.Keys;
using Litterfall.Domain.Lists;
using Litterfall.Domain.Units;

namespace Litterfall.Domain;

/// <summary>Everything a design file says; nothing is resolved or checked yet.</summary>
[Means("A planted vivarium: the box, its floor, its fittings and its inhabitants.")]
public sealed record Design
{
    /// <summary>Version of the file form.</summary>
    [Key("litterfall"), Means("Version of the file form; write 1."), Whole(1, 1)]
    public required int Version { get; init; }

    /// <summary>Name of the build.</summary>
    [Means("Name of the build, as on the build sheet.")]
    public required string Name { get; init; }

    /// <summary>Number issued to the tank.</summary>
    [Means("Number issued to the tank, 4 to 20 of 0-9 and A-Z; made from name and box if left out.")]
    public string? Tank { get; init; }

    /// <summary>Planting day.</summary>
    [Means("Planting day, as 2026-08-14; dates count from it.")]
    public DateOnly? Planted { get; init; }

    /// <summary>Kit or planted.</summary>
    [Means("Planted on the bench, or packed as a kit.")]
    public BuildForm Form { get; init; } = BuildForm.Planted;

    /// <summary>Number of equal boxes.</summary>
    [
        Means("How many equal boxes are built; quantities are for one, packs and cost for all."),
        Whole(1, 1000)
    ]
    public int Boxes { get; init; } = 1;

    /// <summary>The box.</summary>
    [Means("The glass box.")]
    public required Box Box { get; init; }

    /// <summary>Background.</summary>
    [Means("What covers the walls, or none.")]
    public Background? Background { get; init; }

    /// <summary>The floor.</summary>
    [Means("The layers of the floor from the base up.")]
    public required Floor Floor { get; init; }

    /// <summary>Wood and stone.</summary>
    [Means("Wood, cork and stone."), AtMost(PlausibleCounts.Pieces)]
    public Seq<HardscapePiece> Hardscape { get; init; } = [];

    /// <summary>Shelves inside the box.</summary>
    [Means("Shelves inside the box; what the box stands on is shelf."), AtMost(PlausibleCounts.Shelves)]
    public Seq<InsideShelf> Shelves { get; init; } = [];

    /// <summary>Lid.</summary>
    [Means("The lid of the opening on top, or none.")]
    public Lid? Lid { get; init; }

    /// <summary>Vents.</summary>
    [Means("Openings in walls or lid that let air through."), AtMost(PlausibleCounts.Vents)]
    public Seq<Vent> Vents { get; init; } = [];

    /// <summary>Drain.</summary>
    [Means("How water is taken out, or none.")]
    public Drain? Drain { get; init; }

    /// <summary>Misting.</summary>
    [Means("The misting system, or none for hand misting.")]
    public Misting? Misting { get; init; }

    /// <summary>Lamps.</summary>
    [Means("Lamps above the box."), AtMost(PlausibleCounts.Lamps)]
    public Seq<Lamp> Lamps { get; init; } = [];

    /// <summary>What is known of the light.</summary>
    [Means("What is known of the light inside: the state of the lid, a reading.")]
    public KnownLight? Light { get; init; }

    /// <summary>Plants.</summary>
    [
        Means(
            "Plants and where they sit; these lines times the lamps are at most "
                + PlausibleCounts.LampsTimesPlantsWords
                + "."
        ),
        AtMost(PlausibleCounts.PlantLines)
    ]
    public Seq<Planting> Plants { get; init; } = [];

    /// <summary>Clean-up crew.</summary>
    [Means("The clean-up crew to seed.")]
    public Seq<Inhabitant> Crew { get; init; } = [];

    /// <summary>Animals.</summary>
    [Means("The animals the box is for.")]
    public Seq<Resident> Animals { get; init; } = [];

    /// <summary>Animals a kit is rated for.</summary>
    [Means("Animals the box is rated for, where it is sold without them; judged as if they lived in it.")]
    public Seq<Resident> RatedFor { get; init; } = [];

    /// <summary>Day the animals move in.</summary>
    [Means("Day the animals move in, as 2026-09-25.")]
    public DateOnly? AnimalsIn { get; init; }

    /// <summary>Water cups for egg feeders.</summary>
    [Means("Water cups or film canisters hung for egg-feeding frogs."), Whole(0, 1000)]
    public int? WaterCups { get; init; }

    /// <summary>Open water as a share of the floor, where its basin is not described.</summary>
    [Means("Share of the floor that is open water, read as one basin that is assumed; better: basins.")]
    public Typed<Share>? WaterArea { get; init; }

    /// <summary>Basins of open water.</summary>
    [Means("Basins of open water in the floor."), AtMost(PlausibleCounts.Basins)]
    public Seq<Basin> Basins { get; init; } = [];

    /// <summary>Holes for cables and hoses.</summary>
    [Means("Holes for cables, hoses and tubes in walls, lid or barrier.")]
    public Seq<Passage> Passages { get; init; } = [];

    /// <summary>Heating.</summary>
    [Means("A heat mat or cable under the floor, or none.")]
    public Heating? Heating { get; init; }

    /// <summary>Fan.</summary>
    [Means("A small fan, or none.")]
    public Fan? Fan { get; init; }

    /// <summary>Fogger.</summary>
    [Means("An ultrasonic fogger, or none.")]
    public Fogger? Fogger { get; init; }

    /// <summary>Electrical protection.</summary>
    [Means("How the electrical parts are protected.")]
    public Electrics? Electrics { get; init; }

    /// <summary>Room.</summary>
    [Means("The room the box stands in.")]
    public Room? Room { get; init; }

    /// <summary>Constant headspace.</summary>
    [Means("Replaces the climate model by constants.")]
    public Headspace? Headspace { get; init; }

    /// <summary>Keeper's habits.</summary>
    [Means("What the keeper does and how often.")]
    public Habits? Habits { get; init; }

    /// <summary>Shelf or stand.</summary>
    [Means("What the box stands on.")]
    public Shelf? Shelf { get; init; }

    /// <summary>State at the start.</summary>
    [Means("A box that already runs: how its floor stands when the forecast begins.")]
    public Running? Start { get; init; }

    /// <summary>Plant hygiene.</summary>
    [Means("What is used to clean plants and tools.")]
    public Hygiene? Hygiene { get; init; }

    /// <summary>Findings that are accepted.</summary>
    [Means("Findings that are accepted, each with a reason."), AtMost(PlausibleCounts.Acceptances)]
    public Seq<Acceptance> Accepted { get; init; } = [];

    /// <summary>What the maker wants remembered with the build; printed on the build sheet.</summary>
    [Means("Notes of the maker, one to a line; printed on the build sheet."), AtMost(PlausibleCounts.Notes)]
    public Seq<string> Notes { get; init; } = [];

    /// <summary>Names of picture files.</summary>
    [Means("Photos of the tank or its place, names of picture files."), AtMost(PlausibleCounts.Photos)]
    public Seq<string> Photos { get; init; } = [];

    /// <summary>Workshop folder.</summary>
    [Means("Folder with the workshop's own entries and prices, seen from this file; or none.")]
    public string? Workshop { get; init; }
}

/// <summary>Planted here, or packed as a kit.</summary>
public enum BuildForm
{
    /// <summary>Planted on the bench.</summary>
    Planted,

    /// <summary>Packed to be built by the customer.</summary>
    Kit,
}

/// <summary>A finding that somebody accepts, and why.</summary>
[Means("A finding that is accepted, and why; a stop that protects an animal or a person cannot be.")]
public sealed record Acceptance
{
    /// <summary>Name of the finding.</summary>
    [Means("Name of the finding, as in a check.")]
    public required string Finding { get; init; }

    /// <summary>Which of several like findings.</summary>
    [Means("The part or key it speaks of, where one of several like findings is meant, as plants[2].")]
    public string? For { get; init; }

    /// <summary>Why.</summary>
    [Means("Why it is accepted.")]
    public required string Reason { get; init; }

    /// <summary>When.</summary>
    [Means("Day it was accepted, as 2026-08-14.")]
    public required DateOnly On { get; init; }

    /// <summary>By whom.</summary>
    [Means("Who accepted it.")]
    public string? By { get; init; }
}
