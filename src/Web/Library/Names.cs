namespace Litterfall.Web.Library;

/// <summary>Names of living things as people say them.</summary>
public static class Names
{
    /// <summary>"Ranitomeya imitator (mimic frog)" as "Mimic frog (Ranitomeya imitator)".</summary>
    /// <param name="name">As the library has it.</param>
    public static string CommonFirst(string name)
    {
        var at = name.IndexOf(" (", StringComparison.Ordinal);
        if (at <= 0 || !name.EndsWith(')'))
        {
            return name;
        }

        var common = name[(at + 2)..^1];
        return common.Length == 0 ? name : $"{char.ToUpperInvariant(common[0])}{common[1..]} ({name[..at]})";
    }

    /// <summary>The name in brackets, where there is one.</summary>
    /// <param name="name">As the library has it.</param>
    public static string Common(string name) =>
        name.IndexOf('(', StringComparison.Ordinal) is > 0 and var at ? name[(at + 1)..].TrimEnd(')') : name;
}
