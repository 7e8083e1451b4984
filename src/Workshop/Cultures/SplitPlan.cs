using System.Collections.Immutable;

namespace Litterfall.Workshop.Cultures;

/// <summary>What keeps cups from being ready.</summary>
public enum SplitBar
{
    /// <summary>Nothing.</summary>
    None,

    /// <summary>There is no mother.</summary>
    NoMother,

    /// <summary>At this temperature the animals do not multiply.</summary>
    Temperature,

    /// <summary>A cup of this size never holds so many.</summary>
    CupTooSmall,

    /// <summary>The day is too near for so few mothers.</summary>
    TooFewMothers,
}

/// <summary>Cups that a mother is divided into on a day.</summary>
/// <param name="Day">Day.</param>
/// <param name="Mother">The mothers, as people call them.</param>
/// <param name="Line">Their line.</param>
/// <param name="Mothers">How many of them.</param>
/// <param name="Cups">New cups of all of them.</param>
/// <param name="AnimalsEach">Animals that walk into each new cup; the fewest of them.</param>
/// <param name="IsForMothers">True where the new cups become mothers themselves.</param>
public sealed record SplitStep(
    DateOnly Day,
    string Mother,
    string Line,
    int Mothers,
    int Cups,
    double AnimalsEach,
    bool IsForMothers
);

/// <summary>How cups of an order come to be, or what would be needed.</summary>
public sealed record SplitPlan
{
    /// <summary>What is wanted.</summary>
    public required CupOrder Order { get; init; }

    /// <summary>Cups that are started, with those that fail.</summary>
    public required int Started { get; init; }

    /// <summary>What keeps them from being ready.</summary>
    public SplitBar Bar { get; init; }

    /// <summary>Splits, in order of their days; empty where it cannot be done.</summary>
    public ImmutableArray<SplitStep> Steps { get; init; } = [];

    /// <summary>Day on which the slowest cup holds enough and has rested; null where it cannot be
    /// done.</summary>
    public DateOnly? Ready { get; init; }

    /// <summary>Earliest day on which all cups could be ready; null where none is in sight.</summary>
    public DateOnly? Earliest { get; init; }

    /// <summary>Mothers more, like those there are, with which the day can be kept; null where no number
    /// does.</summary>
    public int? MothersMore { get; init; }

    /// <summary>Ready cups that can be had by the day.</summary>
    public int CupsPossible { get; init; }

    /// <summary>Cups to buy so that the day is kept.</summary>
    public int CupsToBuy => Order.Cups - CupsPossible;

    /// <summary>Temperature at which the day can be kept, °C; null where none does, or none is
    /// needed.</summary>
    public double? Celsius { get; init; }

    /// <summary>True where the cups are ready by their day.</summary>
    public bool IsPossible => Bar == SplitBar.None;
}
