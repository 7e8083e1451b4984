using System.Runtime.CompilerServices;

namespace Litterfall.Physics.Air;

/// <summary>
/// The equations of one implicit stage of a headspace: air, vapor, one radiant node, and each surface with
/// its film and what lies behind it. The one right-hand side of the program. Surfaces are linear in the
/// changes of the air, the vapor and the radiant node, so that each of Newton's passes is a 3 × 3 system.
/// </summary>
internal sealed class HeadspaceEquations
{
    private const int MostPasses = 60;
    private const int FreePasses = 12;
    private const int SwitchingPasses = 20;
    private const int MostCoefficients = 5;
    private const double SolvedKelvin = 1e-5;
    private const double SolvedRatio = 1e-9;

    // The change after one this small is its square: below 1e-8 K.
    private const double NearlyKelvin = 2e-4;
    private const double NearlyRatio = 2e-8;

    // Coefficients go with the fourth root of differences of about a kelvin, those of a level surface that
    // hardly rises or lies with a tenth of it: what they lag is an error of the slopes that no shorter step
    // mends.
    private const double CoefficientKelvin = 0.005;
    private const double KelvinPerRatio = 182.0;
    private const double FlowKelvin = 1e-3;
    private const double ThinShare = 1e-6;
    private const double NearlyThinShare = 1e-3;
    private const double ThirstShare = 0.01;
    private readonly HeadspaceShape shape;
    private readonly ExchangeLaws laws;
    private readonly HeadspaceArrays now;
    private HeadspaceDrive drive;
    private HeadspaceStage at;
    private double air;
    private double vapor;
    private double radiant;
    private double dryFlow;
    private double flowByKelvin;
    private double flowByVapor;
    private double fog;
    private double fogByVapor;
    private double fogByAir;
    private double settling;
    private bool isSaturated;
    private bool isSwitching;
    private RoomPoint room;

    public HeadspaceEquations(HeadspaceShape shape, ExchangeLaws laws, HeadspaceArrays now)
    {
        this.shape = shape;
        this.laws = laws;
        this.now = now;
        at = new HeadspaceStage(0, 0);
        drive = new HeadspaceDrive { Room = _ => default };
    }

    /// <summary>Takes what drives a span.</summary>
    /// <param name="driven">What drives it.</param>
    public void Begin(HeadspaceDrive driven)
    {
        drive = driven;
        for (int i = 0; i < now.Surfaces.Length; i++)
        {
            ref var one = ref now.Surfaces[i];
            var supply = drive.Supply.IsDefaultOrEmpty ? WaterSupply.Free : drive.Supply[i];
            double back = drive.BackWatts.IsDefaultOrEmpty ? 0.0 : drive.BackWatts[i];
            one.SupplyHumidity = supply.RelativeHumidity;
            one.SupplyResistance = supply.ResistanceSecondsPerMeter;
            one.Mist = drive.MistKilogramsPerSecond * shape.Surfaces[i].MistShare;
            one.Watts = drive.SurfaceWatts.IsDefaultOrEmpty ? 0.0 : drive.SurfaceWatts[i];
            one.Watts += one.First == one.Last ? back : 0.0;
            one.Back = one.First == one.Last ? 0.0 : back;
            one.OutsideOffset = drive.OutsideOffset(shape, i);
        }
    }

    /// <summary>Solves a stage: what is known of it, and its own time times the rates at its end.</summary>
    /// <param name="stage">Known part and guess; takes the solution.</param>
    /// <param name="atSeconds">Time of its end, s.</param>
    /// <param name="seconds">Its own time, s.</param>
    /// <returns>False when it did not come out.</returns>
    public bool TrySolve(HeadspaceStage stage, double atSeconds, double seconds)
    {
        at = stage;
        room = drive.Room(atSeconds);
        air = stage.AirCelsius;
        vapor = Math.Max(stage.HumidityRatio, 1e-9);
        isSaturated = false;
        settling = 0.0;
        fog = fogByVapor = fogByAir = 0.0;
        Prepare(seconds);
        double change = double.PositiveInfinity;
        for (int pass = 0; pass < MostPasses; pass++)
        {
            bool isMoved = pass > 0 && pass < MostCoefficients && change > CoefficientKelvin;
            if (pass == 0 || isMoved)
            {
                Coefficients();
            }

            double share = pass < FreePasses ? 1.0 : 0.5;
            var (kelvin, ratio) = Pass(seconds, share);
            if (!double.IsFinite(kelvin) || !double.IsFinite(ratio))
            {
                return false;
            }

            change = Math.Max(kelvin, KelvinPerRatio * ratio);
            bool isSolved =
                kelvin < SolvedKelvin && ratio < SolvedRatio
                || pass < FreePasses && kelvin < NearlyKelvin && ratio < NearlyRatio;
            if (isSolved && (!isSwitching || pass > SwitchingPasses))
            {
                stage.AirCelsius = air;
                stage.HumidityRatio = vapor;
                stage.Room = room;
                stage.AirFlow = dryFlow;
                stage.Fog = fog;
                stage.Settling = settling;
                stage.Take(now, shape.DryAirKilograms, seconds);
                return true;
            }
        }

        return false;
    }

