using System.Collections.Immutable;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Quantities;
using Litterfall.Physics.Crew;
using Litterfall.Planning.Building;
using Litterfall.Planning.Care;
using Litterfall.Planning.Climate;

namespace Litterfall.Planning.Life;

/// <summary>Runs the life of a design's floor and turns it into answers.</summary>
internal sealed class FloorCourse
{
    private readonly DesignNumbers n;
    private readonly DateOnly planting;
    private readonly double area;
    private readonly FloorLifeSetup setup;
    private readonly ImmutableArray<GroundDay> ground;
    private readonly ImmutableArray<bool> isSpringtail;
    private readonly ImmutableArray<Figure> inputs;

    private FloorCourse(
        DesignNumbers n,
        ImmutableArray<(CatalogEntry Entry, CrewSpecies Species, int Count)> crew
    )
    {
        this.n = n;
        planting = BoxRun.FirstDay(n.Design);
        area = n.Box.OpenFloor.Si;
        isSpringtail = [.. crew.Select(c => c.Species.NeedsDamp)];
        var litter = n.Layers.FirstOrDefault(l => l.Layer == "litter");
        ground = Ground();
        inputs = Inputs(crew, litter?.Material);
        setup = new FloorLifeSetup
        {
            SquareMeters = area,
            Crew =
            [
                .. crew.Select(c => new CrewStock(
                    c.Species,
                    c.Count,
                    c.Species.NeedsDamp ? double.PositiveInfinity : LifePolicy.IsopodsPerSquareMeter
                )),
            ],
            LitterGrams = (litter?.DryMass?.Si ?? 0.0) * 1000.0,
            DecayPerYear = litter?.Material?.Values.GetValueOrDefault("decayAt24C")?.Number ?? 1.0,
            LitterNitrogen =
                LifePolicy.Carbon
                / (litter?.Material?.Values.GetValueOrDefault("carbonToNitrogen")?.Number ?? 55.0),
            Eaters = [.. Eaters(n)],
            PlantGramsPerDay =
                n.Design.Design.Plants.Count == 0
                    ? 0.0
                    : area * LifePolicy.GrowthGrams * LifePolicy.PlantNitrogen,
        };
    }

    /// <summary>The life of a design; null without crew or floor.</summary>
    public static LifeFigures? Of(DesignNumbers n)
    {
        var crew = n
            .Design.Design.Crew.Select(
                (c, i) => (Entry: n.Design.Entry(FormattableString.Invariant($"crew[{i}].animal")), c.Count)
            )
            .Where(c => c.Count > 0)
            .Select(c => (c.Entry, Species: CrewKinds.Of(c.Entry), c.Count))
            .Where(c => c.Species is not null)
            .Select(c => (c.Entry, c.Species!, c.Count))
            .ToImmutableArray();
        return crew.IsEmpty || !n.Box.IsBuildable ? null : new FloorCourse(n, crew).Figures();
    }

    private static IEnumerable<CrewEater> Eaters(DesignNumbers n) =>
        BoxAnimal
            .Of(n)
            .Where(a => a.Resident.Count > 0 && a.Class == AnimalClass.Amphibian)
            .Select(a =>
            {
                double grams = a.Entry.Values.GetValueOrDefault("mass")?.Number ?? 2.0;
                bool eats = a.Entry.Text("food")?.Contains("springtail", StringComparison.Ordinal) == true;
                double share = eats
                    ? Math.Clamp(
                        LifePolicy.CrewShareAtNothing - (LifePolicy.CrewSharePerGram * grams),
                        0.0,
                        LifePolicy.MostCrewShare
                    )
                    : 0.0;
                return new CrewEater(a.Resident.Count, grams, LifePolicy.Activity, share);
            });

    /// <summary>
    /// A year of ground: warmth of the season nearest, damp and air of the floor's forecast.
    /// </summary>
    private ImmutableArray<GroundDay> Ground()
    {
        var seasons = n.Climate?.Computed?.Seasons ?? [];
        double held = n.Climate is { Computed: null } c
            ? c.AirMean.Value.Si - 273.15
            : LifePolicy.UsualCelsius;
        var floor = n.Water.Forecast;
        var days = ImmutableArray.CreateBuilder<GroundDay>(365);
        for (int day = 0; day < 365; day++)
        {
            var date = planting.AddDays(day);
            double celsius = seasons.IsEmpty
                ? held
                : seasons.MinBy(s => Apart(s.First, date))!.Days.Celsius.Mean;
            var floorDay = floor is { Days.Length: > 0 }
                ? floor.Days[Math.Min(day, floor.Days.Length - 1)]
                : default;
            double suction = floor is { Days.Length: > 0 }
                ? Math.Min(0.0, floorDay.CrewHeadMeters * LifePolicy.KilopascalsPerMeter)
                : LifePolicy.UsualKilopascals;
            double saturation = floor is { Days.Length: > 0 }
                ? Math.Clamp(1.0 - floorDay.LeastAir, 0.0, 1.0)
                : LifePolicy.UsualSaturation;
            days.Add(new GroundDay(celsius, suction, saturation));
        }

        return days.MoveToImmutable();
    }

