using System.Collections.Immutable;

namespace Litterfall.Physics.Crew;

/// <summary>
/// Crew, litter and nitrogen of a floor, day by day: leaves feed microbes, microbes the springtails,
/// springtails and isopods the animals, whose droppings feed isopods and microbes again.
/// </summary>
/// <remarks>
/// Nearly all coefficients are recalled; the run tells orders of size and dates to weeks. Springtails are
/// crowded so that they settle where their food ends (Beverton and Holt on laying); isopods by space. What
/// eaters take of the crew goes round within the floor; what they eat besides brings nitrogen in.
/// </remarks>
public static class FloorLife
{
    // Rotting leaves turn to microbes by 35 %, of which springtails graze a tenth (both recalled).
    private const double MicrobialShare = 0.35;
    private const double GrazedShare = 0.10;

    // A mean springtail of 15 µg eats 8 % of its dry mass a day at 20 °C, 2.3 times as much for 10 K
    // (recalled, order of Petersen and Luxton 1982).
    private const double MeanGrams = 15e-6;
    private const double IngestedPerDay = 0.08;
    private const double IngestionQ10 = 2.3;

    // Fauna speeds decay by 27 % (García-Palacios et al. 2013, abstract), fully from 20,000 springtails for
    // each square meter on: upper end of the lowland tropics (recalled, Petersen and Luxton 1982).
    private const double FaunaEffect = 0.27;
    private const double FaunaFull = 20_000.0;

    // An animal searches a patch of 10 by 10 cm closely in a day and needs three minutes for each prey:
    // own choices, set so that at 10,000 exposed springtails for each square meter it takes about as many as
    // two to three fills of a stomach hold (33 and 85 prey read in stomachs).
    private const double SearchSquareMeters = 0.01;
    private const double HandlingDays = 0.002;

    // No hunter finds the last tenth of a day's prey: own choice, so that a day never empties a stock.
    private const double MostTaken = 0.9;

    // Droppings that nobody eats are gone within weeks at 24 °C, soft as they are: own choice.
    private const double DroppingsRotPerDay = 0.1;

    // Roots reach a tenth of the free nitrogen in a day: own choice; what plants can hold limits them first.
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

    /// <summary>Mean energy of a hatched animal, J.</summary>
    /// <param name="body">Its body.</param>
    /// <param name="juveniles">Juveniles.</param>
    /// <param name="adults">Adults.</param>
    private static double Joules(CrewBody body, double juveniles, double adults) =>
        body.JoulesPerMilligram * Fresh(body, juveniles, adults);

    private static double Fresh(CrewBody body, double juveniles, double adults) =>
        (juveniles * body.YoungMilligrams) + (adults * body.AdultMilligrams);

    private sealed class Course
    {
        private readonly FloorLifeSetup setup;
        private readonly CrewPopulation[] crew;
        private readonly double[] juvenilesTaken;
        private readonly double[] adultsTaken;
        private double litter;
        private double added;
        private double gone;
        private double mineral;
        private double inPlants;
        private double fromFood;
        private double droppings;
        private double fallen;
        private double cleared;

        public Course(FloorLifeSetup setup, GroundDay first)
        {
            this.setup = setup;
            litter = setup.LitterGrams;
            crew =
            [
                .. setup.Crew.Select(c => new CrewPopulation(c.Species.At(first.Celsius), c.Count, 0.0, 0.0)),
            ];
            juvenilesTaken = new double[crew.Length];
            adultsTaken = new double[crew.Length];
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
                added,
                fallen - cleared - droppings
            );
        }

        public FloorLifeDay Step(int day, GroundDay ground)
        {
            TopUp(day);
            SeedAgain(day);
            double rotted = Rot(ground);
            var meal = Meals(day, ground);
            double fell = FrogNeeds.FecesMilligrams(FrogNeeds.FlyDryMass(meal.Joules)) / 1000.0;
            var (fromDroppings, eatable) = Clear(fell, ground.Celsius);
            var (bearable, energy) = Breed(ground, rotted + fromDroppings);
            double up = Math.Min(setup.PlantGramsPerDay, UptakePerDay * mineral);
            mineral -= up;
            inPlants += up;
            return new FloorLifeDay([.. crew.Select(c => c.Mobile)], litter, mineral)
            {
                EatenPerDay = meal.Springtails,
                BearablePerDay = bearable,
                BearableJoules = energy,
                FliesPerDay = meal.Flies,
                DroppingsGrams = droppings,
                DroppingsPerDay = fell,
                DroppingsEatable = eatable,
            };
        }

