using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Physics.Crew;

namespace Litterfall.Forecasting.Coefficients;

/// <summary>Rates of decay, of the crew and of frogs that hold for every floor.</summary>
/// <param name="list">Takes them, changed where they are to be.</param>
public sealed class FloorLifeCoefficients(CoefficientList list)
{
    /// <summary>Rotting leaves that turn to microbes.</summary>
    public Coefficient MicrobialShare { get; } =
        list.Add(
            "microbialShare",
            "rotting leaves that turn to microbes",
            FloorLifeRates.Usual.MicrobialShare,
            Unit.One,
            (0.2, 0.5),
            Citation.Recalled("litter-decay-literature", "a third")
        );

    /// <summary>Microbes that springtails graze.</summary>
    public Coefficient GrazedShare { get; } =
        list.Add(
            "grazedShare",
            "microbes that springtails graze",
            FloorLifeRates.Usual.GrazedShare,
            Unit.One,
            (0.03, 0.2),
            Citation.Recalled("petersen-luxton-1982", "a tenth")
        );

    /// <summary>Dry mass of a mean springtail.</summary>
    public Coefficient MeanSpringtail { get; } =
        list.Add(
            "meanSpringtail",
            "dry mass of a mean springtail",
            FloorLifeRates.Usual.MeanGrams * 1e6,
            CoefficientUnits.Microgram,
            (5, 30),
            Citation.Recalled("petersen-luxton-1982", "order of 15 µg")
        );

    /// <summary>What a springtail eats a day at 20 °C.</summary>
    public Coefficient Ingested { get; } =
        list.Add(
            "ingested",
            "what a springtail eats a day at 20 °C, of its dry mass",
            FloorLifeRates.Usual.IngestedPerDay,
            CoefficientUnits.PerDay,
            (0.04, 0.15),
            Citation.Recalled("petersen-luxton-1982", "order of 8 %")
        );

    /// <summary>Factor on it for 10 K.</summary>
    public Coefficient IngestionQ10 { get; } =
        list.Add(
            "ingestionQ10",
            "factor on it for 10 K",
            FloorLifeRates.Usual.IngestionQ10,
            Unit.One,
            (1.8, 3),
            Citation.Recalled("petersen-luxton-1982", "2.3")
        );

    /// <summary>By how much fauna speeds decay.</summary>
    public Coefficient FaunaEffect { get; } =
        list.Add(
            "faunaEffect",
            "how much fauna speeds decay",
            FloorLifeRates.Usual.FaunaEffect,
            Unit.One,
            (0.1, 0.5),
            new Citation("garcia-palacios-2013", "abstract: 27 %", Provenance.Read)
        );

    /// <summary>Springtails from which on it does so fully.</summary>
    public Coefficient FaunaFull { get; } =
        list.Add(
            "faunaFull",
            "springtails from which on it does so fully",
            FloorLifeRates.Usual.FaunaFull,
            Unit.PerSquareMeter,
            (5_000, 50_000),
            Citation.Recalled("petersen-luxton-1982", "upper end of lowland tropics")
        );

    /// <summary>Ground a frog searches a day.</summary>
    public Coefficient Searched { get; } =
        list.Add(
            "searched",
            "ground a frog searches a day",
            FloorLifeRates.Usual.SearchSquareMeters * 1e4,
            Unit.SquareCentimeter,
            (50, 200),
            Citation.Choice("with the next, so that prey read in stomachs comes out")
        );

    /// <summary>Time for each prey.</summary>
    public Coefficient Handling { get; } =
        list.Add(
            "handling",
            "time for each prey",
            FloorLifeRates.Usual.HandlingDays * 1440,
            Unit.Minute,
            (1, 6),
            Citation.Choice("with the last, so that prey read in stomachs comes out")
        );

    /// <summary>Most of a day's prey that is found.</summary>
    public Coefficient MostTaken { get; } =
        list.Add(
            "mostTaken",
            "most of a day's prey that is found",
            FloorLifeRates.Usual.MostTaken,
            Unit.One,
            (0.7, 0.99),
            Citation.Choice("no hunter finds the last tenth")
        );

    /// <summary>Droppings that rot in a day at 24 °C.</summary>
    public Coefficient DroppingsRot { get; } =
        list.Add(
            "droppingsRot",
            "droppings that rot in a day at 24 °C",
            FloorLifeRates.Usual.DroppingsRotPerDay,
            CoefficientUnits.PerDay,
            (0.03, 0.3),
            Citation.Choice("soft as they are, gone within weeks")
        );

    /// <summary>Energy of a small fruit fly.</summary>
    public Coefficient FlyEnergy { get; } =
        list.Add(
            "flyEnergy",
            "energy of a small fruit fly",
            FrogNeeds.Usual.SmallFlyJoules,
            CoefficientUnits.Joule,
            (6, 9),
            Citation.Recalled("yuan-2022", "composition read there; 0.30 mg at 24.5 kJ/g")
        );