    /// <summary>What is known of each surface, and what lies behind it eliminated.</summary>
    private void Prepare(double seconds)
    {
        for (int i = 0; i < now.Surfaces.Length; i++)
        {
            ref var one = ref now.Surfaces[i];
            one.KnownCelsius = at.KnownCelsius[one.First];
            one.Inner = at.Celsius[one.First];
            one.KnownFilm = at.KnownFilm[i];
            one.Film = one.KnownFilm;
            one.Storing = one.Capacity / seconds;
            EliminateBehind(ref one, seconds);
        }
    }

    /// <summary>Coefficients at the iterate.</summary>
    private void Coefficients()
    {
        for (int i = 0; i < now.Surfaces.Length; i++)
        {
            ref var one = ref now.Surfaces[i];
            bool isWet = one.KnownFilm > 0.0 || one.HasSupply;
            double ratio = isWet
                ? MoistAir.HumidityRatio(SaturationTable.At(one.Inner).Pascals, shape.Pascals)
                : vapor;
            double convection = laws.Convection(i, new SurfaceAir(one.Inner, ratio, air, vapor), drive);
            one.Convection = convection * one.Area;
            one.Transfer = laws.MassTransfer(i, convection);
        }

        Flow();
    }

    /// <summary>
    /// Air exchanged and how it goes with the air of the box: by the virtual temperature, which damp air
    /// raises by 0.608 T w.
    /// </summary>
    private void Flow()
    {
        (dryFlow, double near) = laws.AirFlows(new RoomPoint(air, vapor), FlowKelvin, room, drive);
        flowByKelvin = (near - dryFlow) / FlowKelvin;
        flowByVapor = flowByKelvin * KelvinPerRatio;
    }

    /// <summary>Temperature of each node behind as e + f × that of the node before it.</summary>
    private void EliminateBehind(ref SurfaceWork one, double seconds)
    {
        double e = room.Celsius + one.OutsideOffset;
        double f = 0.0;
        for (int n = one.Last; n > one.First; n--)
        {
            double storing = now.Capacity[n] / seconds;
            double sum = storing + now.Outward[n - 1] + (now.Outward[n] * (1.0 - f));
            double heat = n == one.Last ? one.Back : 0.0;
            e = ((storing * at.KnownCelsius[n]) + (now.Outward[n] * e) + heat) / sum;
            f = now.Outward[n - 1] / sum;
            now.Constant[n] = e;
            now.Factor[n] = f;
        }

        one.BehindConstant = e;
        one.BehindFactor = f;
    }

    /// <summary>One pass of Newton's method.</summary>
    /// <returns>Largest change of a temperature, K, and of w.</returns>
    private (double Kelvin, double Ratio) Pass(double seconds, double share)
    {
        var system = OfAir(seconds);
        double pressure = MoistAir.VaporPressure(vapor, shape.Pascals);
        double slope = pressure * MoistAir.MassRatio / ((MoistAir.MassRatio + vapor) * vapor);
        var work = now.Surfaces;
        for (int i = 0; i < work.Length; i++)
        {
            Surface(ref work[i], (pressure, slope), seconds, ref system);
        }

        var (changeAir, changeVapor, changeRadiant) = Solve(in system);
        double most = Math.Abs(changeAir);
        for (int i = 0; i < work.Length; i++)
        {
            ref var one = ref work[i];
            double change =
                (
                    one.Right
                    + (one.Convection * changeAir)
                    + (one.Radiant * changeRadiant)
                    + (one.Latent * one.FluxByVapor * changeVapor)
                ) * one.PerSlope;
            one.Flux += (one.FluxByVapor * changeVapor) - (one.FluxByKelvin * change);
            one.Inner += share * change;
            most = Math.Max(most, Math.Abs(change));
        }

        air += share * changeAir;
        vapor = Math.Max(vapor + (share * changeVapor), 1e-9);
        radiant += share * changeRadiant;
        return (most, Math.Abs(changeVapor));
    }

