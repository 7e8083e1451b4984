using Litterfall.Store;
using Microsoft.AspNetCore.Components;
using Microsoft.Extensions.Logging;

namespace Litterfall.Web.Parts;

/// <summary>
/// Around a page and each of its cards: what fails is told in its place, and the rest goes on.
/// </summary>
public sealed partial class Guard
{
    /// <summary>Where the whole fault is written.</summary>
    [Inject]
    public required ILogger<Guard> Log { get; set; }

    /// <summary>What is guarded, as in "The drawing".</summary>
    [Parameter]
    public string What { get; set; } = "This page";

    /// <inheritdoc/>
    protected override Task OnErrorAsync(Exception exception)
    {
        Failed(Log, What, exception);
        return Task.CompletedTask;
    }

    private string Words(Exception fault) =>
        StoreTrouble.Words(fault) is { } words
            ? $"{What} cannot be shown now: {words}."
            : $"{What} failed: a mistake of our program. Everything saved is safe, and the rest of the bench "
                + "goes on.";

    [LoggerMessage(Level = LogLevel.Error, Message = "{What} failed")]
    private static partial void Failed(ILogger log, string what, Exception fault);
}
