using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Physics.Light;

namespace Litterfall.Forecasting.Coefficients;

/// <summary>What the light of a box rests on besides the box and its lamps.</summary>
/// <param name="list">Takes them, changed where they are to be.</param>
public sealed class LightCoefficients(CoefficientList list)
{
    /// <summary>Share past dirt and lime on a lid.</summary>
    public Coefficient Clean { get; } =
        list.Add(
            "clean",
            "light past dirt on the lid",
            95,
            Unit.Percent,
            (85, 98),
            Citation.Choice("a lid wiped every month; 85 % where hard water dries on it")
        );

    /// <summary>Share past drops under glass.</summary>
    public Coefficient DropsOnGlass { get; } =
        list.Add(
            "dropsOnGlass",
            "light past drops under a glass lid",
            97,
            Unit.Percent,
            (91, 102),
            Citation.Choice("greenhouse measurements: 91 to 102 % on wet glass")
        );

    /// <summary>Share past drops under plastic.</summary>
    public Coefficient DropsOnPlastic { get; } =
        list.Add(
            "dropsOnPlastic",
            "light past drops under a plastic lid",
            85,
            Unit.Percent,
            (78, 95),
            Citation.Choice("greenhouse measurements: 78 to 95 % on wet plastic")
        );

    /// <summary>Refractive index of panes the library has none for.</summary>
    public Coefficient GlassIndex { get; } =
        list.Add(
            "glassIndex",
            "refractive index of glass",
            PaneOptics.GlassIndex,
            Unit.One,
            (1.51, 1.53),
            Citation.Recalled("duffie-beckman", "1.52 to 1.526 of window glass")
        );

    /// <summary>Extinction of panes the library has none for.</summary>
    public Coefficient GlassExtinction { get; } =
        list.Add(
            "glassExtinction",
            "extinction of clear float glass",
            PaneOptics.ClearPerMeter,
            CoefficientUnits.PerMeter,
            (3, 10),
            Citation.Recalled("duffie-beckman", "clear float in visible light")
        );

    /// <summary>Extinction of clear float for the beam of a glowing wire.</summary>
    public Coefficient SolarExtinction { get; } =
        list.Add(
            "solarExtinction",
            "extinction of clear float glass for the beam of a glowing wire",
            25,
            CoefficientUnits.PerMeter,
            (20, 30),
            Citation.Recalled("duffie-beckman", "total solar, 20 to 30")
        );

    /// <summary>Mouth of the hood over a tube where nothing is typed.</summary>
    public Coefficient Hood { get; } =
        list.Add(
            "hood",
            "mouth of the hood over a tube",
            8,
            Unit.Centimeter,
            (5, 12),
            Citation.Choice("usual hoods over one tube")
        );

    /// <summary>Beam of a reflector lamp where nothing is typed.</summary>
    public Coefficient SpotBeam { get; } =
        list.Add(
            "spotBeam",
            "beam of a reflector lamp",
            36,
            Unit.Degree,
            (24, 60),
            Citation.Choice("the usual one of a shop's shelf")
        );

    /// <summary>A bar is this much shorter than the box where its length is not typed.</summary>
    public Coefficient BarInset { get; } =
        list.Add(
            "barInset",
            "how much shorter than the box a bar is",
            5,
            Unit.Centimeter,
            (0, 10),
            Citation.Choice("so that it rests inside the rim")
        );

    /// <summary>Width of a lamp where neither the design nor its kind says one.</summary>
    public Coefficient LampWidth { get; } =
        list.Add(
            "lampWidth",
            "width of a lamp that says none",
            3,
            Unit.Centimeter,
            (1, 5),
            Citation.Choice("usual bars")
        );

    /// <summary>Height over the lid where nothing is typed.</summary>
    public Coefficient Above { get; } =
        list.Add(
            "above",
            "height of a lamp above the lid",
            3,
            Unit.Centimeter,
            (1, 6),
            Citation.Choice("feet of usual bars")
        );

    /// <summary>Power of a lamp where neither the design nor its kind says it.</summary>
    public Coefficient LampWatts { get; } =
        list.Add(
            "lampWatts",
            "power of a lamp that says none",
            18,
            Unit.Watt,
            (10, 30),
            Citation.Choice("usual bars")
        );

    /// <summary>Light out of a watt where neither lumens nor an efficacy is known.</summary>
    public Coefficient LumensPerWatt { get; } =
        list.Add(
            "lumensPerWatt",
            "light of a watt",
            100,
            CoefficientUnits.LumenPerWatt,
            (80, 140),
            Citation.Choice("white light-emitting diodes, where neither lumens nor the kind of lamp say more")
        );

    /// <summary>Photons of a kilolumen where the kind of lamp does not say.</summary>
    public Coefficient Photons { get; } =
        list.Add(
            "photons",
            "photons of a kilolumen",
            14.4,
            Unit.MicromolePerKilolumen,
            (13, 17),
            Citation.Choice("white light-emitting diodes, where the kind of lamp does not say more")
        );

