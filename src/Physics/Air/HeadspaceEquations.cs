using System.Runtime.CompilerServices;

namespace Litterfall.Physics.Air;

/// <summary>
/// The equations of one implicit step of a headspace: air, vapor, one radiant node, and each surface with
/// its film and what lies behind it. The one right-hand side of the program. Surfaces are linear in the
/// changes of the air, the vapor and the radiant node, so that each of Newton's passes is a 3 × 3 system.
/// </summary>
internal sealed class HeadspaceEquations
{
    private const int MostPasses = 60;
    private const int FreePasses = 12;
    private const double SolvedKelvin = 1e-5;
    private const double SolvedRatio = 1e-9;
    private readonly HeadspaceShape shape;
    private readonly ExchangeLaws laws;
    private readonly HeadspaceArrays now;
    private readonly int count;
    private HeadspaceDrive drive;
    private double air;
    private double vapor;
    private double radiant;
    private double dryFlow;
    private double fog;
    private RoomPoint room;

    public HeadspaceEquations(HeadspaceShape shape, ExchangeLaws laws, HeadspaceArrays now)
    {
        this.shape = shape;
        this.laws = laws;
        this.now = now;
        count = shape.Surfaces.Length;
        drive = new HeadspaceDrive { Room = _ => default };
    }

    /// <summary>Air temperature at the end of the step, °C.</summary>
    public double AirCelsius => air;

    /// <summary>w at the end of the step, kg/kg.</summary>
    public double HumidityRatio => vapor;

    /// <summary>Dry air exchanged, kg/s.</summary>
    public double AirFlow => dryFlow;

    /// <summary>Vapor made by the fogger, kg/s.</summary>
    public double Fog => fog;

    /// <summary>The room during the step.</summary>
    public RoomPoint Room => room;

    /// <summary>
    /// One implicit Euler step; coefficients are those at its start, the room that of its middle.
    /// </summary>
    /// <param name="driven">What drives it.</param>
    /// <param name="start">Air at its start.</param>
    /// <param name="middleSeconds">Time of its middle, s.</param>
    /// <param name="seconds">Its length, s.</param>
    /// <returns>False when it did not come out.</returns>
    public bool TrySolve(HeadspaceDrive driven, RoomPoint start, double middleSeconds, double seconds)
    {
        drive = driven;
        room = drive.Room(middleSeconds);
        air = start.Celsius;
        vapor = start.HumidityRatio;
        Prepare(start, seconds);
        for (int pass = 0; pass < MostPasses; pass++)
        {
            double share = pass < FreePasses ? 1.0 : 0.5;
            var (kelvin, ratio) = Pass(start, seconds, share);
            if (!double.IsFinite(kelvin) || !double.IsFinite(ratio))
            {
                return false;
            }

            if (kelvin < SolvedKelvin && ratio < SolvedRatio)
            {
                Behind();
                return true;
            }
        }

        return false;
    }

    /// <summary>
    /// Coefficients at the start of the step, and what lies behind each surface eliminated.
    /// </summary>
    private void Prepare(RoomPoint start, double seconds)
    {
        double weighted = 0.0;
        double weights = 0.0;
        for (int i = 0; i < count; i++)
        {
            int first = now.First[i];
            double celsius = now.OldCelsius[first];
            bool isWet = now.OldFilm[i] > 0.0 || shape.Surfaces[i].HasSupply;
            double ratio = isWet
                ? MoistAir.HumidityRatio(SaturationTable.At(celsius).Pascals, shape.Pascals)
                : start.HumidityRatio;
            var around = new SurfaceAir(celsius, ratio, start.Celsius, start.HumidityRatio);
            double convection = laws.Convection(i, around, drive);
            now.Convection[i] = convection * now.Area[i];
            now.Transfer[i] = laws.MassTransfer(i, convection);
            now.Inner[i] = celsius;
            now.Film[i] = now.OldFilm[i];
            now.Mist[i] = drive.MistKilogramsPerSecond * shape.Surfaces[i].MistShare;
            now.Watts[i] = drive.SurfaceWatts.IsDefaultOrEmpty ? 0.0 : drive.SurfaceWatts[i];
            EliminateBehind(i, seconds);
            weighted += now.Radiant[i] * celsius;
            weights += now.Radiant[i];
        }

        radiant = weights > 0.0 ? weighted / weights : start.Celsius;
        dryFlow = laws.AirFlow(start, room, drive);
        fog = drive.FogKilogramsPerSecond > 0.0 ? drive.FogKilogramsPerSecond * Thirst(start) : 0.0;
    }

