using Litterfall.Physics.Numerics;

namespace Litterfall.Running.Correcting;

/// <summary>
/// An iterative ensemble smoother: randomized maximum likelihood with the average sensitivity of the
/// ensemble (Chen and Oliver 2013, equation 6, with the sensitivity of Gu and Oliver 2007; both recalled).
/// Each member keeps its own draw from the prior and its own draw of the readings' errors, and is moved to
/// where it fits both. There are fewer inputs than members, so the sensitivity is a regression of the
/// predictions on the inputs: on a linear model it is exact and no spurious correlation is left that would
/// have to be localized away.
/// </summary>
/// <remarks>Inputs are standard normal before any reading. Readings' errors are independent.</remarks>
public sealed class EnsembleSmoother
{
    private readonly double[][] prior;
    private readonly double[][] perturbed;
    private readonly double[] precision;

    /// <summary>A smoother that has seen nothing yet.</summary>
    /// <param name="prior">Inputs of each member, standard normal: [member][input].</param>
    /// <param name="observed">What was read.</param>
    /// <param name="spread">Standard error of each reading.</param>
    /// <param name="errors">Draws of each member's errors, standard normal: [member][reading].</param>
    public EnsembleSmoother(double[][] prior, double[] observed, double[] spread, double[][] errors)
    {
        this.prior = prior;
        precision = [.. spread.Select(s => 1 / (s * s))];
        perturbed = [.. errors.Select(e => observed.Select((o, j) => o + (spread[j] * e[j])).ToArray())];
    }

    /// <summary>The members moved once.</summary>
    /// <param name="now">Inputs that the predictions were made with: [member][input].</param>
    /// <param name="predicted">Predictions of the readings: [member][reading].</param>
    /// <returns>New inputs: [member][input].</returns>
    public double[][] Move(double[][] now, double[][] predicted)
    {
        var slopes = Sensitivity(now, predicted);
        var inputs = slopes.Length;
        var normal = new double[inputs * inputs];
        for (var a = 0; a < inputs; a++)
        {
            for (var b = 0; b < inputs; b++)
            {
                normal[(a * inputs) + b] = a == b ? 1 : 0;
                for (var j = 0; j < precision.Length; j++)
                {
                    normal[(a * inputs) + b] += slopes[a][j] * slopes[b][j] * precision[j];
                }
            }
        }

        return [.. now.Select((x, i) => One(i, x, predicted[i], slopes, normal))];
    }

    /// <summary>A member where its draw from the prior and its perturbed readings agree best.</summary>
    private double[] One(int member, double[] now, double[] predicted, double[][] slopes, double[] normal)
    {
        var inputs = slopes.Length;
        var miss = new double[precision.Length];
        for (var j = 0; j < miss.Length; j++)
        {
            miss[j] = perturbed[member][j] - predicted[j];
            for (var a = 0; a < inputs; a++)
            {
                miss[j] -= slopes[a][j] * (prior[member][a] - now[a]);
            }
        }

        var right = new double[inputs];
        for (var a = 0; a < inputs; a++)
        {
            for (var j = 0; j < miss.Length; j++)
            {
                right[a] += slopes[a][j] * precision[j] * miss[j];
            }
        }

        // The matrix is the identity and more: it is never singular.
        _ = DenseSolve.TrySolve((double[])normal.Clone(), right);
        return [.. prior[member].Select((p, a) => p + right[a])];
    }

    /// <summary>
    /// Slopes of the predictions over the inputs by least squares: [input][reading]. A trace of ridge keeps
    /// inputs apart that the readings have all but fixed.
    /// </summary>
    internal static double[][] Sensitivity(double[][] inputs, double[][] predicted)
    {
        var members = inputs.Length;
        var (count, readings) = (inputs[0].Length, predicted[0].Length);
        var meanInput = Means(inputs, count);
        var meanPrediction = Means(predicted, readings);
        var matrix = new double[count * count];
        var cross = new double[readings][];
        for (var j = 0; j < readings; j++)
        {
            cross[j] = new double[count];
        }

        for (var i = 0; i < members; i++)
        {
            for (var a = 0; a < count; a++)
            {
                var from = inputs[i][a] - meanInput[a];
                for (var b = 0; b < count; b++)
                {
                    matrix[(a * count) + b] += from * (inputs[i][b] - meanInput[b]);
                }

                for (var j = 0; j < readings; j++)
                {
                    cross[j][a] += from * (predicted[i][j] - meanPrediction[j]);
                }
            }
        }

        var trace = Enumerable.Range(0, count).Sum(a => matrix[(a * count) + a]);
        for (var a = 0; a < count; a++)
        {
            matrix[(a * count) + a] += Ridge * Math.Max(trace / count, double.Epsilon);
        }

        var slopes = Enumerable.Range(0, count).Select(_ => new double[readings]).ToArray();
        for (var j = 0; j < readings; j++)
        {
            if (!DenseSolve.TrySolve((double[])matrix.Clone(), cross[j]))
            {
                continue;
            }

            for (var a = 0; a < count; a++)
            {
                slopes[a][j] = cross[j][a];
            }
        }

        return slopes;
    }

    private const double Ridge = 1e-10;

    private static double[] Means(double[][] rows, int count) =>
        [.. Enumerable.Range(0, count).Select(c => rows.Average(r => r[c]))];
}
