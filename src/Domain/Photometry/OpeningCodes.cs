namespace Litterfall.Domain.Photometry;

/// <summary>The luminous opening that the signs of width, length and height stand for.</summary>
/// <remarks>
/// Tables of LM-63 of 1986 to 2019 (summaries read). Length runs along the 0° plane, width along the 90°
/// plane. Bodies are
/// taken as the level figure in their middle, ellipses as the rectangle of the same area.
/// </remarks>
internal static class OpeningCodes
{
    public static LuminousOpening Of(
        int edition,
        (double Width, double Length, double Height) coded,
        List<string> notes
    )
    {
        var (w, l, h) = coded;
        double along = Math.Abs(l);
        double across = Math.Abs(w);
        double height = Math.Abs(h);
        if (h != 0.0)
        {
            notes.Add("Its luminous opening has a height; it is taken as the level figure in its middle.");
        }

        // A length of 0 beside a negative width is the older way to write a diameter.
        if (w < 0.0 && l == 0.0)
        {
            bool isUpright = h < 0.0 && edition >= 2002;
            return isUpright
                ? new LuminousOpening(OpeningForm.Line, 0.0, across, height)
                : new LuminousOpening(OpeningForm.Disc, across, across, height);
        }

        if (w >= 0.0 && l >= 0.0)
        {
            return h < 0.0 ? Lying(along, across, height) : Level(along, across, height);
        }

        if (h < 0.0 && (w > 0.0 || l > 0.0))
        {
            // 2002: the positive side is the axis of a lying cylinder, the other two are its diameter.
            return new LuminousOpening(OpeningForm.Rectangle, along, across, height);
        }

        if (w < 0.0 && l < 0.0 && Math.Abs(across - along) <= 1e-3 * across)
        {
            return new LuminousOpening(OpeningForm.Disc, along, across, height);
        }

        notes.Add("Its luminous opening is an ellipse; it is taken as the rectangle of the same area.");
        double same = Math.Sqrt(Math.PI / 4.0);
        return new LuminousOpening(OpeningForm.Rectangle, same * along, same * across, height);
    }

    /// <summary>1995: a lying cylinder with one side 0 and its diameter as a negative height.</summary>
    private static LuminousOpening Lying(double along, double across, double diameter) =>
        along > 0.0 && across > 0.0 ? Level(along, across, diameter)
        : along > 0.0 ? new LuminousOpening(OpeningForm.Rectangle, along, diameter, diameter)
        : across > 0.0 ? new LuminousOpening(OpeningForm.Rectangle, diameter, across, diameter)
        : new LuminousOpening(OpeningForm.Disc, diameter, diameter, diameter);

    /// <summary>A rectangle, or less where a side is 0.</summary>
    internal static LuminousOpening Level(double along, double across, double height) =>
        along > 0.0 && across > 0.0 ? new LuminousOpening(OpeningForm.Rectangle, along, across, height)
        : along > 0.0 || across > 0.0 ? new LuminousOpening(OpeningForm.Line, along, across, height)
        : new LuminousOpening(OpeningForm.Point, 0.0, 0.0, height);
}
