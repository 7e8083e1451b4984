using Litterfall.Domain.Trees;
using Litterfall.Physics.Soil;

namespace Litterfall.Laboratory.Column;

/// <summary>The <c>top</c> and <c>bottom</c> of a column case.</summary>
public static class EndForms
{
    /// <summary>Heads a column can have, cm: from air-dry to a kilometer of water.</summary>
    public static readonly NumberRange Heads = new(-1e7, 1e5);

    /// <summary>Rain, evaporation, uptake, cm/h; 100 m of water in an hour is a slip of units.</summary>
    public static readonly NumberRange Rates = NumberRange.UpTo(1e4);

    private const double Water = LabUnits.MetersPerCm;

    /// <summary>The surface and what the weather asks of it, cm/h; null and faults when unusable.</summary>
    public static (TopBoundary? Top, StepSeries Rain, StepSeries Evaporation) Top(TreeForm outer)
    {
        var (rain, evaporation) = (StepSeries.Zero, StepSeries.Zero);
        if (outer.Object("top", "a top") is not { } form)
        {
            return (null, rain, evaporation);
        }

        string? kind = form.Choice("kind", "head", "flux", "atmosphere");
        TopBoundary? top = null;
        switch (kind)
        {
            case "head":
                top = new TopBoundary.FixedHead(form.Number("headCm", Heads) * Water);
                break;
            case "flux":
                rain = form.Steps("cmPerHour", NumberRange.Within(Rates.Highest));
                top = new TopBoundary.FixedFlux();
                break;
            case "atmosphere":
                rain = form.OptionalSteps("rainCmPerHour", Rates);
                evaporation = form.OptionalSteps("evaporationCmPerHour", Rates);
                top = new TopBoundary.Air(
                    form.Number("driestHeadCm", new NumberRange(-1e7, 0.0, TakesHighest: false), -1e5)
                        * Water,
                    form.Number("pondCm", NumberRange.UpTo(Heads.Highest), 0.0) * Water
                );
                break;
        }

        if (kind is not null)
        {
            form.Close($"a top of kind {kind}");
        }

        return (top, rain, evaporation);
    }

    /// <summary>The foot; null and faults when unusable.</summary>
    public static LowerBoundary? Foot(TreeForm outer)
    {
        if (outer.Object("bottom", "a bottom") is not { } form)
        {
            return null;
        }

        string? kind = form.Choice("kind", "head", "zeroFlux", "freeDrainage", "seepage", "reservoir");
        LowerBoundary? foot = kind switch
        {
            "head" => new LowerBoundary.FixedHead(form.Number("headCm", Heads) * Water),
            "zeroFlux" => Closed(form.OptionalObject("overflow", "an overflow")),
            "freeDrainage" => new LowerBoundary.FreeDrainage(),
            "seepage" => new LowerBoundary.SeepageFace(),
            "reservoir" => new LowerBoundary.Store(
                form.Number("startLevelCm", NumberRange.UpTo(Heads.Highest)) * Water,
                form.Number("porosity", new NumberRange(0.0, 1.0, TakesLowest: false))
            ),
            _ => null,
        };
        if (kind is not null)
        {
            form.Close($"a bottom of kind {kind}");
        }

        return foot;
    }

    private static LowerBoundary.Closed Closed(TreeForm? overflow)
    {
        if (overflow is null)
        {
            return new LowerBoundary.Closed();
        }

        double head = overflow.Number("headCm", NumberRange.UpTo(Heads.Highest)) * Water;
        double rate = overflow.Number("perHour", NumberRange.Positive(1e7)) / LabUnits.SecondsPerHour;
        overflow.Close();
        return new LowerBoundary.Closed(head, rate);
    }
}
