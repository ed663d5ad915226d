#!/usr/bin/env dotnet
// Builds the packages: the .NET tool, and a self-contained executable for each system. Usage:
//   dotnet run src/Layshaft.Cli/Packaging/pack.cs -- FOLDER [tool|win-x64|win-arm64|osx-x64|osx-arm64|linux-x64|linux-arm64 ...]
// Without names it builds all of them. A system whose runtime is not available is named at the end; the others are built.
#:property ManagePackageVersionsCentrally=false
#:property RestorePackagesWithLockFile=false
#:property PublishAot=false
#:property EnforceCodeStyleInBuild=false

using System.Diagnostics;
using System.Runtime.CompilerServices;

string[] systems = ["win-x64", "win-arm64", "osx-x64", "osx-arm64", "linux-x64", "linux-arm64"];
if (args.Length == 0 || args[1..].Except([.. systems, "tool"]).Any())
{
    Console.WriteLine($"Usage: dotnet run src/Layshaft.Cli/Packaging/pack.cs -- FOLDER [tool|{string.Join('|', systems)} ...]");
    return 2;
}

var root = Path.GetFullPath(Path.Combine(Path.GetDirectoryName(Here())!, "..", "..", ".."));
var output = Path.GetFullPath(args[0]);
var project = Path.Combine(root, "src", "Layshaft.Cli", "Layshaft.Cli.csproj");
List<string> failed = [];
foreach (var name in args.Length > 1 ? args[1..] : ["tool", .. systems])
{
    Console.WriteLine($"{name} …");
    var work = Path.Combine(output, ".work", name);
    string[] common = ["-c", "Release", "-v", "q", "-nologo", $"-p:LockFolder={Path.Combine(work, "locks")}", "--artifacts-path", work];
    var built = name == "tool"
        ? Run(["pack", project, .. common, "-o", output])
        : Run(["publish", project, .. common, "-r", name, "--self-contained", "-p:PackAsTool=false", "-p:PublishSingleFile=true", "-p:IncludeAllContentForSelfExtract=true", "-p:DebugType=none", "-p:PublishReadyToRun=true", "-o", Path.Combine(output, name)]);
    if (!built)
    {
        failed.Add(name);
    }
}

if (Directory.Exists(Path.Combine(output, ".work")))
{
    Directory.Delete(Path.Combine(output, ".work"), recursive: true);
}

foreach (var file in Directory.EnumerateFiles(output, "*", SearchOption.AllDirectories).Order(StringComparer.Ordinal))
{
    Console.WriteLine($"{Path.GetRelativePath(output, file)}  {new FileInfo(file).Length / 1048576.0:0.0} MiB");
}

Console.WriteLine(failed.Count == 0 ? "All packages built." : $"Not built: {string.Join(", ", failed)}.");
return failed.Count == 0 ? 0 : 1;

bool Run(string[] arguments)
{
    using var process = Process.Start(new ProcessStartInfo("dotnet", arguments) { WorkingDirectory = root })!;
    process.WaitForExit();
    return process.ExitCode == 0;
}

static string Here([CallerFilePath] string path = "") => path;
