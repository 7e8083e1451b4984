using Litterfall.Dispatch.Losses;
using Litterfall.Domain.Dispatch;
using Litterfall.UnitTests.Dispatch.Evidence;
using Litterfall.UnitTests.Dispatch.Packing;

namespace Litterfall.UnitTests.Dispatch.Losses;

public sealed class ClaimCheckTests
{
    private static readonly DateTime Delivered = new(2026, 11, 25, 10, 0, 0, DateTimeKind.Utc);

    private static ClaimCase Case(Claim? claim = null) =>
        new()
        {
            Claim = claim ?? Whole,
            Rules = PackingExamples.Rules,
            Carrier = PackingExamples.Carrier,
            Day = ClearedTextTests.Facts().Day,
            Evidence = [.. EvidenceExamples.Chain()],
            PlannedUntil = Delivered.AddHours(2),
            Now = Delivered.AddHours(6),
        };

    private static Claim Whole =>
        new()
        {
            Parcel = 12,
            DeliveredAt = Delivered,
            SaidAt = Delivered.AddHours(1),
            PhotoAt = Delivered.AddHours(1),
            WasMet = true,
            Species = "dendrobates-auratus",
            Dead = 1,
        };

    private static ClaimState State(ClaimCase asked, string key) =>
        ClaimCheck.List(asked).Lines.Single(l => l.Key == key).State;

    [Fact]
    public void A_claim_that_meets_all_terms_is_still_decided_by_a_person()
    {
        var view = ClaimCheck.List(Case());
        Assert.DoesNotContain(view.Lines, l => l.State is ClaimState.NotMet or ClaimState.Unknown);
        Assert.Contains("you decide", view.Words, StringComparison.Ordinal);
        // Said on 25 November, three days to answer.
        Assert.Equal(new DateOnly(2026, 11, 28), view.AnswerBy);
        Assert.Equal(Delivered.AddHours(24), view.PhotosUntil);
        Assert.False(view.IsOverdue);
        Assert.True(ClaimCheck.List(Case() with { Now = Delivered.AddDays(4) }).IsOverdue);
    }

    [Theory]
    [InlineData(24, ClaimState.Met)]
    [InlineData(24.01, ClaimState.NotMet)]
    [InlineData(-1, ClaimState.Unknown)]
    public void The_photo_comes_in_time_or_not(double hours, ClaimState state) =>
        Assert.Equal(state, State(Case(Whole with { PhotoAt = Delivered.AddHours(hours) }), "photo"));

    [Fact]
    public void What_nobody_knows_is_asked_for_and_never_guessed()
    {
        var view = ClaimCheck.List(Case(new() { Parcel = 12, SaidAt = Delivered }));
        Assert.Equal(4, view.Missing.Count);
        Assert.Contains("4 points are open", view.Words, StringComparison.Ordinal);
        Assert.Null(view.PhotosUntil);
        var none = Case(Whole with { PhotoAt = null });
        Assert.Equal(ClaimState.Unknown, State(none, "photo"));
        Assert.Equal(ClaimState.NotMet, State(none with { Now = Delivered.AddHours(25) }, "photo"));
    }

    [Theory]
    [InlineData(-6.0, 33.0, ClaimState.Met)]
    [InlineData(9.0, 33.0, ClaimState.NotMet)]
    [InlineData(-6.0, 10.0, ClaimState.NotMet)]
    [InlineData(null, null, ClaimState.Met)]
    public void The_frozen_forecast_stands_against_the_carriers_guarantee(
        double? from,
        double? to,
        ClaimState state
    )
    {
        // The frozen forecast has 8.25 to 11 °C.
        var terms = PackingExamples.Carrier with { GuaranteedFromCelsius = from, GuaranteedToCelsius = to };
        Assert.Equal(state, State(Case() with { Carrier = terms }, "temperatures"));
    }

    [Fact]
    public void A_late_carrier_and_thin_evidence_are_remarks_not_faults_of_the_customer()
    {
        var late = Case() with { PlannedUntil = Delivered.AddHours(-1.5) };
        Assert.Equal(ClaimState.Remark, State(late, "late"));
        Assert.Contains(
            "1.5 h late",
            ClaimCheck.List(late).Lines.Single(l => l.Key == "late").Text,
            StringComparison.Ordinal
        );
        var thin = Case() with { Evidence = [EvidenceExamples.Chain()[0]] };
        var line = ClaimCheck.List(thin).Lines.Single(l => l.Key == "evidence");
        Assert.Equal(ClaimState.Remark, line.State);
        Assert.Contains("a photo of the packing, the hand-over", line.Text, StringComparison.Ordinal);
        var chain = EvidenceExamples.Chain();
        var forged = Case() with { Evidence = [chain[0], chain[1] with { Note = "x" }, chain[2]] };
        Assert.Contains(
            "was changed",
            ClaimCheck.List(forged).Lines.Single(l => l.Key == "evidence").Text,
            StringComparison.Ordinal
        );
        Assert.Equal(ClaimState.Remark, State(Case() with { Day = null }, "temperatures"));
    }

    [Fact]
    public void Nobody_at_the_door_speaks_against_it()
    {
        var view = ClaimCheck.List(Case(Whole with { WasMet = false }));
        Assert.Contains("1 point speaks against it", view.Words, StringComparison.Ordinal);
        var done = ClaimCheck.List(
            Case(Whole with { Outcome = ClaimOutcome.Replaced, Why = "Box was wet." })
        );
        Assert.Equal("Decided: replaced. Box was wet.", done.Words);
    }
}
