namespace FarmTwin.Engine.Tests.Time;

/// <summary>Exact and implicit one-step formulas for the problems of closed-forms.csv, by name.</summary>
internal static class OneStepFormulas
{
    public static double[] Start(string problem) => problem switch
    {
        "chain" or "equal" => [100, 0, 0],
        "tank" => [0],
        "logistic" => [10],
        "monod" => [5],
        _ => throw new ArgumentException(problem, nameof(problem)),
    };

    public static Action<double[], double> Exact(string problem) => problem switch
    {
        "chain" => (s, h) => ChainExactly(s, h, 0.5, 0.2),
        "equal" => (s, h) => ChainExactly(s, h, 0.3, 0.3),
        "tank" => (s, h) => s[0] = 10 + ((s[0] - 10) * Math.Exp(-h / 2)),
        "logistic" => (s, h) => s[0] = 1000 / (1 + (((1000 / s[0]) - 1) * Math.Exp(-0.1 * h))),
        _ => throw new ArgumentException(problem, nameof(problem)),
    };

    /// <summary>x₁ = x₀ + h f(x₁): first order.</summary>
    public static Action<double[], double> BackwardEuler(string problem) => problem switch
    {
        "chain" => (s, h) => ChainImplicitly(s, h, 0, 0.5, 0.2),
        "equal" => (s, h) => ChainImplicitly(s, h, 0, 0.3, 0.3),
        "tank" => (s, h) => s[0] = (s[0] + (5 * h)) / (1 + (h / 2)),
        "logistic" => (s, h) => s[0] = LogisticImplicitly(s[0], h),
        "monod" => (s, h) => s[0] = MonodImplicitly(s[0], 2 * h),
        _ => throw new ArgumentException(problem, nameof(problem)),
    };

    /// <summary>x₁ = x₀ + h/2 (f(x₀) + f(x₁)): second order.</summary>
    public static Action<double[], double> Trapezoid(string problem) => problem switch
    {
        "chain" => (s, h) => ChainImplicitly(s, h / 2, h / 2, 0.5, 0.2),
        "equal" => (s, h) => ChainImplicitly(s, h / 2, h / 2, 0.3, 0.3),
        "tank" => (s, h) => s[0] = (s[0] + (h / 2 * (5 - (s[0] / 2))) + (2.5 * h)) / (1 + (h / 4)),
        "logistic" => (s, h) => s[0] = LogisticImplicitly(s[0] + (h / 2 * 0.1 * s[0] * (1 - (s[0] / 1000))), h / 2),
        "monod" => (s, h) => s[0] = MonodImplicitly(s[0] - (h * s[0] / (1 + s[0])), h),
        _ => throw new ArgumentException(problem, nameof(problem)),
    };

    private static void ChainExactly(double[] s, double h, double k1, double k2)
    {
        double e1 = Math.Exp(-k1 * h);
        double e2 = Math.Exp(-k2 * h);
        double passed = k1 == k2 ? k1 * h * e1 : k1 * (e1 - e2) / (k2 - k1);
        double total = s[0] + s[1] + s[2];
        s[1] = (s[1] * e2) + (s[0] * passed);
        s[0] *= e1;
        s[2] = total - s[0] - s[1];
    }

    // Weight hNew on the new state, hOld on the old.
    private static void ChainImplicitly(double[] s, double hNew, double hOld, double k1, double k2)
    {
        double a = s[0] * (1 - (k1 * hOld)) / (1 + (k1 * hNew));
        double b = ((s[1] * (1 - (k2 * hOld))) + (k1 * ((hNew * a) + (hOld * s[0])))) / (1 + (k2 * hNew));
        s[2] += k2 * ((hNew * b) + (hOld * s[1]));
        (s[0], s[1]) = (a, b);
    }

    // x - h 0.1 x (1 - x/1000) = known
    private static double LogisticImplicitly(double known, double h)
    {
        double square = 0.1 * h / 1000;
        double linear = 1 - (0.1 * h);
        return 2 * known / (linear + Math.Sqrt((linear * linear) + (4 * square * known)));
    }

    // x + w x / (1 + x) = known
    private static double MonodImplicitly(double known, double w)
    {
        double linear = 1 + w - known;
        double root = Math.Sqrt((linear * linear) + (4 * known));
        return linear > 0 ? 2 * known / (linear + root) : (root - linear) / 2;
    }
}
