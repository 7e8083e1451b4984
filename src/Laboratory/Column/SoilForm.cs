using System.Collections.Immutable;
using Litterfall.Domain.Trees;
using Litterfall.Physics.Soil;

namespace Litterfall.Laboratory.Column;

/// <summary>The <c>soil</c> of a layer: one pore system, several, or exponential.</summary>
public static class SoilForm
{
    private const int MostModes = 20;

    // Wide enough for any porous thing; beyond them a unit was mistaken.
    private static readonly NumberRange Content = new(0.0, 1.0);
    private static readonly NumberRange Alpha = NumberRange.Positive(1e3);

    // (alpha |h|)^n must stay finite at the driest head: 1e10 to the 30th does.
    private static readonly NumberRange Exponent = new(1.0, 30.0, TakesLowest: false);
    private static readonly NumberRange Conductivity = NumberRange.Positive(1e7);
    private static readonly NumberRange Mualem = NumberRange.Within(50.0);
    private static readonly NumberRange AirEntry = NumberRange.UpTo(1e4);
    private static readonly NumberRange Weight = new(0.0, 1.0, TakesLowest: false);

    /// <summary>The material, or null and faults on the form.</summary>
    public static HydraulicCurve? Read(TreeForm form) =>
        form.Has("gardnerAlphaPerCm") ? Exponential(form) : PoreSystems(form);

    private static Gardner? Exponential(TreeForm form)
    {
        double alpha = form.Number("gardnerAlphaPerCm", Alpha) / LabUnits.MetersPerCm;
        double thetaR = form.Number("thetaR", Content);
        double thetaS = form.Number("thetaS", Content);
        double ks = form.Number("ksCmPerHour", Conductivity) * LabUnits.MetersPerSecondPerCmPerHour;
        form.Close("an exponential soil (gardnerAlphaPerCm)");
        if (thetaR >= thetaS)
        {
            form.Refuse("thetaR", NotBelow, "thetaR below thetaS");
            return null;
        }

        return double.IsNaN(alpha + thetaR + thetaS + ks) ? null : new Gardner(thetaR, thetaS, alpha, ks);
    }

    private static VanGenuchten? PoreSystems(TreeForm form)
    {
        double thetaR = form.Number("thetaR", Content);
        double thetaS = form.Number("thetaS", Content);
        bool several = form.Has("modes");
        ImmutableArray<PoreMode> modes = several
            ? [.. form.Objects("modes", "a pore system", MostModes).Select(Mode)]
            :
            [
                new PoreMode(
                    1.0,
                    form.Number("alphaPerCm", Alpha) / LabUnits.MetersPerCm,
                    form.Number("n", Exponent)
                ),
            ];
        double ks = form.Number("ksCmPerHour", Conductivity) * LabUnits.MetersPerSecondPerCmPerHour;
        double l = form.Number("l", Mualem, 0.5);
        double entry = form.Number("airEntryCm", AirEntry, 0.0) * LabUnits.MetersPerCm;
        form.Close(several ? "a soil with modes" : null);
        double all = modes.Sum(m => m.Weight + m.AlphaPerMeter + m.N) + thetaR + thetaS + ks + l + entry;
        if (thetaR >= thetaS)
        {
            form.Refuse("thetaR", NotBelow, "thetaR below thetaS");
        }

        if (double.IsNaN(all) || modes.IsEmpty || thetaR >= thetaS)
        {
            return null;
        }

        var parameters = new VanGenuchtenParameters
        {
            ThetaR = thetaR,
            ThetaS = thetaS,
            Modes = modes,
            KsMetersPerSecond = ks,
            L = l,
            AirEntryMeters = entry,
        };
        if (parameters.Fault() is { } fault)
        {
            form.Refuse(several ? "modes" : "l", fault, "a soil that can exist");
            return null;
        }

        return new VanGenuchten(parameters);
    }

    private static PoreMode Mode(TreeForm form)
    {
        var mode = new PoreMode(
            form.Number("weight", Weight),
            form.Number("alphaPerCm", Alpha) / LabUnits.MetersPerCm,
            form.Number("n", Exponent)
        );
        form.Close();
        return mode;
    }

    private const string NotBelow = "the residual water content is not below the saturated one";
}
