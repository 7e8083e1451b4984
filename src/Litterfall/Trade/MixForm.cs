using Litterfall.Domain.Lists;
using Litterfall.Domain.Trees;
using Litterfall.Workshop.Mixing;

namespace Litterfall.App.Trade;

/// <summary>Reads a case of <c>mix</c>.</summary>
public static class MixForm
{
    private const int MostParts = 100;
    private const int MostMeasured = 10_000;
    private const int MostLots = 100;
    private const int MostBatches = 1_000_000;
    private static readonly NumberRange Liters = new(1e-3, 1e6);
    private static readonly NumberRange Percent = new(0.0, 99.0);

    /// <summary>The plan, or null and faults on the form.</summary>
    public static MixPlan? Read(TreeForm form)
    {
        var recipe = form.Objects("recipe", "a component", MostParts).Select(Part).ToList();
        var need = form.Number("needLiters", Liters);
        var (shrink, wet) = Learned(form);
        var (target, percent) = Target(form);
        var asked = new MixCase
        {
            Recipe = [.. recipe],
            NeedLiters = need,
            LossPercent = form.OptionalNumber("lossPercent", NumberRange.UpTo(1000.0)) ?? 0.0,
            Shrink = shrink,
            WetMiss = wet,
            TubLiters = form.Number("tubLiters", Liters),
            FillPercent = form.OptionalNumber("fillPercent", new NumberRange(1.0, 100.0)) ?? 100.0,
            LiftKg = form.OptionalNumber("liftKg", new NumberRange(0.1, 1e4)),
            JugLiters = form.OptionalNumber("jugLiters", new NumberRange(1e-3, 1e3)),
            Target = target,
            WetPercent = percent,
            Split =
                form.OptionalChoice("split", "equal", "full") == "full"
                    ? BatchSplit.FullAndRest
                    : BatchSplit.Equal,
            Batches = form.OptionalWhole("batches", 1, MostBatches),
        };
        form.Close();
        return form.IsGood ? Plan(form, asked) : null;
    }

    private static MixPlan? Plan(TreeForm form, MixCase asked)
    {
        var twice = asked
            .Recipe.GroupBy(p => p.Name, StringComparer.Ordinal)
            .FirstOrDefault(g => g.Count() > 1);
        if (twice is not null)
        {
            form.Refuse(
                "recipe",
                $"{TreeNode.Shown(twice.Key)} stands in the recipe twice",
                "every component once"
            );
            return null;
        }

        if (asked.NeedLiters / asked.LimitLiters > MostBatches / 10.0)
        {
            form.Refuse(
                "tubLiters",
                "the tub is too small for so much mix",
                "a tub of fewer than 100000 batches"
            );
            return null;
        }

        if (
            asked.LiftKg is not null
            && asked.Recipe.FirstOrDefault(p => p.KgPerLiter is null) is { } unweighed
        )
        {
            form.Refuse(
                "liftKg",
                $"{TreeNode.Shown(unweighed.Name)} has no kgPerLiter, so a batch cannot be weighed",
                "kgPerLiter of every component"
            );
            return null;
        }

        var (plan, refusal) = MixPlan.From(asked);
        if (refusal is not null)
        {
            form.Refuse(refusal.Key, refusal.Message, refusal.Expected);
        }

        return plan;
    }

    private static MixPart Part(TreeForm part)
    {
        var name = part.Text("name") ?? "";
        var read = new MixPart(
            name,
            part.Number("parts", new NumberRange(1e-3, 1e6)),
            part.OptionalNumber("kgPerLiter", new NumberRange(1e-3, 20.0)),
            part.OptionalNumber("wetPercent", Percent) ?? 0.0,
            [.. part.OptionalTexts("lots", MostLots)]
        );
        part.Close();
        return read;
    }

    private static (LearnedShare Shrink, LearnedShare Wet) Learned(TreeForm form)
    {
        var given = form.OptionalNumber("shrinkPercent", Percent);
        var outs = new List<(double, double)>();
        var wets = new List<(double, double)>();
        foreach (var batch in form.ObjectsOrNull("measured", "a measured batch", MostMeasured))
        {
            var (put, came) = (batch.Number("inLiters", Liters), batch.Number("outLiters", Liters));
            if (came > put * 1.5 || came < put * 0.2)
            {
                batch.Refuse(
                    "outLiters",
                    FormattableString.Invariant(
                        $"{batch.Name}: {put:0.###} L in and {came:0.###} L out is no mix"
                    ),
                    "mixed liters between a fifth of and one and a half times the loose ones"
                );
            }

            outs.Add((put, came));
            var planned = batch.OptionalNumber("plannedWetPercent", Percent);
            var found = batch.OptionalNumber("wetPercent", Percent);
            if (planned is { } p && found is { } f)
            {
                wets.Add((p, f));
            }
            else if (planned is not null || found is not null)
            {
                batch.Refuse(
                    $"{batch.Name} tells only one of plannedWetPercent and wetPercent",
                    "both, or neither"
                );
            }

            batch.Close();
        }

        if (given is not null && outs.Count > 0)
        {
            form.Refuse("shrinkPercent", "shrinkPercent is given and measured too", "one of the two");
        }

        return (
            given is { } share ? LearnedShare.Given(share / 100.0) : LearnedShare.Shrink(outs),
            LearnedShare.WetMiss(wets)
        );
    }

    private static (WetTarget, double) Target(TreeForm form)
    {
        var mass = form.OptionalNumber("targetWetPercent", Percent);
        var volume = form.OptionalNumber("waterByVolumePercent", Percent);
        if (mass is not null && volume is not null)
        {
            form.Refuse("waterByVolumePercent", "the water is asked for twice", "one target of water");
        }

        return mass is { } m ? (WetTarget.ByMass, m)
            : volume is { } v ? (WetTarget.ByVolume, v)
            : (WetTarget.None, 0.0);
    }
}
