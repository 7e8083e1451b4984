using System.Collections.Immutable;
using Litterfall.Physics.Air;
using Litterfall.Physics.Soil;

namespace Litterfall.Physics.Coupling;

/// <content>What is done by hand, and runs that exchange less often than every hour.</content>
public sealed partial class Simulation
{
    private const int DayHours = 24;
    private const double HourRounding = 1e-6;
    private readonly int startHour;
    private readonly ImmutableArray<HandWater> byHand;
    private int doneByHand;
    private KeptAir? kept;

    /// <summary>A day of the air that may count again.</summary>
    private sealed class KeptAir(SimulationState start, WaterSupply ground, int day)
    {
        public HourOfAir[] Hours { get; } = new HourOfAir[DayHours];

        public SimulationState Start => start;

        public WaterSupply Ground => ground;

        public int Day => day;

        /// <summary>Gained by air and films in the day, kg.</summary>
        public double Gained { get; set; }

        public bool IsSettled { get; set; }
    }

    /// <summary>Where an exchange ends that starts at an hour: also before what is done by hand.</summary>
    private int BlockEnd(int hour, int last)
    {
        int pace = setup.Pace.FloorHours;
        int end = Math.Min(last, ((hour / pace) + 1) * pace);
        int next = byHand
            .SkipWhile(h => h.Hour <= hour + HourRounding)
            .Select(h => (int)Math.Ceiling(h.Hour - HourRounding))
            .Append(end)
            .First();
        double watched = setup.Drain.FromHour;
        int watch = watched > hour && watched < end ? (int)Math.Ceiling(watched) : end;
        return Math.Min(end, Math.Min(next, watch));
    }

    /// <summary>Draws off what is due at the start of an hour.</summary>
    private HourOfFloor TakeByHand(int hour, CancellationToken cancel)
    {
        var floor = new HourOfFloor();
        water.StopAt(setup.Drain.FromHour > hour ? double.PositiveInfinity : setup.Drain.AtMeters);
        double per = KilogramsPerCubicMeter * setup.FloorSquareMeters;
        for (int i = doneByHand; i < byHand.Length && byHand[i].Hour <= hour + HourRounding; i++)
        {
            var hand = byHand[i];
            if (hand.Kilograms < 0.0 || stopped is not null)
            {
                continue;
            }

            var drawn = hand.DownToMeters is { } level
                ? water.DrawDown(level, cancel)
                : water.Draw(hand.Kilograms / per, cancel);
            Take(floor, drawn, per);
            events.Add(new(hour, "drawn", drawn.DrainedMeters * per));
        }

        return floor;
    }

    /// <summary>Pours onto the ground what is due at the start of an hour; booked as topped up.</summary>
    private double Pour(HourOfAir air, int hour)
    {
        double poured = 0.0;
        for (; doneByHand < byHand.Length && byHand[doneByHand].Hour <= hour + HourRounding; doneByHand++)
        {
            poured += Math.Max(0.0, -byHand[doneByHand].Kilograms);
        }

        air.ToppedUp += poured;
        return poured;
    }

    /// <summary>The air of each hour of an exchange.</summary>
    private HourOfAir[] AirOf(int fromHour, int toHour, CancellationToken cancel)
    {
        var airs = new HourOfAir[toHour - fromHour];
        if (setup.Held is { } held)
        {
            for (int i = 0; i < airs.Length; i++)
            {
                airs[i] = Hold(held, (fromHour + i + 1) * HourSeconds);
                FillBasins(airs[i], (fromHour + i + 1) * HourSeconds);
            }

            return airs;
        }

        var supply = Supply();
        for (int i = 0; i < airs.Length; i++)
        {
            airs[i] =
                setup.Pace.AirDays > 1
                    ? KeptOrAdvanced(supply, fromHour + i, cancel)
                    : AdvanceAir(supply, (fromHour + i + 1) * HourSeconds, cancel);
            FillBasins(airs[i], (fromHour + i + 1) * HourSeconds);
        }

        return airs;
    }

    /// <summary>An hour of a kept day once more where the day is like it, else the hour itself.</summary>
    private HourOfAir KeptOrAdvanced(ImmutableArray<WaterSupply> supply, int hour, CancellationToken cancel)
    {
        int day = hour / DayHours;
        int at = hour % DayHours;
        if (at == 0 && !IsLike(supply[setup.GroundPlace], day))
        {
            kept = new KeptAir(state, supply[setup.GroundPlace], day);
        }

        double until = (hour + 1) * HourSeconds;
        if (kept is not null && kept.Day < day)
        {
            state = state with { Air = state.Air with { Seconds = until } };
            headspace.Skip(until);
            if (at == DayHours - 1)
            {
                // What air and films would have gained once more comes down instead.
                state = state with { PendingKilograms = state.PendingKilograms + kept.Gained };
            }

            return kept.Hours[at].Again();
        }

        var air = AdvanceAir(supply, until, cancel);
        if (kept is not null)
        {
            kept.Hours[at] = air;
            if (at == DayHours - 1)
            {
                Settle(kept);
            }
        }

        return air;
    }

