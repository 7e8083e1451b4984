using Litterfall.Domain.Figures;
using Litterfall.Domain.Units;
using Litterfall.Quantities.Cutting;

namespace Litterfall.Forecasting.Life;

/// <summary>When a planted box has grown in and cured, before anybody asks for its crew.</summary>
public static class GrowIn
{
    /// <summary>No animals earlier.</summary>
    public static readonly Figure EarliestAnimals = Figure.Given(
        "earliest animals after planting",
        Unit.Day.ToSiValue(28),
        Unit.Day,
        Citation.Habit("at least 4 weeks of grow-in before animals")
    );

    /// <summary>28 days after planting, or later while foam and silicone still cure.</summary>
    /// <param name="sealants">What cures.</param>
    /// <param name="planting">Day of planting.</param>
    public static DateOnly Ends(Sealants? sealants, DateOnly planting)
    {
        var grown = planting.AddDays(WholeDays(EarliestAnimals));
        if (sealants is not { CureBeforePlanting: { } before, CureBeforeAnimals: { } all })
        {
            return grown;
        }

        var cured = planting.AddDays(WholeDays(all) - WholeDays(before));
        return cured > grown ? cured : grown;
    }

    /// <summary>A time in whole days, rounded up.</summary>
    /// <param name="span">The time.</param>
    public static int WholeDays(Figure span) => (int)Math.Ceiling((span.Si / Unit.Day.ToSi) - 1e-9);
}
