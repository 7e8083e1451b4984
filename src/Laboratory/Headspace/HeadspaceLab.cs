using System.Collections.Immutable;
using System.Diagnostics;
using Litterfall.Laboratory.Column;
using Litterfall.Physics.Air;

namespace Litterfall.Laboratory.Headspace;

/// <summary>The headspace at one hour; grams are running totals but for the film.</summary>
public readonly record struct HeadspaceHour(
    double Hour,
    double AirC,
    double HumidityPercent,
    double GlassC,
    double SoilC,
    double FilmGrams,
    double VentedGrams,
    double SoilEvaporationGrams,
    double DripGrams,
    double MistGrams
);

/// <summary>What a headspace did.</summary>
/// <param name="Hours">Full hours, and the end.</param>
/// <param name="LedgerErrorGrams">Largest miss of the water of air and film at any of them.</param>
/// <param name="Milliseconds">Time of the solve alone.</param>
/// <param name="StoppedEarly">Hour and reason where the numbers would not come out.</param>
public sealed record HeadspaceOutcome(
    ImmutableArray<HeadspaceHour> Hours,
    double LedgerErrorGrams,
    double Milliseconds,
    (double Hour, string Reason)? StoppedEarly
);

/// <summary>Runs a case of a lumped headspace, from switching to switching.</summary>
public sealed class HeadspaceLab
{
    private const double SecondsPerHour = LabUnits.SecondsPerHour;
    private const double GramsPerKilogram = 1000.0;
    private const double SameHour = 1e-9;
    private readonly HeadspaceCase asked;
    private readonly double[] switches;
    private readonly HeadspaceControl control;
    private HeadspaceState state;
    private double vented;
    private double evaporated;
    private double dripped;
    private double misted;
    private double onFilm;
    private double miss;

    private HeadspaceLab(HeadspaceCase asked)
    {
        this.asked = asked;
        state = asked.Start;
        control = HeadspaceControl.Even(asked.StepSeconds);
        switches =
        [
            .. asked
                .Mists.Select(m => m.When)
                .Append(asked.Lamp)
                .SelectMany(s => new[] { s.OnHour % 24.0, s.OffHour % 24.0 })
                .Append(0.0)
                .Distinct()
                .Order(),
        ];
    }

    /// <summary>Runs a case.</summary>
    /// <param name="asked">The case.</param>
    /// <param name="progress">Told the hours done.</param>
    /// <param name="cancel">Cancels between steps.</param>
    /// <exception cref="OperationCanceledException">It was canceled.</exception>
    public static HeadspaceOutcome Run(HeadspaceCase asked, Action<double> progress, CancellationToken cancel)
    {
        var watch = Stopwatch.StartNew();
        var lab = new HeadspaceLab(asked);
        var rows = ImmutableArray.CreateBuilder<HeadspaceHour>();
        rows.Add(lab.Row(0.0));
        (double, string)? stop = null;
        for (double hour = 0.0; hour < asked.Hours && stop is null;)
        {
            double next = Math.Min(Math.Floor(hour + 1.0), asked.Hours);
            stop = lab.Advance(hour, next, cancel);
            hour = next;
            rows.Add(lab.Row(hour));
            progress(hour);
        }

        return new HeadspaceOutcome(
            rows.ToImmutable(),
            lab.miss,
            Math.Round(watch.Elapsed.TotalMilliseconds, 3),
            stop
        );
    }

    /// <summary>To a full hour or the end, stopping at each switching.</summary>
    private (double, string)? Advance(double from, double until, CancellationToken cancel)
    {
        while (from < until)
        {
            double end = Math.Min(until, NextSwitch(from));
            var span = asked.Model.Advance(
                state,
                Drive(0.5 * (from + end)),
                end * SecondsPerHour,
                control,
                cancel
            );
            var (glass, soil) = (span.Totals.Surfaces[0], span.Totals.Surfaces[1]);
            state = span.State;
            vented += span.Totals.VentedKilograms;

            // What the air cannot hold settles on the soil, so that it gives that much less.
            evaporated += soil.SuppliedKilograms - soil.CondensedKilograms - span.Totals.SettledKilograms;
            dripped += glass.DrippedKilograms;
            onFilm += glass.MistedKilograms;
            misted += glass.MistedKilograms + soil.MistedKilograms;
            if (span.StoppedEarly is { } why)
            {
                return (state.Seconds / SecondsPerHour, why);
            }

            from = end;
        }

        return null;
    }

    private double NextSwitch(double hour)
    {
        double day = 24.0 * Math.Floor((hour + SameHour) / 24.0);
        foreach (double at in switches)
        {
            if (day + at > hour + SameHour)
            {
                return day + at;
            }
        }

        return day + 24.0;
    }

    private HeadspaceDrive Drive(double hour)
    {
        bool isLit = asked.Lamp.IsOn(hour);
        var (air, glass, soil) = asked.LampWatts;
        return new HeadspaceDrive
        {
            Room = asked.Room,
            AirWatts = isLit ? air : 0.0,
            SurfaceWatts = isLit ? [glass, soil] : [0.0, 0.0],
            MistKilogramsPerSecond = asked.Mists.Where(m => m.When.IsOn(hour)).Sum(m => m.KilogramsPerSecond),
            MistCelsius = asked.MistCelsius,
        };
    }

    private HeadspaceHour Row(double hour)
    {
        double stored =
            (asked.Model.Shape.DryAirKilograms * (state.HumidityRatio - asked.Start.HumidityRatio))
            + state.FilmKilograms[0];
        miss = Math.Max(miss, GramsPerKilogram * Math.Abs(evaporated + onFilm - dripped - vented - stored));
        return new HeadspaceHour(
            hour,
            state.AirCelsius,
            100.0 * MoistAir.RelativeHumidity(state.AirCelsius, state.HumidityRatio),
            state.Celsius[0],
            state.Celsius[1],
            GramsPerKilogram * state.FilmKilograms[0],
            GramsPerKilogram * vented,
            GramsPerKilogram * evaporated,
            GramsPerKilogram * dripped,
            GramsPerKilogram * misted
        );
    }
}
