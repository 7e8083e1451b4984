using System.Collections.Frozen;
using System.Collections.Immutable;
using Litterfall.Domain.DesignFile;

namespace Litterfall.Web.Desk.Form;

/// <summary>
/// What every key of the design is called on the screen, by the record it belongs to; a key without words
/// here fails a test.
/// </summary>
public static partial class FormWords
{
    /// <summary>What a key is called; null where it has no words.</summary>
    /// <param name="key">The key.</param>
    public static string? Of(DesignKey key) => Labels.GetValueOrDefault($"{key.Owner.Name}.{key.Name}");

    /// <summary>True for a key that few need: it stands behind "More".</summary>
    /// <param name="key">The key.</param>
    public static bool IsRare(DesignKey key) => Rare.Contains($"{key.Owner.Name}.{key.Name}");

    /// <summary>A word of a choice as people say it.</summary>
    /// <param name="key">The key.</param>
    /// <param name="word">The word of the file.</param>
    public static string Choice(DesignKey? key, string word) =>
        (key is null ? null : Choices.GetValueOrDefault($"{key.Owner.Name}.{key.Name} {word}"))
        ?? word.Replace('-', ' ');

    private static readonly FrozenDictionary<string, string> Choices = new Dictionary<string, string>(
        StringComparer.Ordinal
    )
    {
        ["Box.opening top"] = "on top, by a lid",
        ["Box.opening front"] = "in front, by doors",
        ["Box.topEdge free"] = "free (rimless)",
        ["Box.topEdge held"] = "held by a rim, a bar or a glued top",
        ["Box.panes bought"] = "box bought ready",
        ["Box.panes cut"] = "panes ordered cut for this build",
        ["Design.form planted"] = "planted here",
        ["Design.form kit"] = "kit to be planted by the customer",
        ["Lid.rests ledges"] = "ledges glued to the walls",
        ["Lid.rests clips"] = "clips over the walls",
        ["Lid.rests rim"] = "the rim of the box",
        ["Lid.held back-hangs"] = "back edge hangs free",
        ["Lid.held sides"] = "left and right edge only",
        ["Lid.held front-and-back"] = "front and back edge only",
        ["Lid.held corners"] = "corners (clips)",
        ["Vent.make strip"] = "shorter pane and a strip of mesh",
        ["Vent.make cutout"] = "opening cut into the pane",
        ["Drain.kind siphon"] = "siphon through a dip tube",
        ["Drain.kind bulkhead"] = "outlet in a wall",
        ["Drain.kind standpipe"] = "standpipe",
        ["InsideShelf.held ends"] = "left and right end",
        ["InsideShelf.held three-edges"] = "both ends and the back",
        ["InsideShelf.held corners"] = "corners (clips)",
        ["HardscapePiece.seat base"] = "stands on the base glass",
        ["HardscapePiece.seat soil"] = "pressed into the soil",
        ["Basin.sides ramp"] = "ramp, stones or wood lead out",
        ["Resident.papers held"] = "on file",
        ["Resident.papers missing"] = "missing",
        ["Planting.papers held"] = "on file",
        ["Planting.papers missing"] = "missing",
        ["Resident.origin captive-bred"] = "captive-bred",
        ["Resident.origin farm-bred"] = "farm-bred",
        ["Resident.origin wild-caught"] = "wild-caught",
        ["Habits.water purified"] = "purified (reverse osmosis or distilled)",
        ["Habits.water rain"] = "rain water",
        ["Habits.water tap"] = "tap water",
        ["Faces.front outer-wall"] = "outer wall",
        ["Fan.use stir"] = "stirs the air inside",
        ["Fan.use vent"] = "blows through a vent",
        ["Planting.leaves all"] = "all around",
    }.ToFrozenDictionary(StringComparer.Ordinal);

    private static readonly FrozenSet<string> Rare = new[]
    {
        "Design.tank",
        "Design.workshop",
        "Box.material",
        "Box.rim",
        "Box.topEdge",
        "Box.locked",
        "Glass.base",
        "Background.from",
        "DrainageLayer.loss",
        "SoilLayer.mixingYield",
        "SoilLayer.squeeze",
        "SoilLayer.loss",
        "SoilLayer.settling",
        "SoilLayer.retainer",
        "MossLayer.loss",
        "LeafLitter.loss",
        "LeafLitter.cover",
        "Basin.mass",
        "HardscapePiece.volume",
        "HardscapePiece.length",
        "Lid.held",
        "Lid.braced",
        "Lid.frame",
        "Lid.hinged",
        "Doors.play",
        "Doors.overlap",
        "Doors.rated",
        "Vent.area",
        "Vent.diameter",
        "Vent.behind",
        "Vent.make",
        "Lamp.photons",
        "Lamp.spectrum",
        "Lamp.file",
        "Lamp.length",
        "Lamp.width",
        "Lamp.beam",
        "Lamp.turn",
        "Lamp.age",
        "Planting.leaves",
        "LightReading.meter",
        "Room.altitude",
        "Room.log",
        "InsideShelf.material",
        "MistHose.fill",
    }.ToFrozenSet(StringComparer.Ordinal);
}
