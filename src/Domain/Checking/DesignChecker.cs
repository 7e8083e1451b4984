using System.Collections;
using System.Collections.Immutable;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Faults;
using Litterfall.Domain.Units;

namespace Litterfall.Domain.Checking;

/// <summary>The one door from what a file says to a design that can be computed.</summary>
public sealed class DesignChecker
{
    private readonly DesignDocument document;
    private readonly TradeCatalog catalog;
    private readonly List<TextFault> faults = [];
    private readonly ImmutableDictionary<string, CatalogEntry>.Builder resolved =
        ImmutableDictionary.CreateBuilder<string, CatalogEntry>(StringComparer.Ordinal);

    private DesignChecker(DesignDocument document, TradeCatalog catalog)
    {
        this.document = document;
        this.catalog = catalog;
    }

    /// <summary>Resolves names and checks that parts fit together; faults carry line and column.</summary>
    /// <param name="document">The design.</param>
    /// <param name="catalog">The catalog.</param>
    /// <param name="files">What the files that it names hold; none by default.</param>
    public static Reading<CheckedDesign> Check(
        DesignDocument document,
        TradeCatalog catalog,
        DesignFiles? files = null
    )
    {
        var checker = new DesignChecker(document, catalog);
        checker.Resolve(document.Design, "");
        if (checker.faults.Count == 0)
        {
            foreach (var (path, message, expected) in PlausibleRanges.TooMuch(document.Design))
            {
                checker.Add(path, message, expected);
            }
        }

        checker.CheckBox();
        checker.CheckFloor();
        foreach (var (path, message, expected) in BasinChecks.Faults(document.Design))
        {
            checker.Add(path, message, expected);
        }

        checker.CheckFittings();
        checker.CheckLight(files ?? DesignFiles.None);
        return checker.faults.Count > 0
            ? new(null, [.. checker.faults.OrderBy(f => f.Line).ThenBy(f => f.Column)])
            : new(
                new CheckedDesign(document, catalog, checker.resolved.ToImmutable())
                {
                    Files = files ?? DesignFiles.None,
                },
                []
            );
    }

    private void Resolve(object owner, string path)
    {
        foreach (var member in FileShape.Of(owner.GetType()).Members)
        {
            var value = member.Get(owner);
            var at = path.Length == 0 ? member.Key : $"{path}.{member.Key}";
            if (value is string name && member.Kinds.Length > 0)
            {
                ResolveName(name, member.Kinds, at);
            }
            else if (value is DateOnly day && !PlausibleRanges.Holds(day))
            {
                Add(
                    at,
                    FormattableString.Invariant($"{member.Key}: no date is counted from {day:yyyy-MM-dd}"),
                    PlausibleRanges.Dates
                );
            }
            else if (PlausibleRanges.Find(owner.GetType(), member.Key) is { } range)
            {
                CheckRange(value, range, (member.Key, at));
            }
            else if (value is IEnumerable items and not string)
            {
                var i = 0;
                foreach (var item in items)
                {
                    if (FileTypes.IsRecord(item.GetType()))
                    {
                        Resolve(item, $"{at}[{i}]");
                    }

                    i++;
                }
            }
            else if (value is not null && FileTypes.IsRecord(value.GetType()))
            {
                Resolve(value, at);
            }
        }
    }

    private void CheckRange(object? value, PlausibleRange range, (string Key, string Path) at)
    {
        if (value is ITyped { Si: > 0 or < 0 } one && !range.Holds(one.Si))
        {
            Add(at.Path, $"{at.Key}: '{one.Text}' is no size of a planted box", range.Words);
        }
        else if (value is IEnumerable items)
        {
            var i = 0;
            foreach (var item in items)
            {
                CheckRange(item, range, (at.Key, FormattableString.Invariant($"{at.Path}[{i}]")));
                i++;
            }
        }
    }

