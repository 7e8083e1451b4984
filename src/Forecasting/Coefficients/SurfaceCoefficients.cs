using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;

namespace Litterfall.Forecasting.Coefficients;

/// <summary>
/// Properties of what surrounds the air of a box, where no design and no entry of the library gives them.
/// </summary>
/// <param name="list">Takes them, changed where they are to be.</param>
public sealed class SurfaceCoefficients(CoefficientList list)
{
    /// <summary>Film of still room air with radiation on the outside of a pane.</summary>
    public Coefficient RoomFilm { get; } =
        list.Add(
            "roomFilm",
            "film of still room air on a pane, radiation included",
            7.7,
            CoefficientUnits.Film,
            (6, 9),
            Citation.Recalled("en-673", "inside film 3.6 + 4.1 ε/0.837 of an upright pane")
        );

    /// <summary>Film of still air on each side of a pane between held air and its room.</summary>
    public Coefficient PaneFilm { get; } =
        list.Add(
            "paneFilm",
            "film of still air on each side of a single pane",
            0.13,
            CoefficientUnits.Insulation,
            (0.1, 0.17),
            Citation.Recalled("iso-6946", "0.13 m² K/W of an upright face indoors")
        );

    /// <summary>Base through the shelf, and layers through the glass beside them.</summary>
    public Coefficient ThroughShelf { get; } =
        list.Add(
            "throughShelf",
            "base through the shelf, and layers through the glass beside them",
            2,
            CoefficientUnits.Film,
            (1, 3),
            Citation.Choice("a pane on a board: half a film of air and the board")
        );

    /// <summary>Emissivity of panes.</summary>
    public Coefficient GlassEmissivity { get; } =
        list.Add(
            "glassEmissivity",
            "emissivity of glass",
            0.84,
            Unit.One,
            (0.82, 0.9),
            Citation.Recalled("en-673", "0.837 of uncoated glass")
        );

    /// <summary>Emissivity of wet ground.</summary>
    public Coefficient GroundEmissivity { get; } =
        list.Add(
            "groundEmissivity",
            "emissivity of damp ground",
            0.95,
            Unit.One,
            (0.92, 0.98),
            Citation.Recalled("campbell-norman-1998", "emissivity of soil, peat and moss")
        );

    /// <summary>Emissivity of open water.</summary>
    public Coefficient WaterEmissivity { get; } =
        list.Add(
            "waterEmissivity",
            "emissivity of open water",
            0.96,
            Unit.One,
            (0.94, 0.98),
            Citation.Recalled("campbell-norman-1998", "emissivity of water, about 0.96")
        );

    /// <summary>Conductivity of still water.</summary>
    public Coefficient WaterConductivity { get; } =
        list.Add(
            "waterConductivity",
            "conductivity of the water of a basin",
            0.6,
            CoefficientUnits.Conductivity,
            (0.58, 2),
            Citation.Recalled(
                "campbell-norman-1998",
                "0.56 + 0.0018 t W/(m K) of water at t °C; more where it stirs itself"
            )
        );

    /// <summary>Emissivity of leaves.</summary>
    public Coefficient LeafEmissivity { get; } =
        list.Add(
            "leafEmissivity",
            "emissivity of leaves",
            0.96,
            Unit.One,
            (0.95, 0.98),
            Citation.Recalled("campbell-norman-1998", "emissivity of leaves, 0.95 to 0.98")
        );

    /// <summary>Emissivity of backgrounds, wood and stone.</summary>
    public Coefficient BackgroundEmissivity { get; } =
        list.Add(
            "backgroundEmissivity",
            "emissivity of dry backgrounds, wood and stone",
            0.9,
            Unit.One,
            (0.85, 0.95),
            Citation.Recalled("campbell-norman-1998", "emissivity of wood and cork")
        );

    /// <summary>Share of the room that shines through a mesh.</summary>
    public Coefficient MeshEmissivity { get; } =
        list.Add(
            "meshEmissivity",
            "emissivity of a mesh, as seen from inside",
            0.5,
            Unit.One,
            (0.3, 0.8),
            Citation.Choice("the holes show the room, the wires shine little")
        );

    /// <summary>Temperature at which long waves are made linear, and the air of the box weighed.</summary>
    public Coefficient RadiantMean { get; } =
        list.Add(
            "radiantMean",
            "temperature at which long waves are made linear",
            23,
            Unit.Celsius,
            (18, 28),
            Citation.Choice("middle of a heated room and a lit box; 1 % for each kelvin")
        );

    /// <summary>Heat of a volume of soil and moss.</summary>
    public Coefficient SoilHeat { get; } =
        list.Add(
            "soilHeat",
            "heat of a volume of damp soil",
            2.2,
            CoefficientUnits.VolumeHeat,
            (1.5, 3),
            Citation.Recalled("campbell-norman-1998", "heat of moist organic soil")
        );