    /// <summary>Days between two dates around the year.</summary>
    private static int Apart(DateOnly a, DateOnly b)
    {
        int between = Math.Abs(a.DayOfYear - b.DayOfYear);
        return Math.Min(between, 365 - between);
    }

    private ImmutableArray<Figure> Inputs(
        ImmutableArray<(CatalogEntry Entry, CrewSpecies Species, int Count)> crew,
        CatalogEntry? leaves
    )
    {
        IEnumerable<Figure?> all = crew.SelectMany(
                (c, i) =>
                    new[]
                    {
                        n.Design.Count(
                            FormattableString.Invariant($"crew[{i}].count"),
                            $"number of {c.Entry.Name}",
                            c.Count
                        ),
                        c.Entry.Figure("T0"),
                        c.Entry.Figure("survival"),
                    }
            )
            .Append(leaves?.Figure("decayAt24C"))
            .Append(n.Box.OpenFloor);
        return [.. all.OfType<Figure>()];
    }

    private Figure Of(string name, Unit unit, double si, string how = "run of the floor day by day") =>
        Figure.Computed(how, si, unit.Dimension, inputs.AsSpan()).As(name, unit, LifeFigures.Engine);

    private Figure Days(string name, int days) => Of(name, Units.Day, days * 86400.0);

    /// <summary>g/(m² y).</summary>
    private Figure Load(string name, double grams) => Of(name, Units.KilogramPerSquareMeter, grams / 1000.0);

    private double Springtails(FloorLifeDay day) => day.Mobile.Where((_, i) => isSpringtail[i]).Sum();

    private double Isopods(FloorLifeDay day) => day.Mobile.Where((_, i) => !isSpringtail[i]).Sum();

    private LifeFigures Figures()
    {
        var alone = FloorLife.Run(setup, ground, LifePolicy.ReadyDays).Days;
        double appetite =
            setup.Eaters.Sum(e =>
                e.Count * e.CrewShare * FrogNeeds.FoodJoulesPerDay(e.Grams, ground[0].Celsius, e.Activity)
            ) / FrogNeeds.SpringtailJoules;
        int? ready = Ready(alone, appetite);
        var because = Because(ready).OrderByDescending(r => r.Day).ToImmutableArray();
        var from = because[0].Day;
        int first = Math.Max(0, from.DayNumber - planting.DayNumber);
        int low = LitterLow();
        var (days, ledger) = FloorLife.Run(
            setup with
            {
                EatersFrom = first,
                TopUpEvery = Math.Max(0, low),
            },
            ground,
            Math.Max(LifePolicy.Days, first + 366)
        );
        return Told(
            new Course(from, because, ready, appetite)
            {
                Low = low,
                First = first,
                Days = days,
                Ledger = ledger,
            }
        );
    }

    /// <summary>What was run, before it is told.</summary>
    private sealed record Course(
        DateOnly From,
        ImmutableArray<WaitReason> Because,
        int? Ready,
        double Appetite
    )
    {
        public int Low { get; init; }

        public int First { get; init; }

        public ImmutableArray<FloorLifeDay> Days { get; init; }

        public required FloorLifeLedger Ledger { get; init; }
    }

