using System.Collections.Immutable;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Forecasting.Climate;
using Litterfall.Forecasting.Coefficients;
using Litterfall.Physics.Crew;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Forecasting.Life;

/// <summary>Runs the life of a design's floor and turns it into answers.</summary>
internal sealed class FloorCourse
{
    /// <summary>g/d in a kg/s.</summary>
    private const double KilogramPerDay = 1000.0 * 86400.0;

    private readonly LifeInputs n;
    private readonly ModelCoefficients all;
    private readonly LifeCoefficients with;
    private readonly DateOnly planting;
    private readonly double area;
    private readonly FloorLifeSetup setup;
    private readonly ImmutableArray<GroundDay> ground;
    private readonly ImmutableArray<bool> isSpringtail;
    private readonly ImmutableArray<Figure> inputs;

    /// <summary>Leaves this little over what has to cover are as thin, m.</summary>
    private const double JustCovers = 1e-4;

    private int horizon;

    private FloorCourse(LifeInputs n, ImmutableArray<SeededKind> crew)
    {
        this.n = n;
        planting = BoxRun.FirstDay(n.Design);
        area = WaterBasins.Ground(n.Design, n.Box).Si;
        isSpringtail = [.. crew.Select(c => c.Species.NeedsDamp)];
        all = ModelCoefficients.Of(n.Design);
        with = all.Life;
        ground = FloorGround.Of(n, planting, with);
        setup = FloorSetups.Of(n, crew, all);
        NoteAnswers();
        inputs = FloorSetups.Inputs(n, crew, all);
    }

    /// <summary>
    /// What answers are read off with is taken after the runs, but rests below all of them.
    /// </summary>
    private void NoteAnswers()
    {
        Coefficient[] answers =
        [
            with.HalfBearable,
            with.Cover,
            with.LeastSpringtails,
            with.Breeds,
            with.Bred,
            with.Settled,
            with.MostSurvival,
        ];
        foreach (var one in answers)
        {
            one.Use();
        }
    }

    /// <summary>The life of a design; null without a floor.</summary>
    /// <param name="n">The design.</param>
    /// <param name="isBrief">Over two years and without seeding again, to compare many designs.</param>
    public static LifeFigures? Of(LifeInputs n, bool isBrief = false)
    {
        var crew = FloorSetups.Crew(n.Design);
        return !n.Box.IsBuildable || n.Box.OpenFloor.Si <= 0.0
            ? null
            : new FloorCourse(n, crew)
            {
                horizon = isBrief ? LifePolicy.BriefDays : LifePolicy.Days,
            }.Figures();
    }

    private Figure Of(string name, Unit unit, double si, string how = "run of the floor day by day") =>
        Figure.Computed(how, si, unit.Dimension, inputs.AsSpan()).As(name, unit, LifeFigures.Engine);

    private Figure Days(string name, int days) => Of(name, Unit.Day, days * 86400.0);

    /// <summary>g/(m² y).</summary>
    private Figure Load(string name, double grams) => Of(name, Unit.KilogramPerSquareMeter, grams / 1000.0);

    private double Springtails(FloorLifeDay day) => day.Mobile.Where((_, i) => isSpringtail[i]).Sum();

    private double Isopods(FloorLifeDay day) => day.Mobile.Where((_, i) => !isSpringtail[i]).Sum();

    private double Seeded => setup.Crew.Where(c => c.Species.NeedsDamp).Sum(c => c.Count);

    private LifeFigures Figures()
    {
        double appetite = setup.Eaters.Sum(e =>
            e.Count * e.CrewShare * setup.Rates.Frogs.FoodJoulesPerDay(e.Grams, ground[0].Celsius, e.Activity)
        );
        var young = with.YoungThatLive.Range!.Value;
        var alone = Alone(1.0);
        var hardy = Alone(young.High / with.YoungThatLive.Number);
        var frail = Alone(young.Low / with.YoungThatLive.Number);
        var ready = Ready(alone, appetite);
        var because = FloorWaits
            .Of(n, planting, isSpringtail, ready)
            .OrderByDescending(r => r.Day ?? DateOnly.MinValue)
            .ToImmutableArray();
        var from = because[0].Day ?? planting;
        int first = Math.Max(0, from.DayNumber - planting.DayNumber);
        int low = LitterLow();
        var inhabited = setup with { EatersFrom = first, TopUpEvery = low > 0 ? low : Math.Max(0, Halved()) };
        int length = Math.Max(horizon, first + 366);
        var (days, ledger) = FloorLife.Run(inhabited, ground, length);
        int eatenUp = setup.Eaters.IsEmpty ? -1 : EatenUp(days, first);
        return Told(
            new Course(from, because, ready)
            {
                ReadyBand = Band(ready.Day, Ready(hardy, appetite).Day, Ready(frail, appetite).Day),
                Then = [.. new[] { hardy, frail }.Where(d => d.Count > first).Select(d => d[first])],
                Appetite = appetite,
                Low = low,
                First = first,
                Days = days,
                Ledger = ledger,
                EatenUp = eatenUp,
                Reseed = eatenUp < 0 || horizon < LifePolicy.Days ? null : Reseed(inhabited, length),
            }
        );
    }

