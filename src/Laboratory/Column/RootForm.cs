using Litterfall.Domain.Trees;
using Litterfall.Physics.Soil;

namespace Litterfall.Laboratory.Column;

/// <summary>The <c>roots</c> of a column case and what the leaves ask of them.</summary>
public static class RootForm
{
    private const string Demand = "transpirationCmPerHour";
    private const double Water = LabUnits.MetersPerCm;

    /// <summary>Roots or null, and the demand, cm/h.</summary>
    /// <param name="outer">The case.</param>
    /// <param name="depthCm">Depth of the column; 0 when it is not known.</param>
    public static (RootZone? Roots, StepSeries Demand) Read(TreeForm outer, double depthCm)
    {
        if (outer.OptionalObject("roots", "roots") is not { } form)
        {
            var asked = outer.OptionalSteps(Demand, EndForms.Rates);
            if (!asked.IsZero && !outer.Has("roots"))
            {
                outer.Refuse(Demand, "there are no roots to take up the transpiration", "a key 'roots' too");
            }

            return (null, StepSeries.Zero);
        }

        var demand = outer.Steps(Demand, EndForms.Rates);
        double from = form.Number("fromCm", NumberRange.UpTo(EndForms.Heads.Highest));
        double to = form.Number("toCm", NumberRange.Positive(EndForms.Heads.Highest));
        var heads = form.Numbers("feddesCm", EndForms.Heads, 4);
        form.Close();
        if (from >= to)
        {
            form.Refuse("toCm", "the roots end above their beginning", "toCm greater than fromCm");
        }
        else if (depthCm > 0.0 && to > depthCm * (1.0 + 1e-9))
        {
            form.Refuse("toCm", "the roots reach below the foot of the column", "toCm within the column");
        }

        if (form.Has("feddesCm") && heads.Length != 4)
        {
            form.Refuse("feddesCm", $"there are {heads.Length} heads", "four heads, falling");
        }
        else if (heads.Zip(heads.Skip(1)).Any(p => p.First <= p.Second))
        {
            form.Refuse("feddesCm", "the heads do not fall", "four heads, each below the one before");
        }

        return heads.Length != 4
            ? (null, demand)
            : (new RootZone(from * Water, to * Water, Feddes([.. heads.Select(h => h * Water)])), demand);
    }

    private static FeddesHeads Feddes(double[] meters) => new(meters[0], meters[1], meters[2], meters[3]);
}
