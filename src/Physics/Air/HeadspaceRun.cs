using System.Collections.Immutable;
using System.Runtime.CompilerServices;

namespace Litterfall.Physics.Air;

/// <summary>Steps of one span of a headspace and their books.</summary>
internal sealed class HeadspaceRun
{
    private const double ShortestStepSeconds = 1e-3;
    private const double MostGrowth = 2.5;
    private const double MostShrink = 0.3;
    private const double LeastRatio = 1e-6;
    private readonly HeadspaceShape shape;
    private readonly HeadspaceControl control;
    private readonly HeadspaceArrays now;
    private readonly HeadspaceEquations equations;
    private readonly SurfaceTotals[] surfaces;
    private double time;
    private double air;
    private double vapor;
    private double airRate = double.NaN;
    private double vaporRate;
    private double vented;
    private double fogged;
    private double settled;
    private double exchanged;
    private double airIntegral;
    private double humidityIntegral;
    private double miss;
    private (double Least, double Most) airRange;
    private (double Least, double Most) humidityRange;
    private HeatLedger heat;
    private int steps;

    public HeadspaceRun(
        HeadspaceShape shape,
        ExchangeLaws laws,
        HeadspaceState state,
        HeadspaceControl control
    )
    {
        this.shape = shape;
        this.control = control;
        now = new HeadspaceArrays(shape, state);
        equations = new HeadspaceEquations(shape, laws, now);
        surfaces = new SurfaceTotals[shape.Surfaces.Length];
        time = state.Seconds;
        air = state.AirCelsius;
        vapor = state.HumidityRatio;
        airRange = (air, air);
        humidityRange = (Humidity(), Humidity());
    }

    public HeadspaceSpan Advance(HeadspaceDrive drive, double untilSeconds, CancellationToken cancel)
    {
        double from = time;
        double next = control.FirstStepSeconds;
        string? stop = null;
        while (time < untilSeconds && stop is null)
        {
            cancel.ThrowIfCancellationRequested();
            double left = untilSeconds - time;
            double seconds =
                left <= next * 1.000001 ? left
                : left < 2.0 * next && control.ErrorKelvin < double.PositiveInfinity ? 0.5 * left
                : next;
            stop = Step(drive, ref seconds, out double error);
            if (stop is null)
            {
                time = seconds == left ? untilSeconds : time + seconds;
                next = Next(seconds, error);
            }
        }

        return new HeadspaceSpan(State(), Totals(time - from), next, stop);
    }

    /// <summary>One accepted step, shortened until it comes out.</summary>
    /// <returns>Why none did, or null.</returns>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private string? Step(HeadspaceDrive drive, ref double seconds, out double error)
    {
        while (true)
        {
            var start = new RoomPoint(air, vapor);
            bool solved = equations.TrySolve(drive, start, time + (0.5 * seconds), seconds);
            bool holds = !solved || IsWithinLaws();
            solved &= holds;
            error = solved ? Error(seconds) : double.PositiveInfinity;
            if (solved && (error <= 4.0 * control.ErrorKelvin || seconds <= control.FirstStepSeconds))
            {
                Book(drive, seconds);
                return null;
            }

            if (seconds < ShortestStepSeconds)
            {
                return holds ? "the balance of air, vapor and surfaces has no solution" : Beyond();
            }

            seconds *= 0.25;
        }
    }

    /// <summary>True where air and surfaces lie where the laws of moist air hold.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private bool IsWithinLaws()
    {
        bool holds = MoistAir.Holds(equations.AirCelsius);
        for (int i = 0; i < surfaces.Length && holds; i++)
        {
            holds = MoistAir.Holds(now.Inner[i]);
        }

        return holds && equations.HumidityRatio >= -LeastRatio;
    }

    private static string Beyond() =>
        FormattableString.Invariant(
            $"air or a surface leaves the {MoistAir.ColdestLawCelsius:0} to {MoistAir.WarmestLawCelsius:0} °C"
        ) + " in which the laws of moist air hold";

    private double Next(double seconds, double error)
    {
        if (double.IsPositiveInfinity(control.ErrorKelvin))
        {
            return control.LongestStepSeconds;
        }

        double factor = error > 0.0 ? 0.9 * Math.Sqrt(control.ErrorKelvin / error) : MostGrowth;
        return Math.Min(seconds * Math.Clamp(factor, MostShrink, MostGrowth), control.LongestStepSeconds);
    }

