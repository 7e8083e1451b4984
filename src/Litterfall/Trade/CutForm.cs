using Litterfall.Domain.Cutting;
using Litterfall.Domain.Trees;

namespace Litterfall.App.Trade;

/// <summary>A cutting plan to make.</summary>
/// <param name="Task">What is cut from what.</param>
/// <param name="Seconds">How long it may take; null for as long as is usual.</param>
/// <param name="PlaceOf">Where a key of the case stands.</param>
/// <param name="PartPlaces">Where each part stands.</param>
public sealed record CutCase(
    CuttingTask Task,
    double? Seconds,
    Func<string, TextSpan> PlaceOf,
    IReadOnlyList<TextSpan> PartPlaces
);

/// <summary>Reads a case of <c>cut</c>.</summary>
public static class CutForm
{
    private const int MostStock = 200;
    private const int MostParts = 1000;
    private const int MostCopies = 100_000;
    private const int MostStages = 20;
    private static readonly NumberRange Edge = new(0.1, 200_000);
    private static readonly NumberRange Loss = NumberRange.UpTo(1000.0);
    private static readonly NumberRange Money = NumberRange.UpTo(1e8);

    /// <summary>The checked case, or null and faults on the form.</summary>
    public static CutCase? Read(TreeForm form)
    {
        form.Ignore("name");
        var goal = form.OptionalText("goal") ?? "least-stock";
        if (goal is not ("least-stock" or "most-value"))
        {
            form.Refuse("goal", $"goal is '{TreeNode.Shown(goal)}'", "least-stock or most-value");
        }

        var isValue = goal == "most-value";
        var stock = form.Objects("stock", "the stock", MostStock).Select(Stock).ToList();
        var forms = form.Objects("parts", "the part", MostParts);
        var parts = forms.Select(p => Part(p, isValue)).ToList();
        Unique(form, "stock", stock.Select(s => s.Id));
        Unique(form, "parts", parts.Select(p => p.Id));
        var task = new CuttingTask
        {
            Stock = [.. stock],
            Parts = [.. parts],
            Kerf = form.OptionalNumber("kerfMm", Loss) ?? 0,
            Trim = form.OptionalNumber("trimMm", Loss) ?? 0,
            NarrowestStrip = form.OptionalNumber("narrowestStripMm", Loss) ?? 0,
            IsStraight = form.FlagOrNull("straightCutsOnly", true),
            Stages = form.OptionalWhole("stages", 1, MostStages),
            Goal = isValue ? CuttingGoal.MostValue : CuttingGoal.LeastStock,
            OffcutShort = 0,
            OffcutLong = 0,
        };
        var seconds = form.OptionalNumber("seconds", NumberRange.Positive(3600.0));
        form.Close();
        return form.IsGood ? new(task, seconds, form.PlaceOf, [.. forms.Select(p => p.Span)]) : null;
    }

    private static StockSheet Stock(TreeForm form)
    {
        var isRoll = form.FlagOrNull("roll", false);
        var length = isRoll
            ? form.OptionalNumber("maxLengthMm", Edge) ?? form.OptionalNumber("lengthMm", Edge) ?? double.NaN
            : form.Number("lengthMm", Edge);
        if (isRoll)
        {
            form.Ignore("lengthMm", "price");
            if (double.IsNaN(length))
            {
                form.Refuse($"{form.Name}: a roll has no maxLengthMm", "the longest piece, in millimeters");
            }
        }
        else
        {
            form.Ignore("maxLengthMm", "pricePerM");
        }

        var sheet = new StockSheet
        {
            Id = form.Text("id") ?? "",
            Length = length,
            Width = form.Number("widthMm", Edge),
            Count = form.OptionalWhole("count", 0, MostCopies),
            IsRoll = isRoll,
            Price = isRoll ? null : (decimal?)form.OptionalNumber("price", Money),
            PricePerMeter = isRoll ? (decimal?)form.OptionalNumber("pricePerM", Money) : null,
        };
        form.Close();
        return sheet;
    }

    private static CutDemand Part(TreeForm form, bool isValue)
    {
        var count = form.OptionalWhole("count", 0, MostCopies);
        if (count is null && !isValue)
        {
            form.Refuse("count", $"{form.Name}: how many are wanted is not said", "a whole number of parts");
        }

        var part = new CutDemand
        {
            Id = form.Text("id") ?? "",
            Length = form.Number("lengthMm", Edge),
            Width = form.Number("widthMm", Edge),
            Count = count,
            MayTurn = form.FlagOrNull("mayTurn", true),
            Value = form.OptionalNumber("value", NumberRange.UpTo(1e12)),
        };
        form.Close();
        return part;
    }

    private static void Unique(TreeForm form, string key, IEnumerable<string> ids)
    {
        var twice = ids.GroupBy(id => id, StringComparer.Ordinal).FirstOrDefault(g => g.Count() > 1);
        if (twice is { Key.Length: > 0 })
        {
            form.Refuse(key, $"{key}: the id '{TreeNode.Shown(twice.Key)}' stands twice", "each id once");
        }
    }
}
