using System.Collections.Immutable;
using Litterfall.Physics.Air;

namespace Litterfall.Physics.Coupling;

/// <summary>What crossed the floor in an hour, kg.</summary>
internal sealed class HourOfFloor
{
    public double Rain { get; set; }

    public double Evaporated { get; set; }

    public double Transpired { get; set; }

    public double Drained { get; set; }

    public double RunOff { get; set; }

    public double Litter { get; set; }

    public double Stored { get; set; }

    /// <summary>What the equations of the floor missed; the next hour makes it good.</summary>
    public double Missed { get; set; }
}

/// <summary>What the headspace did in an hour, kg.</summary>
internal sealed class HourOfAir(int surfaces)
{
    public double Seconds { get; set; }

    public double Misted { get; private set; }

    public double Fogged { get; private set; }

    public double Vented { get; private set; }

    /// <summary>Mist, drips, dew and droplets on the ground.</summary>
    public double ToGround { get; private set; }

    /// <summary>Vapor from the ground, dew taken up by it not counted.</summary>
    public double FromGround { get; private set; }

    public double FromLeaves { get; private set; }

    /// <summary>Mist on open water.</summary>
    public double Caught { get; private set; }

    /// <summary>Vapor from open water, dew on it counted against.</summary>
    public double FromOpenWater { get; private set; }

    /// <summary>Filled up at its end.</summary>
    public double ToppedUp { get; set; }

    /// <summary>Run over from basins to the ground.</summary>
    public double Overflow { get; set; }

    public double Dripped { get; private set; }

    /// <summary>The same hour once more, on another day.</summary>
    public HourOfAir Again()
    {
        var again = (HourOfAir)MemberwiseClone();
        again.ToppedUp = 0.0;
        again.Overflow = 0.0;
        return again;
    }

    public double Condensed { get; private set; }

    public double AirKilograms { get; private set; }

    public double AirCelsiusSeconds { get; private set; }

    public double HumiditySeconds { get; private set; }

    public double BalanceError { get; private set; }

    public HeatLedger Heat { get; private set; }

    public double[] FoggedSeconds { get; } = new double[surfaces];

    public double[] WetSeconds { get; } = new double[surfaces];

    /// <summary>Shares of the hour.</summary>
    public ImmutableArray<double> Shares(double[] seconds) =>
        [.. seconds.Select(s => Seconds > 0.0 ? s / Seconds : 0.0)];

    public (double Least, double Most) AirRange { get; private set; } =
        (double.PositiveInfinity, double.NegativeInfinity);

    public (double Least, double Most) HumidityRange { get; private set; } =
        (double.PositiveInfinity, double.NegativeInfinity);

    /// <summary>Adds a span of the headspace.</summary>
    public void Add(
        SimulationSetup setup,
        HeadspaceState before,
        HeadspaceSpan span,
        (double Mist, double Fog) perSecond
    )
    {
        var totals = span.Totals;
        double onSurfaces = 0.0;
        double given = totals.FoggedKilograms - totals.VentedKilograms - totals.SettledKilograms;
        for (int i = 0; i < totals.Surfaces.Length; i++)
        {
            var one = totals.Surfaces[i];
            given += one.DriedKilograms + one.SuppliedKilograms - one.CondensedKilograms;
            onSurfaces += one.MistedKilograms;
            FoggedSeconds[i] += one.FoggedSeconds;
            WetSeconds[i] += one.WetSeconds;
            Dripped += one.DrippedKilograms;
            ToGround += one.DrippedKilograms;
            if (i == setup.GroundPlace)
            {
                ToGround += one.MistedKilograms + one.CondensedKilograms;
                FromGround += one.SuppliedKilograms;
            }
            else if (i == setup.OpenWaterPlace)
            {
                Caught += one.MistedKilograms;
                FromOpenWater += one.SuppliedKilograms - one.CondensedKilograms;
            }
            else
            {
                Condensed += one.CondensedKilograms;
                FromLeaves += i == setup.LeafPlace ? one.SuppliedKilograms : 0.0;
            }
        }

        double misted = perSecond.Mist * totals.Seconds;
        double fogged = perSecond.Fog * totals.Seconds;
        ToGround += totals.SettledKilograms + (misted - onSurfaces) + (fogged - totals.FoggedKilograms);
        Misted += misted;
        Fogged += fogged;
        Vented += totals.VentedKilograms;
        AirKilograms += totals.AirKilograms;
        AirCelsiusSeconds += totals.AirCelsiusSeconds;
        HumiditySeconds += totals.HumiditySeconds;
        Heat += totals.Heat;
        Seconds += totals.Seconds;
        BalanceError +=
            (setup.Air.Shape.DryAirKilograms * (span.State.HumidityRatio - before.HumidityRatio)) - given;
        AirRange = Wider(AirRange, totals.AirCelsius);
        HumidityRange = Wider(HumidityRange, totals.Humidity);
    }

    /// <summary>Adds a span of held air.</summary>
    public void Hold(
        HeldHeadspace held,
        double dryAirKilograms,
        (double Vented, double Misted) kilograms,
        double seconds
    )
    {
        Misted += kilograms.Misted;
        ToGround += kilograms.Misted * (1.0 - held.OpenShare);
        Caught += kilograms.Misted * held.OpenShare;
        Vented += kilograms.Vented;
        double notLeaves = kilograms.Vented * (1.0 - held.LeafShare);
        FromGround += notLeaves * (1.0 - held.OpenShare);
        FromOpenWater += notLeaves * held.OpenShare;
        FromLeaves += kilograms.Vented * held.LeafShare;
        AirCelsiusSeconds += held.Celsius * seconds;
        HumiditySeconds += held.Humidity * seconds;
        AirKilograms += held.AirChangesPerSecond * seconds * dryAirKilograms;
        AirRange = (held.Celsius, held.Celsius);
        HumidityRange = (held.Humidity, held.Humidity);
    }

    private static (double Least, double Most) Wider(
        (double Least, double Most) a,
        (double Least, double Most) b
    ) => (Math.Min(a.Least, b.Least), Math.Max(a.Most, b.Most));
}