    /// <summary>The rows of air and vapor without the surfaces.</summary>
    private HeadspaceCoupling OfAir(double seconds)
    {
        double mass = shape.DryAirKilograms / seconds;
        double airHeat =
            mass * (MoistAir.DryAirHeatCapacity + (at.Known.HumidityRatio * MoistAir.VaporHeatCapacity));
        double carried = MoistAir.DryAirHeatCapacity + (room.HumidityRatio * MoistAir.VaporHeatCapacity);
        double ventHeat = dryFlow * carried;
        double warmer = carried * (room.Celsius - air);
        double damper = room.HumidityRatio - vapor;
        var system = new HeadspaceCoupling
        {
            AirAir = airHeat + ventHeat - (warmer * flowByKelvin),
            AirVapor = -warmer * flowByVapor,
            AirRight = (airHeat * (at.Known.Celsius - air)) + (dryFlow * warmer) + drive.AirWatts,
            VaporAir = -damper * flowByKelvin,
            VaporVapor = mass + dryFlow - (damper * flowByVapor),
            VaporRight = (mass * (at.Known.HumidityRatio - vapor)) + (dryFlow * damper),
        };
        if (drive.FogKilogramsPerSecond > 0.0)
        {
            Fog(ref system);
        }

        return system;
    }

    /// <summary>
    /// Droplets of a fogger that the air takes: all while it is dry, fading over the last percent below
    /// saturation.
    /// </summary>
    private void Fog(ref HeadspaceCoupling system)
    {
        var (saturated, perKelvin) = Saturated();
        double band = ThirstShare * saturated;
        double share = (saturated - vapor) / band;
        double rate = drive.FogKilogramsPerSecond;
        double heat = MoistAir.VaporEnthalpy(air) - MoistAir.LiquidEnthalpy(drive.MistCelsius);
        bool isFading = share is > 0.0 and < 1.0;
        fogByVapor = isFading ? -rate / band : 0.0;
        fogByAir = isFading ? rate * vapor * perKelvin / (band * saturated) : 0.0;
        fog = rate * Math.Clamp(share, 0.0, 1.0);
        system.VaporRight += fog;
        system.VaporVapor -= fogByVapor;
        system.VaporAir -= fogByAir;
        system.AirRight -= fog * heat;
        system.AirAir += (fog * MoistAir.VaporHeatCapacity) + (heat * fogByAir);
        system.AirVapor += heat * fogByVapor;
    }

    /// <summary>
    /// Changes of air, vapor and radiant node. Air that would be oversaturated is held at saturation, and
    /// what is left over condenses in it.
    /// </summary>
    private (double Air, double Vapor, double Radiant) Solve(in HeadspaceCoupling system)
    {
        isSwitching = false;
        double air1;
        double vapor1;
        double radiant1;
        if (shape.SettlesOn is null)
        {
            (air1, vapor1, radiant1) = system.Solve();
        }
        else
        {
            var (saturated, perKelvin) = Saturated();
            isSaturated |= vapor > saturated * (1.0 + 1e-12);
            if (isSaturated)
            {
                double latent = MoistAir.VaporEnthalpy(air) - MoistAir.LiquidEnthalpy(air);
                (air1, vapor1, radiant1, settling) = system.SolveSaturated(
                    (saturated - vapor, perKelvin),
                    latent
                );
                isSwitching = settling < 0.0;
                isSaturated = !isSwitching;
                settling = Math.Max(settling, 0.0);
            }
            else
            {
                (air1, vapor1, radiant1) = system.Solve();
                isSwitching = vapor + vapor1 > (saturated + (perKelvin * air1)) * (1.0 + 1e-10);
                settling = 0.0;
            }
        }

        fog += (fogByVapor * vapor1) + (fogByAir * air1);
        dryFlow = Math.Max(0.0, dryFlow + (flowByKelvin * air1) + (flowByVapor * vapor1));
        return (air1, vapor1, radiant1);
    }

    /// <summary>w of saturated air at the iterate and its slope, 1/K.</summary>
    private (double Ratio, double PerKelvin) Saturated()
    {
        var (pascals, slope) = SaturationTable.At(air);
        double rest = shape.Pascals - pascals;
        return (
            MoistAir.MassRatio * pascals / rest,
            MoistAir.MassRatio * shape.Pascals * slope / (rest * rest)
        );
    }