    private void ResolveName(string name, EntryKind[] kinds, string path)
    {
        var entry = catalog.Find(name);
        if (entry is null || !kinds.Contains(entry.Kind))
        {
            var bySynonym = catalog
                .Entries.Where(e =>
                    kinds.Contains(e.Kind)
                    && e.Synonyms.Any(s => TradeCatalog.Canonical(s) == TradeCatalog.Canonical(name))
                )
                .Take(2)
                .ToList();
            if (bySynonym.Count == 1)
            {
                resolved[path] = bySynonym[0];
                return;
            }

            var wanted = string.Join(" or ", kinds.Select(kind => kind.Word()));
            var near = catalog.Near(name, kinds);
            Add(
                path,
                entry is null
                    ? $"the library has no {wanted} '{name}'"
                    : $"'{name}' is of the kind {entry.Kind.Word()}, not {wanted}",
                near.Length > 0
                    ? $"perhaps {string.Join(" or ", near)}"
                    : $"a key of `litterfall library {kinds[0].Word()}`"
            );
            return;
        }

        resolved[path] = entry;
    }

    private void CheckBox()
    {
        var box = document.Design.Box;
        if (box.Outside is null == box.Inside is null)
        {
            Add(
                "box",
                box.Inside is null ? "the box has no size" : "the box has two sizes",
                "either outside edges with glass, or inside edges"
            );
        }

        if (box.Outside is not null && box.Glass is null)
        {
            Add(
                "box.outside",
                "outside edges alone do not tell the inside",
                "glass: { walls: 5 mm, base: 5 mm } beside them"
            );
        }

        foreach (var (edges, path) in new[] { (box.Outside, "box.outside"), (box.Inside, "box.inside") })
        {
            CheckEdges(edges, path);
        }

        Positive(box.Glass?.Walls.Si, "box.glass.walls", "a glass thickness above 0");
        Positive(box.Glass?.Base?.Si, "box.glass.base", "a glass thickness above 0");
    }

    private void CheckEdges(Edges? edges, string path)
    {
        if (edges is null)
        {
            return;
        }

        foreach (
            var (edge, name) in new[]
            {
                (edges.Length, "length"),
                (edges.Depth, "depth"),
                (edges.Height, "height"),
            }
        )
        {
            for (var i = 0; i < edge.Count; i++)
            {
                Positive(edge[i].Si, $"{path}.{name}[{i}]", "an edge above 0");
            }
        }
    }

    private void CheckFloor()
    {
        var floor = document.Design.Floor;
        if (floor.Drainage is { } drainage)
        {
            CheckDrainage(drainage);
        }

        if (floor.Soil is { } soil)
        {
            CheckSoil(soil);
        }

        if (floor is { Soil: null, Drainage: null, Litter: null })
        {
            Add("floor", "the floor has no layer", "at least soil, drainage or litter");
        }
    }

    private void CheckDrainage(DrainageLayer drainage)
    {
        if (drainage.Raised is null && (drainage.Material is null || drainage.Depth is null))
        {
            Add(
                "floor.drainage",
                "the drainage layer is incomplete",
                "material and depth, or raised, or none"
            );
        }

        if (drainage.Raised is not null && drainage.Depth is not null)
        {
            Add(
                "floor.drainage",
                "the floor is both raised and filled",
                "either raised, or material and depth"
            );
        }

        if (drainage.Raised is not null && drainage.Material is not null)
        {
            Add(
                "floor.drainage.material",
                "a raised floor holds no aggregate",
                "raised with an optional grid"
            );
        }
    }

    private void CheckSoil(SoilLayer soil)
    {
        const string expected = "depth, or front and back, or zones";
        if (
            Forms(soil.Depth is not null, soil.Front is not null, soil.Back is not null, soil.Zones.Count > 0)
            != 1
        )
        {
            Add("floor.soil", "the soil depth is not clear", expected);
        }

        for (var i = 0; i < soil.Zones.Count; i++)
        {
            var zone = soil.Zones[i];
            if (Forms(zone.Depth is not null, zone.Front is not null, zone.Back is not null, false) != 1)
            {
                Add(
                    $"floor.soil.zones[{i}]",
                    "the depth of this step is not clear",
                    "depth, or front and back"
                );
            }
        }

        var shares = soil.Zones.Sum(zone => zone.Share.Si);
        if (soil.Zones.Count > 0 && Math.Abs(shares - 1) > 1e-6)
        {
            Add(
                "floor.soil.zones",
                FormattableString.Invariant($"the steps cover {shares * 100:0.##} % of the length"),
                "shares that add up to 100 %"
            );
        }

        if (soil.Settling?.Si >= 0.9)
        {
            Add("floor.soil.settling", "a mix cannot settle to almost nothing", "a settling below 90 %");
        }

        if (soil.MixingYield?.Si < 0.1)
        {
            Add(
                "floor.soil.mixingYield",
                "a mix cannot yield almost nothing",
                "a mixing yield of at least 10 %"
            );
        }
    }

