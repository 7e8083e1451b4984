using System.Collections.Immutable;
using Litterfall.Domain.Cultures;

namespace Litterfall.Workshop.Cultures;

/// <summary>Cups that a need gets, and how many are missing.</summary>
/// <param name="Need">The need.</param>
/// <param name="Cups">Cultures that go out to it.</param>
/// <param name="Missing">Cups that are not there.</param>
public sealed record NeedCover(CultureNeed Need, ImmutableArray<Culture> Cups, int Missing);

/// <summary>
/// Which standing cups go to which need, by days. The fullest cups of each line are its backup and stay; so
/// the last one is never given away.
/// </summary>
public static class CultureCover
{
    /// <summary>Cups of each need.</summary>
    /// <param name="needs">Needs of crew animals.</param>
    /// <param name="curves">Cultures as the model leads them; those on hold or ended are left out.</param>
    /// <param name="madeFor">Order that a culture was started for; null for none.</param>
    /// <param name="today">Today.</param>
    public static ImmutableArray<NeedCover> Find(
        IEnumerable<CultureNeed> needs,
        IEnumerable<CultureCurve> curves,
        Func<Culture, int?> madeFor,
        DateOnly today
    )
    {
        var all = curves.Where(c => c.Culture.IsUsable).ToList();
        var kept = Backups(all, madeFor, today)
            .Select(c => c.Culture.Number)
            .ToHashSet(StringComparer.Ordinal);
        var free = all.Where(c => !kept.Contains(c.Culture.Number)).ToList();
        var covers = ImmutableArray.CreateBuilder<NeedCover>();
        foreach (var need in needs.OrderBy(n => n.Day).ThenBy(n => n.Order.Number))
        {
            var day = need.Day < today ? today : need.Day;
            // The cup that holds just enough goes first; a fuller one may serve a larger need.
            var taken = free.Where(c =>
                    c.Culture.Species == need.Species
                    && c.On(day).Animals >= need.Animals
                    && (madeFor(c.Culture) ?? need.Order.Number) == need.Order.Number
                )
                .OrderBy(c => madeFor(c.Culture) is null)
                .ThenBy(c => c.On(day).Animals)
                .ThenBy(c => c.Culture.Number, StringComparer.Ordinal)
                .Take(need.Cups)
                .ToList();
            free.RemoveAll(taken.Contains);
            covers.Add(new(need, [.. taken.Select(c => c.Culture)], need.Cups - taken.Count));
        }

        return covers.ToImmutable();
    }

    /// <summary>The fullest cups of each line, that stay.</summary>
    /// <param name="curves">Cultures as the model leads them.</param>
    /// <param name="madeFor">Order that a culture was started for; those are no backup.</param>
    /// <param name="today">Today.</param>
    public static IEnumerable<CultureCurve> Backups(
        IEnumerable<CultureCurve> curves,
        Func<Culture, int?> madeFor,
        DateOnly today
    ) =>
        curves
            .Where(c => c.Culture.IsUsable && madeFor(c.Culture) is null)
            .GroupBy(c => (c.Culture.Species, c.Culture.Line))
            .SelectMany(line =>
                line.OrderByDescending(c => c.On(today).Animals)
                    .ThenBy(c => c.Culture.Number, StringComparer.Ordinal)
                    .Take((int)CulturePractice.Backup.Si)
            );
}