    /// <summary>Earliest and latest; no latest where one of them never comes.</summary>
    private static (int? Early, int? Late) Band(params ReadOnlySpan<int?> days)
    {
        int? early = null;
        int? late = int.MinValue;
        foreach (int? day in days)
        {
            early = early is null || day < early ? day ?? early : early;
            late = day is null || late is null ? null : Math.Max(late.Value, day.Value);
        }

        return (early, late);
    }

    /// <summary>What was run, before it is told.</summary>
    private sealed record Course(DateOnly From, ImmutableArray<WaitReason> Because, CrewReadiness Ready)
    {
        public (int? Early, int? Late) ReadyBand { get; init; }

        public double Appetite { get; init; }

        /// <summary>The first day of animals with more and with fewer young that live.</summary>
        public ImmutableArray<FloorLifeDay> Then { get; init; } = [];

        public int Low { get; init; }

        public int First { get; init; }

        public ImmutableArray<FloorLifeDay> Days { get; init; }

        public required FloorLifeLedger Ledger { get; init; }

        public int EatenUp { get; init; }

        public CrewReseed? Reseed { get; init; }
    }

    private LifeFigures Told(Course c)
    {
        var (days, first) = (c.Days, c.First);
        var then = days[first];
        var year = days[first..Math.Min(first + 365, days.Length)];
        double each = then.BearablePerDay > 0.0 ? then.BearableJoules / then.BearablePerDay : 0.0;
        return new LifeFigures
        {
            AnimalsFrom = c.From,
            Because = c.Because,
            CrewReady = c.Ready.Day is { } r ? Days("days until the crew is ready", r) : null,
            CrewReadyEarly = Maybe(c.ReadyBand.Early, "days until a hardier crew is ready"),
            CrewReadyLate = Maybe(c.ReadyBand.Late, "days until a frailer crew is ready"),
            SpringtailsThen = Counted("springtails when animals go in", c, then, Springtails),
            IsopodsThen = Counted("isopods when animals go in", c, then, Isopods),
            WarmestGround = Of(
                "mean of the floor's warmest day of the year",
                Unit.Celsius,
                Unit.Celsius.ToSiValue(ground.Max(g => g.Celsius)),
                "greatest daily mean of the ground's temperature"
            ),
            Appetite = Of(
                "springtails the animals would take a day",
                Unit.One,
                c.Appetite / (each > 0.0 ? each : setup.Rates.Frogs.SpringtailJoules)
            ),
            Bearable = Counted("springtails the crew bears to lose a day", c, then, d =>
                with.HalfBearable.UseSi() * d.BearablePerDay
            ),
            LeastSpringtails = Of(
                "least springtails in the first year with animals",
                Unit.PerSquareMeter,
                year.Min(Springtails) / area
            ),
            EatenUp = c.EatenUp < 0 ? null : Days("days until the crew is eaten up", c.EatenUp),
            IsEatenInFirstYear = c.EatenUp >= 0 && c.EatenUp < first + 365,
            Reseed = c.Reseed is { } more ? Of("springtails to add", Unit.One, more.Count) : null,
            ReseedEvery = c.Reseed is { } again ? Days("days between seedings", again.Every) : null,
            Masses = Masses(c, year),
            Days = days,
            IsSpringtail = isSpringtail,
        };
    }

    /// <summary>A number of that day, with the least and most over how many young live.</summary>
    private Banded Counted(string name, Course c, FloorLifeDay then, Func<FloorLifeDay, double> of)
    {
        double value = of(then);
        return new Banded(
            Of(name, Unit.One, value),
            c.Then.IsEmpty ? null : Of($"least {name}", Unit.One, Math.Min(value, c.Then.Min(of))),
            c.Then.IsEmpty ? null : Of($"most {name}", Unit.One, Math.Max(value, c.Then.Max(of)))
        );
    }

    private FloorMasses Masses(Course c, ImmutableArray<FloorLifeDay> year)
    {
        var ledger = c.Ledger;
        double flies = year.Average(d => d.FliesPerDay);
        return new FloorMasses
        {
            LitterLow =
                c.Low < 0
                    ? null
                    : Days(
                        FormattableString.Invariant(
                            $"days until the leaves cover less than {with.Cover.Number:0.##} cm"
                        ),
                        c.Low
                    ),
            TopUp = Of(
                "dry leaves that go in a year",
                Unit.Gram,
                ledger.LitterGone / c.Days.Length * 365.0 / 1000.0
            ),
            FliesPerDay = Of("small flies a day", Unit.One, flies),
            FliesPerWeek = Of("small flies a week", Unit.One, 7.0 * flies),
            Droppings = Of(
                "dry droppings a day",
                FloorMasses.MilligramPerDay,
                year.Average(d => d.DroppingsPerDay) / KilogramPerDay
            ),
            DroppingsEatable = Of(
                "dry droppings the isopods could eat a day, a year on",
                FloorMasses.MilligramPerDay,
                year[^1].DroppingsEatable / KilogramPerDay
            ),
            Nitrogen = Load(
                "nitrogen the food brings in, a year",
                ledger.NitrogenFromFood / Math.Max(1, c.Days.Length - c.First) * 365.0 / area
            ),
            PlantNitrogen = Load(
                "nitrogen plants can take up, a year",
                setup.PlantGramsPerDay * 365.0 / area
            ),
            LedgerError = Of(
                "miss of the ledgers of litter, droppings and nitrogen",
                Unit.Gram,
                new[]
                {
                    ledger.LitterBalanceError,
                    ledger.NitrogenBalanceError,
                    ledger.DroppingsBalanceError,
                }.Max(Math.Abs) / 1000.0
            ),
        };
    }

