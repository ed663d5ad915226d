using System.Runtime.InteropServices;

namespace Layshaft.Site.Publishing;

/// <summary>Two steps that the base library does not offer.</summary>
internal static class NativeFiles
{
    private const int CurrentFolder = -100; // AT_FDCWD
    private const uint Exchange = 2; // RENAME_EXCHANGE

    /// <summary>Makes a hard link to a file; false where the disk or the system cannot.</summary>
    internal static bool TryHardLink(string from, string to)
    {
        try
        {
            return OperatingSystem.IsWindows() ? CreateHardLink(to, from, 0) : Link(from, to) == 0;
        }
        catch (Exception e) when (e is EntryPointNotFoundException or DllNotFoundException)
        {
            return false;
        }
    }

    /// <summary>Lets two files or folders change places in one step (Linux 3.15 and later, on most of its file systems); false otherwise.</summary>
    internal static bool TryExchange(string one, string other)
    {
        try
        {
            return OperatingSystem.IsLinux() && RenameAt2(CurrentFolder, one, CurrentFolder, other, Exchange) == 0;
        }
        catch (Exception e) when (e is EntryPointNotFoundException or DllNotFoundException)
        {
            return false;
        }
    }

    [DllImport("libc", EntryPoint = "link", SetLastError = true, BestFitMapping = false, ThrowOnUnmappableChar = true)]
    private static extern int Link([MarshalAs(UnmanagedType.LPUTF8Str)] string from, [MarshalAs(UnmanagedType.LPUTF8Str)] string to);

    [DllImport("libc", EntryPoint = "renameat2", SetLastError = true, BestFitMapping = false, ThrowOnUnmappableChar = true)]
    private static extern int RenameAt2(
        int oneFolder, [MarshalAs(UnmanagedType.LPUTF8Str)] string one,
        int otherFolder, [MarshalAs(UnmanagedType.LPUTF8Str)] string other, uint flags);

    [DllImport("kernel32", EntryPoint = "CreateHardLinkW", SetLastError = true, CharSet = CharSet.Unicode)]
    [return: MarshalAs(UnmanagedType.Bool)]
    private static extern bool CreateHardLink(string to, string from, nint reserved);
}
