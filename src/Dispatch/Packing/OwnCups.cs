using Litterfall.Domain.Dispatch;

namespace Litterfall.Dispatch.Packing;

/// <summary>What goods travel in that bring their own cup or pot.</summary>
/// <param name="Name">As people call it.</param>
/// <param name="Liters">Volume, L.</param>
/// <param name="WidthMeters">Outer width, m.</param>
/// <param name="HeightMeters">Height with its lid or leaves, m.</param>
/// <param name="Kilograms">Mass of one with what is in it, kg.</param>
/// <param name="KilogramsOfWater">Heat capacity of one, as kg of water.</param>
internal sealed record OwnCup(
    string Name,
    double Liters,
    double WidthMeters,
    double HeightMeters,
    double Kilograms,
    double KilogramsOfWater
);

/// <summary>Usual cups and pots of goods (common practice, no source; masses are own estimates).</summary>
internal static class OwnCups
{
    /// <summary>Half full of damp charcoal or substrate.</summary>
    private static readonly OwnCup Culture = new("culture cup", 0.475, 0.120, 0.080, 0.18, 0.12);

    /// <summary>A hand's depth of medium with fiber over it.</summary>
    private static readonly OwnCup Feeder = new("feeder cup", 0.946, 0.120, 0.148, 0.26, 0.2);

    /// <summary>A young plant in its pot, in a sleeve.</summary>
    private static readonly OwnCup Pot = new("pot in a sleeve", 0.2, 0.065, 0.15, 0.15, 0.1);

    /// <summary>What goods of a kind travel in.</summary>
    public static OwnCup For(TravelerKind kind) =>
        kind switch
        {
            TravelerKind.Culture => Culture,
            TravelerKind.Feeder => Feeder,
            TravelerKind.Plant => Pot,
            _ => throw new ArgumentOutOfRangeException(nameof(kind), "An animal has no cup of its own."),
        };
}
