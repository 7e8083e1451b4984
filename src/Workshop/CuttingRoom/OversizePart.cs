using System.Globalization;
using Litterfall.Domain.Cutting;

namespace Litterfall.Workshop.CuttingRoom;

/// <summary>A part that fits on no sheet there is or is offered.</summary>
/// <param name="Part">The part.</param>
/// <param name="Words">Why, and the nearest way that works, in sentences.</param>
public sealed record OversizePart(WantedPart Part, string Words)
{
    private const double Slack = 1e-6;

    /// <summary>Looks whether a part fits anywhere; null where it does.</summary>
    /// <param name="part">The part.</param>
    /// <param name="material">Its material, with its sheets.</param>
    public static OversizePart? Find(WantedPart part, CutMaterial material)
    {
        var rules = material.Rules;
        var (length, width) = (
            part.Length + (2 * rules.EdgeAllowance),
            part.Width + (2 * rules.EdgeAllowance)
        );
        var sheets = material.Supply.Select(s => Usable(s.Sheet, rules)).ToList();
        if (sheets.Exists(s => Fits(s, length, width) || (rules.MayTurn && Fits(s, width, length))))
        {
            return null;
        }

        var name = Name(part);
        if (sheets.Count == 0)
        {
            return new(
                part,
                $"{name} cannot be cut: there is no {material.Name} with a known size in stock or on offer. "
                    + "Receive a sheet with its size, or enter the usual size of a sheet below."
            );
        }

        var best = sheets.MaxBy(s => s.Length * s.Width);
        var why =
            $"{name} is larger than every sheet of {material.Name}: the largest gives "
            + $"{SheetSupply.SizeWords(best.Length, best.Width)} inside its trim. ";
        var turned = sheets.Exists(s => Fits(s, width, length));
        return new(
            part,
            why
                + (
                    turned
                        ? "It fits when it is turned by a quarter: allow turning below."
                        : Way(length, width, best, rules)
                )
        );
    }

    /// <summary>The fewest equal pieces with joints that fit, or the size of sheet to look for.</summary>
    private static string Way(
        double length,
        double width,
        (double Length, double Width) best,
        CuttingRules rules
    )
    {
        var need = SheetSupply.SizeWords(length + (2 * rules.Trim), width + (2 * rules.Trim));
        foreach (var pieces in new[] { 2, 3, 4 })
        {
            foreach (
                var (l, w, along) in new[]
                {
                    (length / pieces, width, "length"),
                    (length, width / pieces, "width"),
                }
            )
            {
                if (Fits(best, l, w) || (rules.MayTurn && Fits(best, w, l)))
                {
                    return string.Create(
                        CultureInfo.InvariantCulture,
                        $"Look for a sheet of at least {need}, or split its {along} into {pieces} pieces "
                            + $"with a joint."
                    );
                }
            }
        }

        return $"Look for a sheet of at least {need}, or order it cut to size.";
    }

    private static (double Length, double Width) Usable(StockSheet sheet, CuttingRules rules) =>
        (sheet.Length - (sheet.IsRoll ? 0 : 2 * rules.Trim), sheet.Width - (2 * rules.Trim));

    private static bool Fits((double Length, double Width) sheet, double length, double width) =>
        length <= sheet.Length + Slack && width <= sheet.Width + Slack;

    private static string Name(WantedPart part) =>
        $"The {part.Part} of {part.For} ({SheetSupply.SizeWords(part.Length, part.Width)})";
}