    private Figure? Maybe(int? days, string name) => days is { } d ? Days(name, d) : null;

    /// <summary>
    /// First day the leaves cover less than 2 cm; -1 where they never do in five years, or never did.
    /// </summary>
    private int LitterLow()
    {
        double depth = n.Layers.FirstOrDefault(l => l.Kind == LayerKind.Litter)?.Depth.Si ?? 0.0;

        // Leaves laid no deeper than they have to cover thin below it from the first day on.
        return depth <= with.Cover.UseSi() + JustCovers || setup.LitterGrams <= 0.0
            ? -1
            : FloorLife
                .Run(setup, ground, horizon)
                .Days.ToList()
                .FindIndex(d => d.LitterGrams / setup.LitterGrams * depth < with.Cover.UseSi());
    }

    /// <summary>
    /// First day half of the leaves are gone, where they were laid so thin that they never did more than
    /// cover; -1 elsewhere.
    /// </summary>
    private int Halved()
    {
        double depth = n.Layers.FirstOrDefault(l => l.Kind == LayerKind.Litter)?.Depth.Si ?? 0.0;
        return depth > with.Cover.UseSi() + JustCovers || setup.LitterGrams <= 0.0
            ? -1
            : FloorLife
                .Run(setup, ground, horizon)
                .Days.ToList()
                .FindIndex(d => d.LitterGrams < 0.5 * setup.LitterGrams);
    }

    /// <summary>First day with animals on which too few springtails are left; -1 where they last.</summary>
    private int EatenUp(ImmutableArray<FloorLifeDay> days, int first) =>
        isSpringtail.Contains(true)
            ? days.ToList().FindIndex(first, d => Springtails(d) / area < with.LeastSpringtails.Use())
            : -1;

    /// <summary>
    /// The longest time between seedings of what was seeded first that keeps the springtails up through five
    /// years; null where none that was tried does.
    /// </summary>
    private CrewReseed? Reseed(FloorLifeSetup inhabited, int length)
    {
        // By halves: what is seeded more often keeps up at least as well.
        CrewReseed? best = null;
        var (low, high) = (0, LifePolicy.ReseedWeeks.Length - 1);
        while (low <= high)
        {
            int middle = (low + high) / 2;
            int every = 7 * LifePolicy.ReseedWeeks[middle];
            var more = new CrewReseed(inhabited.EatersFrom + every, every, Seeded);
            var (days, _) = FloorLife.Run(inhabited with { Reseed = more }, ground, length);
            bool keeps = EatenUp(days, inhabited.EatersFrom) < 0;
            best = keeps ? more : best;
            (low, high) = keeps ? (low, middle - 1) : (middle + 1, high);
        }

        return best;
    }

    /// <summary>
    /// First day the crew bears the appetite or has settled, whichever comes first; no day where it does not
    /// breed here.
    /// </summary>
    private CrewReadiness Ready(List<FloorLifeDay> alone, double appetite)
    {
        if (alone.Count == 0)
        {
            return default;
        }

        double most = alone.Max(Springtails);
        if (most < with.Breeds.Use() * Seeded)
        {
            return default;
        }

        int bears =
            appetite <= 0.0
                ? alone.FindIndex(d => Springtails(d) >= with.Bred.Use() * Seeded)
                : alone.FindIndex(d =>
                    with.HalfBearable.UseSi() * d.BearableJoules >= appetite && Springtails(d) >= Seeded
                );
        int settled = alone.FindIndex(d => Springtails(d) >= with.Settled.UseSi() * most);

        // Whoever eats more waits no less: a crew that has settled is as ready as it will be.
        return bears >= 0 && bears <= settled
            ? new CrewReadiness(bears + 1, true, appetite > 0.0)
            : new CrewReadiness(settled + 1, appetite <= 0.0, appetite > 0.0);
    }

    /// <summary>The crew without animals, more or fewer young living; none without springtails.</summary>
    private List<FloorLifeDay> Alone(double hardier) =>
        !isSpringtail.Contains(true)
            ? []
            : FloorLife
                .Run(
                    setup with
                    {
                        Crew =
                        [
                            .. setup.Crew.Select(c =>
                                c with
                                {
                                    Species = CrewKinds.Hardier(c.Species, hardier, with),
                                }
                            ),
                        ],
                    },
                    ground,
                    LifePolicy.ReadyDays
                )
                .Days.ToList();
}
