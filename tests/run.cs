#!/usr/bin/env dotnet
// Runs every check of the project and closes with "N passed, N failed".
// On a fresh machine it needs the .NET SDK only; a browser, node and the HTML checker for the tests are installed where they can
// be. Where CI is set in the environment a missing HTML checker counts as a failure.
#:property ManagePackageVersionsCentrally=false
#:property RestorePackagesWithLockFile=false
#:property PublishAot=false
#:property IsTestProject=false
#:property EnforceCodeStyleInBuild=false

using System.Diagnostics;
using System.Globalization;
using System.Runtime.CompilerServices;
using System.Xml.Linq;

var root = Path.GetFullPath(Path.Combine(Path.GetDirectoryName(Here())!, ".."));
var results = Path.Combine(root, "tests", "TestResults");
var failedSteps = 0;

EnsureBrowser();
EnsureNode();
failedSteps += EnsureHtmlChecker();
failedSteps += Step("Build", "dotnet", "build", "Layshaft.slnx", "-c", "Release", "-v", "q", "-nologo");
failedSteps += Step("Formatting", "dotnet", "format", "whitespace", ".", "--folder", "--verify-no-changes", "--exclude", "tests/.tools");

if (Directory.Exists(results))
{
    Directory.Delete(results, recursive: true);
}

var passed = 0;
var failed = 0;
foreach (var project in Directory.GetDirectories(Path.Combine(root, "tests"), "*.Tests").Order(StringComparer.Ordinal))
{
    var name = Path.GetFileName(project);
    var code = Run("dotnet", "test", project, "-c", "Release", "--no-build", "-v", "q", "-nologo", "--logger", $"trx;LogFileName={name}.trx", "--results-directory", results);
    var trx = Path.Combine(results, name + ".trx");
    if (!File.Exists(trx))
    {
        Console.WriteLine($"{name}: no result was written.");
        failedSteps++;
        continue;
    }

    var counters = XDocument.Load(trx).Descendants().First(e => e.Name.LocalName == "Counters");
    passed += Count(counters, "passed");
    failed += Count(counters, "failed") + Count(counters, "error") + Count(counters, "timeout") + Count(counters, "aborted");
    failedSteps += code != 0 && Count(counters, "failed") == 0 ? 1 : 0;
}

if (passed == 0)
{
    failedSteps++;
}

Console.WriteLine(string.Create(CultureInfo.InvariantCulture, $"{passed} passed, {failed + failedSteps} failed"));
return failed + failedSteps == 0 ? 0 : 1;

int Count(XElement counters, string what) => int.Parse(counters.Attribute(what)?.Value ?? "0", CultureInfo.InvariantCulture);

int Step(string name, string program, params string[] arguments)
{
    Console.WriteLine($"{name} …");
    return Run(program, arguments) == 0 ? 0 : Failed(name);
}

int Failed(string name)
{
    Console.WriteLine($"{name} failed.");
    return 1;
}

int Run(string program, params string[] arguments)
{
    var start = new ProcessStartInfo(program) { WorkingDirectory = root };
    foreach (var argument in arguments)
    {
        start.ArgumentList.Add(argument);
    }

    using var process = Process.Start(start)!;
    process.WaitForExit();
    return process.ExitCode;
}

void EnsureBrowser()
{
    string[] names = ["/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome"];
    if (Environment.GetEnvironmentVariable("LAYSHAFT_BROWSER") is { Length: > 0 } || names.Any(File.Exists))
    {
        return;
    }

    if (OperatingSystem.IsLinux() && File.Exists("/usr/bin/apt-get") && Environment.UserName == "root")
    {
        Console.WriteLine("Installing chromium for the site's tests …");
        _ = Run("apt-get", "update", "-qq");
        _ = Run("apt-get", "install", "-y", "-qq", "chromium");
    }

    if (!names.Any(File.Exists))
    {
        Console.WriteLine("The site's tests need a Chromium browser. Install one (Debian, Ubuntu: sudo apt-get install chromium), or name it in LAYSHAFT_BROWSER.");
    }
}

// The schema tests let an npm package judge the schemas; they fetch it themselves once there is npm.
void EnsureNode()
{
    var (npm, node) = (OnPath("npm"), OnPath("node"));
    if (!(npm && node) && OperatingSystem.IsLinux() && File.Exists("/usr/bin/apt-get") && Environment.UserName == "root")
    {
        Console.WriteLine("Installing node and npm for the schema tests …");
        _ = Run("apt-get", "update", "-qq");
        _ = Run("apt-get", "install", "-y", "-qq", "--no-install-recommends", "nodejs", "npm");
        (npm, node) = (OnPath("npm"), OnPath("node"));
    }

    if (!(npm && node))
    {
        Console.WriteLine("The schema tests need node and npm. Install them (Debian, Ubuntu: sudo apt-get install nodejs npm).");
    }
}

// The Nu HTML checker runs on Java and comes as an npm package.
int EnsureHtmlChecker()
{
    const string Package = "vnu-jar@26.9.27";
    var tools = Path.Combine(root, "tests", ".tools");
    var jar = Environment.GetEnvironmentVariable("LAYSHAFT_NU_CHECKER") is { Length: > 0 } named
        ? named
        : Path.Combine(tools, "node_modules", "vnu-jar", "build", "dist", "vnu.jar");
    if (!OnPath("java") && OperatingSystem.IsLinux() && File.Exists("/usr/bin/apt-get") && Environment.UserName == "root")
    {
        Console.WriteLine("Installing Java for the HTML test …");
        _ = Run("apt-get", "update", "-qq");
        _ = Run("apt-get", "install", "-y", "-qq", "--no-install-recommends", "default-jre-headless");
    }

    if (!File.Exists(jar) && jar.StartsWith(tools, StringComparison.Ordinal) && OnPath("npm"))
    {
        Console.WriteLine("Fetching the Nu HTML checker …");
        Directory.CreateDirectory(tools);
        _ = Run(
            OperatingSystem.IsWindows() ? "npm.cmd" : "npm",
            "install", "--prefix", tools, "--ignore-scripts", "--no-save", "--no-audit", "--no-fund", "--silent", Package);
    }

    if (OnPath("java") && File.Exists(jar))
    {
        return 0;
    }

    Console.WriteLine($"The HTML test is left out: it needs Java and the npm package {Package}. Install Java and npm (Debian, Ubuntu: sudo apt-get install default-jre-headless npm), or name a vnu.jar in LAYSHAFT_NU_CHECKER.");
    return Environment.GetEnvironmentVariable("CI") is { Length: > 0 } ? Failed("HTML checker") : 0;
}

static bool OnPath(string program) => (Environment.GetEnvironmentVariable("PATH") ?? string.Empty)
    .Split(Path.PathSeparator)
    .Any(folder => File.Exists(Path.Combine(folder, program)) || File.Exists(Path.Combine(folder, program + ".exe")) || File.Exists(Path.Combine(folder, program + ".cmd")));

static string Here([CallerFilePath] string path = "") => path;
