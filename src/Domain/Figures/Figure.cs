using System.Collections.Immutable;
using System.Globalization;
using Litterfall.Domain.Units;

namespace Litterfall.Domain.Figures;

/// <summary>
/// A number that knows where it comes from. Arithmetic on figures computes the value and writes the equation
/// in the same step, so the equation shown can never differ from the sum done. Adding a length to a mass is
/// our
/// own mistake and throws <see cref="InvalidOperationException"/>.
/// </summary>
public sealed class Figure
{
    private const int Atom = 0;
    private const int Product = 1;
    private const int Sum = 2;
    private readonly int precedence;
    private double? printed;
    private Provenance? trust;

    private Figure(
        double si,
        Dimension dimension,
        string equation,
        int precedence,
        ImmutableArray<Figure> inputs
    )
    {
        Si = double.IsFinite(si) ? si : throw new NotFiniteException(equation, inputs);
        Dimension = dimension;
        Equation = equation;
        this.precedence = precedence;
        Inputs = inputs;
    }

    /// <summary>Value in SI.</summary>
    public double Si { get; }

    /// <summary>What it measures.</summary>
    public Dimension Dimension { get; }

    /// <summary>Unit it is shown in; null for a step inside an equation.</summary>
    public Unit? Unit { get; private init; }

    /// <summary>Its name in words; null for a step inside an equation.</summary>
    public string? Name { get; private init; }

    /// <summary>The equation over named inputs; empty for a given value.</summary>
    public string Equation { get; }

    /// <summary>The named figures in the equation.</summary>
    public ImmutableArray<Figure> Inputs { get; }

    /// <summary>Source of a given value, or of the equation.</summary>
    public Citation Origin { get; private init; } = Citation.OwnDerivation;

    /// <summary>Why this value, for our own choices; a remark otherwise.</summary>
    public string? Remark { get; private init; }

    /// <summary>True when the figure was given, not computed.</summary>
    public bool IsGiven => Equation.Length == 0;

    /// <summary>Value in its own unit.</summary>
    public double Value => printed ?? (Unit is null ? Si : Unit.FromSi(Si));

    /// <summary>A given value: typed by the maker, or from the catalog, or chosen by us.</summary>
    public static Figure Given(string name, double si, Unit unit, Citation origin, string? remark = null) =>
        new(si, unit.Dimension, "", Atom, [])
        {
            Name = name,
            Unit = unit,
            Origin = origin,
            Remark = remark,
        };

    /// <summary>
    /// A number as it is printed in a source: in its own unit it comes back to the last digit.
    /// </summary>
    internal static Figure Printed(string name, double number, Unit unit, Citation origin) =>
        new(unit.ToSiValue(number), unit.Dimension, "", Atom, [])
        {
            Name = name,
            Unit = unit,
            Origin = origin,
            printed = number,
        };

    /// <summary>Our own choice with its reason.</summary>
    public static Figure Choice(string name, double number, Unit unit, string reason) =>
        Given(
            name,
            unit.ToSiValue(number),
            unit,
            new Citation("own-choice", reason, Provenance.OwnChoice),
            reason
        );

    /// <summary>A bare number in an equation, such as the 2 of "two sides".</summary>
    public static Figure Number(double value) =>
        new(value, Dimension.None, FormattableString.Invariant($"{value:0.######}"), Atom, []);

    /// <summary>
    /// Gives a computed step its name, unit and, where published, the source of the equation.
    /// </summary>
    public Figure As(string name, Unit unit, Citation? origin = null, string? remark = null)
    {
        if (unit.Dimension != Dimension)
        {
            throw new InvalidOperationException($"{name} is not measured in {unit.Symbol}.");
        }

        return new Figure(Si, Dimension, Equation, precedence, Inputs)
        {
            Name = name,
            Unit = unit,
            Origin = origin ?? Origin,
            Remark = remark ?? Remark,
        };
    }

    /// <summary>
    /// How far the figure can be trusted: its own provenance when given; otherwise recomputed, or the weakest
    /// of
    /// what it rests on where that is common practice or recalled.
    /// </summary>
    public Provenance Trust => trust ??= FindTrust();

    /// <summary>The same for every figure made by the same equation from the same numbers.</summary>
    public string Identity =>
        string.Create(CultureInfo.InvariantCulture, $"{Name}|{Si:R}|{Equation}|{Origin.Place}");

