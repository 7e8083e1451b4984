using System.Text.Json.Nodes;

namespace Litterfall.Tests.EndToEnd.Lab;

/// <summary>Cases of <c>lab column</c>, and their results.</summary>
internal static class Posed
{
    // Own test materials: moss, mix and gravel of a shallow floor.
    public const string Moss = """
        { "thetaR": 0.176, "thetaS": 0.679, "alphaPerCm": 0.381, "n": 1.781,
          "ksCmPerHour": 122.4, "l": -2.1 }
        """;

    public const string Mix = """
        { "thetaR": 0.1, "thetaS": 0.8, "alphaPerCm": 0.15, "n": 1.5,
          "ksCmPerHour": 30, "l": 0.5 }
        """;

    public const string Gravel = """
        { "thetaR": 0.02, "thetaS": 0.36, "alphaPerCm": 1.116, "n": 2.7,
          "ksCmPerHour": 3600, "l": 0.5 }
        """;

    /// <summary>The loam of Vanderborght et al. (2005), Ks 50 cm/d.</summary>
    public const string Loam = """
        { "thetaR": 0.08, "thetaS": 0.43, "alphaPerCm": 0.04, "n": 1.6,
          "ksCmPerHour": 2.0833333333333335, "l": 0.5 }
        """;

    public static string Floor { get; } =
        $"[{Layer(2, 8, Moss)}, {Layer(6, 24, Mix)}, {Layer(5, 20, Gravel)}]";

    public static string Layer(double thicknessCm, int cells, string soil) =>
        FormattableString.Invariant(
            $$"""{ "thicknessCm": {{thicknessCm}}, "cells": {{cells}}, "soil": {{soil}} }"""
        );

    /// <summary>A case of 24 h; the parts are JSON, and more keys may follow.</summary>
    public static string Case(string layers, string initial, string top, string bottom, string more = "") =>
        $$"""
            { "layers": {{layers}},
              "initial": {{initial}},
              "top": {{top}},
              "bottom": {{bottom}},
              {{(more.Length > 0 ? more : "\"hours\": 24, \"reportHours\": [24]")}} }
            """;

    /// <summary>What is printed for a case that can be solved.</summary>
    public static JsonNode Solve(string text)
    {
        using var scratch = new Scratch();
        var ended = Cli.Run("lab", "column", scratch.Write("case.json", text), "--json");
        Assert.True(ended.Code == 0, ended.ToString());
        Assert.Equal("", ended.Error);
        return ended.Json;
    }

    public static double Number(this JsonNode node, string key) => node[key]!.GetValue<double>();

    public static double[] Numbers(this JsonNode node, string key) =>
        [.. node[key]!.AsArray().Select(v => v!.GetValue<double>())];

    /// <summary>The value at a depth, by straight line.</summary>
    public static double At(this JsonNode time, string key, double depthCm)
    {
        var (depths, values) = (time.Numbers("depthCm"), time.Numbers(key));
        int i = Math.Clamp(Array.FindIndex(depths, d => d >= depthCm), 1, depths.Length - 1);
        double share = (depthCm - depths[i - 1]) / (depths[i] - depths[i - 1]);
        return values[i - 1] + (share * (values[i] - values[i - 1]));
    }

    /// <summary>The depth at which the head passes a value, from the top.</summary>
    public static double DepthOf(this JsonNode time, double headCm)
    {
        var (depths, heads) = (time.Numbers("depthCm"), time.Numbers("headCm"));
        int i = Enumerable.Range(1, heads.Length - 1).First(k => heads[k] <= headCm);
        return depths[i - 1]
            + ((depths[i] - depths[i - 1]) * (headCm - heads[i - 1]) / (heads[i] - heads[i - 1]));
    }

    /// <summary>Water between two depths, cm, by trapezoids.</summary>
    public static double WaterCm(this JsonNode time, double fromCm, double toCm)
    {
        var (depths, water) = (time.Numbers("depthCm"), time.Numbers("waterContent"));
        return Enumerable
            .Range(1, depths.Length - 1)
            .Where(i => depths[i - 1] >= fromCm - 1e-9 && depths[i] <= toCm + 1e-9)
            .Sum(i => 0.5 * (depths[i] - depths[i - 1]) * (water[i] + water[i - 1]));
    }
}
