using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Running.Rounds;
using Litterfall.Running.Service;
using Litterfall.Web.Tanks.Loggers;

namespace Litterfall.Web.Tanks.Rounds;

/// <summary>What logs and loggers found of late.</summary>
public sealed class RoundFindings(RoomEvents events)
{
    /// <summary>All findings, those of tanks that are gone too.</summary>
    /// <param name="view">The tanks.</param>
    /// <param name="cancel">Ends the reading.</param>
    public async Task<ImmutableArray<RoundFinding>> FindAsync(TankView view, CancellationToken cancel) =>
        [
            .. (await events.FindAsync(view, RoundPractice.DaysOfFindings, cancel)).Select(e => new RoundFinding(
                e.Worst,
                DateOnly.FromDateTime(e.To),
                LoggerWords.Of(e)
            )),
            .. view.Running.SelectMany(t => Counts(view, t.Code)),
        ];

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
                    $"its log lets {CareTelling.Count(c.Missing, view.NameOf(c.Species))} more go than came in; "
                        + $"enter the missing arrival"
                )
            ));
}
