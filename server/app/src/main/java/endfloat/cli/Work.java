package endfloat.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.engine.Clause;
import endfloat.engine.ClauseProblem;
import endfloat.engine.Figure;
import endfloat.engine.GraphSettings;
import endfloat.engine.GraphSource;
import endfloat.engine.RecordGraph;
import endfloat.engine.ValueGraph;
import endfloat.record.InvestigationRecord;
import endfloat.review.FigureNumbers;
import endfloat.working.LineProblem;
import endfloat.working.Terms;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;

/** {@code endfloat work}: lines of the working language in, figures out, no record. */
@Command(
    name = "work",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description = "Works out lines of the working language from standard input.",
    footer = {
      "",
      "Example: echo 'gap [mm] = 60.028 mm - 59.971 mm ± 0.004 mm' | endfloat work",
      "u is the standard uncertainty, in the line's unit."
    })
final class Work implements Callable<Integer> {
  /** More than anybody types; keeps a wrong pipe from filling the memory. */
  private static final int MOST_BYTES = 4_000_000;

  /** No clause of a record has this id: it has a blank. */
  private static final String CLAUSE = "lines typed";

  private final Streams streams;

  @Option(names = "--json", description = "Print JSON: results and errors.")
  private boolean json;

  @Option(
      names = "--record",
      paramLabel = "FILE",
      description = "Work the lines out among the values, instruments and materials of a record.")
  private Path record;

  @Option(
      names = "--terms",
      paramLabel = "british|american",
      description = "In whose words messages are; the record's, else british.")
  private String terms = "";

  @Mixin private AllowedJava allowed = new AllowedJava();

  Work(Streams streams) {
    this(streams, false);
  }

  Work(Streams streams, boolean json) {
    this.streams = streams;
    this.json = json;
  }

  @Override
  public Integer call() throws IOException {
    GraphSource source = source();
    ValueGraph graph = ValueGraph.of(source);
    List<ClauseProblem> problems = graph.problems(CLAUSE);
    Collection<Figure> figures =
        graph.figures().values().stream().filter(f -> f.clause().equals(CLAUSE)).toList();
    if (json) {
      Json.print(streams.out(), json(figures, problems));
    } else {
      FigureTable.print(streams.out(), figures, source.settings());
      problems.forEach(this::printProblem);
    }
    return code(figures, problems);
  }

  private InvestigationRecord allowed() {
    InvestigationRecord around = RecordFile.read(record);
    allowed.hold(around);
    return around;
  }

  private GraphSource source() throws IOException {
    GraphSource around =
        record == null ? GraphSource.EMPTY : RecordGraph.of(allowed()).graph().source();
    GraphSettings settings =
        switch (terms) {
          case "" -> around.settings();
          case "british", "american" -> around.settings().in(Terms.of(terms));
          default ->
              throw new BadInputException(
                  "There are no terms \"" + terms + "\".", "Write british or american.");
        };
    return new GraphSource(
            around.clauses(), around.instruments(), around.materials(), settings, around.date())
        .with(new Clause.Working(CLAUSE, "", input()));
  }

  private String input() throws IOException {
    byte[] bytes = streams.in().readNBytes(MOST_BYTES + 1);
    if (bytes.length > MOST_BYTES) {
      throw new BadInputException(
          "The input is larger than " + MOST_BYTES / 1_000_000 + " MB.",
          "Put the lines into a record, in several workings.");
    }
    try {
      return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
    } catch (CharacterCodingException e) {
      throw new BadInputException("The input is not UTF-8 text.", "Save it as UTF-8.");
    }
  }

  static boolean isError(ClauseProblem problem) {
    return problem.problem().severity() == LineProblem.Severity.ERROR;
  }

  private static int code(Collection<Figure> figures, List<ClauseProblem> problems) {
    if (problems.stream().anyMatch(Work::isError)) {
      return Exit.BAD_INPUT;
    }
    return Exit.ofVerdicts(figures);
  }

  private static ObjectNode json(Collection<Figure> figures, List<ClauseProblem> problems) {
    ObjectNode out = JsonNodeFactory.instance.objectNode();
    FigureNumbers numbers = FigureNumbers.inUnitsOfLines();
    ArrayNode results = out.putArray("results");
    figures.forEach(figure -> numbers.of(figure).forEach(results::add));
    ArrayNode errors = out.putArray("errors");
    for (ClauseProblem one : problems) {
      if (isError(one)) {
        LineProblem problem = one.problem();
        errors
            .addObject()
            .put("line", problem.span().line())
            .put("column", problem.span().from())
            .put("message", sentences(problem));
      }
    }
    return out;
  }

  private void printProblem(ClauseProblem one) {
    LineProblem problem = one.problem();
    String place = "line " + problem.span().line() + ", column " + problem.span().from() + ": ";
    String word = isError(one) ? "" : "note: ";
    streams.err().println(place + word + sentences(problem));
  }

  /** What is wrong and what to do, in one text. */
  static String sentences(LineProblem problem) {
    String message = problem.message().strip();
    if (problem.wayOut().isBlank()) {
      return message;
    }
    String end = message.endsWith(".") || message.endsWith("?") ? " " : ". ";
    return message + end + problem.wayOut().strip();
  }
}
