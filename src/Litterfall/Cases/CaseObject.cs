namespace Litterfall.App.Cases;

/// <summary>An object of a case whose keys are known: other keys have been faulted.</summary>
public sealed class CaseObject
{
    private readonly CaseMembers members;

    internal CaseObject(CaseValue value, CaseMembers members, ReadOnlySpan<string> keys)
    {
        Value = value;
        this.members = members;
        foreach (var member in members.Members)
        {
            if (!keys.Contains(member.Key))
            {
                value.Faults.Add(
                    member.Line,
                    member.Column,
                    $"{value.Name} has an unknown key '{CaseText.Shown(member.Key)}'",
                    $"keys among {string.Join(", ", keys!)}"
                );
            }
        }
    }

    /// <summary>It as a value.</summary>
    public CaseValue Value { get; }

    /// <summary>True when the key is there, even as null.</summary>
    public bool Has(string key) => members.Find(key) is not null;

    /// <summary>The value of a key; null when it is left out or null.</summary>
    public CaseValue? Find(string key) =>
        members.Find(key) is { Value: not CaseNull } member
            ? new CaseValue(
                member.Value,
                Value.Path.Length == 0 ? key : $"{Value.Path}.{key}",
                Value.Faults
            )
            : null;

    /// <summary>The value of a key that must be there; null with a fault when it is not.</summary>
    /// <param name="key">The key.</param>
    /// <param name="expected">What was expected, in words.</param>
    public CaseValue? Need(string key, string expected)
    {
        var value = Find(key);
        if (value is null)
        {
            Value.Fault($"{Value.Name} has no '{key}'", expected);
        }

        return value;
    }

    /// <summary>A number that must be there; NaN with a fault.</summary>
    public double Number(string key, NumberRange range) =>
        Need(key, range.ToString())?.Number(range) ?? double.NaN;

    /// <summary>A number that may be left out; NaN with a fault.</summary>
    public double Number(string key, NumberRange range, double otherwise) =>
        Find(key) is { } value ? value.Number(range) : otherwise;

    /// <summary>A whole number that must be there; 0 with a fault.</summary>
    public int Whole(string key, int least, int most)
    {
        double number = Number(key, NumberRange.Whole(least, most));
        return double.IsNaN(number) ? 0 : (int)number;
    }

    /// <summary>True or false, with what it is when left out.</summary>
    public bool Truth(string key, bool otherwise) =>
        Find(key) is { } value ? value.Truth() : otherwise;

    /// <summary>Faults every key but these: they belong to another kind.</summary>
    /// <param name="kind">The kind in words: "top.kind head".</param>
    /// <param name="keys">Keys that go with it.</param>
    public void Only(string kind, params ReadOnlySpan<string> keys)
    {
        foreach (var member in members.Members)
        {
            if (member.Value is not CaseNull && !keys.Contains(member.Key))
            {
                Value.Faults.Add(
                    member.Line,
                    member.Column,
                    $"'{CaseText.Shown(member.Key)}' does not go with {kind}",
                    $"keys among {string.Join(", ", keys!)}"
                );
            }
        }
    }
}
