using System.Globalization;
using Litterfall.Domain.Dispatch;
using Litterfall.Domain.Figures;
using Litterfall.Web.Library;
using Litterfall.Web.Shipping.Parts;
using Microsoft.AspNetCore.Components;

namespace Litterfall.Web.Shipping.Parcels;

/// <summary>The verdict of a day: reasons with their cures, rules side by side, the journey.</summary>
public sealed partial class DayPart : ComponentBase
{
    private JourneyPicture? picture;

    /// <summary>The day.</summary>
    [Parameter, EditorRequired]
    public required DayVerdict Day { get; set; }

    /// <summary>The week it is of.</summary>
    [Parameter, EditorRequired]
    public required WeekVerdict Week { get; set; }

    /// <summary>The reader's units.</summary>
    [Parameter, EditorRequired]
    public required UnitPreferences Units { get; set; }

    /// <summary>What is known of dispatch.</summary>
    [Parameter, EditorRequired]
    public required DispatchView View { get; set; }

    /// <inheritdoc/>
    protected override void OnParametersSet() =>
        picture = Day.Choice is { Hours.Count: > 1 } choice
            ? new(
                choice,
                Week is { BandLowCelsius: { } low, BandHighCelsius: { } high } ? (low, high) : null,
                Units
            )
            : null;

    private string ChoiceWords(PackChoice choice)
    {
        var carton = View.Rules.Cartons.FirstOrDefault(c => c.Key == choice.Carton)?.Name ?? choice.Carton;
        var packs = choice.Packs.Select(p =>
        {
            var pack = View.Rules.Packs.FirstOrDefault(k => k.Key == p.Pack);
            var state =
                pack is null or { Kind: PackKind.Heat } ? ""
                : p.LiquidShare >= 1 ? ", melted"
                : p.LiquidShare <= 0 ? ", frozen"
                : ", half melted";
            return $"{p.Count} × {pack?.Name ?? p.Pack}{state}";
        });
        var with = choice.Packs.Count > 0 ? $" with {string.Join(" and ", packs)}" : " without packs";
        var leaving = ShipWords.Odds(choice.OutShare, choice.Journeys);
        return string.Create(
                CultureInfo.InvariantCulture,
                $"{carton}{with}, handed over at {Hour(choice.HandOverHour)}: {leaving} leave the band"
            )
            + (
                choice.LethalShare > 0
                    ? $", {ShipWords.Odds(choice.LethalShare, choice.Journeys)} pass the absolute limit."
                    : "."
            );
    }

    private static string RuleWords(RuleVerdict rule)
    {
        var word = ShipWords.Word(rule.Verdict);
        return rule.Words.Length == 0 || rule.Words == word ? word
            : rule.Words == "not looked at" ? rule.Words
            : $"{word}: {rule.Words}";
    }

    private static string Hour(double hour) =>
        string.Create(CultureInfo.InvariantCulture, $"{(int)hour}:{(int)Math.Round(60 * (hour % 1)):00}");

    private static string SourceOf(ShipReason reason) =>
        reason.SourcePlace.Length > 0 ? $"Source: {reason.SourcePlace} ({reason.Provenance.Spoken()})." : "";
}
