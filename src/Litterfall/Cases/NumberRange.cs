using System.Globalization;

namespace Litterfall.App.Cases;

/// <summary>Values a number may have.</summary>
public readonly record struct NumberRange
{
    private double Least { get; init; }

    private double Most { get; init; }

    private bool IsOpen { get; init; }

    private bool IsWhole { get; init; }

    /// <summary>From one value to another, both allowed.</summary>
    public static NumberRange Between(double least, double most) => new() { Least = least, Most = most };

    /// <summary>Above a value, at most another.</summary>
    public static NumberRange Above(double least, double most) =>
        new()
        {
            Least = least,
            Most = most,
            IsOpen = true,
        };

    /// <summary>Whole numbers from one value to another, both allowed.</summary>
    public static NumberRange Whole(int least, int most) =>
        new()
        {
            Least = least,
            Most = most,
            IsWhole = true,
        };

    /// <summary>True for a value in it.</summary>
    public bool Holds(double value) =>
        (IsOpen ? value > Least : value >= Least) && value <= Most && (!IsWhole || value == Math.Floor(value));

    /// <summary>It in words: "a number above 0, at most 1000".</summary>
    public override string ToString() =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"a {(IsWhole ? "whole " : "")}number {(IsOpen ? $"above {Least}, at most" : $"from {Least} to")} {Most}"
        );
}
