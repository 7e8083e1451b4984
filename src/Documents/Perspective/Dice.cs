namespace Litterfall.Documents.Perspective;

/// <summary>Chance that falls the same way for the same words: a picture of a design never changes.</summary>
internal sealed class Dice
{
    private ulong state;

    /// <summary>Dice of a thing.</summary>
    /// <param name="words">Its key, such as "plants[0] 1".</param>
    public Dice(string words)
    {
        state = 14695981039346656037;
        foreach (var sign in words)
        {
            state = (state ^ sign) * 1099511628211;
        }
    }

    /// <summary>From 0 to below 1.</summary>
    public float Next()
    {
        // SplitMix64 (Steele, Lea & Flood 2014).
        state += 0x9E3779B97F4A7C15;
        var z = (state ^ (state >> 30)) * 0xBF58476D1CE4E5B9;
        z = (z ^ (z >> 27)) * 0x94D049BB133111EB;
        return ((z ^ (z >> 31)) >> 40) / (float)(1 << 24);
    }

    /// <summary>Between two values.</summary>
    public float Between(float low, float high) => low + ((high - low) * Next());

    /// <summary>Around 1, by a share.</summary>
    public float About(float share) => Between(1 - share, 1 + share);
}
