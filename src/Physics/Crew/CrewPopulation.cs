namespace Litterfall.Physics.Crew;

/// <summary>
/// A population by the ages of its young and the number of its adults, stepped by days. The young are a row
/// of day cohorts
/// along their development from laid (0) to laying (1), each spread evenly over the development of the day it
/// was laid on; so
/// they age by the temperature of every day. With stages of whole days this is the matrix of day classes,
/// exactly.
/// </summary>
/// <remarks>
/// Not three stages with chances to move on: some animals would mature on their second day, and the
/// population grow
/// twice as fast.
/// </remarks>
public sealed class CrewPopulation
{
    private const double Slight = 1e-9;
    private readonly List<Cohort> young = [];
    private double adults;

    /// <summary>Animals of an age.</summary>
    /// <param name="Low">Development of the youngest, 0 to 1.</param>
    /// <param name="Width">Spread of development.</param>
    /// <param name="Count">How many.</param>
    private readonly record struct Cohort(double Low, double Width, double Count)
    {
        /// <summary>The part below a development and the part from it on.</summary>
        public (Cohort Below, Cohort From) CutAt(double place)
        {
            double share =
                Width > 0.0 ? (Low + Width - place) / Width
                : Low >= place ? 1.0
                : 0.0;
            return share <= Slight ? (this, default)
                : share >= 1.0 - Slight ? (default, this)
                : (
                    new Cohort(Low, Width * (1.0 - share), Count * (1.0 - share)),
                    new Cohort(place, Width * share, Count * share)
                );
        }
    }

    /// <summary>A population to begin with.</summary>
    /// <param name="rates">Rates of its first day.</param>
    /// <param name="adultCount">Adults.</param>
    /// <param name="justHatched">Juveniles hatched today.</param>
    /// <param name="justLaid">Eggs laid today.</param>
    public CrewPopulation(LifeTable rates, double adultCount, double justHatched, double justLaid)
    {
        adults = adultCount;
        double day = Progress(rates);
        HatchShare = Hatches(rates);
        // A day class before laying counts as adult: so do those that hatch into it.
        var (rest, done) = new Cohort(HatchShare, day, justHatched).CutAt(1.0 - day);
        adults += done.Count;
        AddYoung(rest);
        AddYoung(new Cohort(0.0, day, justLaid));
    }

    private CrewPopulation(double hatchShare) => HatchShare = hatchShare;

    /// <summary>
    /// A population whose ages have settled: class i of the day classes holds (p ÷ λ)^(i − 1) of the first,
    /// with p what lives through a day of growing up; adults alone where nothing grows up.
    /// </summary>
    /// <param name="rates">Rates, in whole days.</param>
    /// <param name="mobile">Juveniles and adults.</param>
    public static CrewPopulation Settled(LifeTable rates, double mobile)
    {
        double growth = rates.GrowthFactor();
        double day = Progress(rates);
        if (day <= 0.0 || growth <= rates.AdultSurvivalPerDay)
        {
            return new CrewPopulation(rates, mobile, 0.0, 0.0);
        }

        double live = Math.Pow(rates.SurvivalToAdult, 1.0 / (rates.Days - 1.0));
        var all = new CrewPopulation(rates.EggDays / rates.Days);
        double count = 1.0;
        for (int i = 1; i < rates.Days; i++)
        {
            all.AddYoung(new Cohort((i - 1) * day, day, count));
            count *= live / growth;
        }

        // The last class before laying, a day on: those who come of age over those who leave.
        all.adults = count * growth / (growth - rates.AdultSurvivalPerDay);
        all.Scale(mobile / all.Mobile);
        return all;
    }

    /// <summary>Multiplies every age by a factor, as a count says.</summary>
    /// <param name="factor">The factor, 0 or more.</param>
    public void Scale(double factor)
    {
        adults *= factor;
        for (int i = 0; i < young.Count; i++)
        {
            young[i] = young[i] with { Count = factor * young[i].Count };
        }
    }

    /// <summary>The same population, to be led another way.</summary>
    public CrewPopulation Copy()
    {
        var other = new CrewPopulation(HatchShare) { adults = adults };
        other.young.AddRange(young);
        return other;
    }

    /// <summary>Takes out a share of the animals that walk; eggs stay.</summary>
    /// <param name="share">Share, 0 to 1.</param>
    /// <returns>Animals taken.</returns>
    public double TakeMobile(double share) =>
        Take(new CrewDay { JuvenilesTaken = share, AdultsTaken = share });

    /// <summary>Share of their development done when they hatch.</summary>
    public double HatchShare { get; private set; }

    /// <summary>Adults.</summary>
    public double Adults => adults;

