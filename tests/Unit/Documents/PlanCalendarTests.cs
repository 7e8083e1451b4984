using System.Text.Json.Nodes;
using Litterfall.Documents.Calendar;
using Litterfall.Domain.Schedule;
using Litterfall.UnitTests.House;

namespace Litterfall.UnitTests.Documents;

/// <summary>The calendar file of the plan, read again by Debian's python3-icalendar.</summary>
public sealed class PlanCalendarTests
{
    private const string Reader = """
        import icalendar, json, sys
        calendar = icalendar.Calendar.from_ical(sys.stdin.buffer.read())
        print(json.dumps([dict(uid=str(e['UID']), summary=str(e['SUMMARY']),
            start=e['DTSTART'].dt.isoformat(),
            end=e['DTEND'].dt.isoformat(), kind=e['DTSTART'].params.get('VALUE'), sequence=int(e['SEQUENCE']),
            status=str(e['STATUS']), errors=[str(x) for x in e.errors]) for e in calendar.walk('VEVENT')]))
        """;

    private static PlannedTask Task(string key, DateOnly day, int revision, bool isCancelled) =>
        new(
            new DayTask
            {
                Key = key,
                Day = day,
                Kind = TaskKind.Order,
                Title = "Plant and dress: LD-201, ÄÖ é " + new string('w', 70),
                Detail = "for 30 days; until Monday",
            },
            revision
        )
        {
            IsCancelled = isCancelled,
        };

    [Fact]
    public void Tasks_are_all_day_with_a_stable_name_a_sequence_and_their_state()
    {
        var day = new DateOnly(2026, 12, 31);
        var plan = new ShopPlan
        {
            MadeOn = new DateOnly(2026, 11, 30),
            Orders =
            [
                new PlannedOrder
                {
                    Days = new OrderDays
                    {
                        Order = 201,
                        Pack = day,
                        Ship = day,
                        Arrive = day,
                    },
                    Tasks = [Task("order-201-plant", day, 2, false), Task("order-201-cut", day, 1, true)],
                },
            ],
        };
        var events = Python.Read("icalendar", Reader, PlanCalendar.Write(plan)).AsArray();
        string Word(int at, string key) => events[at]![key]!.GetValue<string>();
        Assert.Equal("order-201-plant@litterfall", Word(0, "uid"));
        Assert.Equal(("2026-12-31", "2027-01-01"), (Word(0, "start"), Word(0, "end")));
        Assert.Equal("DATE", Word(0, "kind"));
        Assert.Equal(2, events[0]!["sequence"]!.GetValue<int>());
        Assert.Equal(("CONFIRMED", "CANCELLED"), (Word(0, "status"), Word(1, "status")));
        Assert.StartsWith("Plant and dress: LD-201, ÄÖ é ww", Word(0, "summary"), StringComparison.Ordinal);
        Assert.All(events, e => Assert.Empty(e!["errors"]!.AsArray()));
    }
}
