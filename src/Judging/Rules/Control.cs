namespace Litterfall.Judging.Rules;

/// <summary>Where a finding ends: the key whose control resolves it, and the part it speaks of.</summary>
/// <param name="Key">Path of the key, whether it is written yet or not, such as "lid.latched".</param>
/// <param name="About">
/// The part the sentence speaks of, such as "plants[2]", where that is another than the one of the key; else
/// empty.
/// </param>
public readonly record struct Control(string Key, string About = "")
{
    /// <summary>The key of a part that the finding speaks of.</summary>
    /// <param name="key">Path of the key.</param>
    public static implicit operator Control(string key) => new(key);
}
