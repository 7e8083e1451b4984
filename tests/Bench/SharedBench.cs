using Litterfall.Store;

[assembly: AssemblyFixture(typeof(Litterfall.Tests.Bench.SharedBench))]

namespace Litterfall.Tests.Bench;

/// <summary>
/// One bench with the demo for all tests that only look or work on a design of their own. Such a design is a
/// copy of one of the demo, so that tests do not disturb each other.
/// </summary>
public sealed class SharedBench : IAsyncLifetime
{
    private RunningBench? running;

    /// <summary>Where it answers.</summary>
    public string Url => running!.Url;

    /// <inheritdoc/>
    public async ValueTask InitializeAsync()
    {
        running = await RunningBench.StartAsync(demo: true);
        await running.KeepAsDemoAsync();
    }

    /// <summary>A copy of a design of the demo; its page.</summary>
    /// <param name="name">Such as "LD-201 flat tenant".</param>
    public Task<string> CopyAsync(string name) => running!.CopyAsync(name);

    /// <inheritdoc/>
    public ValueTask DisposeAsync()
    {
        running?.Dispose();
        return ValueTask.CompletedTask;
    }
}