    /// <summary>Conductivity of soil and moss for heat.</summary>
    public Coefficient SoilConductivity { get; } =
        list.Add(
            "soilConductivity",
            "conductivity of damp soil for heat",
            0.5,
            CoefficientUnits.Conductivity,
            (0.3, 0.8),
            Citation.Recalled("campbell-norman-1998", "conductivity of moist peat and bark")
        );

    /// <summary>Heat of a volume of drainage layer.</summary>
    public Coefficient DrainageHeat { get; } =
        list.Add(
            "drainageHeat",
            "heat of a volume of drainage layer",
            1,
            CoefficientUnits.VolumeHeat,
            (0.5, 2),
            Citation.Choice("porous grains, half of them air, some water at the base")
        );

    /// <summary>Conductivity of a drainage layer for heat.</summary>
    public Coefficient DrainageConductivity { get; } =
        list.Add(
            "drainageConductivity",
            "conductivity of a drainage layer for heat",
            0.3,
            CoefficientUnits.Conductivity,
            (0.15, 0.6),
            Citation.Choice("between dry grains and grains in water")
        );

    /// <summary>Skin of the ground that follows the air within minutes.</summary>
    public Coefficient Skin { get; } =
        list.Add(
            "skin",
            "skin of the ground that follows the air within minutes",
            1,
            Unit.Centimeter,
            (0.5, 2),
            Citation.Choice("depth that a quarter of an hour warms")
        );

    /// <summary>Heat of glass.</summary>
    public Coefficient GlassHeat { get; } =
        list.Add(
            "glassHeat",
            "heat of glass",
            720,
            CoefficientUnits.MassHeat,
            (700, 840),
            Citation.Recalled("en-572-1", "720 J/(kg K)")
        );

    /// <summary>Density of the base, and of sheets the library has none for.</summary>
    public Coefficient GlassDensity { get; } =
        list.Add(
            "glassDensity",
            "density of glass",
            2500,
            Unit.KilogramPerCubicMeter,
            (2470, 2520),
            Citation.Recalled("en-572-1", "2500 kg/m³")
        );

    /// <summary>Conductivity of the base, and of sheets the library has none for.</summary>
    public Coefficient GlassConductivity { get; } =
        list.Add(
            "glassConductivity",
            "conductivity of glass for heat",
            1,
            CoefficientUnits.Conductivity,
            (0.9, 1.1),
            Citation.Recalled("en-572-1", "1 W/(m K)")
        );

    /// <summary>Heat of acrylic and polycarbonate.</summary>
    public Coefficient PlasticHeat { get; } =
        list.Add(
            "plasticHeat",
            "heat of plastic panes",
            1400,
            CoefficientUnits.MassHeat,
            (1200, 1500),
            Citation.Recalled("plastics-handbook", "acrylic 1470, polycarbonate 1200 J/(kg K)")
        );

    /// <summary>Heat of wood, cork and backgrounds.</summary>
    public Coefficient WoodHeat { get; } =
        list.Add(
            "woodHeat",
            "heat of wood, cork and stone",
            1700,
            CoefficientUnits.MassHeat,
            (1300, 2100),
            Citation.Recalled("wood-handbook", "1300 dry to 2100 damp")
        );

    /// <summary>Conductivity of a background the library has none for.</summary>
    public Coefficient BackgroundConductivity { get; } =
        list.Add(
            "backgroundConductivity",
            "conductivity of a background that says none",
            0.05,
            CoefficientUnits.Conductivity,
            (0.035, 0.1),
            Citation.Choice("between foam and cork")
        );

    /// <summary>Density of a background the library has none for.</summary>
    public Coefficient BackgroundDensity { get; } =
        list.Add(
            "backgroundDensity",
            "density of a background that says none",
            120,
            Unit.KilogramPerCubicMeter,
            (30, 200),
            Citation.Choice("cork tile")
        );

    /// <summary>Thickness of walls that nobody entered.</summary>
    public Coefficient UsualWall { get; } =
        list.Add(
            "usualWall",
            "thickness of walls where none is entered",
            5,
            Unit.Millimeter,
            (4, 6),
            Citation.Choice("usual glass of small boxes")
        );

    /// <summary>Thickness of a lid at its gap where none is entered.</summary>
    public Coefficient UsualLid { get; } =
        list.Add(
            "usualLid",
            "thickness of a lid at its gap where none is entered",
            4,
            Unit.Millimeter,
            (3, 6),
            Citation.Choice("usual glass of lids")
        );

    /// <summary>A film of this much leaves 1/e of a pane dry.</summary>
    public Coefficient PaneWet { get; } =
        list.Add(
            "paneWet",
            "film that leaves 1/e of a pane dry",
            5,
            CoefficientUnits.Water,
            (2, 10),
            Citation.Choice(
                "any rising law with 0 at 0 would do; drops of a millimeter cover a pane at a few g/m²"
            )
        );

    /// <summary>What an upright pane holds.</summary>
    public Coefficient WallHolds { get; } =
        list.Add(
            "wallHolds",
            "dew an upright pane holds before it runs",
            40,
            CoefficientUnits.Water,
            (30, 60),
            Citation.Recalled("own-working-value", "engineering range of drops on clean glass, 30 to 60 g/m²")
        );

