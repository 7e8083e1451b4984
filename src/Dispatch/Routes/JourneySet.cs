using System.Collections.Immutable;
using Litterfall.Dispatch.Forecasts;
using Litterfall.Domain.Dispatch;

namespace Litterfall.Dispatch.Routes;

/// <summary>
/// Journeys that may come, all equally likely: the forecast with its error, a day of delay, the hour of
/// delivery and the wait after it, sun on van and doorstep, and pieces as they turn out. The same input and
/// seed give the same journeys.
/// </summary>
public sealed class JourneySet
{
    private const double SecondsPerHour = 3600;
    private const int Late = 0;
    private const int LatePlace = 1;
    private const int Delivery = 2;
    private const int Wait = 3;
    private const int Sun = 4;
    private const int Start = 5;
    private const int Wall = 6;
    private const int Latent = 7;
    private const int Heat = 8;
    private const int FirstError = 9;

    private readonly RouteTimes times;
    private readonly DispatchRules rules;
    private readonly Place origin;
    private readonly Place hub;
    private readonly Place away;
    private readonly double lateChance;

    private JourneySet(
        RouteTimes times,
        DispatchRules rules,
        double lateChance,
        IReadOnlyDictionary<RouteNode, PlaceForecast> forecasts
    )
    {
        (this.times, this.rules, this.lateChance) = (times, rules, lateChance);
        origin = At(RouteNode.Origin, times.HandOverHour);
        hub = At(RouteNode.Hub, times.AwayHour);
        away = At(RouteNode.Destination, times.AwayHour);

        Place At(RouteNode node, double hour) =>
            new(
                new HourLine(forecasts[node]),
                times.HandOver,
                (times.HandOver - forecasts[node].TakenAt).TotalDays,
                hour
            );
    }

    /// <summary>Draws journeys.</summary>
    /// <param name="times">When the parcel is where.</param>
    /// <param name="rules">The shop's rules, with errors, sun and seed.</param>
    /// <param name="lateChance">Chance of one working day more, 0 to 1.</param>
    /// <param name="forecasts">Forecast of each place; covers the whole way.</param>
    /// <param name="count">How many.</param>
    public static ImmutableArray<Journey> Draw(
        RouteTimes times,
        DispatchRules rules,
        double lateChance,
        IReadOnlyDictionary<RouteNode, PlaceForecast> forecasts,
        int count
    )
    {
        var set = new JourneySet(times, rules, lateChance, forecasts);
        var errors =
            2 + (int)Math.Ceiling((times.LateEnd - times.HandOver).TotalHours / RouteChoices.ErrorStepHours);
        var dice = new JourneyDice(count, FirstError + errors, rules.Seed);
        return [.. Enumerable.Range(0, count).Select(i => set.One(dice, i, errors))];
    }

    private Journey One(JourneyDice dice, int i, int errors)
    {
        var isLate = dice.Share(Late, i) < lateChance;
        var inHub = dice.Share(LatePlace, i) < RouteChoices.LateInHubShare;
        var late = isLate ? times.LateHours : 0;
        var hubIn = Hours(times.HubIn);
        var hubOut = Hours(times.HubOut) + (inHub ? late : 0);
        var window = (times.BroughtUntil - times.BroughtFrom).TotalHours;
        var brought = Hours(times.BroughtFrom) + (dice.Share(Delivery, i) * window) + late;
        var end = brought + (dice.Share(Wait, i) * times.WaitHours);
        var sun = dice.Share(Sun, i);
        var error = Errors(dice, i, errors);
        var line = new AirLine();
        line.Add((0, hubIn), t => origin.Air(t, error, rules, rules.VanSunKelvin * sun));
        line.Add((hubIn, hubOut), t => hub.Air(t, error, rules, 0));
        line.Add((hubOut, brought), t => away.Air(t, error, rules, rules.VanSunKelvin * sun));
        var door = times.IsDepot ? 0 : rules.DoorstepSunKelvin * sun;
        line.Add((brought, end), t => away.Air(t, error, rules, door));
        return new()
        {
            Seconds = line.Seconds,
            Celsius = line.Celsius,
            EndSeconds = SecondsPerHour * end,
            StartCelsius =
                RouteChoices.StartCelsius - 1 + dice.Factor(Start, i, RouteChoices.StartErrorKelvin),
            Wall = dice.Factor(Wall, i, RouteChoices.WallError),
            Latent = dice.Factor(Latent, i, RouteChoices.LatentError),
            Heat = dice.Factor(Heat, i, RouteChoices.HeatError),
        };
    }

