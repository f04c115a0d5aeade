package endfloat.engine;

import endfloat.catalogue.Parameter;
import endfloat.definition.OwnUncertainty;
import endfloat.engine.Value.Scalar;
import java.util.List;
import java.util.Optional;

/** Arguments left out that say how uncertain others are: they are taken from the sheet. */
final class OwnUncertainties {
  private OwnUncertainties() {}

  static void fill(Object[] arguments, Value[] values, List<Parameter> parameters, Frame frame) {
    for (int i = 0; i < arguments.length; i++) {
      Optional<OwnUncertainty> own = parameters.get(i).fallback().flatMap(OwnUncertainty::of);
      if (own.isPresent() && !(values[i] instanceof Scalar)) {
        arguments[i] =
            number(
                own.get().kind(),
                named(own.get().of(), values, parameters),
                named(own.get().and(), values, parameters),
                frame);
      }
    }
  }

  /** Without a gradient a value is exact. */
  private static Gradient named(String name, Value[] values, List<Parameter> parameters) {
    for (int i = 0; i < values.length; i++) {
      if (parameters.get(i).name().equals(name) && values[i] instanceof Scalar scalar) {
        return scalar.gradient();
      }
    }
    return Gradient.NONE;
  }

  private static double number(OwnUncertainty.Kind kind, Gradient of, Gradient and, Frame frame) {
    Correlations correlations = frame.correlations();
    double u = correlations.standardUncertainty(of);
    return switch (kind) {
      case STANDARD -> u;
      case EXPANDED ->
          u * Coverage.factor(frame.settings().coverage(), correlations.degreesOfFreedom(of, u));
      case CORRELATION -> {
        double both = u * correlations.standardUncertainty(and);
        yield both == 0 ? 0 : Math.max(-1, Math.min(1, correlations.covariance(of, and) / both));
      }
    };
  }
}
