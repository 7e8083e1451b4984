using System.Collections.Immutable;

namespace Litterfall.Quantities.Mixing;

/// <summary>One component of a recipe as it lies in the store.</summary>
/// <param name="Name">Its key.</param>
/// <param name="Parts">Parts by loose volume.</param>
/// <param name="KilogramsPerLiter">Bulk density as it lies, water included.</param>
/// <param name="MoistureShare">Water as a share of the mass as it lies (wet basis), 0 to below 1.</param>
public sealed record MixComponent(string Name, double Parts, double KilogramsPerLiter, double MoistureShare);

/// <summary>What is to be mixed, and in what tub.</summary>
public sealed record MixOrder
{
    /// <summary>Recipe.</summary>
    public required ImmutableArray<MixComponent> Components { get; init; }

    /// <summary>Mixed liters needed.</summary>
    public required double NeedLiters { get; init; }

    /// <summary>Share lost in handling, added on the need.</summary>
    public double LossShare { get; init; }

    /// <summary>Packing shrinkage: the share of the loose liters that disappears in mixing.</summary>
    public required double ShrinkageShare { get; init; }

    /// <summary>Volume of the tub in liters.</summary>
    public required double TubLiters { get; init; }

    /// <summary>Share of the tub that may be filled.</summary>
    public double FillShare { get; init; } = 1;

    /// <summary>Target water as a share of the wet mass.</summary>
    public required double TargetMoistureShare { get; init; }

    /// <summary>Graduation of the measuring jug in liters; 0 for none.</summary>
    public double JugLiters { get; init; }
}

/// <summary>One component of a planned mix.</summary>
/// <param name="Name">Its key.</param>
/// <param name="Liters">Loose liters in all batches.</param>
/// <param name="Kilograms">Mass as it lies, in all batches.</param>
/// <param name="JugLiters">Liters per batch rounded to the jug.</param>
/// <param name="JugErrorShare">Relative error of the rounding.</param>
public sealed record MixDose(
    string Name,
    double Liters,
    double Kilograms,
    double JugLiters,
    double JugErrorShare
);

/// <summary>A planned mix.</summary>
public sealed record MixPlan
{
    /// <summary>Mixed liters with the loss.</summary>
    public required double FinishedLiters { get; init; }

    /// <summary>Loose liters put in.</summary>
    public required double LooseLiters { get; init; }

    /// <summary>
    /// Number of equal batches; the loose volume binds, for it fills the tub before mixing.
    /// </summary>
    public required int Batches { get; init; }

    /// <summary>Components.</summary>
    public required ImmutableArray<MixDose> Doses { get; init; }

    /// <summary>Dry mass in kg.</summary>
    public required double DryKilograms { get; init; }

    /// <summary>Water already in the components in kg.</summary>
    public required double WaterPresentKilograms { get; init; }

    /// <summary>Water of the target in kg.</summary>
    public required double WaterTargetKilograms { get; init; }

    /// <summary>Water to add in liters (1 kg/L); negative means the lots are too wet.</summary>
    public double WaterToAddLiters => WaterTargetKilograms - WaterPresentKilograms;

    /// <summary>True when no water can bring the mix to its target.</summary>
    public bool IsTooWet => WaterToAddLiters < 0;

    /// <summary>Mass of the wet mix in kg.</summary>
    public double WetKilograms => DryKilograms + Math.Max(WaterTargetKilograms, WaterPresentKilograms);

    /// <summary>Largest rounding error of a component against the jug.</summary>
    public double WorstJugError => Doses.Max(dose => Math.Abs(dose.JugErrorShare));
}

/// <summary>
/// Batches of a soil mix: V_loose = need·(1 + loss)/(1 − s), V_i = V_loose·p_i/Σp, water = dry·w/(1 − w).
/// </summary>
public static class MixBatch
{
    /// <summary>Plans the batches.</summary>
    /// <exception cref="ArgumentException">A share is outside its range or there is no component.</exception>
    public static MixPlan Plan(MixOrder order)
    {
        Require(
            order.Components.Length > 0
                && order.Components.All(c => c.Parts > 0 && c.MoistureShare is >= 0 and < 1),
            "every component needs parts above 0 and a moisture from 0 to below 1"
        );
        Require(order.ShrinkageShare is >= 0 and < 1, "the shrinkage must be from 0 to below 1");
        Require(order.TargetMoistureShare is >= 0 and < 1, "the target moisture must be from 0 to below 1");
        Require(
            order is { TubLiters: > 0, FillShare: > 0 and <= 1, NeedLiters: >= 0 },
            "the tub must hold something"
        );

        var finished = order.NeedLiters * (1 + order.LossShare);
        var loose = finished / (1 - order.ShrinkageShare);
        var batches = Math.Max(
            1,
            (int)Math.Ceiling(Math.Max(loose, finished) / (order.TubLiters * order.FillShare) - 1e-9)
        );
        var parts = order.Components.Sum(c => c.Parts);
        var doses = order
            .Components.Select(c => Dose(c, loose * c.Parts / parts, batches, order.JugLiters))
            .ToImmutableArray();
        var water = order.Components.Zip(doses, (c, dose) => dose.Kilograms * c.MoistureShare).Sum();
        var dry = doses.Sum(dose => dose.Kilograms) - water;
        return new MixPlan
        {
            FinishedLiters = finished,
            LooseLiters = loose,
            Batches = batches,
            Doses = doses,
            DryKilograms = dry,
            WaterPresentKilograms = water,
            WaterTargetKilograms = dry * order.TargetMoistureShare / (1 - order.TargetMoistureShare),
        };
    }

    private static MixDose Dose(MixComponent component, double liters, int batches, double jugLiters)
    {
        var perBatch = liters / batches;
        var jug =
            jugLiters > 0
                ? Math.Round(perBatch / jugLiters, MidpointRounding.AwayFromZero) * jugLiters
                : perBatch;
        return new MixDose(
            component.Name,
            liters,
            liters * component.KilogramsPerLiter,
            jug,
            perBatch > 0 ? jug / perBatch - 1 : 0
        );
    }

    private static void Require(bool condition, string message)
    {
        if (!condition)
        {
            throw new ArgumentException(message, nameof(condition));
        }
    }
}
