using System.Collections.Immutable;

namespace Litterfall.Physics.Air;

/// <summary>
/// Steps of one span of a headspace. A step has two implicit stages of one length (singly diagonally implicit
/// Runge-Kutta of order 2, L-stable and stiffly accurate: γ = 1 − 1/√2, rows (γ) and (1 − γ, γ); Alexander
/// 1977, SIAM Journal on Numerical Analysis 14:1006, recalled). Enthalpy, vapor, heat of the nodes and films
/// are what is stepped, so that what one gains the other loses.
/// </summary>
internal sealed class HeadspaceRun
{
    private const double ShortestStepSeconds = 1e-3;
    private const double SlopeSeconds = 1e-2;
    private const double MostGrowth = 4.0;
    private const double MostShrink = 0.2;
    private const double Safety = 0.85;
    private const double MostGuessKelvin = 3.0;
    private const double LeastRatio = 1e-6;

    // Vapor counts by its dew point: at 20 to 25 °C it rises by 0.8 to 1.1 K for each gram in a kilogram.
    private const double KelvinPerRatio = 1000.0;
    private static readonly double Gamma = 1.0 - Math.Sqrt(0.5);

    // The second stage's known part lies this much beyond the first stage.
    private static readonly double Beyond = (1.0 - Gamma) / Gamma;

    // The method's error is 0.0404 h³ y''' (what R(z) and eᶻ differ by), and y''' twice the second divided
    // difference of the slopes at 0, γ and 1.
    private static readonly double ErrorFactor =
        2.0
        * Math.Abs(
            (4.0 * Gamma * Gamma * Gamma) + (3.0 * (1.0 - (2.0 * Gamma)) * Gamma * Gamma) - (1.0 / 6.0)
        );

    private readonly HeadspaceShape shape;
    private readonly HeadspaceControl control;
    private readonly HeadspaceArrays now;
    private readonly HeadspaceEquations equations;
    private readonly HeadspaceBooks books;
    private readonly HeadspaceStage first;
    private readonly HeadspaceStage second;
    private readonly double[] celsius;
    private readonly double[] film;
    private readonly double[] slope;
    private readonly double[] filmSlope;
    private readonly double[] filmKelvin;
    private double time;
    private double air;
    private double vapor;
    private double airSlope;
    private double vaporSlope;

    public HeadspaceRun(
        HeadspaceShape shape,
        ExchangeLaws laws,
        HeadspaceState state,
        HeadspaceControl control
    )
    {
        this.shape = shape;
        this.control = control;
        now = new HeadspaceArrays(shape);
        equations = new HeadspaceEquations(shape, laws, now);
        books = new HeadspaceBooks(shape, now, state);
        celsius = [.. state.Celsius];
        film = [.. state.FilmKilograms];
        slope = new double[film.Length];
        filmSlope = new double[film.Length];
        filmKelvin = [.. now.Surfaces.Select(FilmKelvin)];
        first = new HeadspaceStage(film.Length, celsius.Length);
        second = new HeadspaceStage(film.Length, celsius.Length);
        time = state.Seconds;
        air = state.AirCelsius;
        vapor = state.HumidityRatio;
    }

    /// <summary>
    /// What a kilogram of film counts, K/kg: its latent heat in the surface, but no more than a kelvin for
    /// what leaves 1/e of the surface dry.
    /// </summary>
    private static double FilmKelvin(SurfaceWork one) =>
        one.HasFilm ? Math.Min(MoistAir.VaporEnthalpyAtZero / one.Capacity, 1.0 / one.WetKilograms) : 0.0;

    private bool IsControlled => control.ErrorKelvin < double.PositiveInfinity;

    /// <summary>Sets the clock on: what happens until then is taken from elsewhere.</summary>
    /// <param name="untilSeconds">Time to go on from, s.</param>
    public void Skip(double untilSeconds) => time = untilSeconds;