    private Provenance FindTrust()
    {
        if (IsGiven)
        {
            return Origin.Provenance;
        }

        var weakest = Inputs.Select(i => i.Trust).Append(Origin.Provenance).Max();
        return weakest.IsWeak() ? weakest : Provenance.Recomputed;
    }

    /// <summary>Sum.</summary>
    public static Figure operator +(Figure a, Figure b) =>
        Same(a, b, a.Si + b.Si, $"{a.In(Sum)} + {b.In(Sum)}");

    /// <summary>Difference.</summary>
    public static Figure operator -(Figure a, Figure b) =>
        Same(a, b, a.Si - b.Si, $"{a.In(Sum)} − {b.In(Product)}");

    /// <summary>Product.</summary>
    public static Figure operator *(Figure a, Figure b) =>
        new(
            a.Si * b.Si,
            a.Dimension * b.Dimension,
            $"{a.In(Product)} × {b.In(Product)}",
            Product,
            Both(a, b)
        );

    /// <summary>Quotient.</summary>
    public static Figure operator /(Figure a, Figure b) =>
        new(a.Si / b.Si, a.Dimension / b.Dimension, $"{a.In(Product)} ÷ {b.In(Atom)}", Product, Both(a, b));

    /// <summary>Smallest of several figures of one dimension.</summary>
    public static Figure Min(params ReadOnlySpan<Figure> figures) => Pick("smallest of", figures, Math.Min);

    /// <summary>Largest of several figures of one dimension.</summary>
    public static Figure Max(params ReadOnlySpan<Figure> figures) => Pick("largest of", figures, Math.Max);

    /// <summary>The figure, or zero if it is negative.</summary>
    public static Figure NotNegative(Figure a) =>
        new(Math.Max(0, a.Si), a.Dimension, $"not below 0: ({a.In(Sum)})", Atom, a.AsInputs());

    /// <summary>Sum of a list; an empty list gives zero of the dimension.</summary>
    public static Figure Total(IReadOnlyList<Figure> figures, Dimension dimension)
    {
        if (figures.Count == 0)
        {
            return new Figure(0, dimension, "0 (nothing to add)", Atom, []);
        }

        var sum = figures[0];
        for (var i = 1; i < figures.Count; i++)
        {
            sum += figures[i];
        }

        return sum;
    }

    /// <summary>A value computed by a named method; the equation says which, the inputs are listed.</summary>
    public static Figure Computed(
        string equation,
        double si,
        Dimension dimension,
        params ReadOnlySpan<Figure> inputs
    )
    {
        var all = ImmutableArray<Figure>.Empty;
        foreach (var input in inputs)
        {
            all = Merge(all, input.AsInputs());
        }

        return new Figure(si, dimension, equation, Atom, all);
    }

    private static Figure Pick(string words, ReadOnlySpan<Figure> figures, Func<double, double, double> pick)
    {
        var best = figures[0].Si;
        var inputs = ImmutableArray<Figure>.Empty;
        var names = new List<string>(figures.Length);
        foreach (var figure in figures)
        {
            if (figure.Dimension != figures[0].Dimension)
            {
                throw new InvalidOperationException("Figures of different dimensions were compared.");
            }

            best = pick(best, figure.Si);
            inputs = Merge(inputs, figure.AsInputs());
            names.Add(figure.In(Sum));
        }

        var equation = figures.Length == 1 ? names[0] : $"{words} ({string.Join(", ", names)})";
        return new Figure(best, figures[0].Dimension, equation, Atom, inputs);
    }

    private static Figure Same(Figure a, Figure b, double si, string equation) =>
        a.Dimension == b.Dimension
            ? new Figure(si, a.Dimension, equation, Sum, Both(a, b))
            : throw new InvalidOperationException(
                $"Cannot add {a.Name ?? a.Equation} and {b.Name ?? b.Equation}."
            );

    private static ImmutableArray<Figure> Both(Figure a, Figure b) => Merge(a.AsInputs(), b.AsInputs());

    private static ImmutableArray<Figure> Merge(ImmutableArray<Figure> a, ImmutableArray<Figure> b)
    {
        foreach (var item in b)
        {
            if (!a.Contains(item))
            {
                a = a.Add(item);
            }
        }

        return a;
    }

    private ImmutableArray<Figure> AsInputs() => Name is null ? Inputs : [this];

    private string In(int outer) =>
        Name
        ?? (
            precedence > outer
            || (precedence == outer && outer == Product && Equation.Contains('÷', StringComparison.Ordinal))
                ? $"({Equation})"
                : Equation
        );
}