    /// <summary>What a lid holds.</summary>
    public Coefficient LidHolds { get; } =
        list.Add(
            "lidHolds",
            "dew a lid holds before it drips",
            20,
            CoefficientUnits.Water,
            (10, 30),
            Citation.Recalled(
                "own-working-value",
                "engineering range of drops under a level pane, 10 to 30 g/m²"
            )
        );

    /// <summary>Time in which what is too much runs off.</summary>
    public Coefficient DripTime { get; } =
        list.Add(
            "dripTime",
            "time in which what is too much runs off",
            300,
            Unit.Second,
            (60, 600),
            Citation.Recalled("own-working-value", "engineering range, one to ten minutes")
        );

    /// <summary>What leaves, wood and stone hold.</summary>
    public Coefficient LeafHolds { get; } =
        list.Add(
            "leafHolds",
            "water a leaf holds on one side",
            150,
            CoefficientUnits.Water,
            (100, 200),
            Citation.Recalled("noilhan-planton-1989", "interception of 0.2 mm by leaf area; 0.1 to 0.2")
        );

    /// <summary>A film of this much leaves 1/e of a leaf dry.</summary>
    public Coefficient LeafWet { get; } =
        list.Add(
            "leafWet",
            "film that leaves 1/e of a leaf dry",
            20,
            CoefficientUnits.Water,
            (10, 40),
            Citation.Choice("drops on leaves stand higher than on glass")
        );

    /// <summary>Heat of leaves of one side.</summary>
    public Coefficient LeafHeat { get; } =
        list.Add(
            "leafHeat",
            "heat of leaves of one side",
            800,
            CoefficientUnits.SurfaceHeat,
            (600, 1000),
            Citation.Recalled("campbell-norman-1998", "0.2 mm of water")
        );

    /// <summary>Leaves of a plant cover its crown this many times.</summary>
    public Coefficient LeafLayers { get; } =
        list.Add(
            "leafLayers",
            "leaves over the ground of a crown",
            2,
            Unit.One,
            (1, 3),
            Citation.Choice("small plants of a shop let the ground show through")
        );

    /// <summary>Most leaf area to floor area.</summary>
    public Coefficient MostLeafLayers { get; } =
        list.Add(
            "mostLeafLayers",
            "most leaves over the floor",
            4,
            Unit.One,
            (3, 6),
            Citation.Choice("below that no leaf has light")
        );

    /// <summary>Height of leaves and pieces as surfaces.</summary>
    public Coefficient LeafHeight { get; } =
        list.Add(
            "leafHeight",
            "height of a leaf as a surface",
            8,
            Unit.Centimeter,
            (4, 15),
            Citation.Choice("between a fern and a bromeliad")
        );

    /// <summary>Conductance of lit leaves.</summary>
    public Coefficient LitStomata { get; } =
        list.Add(
            "litStomata",
            "stomata of lit leaves",
            1,
            CoefficientUnits.Conductance,
            (0.4, 1.5),
            Citation.Recalled("korner-1995", "shade plants of the forest floor, 15 to 60 mmol/(m² s)")
        );

    /// <summary>Conductance of leaves in the dark.</summary>
    public Coefficient DarkStomata { get; } =
        list.Add(
            "darkStomata",
            "stomata and skin of leaves in the dark",
            0.1,
            CoefficientUnits.Conductance,
            (0.05, 0.25),
            Citation.Recalled("korner-1995", "2 to 10 mmol/(m² s)")
        );

    /// <summary>Still air around a leaf.</summary>
    public Coefficient LeafStillAir { get; } =
        list.Add(
            "leafStillAir",
            "still air around a leaf, for vapor",
            400,
            CoefficientUnits.Resistance,
            (300, 500),
            Citation.Recalled("monteith-unsworth", "free convection at a leaf of 5 cm, half a kelvin to two")
        );

    /// <summary>Share of mist that falls on leaves.</summary>
    public Coefficient MistOnLeaves { get; } =
        list.Add(
            "mistOnLeaves",
            "share of mist that falls on leaves",
            25,
            Unit.Percent,
            (15, 40),
            Citation.Choice("by the area that leaves, ground and panes show to a nozzle")
        );

    /// <summary>Share of mist that falls on panes; what is left goes to the ground.</summary>
    public Coefficient MistOnPanes { get; } =
        list.Add(
            "mistOnPanes",
            "share of mist that falls on panes",
            20,
            Unit.Percent,
            (10, 30),
            Citation.Choice("by the area that leaves, ground and panes show to a nozzle")
        );

    /// <summary>Diffusion of vapor through loose leaf litter.</summary>
    public Coefficient LitterDiffusion { get; } =
        list.Add(
            "litterDiffusion",
            "diffusion of vapor through loose leaves",
            0.15,
            CoefficientUnits.Diffusion,
            (0.125, 0.165),
            Citation.Recalled("campbell-norman-1998", "vapor in air × 0.5 to 0.66 of the pores")
        );
}
