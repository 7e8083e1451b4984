using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Domain.Cutting;

namespace Litterfall.Workshop.CuttingRoom;

/// <summary>A task for the solver, with what its sheets and parts are in the workshop.</summary>
/// <param name="Task">What is to be cut from what.</param>
/// <param name="Sources">What the sheets are.</param>
/// <param name="Pieces">Every part with its number, the ones wanted first in front.</param>
public sealed record TaskDraft(
    CuttingTask Task,
    ImmutableArray<CutSource> Sources,
    ImmutableArray<CutPiece> Pieces
)
{
    /// <summary>The task of a material: parts that fit on some sheet; null where none does.</summary>
    /// <param name="material">The material.</param>
    /// <param name="isStockAlone">True to cut from what is in stock alone.</param>
    /// <param name="first">So many parts, those wanted first; null for all.</param>
    public static TaskDraft? Make(CutMaterial material, bool isStockAlone = false, int? first = null)
    {
        var supply = material
            .Supply.Where(s => !isStockAlone || s.Source.Kind != CutSourceKind.Buy)
            .ToImmutableArray();
        var large = material.Oversize.Select(o => o.Part).ToHashSet();
        var units = material
            .Parts.Where(p => !large.Contains(p))
            .SelectMany(p => Enumerable.Repeat(p, p.Count))
            .Take(first ?? int.MaxValue)
            .ToList();
        if (units.Count == 0 || supply.IsEmpty)
        {
            return null;
        }

        var rules = material.Rules;
        var demands = Demands(units, rules);
        var pieces = units.Select(
            (part, i) =>
                new CutPiece
                {
                    Number = i + 1,
                    Demand = demands[Size(part, rules)].Id,
                    Order = part.Order,
                    For = part.For,
                    Part = part.Part,
                    Length = part.Length,
                    Width = part.Width,
                    Note = part.Note,
                }
        );
        return new(
            new()
            {
                Stock = [.. supply.Select(s => s.Sheet)],
                Parts = [.. demands.Values],
                Kerf = rules.Kerf,
                Trim = rules.Trim,
                NarrowestStrip = rules.StripOf(material.Millimeters),
                Stages = rules.Stages,
                OffcutShort = rules.OffcutShort,
                OffcutLong = rules.OffcutLong,
            },
            [.. supply.Select(s => s.Source)],
            [.. pieces]
        );
    }

    /// <summary>The plan of a solved task, as it is kept.</summary>
    /// <param name="number">Its number.</param>
    /// <param name="material">The material.</param>
    /// <param name="plan">The plan.</param>
    /// <param name="when">Day, and who planned it.</param>
    public CuttingJob Keep(
        int number,
        CutMaterial material,
        CuttingPlan plan,
        (DateOnly Day, string Who) when
    ) =>
        new()
        {
            Number = number,
            Day = when.Day,
            Good = material.Good.Key,
            Name = material.Name,
            Millimeters = material.Millimeters,
            Task = Task,
            Plan = plan,
            Sources = [.. Sources.Where(s => plan.Sheets.Any(sheet => sheet.Stock == s.Stock))],
            Pieces = [.. Pieces],
            PricePerSquareMeter = material.PricePerSquareMeter,
            OffcutWorth = material.Rules.OffcutWorth,
            Wanted = material.Parts.Where(p => p.Day is not null).Min(p => p.Day),
            Who = when.Who,
        };

    /// <summary>
    /// The most parts, those wanted first, that stock alone gives: found by halving, each try a short search.
    /// </summary>
    /// <param name="material">The material.</param>
    /// <param name="isEnough">True where a task can be cut whole.</param>
    public static TaskDraft? FromStock(CutMaterial material, Func<TaskDraft, bool> isEnough)
    {
        TaskDraft? best = null;
        var (low, high) = (1, material.Count);
        while (low <= high)
        {
            var middle = (low + high + 1) / 2;
            var tried = Make(material, isStockAlone: true, middle);
            if (tried is not null && isEnough(tried))
            {
                best = tried;
                low = Math.Max(middle, tried.Pieces.Length) + 1;
            }
            else
            {
                high = middle - 1;
            }
        }

        return best;
    }

    /// <summary>The same from one roll each, in the order of the stock; itself where there is one at most.
    /// </summary>
    public IEnumerable<TaskDraft> OneRollEach()
    {
        var rolls = Task.Stock.Where(s => s.IsRoll).ToList();
        return rolls.Count < 2
            ? [this]
            : rolls.Select(roll =>
                this with
                {
                    Task = Task with { Stock = [.. Task.Stock.Where(s => !s.IsRoll || s == roll)] },
                }
            );
    }

    private static Dictionary<(double, double), CutDemand> Demands(List<WantedPart> units, CuttingRules rules)
    {
        var names = new HashSet<string>(StringComparer.Ordinal);
        var demands = new Dictionary<(double, double), CutDemand>();
        foreach (var same in units.GroupBy(u => Size(u, rules)))
        {
            var (length, width) = same.Key;
            var named = string.Join(
                " and ",
                same.Select(u => u.Part).Distinct(StringComparer.Ordinal).Take(2)
            );
            var id = string.Create(CultureInfo.InvariantCulture, $"{named} {length:0.#} × {width:0.#}");
            demands[same.Key] = new CutDemand
            {
                Id = names.Add(id)
                    ? id
                    : string.Create(CultureInfo.InvariantCulture, $"{id} ({names.Count + 1})"),
                Length = length,
                Width = width,
                Count = same.Count(),
                MayTurn = rules.MayTurn,
            };
        }

        return demands;
    }

    /// <summary>
    /// Size to cut: finished plus what grinding takes. Where parts may be turned the longer edge comes first,
    /// so that equal parts are told once.
    /// </summary>
    private static (double Length, double Width) Size(WantedPart part, CuttingRules rules)
    {
        var (length, width) = (Cut(part.Length, rules), Cut(part.Width, rules));
        return rules.MayTurn && width > length ? (width, length) : (length, width);
    }

    private static double Cut(double finished, CuttingRules rules) =>
        Math.Round(finished + (2 * rules.EdgeAllowance), 1, MidpointRounding.AwayFromZero);
}
