namespace Litterfall.Physics.Hygiene;

/// <summary>How the strength of a bleach dose was reported.</summary>
public enum DoseBasis
{
    /// <summary>Percent NaOCl, weight by volume.</summary>
    SodiumHypochloritePercent,

    /// <summary>Percent of household bleach product, volume by volume.</summary>
    ProductVolumePercent,
}

/// <summary>What published trials say about a treatment.</summary>
public enum DoseVerdict
{
    /// <summary>No trial at or below this strength and time killed everything; none at or above it failed
    /// either.</summary>
    NotShown,

    /// <summary>A trial at least as strong and as long did not kill everything.</summary>
    ShownToFail,

    /// <summary>A trial no stronger and no longer than this killed everything.</summary>
    Sufficient,
}

/// <summary>One trial of bleach against one pathogen.</summary>
/// <param name="StrengthPercent">Strength in the basis of the target, %.</param>
/// <param name="ContactSeconds">Contact time, s.</param>
/// <param name="KilledAll">Whether nothing survived.</param>
public readonly record struct DoseTrial(double StrengthPercent, double ContactSeconds, bool KilledAll);

/// <summary>
/// Bleach against one pathogen, as tried in one publication. Between and beyond the trials nothing is
/// interpolated: time is not traded for strength.
/// </summary>
public sealed record DisinfectionDose
{
    private readonly DoseTrial[] trials;

    private DisinfectionDose(string pathogen, DoseBasis basis, DoseTrial[] trials)
    {
        Pathogen = pathogen;
        Basis = basis;
        this.trials = trials;
    }

    /// <summary>
    /// Chytrid fungus Batrachochytrium dendrobatidis: 0.12 % NaOCl killed all at 30 s and longer, 0.03 % at
    /// 15 min (Becker and Gratwicke 2017, PLoS ONE 12:e0176439, abstract read; one isolate, clean water).
    /// </summary>
    public static DisinfectionDose Chytrid { get; } =
        new(
            "Batrachochytrium dendrobatidis",
            DoseBasis.SodiumHypochloritePercent,
            [new(0.12, 30.0, true), new(0.03, 900.0, true)]
        );

    /// <summary>
    /// Ranavirus: bleach at 3 % and 5 % worked at 1 and 5 min, at 0.2 % and 1 % it did not (Bryan et al.
    /// 2009, Dis. Aquat. Org. 84:89, abstract read). The abstract gives no basis; product by volume is the
    /// careful reading for household bleach, and a product weaker than the usual 5 to 8 % is not covered.
    /// </summary>
    public static DisinfectionDose Ranavirus { get; } =
        new(
            "Ranavirus",
            DoseBasis.ProductVolumePercent,
            [
                new(3.0, 60.0, true),
                new(3.0, 300.0, true),
                new(5.0, 60.0, true),
                new(5.0, 300.0, true),
                new(0.2, 60.0, false),
                new(0.2, 300.0, false),
                new(1.0, 60.0, false),
                new(1.0, 300.0, false),
            ]
        );

    /// <summary>Name of the pathogen.</summary>
    public string Pathogen { get; }

    /// <summary>Basis of every strength in this record.</summary>
    public DoseBasis Basis { get; }

    /// <summary>What the trials say about a treatment.</summary>
    /// <param name="strengthPercent">Strength in this record's <see cref="Basis"/>, %, 0 or more.</param>
    /// <param name="contactSeconds">Contact time, s, 0 or more.</param>
    /// <returns>The verdict.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is negative.</exception>
    public DoseVerdict Judge(double strengthPercent, double contactSeconds)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(strengthPercent);
        ArgumentOutOfRangeException.ThrowIfNegative(contactSeconds);
        var verdict = DoseVerdict.NotShown;
        foreach (DoseTrial trial in trials)
        {
            if (
                trial.KilledAll
                && strengthPercent >= trial.StrengthPercent
                && contactSeconds >= trial.ContactSeconds
            )
            {
                return DoseVerdict.Sufficient;
            }

            if (
                !trial.KilledAll
                && strengthPercent <= trial.StrengthPercent
                && contactSeconds <= trial.ContactSeconds
            )
            {
                verdict = DoseVerdict.ShownToFail;
            }
        }

        return verdict;
    }

    /// <summary>Weakest strength that killed everything in at most a given contact time.</summary>
    /// <param name="contactSeconds">Contact time, s, 0 or more.</param>
    /// <returns>Strength in this record's <see cref="Basis"/>, %, or null when no trial was that
    /// short.</returns>
    /// <exception cref="ArgumentOutOfRangeException">The time is negative.</exception>
    public double? LeastStrengthPercent(double contactSeconds)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(contactSeconds);
        double? least = null;
        foreach (DoseTrial trial in trials)
        {
            if (
                trial.KilledAll
                && trial.ContactSeconds <= contactSeconds
                && (least is null || trial.StrengthPercent < least)
            )
            {
                least = trial.StrengthPercent;
            }
        }

        return least;
    }
}
