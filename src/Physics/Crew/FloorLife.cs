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
        private readonly FloorLifeRates rates;
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
            rates = setup.Rates;
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
            double fell = rates.Frogs.FecesMilligrams(rates.Frogs.FlyDryMass(meal.Joules)) / 1000.0;
            var (fromDroppings, eatable) = Clear(fell, ground.Celsius);
            var (bearable, energy) = Breed(ground, rotted + fromDroppings);
            double up = Math.Min(setup.PlantGramsPerDay, rates.UptakePerDay * mineral);
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
            double fauna =
                rates.FaunaEffect * Math.Min(1.0, Springtails() / setup.SquareMeters / rates.FaunaFull);
            double rate = rates.Decay.PerDay(
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
            double rotted = droppings * (1.0 - Math.Exp(-rates.DroppingsRotPerDay * warmth));
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
                double need = rates.Frogs.FoodJoulesPerDay(eater.Grams, ground.Celsius, eater.Activity);
                double found = Hunt(eater, eater.CrewShare * need);
                flyJoules += eater.Count * Math.Max(0.0, need - found);
                needed += eater.Count * need;
            }

            double nitrogen = rates.Frogs.NitrogenMilligrams(rates.Frogs.FlyDryMass(flyJoules)) / 1000.0;
            fromFood += nitrogen;
            mineral += nitrogen;
            return (Taken(), flyJoules / rates.Frogs.SmallFlyJoules, needed);
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
                double each = rates.SearchSquareMeters * body.Exposed / setup.SquareMeters;
                double young = each * crew[i].Juveniles * rates.Frogs.Sees(body.YoungMilligrams, eater.Grams);
                double grown = each * crew[i].Adults * rates.Frogs.Sees(body.AdultMilligrams, eater.Grams);
                met += young + grown;
                energy += Joules(body, young, grown);
            }

            if (met <= 0.0 || wanted <= 0.0)
            {
                return 0.0;
            }

            // Holling 1959 over all prey together, and not more energy than wanted.
            double most = FrogNeeds.Take(met, 1.0, rates.HandlingDays, double.PositiveInfinity) / met;
            double share = Math.Min(most, wanted / energy);
            for (int i = 0; i < crew.Length; i++)
            {
                var body = setup.Crew[i].Body;
                double each =
                    eater.Count * share * rates.SearchSquareMeters * body.Exposed / setup.SquareMeters;
                juvenilesTaken[i] += each * rates.Frogs.Sees(body.YoungMilligrams, eater.Grams);
                adultsTaken[i] += each * rates.Frogs.Sees(body.AdultMilligrams, eater.Grams);
            }

            return share * energy;
        }

        /// <summary>Bounds the shares taken, and gives the springtails these are.</summary>
        private double Taken()
        {
            double springtails = 0.0;
            for (int i = 0; i < crew.Length; i++)
            {
                juvenilesTaken[i] = Math.Min(rates.MostTaken, juvenilesTaken[i]);
                adultsTaken[i] = Math.Min(rates.MostTaken, adultsTaken[i]);
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
            double food = rates.MicrobialShare * rates.GrazedShare * rotted;
            double each =
                rates.MeanGrams
                * rates.IngestedPerDay
                * Math.Pow(rates.IngestionQ10, (ground.Celsius - 20.0) / 10.0);
            double air = rates.Damp.Airy(ground.Air);
            var (eggsDrown, animalsDrown) = rates.Damp.Drown(ground.Air);
            double bearable = 0.0;
            double energy = 0.0;
            double all = Springtails();
            for (int i = 0; i < crew.Length; i++)
            {
                var stock = setup.Crew[i];
                var table = stock.Species.At(ground.Celsius);
                bool isSpringtail = stock.Species.NeedsDamp;
                double damp = air * (isSpringtail ? rates.Damp.Laying(ground.Kilopascals) : 1.0);
                double most = isSpringtail ? food / each : stock.MostPerSquareMeter * setup.SquareMeters;
                double crowd = Crowded(table, most, isSpringtail ? all : crew[i].Mobile);
                if (isSpringtail)
                {
                    double share = (table with { EggsPerDay = table.EggsPerDay * damp }).SustainableRemoval();
                    bearable += share * crew[i].Mobile;
                    energy += share * Joules(stock.Body, crew[i].Juveniles, crew[i].Adults);
                }

                crew[i]
                    .Step(
                        table,
                        new CrewDay
                        {
                            Laying = damp * crowd,
                            Growth = isSpringtail ? rates.Damp.Growth(ground.Kilopascals) : 1.0,
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
        private static double Crowded(LifeTable table, double most, double count)
        {
            double net = table.NetReproduction;
            double half = net > 1.0 ? most / (net - 1.0) : most;
            return half > 0.0 ? 1.0 / (1.0 + (count / half)) : 0.0;
        }
    }
}
