using System.Globalization;
using Litterfall.Domain.Findings;
using Litterfall.Judging;
using Litterfall.Judging.Levers;
using Litterfall.UnitTests.Judging.Rules;
using Xunit;

namespace Litterfall.UnitTests.Judging.Levers;

/// <summary>
/// A lever told is a lever that works: its value typed into the design removes the finding.
/// </summary>
public sealed class LeverTests
{
    private const string Clay =
        "{ drainage: { material: expanded-clay-8-16, depth: 5 cm }, "
        + "soil: { recipe: standard-rainforest, depth: 7 cm } }";

    private const string Lid = "lid: { material: glass, thickness: 4 mm, gap: 2 mm }\n";
    private const string Weekend =
        "room: { temperature: 22 C, humidity: 45 %, weekend: { temperature: 14 C } }\n";

    [Fact]
    public void The_mist_and_the_vents_at_which_fog_is_gone_remove_it()
    {
        var result = LeverSearch.With(
            Fogged(20, "45").Whole,
            cancel: TestContext.Current.CancellationToken
        );
        var finding = Told("panes-fog", Severity.Note, result);
        var vents = Assert.Single(finding.Levers, l => l.Lever == "vents");
        var area = vents.To.Unit!.FromSi(vents.To.Si).ToString("0.##", CultureInfo.InvariantCulture);
        Assert.Null(Fogged(20, area).Finding("panes-fog"));

        // A fifth of the way back it still fogs: the nearest value was found, not any.
        var back = 45 + (0.8 * (vents.To.Unit.FromSi(vents.To.Si) - 45));
        Assert.NotNull(Fogged(20, back.ToString("0.#", CultureInfo.InvariantCulture)).Finding("panes-fog"));
    }

    /// <summary>A wet floor held at 2 air changes: only mist counts, and vents are no lever.</summary>
    [Fact]
    public void Held_air_leaves_the_mist_as_the_only_lever()
    {
        var result = LeverSearch.With(
            Posed
                .Run(
                    RuleCheck.Cube,
                    Clay,
                    Misting(60)
                        + "vents: [ { area: 60 cm2, height: 44 cm } ]\n"
                        + "room: { temperature: 21 C, humidity: 50 % }\n"
                        + "headspace: { hold: { air: 24 C, humidity: 92 %, airChanges: 2 } }\n"
                )
                .Whole,
            cancel: TestContext.Current.CancellationToken
        );
        var finding = Told("water-at-barrier", Severity.Caution, result);
        var lever = Assert.Single(finding.Levers);
        Assert.Equal("misting", lever.Lever);
        Assert.True(lever.To.Si < lever.From.Si);
    }

    /// <summary>Where the card says the level stays, a check of that design gains next to nothing.</summary>
    [Fact]
    public void The_settings_card_balances_the_floor()
    {
        var result = Fogged(20, "60");
        var card = SettingsCard.Of(result.Numbers)!;
        var setting = card.Settings[0];
        Assert.True(setting.IsBalanced);
        Assert.True(setting.MistSeconds[0] < 20);
        var changed = Fogged((int)setting.MistSeconds[0], "60");
        var climate = changed.Numbers.Climate!.Computed!.Days;
        Assert.InRange(climate.Vented / climate.Misted, 0.8, 1.2);
    }

    [Fact]
    public void Without_misting_there_is_no_card() =>
        Assert.Null(SettingsCard.Of(Posed.Run(RuleCheck.Cube, Clay, Lid + Weekend).Numbers));

    private static Finding Told(string slug, Severity severity, DesignResult result) =>
        RuleCheck.Told(severity, result.Findings.FirstOrDefault(f => f.Slug == slug));

    private static PosedDesign Fogged(int seconds, string squareCentimeters) =>
        Posed.Run(
            RuleCheck.Cube,
            Clay,
            Lid
                + Weekend
                + Misting(seconds)
                + $"vents: [ {{ area: {squareCentimeters} cm2, height: 44 cm, mesh: steel-gauze-0.5 }} ]\n"
        );

    private static string Misting(int seconds) =>
        FormattableString.Invariant(
            $"misting: {{ nozzles: 2, each: 90 mL/min, times: [ {{ at: \"08:00\", for: {seconds} s }}, "
        ) + FormattableString.Invariant($"{{ at: \"18:00\", for: {seconds} s }} ] }}\n");
}
