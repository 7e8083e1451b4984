namespace Litterfall.Workshop.Pricing;

/// <summary>The cost of one piece by kind, currency units, not rounded.</summary>
public sealed record CostParts
{
    private CostParts() { }

    /// <summary>Goods with waste.</summary>
    public required decimal Materials { get; init; }

    /// <summary>Wages.</summary>
    public required decimal Labor { get; init; }

    /// <summary>Overhead by hours and by share, and machines.</summary>
    public required decimal Overhead { get; init; }

    /// <summary>Plants and animals.</summary>
    public required decimal Live { get; init; }

    /// <summary>Box and padding.</summary>
    public required decimal Packaging { get; init; }

    /// <summary>Carriage.</summary>
    public required decimal Shipping { get; init; }

    /// <summary>What replacements cost on average.</summary>
    public required decimal Reserve { get; init; }

    /// <summary>The part of <see cref="Overhead"/> that is there whether or not the piece is made.</summary>
    public required decimal Absorbed { get; init; }

    /// <summary>All of it.</summary>
    public decimal Total => Materials + Labor + Overhead + Live + Packaging + Shipping + Reserve;

    /// <summary>What this one piece costs on top; absorbed overhead does not count.</summary>
    public decimal Variable => Total - Absorbed;

    /// <summary>The parts in the order they are told, with their names.</summary>
    public IEnumerable<(string Name, decimal Amount)> Named =>
        [
            ("materials", Materials),
            ("labor", Labor),
            ("overhead", Overhead),
            ("live", Live),
            ("packaging", Packaging),
            ("shipping", Shipping),
            ("reserve", Reserve),
        ];

    /// <summary>Adds up a case.</summary>
    /// <param name="asked">The case.</param>
    public static CostParts Sum(CostCase asked)
    {
        var materials = asked.Materials * (1m + (asked.WastePercent / 100m));
        var labor = asked.Labor.Sum(l => l.Hours * l.WagePerHour);
        var absorbed =
            (asked.Hours * asked.OverheadPerHour) + (asked.OverheadPercent / 100m * (materials + labor));
        return new CostParts
        {
            Materials = materials,
            Labor = labor,
            Overhead = absorbed + asked.Machine,
            Live = asked.Live,
            Packaging = asked.Packaging,
            Shipping = asked.Shipping,
            Reserve = LossReserve.Mean(asked),
            Absorbed = absorbed,
        };
    }
}
