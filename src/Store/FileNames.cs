namespace Litterfall.Store;

/// <summary>Names that files come in with, made fit to be kept and handed out.</summary>
public static class FileNames
{
    /// <summary>Longest name that is taken, characters.</summary>
    public const int Most = 120;

    private const string Unfit = "<>:\"|?*/\\";

    /// <summary>The name without folders, and without characters that file systems do not take.</summary>
    /// <param name="name">As it came.</param>
    public static string Plain(string name)
    {
        var last = name.Replace('\\', '/').Split('/')[^1];
        var plain = string.Concat(last.Where(c => !char.IsControl(c) && !Unfit.Contains(c))).Trim(' ', '.');
        return plain.Length > 0 ? plain : "file";
    }

    /// <summary>The same, cut to the longest that is taken; its ending stays.</summary>
    /// <param name="name">As it came.</param>
    public static string Short(string name)
    {
        var plain = Plain(name);
        if (plain.Length <= Most)
        {
            return plain;
        }

        var end = Path.GetExtension(plain);
        end = end.Length <= 10 ? end : "";
        return plain[..(Most - end.Length)] + end;
    }
}
