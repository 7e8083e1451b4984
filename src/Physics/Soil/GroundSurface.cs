using Litterfall.Physics.Air;

namespace Litterfall.Physics.Soil;

/// <summary>How a drying skin of soil holds back vapor.</summary>
public sealed record DryingSkin
{
    /// <summary>
    /// After van de Griend and Owe 1994: 10 exp[35.63 (0.15 − θ)] s/m (recalled), with what the material
    /// holds
    /// at 2 m of suction for the 0.15 of their loam.
    /// </summary>
    public static readonly DryingSkin Usual = new();

    /// <summary>Resistance of a wet skin, s/m.</summary>
    public double WetResistance { get; init; } = 10.0;

    /// <summary>Slope of its logarithm over the wetness: 35.63 × 0.15.</summary>
    public double Slope { get; init; } = 35.63 * 0.15;

    /// <summary>Head at which it counts as wet, m.</summary>
    public double WetHeadMeters { get; init; } = -2.0;

    /// <summary>Depth over which its wetness is taken, m.</summary>
    public double Meters { get; init; } = 0.01;

    /// <summary>
    /// Mass transfer of still air over the ground, by which zones and leaves side by side are weighed, m/s.
    /// </summary>
    public double StillAirMetersPerSecond { get; init; } = 0.0025;

    /// <summary>Resistance, s/m.</summary>
    /// <param name="wetness">Water over what the material holds at <see cref="WetHeadMeters"/>.</param>
    public double Resistance(double wetness) =>
        WetResistance * Math.Exp(Slope * Math.Max(0.0, 1.0 - wetness));
}

/// <summary>
/// How readily the floor gives its water to the air: wet leaves freely, bare soil and moss through a drying
/// skin (van de Griend and Owe 1994, recalled; its 15 % of a sandy loam replaced by what the material itself
/// holds at 2 m of suction), both under dry leaves through their air. Zones side by side.
/// </summary>
public sealed class GroundSurface
{
    private const double OwedResistancePerMeter = 4e7;
    private readonly SoilColumns columns;
    private readonly double[] critical;
    private readonly int[] skinNodes;
    private readonly DryingSkin skin;

    /// <summary>The surface of a floor.</summary>
    /// <param name="columns">Its zones.</param>
    /// <param name="litterCapacityMeters">Water that its leaves hold, m; 0 without leaves.</param>
    /// <param name="litterSecondsPerMeter">Resistance of dry leaves, s/m.</param>
    /// <param name="drying">How its skin dries; as published by default.</param>
    public GroundSurface(
        SoilColumns columns,
        double litterCapacityMeters,
        double litterSecondsPerMeter,
        DryingSkin? drying = null
    )
    {
        skin = drying ?? DryingSkin.Usual;
        this.columns = columns;
        LitterCapacityMeters = litterCapacityMeters;
        LitterSecondsPerMeter = litterSecondsPerMeter;
        critical = new double[columns.Zones];
        skinNodes = new int[columns.Zones];
        for (int zone = 0; zone < columns.Zones; zone++)
        {
            critical[zone] = columns.Tables[columns.ElementTable[zone]].WaterContent(skin.WetHeadMeters);
            int node = 0;
            while (
                node + 1 < columns.Nodes - 1
                && columns.DepthMeters[((node + 1) * columns.Zones) + zone] <= skin.Meters
            )
            {
                node++;
            }

            skinNodes[zone] = node;
        }
    }

    /// <summary>Water that the leaves hold, m.</summary>
    public double LitterCapacityMeters { get; }

    /// <summary>Resistance of dry leaves, s/m.</summary>
    public double LitterSecondsPerMeter { get; }

    /// <summary>Supply at a state.</summary>
    /// <param name="state">Water of the floor.</param>
    /// <param name="celsius">Temperature of the ground, °C.</param>
    /// <param name="owedMeters">Water the ground gave to the air without having it yet, m.</param>
    public WaterSupply At(WaterState state, double celsius, double owedMeters)
    {
        double film = 1.0 / skin.StillAirMetersPerSecond;
        double wetLeaves =
            LitterCapacityMeters > 0.0
                ? Math.Clamp(state.LitterMeters / LitterCapacityMeters, 0.0, 1.0)
                : 0.0;
        double under = LitterCapacityMeters > 0.0 ? LitterSecondsPerMeter : 0.0;
        double conductance = wetLeaves / film;
        double carried = conductance;
        for (int zone = 0; zone < columns.Zones; zone++)
        {
            double share = columns.AreaShare[zone] * (1.0 - wetLeaves);
            double one =
                share / (film + under + Resistance(state, zone) + (OwedResistancePerMeter * owedMeters));
            conductance += one;
            carried += one * Humidity(state.Column.HeadMeters[zone], celsius);
        }

        return new WaterSupply(carried / conductance, Math.Max(0.0, (1.0 / conductance) - film));
    }

    /// <summary>Resistance of the drying skin, s/m, from the wetness of the first centimeter.</summary>
    private double Resistance(WaterState state, int zone)
    {
        var table = columns.Tables[columns.ElementTable[zone]];
        double theta = SkinWaterContent(state, zone);
        double residual = table.Curve.ResidualWaterContent;
        double wet = (theta - residual) / Math.Max(critical[zone] - residual, 1e-6);
        return skin.Resistance(wet);
    }

    /// <summary>Mean water content of the first centimeter, m³/m³.</summary>
    private double SkinWaterContent(WaterState state, int zone)
    {
        var heads = state.Column.HeadMeters;
        int zones = columns.Zones;
        double sum = 0.0;
        double depth = 0.0;
        double before = columns.Tables[columns.ElementTable[zone]].WaterContent(heads[zone]);
        for (int node = 0; node <= skinNodes[zone]; node++)
        {
            int e = (node * zones) + zone;
            double after = columns.Tables[columns.ElementTable[e]].WaterContent(heads[e + zones]);
            sum += 0.5 * (before + after) * columns.ElementMeters[e];
            depth += columns.ElementMeters[e];
            before = after;
        }

        return sum / depth;
    }

    /// <summary>Kelvin's relation: humidity over water at a head.</summary>
    /// <param name="headMeters">Head, m; above 0 counts as free water.</param>
    /// <param name="celsius">Temperature, °C.</param>
    public static double Humidity(double headMeters, double celsius) =>
        headMeters >= 0.0
            ? 1.0
            : Math.Exp(
                headMeters
                    * Constants.StandardGravity
                    * Constants.WaterMolarMass
                    / (Constants.MolarGasConstant * (celsius + Constants.ZeroCelsiusKelvin))
            );
}