    private double Hours(DateTime at) => (at - times.HandOver).TotalHours;

    /// <summary>Errors of the forecast, in standard errors; each is much like the one before.</summary>
    private static double[] Errors(JourneyDice dice, int i, int count)
    {
        var like = Math.Exp(-RouteChoices.ErrorStepHours / RouteChoices.ErrorMemoryHours);
        var fresh = Math.Sqrt(1 - (like * like));
        var errors = new double[count];
        for (var k = 0; k < count; k++)
        {
            var drawn = dice.Normal(FirstError + k, i);
            errors[k] = k == 0 ? drawn : (like * errors[k - 1]) + (fresh * drawn);
        }

        return errors;
    }

    /// <summary>A place of the route seen from hand-over on.</summary>
    private sealed class Place
    {
        private readonly HourLine line;
        private readonly DateTime start;
        private readonly double leadDays;
        private readonly double hour;
        private readonly Dictionary<int, double> known = [];

        public Place(HourLine line, DateTime start, double leadDays, double hour) =>
            (this.line, this.start, this.leadDays, this.hour) = (line, start, leadDays, hour);

        /// <summary>Air at a time, °C.</summary>
        /// <param name="at">Hours from hand-over.</param>
        /// <param name="errors">Errors of the forecast, in standard errors.</param>
        /// <param name="rules">How large a standard error is.</param>
        /// <param name="sunKelvin">How much warmer than the shade at noon, K.</param>
        public double Air(double at, double[] errors, DispatchRules rules, double sunKelvin)
        {
            var step = at / RouteChoices.ErrorStepHours;
            var k = Math.Min((int)step, errors.Length - 2);
            var error = errors[k] + ((errors[k + 1] - errors[k]) * (step - k));
            var days = Math.Max(0, leadDays + (at / 24) - 1);
            var spread = rules.ForecastErrorKelvin + (rules.ForecastErrorPerDayKelvin * days);
            return Forecast(at) + (spread * error) + (sunKelvin * SunShare(at));
        }

        private double Forecast(double at)
        {
            var whole = (int)at;
            if (whole != at)
            {
                return line.At(start.AddHours(at));
            }

            if (!known.TryGetValue(whole, out var celsius))
            {
                known[whole] = celsius = line.At(start.AddHours(at));
            }

            return celsius;
        }

        private double SunShare(double at)
        {
            var sun = ((hour + at) % 24) - RouteChoices.SunFromHour;
            return sun > 0 && sun < RouteChoices.SunHours
                ? Math.Sin(Math.PI * sun / RouteChoices.SunHours)
                : 0;
        }
    }

    /// <summary>Points of the air: both ends of each stretch and the whole hours between.</summary>
    private sealed class AirLine
    {
        private readonly List<double> seconds = new(64);
        private readonly List<double> celsius = new(64);

        public double[] Seconds => [.. seconds];

        public double[] Celsius => [.. celsius];

        public void Add((double From, double To) span, Func<double, double> air)
        {
            if (span.To <= span.From)
            {
                return;
            }

            Point(span.From, air);
            for (var hour = Math.Floor(span.From) + 1; hour < span.To; hour++)
            {
                Point(hour, air);
            }

            Point(span.To, air);
        }

        private void Point(double hour, Func<double, double> air)
        {
            seconds.Add(SecondsPerHour * hour);
            celsius.Add(air(hour));
        }
    }
}
