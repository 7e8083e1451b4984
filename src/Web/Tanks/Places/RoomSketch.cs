using System.Globalization;
using System.Net;
using System.Text;
using Litterfall.Domain.Tanks;
using Litterfall.Running.Rounds;
using Litterfall.Web.Tanks.Rounds;

namespace Litterfall.Web.Tanks.Places;

/// <summary>
/// A room to scale, a centimeter for a unit: the racks from the front with their tanks, and below them the
/// plan. What a tank needs is told by a sign and a word, not by color alone.
/// </summary>
/// <param name="room">The room.</param>
/// <param name="view">Its tanks and their round.</param>
internal sealed class RoomSketch(TankRoom room, RoundView view)
{
    private const double Side = 14;
    private const double Top = 34;
    private const double Between = 44;
    private const double TankTall = 50;
    private const double Gap = 3;
    private readonly StringBuilder svg = new();

    /// <summary>Draws it as SVG.</summary>
    public string Draw()
    {
        var wide = (room.LengthMeters * 100) + (2 * Side);
        var tall = Front;
        var all = Top + tall + Between + (room.DepthMeters * 100) + Side;
        Put($"<svg class='roommap' viewBox='0 0 {wide} {all}' role='group' aria-label='");
        svg.Append(WebUtility.HtmlEncode(room.Name)).Append(", to scale'>");
        Put($"<text class='of' x='{Side}' y='14'>from the front</text>");
        Put($"<path class='ground' d='M{Side} {Top + tall}H{wide - Side}'/>");
        foreach (var rack in room.Racks)
        {
            Rack(rack, Top + tall);
        }

        Plan(Top + tall + Between);
        Put($"<path class='scale' d='M{wide - Side - 100} 8v6h100v-6'/>");
        Put($"<text class='of' x='{wide - Side - 130}' y='15'>1 m</text></svg>");
        return svg.ToString();
    }

    /// <summary>Height of the front view: the highest shelf with a tank on it.</summary>
    private double Front =>
        room.Racks.SelectMany(r => r.ShelfMeters).DefaultIfEmpty(1).Max() * 100 + TankTall + Gap;

    private void Rack(TankRack rack, double floor)
    {
        var (left, wide) = (Side + (rack.LeftMeters * 100), rack.LengthMeters * 100);
        var top = floor - (rack.ShelfMeters.DefaultIfEmpty(0.5).Max() * 100) - TankTall;
        Put($"<path class='post' d='M{left} {top}V{floor}M{left + wide} {top}V{floor}'/>");
        Put($"<text class='rack' x='{left + (wide / 2)}' y='{floor + 16}'>");
        svg.Append("rack ").Append(WebUtility.HtmlEncode(rack.Name)).Append("</text>");
        for (var shelf = 1; shelf <= rack.ShelfMeters.Count; shelf++)
        {
            var y = floor - (rack.ShelfMeters[shelf - 1] * 100);
            Put($"<path class='shelf' d='M{left} {y}h{wide}'/>");
            var above = shelf < rack.ShelfMeters.Count
                ? ((rack.ShelfMeters[shelf] - rack.ShelfMeters[shelf - 1]) * 100) - Gap
                : TankTall;
            foreach (var tank in On(rack, shelf))
            {
                Tank(tank, rack, (left, y), Math.Min(TankTall, above));
            }
        }
    }

    private IEnumerable<Tank> On(TankRack rack, int shelf) =>
        view.Tanks.Running.Where(t =>
            t.Place.Room == room.Key && t.Place.Rack == rack.Name && t.Place.Shelf == shelf
        );

