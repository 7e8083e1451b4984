using System.Collections.Frozen;
using Litterfall.Domain;

namespace Litterfall.Web.Desk.Form;

/// <summary>
/// What a part begins with when it is added: usual values of the trade, each shown in its field and meant to
/// be changed.
/// </summary>
public static class FormBegin
{
    /// <summary>Stands for the entry that is chosen.</summary>
    public const string Chosen = "?";

    private static readonly FrozenDictionary<string, string> ByKey = new Dictionary<string, string>(
        StringComparer.Ordinal
    )
    {
        ["habits"] = "{ levelCheck: 7 d }",
        ["box.doors"] = "{ kind: sliding, count: 2, thickness: 4 mm, seal: brush }",
        ["lid"] = "{ material: float-glass, thickness: 4 mm, gap: 2 mm, rests: ledges }",
        ["background"] = "{ material: cork-tile, thickness: 2 cm }",
        ["passages"] = "{ for: mist hose, hole: 12 mm, through: 6 mm, sealed: true, in: lid }",
        ["shelves"] = "{ depth: 12 cm, thickness: 6 mm, load: 1 kg }",
        ["floor.drainage"] = "{ material: expanded-clay-8-16, depth: 5 cm }",
        ["floor.barrier"] = "{ material: glass-fibre-screen, upturn: 15 mm }",
        ["floor.soil"] = "{ recipe: standard-rainforest, depth: 7 cm }",
        ["floor.moss"] = "{ material: sheet-moss, depth: 2 cm, cover: 30 % }",
        ["floor.litter"] = "{ material: oak-leaves, depth: 3 cm }",
        ["hardscape"] = "{ material: ?, mass: 0.5 kg }",
        ["basins"] = "{ length: 15 cm, width: 10 cm, depth: 3 cm, edge: 1 cm, sides: ramp }",
        ["start"] = "{ level: 2 cm }",
        ["vents"] = "{ length: 20 cm, width: 3 cm, height: 10 cm, mesh: steel-gauze-0.5, side: front }",
        ["misting"] =
            "{ nozzles: 2, each: 85 mL/min, times: [ { at: \"08:00\", for: 15 s }, { at: \"20:00\", for: "
            + "20 s } ] }",
        ["misting.hose"] = "{ length: 2 m, bore: 4 mm }",
        ["drain"] = "{ kind: siphon, diameter: 20 mm }",
        ["fogger"] = "{ rate: 100 mL/h, times: [ { at: \"20:00\", for: 10 min } ] }",
        ["fan"] = "{ flow: 6 m3/h, use: stir }",
        ["heating"] = "{ watts: 8 W, thermostat: true }",
        ["headspace"] = "{ hold: { air: 24 C, humidity: 80 %, airChanges: 2 } }",
        ["lamps"] = "{ lamp: ?, lumens: 2000, watts: 18, above: 3 cm, on: \"08:00\", off: \"20:00\" }",
        ["light"] = "{ clean: 95 % }",
        ["plants"] = "{ plant: ? }",
        ["hygiene"] = "{ bleach: 5 % }",
        ["animals"] = "{ animal: ?, count: 2 }",
        ["ratedFor"] = "{ animal: ?, count: 2 }",
        ["crew"] = "{ animal: ?, count: 300 }",
        ["room"] = "{ temperature: 21 C, swing: 2 K, humidity: 50 % }",
        ["shelf"] = "{ rated: 100 kg }",
        ["electrics"] = "{ dripLoops: true }",
    }.ToFrozenDictionary(StringComparer.Ordinal);

    private static readonly FrozenDictionary<Type, string> ByRecord = new Dictionary<Type, string>
    {
        [typeof(SoilZone)] = "{ share: 20 %, depth: 7 cm }",
        [typeof(MistTime)] = "{ at: \"14:00\", for: 15 s }",
        [typeof(Piece)] = "{ length: 40 cm, depth: 40 cm }",
        [typeof(LightReading)] = "{ at: { x: 20 cm, y: 20 cm }, lux: 1000 lx }",
    }.ToFrozenDictionary();

    /// <summary>What a part begins with; null where it begins by itself.</summary>
    /// <param name="key">Its path.</param>
    public static string? Of(string key) => ByKey.GetValueOrDefault(key);

    /// <summary>What a record below a part begins with; null where it begins by itself.</summary>
    /// <param name="record">The record.</param>
    public static string? Of(Type record) => ByRecord.GetValueOrDefault(record);
}
