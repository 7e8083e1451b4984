using Litterfall.Physics.Soil;

namespace Litterfall.Laboratory.Column;

/// <summary>
/// How finely a lab run cuts time. Backward Euler is of first order, so a long smooth change adds up the
/// errors of its few steps: with the engine's own tolerance the heads of Srivastava and Yeh (1991) miss by
/// 0.4 cm, with a hundredth of it by 0.06 cm. A first run counts the steps; where it was cheap a second one
/// is made as fine as the work allows. Where the forcing changes often the steps are short anyway, and where
/// a front is steep they are many anyway: there the first run stands.
/// </summary>
public static class LabAccuracy
{
    /// <summary>The first run.</summary>
    public static readonly StepControl First = new();

    /// <summary>Spans from which on the weather counts as long: one run, on the elements asked for.</summary>
    public const int MostSpans = 100;

    // Node steps of the second run, about half a second of one core.
    private const double Work = 1.5e6;
    private const double FinestTolerance = 1e-6;

    // A second run that is not at least twice as fine is not worth its time.
    private const double Worthwhile = 0.5;

    /// <summary>Control of a second run, or null when the first one stands.</summary>
    /// <param name="first">Outcome of the first run.</param>
    /// <param name="nodes">Nodes of the column.</param>
    /// <param name="spans">Spans of the forcing.</param>
    public static StepControl? Second(ColumnResult first, int nodes, int spans)
    {
        // The number of steps grows with the inverse root of the tolerance.
        double finer = (double)first.Steps * nodes / Work;
        return first.StoppedEarly is not null || spans > MostSpans || finer > Worthwhile
            ? null
            : First with
            {
                ErrorTolerance = Math.Max(FinestTolerance, First.ErrorTolerance * finer * finer),
            };
    }
}
