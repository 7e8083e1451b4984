namespace Litterfall.Physics.Crew;

/// <summary>
/// Exponential decay of litter with steady supply, dM/dt = I − k M (Olson 1963, Ecology 44:322). Rates and
/// times belong together: a rate per day goes with days, a rate per year with years.
/// </summary>
public static class Olson
{
    /// <summary>Decay constant from one mass loss, k = −ln(M/M0)/t.</summary>
    /// <param name="remainingShare">Mass left over mass at the start, above 0 to 1.</param>
    /// <param name="elapsedTime">Time between the two, any unit, above 0.</param>
    /// <returns>k, per the unit of time given.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of range.</exception>
    public static double DecayConstant(double remainingShare, double elapsedTime)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(remainingShare);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(remainingShare, 1.0);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(elapsedTime);
        return -Math.Log(remainingShare) / elapsedTime;
    }

    /// <summary>Share of the mass left after a time, without supply: e^(−k t).</summary>
    /// <param name="decayConstant">k, per unit of time, 0 or more.</param>
    /// <param name="elapsedTime">Time in the same unit, 0 or more.</param>
    /// <returns>Share, 0 to 1.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of range.</exception>
    public static double RemainingShare(double decayConstant, double elapsedTime)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(decayConstant);
        ArgumentOutOfRangeException.ThrowIfNegative(elapsedTime);
        return Math.Exp(-decayConstant * elapsedTime);
    }

    /// <summary>Time for half the mass to go, ln 2/k.</summary>
    /// <param name="decayConstant">k, per unit of time, above 0.</param>
    /// <returns>Time in the same unit.</returns>
    /// <exception cref="ArgumentOutOfRangeException">k is not positive.</exception>
    public static double HalfLife(double decayConstant)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(decayConstant);
        return Math.Log(2.0) / decayConstant;
    }

    /// <summary>Time for a floor that starts bare to hold 95 % of its steady state, −ln(0.05)/k.</summary>
    /// <param name="decayConstant">k, per unit of time, above 0.</param>
    /// <returns>Time in the same unit.</returns>
    /// <exception cref="ArgumentOutOfRangeException">k is not positive.</exception>
    public static double TimeToNinetyFivePercent(double decayConstant)
    {
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(decayConstant);
        return -Math.Log(0.05) / decayConstant;
    }

    /// <summary>Litter held in the long run by a steady supply, I/k.</summary>
    /// <param name="supplyRate">Supply I, mass per area and unit of time, 0 or more.</param>
    /// <param name="decayConstant">k, per the same unit of time, above 0.</param>
    /// <returns>Mass per area.</returns>
    /// <exception cref="ArgumentOutOfRangeException">A value is out of range.</exception>
    public static double SteadyState(double supplyRate, double decayConstant)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(supplyRate);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(decayConstant);
        return supplyRate / decayConstant;
    }
}
