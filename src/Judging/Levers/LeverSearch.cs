using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Domain.Checking;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Forecasting;
using Litterfall.Forecasting.Climate;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.Levers;

/// <summary>A lever at which the finding of a rule is gone, with the whole check of that design.</summary>
/// <param name="Slug">The rule.</param>
/// <param name="Fix">The lever.</param>
/// <param name="After">The design with it.</param>
public sealed record FoundLever(string Slug, LeverFix Fix, DesignResult After);

/// <summary>
/// What would fix a finding on air or water: each main lever is turned to its ends, the changed design
/// checked
/// anew, and where the finding is gone there, the nearest such value is found by halves. What is told was
/// checked with that very value.
/// </summary>
public static class LeverSearch
{
    private const int Halvings = 5;

    private static readonly ImmutableArray<Lever> All = [new MistLever(), new VentLever(), new LampLever()];

    /// <summary>A lever in words: "misting 42 s a day instead of 50 s".</summary>
    /// <param name="fix">The lever and where it is turned to.</param>
    public static string Words(LeverFix fix)
    {
        var unit = fix.To.Unit!;
        var to = string.Create(CultureInfo.InvariantCulture, $"{unit.FromSi(fix.To.Si):0.#} {unit.Symbol}");
        var from = string.Create(
            CultureInfo.InvariantCulture,
            $"{unit.FromSi(fix.From.Si):0.#} {unit.Symbol}"
        );
        return fix.Lever switch
        {
            "vents" => $"vents of {to} in all instead of {from}",
            "lamp hours" => $"lamps on for {to} a day instead of {from}",
            _ => $"{fix.Lever} {to} a day instead of {from}",
        };
    }

    /// <summary>The result with the levers of each of its findings on air and water.</summary>
    /// <param name="result">A checked design.</param>
    /// <param name="cancel">Cancels between checks.</param>
    public static DesignResult With(DesignResult result, CancellationToken cancel = default) =>
        With(result, Search(result, null, cancel));

    /// <summary>The result with levers that were found for it.</summary>
    /// <param name="result">A checked design.</param>
    /// <param name="levers">What was found.</param>
    public static DesignResult With(DesignResult result, ImmutableArray<FoundLever> levers)
    {
        if (levers.IsEmpty)
        {
            return result;
        }

        var found = levers.ToLookup(f => f.Slug, f => f.Fix, StringComparer.Ordinal);
        var findings = result.Findings.Select(f => f with { Levers = [.. found[f.Slug]] }).ToImmutableArray();
        return new DesignResult(result.Numbers, findings, CheckReport.Write(result.Numbers, findings));
    }

    /// <summary>
    /// The levers of each finding on air and water, each with the whole check of its design.
    /// </summary>
    /// <param name="result">A checked design.</param>
    /// <param name="between">Called before each check, where more urgent work may be let by.</param>
    /// <param name="cancel">Cancels between checks.</param>
    public static ImmutableArray<FoundLever> Search(
        DesignResult result,
        Action? between = null,
        CancellationToken cancel = default
    )
    {
        var open = result
            .Findings.Select(f => f.Slug)
            .Where(slug => RuleBook.Find(slug)?.Levers is LeverReach.Air or LeverReach.Floor)
            .ToImmutableHashSet();
        if (open.IsEmpty)
        {
            return [];
        }

        var had = result.Findings.Select(f => f.Slug).ToImmutableHashSet();
        return
        [
            .. All.Where(l => l.Value(result.Numbers.Design.Design) is > 0)
                .AsParallel()
                .AsOrdered()
                .WithCancellation(cancel)
                .SelectMany(lever => new Turning(result, lever, had, (cancel, between)).Search(open)),
        ];
    }

    /// <summary>One lever turned from where a design has it.</summary>
    private sealed class Turning(
        DesignResult result,
        Lever lever,
        ImmutableHashSet<string> had,
        (CancellationToken Cancel, Action? Between) pace
    )
    {
        private readonly bool withFloor = had.Any(slug => RuleBook.Find(slug)?.Levers == LeverReach.Floor);
        private readonly Dictionary<double, ImmutableHashSet<string>?> seen = [];
        private readonly Dictionary<double, DesignResult> whole = [];

        /// <summary>The nearest value at which each finding is gone.</summary>
        public IEnumerable<FoundLever> Search(ImmutableHashSet<string> open)
        {
            foreach (var slug in open.Order(StringComparer.Ordinal))
            {
                var best = new[] { Nearest(slug, lever.Ends.Least), Nearest(slug, lever.Ends.Most) }
                    .OfType<double>()
                    .OrderBy(f => Math.Abs(Math.Log(f)))
                    .ToList();
                if (best.Count > 0 && Fix(slug, best[0]) is { } fix)
                {
                    yield return fix;
                }
            }
        }

        /// <summary>By halves between where it stands and its end; none where it stays even there.</summary>
        private double? Nearest(string slug, double end)
        {
            if (end == 1.0 || At(end) is not { } last || last.Contains(slug))
            {
                return null;
            }

            var (still, gone) = (1.0, end);
            for (var i = 0; i < Halvings; i++)
            {
                var middle = Math.Sqrt(still * gone);
                if (At(middle) is not { } there)
                {
                    break;
                }

                (still, gone) = there.Contains(slug) ? (middle, gone) : (still, middle);
            }

            return gone;
        }

        /// <summary>The findings of the design with the lever turned, each checked once.</summary>
        private ImmutableHashSet<string>? At(double factor)
        {
            pace.Cancel.ThrowIfCancellationRequested();
            pace.Between?.Invoke();
            if (!seen.TryGetValue(factor, out var known))
            {
                known = lever.Turned(result.Numbers.Design, factor) is { } changed
                    ? [.. Glimpse(changed).Select(f => f.Slug)]
                    : null;
                seen.Add(factor, known);
            }

            return known;
        }

        /// <summary>
        /// The lever at a factor, confirmed by a whole check; null where that finds it still.
        /// </summary>
        private FoundLever? Fix(string slug, double factor)
        {
            if (!whole.TryGetValue(factor, out var after))
            {
                var turned = lever.Turned(result.Numbers.Design, factor)!;
                after = DesignRun.Execute(Changed(turned), pace.Cancel);
                whole.Add(factor, after);
            }

            var slugs = after.Findings.Select(f => f.Slug).ToImmutableHashSet();
            if (slugs.Contains(slug))
            {
                return null;
            }

            var fix = new LeverFix(
                lever.Name,
                Of($"{lever.ValueName} of the design", lever.Value(result.Numbers.Design.Design)!.Value),
                Of($"{lever.ValueName} at which it is gone", lever.Value(after.Numbers.Design.Design)!.Value),
                [.. slugs.Except(had).Order(StringComparer.Ordinal)]
            );
            return new FoundLever(slug, fix, after);
        }

        private ImmutableArray<Finding> Glimpse(CheckedDesign changed) =>
            RuleBook.Judge(
                Changed(changed).Upto(withFloor ? Reach.WholeWithoutBands : Reach.AirWithoutBands)
            );

        private DesignNumbers Changed(CheckedDesign changed) =>
            new(new DesignStages(changed, result.Numbers.Stages), Reach.Whole);

        private Figure Of(string name, double si) =>
            Figure
                .Computed("sum over the design; changed designs were checked anew", si, lever.Unit.Dimension)
                .As(name, lever.Unit, ClimateFigures.Engine);
    }
}
