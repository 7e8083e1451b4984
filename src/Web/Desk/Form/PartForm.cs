using System.Collections.Immutable;
using Litterfall.Domain.DesignFile;

namespace Litterfall.Web.Desk.Form;

/// <summary>Where a part stands in the strip of parts.</summary>
public enum PartGroup
{
    /// <summary>Name, number, dates, care, notes.</summary>
    Order,

    /// <summary>Panes, lid, doors, holes.</summary>
    Box,

    /// <summary>Layers, wood and stone, basins.</summary>
    Floor,

    /// <summary>Vents, mist, fog, heat, drain.</summary>
    Air,

    /// <summary>Lamps and what is known of the light.</summary>
    Light,

    /// <summary>Plants and how they are cleaned.</summary>
    Plants,

    /// <summary>Animals and what cleans up after them.</summary>
    Animals,

    /// <summary>Room, stand, electricity.</summary>
    Room,
}

/// <summary>How a field is filled in.</summary>
public enum FieldForm
{
    /// <summary>A quantity with its unit.</summary>
    Quantity,

    /// <summary>Up to three readings of one edge.</summary>
    Readings,

    /// <summary>A whole number.</summary>
    Whole,

    /// <summary>Text.</summary>
    Text,

    /// <summary>Several lines of text.</summary>
    Lines,

    /// <summary>A day.</summary>
    Day,

    /// <summary>A time of day.</summary>
    Time,

    /// <summary>Yes or no.</summary>
    Flag,

    /// <summary>One of several words.</summary>
    Choice,

    /// <summary>Any of several words.</summary>
    Checks,

    /// <summary>An entry of the library.</summary>
    Entry,

    /// <summary>Name of a file that was brought to the bench.</summary>
    File,

    /// <summary>Names of pictures that were brought to the bench.</summary>
    Photos,

    /// <summary>One of several ways to write the same thing.</summary>
    Switch,
}

/// <summary>A field of a part.</summary>
/// <param name="Path">Path in the design.</param>
/// <param name="Label">What it is.</param>
/// <param name="Form">How it is filled in.</param>
public sealed record PartField(string Path, string Label, FieldForm Form)
{
    /// <summary>The key it writes; null for a switch.</summary>
    public DesignKey? Key { get; init; }

    /// <summary>The ways it may be written; null where it is no switch.</summary>
    public FormSwitch? Switch { get; init; }

    /// <summary>True where few need it.</summary>
    public bool IsRare { get; init; }

    /// <summary>What it must not be without: it cannot be emptied.</summary>
    public bool IsRequired => Key?.IsRequired == true;
}

/// <summary>Fields that belong together below a part.</summary>
/// <param name="Path">Path of their record or list.</param>
/// <param name="Title">What it is.</param>
/// <param name="Fields">Its fields; empty where it is not there yet.</param>
public sealed record PartSection(string Path, string Title, ImmutableArray<PartField> Fields)
{
    /// <summary>Sections below it.</summary>
    public ImmutableArray<PartSection> Sections { get; init; } = [];

    /// <summary>What it begins with, in flow form, where it must be added first; null elsewhere.</summary>
    public string? Begin { get; init; }

    /// <summary>True where adding makes one more of a list.</summary>
    public bool IsList { get; init; }

    /// <summary>True where it can be removed.</summary>
    public bool CanGo { get; init; }

    /// <summary>True where it is shown at once, not behind its title.</summary>
    public bool IsOpen { get; init; }

    /// <summary>True where its sections are rows of a table with the same columns.</summary>
    public bool IsTable { get; init; }
}

/// <summary>A part of the design with its fields.</summary>
/// <param name="Key">Its path, such as "plants[0]"; the list where one may be added.</param>
/// <param name="Name">What it is called.</param>
/// <param name="Group">Where it stands.</param>
public sealed record PartForm(string Key, string Name, PartGroup Group)
{
    /// <summary>True where the design has it.</summary>
    public bool IsThere { get; init; } = true;

    /// <summary>True where it may be taken away.</summary>
    public bool CanGo { get; init; }

    /// <summary>True where it is one more of a list.</summary>
    public bool IsList { get; init; }

    /// <summary>What it begins with, in flow form; null where it begins by itself.</summary>
    public string? Begin { get; init; }

    /// <summary>
    /// Kinds of the library from which one more is chosen; empty where there is nothing to choose.
    /// </summary>
    public ImmutableArray<string> Kinds { get; init; } = [];

    /// <summary>The key that names its entry of the library; null where it has none.</summary>
    public string? EntryKey { get; init; }

    /// <summary>Its fields.</summary>
    public ImmutableArray<PartField> Fields { get; init; } = [];

    /// <summary>Its sections.</summary>
    public ImmutableArray<PartSection> Sections { get; init; } = [];

    /// <summary>All fields, those of its sections too.</summary>
    public IEnumerable<PartField> AllFields => Fields.Concat(Sections.SelectMany(Below));

    /// <summary>Sections that begin with something, those below sections too.</summary>
    public IEnumerable<PartSection> AllSections => Sections.SelectMany(s => s.Sections.Prepend(s));

    private static IEnumerable<PartField> Below(PartSection section) =>
        section.Fields.Concat(section.Sections.SelectMany(Below));
}