    private void Tank(Tank tank, TankRack rack, (double Left, double Foot) at, double tall)
    {
        var each = rack.LengthMeters * 100 / Math.Max(1, rack.Slots);
        var x = at.Left + ((Math.Clamp(tank.Place.Slot, 1, Math.Max(1, rack.Slots)) - 1) * each) + (Gap / 2);
        var y = at.Foot - tall;
        var state = TankState.Find(view.Book, tank.Code);
        var said = WebUtility.HtmlEncode($"{tank.Code}, {tank.Name}: {state.Said}");
        Put($"<a href='/tanks/{Uri.EscapeDataString(tank.Code)}' aria-label='{said}'>");
        Put($"<rect class='tank {state.Look}' x='{x}' y='{y}' width='{each - Gap}' height='{tall - 1}'/>");
        var middle = x + ((each - Gap) / 2);
        Put($"<text class='code' x='{middle}' y='{y + 15}'>");
        svg.Append(WebUtility.HtmlEncode(tank.Code)).Append("</text>");
        Sign(state, middle, y + 26);
        Put($"<text class='word' x='{middle}' y='{y + 44}'>");
        svg.Append(WebUtility.HtmlEncode(state.Word)).Append("</text></a>");
    }

    private void Sign(TankState state, double x, double y)
    {
        switch (state.Look)
        {
            case "late":
                Put($"<path class='sign late' d='M{x} {y - 7}l7 12h-14z'/>");
                break;
            case "wrong":
                Put($"<path class='sign wrong' d='M{x - 3} {y - 7}h6l4 4v6l-4 4h-6l-4 -4v-6z'/>");
                break;
            case "due":
                Put($"<circle class='sign due' cx='{x}' cy='{y}' r='5'/>");
                break;
        }
    }

    private void Plan(double top)
    {
        var (wide, deep) = (room.LengthMeters * 100, room.DepthMeters * 100);
        Put($"<text class='of' x='{Side}' y='{top - 8}'>from above</text>");
        Put($"<rect class='wall' x='{Side}' y='{top}' width='{wide}' height='{deep}'/>");
        var door = Side + (room.DoorMeters * 100);
        Put($"<path class='door' d='M{door - 40} {top + deep}h80'/>");
        Put($"<text class='of' x='{door - 12}' y='{top + deep - 6}'>door</text>");
        foreach (var rack in room.Racks)
        {
            var x = Side + (rack.LeftMeters * 100);
            var y = top + deep - ((rack.FrontMeters + rack.DepthMeters) * 100);
            Put($"<rect class='board' x='{x}' y='{y}' width='{rack.LengthMeters * 100}'");
            Put($" height='{rack.DepthMeters * 100}'/>");
            Put($"<text class='rack' x='{x + (rack.LengthMeters * 50)}' y='{y + (rack.DepthMeters * 50) + 4}'>");
            svg.Append(WebUtility.HtmlEncode(rack.Name)).Append("</text>");
        }
    }

    private void Put(FormattableString text) => svg.Append(text.ToString(CultureInfo.InvariantCulture));
}

/// <summary>How a tank is shown: its sign and its word.</summary>
/// <param name="Look">wrong, late, due or well.</param>
/// <param name="Word">One word.</param>
/// <param name="Said">All of it, in words.</param>
internal sealed record TankState(string Look, string Word, string Said)
{
    /// <summary>The state of a tank on the round.</summary>
    /// <param name="book">The round.</param>
    /// <param name="tank">Number of the tank.</param>
    public static TankState Find(RoundBook book, string tank)
    {
        var due = book.For(tank)
            .OrderByDescending(i => i.IsFinding)
            .ThenByDescending(i => i.On(book.Today))
            .ThenBy(i => i.Rank)
            .ThenBy(i => i.Due)
            .ToList();
        if (due.Count == 0)
        {
            return new("well", "", "nothing due");
        }

        var look =
            due[0].IsFinding ? "wrong"
            : due[0].On(book.Today) == RoundWeight.Late ? "late"
            : "due";
        return new(
            look,
            due.Count > 1 ? $"{due[0].Task} +{due.Count - 1}" : due[0].Task,
            string.Join(", ", due.Select(i => i.What.ToLowerInvariant()))
        );
    }
}
