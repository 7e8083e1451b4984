using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Running.Rounds;
using Litterfall.Running.Service;

namespace Litterfall.Web.Tanks.Rounds;

/// <summary>
/// What logs and loggers found of late. A subject adds itself here: a function that returns its findings.
/// </summary>
public sealed class RoundFindings
{
    /// <summary>All findings, those of tanks that are gone too.</summary>
    /// <param name="view">The tanks.</param>
    /// <param name="cancel">Ends the reading.</param>
    public Task<ImmutableArray<RoundFinding>> FindAsync(TankView view, CancellationToken cancel) =>
        Task.FromResult<ImmutableArray<RoundFinding>>([.. view.Running.SelectMany(t => Counts(view, t.Code))]);

    /// <summary>Logs in which more animals went than came.</summary>
    private static IEnumerable<RoundFinding> Counts(TankView view, string tank) =>
        AnimalCounts
            .Find(view.Care[tank])
            .Where(c => c.Missing > 0)
            .Select(c => new RoundFinding(
                tank,
                view.Today,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"its log lets {c.Missing} more {view.NameOf(c.Species)} go than came in; "
                        + $"enter the missing arrival"
                )
            ));
}
