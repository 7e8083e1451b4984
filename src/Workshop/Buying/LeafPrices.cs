namespace Litterfall.Workshop.Buying;

/// <summary>
/// What reaching sums at suppliers costs at least: a price is set on each cent that is missing and raised
/// where it helps (Lagrangian relaxation). The bound also tells which ways to buy a product no cheaper
/// purchase can use.
/// </summary>
internal sealed class LeafPrices
{
    private const int Rounds = 4;
    private const int Steps = 24;
    private const double MostPrice = 0.999;
    private readonly List<Column>[] columns;
    private readonly long[] least;
    private readonly long fees;
    private readonly double[] prices;

    private LeafPrices(List<Column>[] columns, long[] least, long fees)
    {
        this.columns = columns;
        this.least = least;
        this.fees = fees;
        prices = new double[least.Length];
    }

    /// <summary>The bound in cents, and the columns that a purchase below a cost may use.</summary>
    /// <param name="columns">All columns of each product.</param>
    /// <param name="least">Sums to be reached.</param>
    /// <param name="fees">Deliveries paid.</param>
    /// <param name="below">Cost to beat.</param>
    public static (double Bound, List<Column>[] Columns) Narrow(
        List<Column>[] columns,
        long[] least,
        long fees,
        long below
    )
    {
        var search = new LeafPrices(columns, least, fees);
        search.Raise();
        var bound = search.Value();
        // A hundredth of a cent of room for rounding.
        var room = below - 1 - bound + 0.01;
        return (
            bound,
            [
                .. columns.Select(all =>
                {
                    var best = all.Min(search.Priced);
                    return all.Where(c => search.Priced(c) - best <= room).ToList();
                }),
            ]
        );
    }

    /// <summary>One price after the other, by thirds: the bound is concave in each.</summary>
    private void Raise()
    {
        for (var round = 0; round < Rounds; round++)
        {
            for (var s = 0; s < prices.Length; s++)
            {
                var (low, high) = (0.0, MostPrice);
                for (var step = 0; step < Steps; step++)
                {
                    var third = (high - low) / 3.0;
                    if (At(s, low + third) < At(s, high - third))
                    {
                        low += third;
                    }
                    else
                    {
                        high -= third;
                    }
                }

                prices[s] = 0.5 * (low + high);
            }
        }
    }

    private double At(int supplier, double price)
    {
        prices[supplier] = price;
        return Value();
    }

    private double Value()
    {
        var sum = (double)fees;
        for (var s = 0; s < prices.Length; s++)
        {
            sum += prices[s] * least[s];
        }

        foreach (var all in columns)
        {
            var best = double.PositiveInfinity;
            foreach (var column in all)
            {
                best = Math.Min(best, Priced(column));
            }

            sum += best;
        }

        return sum;
    }

    private double Priced(Column column)
    {
        var cents = (double)column.Cents;
        for (var s = 0; s < prices.Length; s++)
        {
            cents -= prices[s] * column.Spent[s];
        }

        return cents;
    }
}
