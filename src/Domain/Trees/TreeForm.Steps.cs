using System.Collections.Immutable;
using System.Globalization;

namespace Litterfall.Domain.Trees;

/// <summary>Numbers that may change over time.</summary>
public sealed partial class TreeForm
{
    /// <summary>Most changes one list may hold.</summary>
    public const int MostSteps = 200_000;

    /// <summary>A number, or a list of <c>[fromHour, value]</c>, that must be there.</summary>
    public StepSeries Steps(string key, NumberRange range) =>
        Required(key, StepText(range)) is { } node ? ReadSteps(key, node, range) : StepSeries.Zero;

    /// <summary>A number, or a list of <c>[fromHour, value]</c>; 0 when it is left out.</summary>
    public StepSeries OptionalSteps(string key, NumberRange range) =>
        Optional(key) is { } node ? ReadSteps(key, node, range) : StepSeries.Zero;

    private static string StepText(NumberRange range) =>
        $"a number {range}, or a list of [fromHour, value] with rising hours";

    private StepSeries ReadSteps(string key, TreeNode node, NumberRange range)
    {
        if (node is TreeScalar { Form: ScalarForm.Number })
        {
            return StepSeries.Constant(Checked(node, key, range));
        }

        if (node is not TreeList list || list.Items.Count > MostSteps)
        {
            string most = string.Create(CultureInfo.InvariantCulture, $", at most {MostSteps}");
            faults.Add(node.Span, $"{Path(key)} is {Counted(node)}", StepText(range) + most);
            return StepSeries.Zero;
        }

        var hours = ImmutableArray.CreateBuilder<double>(list.Items.Count);
        var values = ImmutableArray.CreateBuilder<double>(list.Items.Count);
        for (var i = 0; i < list.Items.Count; i++)
        {
            var item = list.Items[i];
            if (
                item
                is not TreeList
                {
                    Items: [TreeScalar { Form: ScalarForm.Number, Number: var hour }, TreeScalar value]
                }
                || value.Form != ScalarForm.Number
            )
            {
                faults.Add(
                    item.Span,
                    $"{Item(key, i)} is {Counted(item)}",
                    "a pair [fromHour, value]"
                );
            }
            else if (hour < 0.0 || (hours.Count > 0 && hour <= hours[^1]))
            {
                string shown = hour.ToString(CultureInfo.InvariantCulture);
                faults.Add(
                    item.Span,
                    $"{Item(key, i)} has the hour {shown}",
                    "hours from 0 on, rising"
                );
            }
            else
            {
                hours.Add(hour);
                values.Add(Checked(value, key, range, i, "[1]"));
            }
        }

        return new StepSeries(hours.ToImmutable(), values.ToImmutable());
    }
}
