using Litterfall.Forecasting;
using Litterfall.Forecasting.Coefficients;
using Litterfall.Forecasting.Water;

namespace Litterfall.Judging.Plants;

/// <summary>The forecast of the floor where a plant roots.</summary>
internal static class RootZones
{
    private const double EdgeShare = 1e-9;

    /// <summary>"3 cm": depth at which roots are judged.</summary>
    /// <param name="n">The design.</param>
    public static string Depth(DesignNumbers n) =>
        FormattableString.Invariant($"{ModelCoefficients.Of(n.Design).Water.RootDepth.Number:0.##} cm");

    /// <summary>
    /// Columns of the floor that hold the roots of a plant; all of them where its place is not entered.
    /// Empty without a forecast.
    /// </summary>
    /// <param name="n">The design.</param>
    /// <param name="plant">The plant.</param>
    public static int[] Of(DesignNumbers n, PlacedPlant plant)
    {
        if (n.Water.Forecast is not { } forecast)
        {
            return [];
        }

        var places = forecast.Floor.Places;
        double length = n.Box.InsideLength.Si;
        double depth = n.Box.InsideDepth.Si;
        int[] all = [.. Enumerable.Range(0, places.Length)];
        if (plant.Entry.At is not { } at || length <= 0.0 || depth <= 0.0)
        {
            return all;
        }

        double along = Math.Clamp(at.X.Si / length, EdgeShare, 1.0 - EdgeShare);
        double back = Math.Clamp(at.Y.Si / depth, EdgeShare, 1.0 - EdgeShare);
        int[] here = [.. all.Where(i => places[i].Holds(along, back))];
        return here.Length == 0 ? all : here;
    }

    /// <summary>
    /// Days of the first year on which a number of the plant's columns stays on the wrong side in each of
    /// them: moss or none, a plant whose place is open finds the better one.
    /// </summary>
    /// <param name="n">The design.</param>
    /// <param name="zones">Its columns.</param>
    /// <param name="isWrong">Tells of a day and a column.</param>
    public static int Days(DesignNumbers n, int[] zones, Func<FloorDay, int, bool> isWrong) =>
        zones.Length == 0 ? 0 : n.Water.Forecast!.Days.Count(d => zones.All(z => isWrong(d, z)));
}