    /// <summary>Eggs.</summary>
    public double Eggs
    {
        get
        {
            double sum = 0.0;
            foreach (var cohort in young)
            {
                sum += IsEgg(cohort) ? cohort.Count : 0.0;
            }

            return sum;
        }
    }

    /// <summary>Hatched, not yet adult.</summary>
    public double Juveniles
    {
        get
        {
            double sum = 0.0;
            foreach (var cohort in young)
            {
                sum += IsEgg(cohort) ? 0.0 : cohort.Count;
            }

            return sum;
        }
    }

    /// <summary>Juveniles and adults.</summary>
    public double Mobile => Juveniles + adults;

    /// <summary>Adds adults.</summary>
    /// <param name="count">How many.</param>
    public void Add(double count) => adults += count;

    /// <summary>One day.</summary>
    /// <param name="rates">Rates of the day; in whole days for the matrix of day classes.</param>
    /// <param name="laying">Factor of what is laid: damp, air, crowding.</param>
    /// <param name="removal">
    /// Share of hatched animals, arrivals of the day included, taken at its end.
    /// </param>
    /// <returns>Animals taken.</returns>
    public double Step(LifeTable rates, double laying, double removal = 0.0) =>
        Step(
            rates,
            new CrewDay
            {
                Laying = laying,
                JuvenilesTaken = removal,
                AdultsTaken = removal,
            }
        );

    /// <summary>One day of a ground that is not at its best.</summary>
    /// <param name="rates">Rates of the day; in whole days for the matrix of day classes.</param>
    /// <param name="what">What the day does to them.</param>
    /// <returns>Animals taken.</returns>
    public double Step(LifeTable rates, in CrewDay what)
    {
        double day = Progress(rates) * what.Growth;
        HatchShare = Hatches(rates);
        double live =
            rates.Days > 1.0 ? Math.Pow(rates.SurvivalToAdult, what.Growth / (rates.Days - 1.0)) : 1.0;
        double laid = adults * rates.EggsPerDay * what.Laying;
        adults *= rates.AdultSurvivalPerDay;
        Age(day, double.IsFinite(live) ? live : 1.0);
        AddYoung(new Cohort(0.0, day, laid));
        Hatch();
        Drown(what);
        return Take(what);
    }

    /// <summary>
    /// The young grow by a day; the part of a cohort that finishes within it becomes adult.
    /// </summary>
    private void Age(double day, double live)
    {
        double finished = 1.0 - day;
        int kept = 0;
        for (int i = 0; i < young.Count; i++)
        {
            var cohort = new Cohort(young[i].Low + day, young[i].Width, young[i].Count * live);
            var (rest, done) = cohort.CutAt(finished);
            adults += done.Count;
            if (rest.Count > 0.0)
            {
                young[kept++] = rest;
            }
        }

        young.RemoveRange(kept, young.Count - kept);
    }

    /// <summary>Cohorts that hatch today are cut where they hatch.</summary>
    private void Hatch()
    {
        for (int i = young.Count - 1; i >= 0; i--)
        {
            var (eggs, hatched) = young[i].CutAt(HatchShare);
            if (eggs.Count > 0.0 && hatched.Count > 0.0)
            {
                young[i] = eggs;
                young.Add(hatched);
            }
        }
    }

    /// <summary>Eggs and animals that a ground without air takes.</summary>
    private void Drown(in CrewDay what)
    {
        if (what.EggsDrowned <= 0.0 && what.AnimalsDrowned <= 0.0)
        {
            return;
        }

        adults *= 1.0 - what.AnimalsDrowned;
        for (int i = 0; i < young.Count; i++)
        {
            double lost = IsEgg(young[i]) ? what.EggsDrowned : what.AnimalsDrowned;
            young[i] = young[i] with { Count = (1.0 - lost) * young[i].Count };
        }
    }

    private double Take(in CrewDay what)
    {
        double taken = what.AdultsTaken * adults;
        adults -= taken;
        if (what.JuvenilesTaken <= 0.0)
        {
            return taken;
        }

        for (int i = 0; i < young.Count; i++)
        {
            if (!IsEgg(young[i]))
            {
                taken += what.JuvenilesTaken * young[i].Count;
                young[i] = young[i] with { Count = (1.0 - what.JuvenilesTaken) * young[i].Count };
            }
        }

        return taken;
    }

    private bool IsEgg(Cohort cohort) => cohort.Low < HatchShare - Slight;

    private void AddYoung(Cohort cohort)
    {
        if (cohort.Count > 0.0)
        {
            young.Add(cohort);
        }
    }

    private static double Progress(LifeTable rates) => double.IsFinite(rates.Days) ? 1.0 / rates.Days : 0.0;

    private double Hatches(LifeTable rates) =>
        double.IsFinite(rates.Days) ? rates.EggDays / rates.Days : HatchShare;
}
