package endfloat.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.engine.ClauseProblem;
import endfloat.engine.RecordGraph;
import endfloat.engine.ValueGraph;
import endfloat.record.Cell;
import endfloat.record.InvestigationRecord;
import endfloat.review.Rerun;
import endfloat.review.RerunRefusedException;
import endfloat.review.Results;
import endfloat.table.DecimalMark;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code endfloat rerun RECORD --readings CSV --out NEW}: the same record on the next engine. */
@Command(
    name = "rerun",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description = "Runs a record again with another engine's readings and writes a new record.",
    footer = {
      "",
      "The first line of the CSV heads each column 'name [unit]', or 'name[axis=label] [unit]' for a",
      "station; repeats stand below each other, an empty field is not taken."
    })
final class RerunCommand implements Callable<Integer> {
  /** More problems than these say no more than these. */
  private static final int MOST_LISTED = 20;

  private final Streams streams;

  @Parameters(index = "0", paramLabel = "RECORD", description = "The record to run again.")
  private Path record;

  @Option(
      names = "--readings",
      required = true,
      paramLabel = "CSV",
      description = "Readings of the other engine.")
  private Path readings;

  @Option(
      names = "--out",
      required = true,
      paramLabel = "NEW",
      description = "The new record; must not exist yet.")
  private Path out;

  @Option(names = "--title", paramLabel = "TEXT", description = "Title of the new record.")
  private String title = "";

  @Option(names = "--serial", paramLabel = "TEXT", description = "Serial number of the engine.")
  private String serial = "";

  @Option(
      names = "--date",
      paramLabel = "DATE",
      description =
          "Day of the new readings, as 2026-05-12; else today. Calibrations are judged at it.")
  private String date = "";

  @Option(
      names = "--decimal",
      paramLabel = "MARK",
      defaultValue = "point",
      description = "Decimal mark of the CSV: point or comma.")
  private String decimal;

  @Option(names = "--json", description = "Print JSON.")
  private boolean json;

  @Mixin private AllowedJava allowed = new AllowedJava();

  RerunCommand(Streams streams) {
    this.streams = streams;
  }

  @Override
  public Integer call() {
    InvestigationRecord from = RecordFile.read(record);
    allowed.hold(from);
    Rerun.Done done = run(from);
    ValueGraph graph = RecordGraph.of(done.record()).graph();
    RecordFile.writeNew(out, done.record().withResults(Results.of(graph)).write());
    return report(done, graph);
  }

  private Rerun.Done run(InvestigationRecord from) {
    Rerun.Readings given =
        new Rerun.Readings(
            RecordFile.bytes(readings),
            readings.getFileName().toString(),
            mark(decimal),
            title,
            serial,
            day(date));
    try {
      return Rerun.run(from, given);
    } catch (RerunRefusedException e) {
      throw new BadInputException(
          "The readings in " + readings + " do not fit the record:" + listed(e.problems()),
          "Correct the file; nothing was written.");
    }
  }

  /** Problems one below the other, the first of many. */
  static String listed(List<String> problems) {
    StringBuilder list = new StringBuilder();
    problems.stream().limit(MOST_LISTED).forEach(one -> list.append("\n  ").append(one));
    int more = problems.size() - MOST_LISTED;
    return more > 0
        ? list.append("\n  and ").append(more).append(" more").toString()
        : list.toString();
  }

  /** The day named; today where none is. */
  private static LocalDate day(String date) {
    try {
      return date.isBlank() ? LocalDate.now(ZoneId.systemDefault()) : LocalDate.parse(date.strip());
    } catch (DateTimeParseException e) {
      throw new BadInputException("'" + date + "' is no date.", "Write it as 2026-05-12.");
    }
  }

  static DecimalMark mark(String decimal) {
    return switch (decimal) {
      case "point" -> DecimalMark.POINT;
      case "comma" -> DecimalMark.COMMA;
      default ->
          throw new BadInputException(
              "'" + decimal + "' is no decimal mark.", "Give --decimal point or --decimal comma.");
    };
  }

  private int report(Rerun.Done done, ValueGraph graph) {
    List<ClauseProblem> errors = new ArrayList<>();
    for (Cell cell : done.record().cells()) {
      graph.problems(cell.id()).stream().filter(Work::isError).forEach(errors::add);
    }
    if (json) {
      printJson(done, graph, errors);
    } else {
      FigureTable.printJudged(streams.out(), graph.figures().values(), graph.settings());
      streams.out().println("Written: " + out);
      done.notices().forEach(notice -> streams.err().println("note: " + notice));
      errors.forEach(error -> streams.err().println(place(done, error) + words(error)));
    }
    if (!errors.isEmpty()) {
      return Exit.BAD_INPUT;
    }
    return Exit.ofVerdicts(graph.figures().values());
  }

  private static String words(ClauseProblem error) {
    return Work.sentences(error.problem());
  }

  private static String place(Rerun.Done done, ClauseProblem error) {
    String number = done.record().cell(error.clause()).map(Cell::number).orElse("");
    String line = error.at().isEmpty() ? ", line " + error.problem().span().line() : "";
    return "clause " + number + line + ": ";
  }

  private void printJson(Rerun.Done done, ValueGraph graph, List<ClauseProblem> errors) {
    ObjectNode printed = JsonNodeFactory.instance.objectNode().put("out", out.toString());
    printed.set("results", Results.of(graph).path("figures"));
    ArrayNode wrong = printed.putArray("errors");
    for (ClauseProblem error : errors) {
      ObjectNode one = wrong.addObject().put("cell", error.clause()).put("at", error.at());
      one.put("line", error.problem().span().line()).put("column", error.problem().span().from());
      one.put("message", words(error));
    }
    ArrayNode notices = printed.putArray("notices");
    done.notices().forEach(notices::add);
    Json.print(streams.out(), printed);
  }
}
