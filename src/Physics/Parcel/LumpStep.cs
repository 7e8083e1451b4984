namespace Litterfall.Physics.Parcel;

/// <summary>
/// One lump of heat capacity C behind a conductance UA while the air outside and the heat in it change along
/// straight lines: C dT/dt = D + D' s − UA (T − T0).
/// </summary>
/// <remarks>
/// Solved in the functions φ1 = (e^x − 1)/x, φ2 = (φ1 − 1)/x, φ3 = (φ2 − 1/2)/x of x = −UA s/C, so that a
/// perfect carton (UA = 0) needs no case of its own.
/// </remarks>
/// <param name="Capacity">C, J/K.</param>
/// <param name="Conductance">UA, W/K.</param>
/// <param name="Power">D: net heat at the start of the step, W.</param>
/// <param name="PowerSlope">D': its change while T stays, W/s.</param>
internal readonly record struct LumpStep(double Capacity, double Conductance, double Power, double PowerSlope)
{
    private const int MostIterations = 80;

    /// <summary>Time constants from which on a step counts as one that follows at once.</summary>
    private const double Stiff = 50.0;

    /// <summary>Rise of temperature after so many seconds, K.</summary>
    public double Rise(double seconds)
    {
        var (one, two, _) = Phi(-Conductance * seconds / Capacity);
        return seconds / Capacity * ((Power * one) + (PowerSlope * seconds * two));
    }

    /// <summary>Integral of the rise, K s.</summary>
    private double RiseIntegral(double seconds)
    {
        var (_, two, three) = Phi(-Conductance * seconds / Capacity);
        return seconds * seconds / Capacity * ((Power * two) + (PowerSlope * seconds * three));
    }

    /// <summary>Heat that comes through the wall, J.</summary>
    /// <param name="seconds">How long, s.</param>
    /// <param name="outside">Integral of the air outside less the temperature at the start, K s.</param>
    /// <param name="own">Heat of packs and animals meanwhile, J.</param>
    public double Through(double seconds, double outside, double own)
    {
        if (Conductance * seconds <= Stiff * Capacity)
        {
            return Conductance * (outside - RiseIntegral(seconds));
        }

        // A lump that follows the air at once: the difference of both is too small to be integrated.
        var (one, two, _) = Phi(-Conductance * seconds / Capacity);
        return (seconds * ((Power * one) + (PowerSlope * seconds * two))) - own;
    }

    /// <summary>When the temperature turns, s; infinite where it never does.</summary>
    public double Turn()
    {
        if (!(Power * PowerSlope < 0.0))
        {
            return double.PositiveInfinity;
        }

        double ratio = -Power / PowerSlope;
        double perSecond = Conductance / Capacity;
        return perSecond > 0.0 ? LogOnePlus(ratio * perSecond) / perSecond : ratio;
    }

    /// <summary>When a rise is reached that lies within a step on which T only rises or only falls.</summary>
    /// <param name="rise">The rise, K.</param>
    /// <param name="most">A time at which it is reached or passed, s.</param>
    /// <returns>Seconds.</returns>
    public double Reach(double rise, double most)
    {
        double low = 0.0;
        double high = most;
        double at = Guess(rise, most);
        double sign = Rise(most) >= 0.0 ? 1.0 : -1.0;
        for (int i = 0; i < MostIterations; i++)
        {
            double miss = sign * (Rise(at) - rise);
            (low, high) = miss < 0.0 ? (at, high) : (low, at);
            double next = at - (miss / (sign * Slope(at)));
            // Newton's step where it stays between the known ends, else halves.
            next = next > low && next < high ? next : 0.5 * (low + high);
            if (miss == 0.0 || Math.Abs(next - at) <= 1e-15 * most)
            {
                return at;
            }

            at = next;
        }

        return at;
    }

    private double Slope(double seconds)
    {
        double x = -Conductance * seconds / Capacity;
        return ((Power * Math.Exp(x)) + (PowerSlope * seconds * Phi(x).One)) / Capacity;
    }

    /// <summary>Exact where the drive stands still.</summary>
    private double Guess(double rise, double most)
    {
        double share = -Conductance * rise / Power;
        double guess =
            Conductance > 0.0 ? -Capacity / Conductance * LogOnePlus(share) : rise * Capacity / Power;
        return guess > 0.0 && guess < most ? guess : 0.5 * most;
    }

    /// <summary>φ1, φ2 and φ3 of x ≤ 0.</summary>
    private static (double One, double Two, double Three) Phi(double x)
    {
        if (x < -0.5)
        {
            double one = (Math.Exp(x) - 1.0) / x;
            double two = (one - 1.0) / x;
            return (one, two, (two - 0.5) / x);
        }

        // 1/3! + x/4! + …: the last of 14 terms is below 1e-18 for |x| = 1/2.
        double three = 0.0;
        for (int n = 16; n > 3; n--)
        {
            three = (three + 1.0) * x / n;
        }

        three = (three + 1.0) / 6.0;
        double second = 0.5 + (x * three);
        return (1.0 + (x * second), second, three);
    }

    /// <summary>ln(1 + x), right also where x is small beside 1.</summary>
    private static double LogOnePlus(double x)
    {
        double sum = 1.0 + x;
        return sum == 1.0 ? x : Math.Log(sum) * (x / (sum - 1.0));
    }
}
