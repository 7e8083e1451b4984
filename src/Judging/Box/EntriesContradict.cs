using System.Globalization;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Judging.Box;

/// <summary>Entries that cannot both be true, or that hardly can be: a slip of the pen, most often.</summary>
internal static class EntriesContradict
{
    private static readonly Unit LumenPerWatt = new("lm/W", 1, Unit.Lumen.Dimension / Unit.Watt.Dimension);

    /// <summary>Above it no lamp on the market is.</summary>
    private static readonly Figure BestLamp = Figure.Choice(
        "most lumens of a watt",
        230,
        LumenPerWatt,
        "the best white diodes sold give 200 to 220; 683 is the most that light itself can have"
    );

    private static readonly Figure LeastRoom = Figure.Choice(
        "least room for a plant",
        25,
        Unit.SquareCentimeter,
        "a plug of 5 × 5 cm, on floor or walls"
    );

    public static readonly Rule Rule = new(
        "entries-contradict",
        Protects.Build,
        FormattableString.Invariant(
            $"more males and females than animals, a lamp of over {BestLamp.Value:0} lm for each watt, a lid "
        )
            + FormattableString.Invariant(
                $"with both gap and overlap, or over a plant on {LeastRoom.Value:0} cm² of floor and walls"
            ),
        Judge
    )
    {
        Needs = Stage.Shape,
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n) =>
        [.. Sexes(n, "animals"), .. Sexes(n, "ratedFor"), .. Lamps(n), .. Lid(n), .. Plants(n)];

    private static IEnumerable<Finding> Sexes(DesignNumbers n, string key)
    {
        var residents = key == "animals" ? n.Design.Design.Animals : n.Design.Design.RatedFor;
        for (var i = 0; i < residents.Count; i++)
        {
            var one = residents[i];
            var path = FormattableString.Invariant($"{key}[{i}]");
            var sexed = (one.Males ?? 0) + (one.Females ?? 0);
            if (sexed > one.Count)
            {
                yield return Rule.Found(
                    Severity.Caution,
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"{one.Males ?? 0} males and {one.Females ?? 0} females are {sexed} animals; the "
                            + $"count says {one.Count}."
                    ),
                    (
                        n.Design.Count(path, "males and females", sexed),
                        n.Design.Count($"{path}.count", "count of the animals", one.Count)
                    ),
                    "Correct the count or the sexes.",
                    $"{path}.count"
                );
            }
        }
    }

    private static IEnumerable<Finding> Lamps(DesignNumbers n)
    {
        for (var i = 0; i < n.Design.Design.Lamps.Count; i++)
        {
            var path = FormattableString.Invariant($"lamps[{i}]");
            if (n.Design.Design.Lamps[i] is not { Lumens: { Si: > 0 } lumens, Watts: { Si: > 0 } watts })
            {
                continue;
            }

            var each = (
                n.Design.Figure($"{path}.lumens", "flux of the lamp", lumens, Unit.Lumen)
                / n.Design.Figure($"{path}.watts", "power of the lamp", watts, Unit.Watt)
            ).As("lumens of a watt", LumenPerWatt);
            if (each.Si > BestLamp.Si * (1 + Gaps.Slack))
            {
                yield return Rule.Found(
                    Severity.Caution,
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"{lumens.Si:0} lm from {watts.Si:0.##} W are {each.Value:0} lm for each watt; the "
                            + $"best lamps give {BestLamp.Value:0}."
                    ),
                    (each, BestLamp),
                    "Look at the lamp's label: heat and light are computed from its power and its flux.",
                    $"{path}.lumens"
                );
            }
        }
    }

    private static IEnumerable<Finding> Lid(DesignNumbers n)
    {
        if (n.Design.Design.Lid is { Gap: { } gap, Overlap: { } overlap })
        {
            yield return Rule.Found(
                Severity.Caution,
                $"The lid has a gap of {Written(gap)}, as one set into the opening, and an overlap of "
                    + $"{Written(overlap)}, as one that lies on it. It is cut with the overlap.",
                (null, null),
                "Keep the gap for a lid set in, or the overlap for a lid that lies on the rim, and clear "
                    + "the other.",
                "lid.overlap"
            );
        }
    }

    /// <summary>As a tape shows it: tenths of a millimeter, or inches as typed.</summary>
    private static string Written(Typed<Length> typed) =>
        typed.Text.EndsWith("mm", StringComparison.Ordinal)
            ? string.Create(CultureInfo.InvariantCulture, $"{typed.Si * 1000:0.#} mm")
            : typed.Text;

    private static IEnumerable<Finding> Plants(DesignNumbers n)
    {
        var count = n.Design.Design.Plants.Sum(p => p.Count);
        if (count == 0 || n.Box.OpenFloor.Si <= 0)
        {
            yield break;
        }

        var walls = Figure.Number(2) * (n.Box.OpenLength + n.Box.OpenDepth) * n.Box.InsideHeight;
        var each = ((WaterBasins.Ground(n.Design, n.Box) + walls) / Figure.Number(count)).As(
            "floor and wall for each plant",
            Unit.SquareCentimeter
        );
        if (each.Si < LeastRoom.Si * (1 - Gaps.Slack))
        {
            yield return Rule.Found(
                Severity.Caution,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{count} plants have {each.Value:0.#} cm² of floor and wall each; a plug takes "
                        + $"{LeastRoom.Value:0} cm²."
                ),
                (each, LeastRoom),
                "Check the numbers of the plants.",
                $"{Controls.At("plants", Controls.Largest(n.Design.Design.Plants, p => p.Count))}.count"
            );
        }
    }
}