    /// <summary>
    /// Runs on to the end of a span. Where nothing was switched since the span before, it goes on with its
    /// slopes and its step; else both are found anew.
    /// </summary>
    /// <param name="drive">What drives it.</param>
    /// <param name="untilSeconds">Its end, s.</param>
    /// <param name="goOnSeconds">Step it goes on with, s; null where something was switched.</param>
    /// <param name="cancel">Cancels between steps.</param>
    public HeadspaceSpan Advance(
        HeadspaceDrive drive,
        double untilSeconds,
        double? goOnSeconds,
        CancellationToken cancel
    )
    {
        double from = time;
        double next = Math.Max(control.FirstStepSeconds, goOnSeconds ?? 0.0);
        string? stop = null;
        equations.Begin(drive);
        books.Begin(new RoomPoint(air, vapor));
        if (goOnSeconds is null)
        {
            Slopes();
        }

        while (time < untilSeconds && stop is null)
        {
            cancel.ThrowIfCancellationRequested();
            double left = untilSeconds - time;
            double seconds =
                left <= next * 1.000001 ? left
                : left < 2.0 * next && IsControlled ? 0.5 * left
                : next;
            stop = Step(drive, ref seconds, out double error);
            if (stop is null)
            {
                time = seconds == left ? untilSeconds : time + seconds;
                next = Next(seconds, error);
            }
        }

        return new HeadspaceSpan(State(), books.Totals(time - from), next, stop);
    }

    /// <summary>Slopes at the start of a span: those of a step too short to change anything.</summary>
    private void Slopes()
    {
        Start(0.0);
        if (!equations.TrySolve(first, time, SlopeSeconds))
        {
            Array.Clear(slope);
            Array.Clear(filmSlope);
            airSlope = vaporSlope = 0.0;
            return;
        }

        Slopes(first, SlopeSeconds);
    }

    private void Slopes(HeadspaceStage stage, double seconds)
    {
        airSlope = (stage.AirCelsius - stage.Known.Celsius) / seconds;
        vaporSlope = (stage.BookedRatio - stage.Known.HumidityRatio) / seconds;
        for (int i = 0; i < slope.Length; i++)
        {
            slope[i] = (stage.Surfaces[i].Inner - stage.KnownCelsius[now.Surfaces[i].First]) / seconds;
            filmSlope[i] = (stage.Surfaces[i].Film - stage.KnownFilm[i]) / seconds;
        }
    }

    /// <summary>One accepted step, shortened until it comes out.</summary>
    /// <returns>Why none did, or null.</returns>
    private string? Step(HeadspaceDrive drive, ref double seconds, out double error)
    {
        while (true)
        {
            bool isWithin = true;
            bool solved = TrySolve(seconds) && (isWithin = IsWithinLaws());
            error = solved ? Error(seconds) : double.PositiveInfinity;
            if (solved && (error <= control.ErrorKelvin || seconds <= ShortestStepSeconds))
            {
                Take(drive, seconds);
                return null;
            }

            if (seconds < ShortestStepSeconds)
            {
                return isWithin ? "the balance of air, vapor and surfaces has no solution" : OutOfLaws();
            }

            seconds *= solved
                ? Math.Max(MostShrink, Safety * Math.Cbrt(control.ErrorKelvin / error))
                : MostShrink;
        }
    }

    private bool TrySolve(double seconds)
    {
        double own = Gamma * seconds;
        Start(own);
        if (!equations.TrySolve(first, time + own, own))
        {
            return false;
        }

        Go(own);
        return equations.TrySolve(second, time + seconds, own);
    }

