namespace Litterfall.Domain.Trade;

/// <summary>What a good is counted in.</summary>
public enum StockUnit
{
    /// <summary>Liters, loose.</summary>
    Liters,

    /// <summary>Kilograms.</summary>
    Kilograms,

    /// <summary>Meters of hose, profile or roll.</summary>
    Meters,

    /// <summary>Pieces, cups, plants, animals, sheets.</summary>
    Pieces,

    /// <summary>Square meters of panes cut to size, mesh and sheets.</summary>
    SquareMeters,
}
