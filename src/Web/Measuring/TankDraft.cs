namespace Litterfall.Web.Measuring;

/// <summary>
/// What was read off a tank so far, as typed. It stays in the browser until it is a design: a reload in the
/// middle loses nothing.
/// </summary>
public sealed class TankDraft
{
    /// <summary>Readings of each edge.</summary>
    public const int Readings = 3;

    /// <summary>Page at which the measuring stands, from 1.</summary>
    public int Step { get; set; } = 1;

    /// <summary>Name of the design to come.</summary>
    public string Name { get; set; } = "";

    /// <summary>Names of photos that the bench keeps.</summary>
    public List<string> Photos { get; set; } = [];

    /// <summary>Unit of what is typed without one.</summary>
    public string Unit { get; set; } = "cm";

    /// <summary>True where the outside was measured.</summary>
    public bool IsOutside { get; set; }

    /// <summary>Along the front.</summary>
    public string[] Length { get; set; } = ["", "", ""];

    /// <summary>Front to back.</summary>
    public string[] Depth { get; set; } = ["", "", ""];

    /// <summary>Height.</summary>
    public string[] Height { get; set; } = ["", "", ""];

    /// <summary>Thickness of the walls, by the edge.</summary>
    public string Walls { get; set; } = "";

    /// <summary>Thickness of the base; as the walls if left out.</summary>
    public string Base { get; set; } = "";

    /// <summary>True for doors in front over a sill.</summary>
    public bool IsFront { get; set; }

    /// <summary>Height of the sill.</summary>
    public string Sill { get; set; } = "";

    /// <summary>"glass", "mesh" or "none".</summary>
    public string Lid { get; set; } = "glass";

    /// <summary>Thickness of a lid of glass.</summary>
    public string LidThickness { get; set; } = "";

    /// <summary>Open share of a lid of mesh, percent.</summary>
    public string LidOpen { get; set; } = "";

    /// <summary>Openings for air.</summary>
    public List<VentDraft> Vents { get; set; } = [];

    /// <summary>Depth of the drainage layer.</summary>
    public string Drainage { get; set; } = "";

    /// <summary>Key of its grains.</summary>
    public string Grains { get; set; } = "expanded-clay-8-16";

    /// <summary>Depth of the soil in front.</summary>
    public string SoilFront { get; set; } = "";

    /// <summary>Depth of the soil at the back; as in front if left out.</summary>
    public string SoilBack { get; set; } = "";

    /// <summary>Key of its mix.</summary>
    public string Mix { get; set; } = "standard-rainforest";

    /// <summary>Depth of the leaves.</summary>
    public string Leaves { get; set; } = "";

    /// <summary>Water over the base now.</summary>
    public string Level { get; set; } = "";

    /// <summary>Day it was planted.</summary>
    public string Planted { get; set; } = "";

    /// <summary>Animals in it.</summary>
    public List<CountDraft> Animals { get; set; } = [];

    /// <summary>Plants in it.</summary>
    public List<CountDraft> Plants { get; set; } = [];

    /// <summary>Mean temperature of the room.</summary>
    public string RoomTemperature { get; set; } = "";

    /// <summary>Mean humidity of the room.</summary>
    public string RoomHumidity { get; set; } = "";

    /// <summary>What else was seen.</summary>
    public string Remark { get; set; } = "";
}

/// <summary>An opening for air, as read.</summary>
public sealed class VentDraft
{
    /// <summary>The side it is in.</summary>
    public string Side { get; set; } = "top";

    /// <summary>Its longer edge.</summary>
    public string Length { get; set; } = "";

    /// <summary>Its other edge.</summary>
    public string Width { get; set; } = "";
}

/// <summary>So many of a kind.</summary>
public sealed class CountDraft
{
    /// <summary>Key of the library.</summary>
    public string Key { get; set; } = "";

    /// <summary>How many.</summary>
    public int Count { get; set; } = 1;
}
