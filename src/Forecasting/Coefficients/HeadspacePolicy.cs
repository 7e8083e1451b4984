namespace Litterfall.Forecasting.Coefficients;

/// <summary>
/// Our own choices and recalled properties for the headspace, each with its reason; SI doubles where only the
/// model reads them.
/// </summary>
internal static class HeadspacePolicy
{
    /// <summary>Film of still room air with radiation on the outside of a pane, W/(m² K): EN 673.</summary>
    public const double RoomFilm = 7.7;

    /// <summary>Base through the shelf, and layers through the glass beside them, W/(m² K).</summary>
    public const double ThroughShelf = 2.0;

    /// <summary>Emissivities (recalled): glass, wet ground, leaves, dry backgrounds, an open mesh.</summary>
    public const double GlassEmissivity = 0.84;

    public const double GroundEmissivity = 0.95;

    public const double LeafEmissivity = 0.96;

    public const double BackgroundEmissivity = 0.9;

    /// <summary>Heat of the layers, J/(m³ K), and their conductivity, W/(m K): moist peat and bark.</summary>
    public const double SoilHeat = 2.2e6;

    public const double SoilConductivity = 0.5;

    public const double DrainageHeat = 1.0e6;

    public const double DrainageConductivity = 0.3;

    /// <summary>Skin of the ground that follows the air within minutes, m.</summary>
    public const double SkinMeters = 0.01;

    /// <summary>Heat capacities, J/(kg K): glass (EN 572), plastics, wood and cork.</summary>
    public const double GlassHeat = 720.0;

    public const double PlasticHeat = 1400.0;

    public const double WoodHeat = 1700.0;

    /// <summary>A film of this thickness leaves 1/e of a pane dry, and holds this much, kg/m².</summary>
    public const double PaneWet = 0.005;

    public const double WallHolds = 0.04;

    public const double LidHolds = 0.02;

    public const double DripSeconds = 300.0;

    /// <summary>Leaves hold 0.15 kg/m² of one side, and dry from 0.02 on.</summary>
    public const double LeafHolds = 0.15;

    public const double LeafWet = 0.02;

    /// <summary>Heat of leaves, J/(m² K) of one side.</summary>
    public const double LeafHeat = 800.0;

    /// <summary>Leaves of a plant cover its crown this many times.</summary>
    public const double LeafLayers = 2.0;

    /// <summary>Most leaf area to floor area.</summary>
    public const double MostLeafLayers = 4.0;

    /// <summary>Height of a leaf as a surface, m.</summary>
    public const double LeafMeters = 0.08;

    /// <summary>Stomata of shade plants, lit and dark, m/s (Körner 1995, recalled: 15 to 60 mmol).</summary>
    public const double LitStomata = 1.0e-3;

    public const double DarkStomata = 1.0e-4;

    /// <summary>Mist by where it falls: ground, leaves, panes; wood's share goes to the ground.</summary>
    public const double MistOnLeaves = 0.25;

    public const double MistOnPanes = 0.20;

    /// <summary>Diffusion through loose leaf litter, m²/s: D of vapor × 0.6.</summary>
    public const double LitterDiffusion = 1.5e-5;

    /// <summary>Gap of a lid that is set in, and of sliding doors, m.</summary>
    public const double LidGap = 0.002;

    public const double DoorGap = 0.0005;

    /// <summary>Discharge coefficient of an opening with sharp edges.</summary>
    public const double Discharge = 0.6;

    /// <summary>Days of a forecast for a check.</summary>
    public const int CheckDays = 30;

    /// <summary>Days left out of means at its start, while films and ground settle.</summary>
    public const int SettleDays = 7;

    /// <summary>Hours on and off where a lamp has none.</summary>
    public static readonly (double On, double Off) LampHours = (8 * 3600.0, 20 * 3600.0);

    /// <summary>When a keeper mists by hand, and how long, s.</summary>
    public static readonly (double At, double For) HandMist = (9 * 3600.0, 60.0);

    /// <summary>What a thermostat holds where nothing is typed, °C.</summary>
    public const double ThermostatCelsius = 24.0;

    /// <summary>Air speed of a small stirring fan, m/s.</summary>
    public const double StirSpeed = 0.2;

    /// <summary>Share of its free flow that a small fan moves through mesh.</summary>
    public const double FanThroughMesh = 0.4;
}
