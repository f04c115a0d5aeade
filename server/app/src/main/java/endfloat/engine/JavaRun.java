package endfloat.engine;

import endfloat.working.LineProblem;
import java.util.List;
import java.util.Optional;

/**
 * How a java clause stands.
 *
 * @param reads the names of the record that it reads
 */
public record JavaRun(
    Figure.State state,
    Optional<Value.Ran> ran,
    Optional<LineProblem> problem,
    List<String> reads) {}
