using System.Threading.RateLimiting;

namespace Litterfall.Web.Library;

/// <summary>
/// How much may be brought to the bench in an hour, from all devices together: what comes in is kept.
/// </summary>
public sealed class UploadAllowance : IDisposable
{
    /// <summary>Bytes at once, and as many again in an hour: twenty of the largest files.</summary>
    public const int MostBytes = 20 * BenchLibrary.LargestFile;

    private const int Unit = 1024;
    private const int Seconds = 3600;

    private readonly TokenBucketRateLimiter bucket = new(
        new()
        {
            TokenLimit = MostBytes / Unit,
            TokensPerPeriod = MostBytes / Unit / Seconds,
            ReplenishmentPeriod = TimeSpan.FromSeconds(1),
        }
    );

    /// <summary>Takes a file into account; one sentence where it is too much for now.</summary>
    /// <param name="bytes">Its size.</param>
    public string? Refusal(long bytes)
    {
        var units = (int)Math.Min((bytes / Unit) + 1, MostBytes / Unit);
        using var lease = bucket.AttemptAcquire(units);
        return lease.IsAcquired
            ? null
            : "Too much was brought to the bench within an hour; wait some minutes and try again.";
    }

    /// <inheritdoc/>
    public void Dispose() => bucket.Dispose();
}
