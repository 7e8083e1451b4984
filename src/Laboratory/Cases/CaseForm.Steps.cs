using System.Collections.Immutable;
using System.Globalization;

namespace Litterfall.Laboratory.Cases;

/// <summary>Numbers that may change over time.</summary>
public sealed partial class CaseForm
{
    /// <summary>Most changes one list may hold.</summary>
    public const int MostSteps = 200_000;

    /// <summary>A number, or a list of <c>[fromHour, value]</c>, that must be there.</summary>
    public StepSeries Steps(string key, NumberRange range) =>
        Required(key, StepText(range)) is { } node ? ReadSteps(node, range) : StepSeries.Zero;

    /// <summary>A number, or a list of <c>[fromHour, value]</c>; 0 when it is left out.</summary>
    public StepSeries OptionalSteps(string key, NumberRange range) =>
        Optional(key) is { } node ? ReadSteps(node, range) : StepSeries.Zero;

    private static string StepText(NumberRange range) =>
        $"a number {range}, or a list of [fromHour, value] with rising hours";

    private StepSeries ReadSteps(CaseNode node, NumberRange range)
    {
        if (node is CaseNumber)
        {
            return StepSeries.Constant(Checked(node, range));
        }

        if (node is not CaseList list || list.Items.Count > MostSteps)
        {
            string most = string.Create(CultureInfo.InvariantCulture, $", at most {MostSteps}");
            faults.Add(node.Place, $"{node.Path} is {Counted(node)}", StepText(range) + most);
            return StepSeries.Zero;
        }

        var hours = ImmutableArray.CreateBuilder<double>(list.Items.Count);
        var values = ImmutableArray.CreateBuilder<double>(list.Items.Count);
        foreach (var item in list.Items)
        {
            if (item is not CaseList { Items: [CaseNumber { Value: var hour }, CaseNumber value] })
            {
                faults.Add(item.Place, $"{item.Path} is {Counted(item)}", "a pair [fromHour, value]");
            }
            else if (hour < 0.0 || (hours.Count > 0 && hour <= hours[^1]))
            {
                string shown = hour.ToString(CultureInfo.InvariantCulture);
                faults.Add(item.Place, $"{item.Path} has the hour {shown}", "hours from 0 on, rising");
            }
            else
            {
                hours.Add(hour);
                values.Add(Checked(value, range));
            }
        }

        return new StepSeries(hours.ToImmutable(), values.ToImmutable());
    }
}
