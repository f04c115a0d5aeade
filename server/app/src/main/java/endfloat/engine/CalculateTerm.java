package endfloat.engine;

import endfloat.catalogue.Calculation;
import endfloat.catalogue.Parameter;
import endfloat.definition.Progress;
import endfloat.engine.Value.Series;
import endfloat.working.Span;
import java.util.Arrays;

/**
 * A calculation of the library and its arguments.
 *
 * @param call what stands in the line, by which two calls that are the same are known
 * @param elementByElement whether an argument for a scalar parameter is a series
 */
@SuppressWarnings("ArrayRecordComponent") // read at every evaluation, altered by nobody
record CalculateTerm(
    Span span, Calculation calculation, Term[] arguments, String call, boolean elementByElement)
    implements Term, SlowTerm {

  @Override
  public String called() {
    return "calculation " + calculation.name();
  }

  @Override
  public Value run(Value[] values, String identity, Frame frame, Progress progress) {
    return new CalculationRun(this, values, identity, frame, progress).value();
  }

  @Override
  public Value evaluate(Frame frame) {
    Value[] given = new Value[arguments.length];
    for (int i = 0; i < given.length; i++) {
      given[i] = arguments[i].evaluate(frame);
    }
    Value[] values = PairedLists.of(this, given, frame);
    if (!elementByElement) {
      return run(values, call, frame);
    }
    int[] spread = new int[values.length];
    int count = 0;
    for (int i = 0; i < values.length; i++) {
      Parameter.Form form = calculation.parameters().get(i).form();
      if (values[i] instanceof Series
          && form != Parameter.Form.LIST
          && form != Parameter.Form.INDEXED) {
        spread[count++] = i;
      }
    }
    int[] places = Arrays.copyOf(spread, count);
    return Elementwise.map(
        Arrays.stream(places).mapToObj(i -> values[i]).toArray(Value[]::new),
        Arrays.stream(places).mapToObj(i -> arguments[i].span()).toArray(Span[]::new),
        (single, at) -> {
          Value[] mine = values.clone();
          for (int i = 0; i < places.length; i++) {
            mine[places[i]] = single[i];
          }
          return run(mine, call + "#" + at, frame);
        });
  }

  private Value run(Value[] values, String identity, Frame frame) {
    if (calculation.name().equals(Materials.CALCULATION)) {
      return frame.materials().material(this, values, identity, frame);
    }
    return calculation.heavy()
        ? frame.heavy(this, values, identity)
        : run(values, identity, frame, Progress.IGNORED);
  }
}
