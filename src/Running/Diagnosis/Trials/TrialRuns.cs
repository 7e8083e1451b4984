using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Domain.Checking;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Tanks;
using Litterfall.Forecasting.Climate;
using Litterfall.Running.Diagnosis.Words;

namespace Litterfall.Running.Diagnosis.Trials;

/// <summary>Runs the engine over the days before the report, once for each supposition.</summary>
public sealed class TrialRuns
{
    private const int MostDays = 60;
    private const int FewestDays = 4;
    private const int UnknownDays = 30;

    /// <summary>What a vent that was taped lets through; own choice between a seam and a slot.</summary>
    public const double TapedShare = 0.12;

    /// <summary>A held exchange below this many changes an hour is that of a taped vent already.</summary>
    public const double TapedChangesPerHour = 1.5;

    private readonly FaultCase of;
    private readonly CancellationToken cancel;

    /// <summary>Runs of a case; nothing is computed yet.</summary>
    /// <param name="of">The case.</param>
    /// <param name="cancel">Cancels between steps.</param>
    public TrialRuns(FaultCase of, CancellationToken cancel)
    {
        this.of = of;
        this.cancel = cancel;
        Reported = ReportedOn();
        (First, StartMillimeters) = Start();
        Days = Math.Clamp(Reported.DayNumber - First.DayNumber + 1, FewestDays, MostDays);
        Setup = new BoxSetup(At(of.Design, StartMillimeters)) { Cancel = cancel };
    }

    /// <summary>Day of the report.</summary>
    public DateOnly Reported { get; }

    /// <summary>Day at whose midnight the runs start.</summary>
    public DateOnly First { get; }

    /// <summary>Level at that time, mm over the base.</summary>
    public double StartMillimeters { get; }

    /// <summary>Days of the runs.</summary>
    public int Days { get; }

    /// <summary>The design made ready.</summary>
    public BoxSetup Setup { get; }

    /// <summary>True where the air exchanged is less than the design says, by what was told.</summary>
    public bool IsTaped =>
        of.Is(TankFact.VentTaped)
        && (
            of.Design.Design.Headspace is not { } held
            || 3600.0 * held.Hold.AirChanges.Si >= TapedChangesPerHour
        );

    /// <summary>True where vents were taped, in the design's own numbers or beside them.</summary>
    public bool IsShut => of.Is(TankFact.VentTaped);

    /// <summary>Runs all suppositions; null where the floor has no water curve.</summary>
    public TrialSet? Run()
    {
        var all = Enum.GetValues<Supposed>();
        var runs = new Trial?[all.Length];
        Parallel.For(0, all.Length, new ParallelOptions { CancellationToken = cancel }, i =>
            runs[i] = Run(all[i])
        );
        return runs[0] is null
            ? null
            : new TrialSet(First, Days, StartMillimeters, [.. runs.OfType<Trial>()]);
    }

    /// <summary>Runs days from the report on, from a level on, with other settings.</summary>
    /// <param name="millimeters">Level at its start, mm over the base.</param>
    /// <param name="change">What is set otherwise, against the design.</param>
    /// <param name="days">Days.</param>
    public Trial? Ahead(double millimeters, ClimateChange change, int days)
    {
        var setup = new BoxSetup(At(of.Design, millimeters), Setup) { Cancel = cancel };
        return
            BoxRun.From(setup, Reported, change)?.Through(days, null, cancel) is { StoppedEarly: null } result
            ? new Trial(Supposed.AsSet, result)
            : null;
    }

    private Trial? Run(Supposed how)
    {
        var change = Trial.Change(how);
        change = IsTaped ? Trial.Aired(change, TapedShare) : change;
        change = of.Is(TankFact.VentOpened) ? Trial.Aired(change, 3) : change;
        return BoxRun.From(Setup, First, change)?.Through(Days, null, cancel) is { StoppedEarly: null } result
            ? new Trial(how, result)
            : null;
    }

    private DateOnly ReportedOn()
    {
        var last = of.Readings.IsEmpty ? (DateOnly?)null : DateOnly.FromDateTime(of.Readings[^1].At);
        var logged = of
            .Series.Where(s => s.Count > 0)
            .Select(s => (DateOnly?)DateOnly.FromDateTime(new DateTime(s.Ticks[^1], DateTimeKind.Utc)))
            .Max();
        return of.Day(TankFact.Reported)
            ?? Later(last, logged)
            ?? Later(of.Day(TankFact.LastDrain), of.Day(TankFact.MistChanged))?.AddDays(UnknownDays)
            ?? BoxRun.FirstDay(of.Design).AddDays(UnknownDays);
    }

    private static DateOnly? Later(DateOnly? one, DateOnly? other) =>
        one is null ? other
        : other is null ? one
        : one > other ? one
        : other;

    /// <summary>
    /// Where the water is known last before the latest level: a draining, a change of the mist, a first
    /// level.
    /// </summary>
    private (DateOnly First, double Millimeters) Start()
    {
        var levels = of.Readings.Where(r => r.Kind == ReadingKind.Level).ToList();
        var lastLevel = levels.Count > 0 ? DateOnly.FromDateTime(levels[^1].At) : Reported;
        var entered = 1000.0 * (of.Design.Design.Start?.Level.Si ?? 0.0);
        var drained = of
            .Readings.Where(r => r.Kind == ReadingKind.Drained && DateOnly.FromDateTime(r.At) < lastLevel)
            .Select(r => (DateOnly?)DateOnly.FromDateTime(r.At))
            .Max();
        if (Later(of.Day(TankFact.LastDrain), drained) is { } day && day < lastLevel && Near(day))
        {
            var after = levels.FirstOrDefault(l => DateOnly.FromDateTime(l.At) == day);
            return (day, after?.Amount ?? of.Number(TankFact.LastDrainLevel) ?? Math.Min(entered, 10.0));
        }

        if (levels.Count > 1 && Near(DateOnly.FromDateTime(levels[0].At)))
        {
            return (DateOnly.FromDateTime(levels[0].At), levels[0].Amount ?? 0.0);
        }

        if (of.Day(TankFact.MistChanged) is { } changed && changed < lastLevel && Near(changed))
        {
            return (changed, entered);
        }

        var from = Reported.AddDays(-UnknownDays);
        return of.Design.Design.Planted is { } planted && planted > from
            ? (planted, entered)
            : (from, entered);
    }

    private bool Near(DateOnly day) => Reported.DayNumber - day.DayNumber is >= 1 and <= MostDays;

    /// <summary>The design with its floor drained over a level.</summary>
    private static CheckedDesign At(CheckedDesign design, double millimeters)
    {
        var text = string.Create(
            CultureInfo.InvariantCulture,
            $"{{ level: {Math.Max(0, millimeters):0.#} mm }}"
        );
        var edited = DesignEdits.SetPart(design.Document, "start", text);
        return
            edited.IsGood
            && DesignChecker.Check(edited.Value!, design.Catalog, design.Files) is { IsGood: true } good
            ? good.Value!
            : design;
    }
}
