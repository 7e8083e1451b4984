using System.Collections.Immutable;
using System.Globalization;

namespace Litterfall.Laboratory.Cases;

/// <summary>
/// An object of a case being read key by key. Whatever is missing or of the wrong kind becomes a fault and
/// reading goes on, numbers as NaN, so that one run names every fault; <see cref="Close"/> then names the
/// keys nobody asked for.
/// </summary>
public sealed partial class CaseForm
{
    private readonly CaseObject branch;
    private readonly CaseFaults faults;
    private readonly string noun;
    private readonly List<string> asked = [];

    private CaseForm(CaseObject branch, CaseFaults faults, string noun) =>
        (this.branch, this.faults, this.noun) = (branch, faults, noun);

    /// <summary>True while nothing is wrong with the whole file.</summary>
    public bool IsGood => faults.IsEmpty;

    /// <summary>The form of a whole file, or null and a fault when it is no object.</summary>
    public static CaseForm? Top(CaseNode top, CaseFaults faults)
    {
        if (top is CaseObject branch)
        {
            return new CaseForm(branch, faults, "the case");
        }

        faults.Add(top.Place, $"the file holds {top.Kind}", "an object in braces");
        return null;
    }

    /// <summary>True when the key is there; asking does not make it a known key.</summary>
    public bool Has(string key) => branch.Find(key) is not null;

    /// <summary>A number that must be there.</summary>
    public double Number(string key, NumberRange range) =>
        Required(key, NumberText(range)) is { } node ? Checked(node, range) : double.NaN;

    /// <summary>A number with a value for when it is left out.</summary>
    public double Number(string key, NumberRange range, double fallback) =>
        Optional(key) is { } node ? Checked(node, range) : fallback;

    /// <summary>A whole number that must be there; its lowest value on a fault.</summary>
    public int Whole(string key, int lowest, int highest)
    {
        string expected = string.Create(
            CultureInfo.InvariantCulture,
            $"a whole number from {lowest} to {highest}"
        );
        if (Required(key, expected) is not { } node)
        {
            return lowest;
        }

        if (
            node is CaseNumber { Value: var value }
            && value >= lowest
            && value <= highest
            && value == Math.Floor(value)
        )
        {
            return (int)value;
        }

        faults.Add(node.Place, $"{node.Path} is {node.Kind}", expected);
        return lowest;
    }

    /// <summary>True or false, with a value for when it is left out.</summary>
    public bool Flag(string key, bool fallback)
    {
        var node = Optional(key);
        if (node is null or CaseFlag)
        {
            return (node as CaseFlag)?.Value ?? fallback;
        }

        faults.Add(node.Place, $"{node.Path} is {node.Kind}", "true or false");
        return fallback;
    }

    /// <summary>A text that must be there; null on a fault.</summary>
    public string? Text(string key)
    {
        const string expected = "a text in quotes";
        var node = Required(key, expected);
        if (node is not null and not CaseText)
        {
            faults.Add(node.Place, $"{node.Path} is {node.Kind}", expected);
        }

        return (node as CaseText)?.Text;
    }

    /// <summary>One of some words; null on a fault.</summary>
    public string? Choice(string key, params ReadOnlySpan<string> words)
    {
        string expected = $"one of {string.Join(", ", words!)}";
        if (Required(key, expected) is not { } node)
        {
            return null;
        }

        if (node is CaseText { Text: var text } && words.Contains(text))
        {
            return text;
        }

        faults.Add(node.Place, $"{node.Path} is {node.Kind}", expected);
        return null;
    }

    /// <summary>
    /// One of some words or an object in braces; both null when it is left out, and on a fault.
    /// </summary>
    public (string? Word, CaseForm? Inner) WordOrObject(
        string key,
        string what,
        params ReadOnlySpan<string> words
    )
    {
        if (Optional(key) is not { } node)
        {
            return (null, null);
        }

        if (node is CaseText { Text: var text } && words.Contains(text))
        {
            return (text, null);
        }

        if (node is CaseObject inner)
        {
            return (null, new CaseForm(inner, faults, what));
        }

        faults.Add(
            node.Place,
            $"{node.Path} is {node.Kind}",
            $"one of {string.Join(", ", words!)}, or an object in braces"
        );
        return (null, null);
    }

    /// <summary>A text or an object in braces that must be there; both null on a fault.</summary>
    public (string? Text, CaseForm? Inner) TextOrObject(string key, string what)
    {
        const string expected = "a text in quotes, or an object in braces";
        switch (Required(key, expected))
        {
            case CaseText text:
                return (text.Text, null);
            case CaseObject inner:
                return (null, new CaseForm(inner, faults, what));
            case { } node:
                faults.Add(node.Place, $"{node.Path} is {node.Kind}", expected);
                return (null, null);
            default:
                return (null, null);
        }
    }

