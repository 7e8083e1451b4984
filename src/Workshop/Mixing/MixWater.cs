namespace Litterfall.Workshop.Mixing;

/// <summary>Volumes, masses and water of a whole mix.</summary>
public sealed record MixWater
{
    private MixWater() { }

    /// <summary>Mixed liters to make.</summary>
    public required double MixedLiters { get; init; }

    /// <summary>Loose liters that make them.</summary>
    public required double LooseLiters { get; init; }

    /// <summary>Mass without any water, kg; null where a component was not weighed.</summary>
    public required double? DryKg { get; init; }

    /// <summary>Water that the components bring, kg or liters; null where one was not weighed.</summary>
    public required double? PresentKg { get; init; }

    /// <summary>Water wanted in the mix, kg or liters; null where it is not dosed.</summary>
    public double? WantedKg { get; init; }

    /// <summary>Why the mix cannot be made: it is too wet already, or was not weighed.</summary>
    public MixRefusal? Refusal { get; init; }

    /// <summary>
    /// Water to add, liters; null where it is not dosed or the components were not weighed.
    /// </summary>
    public double? AddLiters => WantedKg - PresentKg;

    /// <summary>Mass when done, kg; null where a component was not weighed.</summary>
    public double? FinishedKg => DryKg + PresentKg + (AddLiters ?? 0.0);

    /// <summary>Adds up a mix.</summary>
    /// <param name="asked">The mix.</param>
    internal static MixWater Sum(MixCase asked)
    {
        var mixed = asked.NeedLiters * (1.0 + (asked.LossPercent / 100.0));
        var loose = mixed / (1.0 - asked.Shrink.Mean);
        var parts = asked.Recipe.Sum(p => p.Parts);
        double? dry = 0.0;
        double? water = 0.0;
        foreach (var part in asked.Recipe)
        {
            var kg = loose * part.Parts / parts * part.KgPerLiter;
            dry += kg * (1.0 - (part.WetPercent / 100.0));
            water += kg * part.WetPercent / 100.0;
        }

        var sum = new MixWater
        {
            MixedLiters = mixed,
            LooseLiters = loose,
            DryKg = dry,
            PresentKg = water,
        };
        return asked.Target switch
        {
            WetTarget.ByMass => sum.Wetted(
                asked,
                dry * Odds((asked.WetPercent - asked.WetMiss.Mean) / 100.0)
            ),
            WetTarget.ByVolume => sum.Wetted(
                asked,
                mixed * Math.Clamp(asked.WetPercent - asked.WetMiss.Mean, 0.0, 100.0) / 100.0
            ),
            _ => sum,
        };
    }

    /// <summary>Water for each kg of dry mass at a wet-basis share.</summary>
    private static double Odds(double share)
    {
        var wet = Math.Clamp(share, 0.0, 0.99);
        return wet / (1.0 - wet);
    }

    private MixWater Wetted(MixCase asked, double? wanted)
    {
        if (wanted is null)
        {
            var unweighed = asked.Recipe.First(p => p.KgPerLiter is null).Name;
            return this with
            {
                Refusal = new MixRefusal(
                    "targetWetPercent",
                    $"{unweighed} was not weighed, so its water is not known",
                    "kgPerLiter of every component, or waterByVolumePercent"
                ),
            };
        }

        // A dose of nothing may come out as a little less than nothing.
        if (PresentKg - wanted > 1e-9)
        {
            return this with { Refusal = TooWet(asked, wanted.Value) };
        }

        return this with
        {
            WantedKg = Math.Max(wanted.Value, PresentKg ?? 0.0),
        };
    }

    private MixRefusal TooWet(MixCase asked, double wanted) =>
        new(
            asked.Target == WetTarget.ByMass ? "targetWetPercent" : "waterByVolumePercent",
            FormattableString.Invariant(
                $"the components bring {PresentKg:0.0} L of water and the mix is to hold "
            ) + FormattableString.Invariant($"{wanted:0.0} L: it is too wet by {PresentKg - wanted:0.0} L"),
            "components dried first or taken from a drier lot, or a wetter target"
        );
}