    /// <summary>
    /// How many complete forms of a depth are given; half a wedge counts as two to be refused.
    /// </summary>
    private static int Forms(bool depth, bool front, bool back, bool zones) =>
        (depth ? 1 : 0)
        + (
            front && back ? 1
            : front || back ? 2
            : 0
        )
        + (zones ? 1 : 0);

    private void CheckFittings()
    {
        var design = document.Design;
        if (design.Tank is { } tank && (tank.Length is < 4 or > 20 || !tank.All(IsTankSign)))
        {
            Add("tank", "this cannot be the number of a tank", "4 to 20 of 0-9 and A-Z");
        }

        for (var i = 0; i < design.Vents.Count; i++)
        {
            var vent = design.Vents[i];
            if (vent is { Area: null, Diameter: null } && (vent.Length is null || vent.Width is null))
            {
                Add($"vents[{i}]", "the vent has no size", "area, diameter, or length and width");
            }
        }

        for (var i = 0; i < design.Hardscape.Count; i++)
        {
            if (design.Hardscape[i] is { Mass: null, Volume: null })
            {
                Add($"hardscape[{i}]", "the piece has no size", "its mass or its volume");
            }
        }

        if (design.Lid is { Share: not null } && resolved.GetValueOrDefault("lid.material") is SheetEntry)
        {
            Add("lid.share", "a pane has no open share", "a share on a mesh lid only");
        }

        var misfits = PaneChecks.Faults(design).Concat(OpeningChecks.Faults(design));
        foreach (var (path, message, expected) in misfits)
        {
            Add(path, message, expected);
        }

        Positive(design.Hygiene?.Bleach?.Si, "hygiene.bleach", "the strength on the label, such as 6 %");
        Positive(design.Lid?.Thickness?.Si, "lid.thickness", "a thickness above 0");
        Positive(design.Background?.Thickness.Si, "background.thickness", "a thickness above 0");
    }

    private void CheckLight(DesignFiles files)
    {
        var lamps = document.Design.Lamps;
        for (var i = 0; i < lamps.Count; i++)
        {
            var (lamp, path) = (lamps[i], FormattableString.Invariant($"lamps[{i}]"));
            if (lamp.File is { } file && !files.Lamps.ContainsKey(file))
            {
                Add(
                    $"{path}.file",
                    $"the luminaire file '{file}' was not read",
                    "a file seen from the design file"
                );
            }

            if (lamp.Spectrum is { } spectrum && !files.Spectra.ContainsKey(spectrum))
            {
                Add(
                    $"{path}.spectrum",
                    $"the spectrum '{spectrum}' was not read",
                    "a file seen from the design file"
                );
            }

            if (lamp.Beam is not null && (lamp.File is not null || lamp.Beam.Value.Si is < 0.17 or > 2.97))
            {
                Add(
                    $"{path}.beam",
                    lamp.File is null ? "this is no beam" : "a luminaire file already tells the beam",
                    lamp.File is null ? "an angle of 10 to 170 deg" : "file or beam"
                );
            }

            Positive(lamp.Length?.Si, $"{path}.length", "a length above 0");
            Positive(lamp.Width?.Si, $"{path}.width", "a width above 0");
            Positive(lamp.Lumens?.Si, $"{path}.lumens", "lumens above 0");
            Positive(lamp.Photons?.Si, $"{path}.photons", "a photon flux above 0");
        }

        Positive(document.Design.Light?.Reading?.Lux.Si, "light.reading.lux", "a reading above 0");
        Positive(document.Design.Light?.Clean?.Si, "light.clean", "a share above 0");
        Positive(document.Design.Light?.Drops?.Si, "light.drops", "a share above 0");
    }

    private static bool IsTankSign(char c) => char.IsAsciiDigit(c) || char.IsAsciiLetterUpper(c);

    private void Positive(double? si, string path, string expected)
    {
        if (si <= 0)
        {
            Add(path, "this is zero", expected);
        }
    }

    private void Add(string path, string message, string expected) =>
        faults.Add(document.Fault(path, message, expected));
}
