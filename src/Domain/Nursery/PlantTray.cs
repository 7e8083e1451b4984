using Litterfall.Domain.Lists;

namespace Litterfall.Domain.Nursery;

/// <summary>How plants of a tray came to be.</summary>
public enum TrayOrigin
{
    /// <summary>Bought.</summary>
    Bought,

    /// <summary>Cut from a mother plant of the workshop.</summary>
    Cutting,

    /// <summary>Divided, or offsets taken from a mother plant of the workshop.</summary>
    Division,
}

/// <summary>A look at a tray with a lens, roots too.</summary>
/// <param name="Day">Day.</param>
/// <param name="Found">Snails, scale, mites, nematodes as they were found; empty for nothing.</param>
/// <param name="Who">Who looked.</param>
public sealed record TrayInspection(DateOnly Day, string Found, string Who);

/// <summary>A dip.</summary>
/// <param name="Day">Day.</param>
/// <param name="Label">Strength on the label of the bleach, percent; null where another bath was
/// used.</param>
/// <param name="Minutes">How long.</param>
/// <param name="Who">Who dipped.</param>
public sealed record TrayDip(DateOnly Day, double? Label, double Minutes, string Who);

/// <summary>Plants that died.</summary>
/// <param name="Day">Day.</param>
/// <param name="Plants">How many.</param>
/// <param name="Why">In words.</param>
/// <param name="Who">Who took them out.</param>
public sealed record TrayDeath(DateOnly Day, int Plants, string Why, string Who);

/// <summary>Plants that came or were cut at one time and stand together: one lot.</summary>
public sealed record PlantTray
{
    /// <summary>Number on its label; that of its lot.</summary>
    public required string Number { get; init; }

    /// <summary>Catalog key of the plant.</summary>
    public required string Plant { get; init; }

    /// <summary>How they came to be.</summary>
    public required TrayOrigin Origin { get; init; }

    /// <summary>Key of the supplier; null for plants of the workshop.</summary>
    public string? Supplier { get; init; }

    /// <summary>Mother plant they were cut from; null for bought ones.</summary>
    public string? Mother { get; init; }

    /// <summary>Day they came or were cut.</summary>
    public required DateOnly Since { get; init; }

    /// <summary>Plants or cuttings on the first day.</summary>
    public required int Plants { get; init; }

    /// <summary>Key of the bench.</summary>
    public required string Bench { get; init; }

    /// <summary>Place on the bench, 1 for the first.</summary>
    public int Place { get; init; } = 1;

    /// <summary>Days in quarantine; 0 for plants that never left the workshop.</summary>
    public int QuarantineDays { get; init; }

    /// <summary>Looks, oldest first.</summary>
    public Seq<TrayInspection> Inspections { get; init; } = [];

    /// <summary>Dips, oldest first.</summary>
    public Seq<TrayDip> Dips { get; init; } = [];

    /// <summary>Deaths, oldest first.</summary>
    public Seq<TrayDeath> Deaths { get; init; } = [];

    /// <summary>Day rooted cuttings were potted; null before.</summary>
    public DateOnly? Potted { get; init; }

    /// <summary>Day they came out of quarantine; null before.</summary>
    public DateOnly? Released { get; init; }

    /// <summary>Day the tray was emptied: all planted, sold or thrown away; null before.</summary>
    public DateOnly? Emptied { get; init; }

    /// <summary>Plants that died.</summary>
    public int Died => Deaths.Sum(d => d.Plants);

    /// <summary>True while the tray stands.</summary>
    public bool IsStanding => Emptied is null && Died < Plants;

    /// <summary>True while the plants are kept apart.</summary>
    public bool IsInQuarantine => QuarantineDays > 0 && Released is null && IsStanding;
}
