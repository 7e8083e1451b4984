namespace Litterfall.Forecasting.Coefficients;

/// <summary>Our own choices for light, each with its reason; SI unless the name says otherwise.</summary>
internal static class LightPolicy
{
    /// <summary>
    /// Share past dirt and lime on a lid that is wiped every month; 0.85 where hard water dries on it.
    /// </summary>
    public const double Clean = 0.95;

    /// <summary>
    /// Share past drops under glass and under plastic: greenhouse measurements of 0.91 to 1.02 and 0.78 to
    /// 0.95.
    /// </summary>
    public const double DropsOnGlass = 0.97;

    public const double DropsOnPlastic = 0.85;

    /// <summary>Mouth of the hood over a tube, and beam of a reflector lamp where nothing is typed.</summary>
    public const double HoodMeters = 0.08;

    public const double SpotBeamDegrees = 36.0;

    /// <summary>A bar is this much shorter than the box where its length is not typed.</summary>
    public const double BarInset = 0.05;

    /// <summary>Height over the lid where nothing is typed.</summary>
    public const double AboveMeters = 0.03;

    /// <summary>Light out of a watt where neither lumens nor an efficacy is known, lm/W.</summary>
    public const double LumensPerWatt = 100.0;

    /// <summary>
    /// Photons of a kilolumen where the kind of lamp does not say, µmol/s: white light-emitting diodes.
    /// </summary>
    public const double MicromolesPerKilolumen = 14.4;

    /// <summary>Reflectances (recalled): wet soil; a background and a piece that say nothing.</summary>
    public const double SoilReflectance = 0.075;

    public const double BackgroundReflectance = 0.10;

    public const double PieceReflectance = 0.20;

    /// <summary>Cells of the map: as near 1 cm as these allow.</summary>
    public const double CellMeters = 0.01;

    public const int MostCells = 120;

    /// <summary>Leaf height of mats over their foot, and least distance to a wall and to the lid.</summary>
    public const double MatMeters = 0.02;

    public const double Free = 0.01;

    /// <summary>Largest crown, so that a label does not fill the box: share of the air.</summary>
    public const double MostCrown = 0.6;

    /// <summary>Leaves may cover a crown this much less or more than thought.</summary>
    public const double LeafBand = 0.3;

    /// <summary>Rays for the heat of a lamp: 0.3 % of its flux.</summary>
    public const int Rays = 4096;

    /// <summary>
    /// Extinction of clear float for the beam of a glowing wire, total solar, 1/m (recalled: 20 to 30).
    /// </summary>
    public const double SolarPerMeter = 25.0;

    /// <summary>
    /// A refuge is no brighter than this, µmol/(m² s), in patches no smaller than this, m².
    /// </summary>
    public const double RefugeMicromoles = 5.0;

    public const double RefugePatch = 0.01;

    /// <summary>
    /// House rule: share of the floor and number of patches of refuge, darkest to brightest place.
    /// </summary>
    public const double RefugeShare = 0.30;

    public const int RefugePatches = 3;

    public const double RefugeDepth = 1.0 / 30.0;

    /// <summary>
    /// House rule: mean at the height of the animals above which missing refuge is a caution.
    /// </summary>
    public const double BrightFloor = 100.0;

    /// <summary>What a lux meter may be off, k = 2, where nothing is typed.</summary>
    public const double Meter = 0.08;
}