    /// <summary>Dry mass of a small fruit fly.</summary>
    public Coefficient FlyDry { get; } =
        list.Add(
            "flyDry",
            "dry mass of a small fruit fly",
            FrogNeeds.Usual.FlyDryMilligrams,
            CoefficientUnits.Milligram,
            (0.2, 0.35),
            Citation.Recalled("yuan-2022", "dry mass of the small kind")
        );

    /// <summary>Energy of an adult springtail.</summary>
    public Coefficient SpringtailEnergy { get; } =
        list.Add(
            "springtailEnergy",
            "energy of an adult springtail",
            FrogNeeds.Usual.SpringtailJoules,
            CoefficientUnits.Joule,
            (0.6, 1.4),
            Citation.Recalled("petersen-luxton-1982", "23 kJ/g")
        );

    /// <summary>Oxygen at rest of a frog of 1 g at 25 °C.</summary>
    public Coefficient Oxygen { get; } =
        list.Add(
            "oxygen",
            "oxygen at rest of a frog of 1 g at 25 °C",
            FrogNeeds.Usual.OxygenPerHour,
            CoefficientUnits.MilliliterPerHour,
            (0.07, 0.15),
            Citation.Recalled("gatten-1992", "order of 0.10 mL/h")
        );

    /// <summary>How it rises with mass.</summary>
    public Coefficient MassExponent { get; } =
        list.Add(
            "massExponent",
            "how it rises with mass, exponent",
            FrogNeeds.Usual.MassExponent,
            Unit.One,
            (0.75, 0.9),
            Citation.Recalled("gatten-1992", "0.84")
        );

    /// <summary>How it rises with warmth.</summary>
    public Coefficient FrogQ10 { get; } =
        list.Add(
            "frogQ10",
            "how it rises with warmth, factor for 10 K",
            FrogNeeds.Usual.Q10,
            Unit.One,
            (2, 2.5),
            Citation.Recalled("gatten-1992", "2.2")
        );

    /// <summary>Energy of oxygen.</summary>
    public Coefficient OxygenEnergy { get; } =
        list.Add(
            "oxygenEnergy",
            "energy of oxygen",
            FrogNeeds.Usual.OxygenJoules,
            CoefficientUnits.JoulePerMilliliter,
            (19.5, 20.9),
            Citation.Recalled("gatten-1992", "20.1 J/mL of mixed food")
        );

    /// <summary>Energy of its food that a frog can use.</summary>
    public Coefficient Metabolizable { get; } =
        list.Add(
            "metabolizable",
            "energy of its food that a frog can use",
            FrogNeeds.Usual.Metabolizable,
            Unit.One,
            (0.7, 0.9),
            Citation.Recalled("gatten-1992", "four fifths of insects")
        );

    /// <summary>Dry food that a frog leaves.</summary>
    public Coefficient Indigestible { get; } =
        list.Add(
            "indigestible",
            "dry food that a frog leaves",
            FrogNeeds.Usual.Indigestible,
            Unit.One,
            (0.1, 0.3),
            Citation.Recalled("gatten-1992", "a fifth of insects")
        );

    /// <summary>Nitrogen of dry flies.</summary>
    public Coefficient FlyNitrogen { get; } =
        list.Add(
            "flyNitrogen",
            "nitrogen of dry flies",
            FrogNeeds.Usual.NitrogenShare,
            Unit.One,
            (0.08, 0.1),
            Citation.Recalled("yuan-2022", "protein read there × 0.16, taken as 9 %")
        );

    /// <summary>Prey too small to be seen.</summary>
    public Coefficient TooSmall { get; } =
        list.Add(
            "tooSmall",
            "prey too small to be seen, mass over the frog's",
            FrogNeeds.Usual.TooSmall,
            Unit.One,
            (5e-6, 2e-5),
            Citation.Choice(
                "with the next three, so that frogs of half a gram take young springtails and "
                    + "those of 6 g some adults"
            )
        );

    /// <summary>Smallest prey that is always seen.</summary>
    public Coefficient SmallSeen { get; } =
        list.Add(
            "smallSeen",
            "smallest prey that is always seen",
            FrogNeeds.Usual.SmallSeen,
            Unit.One,
            (2e-5, 8e-5),
            Citation.Choice("as above")
        );

    /// <summary>Largest prey that is always taken.</summary>
    public Coefficient LargeTaken { get; } =
        list.Add(
            "largeTaken",
            "largest prey that is always taken",
            FrogNeeds.Usual.LargeTaken,
            Unit.One,
            (0.005, 0.02),
            Citation.Choice("as above")
        );

