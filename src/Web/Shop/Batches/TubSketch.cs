using System.Globalization;
using System.Net;
using System.Text;
using Litterfall.Domain.Trade;
using Litterfall.Workshop.Mixing;

namespace Litterfall.Web.Shop.Batches;

/// <summary>
/// The tub in section before mixing: parts on top of each other, the level it may be filled to.
/// </summary>
public static class TubSketch
{
    private const double Height = 120;
    private const double Width = 120;
    private const double Inset = 6;
    private const double Line = 16;

    /// <summary>Draws one tub of a mix as SVG.</summary>
    /// <param name="batch">What goes into it.</param>
    /// <param name="terms">The workshop's tub.</param>
    /// <param name="liters">Writes an amount in the units of the reader.</param>
    public static string Draw(MixBatch batch, ShopTerms terms, Func<double, string> liters)
    {
        var perLiter = Height / terms.TubLiters;
        var svg = new StringBuilder();
        Put(svg, $"<svg class='bucket' viewBox='0 -20 440 {Height + 24}' role='img'");
        svg.Append(" aria-label='the tub before mixing'>");
        var (y, below) = (Height, double.MaxValue);
        foreach (var share in batch.Shares)
        {
            var tall = share.JugLiters * perLiter;
            y -= tall;
            var middle = y + (tall / 2);
            below = Math.Min(middle, below - Line);
            var name = WebUtility.HtmlEncode($"{share.Part.Name}, {liters(share.JugLiters)}");
            Put(svg, $"<rect class='part' x='{Inset}' y='{y:0.#}' width='{Width - (2 * Inset)}' ");
            Put(svg, $"height='{tall:0.#}'/><path class='part' d='M{Width - Inset} {middle:0.#}");
            Put(svg, $"L{Width + 12} {below:0.#}'/><text x='{Width + 16}' y='{below + 4:0.#}'>{name}</text>");
        }

        var limit = Height - (terms.TubLiters * terms.TubFillPercent / 100 * perLiter);
        Put(svg, $"<path class='fill' d='M0 {limit:0.#}H{Width}'/>");
        Put(svg, $"<path class='tub' d='M2 0V{Height}H{Width - 2}V0'/></svg>");
        return svg.ToString();
    }

    private static void Put(StringBuilder svg, FormattableString text) =>
        svg.Append(text.ToString(CultureInfo.InvariantCulture));
}
