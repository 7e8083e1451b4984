using Litterfall.Domain.Lists;

namespace Litterfall.Workshop.Quoting;

/// <summary>
/// A good that a design takes, in every measure it has: which of them counts is said by the shop's own good.
/// </summary>
/// <param name="Key">Key of the library, or a plain word.</param>
/// <param name="Name">As people call it.</param>
public sealed record GoodNeed(string Key, string Name)
{
    /// <summary>
    /// Other keys under which the shop may keep it, such as that of the material of a pack.
    /// </summary>
    public Seq<string> Other { get; init; } = [];

    /// <summary>Liters, loose; null where it is not measured so.</summary>
    public double? Liters { get; init; }

    /// <summary>Kilograms.</summary>
    public double? Kilograms { get; init; }

    /// <summary>Meters of all lengths.</summary>
    public double? Meters { get; init; }

    /// <summary>Pieces.</summary>
    public double? Pieces { get; init; }

    /// <summary>Square meters of all panes, before waste.</summary>
    public double? SquareMeters { get; init; }

    /// <summary>Thickness of the sheet, mm; null where any will do.</summary>
    public double? Millimeters { get; init; }

    /// <summary>True for plants, animals and cultures.</summary>
    public bool IsLive { get; init; }

    /// <summary>True for what is poured or cut, so that some is lost besides.</summary>
    public bool HasWaste => Liters is not null && Pieces is null || SquareMeters is not null;

    /// <summary>The same for more or fewer boxes; pieces stay whole.</summary>
    /// <param name="factor">How many times.</param>
    public GoodNeed Times(double factor) =>
        factor == 1
            ? this
            : this with
            {
                Liters = Liters * factor,
                Kilograms = Kilograms * factor,
                Meters = Meters * factor,
                Pieces = Pieces is { } pieces ? Math.Ceiling(pieces * factor - 1e-9) : null,
                SquareMeters = SquareMeters * factor,
            };
}