    /// <summary>Share of a fogger's droplets that the air takes: fading over the last percent.</summary>
    private double Thirst(RoomPoint start)
    {
        double saturated = MoistAir.HumidityRatio(SaturationTable.At(start.Celsius).Pascals, shape.Pascals);
        return Math.Clamp((saturated - start.HumidityRatio) / (0.01 * saturated), 0.0, 1.0);
    }

    /// <summary>Temperature of each node behind as e + f × that of the node before it.</summary>
    private void EliminateBehind(int i, double seconds)
    {
        int first = now.First[i];
        int last = now.First[i + 1] - 1;
        double outside = room.Celsius + drive.OutsideOffset(shape, i);
        double back = drive.BackWatts.IsDefaultOrEmpty ? 0.0 : drive.BackWatts[i];
        double e = outside;
        double f = 0.0;
        for (int n = last; n > first; n--)
        {
            double storing = now.Capacity[n] / seconds;
            double sum = storing + now.Outward[n - 1] + (now.Outward[n] * (1.0 - f));
            double heat = n == last ? back : 0.0;
            e = ((storing * now.OldCelsius[n]) + (now.Outward[n] * e) + heat) / sum;
            f = now.Outward[n - 1] / sum;
            now.Constant[n] = e;
            now.Factor[n] = f;
        }

        if (first == last)
        {
            now.Watts[i] += back;
        }

        now.BehindConstant[i] = e;
        now.BehindFactor[i] = f;
    }

    /// <summary>One pass of Newton's method.</summary>
    /// <returns>Largest change of a temperature, K, and of w.</returns>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private (double Kelvin, double Ratio) Pass(RoomPoint start, double seconds, double share)
    {
        double mass = shape.DryAirKilograms;
        double airHeat =
            mass
            * (MoistAir.DryAirHeatCapacity + (start.HumidityRatio * MoistAir.VaporHeatCapacity))
            / seconds;
        double ventHeat =
            dryFlow * (MoistAir.DryAirHeatCapacity + (room.HumidityRatio * MoistAir.VaporHeatCapacity));
        double fogHeat = fog * (MoistAir.VaporEnthalpy(air) - MoistAir.LiquidEnthalpy(drive.MistCelsius));
        var system = new Coupling
        {
            AirAir = airHeat + ventHeat,
            AirRight =
                (airHeat * (start.Celsius - air))
                + (ventHeat * (room.Celsius - air))
                + drive.AirWatts
                - fogHeat,
            VaporVapor = (mass / seconds) + dryFlow,
            VaporRight =
                (mass / seconds * (start.HumidityRatio - vapor))
                + (dryFlow * (room.HumidityRatio - vapor))
                + fog,
        };
        double pressure = MoistAir.VaporPressure(vapor, shape.Pascals);
        double slope = pressure * MoistAir.MassRatio / ((MoistAir.MassRatio + vapor) * vapor);
        slope = vapor > 0.0 ? slope : shape.Pascals / MoistAir.MassRatio;
        for (int i = 0; i < count; i++)
        {
            Surface(i, (pressure, slope), seconds, ref system);
        }

        var (changeAir, changeVapor, changeRadiant) = system.Solve();
        double most = Math.Max(Math.Abs(changeAir), Math.Abs(changeRadiant));
        for (int i = 0; i < count; i++)
        {
            double change =
                (
                    now.Right[i]
                    + (now.Convection[i] * changeAir)
                    + (now.Radiant[i] * changeRadiant)
                    + (now.Latent[i] * now.FluxByVapor[i] * changeVapor)
                ) / now.Diagonal[i];
            now.Flux[i] += (now.FluxByVapor[i] * changeVapor) - (now.FluxByKelvin[i] * change);
            now.Inner[i] += share * change;
            most = Math.Max(most, Math.Abs(change));
        }

        air += share * changeAir;
        vapor = Math.Max(vapor + (share * changeVapor), 1e-9);
        radiant += share * changeRadiant;
        return (most, Math.Abs(changeVapor));
    }

