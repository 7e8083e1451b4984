namespace Litterfall.Forecasting.Coefficients;

/// <summary>
/// Our own choices for the life of the floor, each with its reason; SI unless the name says otherwise.
/// </summary>
internal static class LifePolicy
{
    /// <summary>Days run for answers: five years of a tank.</summary>
    public const int Days = 5 * 365;

    /// <summary>Days within which a crew must settle.</summary>
    public const int ReadyDays = 300;

    /// <summary>Isopods that a floor bears by space, 1/m²: ten times the field densities read.</summary>
    public const double IsopodsPerSquareMeter = 1500.0;

    /// <summary>
    /// Near its plateau a crew bears half of what it bears while it grows (recalled habit of cultures).
    /// </summary>
    public const double HalfBearable = 0.5;

    /// <summary>
    /// Where nobody eats of it, a crew is ready when it has bred to so many times what was seeded.
    /// </summary>
    public const double Bred = 3.0;

    /// <summary>Share of its largest number at which a crew counts as settled.</summary>
    public const double Settled = 0.9;

    /// <summary>
    /// Share of its food that a small frog would take from springtails: falls with its mass, and with 6 g
    /// hardly any.
    /// </summary>
    public const double CrewShareAtNothing = 0.7;

    public const double CrewSharePerGram = 0.12;

    public const double MostCrewShare = 0.6;

    /// <summary>
    /// Springtails have bred where they are so many times what was seeded: less is what was seeded itself,
    /// before its first young are counted.
    /// </summary>
    public const double Breeds = 1.5;

    /// <summary>
    /// What nobody knows of the crew's rates, as a factor on the young that live to lay: half to a fifth
    /// more (0.4 to 0.96 of 0.8; field studies find far less, fed cultures nearly all).
    /// </summary>
    public const double FewYoung = 0.5;

    public const double ManyYoung = 1.2;

    public const double MostSurvival = 0.98;

    /// <summary>
    /// Springtail bodies where an entry lacks them (recalled): a third dry; a mean mobile animal of
    /// three eighths of an adult, 7 of 100 mobile ones adult; 0.92 J in an adult of 0.040 mg dry.
    /// </summary>
    public const double SpringtailDry = 0.31;

    public const double MeanOfAdult = 0.375;

    public const double AdultsAmongMobile = 0.07;

    public const double AdultDryMilligrams = 0.040;

    /// <summary>
    /// Of ten springtails three are on leaves where a frog hunts; of fifty dwarf isopods, which dig, one
    /// (own choices).
    /// </summary>
    public const double SpringtailsExposed = 0.3;

    public const double IsopodsExposed = 0.02;

    /// <summary>
    /// Isopods (recalled): dwarf ones of 1.2 mg; young a quarter of an adult; 30 % dry at 13 J/mg, much of
    /// it lime; 0.03 mg of dry food for each mg and day.
    /// </summary>
    public const double UsualIsopodMilligrams = 1.2;

    public const double YoungOfAdult = 0.25;

    public const double IsopodJoulesPerMilligram = 3.9;

    public const double UsualLitterRate = 0.03;

    /// <summary>
    /// Leaves the library does not know: rot as the slower leaves of warm forests do, 1.0 a year at 24 °C;
    /// carbon to nitrogen in the middle of oak's 45 to 65 (recalled).
    /// </summary>
    public const double UsualDecay = 1.0;

    public const double UsualCarbonToNitrogen = 55.0;

    /// <summary>Amphibians of unknown mass: 2 g, the middle of the library's small frogs.</summary>
    public const double UsualGrams = 2.0;

    /// <summary>Weeks between seedings that are tried, longest first.</summary>
    public static readonly int[] ReseedWeeks = [52, 39, 26, 17, 13, 8, 6, 4];

    /// <summary>Activity of adults.</summary>
    public const double Activity = 1.5;

    /// <summary>Carbon of dry leaves.</summary>
    public const double Carbon = 0.45;

    /// <summary>
    /// New leaves and roots of a planted floor, g/(m² d) of dry mass, and nitrogen in them (recalled).
    /// </summary>
    public const double GrowthGrams = 200.0 / 365.0;

    public const double PlantNitrogen = 0.025;

    /// <summary>Depth at which leaves no longer cover, m.</summary>
    public const double CoverMeters = 0.02;

    /// <summary>Springtails for each square meter below which a crew counts as eaten up.</summary>
    public const double LeastSpringtails = 200.0;

    /// <summary>Nitrogen that forest litterfall carries, g/(m² y) (recalled: 100 kg/ha).</summary>
    public const double MostNitrogen = 10.0;

    /// <summary>Ground where nothing is computed: 22 °C, damp.</summary>
    public const double UsualCelsius = 22.0;

    public const double UsualKilopascals = -4.0;

    public const double UsualSaturation = 0.5;

    /// <summary>Air in the pores of such ground, m³/m³.</summary>
    public const double UsualAir = 0.3;

    /// <summary>Suction of a meter of water head, kPa/m: 1000 kg/m³ under standard gravity.</summary>
    public const double KilopascalsPerMeter = 9.80665;
}
