using System.Text;
using System.Text.Json.Nodes;
using Litterfall.Documents.Calendar;
using Litterfall.Instructions.Care;
using Litterfall.Quantities.Stocking;
using Litterfall.UnitTests.Instructions.Building;
using Litterfall.UnitTests.Quantities.Measures;

namespace Litterfall.UnitTests.Documents;

/// <summary>Calendar files against RFC 5545 and against Debian's python3-icalendar.</summary>
public sealed class CalendarFileTests
{
    private const string Tank = "LF0123456789Q";

    private const string Reader = """
        import icalendar, json, sys
        calendar = icalendar.Calendar.from_ical(sys.stdin.buffer.read())
        def day(e, k):
            return e[k].dt.isoformat()
        def event(e):
            rule = e.get('RRULE')
            return dict(uid=str(e['UID']), summary=str(e['SUMMARY']), text=str(e['DESCRIPTION']),
                start=day(e, 'DTSTART'), end=day(e, 'DTEND'), stamp=day(e, 'DTSTAMP'),
                sequence=int(e['SEQUENCE']), errors=[str(x) for x in e.errors],
                kind=e['DTSTART'].params.get('VALUE'), rule=rule.to_ical().decode() if rule else None)
        print(json.dumps(dict(product=str(calendar['PRODID']), version=str(calendar['VERSION']),
            names=[c.name for c in calendar.subcomponents],
            events=[event(e) for e in calendar.walk('VEVENT')])))
        """;

    // Many scripts, quotes, markup, separators, a long word, emoji of several code points.
    public static TheoryData<string> Names { get; } =
    [
        "Waiting room",
        "L'Étang \"aux\" «rainettes»",
        "雨林 · 熱帯雨林 · 열대우림",
        "غابة مطيرة — יער גשם",
        "влажный лес; Дождь, и \\ мох",
        "<script>alert('x')</script>",
        "🐸👩‍🌾🌱🏳️‍🌈",
        "ผืนป่า வனம் जंगल",
        new string('W', 300),
        string.Concat(Enumerable.Repeat("é🐸", 150)),
        "a: b; c, d = e",
        "ends with backslash \\",
    ];

    [Theory]
    [MemberData(nameof(Names))]
    public void Names_survive_folding_and_escaping(string name)
    {
        var calendar = Read(CalendarFile.Write(CareDates.Of(TankPlan.Of(Built.Foam)), Tank, name));
        foreach (var e in calendar["events"]!.AsArray())
        {
            Assert.EndsWith("\n" + name, e!["text"]!.GetValue<string>(), StringComparison.Ordinal);
            // The name may be a customer's, so no summary shows it.
            Assert.DoesNotContain(name, e["summary"]!.GetValue<string>(), StringComparison.Ordinal);
        }
    }

    [Theory]
    [MemberData(nameof(Names))]
    public void Lines_end_with_CRLF_and_are_at_most_75_octets_of_whole_characters(string name)
    {
        var bytes = CalendarFile.Write(CareDates.Of(TankPlan.Of(Built.Foam)), Tank, name);
        var strict = new UTF8Encoding(false, true);
        var text = strict.GetString(bytes);
        Assert.EndsWith("END:VCALENDAR\r\n", text, StringComparison.Ordinal);
        Assert.DoesNotContain('\n', text.Replace("\r\n", "", StringComparison.Ordinal));
        // RFC 5545 section 3.1: lines of 75 octets at most, without the line break; the parts are cut from
        // bytes, so a character split between two lines would not decode.
        var start = 0;
        for (var i = 0; i + 1 < bytes.Length; i++)
        {
            if (bytes[i] == '\r' && bytes[i + 1] == '\n')
            {
                Assert.InRange(i - start, 1, 75);
                strict.GetString(bytes, start, i - start);
                start = i + 2;
            }
        }
    }

    [Fact]
    public void Every_date_of_the_plan_is_an_all_day_event_with_exclusive_end()
    {
        var plan = CareDates.Of(TankPlan.Of(Built.Foam));
        var calendar = Read(CalendarFile.Write(plan, Tank, "posed"));
        Assert.Equal("2.0", calendar["version"]!.GetValue<string>());
        Assert.Contains("Litterfall", calendar["product"]!.GetValue<string>(), StringComparison.Ordinal);
        // VEVENT only: no time zone is needed for dates, and many calendars ignore VTODO.
        Assert.All(calendar["names"]!.AsArray(), n => Assert.Equal("VEVENT", n!.GetValue<string>()));
        var events = calendar["events"]!.AsArray();
        Assert.Equal(plan.Dates.Length, events.Count);
        foreach (var (date, e) in plan.Dates.Zip(events))
        {
            Assert.Equal(Iso(date.Day), Word(e, "start"));
            Assert.Equal(Iso(date.Day.AddDays(1)), Word(e, "end"));
            Assert.Equal("DATE", Word(e, "kind"));
            Assert.Equal($"{Tank}-{date.Key}@litterfall", Word(e, "uid"));
            Assert.Equal(0, e!["sequence"]!.GetValue<int>());
            // The stamp is the planting day, not a clock: 2026-08-14T00:00:00Z.
            Assert.Equal("2026-08-14T00:00:00+00:00", Word(e, "stamp"));
            Assert.Empty(e["errors"]!.AsArray());
            Assert.Equal(Rule(date.Repeat), e["rule"]?.GetValue<string>());
        }
    }

