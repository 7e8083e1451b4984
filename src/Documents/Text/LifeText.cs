using System.Globalization;
using System.Text;
using Litterfall.Planning.Life;

namespace Litterfall.Documents.Text;

/// <summary>The life of the floor as a maker reads it on a terminal.</summary>
internal static class LifeText
{
    /// <summary>Nothing where there is no crew.</summary>
    public static void Write(StringBuilder text, LifeFigures? life)
    {
        if (life is null)
        {
            return;
        }

        var table = new TextTable("", "", "");
        foreach (var reason in life.Because)
        {
            table.Add("not before", reason.Day is { } day ? $"{day:yyyy-MM-dd}" : "?", reason.Words);
        }

        table.Add(
            "springtails then",
            Text(life.SpringtailsThen.Value, "0"),
            $"and {Text(life.IsopodsThen.Value, "0")} isopods"
        );
        table.Add(
            "eaten a day",
            Text(life.Appetite.Value, "0"),
            $"springtails; {Text(life.Bearable.Value, "0")} can be borne when the animals go in"
        );
        if (life is { EatenUp: { } gone })
        {
            table.Add(
                "eaten up after",
                Text(gone.Value, "0"),
                life is { Reseed: { } more, ReseedEvery: { } every }
                    ? $"days; add {Text(more.Value, "0")} springtails every {Text(every.Value / 7, "0")} weeks"
                    : "days; no seeding keeps them up"
            );
        }

        table.Add(
            "droppings",
            Text(life.Droppings.Value, "0.0"),
            $"mg a day; isopods a year on could eat {Text(life.DroppingsEatable.Value, "0.0")}"
        );
        table.Add(
            "small flies",
            Text(life.FliesPerDay.Value, "0"),
            $"a day, {Text(life.FliesPerWeek.Value, "0")} a week"
        );
        if (life.LitterLow is { } low)
        {
            table.Add(
                "leaves low after",
                Text(low.Value, "0"),
                $"days; {Text(life.TopUp.Value, "0")} g of dry leaves go in a year"
            );
        }

        text.Append("Life of the floor, on mostly recalled rates: orders of size, dates to " + "weeks\n")
            .Append(table)
            .Append('\n');
    }

    private static string Text(double value, string form) =>
        value.ToString(form, CultureInfo.InvariantCulture);
}
