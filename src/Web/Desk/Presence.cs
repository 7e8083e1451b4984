using Microsoft.AspNetCore.Components.Server.Circuits;

namespace Litterfall.Web.Desk;

/// <summary>Tells the pages of a browser that its line is down, and that it is back.</summary>
public sealed class Presence : CircuitHandler
{
    /// <summary>The line is down.</summary>
    public event EventHandler? Away;

    /// <summary>The line is there, or there again.</summary>
    public event EventHandler? Back;

    /// <inheritdoc/>
    public override Task OnConnectionDownAsync(Circuit circuit, CancellationToken cancellationToken)
    {
        Away?.Invoke(this, EventArgs.Empty);
        return Task.CompletedTask;
    }

    /// <inheritdoc/>
    public override Task OnConnectionUpAsync(Circuit circuit, CancellationToken cancellationToken)
    {
        Back?.Invoke(this, EventArgs.Empty);
        return Task.CompletedTask;
    }
}