    /// <summary>Share of the power that is light where the kind of lamp does not say.</summary>
    public Coefficient VisibleShare { get; } =
        list.Add(
            "visibleShare",
            "share of a lamp's power that is light",
            36,
            Unit.Percent,
            (25, 45),
            Citation.Recalled("doe-led-thermal-2007", "light-emitting diodes of today, above its 15 to 25 %")
        );

    /// <summary>Share of the heat of the case that crosses the lid where the kind does not say.</summary>
    public Coefficient DownShare { get; } =
        list.Add(
            "downShare",
            "share of the heat of a lamp's case that crosses the lid",
            15,
            Unit.Percent,
            (5, 30),
            Citation.Choice("a case over the lid gives most to the room")
        );

    /// <summary>Share of what panes and lid take up that counts as inside.</summary>
    public Coefficient PaneInside { get; } =
        list.Add(
            "paneInside",
            "share of what panes take up that stays inside",
            50,
            Unit.Percent,
            (40, 60),
            Citation.Choice("a pane gives to both sides alike")
        );

    /// <summary>Reflectance of soil and what says none.</summary>
    public Coefficient SoilReflectance { get; } =
        list.Add(
            "soilReflectance",
            "reflectance of wet soil",
            7.5,
            Unit.Percent,
            (5, 12),
            Citation.Recalled("campbell-norman-1998", "wet dark soil")
        );

    /// <summary>Reflectance of open water with what lies under it.</summary>
    public Coefficient WaterReflectance { get; } =
        list.Add(
            "waterReflectance",
            "reflectance of open water over a dark bottom",
            9,
            Unit.Percent,
            (6, 15),
            Citation.Choice(
                "6.6 % of diffuse light from the face of water (Fresnel, index 1.33, over the half space) "
                    + "and a few percent from a dark bottom"
            )
        );

    /// <summary>Reflectance of a background that says none.</summary>
    public Coefficient BackgroundReflectance { get; } =
        list.Add(
            "backgroundReflectance",
            "reflectance of a background that says none",
            10,
            Unit.Percent,
            (5, 30),
            Citation.Recalled("campbell-norman-1998", "dark cork and bark")
        );

    /// <summary>Reflectance of wood or stone that says none.</summary>
    public Coefficient PieceReflectance { get; } =
        list.Add(
            "pieceReflectance",
            "reflectance of a piece that says none",
            20,
            Unit.Percent,
            (10, 35),
            Citation.Recalled("campbell-norman-1998", "wood")
        );

    /// <summary>Leaves of a round crown along its middle, over the mean over its ground.</summary>
    public Coefficient Ellipsoid { get; } =
        list.Add(
            "ellipsoid",
            "leaf layers of a round crown over its mean",
            1.5,
            Unit.One,
            (1.3, 1.7),
            Citation.Choice("an ellipsoid holds 2/3 of the volume over its ground")
        );

    /// <summary>Mean projection of leaves.</summary>
    public Coefficient LeafProjection { get; } =
        list.Add(
            "leafProjection",
            "mean projection of leaves",
            50,
            Unit.Percent,
            (40, 70),
            Citation.Recalled("monsi-saeki-1953", "leaves in all directions")
        );

    /// <summary>Absorptance of leaves.</summary>
    public Coefficient LeafAbsorptance { get; } =
        list.Add(
            "leafAbsorptance",
            "share of the light on a leaf that it takes",
            80,
            Unit.Percent,
            (75, 90),
            Citation.Recalled("goudriaan-1977", "0.8 of photosynthetic light")
        );

    /// <summary>Leaf height of mats over their foot.</summary>
    public Coefficient MatHeight { get; } =
        list.Add(
            "matHeight",
            "leaves of a mat above its foot",
            2,
            Unit.Centimeter,
            (1, 3),
            Citation.Choice("mosses and creepers")
        );

    /// <summary>Largest crown.</summary>
    public Coefficient MostCrown { get; } =
        list.Add(
            "mostCrown",
            "largest crown, share of the box",
            60,
            Unit.Percent,
            (40, 80),
            Citation.Choice("so that a label does not fill the box")
        );

    /// <summary>Leaves may cover a crown this much less or more than thought.</summary>
    public Coefficient Leaves { get; } =
        list.Add(
            "leaves",
            "factor on the leaves of a crown",
            1,
            Unit.One,
            (0.7, 1.3),
            Citation.Choice("crowns differ by a third from what is thought")
        );

    /// <summary>A refuge is no brighter than this.</summary>
    public Coefficient RefugeLight { get; } =
        list.Add(
            "refugeLight",
            "light up to which a place is a refuge",
            5,
            Unit.Micromole,
            (1, 10),
            Citation.Choice("house rule; frogs leave bright perches")
        );

    /// <summary>A refuge is no smaller than this.</summary>
    public Coefficient RefugePatch { get; } =
        list.Add(
            "refugePatch",
            "smallest patch of refuge",
            100,
            Unit.SquareCentimeter,
            (50, 200),
            Citation.Choice("house rule; a frog with room around it")
        );
}