    /// <summary>Balance of one surface at the iterate, put into the system of the air.</summary>
    private void Surface(
        ref SurfaceWork one,
        (double Pascals, double Slope) inAir,
        double seconds,
        ref HeadspaceCoupling system
    )
    {
        Exchange(ref one, inAir, seconds);
        double inner = one.Inner;
        double flux = one.Flux;
        double latent = MoistAir.VaporEnthalpy(flux > 0.0 ? air : inner) - MoistAir.LiquidEnthalpy(inner);
        double storing = one.Storing;
        double mist = one.Mist * MoistAir.LiquidHeatCapacity;
        one.Latent = latent;
        one.Right =
            (storing * (one.KnownCelsius - inner))
            + (one.Convection * (air - inner))
            + (one.Radiant * (radiant - inner))
            + (one.Outward * (one.BehindConstant + (one.BehindFactor * inner) - inner))
            + (mist * (drive.MistCelsius - inner))
            + one.Watts
            + (flux * latent);
        one.PerSlope =
            1.0
            / (
                storing
                + one.Convection
                + one.Radiant
                + (one.Outward * (1.0 - one.BehindFactor))
                + mist
                + (latent * one.FluxByKelvin)
            );
        system.Add(in one, inner - air, radiant - inner);
    }

    /// <summary>
    /// Vapor onto a surface, kg/s, with its slopes: condensing at full rate; else its film dries over the
    /// share of the surface it still wets, and what lies behind supplies the rest.
    /// </summary>
    private void Exchange(ref SurfaceWork one, (double Pascals, double Slope) inAir, double seconds)
    {
        var (saturated, saturatedSlope) = SaturationTable.At(one.Inner);
        double full =
            one.Area
            * one.Transfer
            / (MoistAir.VaporGasConstant * ((0.5 * (one.Inner + air)) + Constants.ZeroCelsiusKelvin));
        double over = inAir.Pascals - saturated;
        if (over > 0.0)
        {
            one.FluxFilm = full * over;
            one.Flux = one.FluxFilm;
            one.FluxByVapor = full * inAir.Slope;
            one.FluxByKelvin = full * saturatedSlope;
            if (one.HasFilm)
            {
                Fill(ref one, full * over, seconds);
            }

            return;
        }

        var (wet, answer) = one.HasFilm ? Dry(ref one, -full * over, seconds) : (0.0, 0.0);
        double film = full * wet;
        double behind = 0.0;
        if (one.HasSupply)
        {
            behind = full * (1.0 - wet) / (1.0 + (one.Transfer * one.SupplyResistance));
        }

        one.FluxFilm = film * over;
        one.Flux = one.FluxFilm + (behind * (inAir.Pascals - (one.SupplyHumidity * saturated)));
        one.FluxByVapor = ((film * answer) + behind) * inAir.Slope;
        one.FluxByKelvin = ((film * answer) + (behind * one.SupplyHumidity)) * saturatedSlope;
    }

    /// <summary>Film after gaining at a rate; it runs off above what it holds.</summary>
    private static void Fill(ref SurfaceWork one, double kilogramsPerSecond, double seconds)
    {
        double film = one.KnownFilm + (seconds * (kilogramsPerSecond + one.Mist));
        double run = seconds / one.DripSeconds;
        one.Film = film > one.DripAbove ? (film + (run * one.DripAbove)) / (1.0 + run) : film;
    }

    /// <summary>
    /// Film after drying: m + Δt·full·(1 − exp(−m/m₀)) = what was there, by Newton's method.
    /// </summary>
    /// <returns>Share that is wet, and how much of a change of the rate reaches the flux.</returns>
    private static (double Wet, double Answer) Dry(
        ref SurfaceWork one,
        double fullKilogramsPerSecond,
        double seconds
    )
    {
        double there = one.KnownFilm + (seconds * one.Mist);
        double wet = 0.0;
        double answer = 0.0;
        if (there <= 0.0)
        {
            one.Film = 0.0;
            return (0.0, 0.0);
        }

        double loss = seconds * fullKilogramsPerSecond;
        double run = seconds / one.DripSeconds;
        double per = 1.0 / one.WetKilograms;
        if (there * per < ThinShare)
        {
            // So thin that 1 − exp(−x) is x: the equation is linear.
            answer = 1.0 / (1.0 + (loss * per));
            one.Film = there * answer;
            return (one.Film * per, answer);
        }

        double film = Math.Min(one.Film, there);
        for (int k = 0; k < 30; k++)
        {
            double bare = Math.Exp(-film * per);
            bool isDripping = film > one.DripAbove;
            double miss =
                film + (loss * (1.0 - bare)) - there + (isDripping ? run * (film - one.DripAbove) : 0.0);
            double runSlope = 1.0 + (isDripping ? run : 0.0);
            double slope = runSlope + (loss * bare * per);
            double change = Math.Max(-film, -miss / slope);
            answer = runSlope / slope;
            film += change;

            // One more pass would change it by half the square of this one.
            double share = change * per;
            wet = 1.0 - (bare * (1.0 - (share * (1.0 - (0.5 * share)))));
            if (Math.Abs(share) <= NearlyThinShare)
            {
                break;
            }
        }

        one.Film = film;
        return (wet, answer);
    }
}