    /// <summary>
    /// The first stage starts from the step's start; its guess goes along the slopes there.
    /// </summary>
    private void Start(double own)
    {
        Array.Copy(celsius, first.KnownCelsius, celsius.Length);
        Array.Copy(film, first.KnownFilm, film.Length);
        first.Known = new RoomPoint(air, vapor);
        first.AirCelsius = air + Math.Clamp(own * airSlope, -MostGuessKelvin, MostGuessKelvin);
        first.HumidityRatio = Math.Max(0.5 * vapor, vapor + (own * vaporSlope));
        for (int i = 0; i < slope.Length; i++)
        {
            int node = now.Surfaces[i].First;
            first.Celsius[node] =
                celsius[node] + Math.Clamp(own * slope[i], -MostGuessKelvin, MostGuessKelvin);
        }
    }

    /// <summary>
    /// The second stage knows what the first one's rates do in 1 − γ of the step. A film that they would
    /// overdraw gives only what it has, and the air and the surface get that much less.
    /// </summary>
    private void Go(double own)
    {
        double ratio = vapor + (Beyond * (first.BookedRatio - vapor));
        double begun = MoistAir.Enthalpy(air, vapor);
        double enthalpy = begun + (Beyond * (MoistAir.Enthalpy(first.AirCelsius, first.BookedRatio) - begun));
        for (int n = 0; n < celsius.Length; n++)
        {
            second.KnownCelsius[n] = celsius[n] + (Beyond * (first.Celsius[n] - celsius[n]));
        }

        for (int i = 0; i < film.Length; i++)
        {
            ref var one = ref first.Surfaces[i];
            int node = now.Surfaces[i].First;
            double known = film[i] + (Beyond * (one.Film - film[i]));
            if (known < 0.0)
            {
                one.Flux -= known / (Beyond * own);
                one.FilmFlux -= known / (Beyond * own);
                double carried = MoistAir.VaporEnthalpy(one.Inner);
                ratio += known / shape.DryAirKilograms;
                enthalpy += known * carried / shape.DryAirKilograms;
                second.KnownCelsius[node] -=
                    known * (carried - MoistAir.LiquidEnthalpy(one.Inner)) / now.Capacity[node];
                known = 0.0;
            }

            second.KnownFilm[i] = known;
            second.Celsius[node] = second.KnownCelsius[node] + (first.Celsius[node] - celsius[node]);
        }

        second.Known = new RoomPoint(Celsius(enthalpy, ratio), ratio);
        second.AirCelsius = first.AirCelsius + Guess(Beyond * (first.AirCelsius - air));
        second.HumidityRatio = Math.Max(
            0.5 * first.HumidityRatio,
            first.HumidityRatio + (Beyond * (first.HumidityRatio - vapor))
        );
    }

    private static double Guess(double kelvin) => Math.Clamp(kelvin, -MostGuessKelvin, MostGuessKelvin);

    private static double Celsius(double enthalpy, double ratio) =>
        (enthalpy - (ratio * MoistAir.VaporEnthalpyAtZero))
        / (MoistAir.DryAirHeatCapacity + (ratio * MoistAir.VaporHeatCapacity));

    /// <summary>True where air and surfaces lie where the laws of moist air hold.</summary>
    private bool IsWithinLaws()
    {
        bool holds = MoistAir.Holds(first.AirCelsius) && MoistAir.Holds(second.AirCelsius);
        for (int i = 0; i < film.Length && holds; i++)
        {
            holds = MoistAir.Holds(first.Surfaces[i].Inner) && MoistAir.Holds(second.Surfaces[i].Inner);
        }

        return holds && second.BookedRatio >= -LeastRatio;
    }

    private static string OutOfLaws() =>
        FormattableString.Invariant(
            $"air or a surface leaves the {MoistAir.ColdestLawCelsius:0} to {MoistAir.WarmestLawCelsius:0} °C"
        ) + " in which the laws of moist air hold";

    private double Next(double seconds, double error)
    {
        if (!IsControlled)
        {
            return control.LongestStepSeconds;
        }

        double factor = error > 0.0 ? Safety * Math.Cbrt(control.ErrorKelvin / error) : MostGrowth;
        return Math.Min(seconds * Math.Clamp(factor, MostShrink, MostGrowth), control.LongestStepSeconds);
    }

