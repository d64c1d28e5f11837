namespace BendSheet.Core.Templates;

/// <summary>
/// A leg, a bend or a rotation as it follows from what was read: an observation itself, a figure that nobody measured, or reckoned from
/// others. In millimetres or radians.
/// </summary>
public abstract class Term
{
    /// <summary>Its value if the observations were these.</summary>
    public abstract double ValueWith(Func<Observation, double> values);

    /// <summary>Hands on how it changes with each observation that it follows from, by the chain rule; one may come twice.</summary>
    /// <param name="values">Of the observations.</param>
    /// <param name="factor">What each slope is multiplied by.</param>
    /// <param name="take">Is given an observation and its slope.</param>
    public abstract void SlopesWith(Func<Observation, double> values, double factor, Action<Observation, double> take);

    /// <summary>A figure that is not measured but known.</summary>
    public static Term Exactly(double value) => new Known(value);

    /// <summary>The sum of two.</summary>
    public static Term Sum(Term one, Term other) => new Both(one, other);

    /// <summary>The same with the other sign.</summary>
    public static Term Negative(Term term) => term is Opposite { Of: var other } ? other : new Opposite(term);

    /// <summary>Follows from others by a formula.</summary>
    /// <param name="terms">The others.</param>
    /// <param name="formula">Of their values.</param>
    /// <param name="slopes">How the formula changes with each of them.</param>
    public static Term From(IReadOnlyList<Term> terms, Func<double[], double> formula, Func<double[], double[]> slopes) =>
        new Reckoned(terms, formula, slopes);

    private sealed class Known(double value) : Term
    {
        public override double ValueWith(Func<Observation, double> values) => value;

        public override void SlopesWith(Func<Observation, double> values, double factor, Action<Observation, double> take)
        {
        }
    }

    /// <summary>
    /// Made of others by adding and taking away. Many rows may add up to one leg, each sum within the next one: they are walked on a list
    /// of their own, in the order in which they were added.
    /// </summary>
    private abstract class Added : Term
    {
        /// <summary>Kept once asked for; of sums within a sum only the outermost is asked.</summary>
        private (Term Part, double Sign)[] Parts => field ??= [.. Walked()];

        public override double ValueWith(Func<Observation, double> values)
        {
            double? sum = null;
            foreach (var (part, sign) in Parts)
            {
                // A sum that begins at zero would lose the minus sign of a negative zero.
                var value = sign * part.ValueWith(values);
                sum = sum is { } before ? before + value : value;
            }

            return sum!.Value;
        }

        public override void SlopesWith(Func<Observation, double> values, double factor, Action<Observation, double> take)
        {
            foreach (var (part, sign) in Parts)
            {
                part.SlopesWith(values, sign * factor, take);
            }
        }

        private IEnumerable<(Term Part, double Sign)> Walked()
        {
            var open = new Stack<(Term Term, double Sign)>([(this, 1)]);
            while (open.TryPop(out var next))
            {
                switch (next.Term)
                {
                    case Both both:
                        open.Push((both.Other, next.Sign));
                        open.Push((both.One, next.Sign));
                        break;
                    case Opposite opposite:
                        open.Push((opposite.Of, -next.Sign));
                        break;
                    default:
                        yield return next;
                        break;
                }
            }
        }
    }

    private sealed class Both(Term one, Term other) : Added
    {
        public Term One => one;

        public Term Other => other;
    }

    private sealed class Opposite(Term of) : Added
    {
        public Term Of => of;
    }

    private sealed class Reckoned(IReadOnlyList<Term> terms, Func<double[], double> formula, Func<double[], double[]> slopes) : Term
    {
        public override double ValueWith(Func<Observation, double> values) => formula(Parts(values));

        public override void SlopesWith(Func<Observation, double> values, double factor, Action<Observation, double> take)
        {
            var each = slopes(Parts(values));
            for (var i = 0; i < each.Length; i++)
            {
                terms[i].SlopesWith(values, factor * each[i], take);
            }
        }

        private double[] Parts(Func<Observation, double> values)
        {
            var parts = new double[terms.Count];
            for (var i = 0; i < parts.Length; i++)
            {
                parts[i] = terms[i].ValueWith(values);
            }

            return parts;
        }
    }
}
