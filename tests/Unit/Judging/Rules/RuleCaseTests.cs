using System.Collections.Immutable;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Domain.Units;
using Litterfall.Forecasting.Climate;
using Litterfall.Forecasting.Coefficients;
using Litterfall.Forecasting.Floor;
using Litterfall.Forecasting.Water;
using Litterfall.Judging;
using Litterfall.UnitTests.House;
using Litterfall.UnitTests.Quantities.Packs;
using Litterfall.UnitTests.Quantities.Sizing;

namespace Litterfall.UnitTests.Judging.Rules;

/// <summary>Every rule on each side of its limit, the two sides differing in one value only.</summary>
public sealed class RuleCaseTests
{
    // Rules whose one value no design file holds: a mesh, prices, a lamp's file, a result of the engine.
    private static readonly string[] Elsewhere =
    [
        "barrier-too-open",
        "lamp-file-odd",
        "price-missing",
        "room-log-odd",
        "water-ledger-open",
    ];

    public static TheoryData<RuleCase> Cases => [.. RuleCase.All];

    [Fact]
    public void Every_rule_has_its_case() =>
        Assert.Equal(
            RuleBook.All.Select(rule => rule.Slug).Order(StringComparer.Ordinal),
            RuleCase.All.Select(one => one.Rule).Concat(Elsewhere).Order(StringComparer.Ordinal)
        );

    [Theory]
    [MemberData(nameof(Cases))]
    public void It_trips_on_one_side_and_not_on_the_other(RuleCase one)
    {
        var (trips, inside) = (one.With(one.Trips), one.With(one.Inside));
        Assert.Single(RuleCase.Differences(trips, inside));
        RuleCheck.Check(one.Rule, one.Severity, Posed.Text(trips), Posed.Text(inside));
    }

    [Theory]
    [InlineData("a: 1\nb: { c: [x, y] }", "a: 1\nb: { c: [x, z] }", 1)]
    [InlineData("a: 1\nb: { c: [x, y] }", "a: 2\nb: { c: [x, z] }", 2)]
    [InlineData("a: 1\nb: { c: [x, y] }", "a: 1", 1)]
    [InlineData("a: 1\nb: { c: [x, y] }", "a: 1\nb: { c: [x] }", 2)]
    [InlineData("a: 1", "a: 1", 0)]
    public void Differences_are_counted_value_by_value(string one, string other, int count) =>
        Assert.Equal(count, RuleCase.Differences(one, other).Count());

    [Fact]
    public void Prices_are_missing_where_none_is_known()
    {
        var packs = SampleFiles.Catalog.PacksOf("ready-rainforest");
        Assert.NotEmpty(packs);
        var prices = packs.ToImmutableDictionary(
            pack => pack.Key,
            pack => new PackPrice(pack.Key, [new PriceBreak(1, 9.5m)], "posed")
        );
        var workshop = new Litterfall.Domain.Catalog.Workshop { Name = "own", Currency = "EUR" };
        RuleCheck.Check(
            "price-missing",
            Severity.Note,
            RuleCheck.PoseFor(workshop, RuleCheck.Floor),
            RuleCheck.PoseFor(workshop with { Prices = prices }, RuleCheck.Floor)
        );
        // Who names no workshop has not asked for prices.
        Assert.Null(RuleCheck.Pose("").Finding("price-missing"));
    }

    /// <summary>
    /// An even 100 cd over the lower half of a sphere is 2π × 100 = 628 lm: more than lamps of 500 lm send,
    /// less than lamps of 700.
    /// </summary>
    [Fact]
    public void A_lamp_file_is_odd_where_more_comes_out_than_its_lamps_send() =>
        RuleCheck.Check("lamp-file-odd", Severity.Note, WithLampsOf(500), WithLampsOf(700));

    /// <summary>A gram for each square meter of floor and year is the most.</summary>
    [Fact]
    public void A_water_balance_that_misses_a_gram_a_square_meter_stops()
    {
        var design = RuleCheck.Pose("room: { temperature: 22 C, humidity: 50 % }");
        var most = design.Numbers.Box.OpenFloor.Si;
        var finding = RuleCheck.Told(Severity.Stop, Missing(1.01 * most).SingleOrDefault());
        Assert.Equal(1.01 * most, finding.Measured!.Value, 1e-9);
        Assert.Empty(Missing(0.99 * most));

        ImmutableArray<Finding> Missing(double grams) =>
            design.FindingsOf("water-ledger-open", water =>
                water with
                {
                    LedgerError = Figure.Given(
                        "posed",
                        Unit.Gram.ToSiValue(grams),
                        Unit.Gram,
                        Citation.OwnDerivation
                    ),
                }
            );
    }

    /// <summary>
    /// A stop that rests on a recalled value or on habit alone is a caution, unless it protects life.
    /// </summary>
    [Theory]
    [InlineData(Protects.Build, Provenance.Recalled, Severity.Caution)]
    [InlineData(Protects.Build, Provenance.CommonPractice, Severity.Caution)]
    [InlineData(Protects.Build, Provenance.Read, Severity.Stop)]
    [InlineData(Protects.Animal, Provenance.Recalled, Severity.Stop)]
    [InlineData(Protects.Person, Provenance.CommonPractice, Severity.Stop)]
    public void A_stop_that_rests_on_habit_alone_is_lowered(Protects whom, Provenance trust, Severity shown)
    {
        var limit = Figure.Given("limit", 1, Unit.One, new Citation("posed", "posed", trust));
        var stop = new Finding("posed", Severity.Stop, whom, "Too much.", limit, limit, "Take less.");
        Assert.Equal(shown, RuleBook.Held(stop).Severity);
        Assert.Equal(Severity.Note, RuleBook.Held(stop with { Severity = Severity.Note }).Severity);
    }

    /// <summary>
    /// The miss of the books says nothing about nature, so that no recalled coefficient lowers its stop.
    /// </summary>
    [Fact]
    public void What_the_books_miss_rests_on_no_recalled_value()
    {
        var water = Posed.Sample("samples/ld-201-flat.viv.yaml").Numbers.Water;
        Assert.Contains(water.LevelAfterMonth!.Inputs, input => input.Trust.IsWeak());
        Assert.False(water.LedgerError!.Trust.IsWeak());
        Assert.InRange(water.LedgerError.Value, 0, 0.05);
    }

    private static PosedDesign WithLampsOf(int lumens) =>
        LightRuleTests.WithFile(
            FormattableString.Invariant(
                $"IESNA91\nTILT=NONE\n1 {lumens} 1 2 1 1 2 0 0 0\n1 1 18\n0 90\n0\n100 100\n"
            )
        );
}
