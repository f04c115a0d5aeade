package endfloat.child;

import endfloat.clause.Body;
import endfloat.clause.Shown;
import java.lang.reflect.Field;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** One run of a compiled clause: a fresh class, so that nothing stays of an earlier run. */
final class ClauseRun {
  private final Program program;
  private final Class<?> body;

  ClauseRun(Program program, Map<String, byte[]> classes) throws ReflectiveOperationException {
    this.program = program;
    this.body = new FreshClasses(classes).loadClass(ClauseText.CLASS);
  }

  /**
   * The result as JSON values: what it gives, and the numbers of every trial.
   *
   * @param beforeTrials done between the run and its trials, which are to be seen by nobody
   */
  Map<String, Object> run(Shown shown, Runnable beforeTrials) throws Exception {
    Object[] values = new Object[program.reads().size()];
    for (int i = 0; i < values.length; i++) {
      values[i] = ReadValues.of(program.reads().get(i));
    }
    Map<String, Object> result = new LinkedHashMap<>();
    result.put("gives", given(values, shown));
    if (!program.trials().isEmpty()) {
      beforeTrials.run();
      trials(values, shown).ifPresent(trials -> result.put("trials", trials));
    }
    return result;
  }

  private List<Object> given(Object[] values, Shown shown) throws Exception {
    Body one = ran(values, shown);
    List<Object> gives = new ArrayList<>();
    for (Program.Give give : program.gives()) {
      gives.add(GivenValues.of(give, body.getField(give.java()).get(one)));
    }
    return gives;
  }

  /**
   * The numbers of the same values first, which must be the same again, then those of each trial;
   * null for a trial that has none. Empty where they do not come to their end in time: the first
   * run of a source tells little of how long the next ones take.
   */
  private Optional<List<Object>> trials(Object[] values, Shown shown) throws InterruptedException {
    Shown quiet = new Quiet();
    long begun = System.nanoTime();
    List<Object> all = new ArrayList<>();
    all.add(tried(values, quiet));
    for (int i = 0; i < program.trials().size(); i++) {
      if ((System.nanoTime() - begun) / 1_000_000 > program.trialMilliseconds()) {
        return Optional.empty();
      }
      Program.Trial trial = program.trials().get(i);
      Object[] others = values.clone();
      others[trial.read()] = ReadValues.with(others[trial.read()], trial.element(), trial.si());
      all.add(tried(others, quiet));
      shown.progress((i + 1.0) / program.trials().size());
    }
    return Optional.of(all);
  }

  private List<Double> tried(Object[] values, Shown quiet) throws InterruptedException {
    try {
      Body one = ran(values, quiet);
      List<Double> numbers = new ArrayList<>();
      for (Program.Give give : program.gives()) {
        GivenValues.numbers(give, body.getField(give.java()).get(one), numbers);
      }
      return numbers;
    } catch (InterruptedException e) {
      throw e;
    } catch (Exception e) {
      return null;
    }
  }

  private Body ran(Object[] values, Shown shown) throws Exception {
    if (Thread.interrupted()) {
      throw new InterruptedException();
    }
    Body one = (Body) body.getConstructor().newInstance();
    for (int i = 0; i < values.length; i++) {
      set(one, body.getField(program.reads().get(i).java()), values[i]);
    }
    one.showsTo(shown);
    one.run();
    return one;
  }

  /** The fields of a record of results are those of an object of its class. */
  private static void set(Object of, Field field, Object value)
      throws ReflectiveOperationException {
    if (!(value instanceof Map<?, ?> record)) {
      field.set(of, value);
      return;
    }
    Object results = field.getType().getConstructor().newInstance();
    for (Map.Entry<?, ?> part : record.entrySet()) {
      set(results, field.getType().getField(String.valueOf(part.getKey())), part.getValue());
    }
    field.set(of, results);
  }

  private static final class FreshClasses extends ClassLoader {
    private final Map<String, byte[]> classes;

    FreshClasses(Map<String, byte[]> classes) {
      super(FreshClasses.class.getClassLoader());
      this.classes = classes;
    }

    @Override
    protected Class<?> findClass(String name) throws ClassNotFoundException {
      byte[] bytes = classes.get(name);
      if (bytes == null) {
        throw new ClassNotFoundException(name);
      }
      return defineClass(name, bytes, 0, bytes.length);
    }
  }

  private static final class Quiet implements Shown {
    @Override
    public void progress(double fraction) {}

    @Override
    public void text(String text) {}

    @Override
    public void svg(String svg) {}

    @Override
    public void table(List<String> heads, List<List<String>> rows) {}
  }
}