    /// <summary>A number, or a list of numbers, that must be there; the flag is true for a list.</summary>
    public (ImmutableArray<double> Values, bool IsList) NumberOrNumbers(
        string key,
        NumberRange range,
        int most
    )
    {
        if (Required(key, $"a number {range}, or a list of such numbers") is not { } node)
        {
            return ([], false);
        }

        return node is CaseNumber ? ([Checked(node, range)], false) : (ReadNumbers(node, range, most), true);
    }

    /// <summary>An object that must be there; null on a fault.</summary>
    public CaseForm? Object(string key, string what) =>
        Required(key, "an object in braces") is { } node ? Form(node, what) : null;

    /// <summary>An object that may be left out; null then, and on a fault.</summary>
    public CaseForm? OptionalObject(string key, string what) =>
        Optional(key) is { } node ? Form(node, what) : null;

    /// <summary>A list of objects that must be there and hold some.</summary>
    public ImmutableArray<CaseForm> Objects(string key, string what, int most)
    {
        string expected = string.Create(CultureInfo.InvariantCulture, $"a list of 1 to {most} objects");
        var node = Required(key, expected);
        if (node is CaseList { Items.Count: > 0 } list && list.Items.Count <= most)
        {
            return [.. list.Items.Select(i => Form(i, what)).OfType<CaseForm>()];
        }

        if (node is not null)
        {
            faults.Add(node.Place, $"{node.Path} is {Counted(node)}", expected);
        }

        return [];
    }

    /// <summary>A list of objects that may be left out or empty.</summary>
    public ImmutableArray<CaseForm> OptionalObjects(string key, string what, int most) =>
        branch.Find(key) is CaseList { Items.Count: 0 } or null ? Left(key) : Objects(key, what, most);

    private ImmutableArray<CaseForm> Left(string key)
    {
        asked.Add(key);
        return [];
    }

    /// <summary>A list of numbers that must be there; on a fault it is short or holds NaN.</summary>
    public ImmutableArray<double> Numbers(string key, NumberRange range, int most) =>
        Required(key, NumbersText(most)) is { } node ? ReadNumbers(node, range, most) : [];

    /// <summary>A list of numbers, or one that is taken when it is left out.</summary>
    public ImmutableArray<double> Numbers(
        string key,
        NumberRange range,
        int most,
        ImmutableArray<double> fallback
    ) => Optional(key) is { } node ? ReadNumbers(node, range, most) : fallback;

    /// <summary>Says that the value of a key, or the object when the key is not there, will not do.</summary>
    public void Refuse(string key, string message, string expected) =>
        faults.Add(branch.Find(key)?.Place ?? branch.Place, message, expected);

    /// <summary>Says that the object will not do.</summary>
    public void Refuse(string message, string expected) => faults.Add(branch.Place, message, expected);

    /// <summary>Names every key that was not asked for.</summary>
    /// <param name="what">What the object turned out to be, when that is more than was known before.</param>
    public void Close(string? what = null)
    {
        foreach (var member in branch.Members.Where(m => !asked.Contains(m.Key, StringComparer.Ordinal)))
        {
            faults.Add(
                member.Place,
                $"{what ?? noun} has no key '{member.Key}'",
                $"one of {string.Join(", ", asked.Distinct(StringComparer.Ordinal))}"
            );
        }
    }

    private static string NumberText(NumberRange range) => $"a number {range}";

    private static string NumbersText(int most) =>
        string.Create(CultureInfo.InvariantCulture, $"a list of at most {most} numbers");

    private ImmutableArray<double> ReadNumbers(CaseNode node, NumberRange range, int most)
    {
        if (node is CaseList list && list.Items.Count <= most)
        {
            return [.. list.Items.Select(i => Checked(i, range))];
        }

        faults.Add(node.Place, $"{node.Path} is {Counted(node)}", NumbersText(most));
        return [];
    }

    private static string Counted(CaseNode node) =>
        node is CaseList list
            ? string.Create(CultureInfo.InvariantCulture, $"a list of {list.Items.Count}")
            : node.Kind;

    private CaseNode? Optional(string key)
    {
        asked.Add(key);
        return branch.Find(key);
    }

    private CaseNode? Required(string key, string expected)
    {
        var node = Optional(key);
        if (node is null)
        {
            string place = branch.Path.Length == 0 ? noun : branch.Path;
            faults.Add(branch.Place, $"{place} lacks '{key}'", expected);
        }

        return node;
    }

    private double Checked(CaseNode node, NumberRange range)
    {
        if (node is CaseNumber { Value: var value } && range.Takes(value))
        {
            return value;
        }

        faults.Add(node.Place, $"{node.Path} is {node.Kind}", NumberText(range));
        return double.NaN;
    }

    private CaseForm? Form(CaseNode node, string what)
    {
        if (node is CaseObject inner)
        {
            return new CaseForm(inner, faults, what);
        }

        faults.Add(node.Place, $"{node.Path} is {node.Kind}", "an object in braces");
        return null;
    }
}
