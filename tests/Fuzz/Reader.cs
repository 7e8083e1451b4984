using System.Collections.Immutable;

namespace Litterfall.FuzzTests;

/// <summary>A reader of the house under damage.</summary>
/// <param name="Name">Its name, and that of its folder of the corpus.</param>
/// <param name="Seeds">Good texts to begin with.</param>
/// <param name="Trouble">Reads a text; what is wrong with how it was read, or null.</param>
internal sealed record Reader(string Name, ImmutableArray<byte[]> Seeds, Func<byte[], string?> Trouble)
{
    /// <summary>Share of all inputs it takes.</summary>
    public double Share { get; init; } = 1;

    /// <summary>Reads a text; what is wrong, an exception included, or null.</summary>
    /// <param name="input">The text.</param>
    public string? Try(byte[] input)
    {
        try
        {
            return Trouble(input);
        }
        catch (Exception e)
        {
            return $"{e.GetType().Name}: {e.Message}\n{e.StackTrace}";
        }
    }
}