    /// <summary>Half of what a step changed more than at the last rate, K.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private double Error(double seconds)
    {
        if (double.IsNaN(airRate))
        {
            return 0.0;
        }

        double worst = Math.Abs(equations.AirCelsius - air - (seconds * airRate));
        double ratio = Math.Abs(equations.HumidityRatio - vapor - (seconds * vaporRate));
        worst = Math.Max(worst, ratio * MoistAir.VaporEnthalpyAtZero / MoistAir.DryAirHeatCapacity);
        for (int i = 0; i < surfaces.Length; i++)
        {
            double change = now.Inner[i] - now.OldCelsius[now.First[i]];
            worst = Math.Max(worst, Math.Abs(change - (seconds * now.Rate[i])));
        }

        return 0.5 * worst;
    }

    /// <summary>
    /// Books a step by its fluxes: the vapor of the air follows from them, so that its budget is exact.
    /// </summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Book(HeadspaceDrive drive, double seconds)
    {
        double mass = shape.DryAirKilograms;
        double solvedAir = equations.AirCelsius;
        double solvedVapor = equations.HumidityRatio;
        var room = equations.Room;
        double out1 = equations.AirFlow * (solvedVapor - room.HumidityRatio) * seconds;
        double fog = equations.Fog * seconds;
        double stored = -mass * MoistAir.Enthalpy(air, vapor);
        double taken = 0.0;
        double liquid = fog * MoistAir.LiquidEnthalpy(drive.MistCelsius);
        var ledger = new HeatLedger(
            drive.AirWatts * seconds,
            equations.AirFlow
                * seconds
                * (
                    MoistAir.Enthalpy(room.Celsius, room.HumidityRatio)
                    - MoistAir.Enthalpy(solvedAir, solvedVapor)
                ),
            0.0,
            0.0,
            0.0,
            0.0
        );
        for (int i = 0; i < surfaces.Length; i++)
        {
            ledger += BookSurface(i, drive, seconds);
            taken += now.Flux[i] * seconds;
            liquid -= now.Flux[i] * seconds * MoistAir.LiquidEnthalpy(now.Inner[i]);
            now.Rate[i] = (now.Inner[i] - now.OldCelsius[now.First[i]]) / seconds;
        }

        double before = vapor;
        vapor += (fog - out1 - taken) / mass;
        airRate = (solvedAir - air) / seconds;
        vaporRate = (vapor - before) / seconds;
        airIntegral += 0.5 * (air + solvedAir) * seconds;
        air = solvedAir;
        double fallen = Settle();
        liquid -= fallen * MoistAir.LiquidEnthalpy(air);
        stored += mass * MoistAir.Enthalpy(air, vapor);
        heat += ledger + new HeatLedger(0.0, 0.0, 0.0, 0.0, liquid, stored);
        vented += out1;
        fogged += fog;
        settled += fallen;
        exchanged += equations.AirFlow * seconds;
        miss += (mass * (vapor - before)) - (fog - out1 - taken - fallen);
        double humidity = Humidity();
        humidityIntegral += humidity * seconds;
        airRange = (Math.Min(airRange.Least, air), Math.Max(airRange.Most, air));
        humidityRange = (Math.Min(humidityRange.Least, humidity), Math.Max(humidityRange.Most, humidity));
        Array.Copy(now.Celsius, now.OldCelsius, now.Celsius.Length);
        Array.Copy(now.Film, now.OldFilm, now.Film.Length);
        steps++;
    }

