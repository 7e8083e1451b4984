using Litterfall.Domain.Lists;

namespace Litterfall.Workshop.Mixing;

/// <summary>One component of a recipe.</summary>
/// <param name="Name">Its name.</param>
/// <param name="Parts">Parts by loose volume.</param>
/// <param name="KgPerLiter">
/// Mass of a loose liter as it lies in the bag; null where it was not weighed.
/// </param>
/// <param name="WetPercent">Water in it, percent of its mass as it lies (wet basis).</param>
/// <param name="Lots">Lots it is taken from.</param>
public sealed record MixPart(
    string Name,
    double Parts,
    double? KgPerLiter,
    double WetPercent,
    Seq<string> Lots
);

/// <summary>How wet the mix is to be.</summary>
public enum WetTarget
{
    /// <summary>No water is dosed.</summary>
    None,

    /// <summary>Water in percent of the mass of the wet mix.</summary>
    ByMass,

    /// <summary>Water in percent of the volume of the mix.</summary>
    ByVolume,
}

/// <summary>How a mix is divided when one tub does not hold it.</summary>
public enum BatchSplit
{
    /// <summary>Batches of one size.</summary>
    Equal,

    /// <summary>Full batches, and what is left.</summary>
    FullAndRest,
}

/// <summary>So much of a recipe, and the tub it is mixed in.</summary>
public sealed record MixCase
{
    /// <summary>The components, by loose volume.</summary>
    public required Seq<MixPart> Recipe { get; init; }

    /// <summary>Mixed liters that are wanted.</summary>
    public required double NeedLiters { get; init; }

    /// <summary>Lost on the way, percent of the need.</summary>
    public double LossPercent { get; init; }

    /// <summary>Share of the loose volume that mixing loses.</summary>
    public LearnedShare Shrink { get; init; } = LearnedShare.Shrink([]);

    /// <summary>Percentage points by which past mixes came out wetter than planned.</summary>
    public LearnedShare WetMiss { get; init; } = LearnedShare.WetMiss([]);

    /// <summary>Volume of the tub, liters.</summary>
    public required double TubLiters { get; init; }

    /// <summary>How full it may be, percent.</summary>
    public double FillPercent { get; init; } = 100.0;

    /// <summary>Most that is lifted at once, kg; null for no limit.</summary>
    public double? LiftKg { get; init; }

    /// <summary>Step of the measuring jug, liters; null for no rounding.</summary>
    public double? JugLiters { get; init; }

    /// <summary>What <see cref="WetPercent"/> counts on.</summary>
    public WetTarget Target { get; init; }

    /// <summary>How wet, percent.</summary>
    public double WetPercent { get; init; }

    /// <summary>How it is divided.</summary>
    public BatchSplit Split { get; init; }

    /// <summary>Batches asked for; null to find the fewest.</summary>
    public int? Batches { get; init; }

    /// <summary>Most loose liters the tub takes before mixing.</summary>
    public double LimitLiters => TubLiters * FillPercent / 100.0;
}
