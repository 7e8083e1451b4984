using System.Collections.Immutable;
using Litterfall.Domain.DesignFile;
using Litterfall.Domain.Trees;
using Litterfall.Workshop.Tracing;

namespace Litterfall.App.Trade;

/// <summary>What is asked of a lot.</summary>
public enum TraceKind
{
    /// <summary>What it went into.</summary>
    Forward,

    /// <summary>What went into it.</summary>
    Backward,

    /// <summary>What went in and came out.</summary>
    Balance,
}

/// <summary>One question.</summary>
/// <param name="Kind">What is asked.</param>
/// <param name="Lot">Of which lot.</param>
/// <param name="Made">For a balance, what was measured when it was made.</param>
public sealed record TraceQuestion(TraceKind Kind, string Lot, double? Made);

/// <summary>A graph of lots and what is asked of it.</summary>
public sealed record TraceCase(LotGraph Graph, ImmutableArray<TraceQuestion> Questions);

/// <summary>Reads a case of <c>trace</c>.</summary>
public static class TraceForm
{
    /// <summary>A hundred thousand movements with long numbers of lots fit in.</summary>
    public const int LargestFile = 32 * 1024 * 1024;

    private const int MostEdges = 200_000;
    private const int MostQuestions = 10_000;
    private const int MostSteps = 12;
    private static readonly NumberRange Amount = NumberRange.UpTo(1e12);

    /// <summary>The checked case, or null and faults on the form.</summary>
    public static TraceCase? Read(TreeForm form)
    {
        var edges = form.Objects("edges", "a movement", MostEdges);
        var uses = edges.Select(Use).ToList();
        var questions = form.Objects("ask", "a question", MostQuestions);
        if (!form.IsGood)
        {
            _ = questions.Select(q => Question(q, null)).ToList();
            form.Close();
            return null;
        }

        var graph = LotGraph.From(uses);
        var asked = questions.Select(q => Question(q, graph)).ToImmutableArray();
        form.Close();
        RefuseCycle(graph, uses, edges);
        return form.IsGood ? new TraceCase(graph, asked) : null;
    }

    private static LotUse Use(TreeForm edge)
    {
        var from = Lot(edge, "from");
        var to = Lot(edge, "to");
        var amount = edge.OptionalNumber("amount", Amount);
        edge.Close();
        return new LotUse(from, to, amount);
    }

    private static string Lot(TreeForm form, string key)
    {
        var lot = form.Text(key) ?? "";
        if (form.IsGood && string.IsNullOrWhiteSpace(lot))
        {
            form.Refuse(key, $"{form.Name}.{key} is empty", "the number of a lot");
        }

        return lot;
    }

    private static TraceQuestion Question(TreeForm form, LotGraph? graph)
    {
        string[] kinds = ["forward", "backward", "balance"];
        var named = kinds.Where(form.Has).ToList();
        if (named.Count != 1)
        {
            form.Ignore([.. kinds, "made"]);
            form.Refuse(
                $"{form.Name} asks {(named.Count == 0 ? "nothing" : string.Join(" and ", named))}",
                "one of forward, backward or balance, each with a lot"
            );
            form.Close();
            return new TraceQuestion(TraceKind.Forward, "", null);
        }

        form.Ignore(kinds);
        var key = named[0];
        var lot = Lot(form, key);
        var made = key == "balance" ? form.OptionalNumber("made", Amount) : null;
        form.Close();
        if (graph is not null && lot.Length > 0 && !graph.Holds(lot))
        {
            var near = NearWords.Of(lot, graph.Lots).FirstOrDefault();
            form.Refuse(
                key,
                $"no movement names the lot '{TreeNode.Shown(lot)}'",
                near is null ? "a lot of the movements" : $"a lot of the movements, such as {near}"
            );
        }
        else if (graph is not null && made is { } all && graph.Balance(lot, all) is { Used: { } used })
        {
            RefuseMoreUsed(form, lot, all, used);
        }

        return new TraceQuestion((TraceKind)Array.IndexOf(kinds, key), lot, made);
    }

    private static void RefuseMoreUsed(TreeForm form, string lot, double made, double used)
    {
        // Sums of decimal fractions miss by less than this.
        if (used > made * (1.0 + 1e-9) + 1e-9)
        {
            form.Refuse(
                "made",
                FormattableString.Invariant($"of {TreeNode.Shown(lot)} {used:0.######} were used, ")
                    + FormattableString.Invariant(
                        $"{used - made:0.######} more than the {made:0.######} made"
                    ),
                "at least as much made as was used"
            );
        }
    }

    private static void RefuseCycle(LotGraph graph, List<LotUse> uses, ImmutableArray<TreeForm> edges)
    {
        if (graph.Cycle is not [var first, var second, ..])
        {
            return;
        }

        var ring = graph.Cycle.Select(TreeNode.Shown).ToList();
        if (ring.Count > MostSteps)
        {
            ring = [.. ring[..(MostSteps - 2)], "…", ring[^1]];
        }

        edges[uses.FindIndex(u => u.From == first && u.To == second)]
            .Refuse(
                $"the lots went into each other in a ring: {string.Join(" → ", ring)}",
                "movements that lead from what was bought to what was sold"
            );
    }
}
