namespace Litterfall.Physics.Parcel;

/// <summary>What a run came to.</summary>
public readonly record struct ParcelOutcome
{
    /// <summary>Gets the contents at the start, with packs and contents at one temperature, °C.</summary>
    public required double StartCelsius { get; init; }

    /// <summary>Gets whether packs were not in the state of their temperature and were settled.</summary>
    public required bool IsSettled { get; init; }

    /// <summary>Gets the contents at the end, °C.</summary>
    public required double EndCelsius { get; init; }

    /// <summary>Gets the coldest the contents were, °C.</summary>
    public required double ColdestCelsius { get; init; }

    /// <summary>Gets when they were, s.</summary>
    public required double ColdestSeconds { get; init; }

    /// <summary>Gets the warmest the contents were, °C.</summary>
    public required double WarmestCelsius { get; init; }

    /// <summary>Gets when they were, s.</summary>
    public required double WarmestSeconds { get; init; }

    /// <summary>Gets the heat through the wall, in positive, J.</summary>
    public required double WallJoules { get; init; }

    /// <summary>Gets the heat of packs and animals, J.</summary>
    public required double HeatJoules { get; init; }

    /// <summary>Gets what the contents took up, J.</summary>
    public required double StoredJoules { get; init; }

    /// <summary>Gets what melting took up, J.</summary>
    public required double LatentJoules { get; init; }

    /// <summary>Gets all heat that went in and out, counted apart, J.</summary>
    public required double TurnoverJoules { get; init; }

    /// <summary>Gets by how much the sum is missed, J.</summary>
    public double BalanceErrorJoules => WallJoules + HeatJoules - StoredJoules - LatentJoules;
}
