namespace Litterfall.Domain.Cultures;

/// <summary>What an animal needs by its age and work.</summary>
public enum FedClass
{
    /// <summary>Grown.</summary>
    Adult,

    /// <summary>Young frog that still grows.</summary>
    Froglet,

    /// <summary>Female that lays.</summary>
    Breeding,
}

/// <summary>Animals in care that eat feeder flies: those of one tank, alike.</summary>
public sealed record FedGroup
{
    /// <summary>Own key.</summary>
    public required string Key { get; init; }

    /// <summary>Tank or place, as people call it.</summary>
    public required string Tank { get; init; }

    /// <summary>Catalog key of the animal.</summary>
    public required string Animal { get; init; }

    /// <summary>How many.</summary>
    public required int Count { get; init; }

    /// <summary>What they need by age and work.</summary>
    public FedClass Class { get; init; }

    /// <summary>Temperature by day and night in the mean, °C.</summary>
    public double Celsius { get; init; } = 24;

    /// <summary>Mass of one, g; null for the usual one of its kind.</summary>
    public double? Grams { get; init; }

    /// <summary>Catalog key of the feeder they get.</summary>
    public string Feeder { get; init; } = "drosophila-melanogaster";

    /// <summary>First day they are fed here; the calendar of powders counts from it.</summary>
    public required DateOnly Since { get; init; }

    /// <summary>Last day they are fed here; null for no end.</summary>
    public DateOnly? Until { get; init; }

    /// <summary>True on days they are fed here.</summary>
    /// <param name="day">The day.</param>
    public bool IsHere(DateOnly day) => day >= Since && (Until is null || day <= Until);
}
