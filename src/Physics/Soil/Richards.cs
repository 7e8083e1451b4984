namespace Litterfall.Physics.Soil;

/// <summary>Unsaturated flow in columns.</summary>
public static class Richards
{
    /// <summary>Runs columns through spans of forcing.</summary>
    public static ColumnResult Run(
        SoilColumns columns,
        ColumnBoundaries boundaries,
        ColumnState start,
        IReadOnlyList<ForcingSpan> spans,
        StepControl control,
        CancellationToken cancel = default
    ) => throw new NotSupportedException();
}
