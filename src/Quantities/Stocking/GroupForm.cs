using System.Globalization;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Quantities.Sizing;

namespace Litterfall.Quantities.Stocking;

/// <summary>Species that are kept only as a pair, a trio, or one male with females.</summary>
internal static class GroupForm
{
    private static readonly Citation Recalled = new(
        "keeper-practice",
        "recalled: group of each species",
        Provenance.Recalled
    );

    public static readonly StockingRule Rule = new(
        "group",
        "Group rule",
        "How the species is kept: as a pair, a trio, one male with females, or in a group.",
        Recalled,
        Judge
    )
    {
        IsGroupRule = true,
    };

    private static StockingVerdict Judge(StockedSpecies species, BoxGeometry box)
    {
        var entry = species.Species;
        if (entry.LargestGroup is not { } most || entry.GroupForm?.Text is not { } form)
        {
            return StockingVerdict.Not(
                entry.Group?.Text is { } group
                    ? $"kept as: {group}; no number is given"
                    : "the library does not say how it is kept"
            );
        }

        var wrong = WrongSexes(form, species);
        return new StockingVerdict
        {
            Allowed = Allowed(form, species, most),
            Remark = wrong ?? "",
            Text = string.Create(
                CultureInfo.InvariantCulture,
                $"Kept as: {entry.Group?.Text ?? form}; {Counts(form, most)} in one box, however large."
            ),
            Citation = most.Origin,
            IsWronglyMade = wrong is not null,
        };
    }

    /// <summary>A trio that may also live singly is never a pair: two males or two rivals fight.</summary>
    private static Figure Allowed(string form, StockedSpecies species, Figure most) =>
        form == "single or trio" && species.Asked.Si < most.Si
            ? Figure
                .Computed(
                    "1, because less than a trio is kept singly",
                    1,
                    Dimension.None,
                    species.Asked,
                    most
                )
                .As("allowed by the group rule", Unit.One, most.Origin)
            : (most * Figure.Number(1)).As("allowed by the group rule", Unit.One, most.Origin);

    private static string Counts(string form, Figure most) =>
        form == "single or trio"
            ? string.Create(CultureInfo.InvariantCulture, $"1 or {most.Value:0}")
            : string.Create(CultureInfo.InvariantCulture, $"at most {most.Value:0}");

    private static string? WrongSexes(string form, StockedSpecies species) =>
        species.Males > 1 ? "more than one male"
        : form == "pair" && species.Females > 1 ? "more than one female"
        : form is "pair or trio" or "single or trio" && species.Females > 2 ? "more than two females"
        : null;
}