        private void TopUp(int day)
        {
            if (setup.TopUpEvery > 0 && day > 0 && day % setup.TopUpEvery == 0)
            {
                double laidOn = Math.Max(0.0, setup.LitterGrams - litter);
                litter += laidOn;
                added += laidOn;
            }
        }

        private void SeedAgain(int day)
        {
            if (setup.Reseed is not { } more || day < more.From || (day - more.From) % more.Every != 0)
            {
                return;
            }

            double seeded = setup.Crew.Where(c => c.Species.NeedsDamp).Sum(c => c.Count);
            for (int i = 0; i < crew.Length; i++)
            {
                if (setup.Crew[i].Species.NeedsDamp && seeded > 0.0)
                {
                    crew[i].Add(more.Count * setup.Crew[i].Count / seeded);
                }
            }
        }

        /// <summary>Litter that goes, g.</summary>
        private double Rot(GroundDay ground)
        {
            double fauna = FaunaEffect * Math.Min(1.0, Springtails() / setup.SquareMeters / FaunaFull);
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
            return rotted;
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
        /// Droppings that fall are eaten by isopods as far as they can, and rot besides. Gives what rots, g,
        /// and what could be eaten, g/d.
        /// </summary>
        private (double Rotted, double Eatable) Clear(double fell, double celsius)
        {
            fallen += fell;
            droppings += fell;
            double eatable = 0.0;
            for (int i = 0; i < crew.Length; i++)
            {
                var body = setup.Crew[i].Body;
                eatable += body.Droppings * Fresh(body, crew[i].Juveniles, crew[i].Adults) / 1000.0;
            }

            double eaten = Math.Min(droppings, eatable);
            droppings -= eaten;
            double warmth = LitterDecay.WarmthFactor(celsius);
            double rotted = droppings * (1.0 - Math.Exp(-DroppingsRotPerDay * warmth));
            droppings -= rotted;
            cleared += eaten + rotted;
            return (rotted, eatable);
        }

        /// <summary>
        /// What is eaten of the crew, and flies that all eaters need besides, whose nitrogen goes to the
        /// ground.
        /// </summary>
        private (double Springtails, double Flies, double Joules) Meals(int day, GroundDay ground)
        {
            Array.Clear(juvenilesTaken);
            Array.Clear(adultsTaken);
            if (setup.EatersFrom < 0 || day < setup.EatersFrom)
            {
                return (0.0, 0.0, 0.0);
            }

            double flyJoules = 0.0;
            double needed = 0.0;
            foreach (var eater in setup.Eaters)
            {
                double need = FrogNeeds.FoodJoulesPerDay(eater.Grams, ground.Celsius, eater.Activity);
                double found = Hunt(eater, eater.CrewShare * need);
                flyJoules += eater.Count * Math.Max(0.0, need - found);
                needed += eater.Count * need;
            }

            double nitrogen = FrogNeeds.NitrogenMilligrams(FrogNeeds.FlyDryMass(flyJoules)) / 1000.0;
            fromFood += nitrogen;
            mineral += nitrogen;
            return (Taken(), flyJoules / FrogNeeds.SmallFlyJoules, needed);
        }

        /// <summary>
        /// What one animal of a kind finds, J: of each stock and age as much as it meets and bothers with.
        /// </summary>
        private double Hunt(CrewEater eater, double wanted)
        {
            double met = 0.0;
            double energy = 0.0;
            for (int i = 0; i < crew.Length; i++)
            {
                var body = setup.Crew[i].Body;
                double each = SearchSquareMeters * body.Exposed / setup.SquareMeters;
                double young = each * crew[i].Juveniles * FrogNeeds.Sees(body.YoungMilligrams, eater.Grams);
                double grown = each * crew[i].Adults * FrogNeeds.Sees(body.AdultMilligrams, eater.Grams);
                met += young + grown;
                energy += Joules(body, young, grown);
            }

            if (met <= 0.0 || wanted <= 0.0)
            {
                return 0.0;
            }

            // Holling 1959 over all prey together, and not more energy than wanted.
            double most = FrogNeeds.Take(met, 1.0, HandlingDays, double.PositiveInfinity) / met;
            double share = Math.Min(most, wanted / energy);
            for (int i = 0; i < crew.Length; i++)
            {
                var body = setup.Crew[i].Body;
                double each = eater.Count * share * SearchSquareMeters * body.Exposed / setup.SquareMeters;
                juvenilesTaken[i] += each * FrogNeeds.Sees(body.YoungMilligrams, eater.Grams);
                adultsTaken[i] += each * FrogNeeds.Sees(body.AdultMilligrams, eater.Grams);
            }

            return share * energy;
        }

        /// <summary>Bounds the shares taken, and gives the springtails these are.</summary>
        private double Taken()
        {
            double springtails = 0.0;
            for (int i = 0; i < crew.Length; i++)
            {
                juvenilesTaken[i] = Math.Min(MostTaken, juvenilesTaken[i]);
                adultsTaken[i] = Math.Min(MostTaken, adultsTaken[i]);
                springtails += setup.Crew[i].Species.NeedsDamp
                    ? (juvenilesTaken[i] * crew[i].Juveniles) + (adultsTaken[i] * crew[i].Adults)
                    : 0.0;
            }

            return springtails;
        }

        /// <summary>
        /// A day of every stock; gives the springtails that could be eaten that day without end, and their
        /// energy in J.
        /// </summary>
        private (double Count, double Joules) Breed(GroundDay ground, double rotted)
        {
            double food = MicrobialShare * GrazedShare * rotted;
            double each = MeanGrams * IngestedPerDay * Math.Pow(IngestionQ10, (ground.Celsius - 20.0) / 10.0);
            double air = GroundDamp.Airy(ground.Air);
            var (eggsDrown, animalsDrown) = GroundDamp.Drown(ground.Air);
            double bearable = 0.0;
            double energy = 0.0;
            double all = Springtails();
            for (int i = 0; i < crew.Length; i++)
            {
                var stock = setup.Crew[i];
                var rates = stock.Species.At(ground.Celsius);
                bool isSpringtail = stock.Species.NeedsDamp;
                double damp = air * (isSpringtail ? GroundDamp.Laying(ground.Kilopascals) : 1.0);
                double most = isSpringtail ? food / each : stock.MostPerSquareMeter * setup.SquareMeters;
                double crowd = Crowded(rates, most, isSpringtail ? all : crew[i].Mobile);
                if (isSpringtail)
                {
                    double share = (rates with { EggsPerDay = rates.EggsPerDay * damp }).SustainableRemoval();
                    bearable += share * crew[i].Mobile;
                    energy += share * Joules(stock.Body, crew[i].Juveniles, crew[i].Adults);
                }

                crew[i]
                    .Step(
                        rates,
                        new CrewDay
                        {
                            Laying = damp * crowd,
                            Growth = isSpringtail ? GroundDamp.Growth(ground.Kilopascals) : 1.0,
                            JuvenilesTaken = juvenilesTaken[i],
                            AdultsTaken = adultsTaken[i],
                            EggsDrowned = isSpringtail ? eggsDrown : animalsDrown,
                            AnimalsDrowned = animalsDrown,
                        }
                    );
            }

            return (bearable, energy);
        }

        /// <summary>
        /// Factor of laying that lets a stock settle at the most that is fed, or has space.
        /// </summary>
        private static double Crowded(LifeTable rates, double most, double count)
        {
            double net = rates.NetReproduction;
            double half = net > 1.0 ? most / (net - 1.0) : most;
            return half > 0.0 ? 1.0 / (1.0 + (count / half)) : 0.0;
        }
    }
}
