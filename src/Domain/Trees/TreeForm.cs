using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Domain.Units;

namespace Litterfall.Domain.Trees;

/// <summary>
/// An object of a text being read key by key. Whatever is missing or of the wrong kind becomes a fault and
/// reading goes on, numbers as NaN, so that one run names every fault; <see cref="Close"/> then names the
/// keys nobody asked for.
/// </summary>
public sealed partial class TreeForm
{
    private const string QuotedText = "a text in quotes";
    private readonly TreeMap branch;
    private readonly TreeFaults faults;
    private readonly string noun;
    private string path;
    private readonly List<string> asked = [];

    private TreeForm(TreeMap branch, TreeFaults faults, string noun, string path) =>
        (this.branch, this.faults, this.noun, this.path) = (branch, faults, noun, path);

    /// <summary>Where it stands.</summary>
    public TextSpan Span => branch.Span;

    /// <summary>Its keys in the order of the text.</summary>
    public IEnumerable<TreeScalar> Keys => branch.Members.Select(m => m.Key);

    /// <summary>Its name in messages; empty for a whole file.</summary>
    public string Name => path;

    /// <summary>Names it in messages by what it is a form of.</summary>
    /// <param name="name">The name.</param>
    public void Call(string name) => path = TreeNode.Shown(name);

    /// <summary>The forms of a whole file that holds a list; items that are no objects are faults.</summary>
    /// <param name="top">The whole file.</param>
    /// <param name="faults">Takes what is wrong with it.</param>
    /// <param name="noun">What an object is, in words.</param>
    /// <param name="list">What the list is, in words, and the most it holds.</param>
    public static ImmutableArray<TreeForm> Each(
        TreeNode top,
        TreeFaults faults,
        string noun,
        (string Words, int Most) list
    )
    {
        if (top is not TreeList { Items: var items } || items.Count > list.Most)
        {
            faults.Add(top.Span, $"the file holds {Counted(top)}", list.Words);
            return [];
        }

        var forms = ImmutableArray.CreateBuilder<TreeForm>(items.Count);
        for (var i = 0; i < items.Count; i++)
        {
            if (items[i] is TreeMap branch)
            {
                forms.Add(new TreeForm(branch, faults, noun, FormattableString.Invariant($"[{i}]")));
            }
            else
            {
                var message = FormattableString.Invariant($"[{i}] is {items[i].Kind}");
                faults.Add(items[i].Span, message, "an object in braces");
            }
        }

        return forms.ToImmutable();
    }

    /// <summary>True while nothing is wrong with the whole file.</summary>
    public bool IsGood => faults.IsEmpty;

    /// <summary>The form of a whole file, or null and a fault when it is no object.</summary>
    /// <param name="top">The whole file.</param>
    /// <param name="faults">Takes what is wrong with it.</param>
    /// <param name="noun">What the object is, in words.</param>
    public static TreeForm? Top(TreeNode top, TreeFaults faults, string noun = "the case")
    {
        if (top is TreeMap branch)
        {
            return new TreeForm(branch, faults, noun, "");
        }

        faults.Add(top.Span, $"the file holds {top.Kind}", "an object in braces");
        return null;
    }

    /// <summary>True when the key is there; asking does not make it a known key.</summary>
    public bool Has(string key) => branch.Find(key) is not null;

    /// <summary>A number that must be there.</summary>
    public double Number(string key, NumberRange range) =>
        Required(key, NumberText(range)) is { } node ? Checked(node, key, range) : double.NaN;

    /// <summary>A number with a value for when it is left out.</summary>
    public double Number(string key, NumberRange range, double fallback) =>
        Optional(key) is { } node ? Checked(node, key, range) : fallback;

    /// <summary>A number that may be left out; null then, and for null.</summary>
    public double? OptionalNumber(string key, NumberRange range) =>
        Optional(key) is { } node and not TreeScalar { Form: ScalarForm.Null }
            ? Checked(node, key, range)
            : null;

    /// <summary>An amount with its unit, as text or as a bare number; null and a fault otherwise.</summary>
    public T? Amount<T>(string key, string expected)
        where T : struct, IQuantity<T>
    {
        if (Required(key, expected) is not { } node)
        {
            return null;
        }

        var problem = $"is {node.Kind}";
        if (
            node is TreeScalar { Form: ScalarForm.Quoted or ScalarForm.Number } scalar
            && QuantityText.TryParse<T>(
                scalar.Form == ScalarForm.Number ? scalar.Kind : scalar.Text,
                out var amount,
                out problem
            )
        )
        {
            return amount.Value;
        }

        faults.Add(node.Span, $"{Path(key)}: {problem}", expected);
        return null;
    }

