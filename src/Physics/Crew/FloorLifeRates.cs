namespace Litterfall.Physics.Crew;

/// <summary>What the life of a floor rests on besides its animals, its leaves and its size.</summary>
public sealed record FloorLifeRates
{
    /// <summary>As recalled, read or chosen; each says which.</summary>
    public static readonly FloorLifeRates Usual = new();

    /// <summary>What a frog needs and leaves.</summary>
    public FrogNeeds Frogs { get; init; } = FrogNeeds.Usual;

    /// <summary>What damp and air of the ground do to the crew.</summary>
    public GroundDamp Damp { get; init; } = GroundDamp.Usual;

    /// <summary>How leaves rot.</summary>
    public LitterDecay Decay { get; init; } = LitterDecay.Usual;

    /// <summary>Share of rotting leaves that turns to microbes (recalled).</summary>
    public double MicrobialShare { get; init; } = 0.35;

    /// <summary>Share of these that springtails graze (recalled).</summary>
    public double GrazedShare { get; init; } = 0.10;

    /// <summary>Dry mass of a mean springtail, g (recalled, order of Petersen and Luxton 1982).</summary>
    public double MeanGrams { get; init; } = 15e-6;

    /// <summary>Share of its dry mass that it eats in a day at 20 °C, 1/d (recalled, the same).</summary>
    public double IngestedPerDay { get; init; } = 0.08;

    /// <summary>Factor on it for 10 K (recalled, the same).</summary>
    public double IngestionQ10 { get; init; } = 2.3;

    /// <summary>By how much fauna speeds decay (García-Palacios et al. 2013, abstract).</summary>
    public double FaunaEffect { get; init; } = 0.27;

    /// <summary>
    /// Springtails from which on it does so fully, 1/m²: upper end of the lowland tropics (recalled,
    /// Petersen and
    /// Luxton 1982).
    /// </summary>
    public double FaunaFull { get; init; } = 20_000.0;

    /// <summary>
    /// Ground an animal searches closely in a day, m². This and the time for each prey are own choices, set
    /// so
    /// that at 10,000 exposed springtails for each square meter it takes about as many as two to three
    /// fills of a
    /// stomach hold (33 and 85 prey read in stomachs).
    /// </summary>
    public double SearchSquareMeters { get; init; } = 0.01;

    /// <summary>Time for each prey, d: three minutes.</summary>
    public double HandlingDays { get; init; } = 0.002;

    /// <summary>
    /// No hunter finds the last tenth of a day's prey: own choice, so that a day never empties a stock.
    /// </summary>
    public double MostTaken { get; init; } = 0.9;

    /// <summary>
    /// Share of the droppings that rots in a day at 24 °C where nobody eats them, 1/d: own choice, they are
    /// soft
    /// and gone within weeks.
    /// </summary>
    public double DroppingsRotPerDay { get; init; } = 0.1;

    /// <summary>
    /// Share of the free nitrogen that roots reach in a day, 1/d: own choice; what plants can hold limits
    /// them
    /// first.
    /// </summary>
    public double UptakePerDay { get; init; } = 0.1;
}
