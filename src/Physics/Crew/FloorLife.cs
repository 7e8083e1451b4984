using System.Collections.Immutable;

namespace Litterfall.Physics.Crew;

/// <summary>The ground of one day, at the depth where the crew lives.</summary>
/// <param name="Celsius">Mean temperature, °C.</param>
/// <param name="Kilopascals">Matric potential, kPa; 0 or less.</param>
/// <param name="Saturation">Share of the pores full of water, 0 to 1.</param>
public readonly record struct GroundDay(double Celsius, double Kilopascals, double Saturation);

/// <summary>A crew animal with its start.</summary>
/// <param name="Species">Its rates.</param>
/// <param name="Count">Mobile animals seeded, as adults.</param>
/// <param name="MostPerSquareMeter">What space alone bears, 1/m²; infinite where food limits it.</param>
public sealed record CrewStock(CrewSpecies Species, double Count, double MostPerSquareMeter);

/// <summary>Animals that eat of the crew.</summary>
/// <param name="Count">How many.</param>
/// <param name="Grams">Mass of each, g.</param>
/// <param name="Activity">1.5 for adults.</param>
/// <param name="CrewShare">Share of its food that it would take from springtails, 0 to 1.</param>
public sealed record CrewEater(double Count, double Grams, double Activity, double CrewShare);

/// <summary>A floor and what lives on it.</summary>
public sealed record FloorLifeSetup
{
    /// <summary>Floor, m².</summary>
    public required double SquareMeters { get; init; }

    /// <summary>The crew.</summary>
    public required ImmutableArray<CrewStock> Crew { get; init; }

    /// <summary>Dry leaf litter at the start, g.</summary>
    public required double LitterGrams { get; init; }

    /// <summary>Its decay constant at 24 °C, 1/y.</summary>
    public required double DecayPerYear { get; init; }

    /// <summary>Nitrogen of the litter, share of its dry mass.</summary>
    public required double LitterNitrogen { get; init; }

    /// <summary>Days after which litter is brought back to its start, again and again; 0 for never.</summary>
    public int TopUpEvery { get; init; }

    /// <summary>Who eats of the crew.</summary>
    public ImmutableArray<CrewEater> Eaters { get; init; } = [];

    /// <summary>Day they move in; never where negative.</summary>
    public int EatersFrom { get; init; } = -1;

    /// <summary>Nitrogen that plants can take up, g/d.</summary>
    public required double PlantGramsPerDay { get; init; }
}

/// <summary>The floor at the end of a day.</summary>
/// <param name="Mobile">Hatched animals of each stock.</param>
/// <param name="LitterGrams">Dry litter, g.</param>
/// <param name="EatenPerDay">Springtails eaten that day.</param>
/// <param name="BearablePerDay">Springtails that could be eaten that day without end.</param>
/// <param name="FliesPerDay">Small flies all eaters need besides.</param>
/// <param name="MineralGrams">Nitrogen free in the ground, g.</param>
public readonly record struct FloorLifeDay(
    ImmutableArray<double> Mobile,
    double LitterGrams,
    double EatenPerDay,
    double BearablePerDay,
    double FliesPerDay,
    double MineralGrams
);

/// <summary>Masses that went through a floor, g; each misses by rounding alone.</summary>
/// <param name="LitterMiss">Litter at the start and laid on, less what is left and gone.</param>
/// <param name="NitrogenMiss">
/// Nitrogen in litter, ground and plants at the end, less at the start and brought in.
/// </param>
/// <param name="NitrogenFromFood">Brought in with the food of the animals.</param>
/// <param name="NitrogenToPlants">Taken up by plants.</param>
/// <param name="LitterGone">Dry litter gone.</param>
/// <param name="LitterLaidOn">Dry litter laid on.</param>
public sealed record FloorLifeLedger(
    double LitterMiss,
    double NitrogenMiss,
    double NitrogenFromFood,
    double NitrogenToPlants,
    double LitterGone,
    double LitterLaidOn
);

/// <summary>
/// Crew, litter and nitrogen of a floor, day by day: leaves feed microbes, microbes the springtails,
/// springtails the animals,
/// whose waste feeds the ground again.
/// </summary>
/// <remarks>
/// Nearly all coefficients are recalled; the run tells orders of size and dates to weeks. Springtails are
/// crowded so that they
/// settle where their food ends (Beverton and Holt on laying); isopods by space. What eaters take of
/// springtails goes round
/// within the floor; what they eat besides brings nitrogen in.
/// </remarks>
public static class FloorLife
{
    private const double MicrobialShare = 0.35;
    private const double GrazedShare = 0.10;
    private const double MeanGrams = 15e-6;
    private const double IngestedPerDay = 0.08;
    private const double IngestionQ10 = 2.3;
    private const double FaunaEffect = 0.27;
    private const double FaunaFull = 20_000.0;
    private const double SearchSquareMeters = 0.01;
    private const double ExposedShare = 0.3;
    private const double HandlingDays = 0.002;
    private const double MostTaken = 0.9;
    private const double LeastAir = 0.10;
    private const double UptakePerDay = 0.1;

    /// <summary>Runs a floor.</summary>
    /// <param name="setup">The floor.</param>
    /// <param name="days">Its ground, day by day; repeated where it ends.</param>
    /// <param name="count">Days to run.</param>
    /// <param name="cancel">Cancels between days.</param>
    /// <returns>The end of each day, and the ledger.</returns>
    public static (ImmutableArray<FloorLifeDay> Days, FloorLifeLedger Ledger) Run(
        FloorLifeSetup setup,
        ImmutableArray<GroundDay> days,
        int count,
        CancellationToken cancel = default
    )
    {
        var run = new Course(setup, days[0]);
        var results = ImmutableArray.CreateBuilder<FloorLifeDay>(count);
        for (int day = 0; day < count; day++)
        {
            cancel.ThrowIfCancellationRequested();
            results.Add(run.Step(day, days[day % days.Length]));
        }

        return (results.MoveToImmutable(), run.Ledger());
    }