    [Fact]
    public void The_worked_example_opens_on_its_days()
    {
        // Own worked example: planting Fri 14 Aug 2026, foam done Fri 7 Aug, grow-in over Fri 25 Sep.
        var events = Read(CalendarFile.Write(CareDates.Of(TankPlan.Of(Built.Foam)), Tank, "posed"))["events"]!
            .AsArray()
            .ToDictionary(e => Word(e, "uid"), e => Word(e, "start"));
        Assert.Equal("2026-08-14", events[$"{Tank}-planting@litterfall"]);
        Assert.Equal("2026-08-07", events[$"{Tank}-background-finished@litterfall"]);
        Assert.Equal("2026-09-25", events[$"{Tank}-grow-in-over@litterfall"]);
    }

    [Fact]
    public async Task The_same_plan_gives_the_same_bytes()
    {
        var plan = CareDates.Of(TankPlan.Of(Built.Foam));
        var first = CalendarFile.Write(plan, Tank, "posed");
        // A stamp from the clock would differ after a second.
        await Task.Delay(TimeSpan.FromMilliseconds(1100), TestContext.Current.CancellationToken);
        Assert.Equal(first, CalendarFile.Write(plan, Tank, "posed"));
    }

    [Fact]
    public void Text_is_escaped_as_the_standard_says()
    {
        // RFC 5545 section 3.3.11: backslash, semicolon and comma are escaped, a line break is \n; a colon
        // is not.
        var plan = new CarePlan(
            new DateOnly(2026, 8, 14),
            null,
            [new CareDate("a", new DateOnly(2026, 8, 14), "A; b, c", "d\\e: f\r\ng\u0007", null, "planted")]
        );
        var text = Unfolded(CalendarFile.Write(plan, Tank, "h"));
        Assert.Contains($"SUMMARY:A\\; b\\, c ({Tank})\r\n", text, StringComparison.Ordinal);
        Assert.Contains("DESCRIPTION:d\\\\e: f\\ng \\nh\r\n", text, StringComparison.Ordinal);
    }

    [Fact]
    public void The_fold_of_the_standards_own_text_can_be_undone()
    {
        // RFC 5545 section 3.1 folds DESCRIPTION:This is a long description that exists on a long line.
        const string sentence = "This is a long description that exists on a long line.";
        var text = string.Join(' ', Enumerable.Repeat(sentence, 4));
        var plan = new CarePlan(
            new DateOnly(2026, 8, 14),
            null,
            [new CareDate("a", new DateOnly(2026, 8, 14), "T", text, null, "planted")]
        );
        var bytes = CalendarFile.Write(plan, Tank, "n");
        Assert.Contains($"DESCRIPTION:{text}\\nn\r\n", Unfolded(bytes), StringComparison.Ordinal);
        Assert.Contains("\r\n ", Encoding.UTF8.GetString(bytes), StringComparison.Ordinal);
    }

    /// <summary>Unfolding by the standard: a line break and the one white space after it are taken
    /// out.</summary>
    private static string Unfolded(byte[] bytes) =>
        Encoding
            .UTF8.GetString(bytes)
            .Replace("\r\n ", "", StringComparison.Ordinal)
            .Replace("\r\n\t", "", StringComparison.Ordinal);

    private static string? Rule(CareRepeat? repeat)
    {
        if (repeat is null)
        {
            return null;
        }

        var frequency = repeat.Unit == CareUnit.Week ? "FREQ=WEEKLY" : "FREQ=DAILY";
        return repeat.Every == 1 ? frequency : $"{frequency};INTERVAL={Text(repeat.Every)}";
    }

    private static string Text(int number) =>
        number.ToString(System.Globalization.CultureInfo.InvariantCulture);

    private static string Iso(DateOnly day) =>
        day.ToString("yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);

    private static string Word(JsonNode? node, string key) => node![key]!.GetValue<string>();

    private static JsonNode Read(byte[] bytes) => Python.Read("icalendar", Reader, bytes);
}
