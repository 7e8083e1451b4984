using Litterfall.UnitTests.Judging;
using Litterfall.UnitTests.Judging.Rules;
using Xunit;

namespace Litterfall.UnitTests.Forecasting.Life;

/// <summary>
/// The day for animals against how much they eat. Own claim: whoever eats more waits no less.
/// </summary>
public sealed class AnimalsDayTests
{
    private const string Floor =
        "{ drainage: { material: expanded-clay-8-16, depth: 4 cm }, soil: { recipe: ready-rainforest, "
        + "depth: 7 cm }, litter: { material: oak-leaves, depth: 3 cm } }";
    private const string Lived =
        "room: { temperature: 22 C, humidity: 60 % }\n"
        + "lid: { material: glass, thickness: 4 mm, gap: 2 mm }\n"
        + "crew: [ { animal: folsomia-candida, count: 400 }, { animal: trichorhina-tomentosa, "
        + "count: 30 } ]\n";

    [Fact]
    public void More_animals_never_move_in_earlier()
    {
        double[] days =
        [
            .. new[] { 1, 2, 3, 5, 8, 13, 30 }.Select(count =>
                Day($"animals: [ {{ animal: ranitomeya-variabilis, count: {count} }} ]")
            ),
        ];
        Assert.Equal(days.Order(), days);
        Assert.True(days[^1] > days[0], "the animals never asked for more than the crew had");
    }

    /// <summary>
    /// The reasons name the month keepers wait, and the last of them is the day that is told.
    /// </summary>
    [Fact]
    public void The_day_says_what_sets_it()
    {
        var life = RuleCheck
            .Pose(Lived + "animals: [ { animal: ranitomeya-variabilis, count: 3 } ]", Floor)
            .Numbers.Life!;
        Assert.Contains(life.Because, reason =>
            reason.Words.Contains("keepers wait at least a month", StringComparison.Ordinal)
        );
        Assert.Equal(life.AnimalsFrom, life.Because.Max(reason => reason.Day));
    }

    private static double Day(string animals) =>
        RuleCheck.Pose(Lived + animals, Floor).Numbers.Life!.CrewReady?.Value ?? double.PositiveInfinity;
}
