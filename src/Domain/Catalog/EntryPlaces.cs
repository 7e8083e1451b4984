using System.Collections.Immutable;
using Litterfall.Domain.Faults;
using Litterfall.Domain.Trees;

namespace Litterfall.Domain.Catalog;

/// <summary>Where an own entry and its values stand, for faults found when it meets the library.</summary>
/// <param name="File">Its file.</param>
/// <param name="Entry">Place of the entry.</param>
/// <param name="Values">Places of its values by name.</param>
internal sealed record EntryPlaces(string File, TextSpan Entry, ImmutableDictionary<string, TextSpan> Values)
{
    /// <summary>A fault at a value, or at the entry where it has none of that name.</summary>
    /// <param name="value">Name of the value; null for the entry.</param>
    /// <param name="message">What is wrong.</param>
    /// <param name="expected">What was expected.</param>
    public TextFault Fault(string? value, string message, string expected)
    {
        var at = value is not null && Values.TryGetValue(value, out var found) ? found : Entry;
        return new TextFault(File, at.Line, at.Column, message, expected);
    }
}
