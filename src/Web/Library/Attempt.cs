using Litterfall.Store;

namespace Litterfall.Web.Library;

/// <summary>A step that the disk may not take: told in one sentence instead of ending the page.</summary>
public static class Attempt
{
    /// <summary>Does it; null where it is done, else what kept it from being done.</summary>
    /// <param name="step">The step.</param>
    public static async Task<string?> AtAsync(Func<Task> step)
    {
        try
        {
            await step();
            return null;
        }
        catch (ShopRefusedException refused)
        {
            return refused.Message;
        }
        catch (Exception e) when (StoreTrouble.Words(e) is { } words)
        {
            return $"Not saved: {words}. What you entered is still here; try again when that is put right.";
        }
    }
}