    private void Settle(KeptAir day)
    {
        var (before, now) = (day.Start.Air, state.Air);
        day.Gained =
            (setup.Air.Shape.DryAirKilograms * (now.HumidityRatio - before.HumidityRatio))
            + now.FilmKilograms.Sum()
            - before.FilmKilograms.Sum();
        double furthest = Math.Abs(now.AirCelsius - before.AirCelsius);
        for (int i = 0; i < now.Celsius.Length; i++)
        {
            furthest = Math.Max(furthest, Math.Abs(now.Celsius[i] - before.Celsius[i]));
        }

        day.IsSettled = furthest <= SettledKelvin && day.Hours.All(h => h is not null);
    }

    /// <summary>True while a day may count as the kept one did.</summary>
    private bool IsLike(WaterSupply ground, int day) =>
        kept is { IsSettled: true } like
        && day - like.Day < setup.Pace.AirDays
        && Math.Abs(ground.RelativeHumidity - like.Ground.RelativeHumidity) <= SettledHumidity
        && Math.Abs(ground.ResistanceSecondsPerMeter - like.Ground.ResistanceSecondsPerMeter)
            <= SettledResistance * Math.Max(ground.ResistanceSecondsPerMeter, LeastResistance)
        && IsRoomLike(like.Day, day);

    private bool IsRoomLike(int one, int other)
    {
        for (int hour = 0; hour < DayHours; hour += RoomHours)
        {
            var a = setup.Room(((one * DayHours) + hour) * HourSeconds);
            var b = setup.Room(((other * DayHours) + hour) * HourSeconds);
            if (
                Math.Abs(a.Celsius - b.Celsius) > SettledKelvin
                || Math.Abs(a.HumidityRatio - b.HumidityRatio) > SettledVapor * a.HumidityRatio
            )
            {
                return false;
            }
        }

        return true;
    }

    // Own choices: a tenth of a kelvin and a hundredth of the vapor move the water vented by about a
    // hundredth, which in a month is a tenth of a millimeter of level.
    private const double SettledKelvin = 0.1;
    private const double SettledVapor = 0.01;
    private const double SettledHumidity = 0.005;
    private const double SettledResistance = 0.1;
    private const double LeastResistance = 20.0;
    private const int RoomHours = 3;

    /// <summary>
    /// Records of the hours of an exchange; the level goes by straight line between its ends.
    /// </summary>
    private void AddRecords(
        ReadOnlySpan<HourOfAir> airs,
        double drained,
        (int Hour, double LevelMeters) from,
        double untilSeconds
    )
    {
        var last = Record(airs[^1], drained, untilSeconds);
        if (setup.Pace == SimulationPace.Hourly && airs.Length == 1)
        {
            hours.Add(last);
            return;
        }

        for (int i = 0; i < airs.Length; i++)
        {
            double share = (i + 1.0) / airs.Length;
            var hour = Of(airs[i], last);
            hours.Add(
                hour with
                {
                    Hour = from.Hour + i + 1.0,
                    LevelMeters = from.LevelMeters + (share * (last.LevelMeters - from.LevelMeters)),
                    DrainedKilograms = i == airs.Length - 1 ? drained : 0.0,
                }
            );
        }
    }

    /// <summary>
    /// The hour of an exchange of many: what the air did is its own, the state that of the end of all.
    /// </summary>
    private static SimulationHour Of(HourOfAir air, SimulationHour last)
    {
        double celsius = air.AirCelsiusSeconds / air.Seconds;
        double humidity = air.HumiditySeconds / air.Seconds;
        return last with
        {
            AirCelsius = celsius,
            AirMean = celsius,
            AirRange = air.AirRange,
            Humidity = humidity,
            HumidityMean = humidity,
            HumidityRange = air.HumidityRange,
            MistedKilograms = air.Misted + air.Fogged,
            VentedKilograms = air.Vented,
            EvaporatedKilograms = air.FromGround + air.FromLeaves + air.FromOpenWater,
            OpenWaterKilograms = air.FromOpenWater,
            CaughtKilograms = air.Caught,
            ToppedUpKilograms = air.ToppedUp,
            OverflowKilograms = air.Overflow,
            CondensedKilograms = air.Condensed,
        };
    }
}
