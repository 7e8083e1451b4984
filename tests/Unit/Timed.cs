namespace Litterfall.UnitTests;

/// <summary>Tests that look at the clock run alone; the others side by side.</summary>
[CollectionDefinition("timed", DisableParallelization = true)]
public sealed class Timed;
