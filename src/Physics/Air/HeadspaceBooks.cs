using System.Collections.Immutable;

namespace Litterfall.Physics.Air;

/// <summary>The books of one span of a headspace: each stage's fluxes for the time that it counts.</summary>
internal sealed class HeadspaceBooks
{
    /// <summary>Share of a film from which on it looks like dew, not like water: own choice.</summary>
    private const double MostlyDew = 0.9;

    private readonly HeadspaceShape shape;
    private readonly HeadspaceArrays now;
    private readonly Surface[] surfaces;
    private readonly double[] dew;
    private readonly double[] fresh;
    private (double Least, double Most) airRange;
    private (double Least, double Most) humidityRange;
    private double humidity;
    private double vented;
    private double fogged;
    private double settled;
    private double exchanged;
    private double airIntegral;
    private double humidityIntegral;
    private double sources;
    private double enthalpy;
    private double outside;
    private double mist;
    private double liquid;
    private double stored;
    private double miss;
    private int steps;

    public HeadspaceBooks(HeadspaceShape shape, HeadspaceArrays now, HeadspaceState start)
    {
        this.shape = shape;
        this.now = now;
        surfaces = new Surface[now.Surfaces.Length];
        fresh = new double[surfaces.Length];
        dew = start.DewKilograms.IsDefaultOrEmpty ? new double[surfaces.Length] : [.. start.DewKilograms];
    }

    /// <summary>Opens the books of a span.</summary>
    /// <param name="start">Air at its start.</param>
    public void Begin(RoomPoint start)
    {
        if (steps > 0)
        {
            Array.Clear(surfaces);
            Array.Clear(fresh);
            vented = fogged = settled = exchanged = miss = 0.0;
            airIntegral = humidityIntegral = 0.0;
            sources = enthalpy = outside = mist = liquid = stored = 0.0;
            steps = 0;
        }

        humidity = Humidity(start.Celsius, start.HumidityRatio);
        airRange = (start.Celsius, start.Celsius);
        humidityRange = (humidity, humidity);
    }

    private struct Surface
    {
        public double Condensed;
        public double Dried;
        public double Supplied;
        public double Dripped;
        public double Misted;
        public double Fogged;
        public double Wet;
        public double CondensedInStep;
    }

    /// <summary>Part of each film that came as dew, kg.</summary>
    public ImmutableArray<double> Dew => ImmutableArray.Create(dew);

    /// <summary>Books a stage for the time that it counts.</summary>
    /// <param name="stage">The stage.</param>
    /// <param name="drive">What drives the span.</param>
    /// <param name="seconds">Time, s.</param>
    public void Add(HeadspaceStage stage, HeadspaceDrive drive, double seconds)
    {
        double mass = shape.DryAirKilograms;
        var room = stage.Room;
        double fog = stage.Fog * seconds;
        double fallen = stage.Settling * seconds;
        double out1 = stage.AirFlow * (stage.HumidityRatio - room.HumidityRatio) * seconds;
        double taken = 0.0;
        double turned = 0.0;
        double back = 0.0;
        double mistHeat = 0.0;
        double watts = drive.AirWatts;
        for (int i = 0; i < surfaces.Length; i++)
        {
            ref readonly var one = ref now.Surfaces[i];
            ref readonly var at = ref stage.Surfaces[i];
            ref var book = ref surfaces[i];
            double film = at.FilmFlux * seconds;
            double condensed = at.IsCondensing ? at.Flux * seconds : 0.0;
            book.Condensed += condensed;
            book.CondensedInStep += condensed;
            book.Dried -= Math.Min(film, 0.0);
            book.Supplied += at.IsCondensing ? 0.0 : film - (at.Flux * seconds);
            book.Dripped += at.Drip * seconds;
            book.Misted += one.Mist * seconds;
            taken += at.Flux;
            turned += at.Flux * at.Inner;
            watts += one.Watts + one.Back;
            back += now.Outward[one.Last] * (room.Celsius + one.OutsideOffset - stage.Celsius[one.Last]);
            mistHeat += one.Mist * (drive.MistCelsius - at.Inner);
        }

        sources += watts * seconds;
        outside += back * seconds;
        mist += mistHeat * MoistAir.LiquidHeatCapacity * seconds;
        liquid +=
            (fog * MoistAir.LiquidEnthalpy(drive.MistCelsius))
            - (MoistAir.LiquidHeatCapacity * turned * seconds)
            - (fallen * MoistAir.LiquidEnthalpy(stage.AirCelsius));
        enthalpy +=
            stage.AirFlow
            * seconds
            * (
                MoistAir.Enthalpy(room.Celsius, room.HumidityRatio)
                - MoistAir.Enthalpy(stage.AirCelsius, stage.HumidityRatio)
            );
        vented += out1;
        fogged += fog;
        settled += fallen;
        exchanged += stage.AirFlow * seconds;
        miss -= fog - out1 - (taken * seconds) - fallen;
    }