    /// <summary>Books one surface: its film from its fluxes, its heat from its temperatures.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private HeatLedger BookSurface(int i, HeadspaceDrive drive, double seconds)
    {
        var surface = shape.Surfaces[i];
        double film = surface.HasSupply ? now.FluxFilm[i] : now.Flux[i];
        double filmFlux = surface.Film is null ? 0.0 : film * seconds;
        double mist = now.Mist[i] * seconds;
        double condensed = now.Flux[i] > 0.0 && now.FluxFilm[i] > 0.0 ? now.Flux[i] * seconds : 0.0;
        double dripped = 0.0;
        if (surface.Film is not null)
        {
            if (condensed > 0.0)
            {
                filmFlux = condensed;
            }

            double gained = now.OldFilm[i] + filmFlux + mist;
            if (gained < 0.0)
            {
                // What Newton's last change overdrew: less dries than was computed, and the air gets less.
                now.Flux[i] -= gained / seconds;
                filmFlux -= gained;
                gained = 0.0;
            }

            dripped = Math.Max(0.0, Math.Min(gained, gained - now.Film[i]));
            dripped = now.Film[i] > surface.Film.DripAboveKilograms ? dripped : 0.0;
            now.Film[i] = gained - dripped;
        }

        double visible = HeadspaceState.VisibleKilogramsPerSquareMeter * now.Area[i];
        double wetter = now.OldFilm[i] + mist + condensed;
        double kept = wetter > 0.0 ? now.Film[i] / wetter : 0.0;
        now.Dew[i] = Math.Min(1.0, kept) * (now.Dew[i] + condensed);
        var before = surfaces[i];
        surfaces[i] = new SurfaceTotals(
            before.CondensedKilograms + condensed,
            before.DriedKilograms - Math.Min(filmFlux, 0.0),
            before.SuppliedKilograms + (condensed > 0.0 ? 0.0 : filmFlux - (now.Flux[i] * seconds)),
            before.DrippedKilograms + dripped,
            before.MistedKilograms + mist,
            before.FoggedSeconds + (now.Dew[i] > visible ? seconds : 0.0),
            before.WetSeconds + (now.Film[i] > visible ? seconds : 0.0)
        );
        return Heat(i, drive, seconds);
    }

    private HeatLedger Heat(int i, HeadspaceDrive drive, double seconds)
    {
        int first = now.First[i];
        int last = now.First[i + 1] - 1;
        double gained = 0.0;
        for (int n = first; n <= last; n++)
        {
            gained += now.Capacity[n] * (now.Celsius[n] - now.OldCelsius[n]);
        }

        double outside = equations.Room.Celsius + drive.OutsideOffset(shape, i);
        double back = first == last || drive.BackWatts.IsDefaultOrEmpty ? 0.0 : drive.BackWatts[i];
        return new HeatLedger(
            (now.Watts[i] + back) * seconds,
            0.0,
            now.Outward[last] * (outside - now.Celsius[last]) * seconds,
            now.Mist[i] * MoistAir.LiquidHeatCapacity * (drive.MistCelsius - now.Inner[i]) * seconds,
            0.0,
            gained
        );
    }

    /// <summary>
    /// Where the air holds more than it can, the rest turns to droplets that settle, and warms it: the
    /// enthalpy of air and droplets stays. Nothing is cut off.
    /// </summary>
    /// <returns>What settled, kg.</returns>
    private double Settle()
    {
        if (shape.SettlesOn is null || vapor <= Saturated(air))
        {
            return 0.0;
        }

        double enthalpy = MoistAir.Enthalpy(air, vapor);
        double all = vapor;
        double low = 0.0;
        double high = vapor;
        for (int k = 0; k < 60 && high - low > 1e-15; k++)
        {
            double settling = 0.5 * (low + high);
            double celsius = Warmed(enthalpy, all - settling, settling);
            (low, high) = all - settling > Saturated(celsius) ? (settling, high) : (low, settling);
        }

        vapor = all - high;
        air = Warmed(enthalpy, vapor, high);
        return high * shape.DryAirKilograms;
    }

    private static double Warmed(double enthalpy, double ratio, double droplets) =>
        (enthalpy - (ratio * MoistAir.VaporEnthalpyAtZero))
        / (
            MoistAir.DryAirHeatCapacity
            + (ratio * MoistAir.VaporHeatCapacity)
            + (droplets * MoistAir.LiquidHeatCapacity)
        );

    private double Saturated(double celsius) =>
        MoistAir.HumidityRatio(SaturationTable.At(celsius).Pascals, shape.Pascals);

    private double Humidity() =>
        MoistAir.VaporPressure(vapor, shape.Pascals) / SaturationTable.At(air).Pascals;

    private HeadspaceState State() =>
        new(time, air, vapor, ImmutableArray.Create(now.OldCelsius), ImmutableArray.Create(now.OldFilm));

    private HeadspaceTotals Totals(double seconds) =>
        new()
        {
            Seconds = seconds,
            Surfaces = ImmutableArray.Create(surfaces),
            VentedKilograms = vented,
            FoggedKilograms = fogged,
            SettledKilograms = settled,
            AirKilograms = exchanged,
            AirCelsiusSeconds = airIntegral,
            HumiditySeconds = humidityIntegral,
            AirCelsius = airRange,
            Humidity = humidityRange,
            Heat = heat,
            BalanceErrorKilograms = miss,
            Steps = steps,
        };
}
