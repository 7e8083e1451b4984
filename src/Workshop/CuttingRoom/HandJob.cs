using Litterfall.Domain.Cutting;

namespace Litterfall.Workshop.CuttingRoom;

/// <summary>
/// Parts that were cut without a plan: they leave the table, the book of stock is not touched.
/// </summary>
public static class HandJob
{
    /// <summary>All parts of a material that one order still wants, as cut.</summary>
    /// <param name="number">Number of the plan.</param>
    /// <param name="material">The material.</param>
    /// <param name="order">Number of the order; null for stock.</param>
    /// <param name="when">Day, and who says so.</param>
    public static CuttingJob Make(
        int number,
        CutMaterial material,
        int? order,
        (DateOnly Day, string Who) when
    ) =>
        new()
        {
            Number = number,
            Day = when.Day,
            Good = material.Good.Key,
            Name = material.Name,
            Millimeters = material.Millimeters,
            Task = new() { Stock = [], Parts = [] },
            Plan = new()
            {
                IsProved = false,
                Value = 0,
                Bound = 0,
                Sheets = [],
            },
            Sources = [],
            Pieces =
            [
                .. material
                    .Parts.Where(p => p.Order == order)
                    .SelectMany(p => Enumerable.Repeat(p, p.Count))
                    .Select(
                        (p, i) =>
                            new CutPiece
                            {
                                Number = i + 1,
                                Demand = p.Part,
                                Order = p.Order,
                                For = p.For,
                                Part = p.Part,
                                Length = p.Length,
                                Width = p.Width,
                                Note = p.Note,
                            }
                    ),
            ],
            State = CuttingJobState.Cut,
            Who = when.Who,
            CutOn = when.Day,
            CutBy = when.Who,
        };
}
