using System.Globalization;
using System.Text;
using Litterfall.Domain.Figures;
using Litterfall.Domain.Findings;
using Litterfall.Forecasting.Life;

namespace Litterfall.Documents.Text;

/// <summary>The life of the floor as a maker reads it on a terminal.</summary>
internal static class LifeText
{
    /// <summary>Nothing where there is no floor.</summary>
    public static void Write(StringBuilder text, LifeFigures? life, IEnumerable<Finding> findings)
    {
        if (life is null)
        {
            return;
        }

        var table = new TextTable("", "", "");
        foreach (var reason in life.Because)
        {
            table.Add("not before", reason.Day is { } day ? $"{day:yyyy-MM-dd}" : "no day", reason.Words);
        }

        foreach (string stop in FloorWaits.Stops(findings))
        {
            table.Add("not before", "it is right", stop);
        }

        Crew(table, life);
        Food(table, life);
        if (life.Masses.LitterLow is { } low)
        {
            table.Add(
                "leaf litter runs low after",
                Number(low),
                $"days; {Number(life.Masses.TopUp)} g of dry leaves go in a year"
            );
        }

        text.Append("Life of the floor, with rates mostly from memory: orders of size, dates to weeks\n")
            .Append(table)
            .Append('\n');
    }

    private static void Crew(TextTable table, LifeFigures life)
    {
        if (life.CrewReadyEarly is { } early)
        {
            table.Add(
                "crew ready after",
                life.CrewReadyLate is { } late ? $"{Number(early)} to {Number(late)}" : $"{Number(early)}",
                life.CrewReadyLate is null
                    ? "days, or never, by how many young live (0.96 to 0.4 of those hatched)"
                    : "days, by how many young live (0.96 to 0.4 of those hatched)"
            );
        }

        if (life.SpringtailsThen.Value.Si > 0.0)
        {
            table.Add("springtails then", Number(life.SpringtailsThen.Value), "juveniles and adults");
            table.Add(
                "eaten a day",
                Number(life.Appetite),
                $"springtails; {Number(life.Bearable.Value)} can be borne when the animals go in"
            );
        }

        if (life.IsopodsThen.Value.Si > 0.0)
        {
            table.Add("isopods then", Number(life.IsopodsThen.Value), "juveniles and adults");
        }

        if (life.EatenUp is { } gone)
        {
            table.Add(
                "eaten up after",
                Number(gone),
                life is { Reseed: { } more, ReseedEvery: { } every }
                    ? $"days; add {Number(more)} springtails every {Text(every.Value / 7, "0")} weeks"
                    : "days; no seeding keeps them up"
            );
        }
    }

    private static void Food(TextTable table, LifeFigures life)
    {
        if (life.Masses.FliesPerDay.Si <= 0.0)
        {
            return;
        }

        table.Add(
            "small flies",
            Number(life.Masses.FliesPerDay),
            $"a day, {Number(life.Masses.FliesPerWeek)} a week"
        );
        table.Add(
            "droppings",
            Text(life.Masses.Droppings.Value, "0.0"),
            $"mg a day, dry; a year on isopods could eat {Text(life.Masses.DroppingsEatable.Value, "0.0")} "
                + "mg of it"
        );
    }

    private static string Number(Figure figure) => Text(figure.Value, "0");

    private static string Text(double value, string form) =>
        value.ToString(form, CultureInfo.InvariantCulture);
}