    /// <summary>
    /// The largest error of the step, K: of air, of vapor by its dew point, of the surfaces, and of films.
    /// </summary>
    private double Error(double seconds)
    {
        double own = Gamma * seconds;
        double worst = Bend(
            airSlope,
            (first.AirCelsius - air) / own,
            (second.AirCelsius - second.Known.Celsius) / own
        );
        double ratio = Bend(
            vaporSlope,
            (first.BookedRatio - vapor) / own,
            (second.BookedRatio - second.Known.HumidityRatio) / own
        );
        worst = Math.Max(worst, ratio * KelvinPerRatio);
        for (int i = 0; i < film.Length; i++)
        {
            int node = now.Surfaces[i].First;
            double inner = Bend(
                slope[i],
                (first.Celsius[node] - celsius[node]) / own,
                (second.Celsius[node] - second.KnownCelsius[node]) / own
            );
            double wet = Bend(
                filmSlope[i],
                (first.Surfaces[i].Film - film[i]) / own,
                (second.Surfaces[i].Film - second.KnownFilm[i]) / own
            );
            worst = Math.Max(worst, inner);
            worst = Math.Max(worst, wet * filmKelvin[i]);
        }

        return ErrorFactor * seconds * worst;
    }

    /// <summary>Second divided difference of the slopes at 0, γ and 1.</summary>
    private static double Bend(double start, double middle, double end) =>
        Math.Abs(((end - middle) / (1.0 - Gamma)) - ((middle - start) / Gamma));

    /// <summary>Books a step and goes on from its end.</summary>
    private void Take(HeadspaceDrive drive, double seconds)
    {
        var start = new RoomPoint(air, vapor);
        books.Add(first, drive, (1.0 - Gamma) * seconds);
        books.Add(second, drive, Gamma * seconds);
        Slopes(second, Gamma * seconds);
        air = second.AirCelsius;
        vapor = second.BookedRatio;
        Settle();
        books.Close(start, new RoomPoint(air, vapor), (celsius, film), second, seconds);
        Array.Copy(second.Celsius, celsius, celsius.Length);
        for (int i = 0; i < film.Length; i++)
        {
            film[i] = second.Surfaces[i].Film;
        }
    }

    /// <summary>
    /// Where the passes left the air a trace above saturation, that turns to droplets that settle, and warms
    /// it: the enthalpy of air and droplets stays. Nothing is cut off.
    /// </summary>
    private void Settle()
    {
        if (shape.SettlesOn is null || vapor <= Saturated(air))
        {
            return;
        }

        double enthalpy = MoistAir.Enthalpy(air, vapor);
        double all = vapor;
        double low = 0.0;
        double high = vapor;
        for (int k = 0; k < 60 && high - low > 1e-15; k++)
        {
            double settling = 0.5 * (low + high);
            double warmed = Warmed(enthalpy, all - settling, settling);
            (low, high) = all - settling > Saturated(warmed) ? (settling, high) : (low, settling);
        }

        vapor = all - high;
        air = Warmed(enthalpy, vapor, high);
        books.Settle(high * shape.DryAirKilograms, air);
    }

    private static double Warmed(double enthalpy, double ratio, double droplets) =>
        (enthalpy - (ratio * MoistAir.VaporEnthalpyAtZero))
        / (
            MoistAir.DryAirHeatCapacity
            + (ratio * MoistAir.VaporHeatCapacity)
            + (droplets * MoistAir.LiquidHeatCapacity)
        );

    private double Saturated(double celsius1) =>
        MoistAir.HumidityRatio(SaturationTable.At(celsius1).Pascals, shape.Pascals);

    private HeadspaceState State() =>
        new(time, air, vapor, ImmutableArray.Create(celsius), ImmutableArray.Create(film))
        {
            DewKilograms = books.Dew,
        };
}