    private LifeFigures Told(Course c)
    {
        var (days, first, ledger) = (c.Days, c.First, c.Ledger);
        int year = Math.Min(first + 365, days.Length);
        var withAnimals = days[first..year];
        double least = withAnimals.Min(Springtails) / area;
        int eatenUp = days.ToList()
            .FindIndex(first, d => Springtails(d) / area < LifePolicy.LeastSpringtails);
        double flies = withAnimals.Average(d => d.FliesPerDay);
        double nitrogen = ledger.NitrogenFromFood / Math.Max(1, days.Length - first) * 365.0 / area;
        return new LifeFigures
        {
            AnimalsFrom = c.From,
            Because = c.Because,
            CrewReady = c.Ready is { } r ? Days("days until the crew is ready", r) : null,
            SpringtailsThen = Of("springtails when animals go in", Units.One, Springtails(days[first])),
            IsopodsThen = Of("isopods when animals go in", Units.One, Isopods(days[first])),
            Appetite = Of("springtails the animals would take a day", Units.One, c.Appetite),
            Bearable = Of(
                "springtails the crew bears to lose a day",
                Units.One,
                LifePolicy.HalfBearable * days[first].BearablePerDay
            ),
            LeastSpringtails = Of(
                "least springtails in the first year with animals",
                Units.PerSquareMeter,
                least
            ),
            EatenUp =
                eatenUp < 0 || setup.Eaters.IsEmpty ? null : Days("days until the crew is eaten up", eatenUp),
            Reseed =
                eatenUp < 0 || setup.Eaters.IsEmpty
                    ? null
                    : Of(
                        "springtails to add",
                        Units.One,
                        setup.Crew.Where(c => c.Species.NeedsDamp).Sum(c => c.Count)
                    ),
            LitterLow = c.Low < 0 ? null : Days("days until the leaves cover less than 2 cm", c.Low),
            TopUp = Of(
                "dry leaves that go in a year",
                Water.FloorWater.Gram,
                ledger.LitterGone / days.Length * 365.0 / 1000.0
            ),
            FliesPerDay = Of("small flies a day", Units.One, flies),
            FliesPerWeek = Of("small flies a week", Units.One, 7.0 * flies),
            Nitrogen = Load("nitrogen the food brings in, a year", nitrogen),
            PlantNitrogen = Load(
                "nitrogen plants can take up, a year",
                setup.PlantGramsPerDay * 365.0 / area
            ),
            LedgerError = Of(
                "miss of the ledgers of litter and nitrogen",
                Water.FloorWater.Gram,
                Math.Max(Math.Abs(ledger.LitterMiss), Math.Abs(ledger.NitrogenMiss)) / 1000.0
            ),
            Days = days,
            IsSpringtail = isSpringtail,
        };
    }

    /// <summary>
    /// First day the leaves cover less than 2 cm; -1 where they never do in five years, or never did.
    /// </summary>
    private int LitterLow()
    {
        double depth = n.Layers.FirstOrDefault(l => l.Layer == "litter")?.Depth.Si ?? 0.0;
        return depth < LifePolicy.CoverMeters || setup.LitterGrams <= 0.0
            ? -1
            : FloorLife
                .Run(setup, ground, LifePolicy.Days)
                .Days.ToList()
                .FindIndex(d => d.LitterGrams / setup.LitterGrams * depth < LifePolicy.CoverMeters);
    }

    /// <summary>
    /// First day the crew bears the appetite, or has settled where it never bears it; null where it dies out.
    /// </summary>
    private int? Ready(ImmutableArray<FloorLifeDay> alone, double appetite)
    {
        if (!isSpringtail.Contains(true))
        {
            return null;
        }

        double seeded = setup.Crew.Where(c => c.Species.NeedsDamp).Sum(c => c.Count);
        double most = alone.Max(Springtails);
        if (appetite <= 0.0)
        {
            int bred = alone.ToList().FindIndex(d => Springtails(d) >= LifePolicy.Bred * seeded);
            return bred < 0 ? null : bred + 1;
        }

        if (most < 1.5 * seeded && appetite > LifePolicy.HalfBearable * alone.Max(d => d.BearablePerDay))
        {
            return null;
        }

        int bears = alone
            .ToList()
            .FindIndex(d =>
                appetite > 0.0
                && LifePolicy.HalfBearable * d.BearablePerDay >= appetite
                && Springtails(d) >= seeded
            );
        return bears >= 0
            ? bears + 1
            : alone.ToList().FindIndex(d => Springtails(d) >= LifePolicy.Settled * most) + 1;
    }

    private IEnumerable<WaitReason> Because(int? ready)
    {
        yield return new WaitReason(
            "the box grows in for 28 days and what is glued has cured (habit of the trade, no source)",
            AnimalDates.GrownIn(n, planting)
        );
        if (ready is { } day)
        {
            yield return new WaitReason(
                "the springtails have bred up to what the animals take (computed on recalled rates)",
                planting.AddDays(day)
            );
        }
    }
}
