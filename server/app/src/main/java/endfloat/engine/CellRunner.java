package endfloat.engine;

import endfloat.definition.Progress;
import endfloat.working.Kind;
import endfloat.working.LineProblem;
import java.util.List;
import java.util.Optional;

/** What runs the source of java clauses; the engine knows neither processes nor approvals. */
public interface CellRunner {
  /** Runs nothing. */
  CellRunner NONE =
      new CellRunner() {
        @Override
        public Optional<Refusal> refusal(String source) {
          return Optional.of(new Refusal("Java is not run here", ""));
        }

        @Override
        public Outcome run(Job job, Progress progress) {
          throw new IllegalStateException("Java is not run here");
        }
      };

  /** Why a source is not run, and what to do. */
  record Refusal(String message, String wayOut) {}

  /** Why this source may not run; empty where it may. */
  Optional<Refusal> refusal(String source);

  /**
   * Runs a source with values; from any thread.
   *
   * @param progress told how far it is; its no ends the run
   * @throws CellFailureException if it gives nothing
   */
  Outcome run(Job job, Progress progress);

  /** Lets a source run on this machine from now on. */
  default void approve(String source) {
    throw new IllegalStateException("Java is not run here");
  }

  /** By which a source is known; empty where none are. */
  default String hash(String source) {
    return "";
  }

  /** What a run may take, in words; empty where none run. */
  default String limits() {
    return "";
  }

  /**
   * How a source may go on at a place, and what stands there.
   *
   * @param from where the texts begin
   */
  record Help(int from, List<String> texts, List<String> signatures) {}

  /** Help at a place of a source, which is not run for it; the values of reads may be null. */
  default Help help(String source, int offset, List<Read> reads, List<Give> gives) {
    return new Help(offset, List.of(), List.of());
  }

  /**
   * What is to be run.
   *
   * @param trials numbers to run it with once more, for its slopes
   */
  record Job(String source, List<Read> reads, List<Give> gives, List<Trial> trials) {}

  /**
   * A value that the source reads.
   *
   * @param java its name there
   */
  record Read(String java, Kind kind, Value value) {}

  /**
   * Another number in one place.
   *
   * @param read which of the values
   * @param element which number in it
   */
  record Trial(int read, int element, double si) {}

  /**
   * What came of it.
   *
   * @param trials the numbers of the same values again, then of each trial, null where it has none;
   *     empty where there was no time for them
   * @param milliseconds that it took
   */
  @SuppressWarnings("ArrayRecordComponent") // read once, altered by nobody
  record Outcome(
      List<Given> given, List<double[]> trials, List<Shown> shown, double milliseconds) {}

  /**
   * One value given; what does not fit its form is empty.
   *
   * @param numbers one of a quantity, all of a series
   * @param columns of a table, in the units of its head
   */
  @SuppressWarnings("ArrayRecordComponent") // read once, altered by nobody
  record Given(
      double[] numbers,
      List<String> axes,
      List<List<String>> labels,
      String text,
      boolean truth,
      List<double[]> columns) {}

  /**
   * Something to be seen under the clause.
   *
   * @param sort text, error, svg or table
   * @param text of it; an SVG document
   * @param heads of a table
   * @param rows of a table
   */
  record Shown(String sort, String text, List<String> heads, List<List<String>> rows) {
    public static Shown text(String sort, String text) {
      return new Shown(sort, text, List.of(), List.of());
    }
  }

  /** Nothing came of it; problems at their lines of the source. */
  final class CellFailureException extends RuntimeException {
    private static final long serialVersionUID = 1L;
    private final transient List<LineProblem> problems;

    public CellFailureException(List<LineProblem> problems) {
      super(problems.get(0).message());
      this.problems = List.copyOf(problems);
    }

    public List<LineProblem> problems() {
      return problems;
    }
  }
}
