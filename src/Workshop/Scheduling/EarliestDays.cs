using Litterfall.Domain.Schedule;

namespace Litterfall.Workshop.Scheduling;

/// <summary>The earliest days of one order that has the workshop for itself.</summary>
/// <param name="Days">The days.</param>
/// <param name="Critical">Key of the stage that decides: what comes before it does not matter.</param>
/// <param name="Begins">The first day on which that stage can be done.</param>
/// <param name="Why">What takes the time, in words.</param>
public sealed record EarliestDays(OrderDays Days, string Critical, DateOnly Begins, string Why)
{
    private const int LongestLead = 4000;

    /// <summary>Key of the start of cultures, as the stage that decides.</summary>
    public const string Cultures = "cultures";

    /// <summary>The earliest days.</summary>
    /// <param name="need">What the order needs.</param>
    /// <param name="calendar">Days of the workshop.</param>
    /// <param name="today">Today.</param>
    public static EarliestDays Find(OrderNeed need, ShopCalendar calendar, DateOnly today) =>
        new Pass(need, calendar, today).Run();

    /// <summary>One walk through the stages; what decides is carried along.</summary>
    private sealed class Pass(OrderNeed need, ShopCalendar calendar, DateOnly today)
    {
        private readonly List<string> why = [];
        private string critical = "";
        private DateOnly begins;
        private DateOnly free;
        private OrderDays days = new()
        {
            Order = need.Order,
            Background = need.Finished(StageKey.Background),
            Plant = need.Finished(StageKey.Plant),
            PlantsIn = need.Finished(StageKey.Plants),
            Cut = need.Finished(StageKey.Cut),
            Pack = today,
            Ship = today,
            Arrive = today,
        };

        public EarliestDays Run()
        {
            (begins, free) = (today, today);
            After(StageKey.Background, need.CureDays, "of cure");
            After(StageKey.Plant, need.GrowInDays, "of grow-in");
            foreach (var stage in need.Open())
            {
                if (stage == StageKey.Plant)
                {
                    Join();
                }

                Work(stage);
            }

            return new(days, critical.Length > 0 ? critical : StageKey.Pack, begins, string.Join(", ", why));
        }

        /// <summary>A stage that was done before leaves its wait.</summary>
        private void After(string stage, int wait, string words)
        {
            if (need.Finished(stage) is { } done && wait > 0)
            {
                Later(done.AddDays(wait + calendar.ClearDays), stage, done, $"{Count(wait)} {words}");
            }
        }

        /// <summary>Quarantine and cultures run beside the work and end with planting.</summary>
        private void Join()
        {
            if (need.QuarantineDays > 0)
            {
                var came = need.Finished(StageKey.Plants);
                var from = came ?? Max(today.AddDays(1), need.Wait(StageKey.Plants)?.Day);
                var start = came ?? PlanDays.From(from, calendar.IsWork) ?? from;
                days = days with { PlantsIn = start };
                var words = $"{Count(need.QuarantineDays)} of plant quarantine";
                var wait = came is null ? need.Wait(StageKey.Plants) : null;
                Later(
                    start.AddDays(need.QuarantineDays + calendar.ClearDays),
                    StageKey.Plants,
                    start,
                    wait is { } known && known.Day == from ? $"{known.Why}, {words}" : words
                );
            }

            if (need.CultureDays > 0)
            {
                var start = PlanDays.From(today, calendar.IsWork) ?? today;
                days = days with { CulturesStart = start };
                Later(
                    start.AddDays(need.CultureDays),
                    Cultures,
                    start,
                    $"{Count(need.CultureDays)} until cultures are ready"
                );
            }
        }

        private void Work(string stage)
        {
            if (need.Wait(stage) is { } wait)
            {
                Later(wait.Day, stage, wait.Day, wait.Why);
            }

            var span = StageSpan.From(calendar, need.Minutes(stage));
            var last = stage switch
            {
                StageKey.Leak => Leak(),
                StageKey.Pack => Leave(span),
                _ => span.Last(calendar, free) ?? free.AddDays(LongestLead),
            };
            days = Put(stage, last);
            var isWork = need.Minutes(stage) > 0;
            if (isWork && span.Days > 1)
            {
                why.Add($"{Count(span.Days)} of {Word(stage)}");
            }

            free = last.AddDays(1);
            Next(stage, last);
        }

        private void Next(string stage, DateOnly last)
        {
            if (stage == StageKey.Background && need.CureDays > 0)
            {
                Rest(last, need.CureDays, "of cure", stage);
            }
            else if (stage == StageKey.Plant && need.GrowInDays > 0)
            {
                Rest(last, need.GrowInDays, "of grow-in", stage);
            }
        }

        /// <summary>A wait after work that is not done yet; what decided the work decides it too.</summary>
        private void Rest(DateOnly last, int wait, string words, string stage)
        {
            free = last.AddDays(wait + calendar.ClearDays);
            why.Add($"{Count(wait)} {words}");
            if (critical.Length == 0)
            {
                (critical, begins) = (stage, last);
            }
        }

        private DateOnly Leak()
        {
            var count = LeakDays(need, calendar);
            return PlanDays.From(free.AddDays(count - 1), calendar.IsWork) ?? free;
        }

        private DateOnly Leave(StageSpan span)
        {
            var first = span.Last(calendar, free) ?? free.AddDays(LongestLead);
            return PlanDays.From(first, d => BackPlan.Leaves(need, calendar, d) && span.Does(calendar, d))
                ?? first.AddDays(LongestLead);
        }

        private OrderDays Put(string stage, DateOnly last) =>
            stage switch
            {
                StageKey.Cut => days with { Cut = last },
                StageKey.Background => days with { Background = last },
                StageKey.Plant => days with
                {
                    Plant = last,
                    GrownIn = last.AddDays(need.GrowInDays),
                    AnimalsFrom = need.AnimalDays is { } wait ? last.AddDays(wait) : null,
                },
                StageKey.Pack => days with
                {
                    Pack = last,
                    Ship = last,
                    Arrive = BackPlan.Arrives(need, calendar, last),
                },
                _ => days,
            };

        /// <summary>
        /// Something is free later than all before: it decides, and what decided before does not.
        /// </summary>
        private void Later(DateOnly day, string stage, DateOnly from, string words)
        {
            if (day > free)
            {
                free = day;
                why.Clear();
                why.Add(words);
                (critical, begins) = (stage, from);
            }
        }

        private static string Word(string stage) =>
            stage switch
            {
                StageKey.Cut => "cutting",
                StageKey.Background => "work on the background",
                StageKey.Plant => "building and planting",
                _ => "packing",
            };

        private static DateOnly Max(DateOnly day, DateOnly? other) => other > day ? other.Value : day;

        private static string Count(int count) => PlanWords.Days(count);
    }

    /// <summary>Days on which the tanks of an order stand filled, as there are places.</summary>
    internal static int LeakDays(OrderNeed need, ShopCalendar calendar) =>
        Math.Max(1, (need.Tanks + calendar.LeakTestPlaces - 1) / Math.Max(1, calendar.LeakTestPlaces));
}
