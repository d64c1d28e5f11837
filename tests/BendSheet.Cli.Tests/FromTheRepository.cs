namespace BendSheet.Cli.Tests;

/// <summary>
/// Tests that run in the repository's own folder, so that names in findings are relative and the same on every machine. The current
/// folder belongs to the whole process: these tests run one after the other, and none beside them.
/// </summary>
[CollectionDefinition(Name, DisableParallelization = true)]
public sealed class FromTheRepository : ICollectionFixture<RepositoryFolder>
{
    public const string Name = "from the repository";
}

/// <summary>Goes to the repository's folder, and back at the end.</summary>
public sealed class RepositoryFolder : IDisposable
{
    private readonly string _before = Environment.CurrentDirectory;

    public RepositoryFolder() => Environment.CurrentDirectory = Path;

    /// <summary>Where the solution lies, above the built tests.</summary>
    public static string Path { get; } = Find(AppContext.BaseDirectory);

    public void Dispose() => Environment.CurrentDirectory = _before;

    private static string Find(string folder)
    {
        for (var above = new DirectoryInfo(folder); above is not null; above = above.Parent)
        {
            if (File.Exists(System.IO.Path.Combine(above.FullName, "BendSheet.sln")))
            {
                return above.FullName;
            }
        }

        throw new DirectoryNotFoundException($"there is no BendSheet.sln above {folder}");
    }
}
