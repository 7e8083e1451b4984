using System.Collections.Concurrent;
using Litterfall.Physics.Soil;

namespace Litterfall.Forecasting.Floor;

/// <summary>
/// Water curves with their tables of values, which take milliseconds to make: one for each set of parameters.
/// Whoever changes a design step by step hands the same tables on.
/// </summary>
public sealed class CurveTables
{
    private const int Most = 64;
    private readonly ConcurrentDictionary<VanGenuchtenParameters, VanGenuchten> made = new();

    /// <summary>The curve of these parameters.</summary>
    /// <param name="parameters">The parameters.</param>
    public VanGenuchten Curve(VanGenuchtenParameters parameters)
    {
        if (made.Count >= Most && !made.ContainsKey(parameters))
        {
            made.Clear();
        }

        return made.GetOrAdd(parameters, p => new VanGenuchten(p));
    }
}
