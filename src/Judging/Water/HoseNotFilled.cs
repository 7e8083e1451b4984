using System.Globalization;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting;
using Litterfall.Judging.Rules;
using Litterfall.Quantities.Measures;

namespace Litterfall.Judging.Water;

/// <summary>A misting that ends before the hose is full sprays nothing.</summary>
internal static class HoseNotFilled
{
    public static readonly Rule Rule = new(
        "hose-not-filled",
        Protects.Build,
        "a misting is no longer than the hose takes to fill, and no check valve keeps it full",
        Judge
    )
    {
        Needs = Stage.Shape,
        Fix = (_, design) =>
            DesignFix.From(
                "a check valve that keeps the hose full",
                DesignEdits.Set(design.Document, "misting.hose.checkValve", "true")
            ),
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        if (MistingDay.Fill(n.Design) is not { } fill || n.Design.Design.Misting is not { } misting)
        {
            yield break;
        }

        var shorts = misting.Times.Where(t => t.For.Si > 0 && t.For.Si <= fill.Si + 1e-9).ToList();
        if (shorts.Count == 0)
        {
            yield break;
        }

        var i = misting.Times.ToList().IndexOf(shorts.MinBy(t => t.For.Si)!);
        var path = string.Create(CultureInfo.InvariantCulture, $"misting.times[{i}].for");
        var span = n.Design.Figure(path, "misting", misting.Times[i].For, Unit.Second);
        yield return Rule.Found(
            Severity.Caution,
            string.Create(
                CultureInfo.InvariantCulture,
                $"Filling the empty hose takes {fill.Value:0.#} s and a misting lasts {span.Value:0.#} s: "
            ) + $"{Lost(shorts.Count, misting.Times.Count)}.",
            (span, fill),
            string.Create(
                CultureInfo.InvariantCulture,
                $"Mist longer than {Math.Ceiling(fill.Value):0} s, shorten the hose to less than "
            )
                + string.Create(
                    CultureInfo.InvariantCulture,
                    $"{Math.Floor(100 * misting.Hose!.Length.Si * span.Si / fill.Si):0} cm, or fit a check "
                )
                + "valve or anti-drip nozzles that keep it full, and enter them.",
            path
        );
    }

    private static string Lost(int count, int all) =>
        count < all
            ? $"nothing leaves the nozzles in {NumberText.Integer(count)} of "
                + $"{NumberText.Integer(all)} mistings"
            : "nothing leaves the nozzles";
}
