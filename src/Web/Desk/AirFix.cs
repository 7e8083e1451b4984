using System.Globalization;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Faults;
using Litterfall.Domain.Findings;

namespace Litterfall.Web.Desk;

/// <summary>Fixes of vents, mist and lamps.</summary>
internal static class AirFix
{
    private const double UsualHours = 12;
    private const double MostLight = 4;

    /// <summary>Light is sold in about these steps, lm.</summary>
    private const double LumenStep = 100;

    /// <summary>A little more than just enough, for the lumens are rounded.</summary>
    private const double Over = 1.03;

    /// <summary>Words and the changed design; null where the finding is not of this kind.</summary>
    public static (string Words, Reading<DesignDocument> Edit)? Of(
        Finding finding,
        DesignDocument document
    ) =>
        finding.Slug switch
        {
            "no-fresh-air" when finding.Where == "vents" && document.Design.Vents.Count == 0 => (
                "a vent low in front and one on top",
                Vents(document, ["front", "top"])
            ),
            "top-vents-only" => ("a vent low in front", Vents(document, ["front"])),
            "vented-more-than-misted"
            or "soil-too-dry-for-crew"
            or "litter-crust"
            or "air-too-dry"
                when document.Design is { Misting: null, Fogger: null, Habits: not { HandMist: not null } } =>
                (
                    "a misting pump, 20 s in the morning and the evening",
                    DesignEdits.SetPart(
                        document,
                        "misting",
                        "{ nozzles: 2, each: 90 mL/min, times: [ { at: \"08:00\", for: 20 s }, "
                            + "{ at: \"17:00\", for: 20 s } ] }"
                    )
                ),
            "plant-too-dark"
            or "plant-below-compensation" when FixText.Times(finding) is > 1 and <= MostLight and var more =>
                Lamps(document, more * Over),
            "plant-too-bright" or "moss-too-bright" when FixText.Times(finding) is < 1 and var less => Lamps(
                document,
                less / Over
            ),
            "lamp-hours" when FixIndex.Of(finding.Where) is { } i => Hours(document, i),
            "lamp-rests-on-lid" when FixIndex.Of(finding.Where) is { } i => (
                "the lamp 3 cm over the lid",
                FixText.Length(
                    document,
                    string.Create(CultureInfo.InvariantCulture, $"lamps[{i}].above"),
                    0.03
                )
            ),
            _ => null,
        };

    /// <summary>All lamps brighter or dimmer as much, with the watts that go with it.</summary>
    private static (string, Reading<DesignDocument>)? Lamps(DesignDocument document, double factor)
    {
        var lamps = document.Design.Lamps;
        if (lamps.Count == 0 || lamps.Any(l => l.Lumens is null))
        {
            return null;
        }

        var with = new Reading<DesignDocument>(document, []);
        var all = 0.0;
        for (var i = 0; i < lamps.Count; i++)
        {
            var lumens =
                Math.Max(1, Math.Ceiling(lamps[i].Lumens!.Value.Si * factor / LumenStep)) * LumenStep;
            all += lumens;
            with = Set(with, i, ("lumens", lumens));
            if (lamps[i].Watts is { } watts)
            {
                with = Set(with, i, ("watts", Math.Ceiling(watts.Si * lumens / lamps[i].Lumens!.Value.Si)));
            }
        }

        return (string.Create(CultureInfo.InvariantCulture, $"lamps of {all:0} lm"), with);
    }

    private static Reading<DesignDocument> Set(
        Reading<DesignDocument> with,
        int lamp,
        (string Key, double Value) to
    ) =>
        with.Value is { } so
            ? DesignEdits.Set(
                so,
                string.Create(CultureInfo.InvariantCulture, $"lamps[{lamp}].{to.Key}"),
                to.Value.ToString("0", CultureInfo.InvariantCulture)
            )
            : with;

    private static (string, Reading<DesignDocument>)? Hours(DesignDocument document, int lamp)
    {
        if (document.Design.Lamps.Count <= lamp)
        {
            return null;
        }

        var on = document.Design.Lamps[lamp].On ?? new TimeOnly(8, 0);
        var off = on.AddHours(UsualHours).ToString("HH:mm", CultureInfo.InvariantCulture);
        return (
            "12 hours of light",
            DesignEdits.Set(document, string.Create(CultureInfo.InvariantCulture, $"lamps[{lamp}].off"), off)
        );
    }

    /// <summary>Strips of mesh along most of the front, where they usually go.</summary>
    private static Reading<DesignDocument> Vents(DesignDocument document, string[] sides)
    {
        var box = document.Design.Box;
        var edges = box.Inside ?? box.Outside;
        var floor = document.Design.Floor;
        if (edges is null)
        {
            return new(null, []);
        }

        var layers =
            (floor.Drainage?.Depth?.Si ?? floor.Drainage?.Raised?.Si ?? 0)
            + (floor.Soil?.Front?.Si ?? floor.Soil?.Depth?.Si ?? 0);
        var low = Math.Max(box.Sill?.Si ?? 0, layers + 0.03);
        var with = new Reading<DesignDocument>(document, []);
        foreach (var side in sides)
        {
            if (with.Value is not { } so)
            {
                break;
            }

            var height = side == "top" ? FixText.Mean(edges.Height) - 0.01 : low;
            with = DesignEdits.Add(
                so,
                "vents",
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{{ length: {FixText.Mean(edges.Length) * 80:0} cm, width: 10 mm, "
                        + $"height: {height * 100:0.#} cm, mesh: steel-gauze-0.5, side: {side} }}"
                )
            );
        }

        return with;
    }
}
