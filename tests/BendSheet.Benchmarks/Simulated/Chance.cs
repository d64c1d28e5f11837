namespace BendSheet.Benchmarks.Simulated;

/// <summary>Chance with a fixed beginning, so that every run simulates the same.</summary>
internal sealed class Chance(int seed)
{
    private readonly Random _random = new(seed);

    public int Whole(int from, int below) => _random.Next(from, below);

    public double Between(double from, double to) => from + ((to - from) * _random.NextDouble());

    /// <summary>Of a normal distribution around zero (Box and Muller, 1958).</summary>
    public double Error(double deviation) =>
        deviation * Math.Sqrt(-2 * Math.Log(1 - _random.NextDouble())) * Math.Cos(2 * Math.PI * _random.NextDouble());

    /// <summary>Read in whole figures, with so much of deviation in all: a whole figure alone is out by √(1/12).</summary>
    public double Whole(double value, double deviation) => Math.Round(value + Error(Math.Sqrt((deviation * deviation) - (1.0 / 12))));

    public T One<T>(IReadOnlyList<T> of) => of[_random.Next(of.Count)];
}
