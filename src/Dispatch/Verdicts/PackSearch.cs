using System.Collections.Immutable;
using Litterfall.Dispatch.Bands;
using Litterfall.Dispatch.Routes;

namespace Litterfall.Dispatch.Verdicts;

/// <summary>A way of packing with what its journeys came to.</summary>
/// <param name="Way">The way.</param>
/// <param name="Odds">Shares of its journeys.</param>
internal sealed record TriedWay(WayOfPacking Way, JourneyOdds Odds);

/// <summary>
/// The way of packing with the least risk, and among those of like risk the lightest: all are tried on a few
/// journeys, the best on all.
/// </summary>
internal sealed class PackSearch
{
    /// <summary>Journeys of the first look.</summary>
    public const int FewJourneys = 40;

    /// <summary>Where all of the first journeys miss the band by far, the others will not save it.</summary>
    private const int FirstJourneys = 6;

    private const double FarKelvin = 2;

    /// <summary>So much above the allowed risk on the first look is no bad luck of 40 journeys.</summary>
    private const double HopelessShare = 0.2;

    private const int MostConfirmed = 6;
    private const int MostTried = 18;

    /// <summary>Steps of the allowed risk that count as alike.</summary>
    private const double RiskSteps = 4;

    private readonly ImmutableArray<Journey> few;
    private readonly ImmutableArray<Journey> all;
    private readonly TransportBand limits;
    private readonly double risk;

    /// <summary>Makes one.</summary>
    /// <param name="few">Journeys of the first look.</param>
    /// <param name="all">All journeys.</param>
    /// <param name="limits">What is to be kept.</param>
    /// <param name="risk">Share of the journeys that may leave the band, 0 to 1.</param>
    public PackSearch(
        ImmutableArray<Journey> few,
        ImmutableArray<Journey> all,
        TransportBand limits,
        double risk
    ) => (this.few, this.all, this.limits, this.risk) = (few, all, limits, risk);

    /// <summary>Journeys that count.</summary>
    public ImmutableArray<Journey> All => all;

    /// <summary>True where packs keep the band within the risk, the absolute limits far more so.</summary>
    public bool Keeps(JourneyOdds odds) => odds.Out <= risk && IsAlive(odds);

    /// <summary>True where it may go without packs: <see cref="PackLimits.PlainHoldShare"/>.</summary>
    public bool Bears(JourneyOdds odds) => odds.Hold <= PackLimits.PlainHoldShare && IsAlive(odds);

    /// <summary>True where the absolute limits are kept.</summary>
    public bool IsAlive(JourneyOdds odds) => odds.Lethal <= risk * PackLimits.LethalRisk;

    /// <summary>Odds of one way on all journeys.</summary>
    public TriedWay Try(WayOfPacking way) => new(way, JourneyOdds.Count(way.Parcel, all, limits));

    /// <summary>The best way of some; null where none is allowed.</summary>
    /// <param name="ways">Ways to try.</param>
    /// <param name="fits">Whether all of it finds room in the carton.</param>
    /// <param name="cancel">Stops the search.</param>
    public TriedWay? Best(
        IEnumerable<WayOfPacking> ways,
        Func<WayOfPacking, bool> fits,
        CancellationToken cancel
    )
    {
        var looked = new List<TriedWay>();
        foreach (var way in ways)
        {
            cancel.ThrowIfCancellationRequested();
            var odds = Look(way);
            // A heat pack that could push it over the band is no way at all.
            if (!way.HasHeat || odds.Warm <= 0)
            {
                looked.Add(new(way, odds));
            }
        }

        TriedWay? best = null;
        var confirmed = 0;
        foreach (var (way, first) in looked.OrderBy(t => Rank(t)))
        {
            if (best is not null && first.Out > risk + HopelessShare)
            {
                break;
            }

            if (!fits(way))
            {
                continue;
            }

            var tried = Try(way);
            if (way.HasHeat && tried.Odds.Warm > 0)
            {
                continue;
            }

            best = best is null || Rank(tried).CompareTo(Rank(best)) < 0 ? tried : best;
            confirmed++;
            var isGood = Keeps(best.Odds);
            if (confirmed >= (isGood ? MostConfirmed : MostTried) || (isGood && Step(tried.Odds) <= 0))
            {
                break;
            }
        }

        return best;
    }

    private JourneyOdds Look(WayOfPacking way)
    {
        var first = JourneyOdds.Count(way.Parcel, few[..Math.Min(FirstJourneys, few.Length)], limits);
        return first.Out >= 1 && first.MeanMissKelvin > FarKelvin
            ? first
            : JourneyOdds.Count(way.Parcel, few, limits);
    }

    private double Step(JourneyOdds odds) => risk > 0 ? Math.Floor(odds.Out / risk * RiskSteps) : odds.Out;

    private (bool IsLethal, double Step, double Miss, double Kilograms, int Packs) Rank(TriedWay way) =>
        (
            !IsAlive(way.Odds),
            Step(way.Odds),
            Keeps(way.Odds) ? 0 : Math.Round(way.Odds.MeanMissKelvin, 2),
            Math.Round(way.Way.Kilograms, 3),
            // Of two that weigh the same, the one with fewer pieces to lay in.
            way.Way.Uses.Sum(u => u.Count)
        );
}