    private sealed class Course
    {
        private readonly FloorLifeSetup setup;
        private readonly CrewPopulation[] crew;
        private double litter;
        private double added;
        private double gone;
        private double mineral;
        private double inPlants;
        private double fromFood;

        public Course(FloorLifeSetup setup, GroundDay first)
        {
            this.setup = setup;
            litter = setup.LitterGrams;
            crew =
            [
                .. setup.Crew.Select(c => new CrewPopulation(c.Species.At(first.Celsius), c.Count, 0.0, 0.0)),
            ];
        }

        public FloorLifeLedger Ledger()
        {
            double n = setup.LitterNitrogen;
            return new FloorLifeLedger(
                setup.LitterGrams + added - litter - gone,
                (n * litter) + mineral + inPlants - (n * (setup.LitterGrams + added)) - fromFood,
                fromFood,
                inPlants,
                gone,
                added
            );
        }

        public FloorLifeDay Step(int day, GroundDay ground)
        {
            double laidOn =
                setup.TopUpEvery > 0 && day > 0 && day % setup.TopUpEvery == 0
                    ? Math.Max(0.0, setup.LitterGrams - litter)
                    : 0.0;
            litter += laidOn;
            added += laidOn;
            double springtails = Springtails();
            double fauna = FaunaEffect * Math.Min(1.0, springtails / setup.SquareMeters / FaunaFull);
            double rate = LitterDecay.PerDay(
                setup.DecayPerYear,
                ground.Celsius,
                ground.Kilopascals,
                ground.Saturation,
                fauna
            );
            double rotted = litter * (1.0 - Math.Exp(-rate));
            litter -= rotted;
            gone += rotted;
            mineral += setup.LitterNitrogen * rotted;
            var (eaten, flies) = Meals(day, ground, springtails);
            double bearable = Breed(
                ground,
                rotted,
                springtails > 0.0 ? Math.Min(MostTaken, eaten / springtails) : 0.0
            );
            double up = Math.Min(setup.PlantGramsPerDay, UptakePerDay * mineral);
            mineral -= up;
            inPlants += up;
            return new FloorLifeDay([.. crew.Select(c => c.Mobile)], litter, eaten, bearable, flies, mineral);
        }

        private double Springtails()
        {
            double sum = 0.0;
            for (int i = 0; i < crew.Length; i++)
            {
                sum += setup.Crew[i].Species.NeedsDamp ? crew[i].Mobile : 0.0;
            }

            return sum;
        }

        /// <summary>
        /// Springtails eaten, and flies that all eaters need besides; waste of these goes to the ground.
        /// </summary>
        private (double Eaten, double Flies) Meals(int day, GroundDay ground, double springtails)
        {
            if (setup.EatersFrom < 0 || day < setup.EatersFrom)
            {
                return (0.0, 0.0);
            }

            double eaten = 0.0;
            double flies = 0.0;
            foreach (var eater in setup.Eaters)
            {
                double need = FrogNeeds.FoodJoulesPerDay(eater.Grams, ground.Celsius, eater.Activity);
                double wanted = eater.CrewShare * need / FrogNeeds.SpringtailJoules;
                double take = FrogNeeds.Take(
                    ExposedShare * springtails / setup.SquareMeters,
                    SearchSquareMeters,
                    HandlingDays,
                    wanted
                );
                eaten += eater.Count * take;
                flies +=
                    eater.Count
                    * Math.Max(0.0, need - (take * FrogNeeds.SpringtailJoules))
                    / FrogNeeds.SmallFlyJoules;
            }

            eaten = Math.Min(eaten, MostTaken * springtails);
            double nitrogen =
                FrogNeeds.NitrogenMilligrams(FrogNeeds.FlyDryMass(flies * FrogNeeds.SmallFlyJoules)) / 1000.0;
            fromFood += nitrogen;
            mineral += nitrogen;
            return (eaten, flies);
        }

        /// <summary>
        /// A day of every stock; gives the springtails that could be eaten that day without end.
        /// </summary>
        private double Breed(GroundDay ground, double rotted, double removal)
        {
            double food = MicrobialShare * GrazedShare * rotted;
            double each = MeanGrams * IngestedPerDay * Math.Pow(IngestionQ10, (ground.Celsius - 20.0) / 10.0);
            double fed = food / each;
            double air = Math.Clamp((1.0 - ground.Saturation) / LeastAir, 0.0, 1.0);
            double bearable = 0.0;
            double all = Springtails();
            for (int i = 0; i < crew.Length; i++)
            {
                var stock = setup.Crew[i];
                var rates = stock.Species.At(ground.Celsius);
                double damp = (stock.Species.NeedsDamp ? GroundDamp.Laying(ground.Kilopascals) : 1.0) * air;
                double most = stock.Species.NeedsDamp ? fed : stock.MostPerSquareMeter * setup.SquareMeters;
                double net = rates.NetReproduction;
                double half = net > 1.0 ? most / (net - 1.0) : most;
                double crowd =
                    half > 0.0
                        ? 1.0 / (1.0 + ((stock.Species.NeedsDamp ? all : crew[i].Mobile) / half))
                        : 0.0;
                if (stock.Species.NeedsDamp)
                {
                    bearable +=
                        (rates with { EggsPerDay = rates.EggsPerDay * damp }).SustainableRemoval()
                        * crew[i].Mobile;
                }

                crew[i].Step(rates, damp * crowd, stock.Species.NeedsDamp ? removal : 0.0);
            }

            return bearable;
        }
    }
}
