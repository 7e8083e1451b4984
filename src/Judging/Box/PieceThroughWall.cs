using System.Globalization;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.Box;

/// <summary>Wood or stone whose length does not go into the box where it is placed.</summary>
internal static class PieceThroughWall
{
    public static readonly Rule Rule = new(
        "piece-through-wall",
        Protects.Build,
        "a piece of wood or stone of entered length and place reaches through a wall",
        Judge
    )
    {
        Needs = Stage.Shape,
        Fix = (finding, design) => Moved(finding, design.Document),
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        for (var i = 0; i < n.Design.Design.Hardscape.Count; i++)
        {
            if (n.Design.Design.Hardscape[i] is not { Length: { } typed, At: { } at })
            {
                continue;
            }

            var path = FormattableString.Invariant($"hardscape[{i}]");
            var name = n.Design.Entry<HardscapeEntry>($"{path}.material").Name;
            var length = n.Design.Figure(
                $"{path}.length",
                $"length of piece {i + 1}",
                typed,
                Unit.Centimeter
            );
            var room = n.Box.InsideLength;
            var beyond = Math.Max((length.Si / 2) - at.X.Si, at.X.Si + (length.Si / 2) - room.Si);
            if (length.Si > room.Si + Gaps.Slack || beyond > Gaps.Slack)
            {
                yield return Rule.Found(
                    Severity.Caution,
                    string.Create(
                        CultureInfo.InvariantCulture,
                        $"{name} ({i + 1}), {length.Value:0.#} cm long, reaches {beyond * 100:0.#} cm "
                            + $"through a wall where it is placed."
                    ),
                    (length, room),
                    "Move it, turn it, or take a shorter piece.",
                    $"{path}.at.x"
                );
            }
        }
    }

    private static DesignFix? Moved(Finding finding, DesignDocument document)
    {
        if (
            FixEdit.Index(finding) is not { } i
            || finding is not { Measured: { } length, Limit: { } room }
            || document.Design.Hardscape.Count <= i
            || document.Design.Hardscape[i].At is not { } at
            || length.Si > room.Si
        )
        {
            return null;
        }

        var x = Math.Clamp(at.X.Si, length.Si / 2, room.Si - (length.Si / 2));
        return DesignFix.From(
            $"piece {i + 1} at {FixEdit.Written(document, finding.Where, x)} from the left",
            FixEdit.Length(document, finding.Where, x)
        );
    }
}
