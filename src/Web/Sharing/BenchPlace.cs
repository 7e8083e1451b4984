using System.Collections.Immutable;

namespace Litterfall.Web.Sharing;

/// <summary>Where other machines reach the bench; told once it has started.</summary>
public sealed class BenchPlace
{
    /// <summary>Addresses such as "http://192.0.2.1:5080"; none where only this machine reaches it.</summary>
    public ImmutableArray<string> Urls { get; set; } = [];
}
