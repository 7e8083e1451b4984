using Litterfall.Domain.Lists;

namespace Litterfall.Domain.Cultures;

/// <summary>How a culture was counted.</summary>
public enum CountWay
{
    /// <summary>Every animal.</summary>
    All,

    /// <summary>A spoonful or a square, times what it is of the whole.</summary>
    Sample,

    /// <summary>Judged by eye.</summary>
    Eye,
}

/// <summary>Why a culture was ended.</summary>
public enum CultureEnd
{
    /// <summary>Mites.</summary>
    Mites,

    /// <summary>Mold that does not go.</summary>
    Mold,

    /// <summary>It dried.</summary>
    Dried,

    /// <summary>It got too warm.</summary>
    Heat,

    /// <summary>It is sour, or smells of ammonia.</summary>
    Sour,

    /// <summary>It is old and gives little.</summary>
    Old,

    /// <summary>It went out whole, to an order or into a tank.</summary>
    GoneOut,
}

/// <summary>Animals that were counted.</summary>
/// <param name="Day">Day.</param>
/// <param name="Animals">Animals that walk: hatched young and adults; eggs are not counted.</param>
/// <param name="Way">How.</param>
/// <param name="Who">Who counted.</param>
public sealed record CultureCount(DateOnly Day, double Animals, CountWay Way, string Who);

/// <summary>Food or water that was given.</summary>
/// <param name="Day">Day.</param>
/// <param name="What">What, in words.</param>
/// <param name="Who">Who gave it.</param>
public sealed record CultureFeeding(DateOnly Day, string What, string Who);

/// <summary>A look without a change: smell, mold, mites under a lens, damp.</summary>
/// <param name="Day">Day.</param>
/// <param name="Found">What was seen; empty for nothing wrong.</param>
/// <param name="Who">Who looked.</param>
public sealed record CultureLook(DateOnly Day, string Found, string Who);

/// <summary>Animals that were taken out to be used.</summary>
/// <param name="Day">Day.</param>
/// <param name="Animals">Animals that walk.</param>
/// <param name="Into">Order or tank they went to, in words.</param>
/// <param name="Who">Who took them.</param>
public sealed record CultureHarvest(DateOnly Day, double Animals, string Into, string Who);

/// <summary>A share that went into a new culture.</summary>
/// <param name="Day">Day.</param>
/// <param name="Daughter">Number of the new culture.</param>
/// <param name="Share">Share of what was in it, 0 to 1.</param>
/// <param name="Who">Who split it.</param>
public sealed record CultureSplit(DateOnly Day, string Daughter, double Share, string Who);

/// <summary>The end of a culture.</summary>
/// <param name="Day">Day.</param>
/// <param name="Reason">Why.</param>
/// <param name="Note">In words.</param>
/// <param name="Who">Who ended it.</param>
public sealed record CultureEnding(DateOnly Day, CultureEnd Reason, string Note, string Who);

/// <summary>
/// One cup, tub or jar of animals that breed: springtails, isopods or feeder flies. It is one piece of the
/// lot of its number.
/// </summary>
public sealed record Culture
{
    /// <summary>Number on its label; that of its lot.</summary>
    public required string Number { get; init; }

    /// <summary>Catalog key of the crew animal or the feeder.</summary>
    public required string Species { get; init; }

    /// <summary>Breeding line; two lines of a species never touch.</summary>
    public required string Line { get; init; }

    /// <summary>Number of the culture it was split from; null for one that was bought or caught.</summary>
    public string? Mother { get; init; }

    /// <summary>Day it was started.</summary>
    public required DateOnly Since { get; init; }

    /// <summary>Substrate or medium, liters.</summary>
    public required double Liters { get; init; }

    /// <summary>Animals that walked on its first day; for flies the adults that were put in.</summary>
    public required double StartedWith { get; init; }

    /// <summary>True where it was started with adults alone, so that a first generation must grow.</summary>
    public bool IsFromAdults { get; init; }

    /// <summary>Key of its shelf.</summary>
    public required string Shelf { get; init; }

    /// <summary>Board of the shelf, 1 for the lowest.</summary>
    public int Board { get; init; } = 1;

    /// <summary>Place on the board, 1 for the one at the left.</summary>
    public int Place { get; init; } = 1;

    /// <summary>Why it may not be used for now; empty where it may.</summary>
    public string Held { get; init; } = "";

    /// <summary>Food and water, oldest first.</summary>
    public Seq<CultureFeeding> Feedings { get; init; } = [];

    /// <summary>Looks, oldest first.</summary>
    public Seq<CultureLook> Looks { get; init; } = [];

    /// <summary>Counts, oldest first.</summary>
    public Seq<CultureCount> Counts { get; init; } = [];

    /// <summary>Animals taken out, oldest first.</summary>
    public Seq<CultureHarvest> Harvests { get; init; } = [];

    /// <summary>New cultures made of it, oldest first.</summary>
    public Seq<CultureSplit> Splits { get; init; } = [];

    /// <summary>Its end; null while it stands.</summary>
    public CultureEnding? End { get; init; }

    /// <summary>True while it stands on its shelf.</summary>
    public bool IsStanding => End is null;

    /// <summary>True while it stands and is not on hold.</summary>
    public bool IsUsable => End is null && Held.Length == 0;

    /// <summary>Day it was last fed; the day it was started where nobody fed it.</summary>
    public DateOnly LastFed => Feedings.Count > 0 ? Feedings.Max(f => f.Day) : Since;

    /// <summary>Day somebody last looked at it, fed it or counted it.</summary>
    public DateOnly LastLook =>
        Looks
            .Select(l => l.Day)
            .Concat(Counts.Select(c => c.Day))
            .Concat(Feedings.Select(f => f.Day))
            .Append(Since)
            .Max();
}