    /// <summary>Closes a step: what was stored, and how long panes were wet.</summary>
    /// <param name="from">Air at its start.</param>
    /// <param name="to">Air at its end.</param>
    /// <param name="before">Nodes and films at its start.</param>
    /// <param name="last">Its last stage.</param>
    /// <param name="seconds">Its length, s.</param>
    public void Close(
        RoomPoint from,
        RoomPoint to,
        (double[] Celsius, double[] Film) before,
        HeadspaceStage last,
        double seconds
    )
    {
        double mass = shape.DryAirKilograms;
        double gained =
            mass
            * (
                MoistAir.Enthalpy(to.Celsius, to.HumidityRatio)
                - MoistAir.Enthalpy(from.Celsius, from.HumidityRatio)
            );
        for (int n = 0; n < now.Capacity.Length; n++)
        {
            gained += now.Capacity[n] * (last.Celsius[n] - before.Celsius[n]);
        }

        stored += gained;
        miss += mass * (to.HumidityRatio - from.HumidityRatio);
        for (int i = 0; i < surfaces.Length; i++)
        {
            Wet(i, (before.Film[i], last.Surfaces[i].Film), seconds);
        }

        double now1 = Humidity(to.Celsius, to.HumidityRatio);
        airIntegral += 0.5 * (from.Celsius + to.Celsius) * seconds;
        humidityIntegral += 0.5 * (humidity + now1) * seconds;
        humidity = now1;
        airRange = (Math.Min(airRange.Least, to.Celsius), Math.Max(airRange.Most, to.Celsius));
        humidityRange = (Math.Min(humidityRange.Least, now1), Math.Max(humidityRange.Most, now1));
        steps++;
    }

    /// <summary>Books droplets that settle at once.</summary>
    /// <param name="kilograms">How much, kg.</param>
    /// <param name="celsius">Temperature of the air, °C.</param>
    public void Settle(double kilograms, double celsius)
    {
        settled += kilograms;
        liquid -= kilograms * MoistAir.LiquidEnthalpy(celsius);
        miss += kilograms;
    }

    /// <summary>
    /// How long a surface was wet, and its dew seen; between the ends of a step it changes evenly.
    /// </summary>
    private void Wet(int i, (double From, double To) film, double seconds)
    {
        ref var book = ref surfaces[i];
        double condensed = book.CondensedInStep;
        book.CondensedInStep = 0.0;
        if (film is { From: <= 0.0, To: <= 0.0 } && condensed <= 0.0 && dew[i] <= 0.0)
        {
            return;
        }

        ref readonly var one = ref now.Surfaces[i];
        double visible = HeadspaceState.VisibleKilogramsPerSquareMeter * one.Area;
        double wetter = film.From + (one.Mist * seconds) + condensed;
        double kept = wetter > 0.0 ? film.To / wetter : 0.0;
        double before = dew[i];
        dew[i] = Math.Min(1.0, kept) * (before + condensed);
        double freshBefore = fresh[i];
        fresh[i] = Math.Min(1.0, kept) * (freshBefore + condensed);

        // Old dew that fell into a film of mist runs with it and is seen through.
        double stands = dew[i] >= MostlyDew * film.To ? Above(before, dew[i], visible) : 0.0;
        book.Fogged += seconds * Math.Max(stands, Above(freshBefore, fresh[i], visible));
        book.Wet += seconds * Above(film.From, film.To, visible);
    }

    /// <summary>Share of a step in which what goes evenly between two values is above a limit.</summary>
    private static double Above(double from, double to, double limit) =>
        from > limit == to > limit
            ? (to > limit ? 1.0 : 0.0)
            : (Math.Max(from, to) - limit) / Math.Abs(to - from);

    private double Humidity(double celsius, double ratio) =>
        MoistAir.VaporPressure(ratio, shape.Pascals) / SaturationTable.At(celsius).Pascals;

    /// <summary>What the span exchanged.</summary>
    /// <param name="seconds">Its length, s.</param>
    public HeadspaceTotals Totals(double seconds) =>
        new()
        {
            Seconds = seconds,
            Surfaces =
            [
                .. surfaces.Select(s => new SurfaceTotals(
                    s.Condensed,
                    s.Dried,
                    s.Supplied,
                    s.Dripped,
                    s.Misted,
                    s.Fogged,
                    s.Wet
                )),
            ],
            VentedKilograms = vented,
            FoggedKilograms = fogged,
            SettledKilograms = settled,
            AirKilograms = exchanged,
            AirCelsiusSeconds = airIntegral,
            HumiditySeconds = humidityIntegral,
            AirCelsius = airRange,
            Humidity = humidityRange,
            Heat = new HeatLedger(sources, enthalpy, outside, mist, liquid, stored),
            BalanceErrorKilograms = miss,
            Steps = steps,
        };
}
