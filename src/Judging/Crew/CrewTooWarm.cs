using System.Globalization;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Domain.Findings;
using Litterfall.Forecasting;
using Litterfall.Forecasting.Climate;
using Litterfall.Judging.Rules;

namespace Litterfall.Judging.Crew;

/// <summary>The crew does not breed at the warmest hour.</summary>
internal static class CrewTooWarm
{
    public static readonly Rule Rule = new(
        "crew-too-warm",
        Protects.Build,
        "the warmest hour of the room passes the temperature up to which a crew animal breeds (caution), or "
            + "from which it lays fewer eggs",
        Judge
    )
    {
        Needs = Stage.Shape,
    };

    private static IEnumerable<Finding> Judge(DesignNumbers n)
    {
        if (RoomHours.WarmestInside(n.Design) is not { } day)
        {
            yield break;
        }

        foreach (var crew in Crews.Of(n))
        {
            var stops = crew.Species.BreedingEndsAt;
            bool isStopped = stops is not null && day.Warmest.Si >= stops.Si - 1e-9;
            var limit = isStopped ? stops : crew.Species.BreedsLessFrom;
            if (limit is null || day.Warmest.Si < limit.Si - 1e-9)
            {
                continue;
            }

            yield return Rule.Found(
                isStopped ? Severity.Caution : Severity.Note,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"The warmest hour {day.Name} reaches {day.Warmest.Value:0.#} °C; {crew.Species.Name} "
                        + $"{Verb(crew.Species, isStopped)} {limit.Value:0.#} °C."
                ),
                (day.Warmest, limit),
                "Cool the room, or take a crew animal of warmer places.",
                $"{crew.Path}.animal"
            );
        }
    }

    /// <summary>"breeds only from 17.5 to", "stops breeding at" or "lays fewer eggs from".</summary>
    private static string Verb(CrewEntry crew, bool isStopped) =>
        !isStopped ? "lays fewer eggs from"
        : crew is { BreedsTo: not null, BreedsFrom: { } from }
            ? string.Create(CultureInfo.InvariantCulture, $"breeds only from {from.Value:0.#} to")
        : "stops breeding at";
}
