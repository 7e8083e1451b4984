using System.Globalization;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Faults;
using Litterfall.Domain.Findings;

namespace Litterfall.Web.Desk;

/// <summary>Fixes of layers, barrier, drain, lid and wiring.</summary>
internal static class FloorFix
{
    private const double RoomOverSoil = 0.005;

    /// <summary>Words and the changed design; null where the finding is not of this kind.</summary>
    public static (string Words, Reading<DesignDocument> Edit)? Of(
        Finding finding,
        DesignDocument document
    ) =>
        finding.Slug switch
        {
            "no-barrier" => (
                "lay a barrier mesh",
                DesignEdits.SetPart(
                    document,
                    "floor.barrier",
                    "{ material: glass-fibre-screen, upturn: 15 mm }"
                )
            ),
            "barrier-gap" => ("cut a new barrier mesh", DesignEdits.Remove(document, "floor.barrier.onHand")),
            "metal-under-soil" or "barrier-too-open" or "barrier-too-fine" => (
                "a barrier of glass-fiber screen",
                DesignEdits.Set(document, "floor.barrier.material", "glass-fibre-screen")
            ),
            "no-drain" => (
                "set a dip tube to siphon from",
                DesignEdits.SetPart(document, "drain", "{ kind: siphon, diameter: 20 mm }")
            ),
            "drain-above-barrier" when finding.Limit is { } highest => (
                $"the outlet at {FixText.Written(document, "drain.height", highest.Si)}",
                FixText.Length(document, "drain.height", highest.Si)
            ),
            "litter-too-thin" or "crew-without-litter" or "litter-covers-part" => (
                "3 cm of oak leaves",
                DesignEdits.SetPart(document, "floor.litter", "{ material: oak-leaves, depth: 3 cm }")
            ),
            "drainage-too-thin" when document.Design.Floor.Drainage?.Depth is not null => (
                "5 cm of drainage",
                FixText.Length(document, "floor.drainage.depth", 0.05)
            ),
            "soil-too-thin" or "soil-too-shallow-to-burrow" when FixText.Short(finding) is > 0 and var by => (
                $"{FixText.Rounded(by) * 100:0.#} cm more soil",
                FixText.Soil(document, by)
            ),
            "soil-above-sill" when FixText.Short(finding) is < 0 and var over => (
                FormattableString.Invariant($"{-over * 100:0.#} cm less soil at the front"),
                FixText.Soil(document, over, atFront: true)
            ),
            _ => Fitting(finding, document),
        };

    private static (string Words, Reading<DesignDocument> Edit)? Fitting(
        Finding finding,
        DesignDocument document
    ) =>
        finding.Slug switch
        {
            "stone-on-soil" => ("stand it on the base", DesignEdits.Set(document, finding.Where, "base")),
            "lid-may-not-fit" => ("2 mm of play round the lid", DesignEdits.Set(document, "lid.gap", "2 mm")),
            "foam-pour-too-thick" when FixText.Times(finding) is { } share => Lifts(finding, document, share),
            "no-level-check" => (
                "read the level every week",
                DesignEdits.Set(document, "habits.levelCheck", "7 d")
            ),
            "water-at-barrier" when finding.Where == "habits.levelCheck" && Days(finding) is { } days => (
                $"read the level every {days} days",
                DesignEdits.Set(document, "habits.levelCheck", $"{days} d")
            ),
            "tap-water" => (
                "mist with purified water",
                DesignEdits.Set(document, "habits.water", "purified")
            ),
            "no-trip-device" => (
                "a residual-current device of 30 mA",
                DesignEdits.Set(document, "electrics.trip", "30 mA")
            ),
            "no-drip-loop" => (
                "a drip loop in every cable",
                DesignEdits.Set(document, "electrics.dripLoops", "true")
            ),
            "layers-above-vent" when FixText.Short(finding) is < 0 and var low => Vent(
                finding,
                document,
                -low
            ),
            _ => null,
        };

    private static (string, Reading<DesignDocument>)? Vent(
        Finding finding,
        DesignDocument document,
        double up
    )
    {
        var index = FixIndex.Of(finding.Where);
        if (
            index is not { } i
            || document.Design.Vents.Count <= i
            || document.Design.Vents[i].Height is not { } now
        )
        {
            return null;
        }

        var height = FixText.Rounded(now.Si + up + RoomOverSoil);
        return (
            $"vent {i + 1} at {FixText.Written(document, finding.Where, height)}",
            FixText.Length(document, finding.Where, height)
        );
    }

    private static (string, Reading<DesignDocument>) Lifts(
        Finding finding,
        DesignDocument document,
        double share
    )
    {
        var lifts = Math.Ceiling(1 / share);
        var each = finding.Measured!.Si / lifts;
        return (
            string.Create(CultureInfo.InvariantCulture, $"{lifts:0} lifts of {each * 1000:0} mm"),
            DesignEdits.Set(
                document,
                finding.Where,
                string.Create(CultureInfo.InvariantCulture, $"{each * 1000:0} mm")
            )
        );
    }

    private static string? Days(Finding finding) =>
        finding.Measured is { } measured && Math.Floor(measured.Si / 86400) is >= 1 and var days
            ? days.ToString("0", CultureInfo.InvariantCulture)
            : null;
}