    /// <summary>A text that may be left out; null then, for null, and on a fault.</summary>
    public string? OptionalText(string key) =>
        Optional(key) is { } node and not TreeScalar { Form: ScalarForm.Null }
            ? TextOf(node, Path(key))
            : null;

    /// <summary>Texts that may be left out; those that are none are faults.</summary>
    public ImmutableArray<string> OptionalTexts(string key, int most)
    {
        if (Optional(key) is not { } node)
        {
            return [];
        }

        if (node is TreeList list && list.Items.Count <= most)
        {
            return
            [
                .. list
                    .Items.Select((item, i) => TextOf(item, Item(key, i)))
                    .OfType<string>(),
            ];
        }

        string expected = string.Create(CultureInfo.InvariantCulture, $"a list of at most {most} texts");
        faults.Add(node.Span, $"{Path(key)} is {Counted(node)}", expected);
        return [];
    }

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
            node is TreeScalar { Form: ScalarForm.Number, Number: var value }
            && value >= lowest
            && value <= highest
            && value == Math.Floor(value)
        )
        {
            return (int)value;
        }

        faults.Add(node.Span, $"{Path(key)} is {node.Kind}", expected);
        return lowest;
    }

    /// <summary>True or false, with a value for when it is left out.</summary>
    public bool Flag(string key, bool fallback)
    {
        var node = Optional(key);
        if (node is null or TreeScalar { Form: ScalarForm.Flag })
        {
            return node is TreeScalar flag ? flag.Text == "true" : fallback;
        }

        faults.Add(node.Span, $"{Path(key)} is {node.Kind}", "true or false");
        return fallback;
    }

    /// <summary>A text that must be there; null on a fault.</summary>
    public string? Text(string key)
    {
        return Required(key, QuotedText) is { } node ? TextOf(node, Path(key)) : null;
    }

    private string? TextOf(TreeNode node, string at)
    {
        if (node is TreeScalar { Form: ScalarForm.Quoted } words)
        {
            return words.Text;
        }

        faults.Add(node.Span, $"{at} is {node.Kind}", QuotedText);
        return null;
    }

    /// <summary>One of some words; null on a fault.</summary>
    public string? Choice(string key, params ReadOnlySpan<string> words)
    {
        string expected = $"one of {string.Join(", ", words!)}";
        if (Required(key, expected) is not { } node)
        {
            return null;
        }

        if (node is TreeScalar { Form: ScalarForm.Quoted, Text: var text } && words.Contains(text))
        {
            return text;
        }

        faults.Add(node.Span, $"{Path(key)} is {node.Kind}", expected);
        return null;
    }

    /// <summary>
    /// One of some words or an object in braces; both null when it is left out, and on a fault.
    /// </summary>
    public (string? Word, TreeForm? Inner) WordOrObject(
        string key,
        string what,
        params ReadOnlySpan<string> words
    )
    {
        if (Optional(key) is not { } node)
        {
            return (null, null);
        }

        if (node is TreeScalar { Form: ScalarForm.Quoted, Text: var text } && words.Contains(text))
        {
            return (text, null);
        }

        if (node is TreeMap inner)
        {
            return (null, new TreeForm(inner, faults, what, Path(key)));
        }

        faults.Add(
            node.Span,
            $"{Path(key)} is {node.Kind}",
            $"one of {string.Join(", ", words!)}, or an object in braces"
        );
        return (null, null);
    }

    /// <summary>A text or an object in braces that must be there; both null on a fault.</summary>
    public (string? Text, TreeForm? Inner) TextOrObject(string key, string what)
    {
        const string expected = "a text in quotes, or an object in braces";
        switch (Required(key, expected))
        {
            case TreeScalar { Form: ScalarForm.Quoted } text:
                return (text.Text, null);
            case TreeMap inner:
                return (null, new TreeForm(inner, faults, what, Path(key)));
            case { } node:
                faults.Add(node.Span, $"{Path(key)} is {node.Kind}", expected);
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

        return node is TreeScalar { Form: ScalarForm.Number }
            ? ([Checked(node, key, range)], false)
            : (ReadNumbers(key, node, range, most), true);
    }

    /// <summary>An object that must be there; null on a fault.</summary>
    public TreeForm? Object(string key, string what) =>
        Required(key, "an object in braces") is { } node ? Form(node, what, Path(key)) : null;

    /// <summary>An object that may be left out; null then, and on a fault.</summary>
    public TreeForm? OptionalObject(string key, string what) =>
        Optional(key) is { } node ? Form(node, what, Path(key)) : null;

    /// <summary>A list of objects that must be there and hold some.</summary>
    public ImmutableArray<TreeForm> Objects(string key, string what, int most)
    {
        string expected = string.Create(CultureInfo.InvariantCulture, $"a list of 1 to {most} objects");
        var node = Required(key, expected);
        if (node is TreeList { Items.Count: > 0 } list && list.Items.Count <= most)
        {
            return [.. list.Items.Select((item, i) => Form(item, what, Item(key, i))).OfType<TreeForm>()];
        }

        if (node is not null)
        {
            faults.Add(node.Span, $"{Path(key)} is {Counted(node)}", expected);
        }

        return [];
    }

    /// <summary>A list of objects that may be left out or empty.</summary>
    public ImmutableArray<TreeForm> OptionalObjects(string key, string what, int most) =>
        branch.Find(key) is TreeList { Items.Count: 0 } or null ? Left(key) : Objects(key, what, most);

    private ImmutableArray<TreeForm> Left(string key)
    {
        asked.Add(key);
        return [];
    }

    /// <summary>A list of numbers that must be there; on a fault it is short or holds NaN.</summary>
    public ImmutableArray<double> Numbers(string key, NumberRange range, int most) =>
        Required(key, NumbersText(most)) is { } node ? ReadNumbers(key, node, range, most) : [];

    /// <summary>A list of numbers, or one that is taken when it is left out.</summary>
    public ImmutableArray<double> Numbers(
        string key,
        NumberRange range,
        int most,
        ImmutableArray<double> fallback
    ) => Optional(key) is { } node ? ReadNumbers(key, node, range, most) : fallback;

    /// <summary>Says that the value of a key, or the object when the key is not there, will not do.</summary>
    public void Refuse(string key, string message, string expected) =>
        faults.Add(branch.Find(key)?.Span ?? branch.Span, message, expected);

    /// <summary>Says that the object will not do.</summary>
    public void Refuse(string message, string expected) => faults.Add(branch.Span, message, expected);

    /// <summary>Names every key that was not asked for.</summary>
    /// <param name="what">What the object turned out to be, when that is more than was known before.</param>
    public void Close(string? what = null)
    {
        foreach (var member in branch.Members.Where(m => !asked.Contains(m.Key.Text, StringComparer.Ordinal)))
        {
            faults.Add(
                member.Key.Span,
                $"{what ?? noun} has no key '{TreeNode.Shown(member.Key.Text)}'",
                $"one of {string.Join(", ", asked.Distinct(StringComparer.Ordinal))}"
            );
        }
    }

    private static string NumberText(NumberRange range) => $"a number {range}";

    private static string NumbersText(int most) =>
        string.Create(CultureInfo.InvariantCulture, $"a list of at most {most} numbers");

    private ImmutableArray<double> ReadNumbers(string key, TreeNode node, NumberRange range, int most)
    {
        if (node is TreeList list && list.Items.Count <= most)
        {
            return [.. list.Items.Select((item, i) => Checked(item, key, range, i))];
        }

        faults.Add(node.Span, $"{Path(key)} is {Counted(node)}", NumbersText(most));
        return [];
    }

    private static string Counted(TreeNode node) =>
        node is TreeList list
            ? string.Create(CultureInfo.InvariantCulture, $"a list of {list.Items.Count}")
            : node.Kind;

    private TreeNode? Optional(string key)
    {
        asked.Add(key);
        return branch.Find(key);
    }

    private TreeNode? Required(string key, string expected)
    {
        var node = Optional(key);
        if (node is null)
        {
            string place = path.Length == 0 ? noun : path;
            faults.Add(branch.Span, $"{place} lacks '{key}'", expected);
        }

        return node;
    }

    private string Path(string key) => path.Length == 0 ? key : $"{path}.{key}";

    private string Item(string key, int index) => FormattableString.Invariant($"{Path(key)}[{index}]");

    /// <summary>A number in its range; the way to it is put in words only where it does not fit.</summary>
    private double Checked(TreeNode node, string key, NumberRange range, int item = -1, string within = "")
    {
        if (node is TreeScalar { Form: ScalarForm.Number, Number: var value } && range.Takes(value))
        {
            // A minus before nothing means nothing, and a formula may trip over it.
            return value == 0.0 ? 0.0 : value;
        }

        string at = item < 0 ? Path(key) : Item(key, item) + within;
        faults.Add(node.Span, $"{at} is {node.Kind}", NumberText(range));
        return double.NaN;
    }

    private TreeForm? Form(TreeNode node, string what, string at)
    {
        if (node is TreeMap inner)
        {
            return new TreeForm(inner, faults, what, at);
        }

        faults.Add(node.Span, $"{at} is {node.Kind}", "an object in braces");
        return null;
    }
}
