using System.Reflection;
using ArchUnitNET.Domain;
using ArchUnitNET.Loader;
using BendSheet.Core.Car;
using BendSheet.Files.Reading;
using BendSheet.Pdf;
using BendSheet.Sheets;
using Assembly = System.Reflection.Assembly;

namespace BendSheet.Cli.Tests;

/// <summary>
/// The layout that DEVELOPERS.md tells: no cycle between the namespaces of a project, each outside library in one project.
/// </summary>
public class ArchitectureTests
{
    private static Assembly[] Projects { get; } =
    [
        typeof(CarPlan).Assembly,
        typeof(TemplateReader).Assembly,
        typeof(PrintedSheets).Assembly,
        typeof(PdfPress).Assembly,
        typeof(CommandLine).Assembly,
    ];

    private static Architecture Program { get; } = new ArchLoader().LoadAssemblies(Projects).Build();

    public static TheoryData<string> Names => [.. Projects.Select(project => project.GetName().Name!)];

    [Theory]
    [MemberData(nameof(Names))]
    public void No_namespace_of_a_project_depends_on_one_that_depends_on_it(string project)
    {
        var arrows = Program.Types.Where(type => IsIn(type, project)).SelectMany(type => type.Dependencies)
            .Where(arrow => IsIn(arrow.Target, project) && !Same(arrow.Origin, arrow.Target))
            .ToLookup(arrow => (From: arrow.Origin.Namespace.FullName, To: arrow.Target.Namespace.FullName));
        var next = arrows.ToLookup(arrow => arrow.Key.From, arrow => arrow.Key.To, StringComparer.Ordinal);
        var back = arrows.Where(arrow => Reaches(next, arrow.Key.To, arrow.Key.From))
            .Select(arrow =>
                $"{arrow.Key.From} → {arrow.Key.To}: "
                    + string.Join(", ", arrow.Select(one => $"{one.Origin.Name} uses {one.Target.Name}").Distinct(StringComparer.Ordinal)));
        Assert.Contains(Program.Types, type => IsIn(type, project));
        Assert.True(!back.Any(), string.Join('\n', back));
    }

    [Fact]
    public void Each_outside_library_is_used_by_one_project()
    {
        var runtime = Path.GetDirectoryName(typeof(object).Assembly.Location);
        var uses = Projects.SelectMany(
            project => project.GetReferencedAssemblies(), (project, library) => (Project: project.GetName().Name, Library: library.Name!))
            .Where(use => !use.Library.StartsWith("BendSheet", StringComparison.Ordinal))
            .Where(use => !Equals(Path.GetDirectoryName(Assembly.Load(new AssemblyName(use.Library)).Location), runtime))
            .OrderBy(use => use.Library, StringComparer.Ordinal).Select(use => $"{use.Library}: {use.Project}");
        Assert.Equal(
            [
                "MathNet.Numerics: BendSheet.Core",
                "PdfSharp: BendSheet.Pdf",
                "System.CommandLine: bendsheet",
                "System.IO.Hashing: BendSheet.Core",
                "YamlDotNet: BendSheet.Files",
            ],
            uses,
            StringComparer.Ordinal);
    }

    /// <summary>What the compiler adds for itself lies in no namespace.</summary>
    private static bool IsIn(IType type, string project) => type.Namespace?.FullName is { Length: > 0 }
        && (type.Assembly.Name.StartsWith(project + ",", StringComparison.Ordinal) || Equals(type.Assembly.Name, project));

    private static bool Same(IType one, IType other) => Equals(one.Namespace.FullName, other.Namespace.FullName);

    private static bool Reaches(ILookup<string, string> next, string from, string to)
    {
        var seen = new HashSet<string>(StringComparer.Ordinal);
        var open = new Stack<string>([from]);
        while (open.TryPop(out var one))
        {
            if (Equals(one, to))
            {
                return true;
            }

            if (seen.Add(one))
            {
                foreach (var further in next[one])
                {
                    open.Push(further);
                }
            }
        }

        return false;
    }

    private static bool Equals(string? one, string? other) => string.Equals(one, other, StringComparison.Ordinal);
}
