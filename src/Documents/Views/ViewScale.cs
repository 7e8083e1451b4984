using System.Globalization;

namespace Litterfall.Documents.Views;

/// <summary>The scales a workshop drawing may have.</summary>
internal static class ViewScale
{
    private static readonly double[] Steps = [1, 2, 2.5, 4, 5, 6, 8, 10, 12, 15, 20, 25, 30, 40, 50, 75, 100];

    /// <summary>
    /// The largest of the usual scales at which a size in meters fits a room in millimeters.
    /// </summary>
    public static double Fitting(double meters, double roomMillimeters) =>
        1 / Steps.FirstOrDefault(s => meters * 1000 / s <= roomMillimeters, Steps[^1]);

    /// <summary>On a screen any scale will do; on paper a usual one.</summary>
    public static double Fitting(Scene scene, double meters, double roomMillimeters) =>
        scene.OnScreen
            ? Math.Clamp(roomMillimeters / (meters * 1000), 1 / Steps[^1], 1)
            : Fitting(meters, roomMillimeters);

    /// <summary>"scale 1 : 10".</summary>
    public static string Words(double scale) =>
        string.Create(CultureInfo.InvariantCulture, $"scale 1 : {1 / scale:0.#}");
}
