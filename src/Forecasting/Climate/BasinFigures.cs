using Litterfall.Domain.Figures;

namespace Litterfall.Forecasting.Climate;

/// <summary>What the basins of a box give and take in a day.</summary>
public sealed record BasinFigures
{
    /// <summary>Water that dries from their open face.</summary>
    public required Banded Evaporated { get; init; }

    /// <summary>Mist that falls on it.</summary>
    public required Figure Caught { get; init; }

    /// <summary>What is filled up by hand to keep them full.</summary>
    public required Banded ToppedUp { get; init; }

    /// <summary>What runs over their edge to the ground.</summary>
    public required Figure Overflow { get; init; }

    /// <summary>Water vented less what is filled up: what the floor itself loses.</summary>
    public required Banded Lost { get; init; }
}
