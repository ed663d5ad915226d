using System.Runtime.InteropServices;
using Microsoft.Win32.SafeHandles;

namespace Layshaft.Book.Reading;

/// <summary>
/// The one way to open a file for reading: a pipe, socket, device, folder or link in its place is refused, since a pipe may keep its
/// reader waiting, a device may have no end, and a link may lead anywhere.
/// </summary>
/// <remarks>
/// On Linux and macOS the file is opened without waiting, and the open file is asked what it is, so nothing can take its place in
/// between. On Windows pipes and devices are not in folders; there a link is looked for first.
/// </remarks>
public static class RegularFile
{
    private const int BufferSize = 4096;
    private const int WholeFile = 0x1000; // AT_EMPTY_PATH: the open file itself
    private const uint TypeOnly = 1; // STATX_TYPE
    private const int StatusBytes = 256; // Of statx; more than macOS needs
    private const int TypeMask = 0xF000;
    private const int RegularType = 0x8000;
    private const int Interrupted = 4;
    private const int NoSuchFile = 2;
    private const int NoSuchDevice = 6;
    private const int NotPermitted = 1;
    private const int NoRights = 13;
    private const int NoFolder = 20;

    /// <summary>Opens a file.</summary>
    /// <param name="path">Where it is.</param>
    /// <exception cref="FileNotFoundException">There is nothing.</exception>
    /// <exception cref="DirectoryNotFoundException">Its folder is missing.</exception>
    /// <exception cref="UnauthorizedAccessException">It may not be read.</exception>
    /// <exception cref="IOException">It is not a regular file, or it cannot be read.</exception>
    public static FileStream Open(string path)
    {
        ArgumentException.ThrowIfNullOrEmpty(path);
        if (OperatingSystem.IsWindows())
        {
            return (File.GetAttributes(path) & FileAttributes.ReparsePoint) != 0
                ? throw NotRegular(path)
                : new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite | FileShare.Delete, BufferSize);
        }

        var handle = OpenUnix(path);
        try
        {
            return IsRegular(handle) ? new FileStream(handle, FileAccess.Read, BufferSize) : throw NotRegular(path);
        }
        catch
        {
            handle.Dispose();
            throw;
        }
    }

    /// <summary>Reads a file whole, as long as it was when it was opened.</summary>
    /// <inheritdoc cref="Open"/>
    public static byte[] ReadAll(string path)
    {
        using var stream = Open(path);
        var bytes = new byte[stream.Length];
        var read = stream.ReadAtLeast(bytes, bytes.Length, throwOnEndOfStream: false);
        return read == bytes.Length ? bytes : bytes[..read];
    }

    private static SafeFileHandle OpenUnix(string path)
    {
        while (true)
        {
            var file = OpenFile(path, ReadWithoutWaiting);
            var error = Marshal.GetLastPInvokeError();
            if (file >= 0)
            {
                return new SafeFileHandle(file, ownsHandle: true);
            }

            if (error != Interrupted)
            {
                throw Failure(path, error);
            }
        }
    }

    // O_RDONLY, O_NONBLOCK, O_CLOEXEC and O_NOFOLLOW, which is another number on ARM.
    private static int ReadWithoutWaiting => OperatingSystem.IsMacOS() ? 0x4 | 0x100_0000 | 0x100
        : 0x800 | 0x8_0000 | (RuntimeInformation.ProcessArchitecture is Architecture.Arm or Architecture.Arm64 or Architecture.Armv6 or Architecture.Ppc64le ? 0x8000 : 0x2_0000);

    private static bool IsRegular(SafeFileHandle handle)
    {
        Span<byte> status = stackalloc byte[StatusBytes];
        ref var first = ref MemoryMarshal.GetReference(status);
        if (!OperatingSystem.IsMacOS())
        {
            return StatusX(handle, string.Empty, WholeFile, TypeOnly, ref first) == 0 && IsRegular(status[28..]);
        }

        var failed = RuntimeInformation.ProcessArchitecture == Architecture.X64 ? Status64(handle, ref first) : Status(handle, ref first);
        return failed == 0 && IsRegular(status[4..]);
    }

    private static bool IsRegular(ReadOnlySpan<byte> mode) => (MemoryMarshal.Read<ushort>(mode) & TypeMask) == RegularType;

    private static Exception Failure(string path, int error) => error switch
    {
        NoSuchFile => new FileNotFoundException($"There is no file '{path}'.", path),
        NoFolder => new DirectoryNotFoundException($"The folder of '{path}' is missing."),
        NoRights or NotPermitted => new UnauthorizedAccessException($"'{path}' may not be read: {Marshal.GetPInvokeErrorMessage(error)}."),
        NoSuchDevice => NotRegular(path),
        _ when error == (OperatingSystem.IsMacOS() ? 62 : 40) => NotRegular(path), // ELOOP
        _ => new IOException($"'{path}' cannot be opened: {Marshal.GetPInvokeErrorMessage(error)}."),
    };

    private static IOException NotRegular(string path) => new($"'{path}' is not a regular file but a pipe, socket, device, folder or link. Put a file in its place.");

    [DllImport("libc", EntryPoint = "open", SetLastError = true, BestFitMapping = false, ThrowOnUnmappableChar = true)]
    private static extern int OpenFile([MarshalAs(UnmanagedType.LPUTF8Str)] string path, int flags);

    [DllImport("libc", EntryPoint = "statx", SetLastError = true, BestFitMapping = false, ThrowOnUnmappableChar = true)]
    private static extern int StatusX(SafeFileHandle file, [MarshalAs(UnmanagedType.LPUTF8Str)] string path, int flags, uint mask, ref byte status);

    [DllImport("libc", EntryPoint = "fstat", SetLastError = true)]
    private static extern int Status(SafeFileHandle file, ref byte status);

    [DllImport("libc", EntryPoint = "fstat$INODE64", SetLastError = true)]
    private static extern int Status64(SafeFileHandle file, ref byte status);
}