    /// <summary>Balance of one surface at the iterate, put into the system of the air.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Surface(int i, (double Pascals, double Slope) inAir, double seconds, ref Coupling system)
    {
        double inner = now.Inner[i];
        int first = now.First[i];
        Exchange(i, inAir, seconds);
        double flux = now.Flux[i];
        double liquid = MoistAir.LiquidEnthalpy(inner);
        double latent = MoistAir.VaporEnthalpy(flux > 0.0 ? air : inner) - liquid;
        double storing = now.Capacity[first] / seconds;
        double outward = now.Outward[first];
        double mist = now.Mist[i] * MoistAir.LiquidHeatCapacity;
        double right =
            (storing * (now.OldCelsius[first] - inner))
            + (now.Convection[i] * (air - inner))
            + (now.Radiant[i] * (radiant - inner))
            + (outward * (now.BehindConstant[i] + (now.BehindFactor[i] * inner) - inner))
            + (mist * (drive.MistCelsius - inner))
            + now.Watts[i]
            + (flux * latent);
        double diagonal =
            storing
            + now.Convection[i]
            + now.Radiant[i]
            + (outward * (1.0 - now.BehindFactor[i]))
            + mist
            + (latent * now.FluxByKelvin[i]);
        now.Latent[i] = latent;
        now.Right[i] = right;
        now.Diagonal[i] = diagonal;
        double carried = flux < 0.0 ? -flux * MoistAir.VaporHeatCapacity : 0.0;
        system.Add(
            (now.Convection[i], carried, now.Radiant[i]),
            (now.FluxByVapor[i], now.FluxByKelvin[i], latent),
            (right, diagonal),
            (flux, inner - air, radiant - inner)
        );
    }

    /// <summary>
    /// Vapor onto a surface, kg/s, with its slopes: condensing at full rate; else its film dries over the
    /// share of the surface it still wets, and what lies behind supplies the rest.
    /// </summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    private void Exchange(int i, (double Pascals, double Slope) inAir, double seconds)
    {
        var (saturated, saturatedSlope) = SaturationTable.At(now.Inner[i]);
        double full =
            now.Area[i]
            * now.Transfer[i]
            / (MoistAir.VaporGasConstant * ((0.5 * (now.Inner[i] + air)) + Constants.ZeroCelsiusKelvin));
        double over = inAir.Pascals - saturated;
        if (over > 0.0)
        {
            now.FluxFilm[i] = full * over;
            now.Flux[i] = now.FluxFilm[i];
            now.FluxByVapor[i] = full * inAir.Slope;
            now.FluxByKelvin[i] = full * saturatedSlope;
            Fill(i, full * over, seconds);
            return;
        }

        var (wet, answer) = Dry(i, -full * over, seconds);
        double film = full * wet;
        now.FluxFilm[i] = film * over;
        double behind = 0.0;
        double humidity = 0.0;
        if (shape.Surfaces[i].HasSupply)
        {
            var supply = drive.Supply.IsDefaultOrEmpty ? WaterSupply.Free : drive.Supply[i];
            humidity = supply.RelativeHumidity;
            behind = full * (1.0 - wet) / (1.0 + (now.Transfer[i] * supply.ResistanceSecondsPerMeter));
        }

        now.Flux[i] = now.FluxFilm[i] + (behind * (inAir.Pascals - (humidity * saturated)));
        now.FluxByVapor[i] = ((film * answer) + behind) * inAir.Slope;
        now.FluxByKelvin[i] = ((film * answer) + (behind * humidity)) * saturatedSlope;
    }

    /// <summary>Film after gaining at a rate; it runs off above what it holds.</summary>
    private void Fill(int i, double kilogramsPerSecond, double seconds)
    {
        if (shape.Surfaces[i].Film is not { } rule)
        {
            return;
        }

        double film = now.OldFilm[i] + (seconds * (kilogramsPerSecond + now.Mist[i]));
        double run = seconds / rule.DripSeconds;
        now.Film[i] =
            film > rule.DripAboveKilograms ? (film + (run * rule.DripAboveKilograms)) / (1.0 + run) : film;
    }

