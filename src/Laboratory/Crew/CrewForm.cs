using System.Collections.Immutable;
using Litterfall.Domain.Catalog;
using Litterfall.Domain.Catalog.Entries;
using Litterfall.Forecasting.Life;
using Litterfall.Domain.Trees;
using Litterfall.Physics.Crew;

namespace Litterfall.Laboratory.Crew;

/// <summary>Reads a case of <c>lab crew</c>.</summary>
public static class CrewForm
{
    private const int MostDays = 36_525;
    private static readonly NumberRange Temperature = new(-50.0, 60.0);
    private static readonly NumberRange Animals = NumberRange.UpTo(1e12);
    private static readonly NumberRange Share = NumberRange.UpTo(1.0);

    /// <summary>The checked case, or null and faults on the form.</summary>
    /// <param name="form">The form.</param>
    /// <param name="library">The library of animals.</param>
    public static CrewCase? Read(TreeForm form, TradeCatalog library)
    {
        var (species, table) = Animal(form, library);
        var (celsius, _) = form.NumberOrNumbers("temperatureC", Temperature, MostDays);
        double? damp = form.OptionalNumber("matricKpa", new NumberRange(-1e6, 0.0));
        var start = Start(form);
        int days = form.Whole("days", 1, MostDays);
        double? crowding = form.OptionalNumber("carryingCapacity", NumberRange.Positive(1e12));
        double removal = form.Number("removalPerDay", Share, 0.0);
        form.Close();
        if (form.IsGood && celsius.IsEmpty)
        {
            form.Refuse("temperatureC", "there is no temperature", "a number, or one for each day");
        }

        return form.IsGood
            ? new CrewCase(species, table, celsius, days)
            {
                Start = start,
                Kilopascals = damp,
                Crowding = crowding,
                Removal = removal,
            }
            : null;
    }

    private static (CrewSpecies?, LifeTable?) Animal(TreeForm form, TradeCatalog library)
    {
        var (name, inner) = form.TextOrObject("animal", "a life table");
        if (inner is not null)
        {
            var table = new LifeTable(
                inner.Number("eggDays", NumberRange.Positive(1e4)),
                inner.Number("juvenileDays", NumberRange.Positive(1e4)),
                inner.Number("eggsPerDay", NumberRange.UpTo(1e6)),
                inner.Number("survivalToAdult", Share),
                inner.Number("adultSurvivalPerDay", new NumberRange(0.0, 0.999_999_999))
            );
            inner.Close();
            return (null, table);
        }

        if (name is null)
        {
            return (null, null);
        }

        if (library.Find<CrewEntry>(name) is { } entry && CrewKinds.Of(entry) is { } species)
        {
            return (species, null);
        }

        var known = library.Of<CrewEntry>().Select(e => e.Key);
        string all = string.Join(", ", known.Order(StringComparer.Ordinal));
        form.Refuse("animal", $"the library has no crew animal '{name}'", $"one of {all}, or a life table");
        return (null, null);
    }

    private static (double, double, double) Start(TreeForm form)
    {
        if (form.Object("start", "the start") is not { } start)
        {
            return default;
        }

        var counts = (
            start.Number("adults", Animals, 0.0),
            start.Number("juveniles", Animals, 0.0),
            start.Number("eggs", Animals, 0.0)
        );
        start.Close();
        return counts;
    }
}
