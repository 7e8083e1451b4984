using System.Collections.Immutable;
using System.Globalization;

namespace Litterfall.Domain.Trees;

/// <summary>Points over time that straight lines join.</summary>
public sealed partial class TreeForm
{
    private const string PointText = "a pair [hour, value]";

    /// <summary>
    /// A number, or a list of <c>[hour, value]</c> with hours that do not fall; two points at one hour are a
    /// step. Short on a fault.
    /// </summary>
    public (ImmutableArray<double> Hours, ImmutableArray<double> Values) Points(
        string key,
        NumberRange range,
        double lastHour
    )
    {
        string expected = $"a number {range}, or a list of [hour, value] with rising hours";
        var node = Required(key, expected);
        if (node is TreeScalar { Form: ScalarForm.Number })
        {
            return ([0.0], [Checked(node, key, range)]);
        }

        if (node is not TreeList { Items.Count: > 0 } list || list.Items.Count > MostSteps)
        {
            if (node is not null)
            {
                string most = string.Create(CultureInfo.InvariantCulture, $", at most {MostSteps}");
                faults.Add(node.Span, $"{Path(key)} is {Counted(node)}", expected + most);
            }

            return ([], []);
        }

        var hours = ImmutableArray.CreateBuilder<double>(list.Items.Count);
        var values = ImmutableArray.CreateBuilder<double>(list.Items.Count);
        for (var i = 0; i < list.Items.Count; i++)
        {
            if (
                list.Items[i]
                is not TreeList
                {
                    Items: [TreeScalar { Form: ScalarForm.Number, Number: var hour }, TreeScalar value]
                }
            )
            {
                string message = $"{Item(key, i)} is {Counted(list.Items[i])}";
                faults.Add(list.Items[i].Span, message, PointText);
            }
            else if (!IsNext(hours, hour, lastHour))
            {
                string shown = hour.ToString(CultureInfo.InvariantCulture);
                string most = lastHour.ToString(CultureInfo.InvariantCulture);
                faults.Add(
                    list.Items[i].Span,
                    $"{Item(key, i)} has the hour {shown}",
                    $"hours from 0 to {most} that do not fall, none more than twice"
                );
            }
            else
            {
                hours.Add(hour);
                values.Add(Checked(value, key, range, i, "[1]"));
            }
        }

        return (hours.ToImmutable(), values.ToImmutable());
    }

    private static bool IsNext(ImmutableArray<double>.Builder hours, double hour, double lastHour) =>
        hour >= 0.0
        && hour <= lastHour
        && (hours.Count < 1 || hour >= hours[^1])
        && (hours.Count < 2 || hour > hours[^2]);
}
