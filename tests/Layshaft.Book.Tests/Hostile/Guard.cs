using System.Runtime.ExceptionServices;

namespace Layshaft.Book.Tests.Hostile;

/// <summary>
/// Runs what might hang, eat the memory or run down the stack: on a thread with a small stack, for a minute at most (a guard
/// against hanging, not a measurement), with what the thread allocates counted.
/// </summary>
internal static class Guard
{
    private const int SmallStack = 512 * 1024;

    private static readonly TimeSpan s_patience = TimeSpan.FromMinutes(2);

    public static T Run<T>(Func<T> work, long mostBytes = 256L << 20)
    {
        T? result = default;
        Exception? thrown = null;
        var allocated = 0L;
        var thread = new Thread(
            () =>
            {
                var before = GC.GetAllocatedBytesForCurrentThread();
                try
                {
                    result = work();
                }
#pragma warning disable CA1031 // whatever it is, it is thrown again on the test's own thread
                catch (Exception e)
                {
                    thrown = e;
                }
#pragma warning restore CA1031

                allocated = GC.GetAllocatedBytesForCurrentThread() - before;
            },
            SmallStack)
        {
            IsBackground = true,
        };
        thread.Start();
        Assert.True(thread.Join(s_patience), "It has not come back.");
        if (thrown is not null)
        {
            ExceptionDispatchInfo.Throw(thrown);
        }

        Assert.True(allocated <= mostBytes, $"It allocated {allocated >> 20} MiB.");
        return result!;
    }
}
