using System.Globalization;
using Litterfall.Domain.Cutting;

namespace Litterfall.Workshop.Cutting;

/// <summary>Why a task cannot be cut.</summary>
/// <param name="Part">Index of the part; null where it is the stock or the whole.</param>
/// <param name="Message">What is wrong, in one sentence.</param>
/// <param name="Expected">What would work.</param>
public sealed record CuttingRefusal(int? Part, string Message, string Expected)
{
    /// <summary>The refusal of a task; null where each part fits on some stock.</summary>
    /// <param name="task">The task.</param>
    public static CuttingRefusal? Find(CuttingTask task)
    {
        var usable = task
            .Stock.Select(s =>
                (Stock: s, Length: s.Length - (s.IsRoll ? 0 : 2 * task.Trim), Width: s.Width - 2 * task.Trim)
            )
            .Where(s => s.Length > 0 && s.Width > 0 && s.Stock.Count != 0)
            .ToList();
        if (usable.Count == 0)
        {
            return new(null, "The trim leaves nothing of any stock", "a trim below half of the shorter edge");
        }

        for (var i = 0; i < task.Parts.Count; i++)
        {
            var part = task.Parts[i];
            if (part.Count == 0 || usable.Any(s => Fits(part.Length, part.Width, s.Length, s.Width)))
            {
                continue;
            }

            var turned = usable.Any(s => Fits(part.Width, part.Length, s.Length, s.Width));
            if (turned && part.MayTurn)
            {
                continue;
            }

            var (stock, length, width) = usable.MaxBy(s => s.Length * s.Width);
            // Pieces to be cut from the largest stock and joined: the nearest plan that works.
            var pieces = Math.Ceiling(part.Length / length) * Math.Ceiling(part.Width / width);
            return new(
                i,
                $"{part.Id} is {Size(part.Length, part.Width)} and larger than any stock: {stock.Id} gives "
                    + $"{Size(length, width)}",
                turned
                    ? $"a part that may be turned: {Size(part.Width, part.Length)} fits"
                    : FormattableString.Invariant($"larger stock, or the part joined from {pieces} pieces")
            );
        }

        return null;
    }

    /// <summary>What is said when each part fits, but all together need more stock than there is.</summary>
    /// <param name="task">The task.</param>
    public static CuttingRefusal Short(CuttingTask task)
    {
        var need = task.Parts.Sum(p => p.Length * p.Width * (p.Count ?? 0)) / 1e6;
        var have = task.Stock.Sum(s => s.Length * s.Width * (s.Count ?? 0)) / 1e6;
        return new(
            null,
            string.Create(
                CultureInfo.InvariantCulture,
                $"The stock does not suffice: the parts have {need:0.###} m², the stock {have:0.###} m²"
            ),
            need > have
                ? string.Create(CultureInfo.InvariantCulture, $"at least {need - have:0.###} m² more of it")
                : "more stock: no way was found to get all parts out of it"
        );
    }

    private static bool Fits(double length, double width, double roomX, double roomY) =>
        length <= roomX + 1e-6 && width <= roomY + 1e-6;

    private static string Size(double length, double width) =>
        string.Create(CultureInfo.InvariantCulture, $"{length:0.##} × {width:0.##} mm");
}