    /// <summary>
    /// Film after drying: m + Δt·full·(1 − exp(−m/m₀)) = what was there, by Newton's method.
    /// </summary>
    /// <returns>Share that is wet, and how much of a change of the rate reaches the flux.</returns>
    private (double Wet, double Answer) Dry(int i, double fullKilogramsPerSecond, double seconds)
    {
        if (shape.Surfaces[i].Film is not { } rule)
        {
            return (0.0, 0.0);
        }

        double there = now.OldFilm[i] + (seconds * now.Mist[i]);
        if (there <= 0.0)
        {
            now.Film[i] = 0.0;
            return (0.0, 0.0);
        }

        double film = Math.Min(now.Film[i], there);
        double loss = seconds * fullKilogramsPerSecond;
        double run = seconds / rule.DripSeconds;
        double wet = 0.0;
        double answer = 0.0;
        for (int k = 0; k < 30; k++)
        {
            double bare = Math.Exp(-film / rule.WetKilograms);
            bool isDripping = film > rule.DripAboveKilograms;
            wet = 1.0 - bare;
            double miss =
                film + (loss * wet) - there + (isDripping ? run * (film - rule.DripAboveKilograms) : 0.0);
            double runSlope = 1.0 + (isDripping ? run : 0.0);
            double slope = runSlope + (loss * bare / rule.WetKilograms);
            answer = runSlope / slope;
            double next = Math.Max(0.0, film - (miss / slope));
            if (Math.Abs(next - film) <= 1e-13 * (1.0 + (next / rule.WetKilograms)) * rule.WetKilograms)
            {
                break;
            }

            film = next;
        }

        now.Film[i] = film;
        return (wet, answer);
    }

    /// <summary>Temperatures behind the surfaces, once those of the surfaces are known.</summary>
    private void Behind()
    {
        for (int i = 0; i < count; i++)
        {
            int first = now.First[i];
            now.Celsius[first] = now.Inner[i];
            for (int n = first + 1; n < now.First[i + 1]; n++)
            {
                now.Celsius[n] = now.Constant[n] + (now.Factor[n] * now.Celsius[n - 1]);
            }
        }
    }

    /// <summary>The 3 × 3 system of air, vapor and radiant node.</summary>
    private struct Coupling
    {
        public double AirAir;
        public double AirRight;
        public double VaporVapor;
        public double VaporRight;
        private double airVapor;
        private double airRadiant;
        private double vaporAir;
        private double vaporRadiant;
        private double radiantAir;
        private double radiantVapor;
        private double radiantRadiant;
        private double radiantRight;

        /// <summary>
        /// Adds a surface whose change is (right + hA·a + g·r + latent·byVapor·v)/diagonal.
        /// </summary>
        public void Add(
            (double Convection, double Carried, double Radiant) heat,
            (double ByVapor, double ByKelvin, double Latent) water,
            (double Right, double Diagonal) own,
            (double Flux, double OverAir, double BelowRadiant) at
        )
        {
            double toAir = heat.Convection + heat.Carried;
            double perAir = heat.Convection / own.Diagonal;
            double perVapor = water.Latent * water.ByVapor / own.Diagonal;
            double perRadiant = heat.Radiant / own.Diagonal;
            double alone = own.Right / own.Diagonal;
            AirAir += toAir * (1.0 - perAir);
            airVapor -= toAir * perVapor;
            airRadiant -= toAir * perRadiant;
            AirRight += toAir * (at.OverAir + alone);
            VaporVapor += water.ByVapor - (water.ByKelvin * perVapor);
            vaporAir -= water.ByKelvin * perAir;
            vaporRadiant -= water.ByKelvin * perRadiant;
            VaporRight += (water.ByKelvin * alone) - at.Flux;
            radiantRadiant += heat.Radiant * (1.0 - perRadiant);
            radiantAir -= heat.Radiant * perAir;
            radiantVapor -= heat.Radiant * perVapor;
            radiantRight += heat.Radiant * (alone - at.BelowRadiant);
        }

        /// <summary>Changes of air, vapor and radiant node.</summary>
        public readonly (double Air, double Vapor, double Radiant) Solve()
        {
            double a11 = AirAir;
            double a12 = airVapor;
            double a21 = vaporAir;
            double a22 = VaporVapor;
            double b1 = AirRight;
            double b2 = VaporRight;
            if (radiantRadiant > 0.0)
            {
                double p = airRadiant / radiantRadiant;
                double q = vaporRadiant / radiantRadiant;
                a11 -= p * radiantAir;
                a12 -= p * radiantVapor;
                b1 -= p * radiantRight;
                a21 -= q * radiantAir;
                a22 -= q * radiantVapor;
                b2 -= q * radiantRight;
            }

            double determinant = (a11 * a22) - (a12 * a21);
            double changeAir = ((b1 * a22) - (a12 * b2)) / determinant;
            double changeVapor = ((a11 * b2) - (b1 * a21)) / determinant;
            double changeRadiant =
                radiantRadiant > 0.0
                    ? (radiantRight - (radiantAir * changeAir) - (radiantVapor * changeVapor))
                        / radiantRadiant
                    : 0.0;
            return (changeAir, changeVapor, changeRadiant);
        }
    }
}
