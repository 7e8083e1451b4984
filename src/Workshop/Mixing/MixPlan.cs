using Litterfall.Domain.Lists;

namespace Litterfall.Workshop.Mixing;

/// <summary>What of one component goes into one batch.</summary>
/// <param name="Part">The component.</param>
/// <param name="Liters">Loose liters, exact.</param>
/// <param name="JugLiters">Rounded to the jug; the same without one.</param>
/// <param name="Kg">Its mass, exact; null where it was not weighed.</param>
public sealed record MixShare(MixPart Part, double Liters, double JugLiters, double? Kg)
{
    /// <summary>What rounding to the jug is off, percent.</summary>
    public double ErrorPercent => 100.0 * ((JugLiters / Liters) - 1.0);
}

/// <summary>So many batches of one size.</summary>
/// <param name="Count">How many.</param>
/// <param name="LooseLiters">Loose liters before mixing; these must fit the tub.</param>
/// <param name="MixedLiters">Liters after mixing.</param>
/// <param name="WaterLiters">Water to pour in; null where it is not dosed.</param>
/// <param name="Kg">Mass when done; null where a component was not weighed.</param>
/// <param name="Shares">The components.</param>
public sealed record MixBatch(
    int Count,
    double LooseLiters,
    double MixedLiters,
    double? WaterLiters,
    double? Kg,
    Seq<MixShare> Shares
);

/// <summary>Why a mix cannot be made as asked.</summary>
/// <param name="Key">Which entry of the case is at fault.</param>
/// <param name="Message">What is wrong.</param>
/// <param name="Expected">What would do.</param>
public sealed record MixRefusal(string Key, string Message, string Expected);

/// <summary>
/// A mix in three volumes that must not be mixed up: components loose in the tub, the mix, and what is left
/// of it on its way. Water counts on the mass as it lies (wet basis).
/// </summary>
public sealed class MixPlan
{
    private const double MostErrorPercent = 5.0;
    private const double Slack = 1e-9;

    private MixPlan(MixCase asked, MixWater water)
    {
        Case = asked;
        Water = water;
    }

    /// <summary>What was asked.</summary>
    public MixCase Case { get; }

    /// <summary>Water in the components and to be added.</summary>
    public MixWater Water { get; }

    /// <summary>Mixed liters to make: the need and what is lost.</summary>
    public double MixedLiters => Water.MixedLiters;

    /// <summary>Loose liters of all components together.</summary>
    public double LooseLiters => Water.LooseLiters;

    /// <summary>The components of the whole mix.</summary>
    public Seq<MixShare> Shares => Parts(LooseLiters, null);

    /// <summary>The batches: one entry, or two with full batches and a smaller rest.</summary>
    public Seq<MixBatch> Batches { get; private init; } = [];

    /// <summary>How many batches there are.</summary>
    public int BatchCount => Batches.Sum(b => b.Count);

    /// <summary>Plans a mix.</summary>
    /// <param name="asked">The mix; amounts positive.</param>
    /// <returns>The plan, or why there is none.</returns>
    public static (MixPlan? Plan, MixRefusal? Refusal) From(MixCase asked)
    {
        var water = MixWater.Sum(asked);
        if (water.Refusal is { } tooWet)
        {
            return (null, tooWet);
        }

        var fewest = Fewest(asked, water);
        if (asked.Batches is { } wanted && wanted < fewest)
        {
            return (null, TooLarge(asked, water, wanted, fewest));
        }

        var plan = new MixPlan(asked, water);
        var whole = new MixPlan(asked, water) { Batches = plan.Divide(asked.Batches ?? fewest, fewest) };
        return whole.RefusedRounding() is { } refusal ? (null, refusal) : (whole, null);
    }

    /// <summary>The fewest batches that fit the tub loose and mixed, and the lift limit when done.</summary>
    private static int Fewest(MixCase asked, MixWater water)
    {
        var fewest = Ceiling(Math.Max(water.LooseLiters, water.MixedLiters) / asked.LimitLiters);
        return asked.LiftKg is { } lift && water.FinishedKg is { } kg
            ? Math.Max(fewest, Ceiling(kg / lift))
            : fewest;
    }

    private static int Ceiling(double count) => Math.Max(1, (int)Math.Ceiling(count - Slack));

    private static MixRefusal TooLarge(MixCase asked, MixWater water, int wanted, int fewest)
    {
        var loose = Math.Max(water.LooseLiters, water.MixedLiters) / wanted;
        var message =
            loose > asked.LimitLiters + Slack
                ? FormattableString.Invariant(
                    $"each of {wanted} would be {loose:0.0} L loose before mixing, "
                ) + FormattableString.Invariant($"and the tub takes {asked.LimitLiters:0.0} L")
                : FormattableString.Invariant(
                    $"each of {wanted} would weigh {water.FinishedKg / wanted:0.0} kg, "
                ) + FormattableString.Invariant($"more than the {asked.LiftKg:0.0} kg that are lifted");
        return new MixRefusal("batches", message, FormattableString.Invariant($"at least {fewest} batches"));
    }

    private Seq<MixBatch> Divide(int count, int fewest)
    {
        if (Case.Split == BatchSplit.Equal || count > fewest)
        {
            return [Batch(count, LooseLiters / count)];
        }

        var full = LooseLiters * Case.LimitLiters / Math.Max(LooseLiters, MixedLiters);
        if (Case.LiftKg is { } lift && Water.FinishedKg is { } kg)
        {
            full = Math.Min(full, LooseLiters * lift / kg);
        }

        var rest = LooseLiters - ((count - 1) * full);
        return count == 1 || rest >= full - Slack
            ? [Batch(count, LooseLiters / count)]
            : [Batch(count - 1, full), Batch(1, rest)];
    }

    private MixBatch Batch(int count, double loose)
    {
        var share = loose / LooseLiters;
        return new MixBatch(
            count,
            loose,
            MixedLiters * share,
            Water.AddLiters * share,
            Water.FinishedKg * share,
            Parts(loose, Case.JugLiters)
        );
    }

    private Seq<MixShare> Parts(double loose, double? jug)
    {
        var all = Case.Recipe.Sum(p => p.Parts);
        return
        [
            .. Case.Recipe.Select(part =>
            {
                var liters = loose * part.Parts / all;
                var measured = jug is { } step
                    ? Math.Round(liters / step, MidpointRounding.AwayFromZero) * step
                    : liters;
                return new MixShare(part, liters, measured, liters * part.KgPerLiter);
            }),
        ];
    }

    /// <summary>A jug that is too coarse for a component changes the recipe.</summary>
    private MixRefusal? RefusedRounding()
    {
        var worst = Batches.SelectMany(b => b.Shares).MaxBy(s => Math.Abs(s.ErrorPercent));
        return worst is null || Math.Abs(worst.ErrorPercent) <= MostErrorPercent
            ? null
            : new MixRefusal(
                "jugLiters",
                FormattableString.Invariant($"{worst.Part.Name}: {worst.Liters:0.###} L in a batch becomes ")
                    + FormattableString.Invariant($"{worst.JugLiters:0.###} L with this jug, ")
                    + FormattableString.Invariant($"{worst.ErrorPercent:+0.0;-0.0} %"),
                FormattableString.Invariant($"a finer jug, fewer and larger batches, or weighing: ")
                    + FormattableString.Invariant($"at most {MostErrorPercent:0} % off")
            );
    }
}
