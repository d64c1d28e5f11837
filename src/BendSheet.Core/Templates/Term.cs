namespace BendSheet.Core.Templates;

/// <summary>
/// A leg, a bend or a rotation as it follows from what was read: an observation itself, a figure that nobody measured, or reckoned from
/// others. In millimetres or radians.
/// </summary>
public abstract class Term
{
    /// <summary>Its value if the observations were these.</summary>
    public abstract double ValueWith(Func<Observation, double> values);

    /// <summary>A figure that is not measured but known.</summary>
    public static Term Exactly(double value) => new Known(value);

    /// <summary>Both together.</summary>
    public static Term Sum(Term one, Term other) => new Reckoned([one, other], parts => parts[0] + parts[1]);

    /// <summary>The same the other way.</summary>
    public static Term Negative(Term term) => term is Opposite { Of: var other } ? other : new Opposite(term);

    /// <summary>Follows from others by a formula.</summary>
    public static Term From(IReadOnlyList<Term> terms, Func<double[], double> formula) => new Reckoned(terms, formula);

    private sealed class Known(double value) : Term
    {
        public override double ValueWith(Func<Observation, double> values) => value;
    }

    private sealed class Opposite(Term of) : Term
    {
        public Term Of => of;

        public override double ValueWith(Func<Observation, double> values) => -of.ValueWith(values);
    }

    private sealed class Reckoned(IReadOnlyList<Term> terms, Func<double[], double> formula) : Term
    {
        public override double ValueWith(Func<Observation, double> values)
        {
            var parts = new double[terms.Count];
            for (var i = 0; i < parts.Length; i++)
            {
                parts[i] = terms[i].ValueWith(values);
            }

            return formula(parts);
        }
    }
}
