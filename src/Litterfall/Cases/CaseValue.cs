using System.Globalization;

namespace Litterfall.App.Cases;

/// <summary>
/// A value of a case seen as what it should be. What is wrong goes to the faults, and a stand-in comes back
/// so that reading goes on: <see cref="double.NaN"/>, which fails every comparison, so that a check written
/// as "wrong when a ≥ b" adds no second fault; an empty text; an empty list; null for an object.
/// </summary>
public sealed class CaseValue(CaseNode node, string path, CaseFaults faults)
{
    /// <summary>The value as it stands in the file.</summary>
    public CaseNode Node { get; } = node;

    /// <summary>Where it hangs: <c>layers[0].soil</c>; empty for the whole case.</summary>
    public string Path { get; } = path;

    /// <summary>Where faults go.</summary>
    public CaseFaults Faults { get; } = faults;

    /// <summary>The path for messages.</summary>
    public string Name => Path.Length == 0 ? "the case" : $"'{Path}'";

    /// <summary>A fault of this value.</summary>
    public void Fault(string message, string expected) =>
        Faults.Add(Node.Line, Node.Column, message, expected);

    /// <summary>A fault "'path' is ...; expected ...".</summary>
    public void Refuse(string expected) => Fault($"{Name} is {Node.Words}", expected);

    /// <summary>A number, or NaN with a fault.</summary>
    public double Number(NumberRange range)
    {
        if (Node is CaseNumber number && range.Holds(number.Value))
        {
            return number.Value;
        }

        Refuse(range.ToString());
        return double.NaN;
    }

    /// <summary>One of some words, or an empty text with a fault.</summary>
    public string Word(params ReadOnlySpan<string> words)
    {
        if (Node is CaseText text && words.Contains(text.Value))
        {
            return text.Value;
        }

        Refuse((words.Length > 1 ? "one of " : "") + string.Join(", ", words!));
        return "";
    }

    /// <summary>True or false; false with a fault.</summary>
    public bool Truth()
    {
        if (Node is CaseTruth truth)
        {
            return truth.Value;
        }

        Refuse("true or false");
        return false;
    }

    /// <summary>An object with no keys but these, or null with a fault; each other key is a fault.</summary>
    public CaseObject? Object(params ReadOnlySpan<string> keys)
    {
        if (Node is CaseMembers members)
        {
            return new CaseObject(this, members, keys);
        }

        Refuse($"an object with {string.Join(", ", keys!)}");
        return null;
    }

    /// <summary>The items of a list; none with a fault.</summary>
    /// <param name="least">Fewest items.</param>
    /// <param name="what">What it lists, in words.</param>
    public IReadOnlyList<CaseValue> List(int least, string what)
    {
        if (Node is CaseItems items && items.Items.Count >= least)
        {
            return
            [
                .. items.Items.Select(
                    (item, i) =>
                        new CaseValue(
                            item,
                            string.Create(CultureInfo.InvariantCulture, $"{Path}[{i}]"),
                            Faults
                        )
                ),
            ];
        }

        Refuse(least > 0 ? $"a list of {what}, at least {least}" : $"a list of {what}");
        return [];
    }

    /// <summary>The numbers of a list, NaN for each that is none.</summary>
    /// <param name="least">Fewest numbers.</param>
    /// <param name="what">What it lists, in words.</param>
    /// <param name="range">Range of each.</param>
    public double[] Numbers(int least, string what, NumberRange range) =>
        [.. List(least, what).Select(item => item.Number(range))];

    /// <summary>The items of a list of numbers that must rise or fall; a fault at the first that does not.</summary>
    /// <param name="least">Fewest numbers.</param>
    /// <param name="what">What it lists, in words.</param>
    /// <param name="range">Range of each.</param>
    /// <param name="falling">True when they must fall.</param>
    public double[] Ordered(int least, string what, NumberRange range, bool falling = false)
    {
        var items = List(least, what);
        double[] numbers = [.. items.Select(item => item.Number(range))];
        for (int i = 1; i < numbers.Length; i++)
        {
            if (falling ? numbers[i] >= numbers[i - 1] : numbers[i] <= numbers[i - 1])
            {
                items[i].Fault(
                    $"{items[i].Name} is {items[i].Node.Words}, after {items[i - 1].Node.Words}",
                    falling ? "each number below the one before" : "each number above the one before"
                );
                break;
            }
        }

        return numbers;
    }
}
