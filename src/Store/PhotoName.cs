namespace Litterfall.Store;

/// <summary>Names under which pictures are kept among the files of the bench.</summary>
public static class PhotoName
{
    private const string Begin = "photo-";
    private const string End = ".jpg";

    /// <summary>A name that no picture has.</summary>
    public static string New() => $"{Begin}{Guid.NewGuid():N}{End}";

    /// <summary>True for the name of a picture.</summary>
    /// <param name="name">A name.</param>
    public static bool Is(string name) =>
        name.Length == Begin.Length + 32 + End.Length
        && name.StartsWith(Begin, StringComparison.Ordinal)
        && name.EndsWith(End, StringComparison.Ordinal)
        && name[Begin.Length..^End.Length].All(char.IsAsciiHexDigitLower);
}