    /// <summary>Prey too large.</summary>
    public Coefficient TooLarge { get; } =
        list.Add(
            "tooLarge",
            "prey too large",
            FrogNeeds.Usual.TooLarge,
            Unit.One,
            (0.02, 0.08),
            Citation.Choice("as above")
        );

    /// <summary>Suction up to which springtails lay all their eggs.</summary>
    public Coefficient LaysFully { get; } =
        list.Add(
            "laysFully",
            "suction up to which springtails lay all",
            GroundDamp.Usual.LaysFully,
            Unit.Kilopascal,
            (1, 5),
            Citation.Recalled("wang-2022", "not in the abstract: wet ground")
        );

    /// <summary>Suction from which they lay none.</summary>
    public Coefficient LaysNoMore { get; } =
        list.Add(
            "laysNoMore",
            "suction from which springtails lay nothing",
            GroundDamp.Usual.LaysNoMore,
            Unit.Kilopascal,
            (10, 20),
            new Citation("wang-2022", "abstract: reproduction stops at -15 kPa", Provenance.Read)
        );

    /// <summary>Suction up to which they grow fully.</summary>
    public Coefficient GrowsFully { get; } =
        list.Add(
            "growsFully",
            "suction up to which springtails grow fully",
            GroundDamp.Usual.GrowsFully,
            Unit.Kilopascal,
            (5, 20),
            Citation.Recalled("wang-2022", "not in the abstract: damp ground")
        );

    /// <summary>Suction from which they do not grow.</summary>
    public Coefficient GrowsNoMore { get; } =
        list.Add(
            "growsNoMore",
            "suction from which springtails do not grow",
            GroundDamp.Usual.GrowsNoMore,
            Unit.Kilopascal,
            (50, 200),
            new Citation("wang-2022", "abstract: growth stops at -100 kPa", Provenance.Read)
        );

    /// <summary>Air in the pores from which the crew lives unhindered.</summary>
    public Coefficient LeastAir { get; } =
        list.Add(
            "leastAir",
            "air in the pores from which the crew lives unhindered",
            GroundDamp.Usual.LeastAir,
            Unit.One,
            (0.05, 0.15),
            Citation.Recalled("container-media-textbook", "below about 10 % breeding stops")
        );

    /// <summary>Eggs that drown in a day without air.</summary>
    public Coefficient EggsDrown { get; } =
        list.Add(
            "eggsDrown",
            "eggs that drown in a day without air",
            GroundDamp.Usual.EggsDrownPerDay,
            CoefficientUnits.PerDay,
            (0.1, 0.9),
            Citation.Choice("eggs drown")
        );

    /// <summary>Crew that drowns in a day without air.</summary>
    public Coefficient AnimalsDrown { get; } =
        list.Add(
            "animalsDrown",
            "crew that drowns in a day without air",
            GroundDamp.Usual.AnimalsDrownPerDay,
            CoefficientUnits.PerDay,
            (0.02, 0.3),
            Citation.Choice("animals float and live for days")
        );

    /// <summary>Suction up to which leaves rot fully.</summary>
    public Coefficient WetLitter { get; } =
        list.Add(
            "wetLitter",
            "suction up to which leaves rot fully",
            LitterDecay.Usual.WetKilopascals,
            Unit.Kilopascal,
            (30, 200),
            Citation.Recalled("rothc-26-3", "its moisture factor, carried over")
        );

    /// <summary>Suction from which leaves rot least.</summary>
    public Coefficient DryLitter { get; } =
        list.Add(
            "dryLitter",
            "suction from which leaves rot least",
            LitterDecay.Usual.DryKilopascals,
            Unit.Kilopascal,
            (1000, 3000),
            Citation.Recalled("rothc-26-3", "wilting point")
        );

    /// <summary>Share of their decay that is left then.</summary>
    public Coefficient DryShare { get; } =
        list.Add(
            "dryShare",
            "share of their decay that is left then",
            LitterDecay.Usual.DryShare,
            Unit.One,
            (0.1, 0.3),
            Citation.Recalled("rothc-26-3", "0.2")
        );

    /// <summary>Decay by air in the pores: factor.</summary>
    public Coefficient AirFactor { get; } =
        list.Add(
            "airFactor",
            "decay by air in the pores: factor",
            LitterDecay.Usual.AirFactor,
            Unit.One,
            (1.5, 2.5),
            new Citation("skopp-1990", "as a public library of soil models codes it", Provenance.Read)
        );

    /// <summary>Decay by air in the pores: exponent.</summary>
    public Coefficient AirExponent { get; } =
        list.Add(
            "airExponent",
            "decay by air in the pores: exponent",
            LitterDecay.Usual.AirExponent,
            Unit.One,
            (0.6, 1),
            new Citation("skopp-1990", "as a public library of soil models codes it", Provenance.Read)
        );
}
