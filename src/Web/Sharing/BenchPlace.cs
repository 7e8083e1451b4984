using System.Collections.Immutable;

namespace Litterfall.Web.Sharing;

/// <summary>Where other machines reach the bench; told once it has started.</summary>
public sealed class BenchPlace
{
    /// <summary>Addresses such as "http://192.0.2.1:5080"; none where only this machine reaches it.</summary>
    public ImmutableArray<string> Urls { get; set; } = [];

    /// <summary>True where other machines can reach it.</summary>
    public bool IsOpen { get; set; }

    /// <summary>
    /// Opens the bench to the network while it runs, or closes it again; false where the network does not let
    /// it. Null where its start has settled that.
    /// </summary>
    public Func<bool, Task<bool>>? Switch { get; set; }
}
