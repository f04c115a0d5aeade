package endfloat.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.review.Agree;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code endfloat agree RECORD}: whether the saved figures are those that come out now. */
@Command(
    name = "agree",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description = "Compares the figures saved in a record with the figures computed now.",
    footer = {
      "",
      "They agree where values are equal to 1e-9, uncertainties to 1e-6, texts and verdicts alike."
    })
final class AgreeCommand implements Callable<Integer> {
  private final Streams streams;

  @Parameters(index = "0", paramLabel = "RECORD", description = "The record.")
  private Path record;

  @Option(names = "--exact", description = "Ask for equal bits.")
  private boolean exact;

  @Option(names = "--json", description = "Print JSON.")
  private boolean json;

  AgreeCommand(Streams streams) {
    this.streams = streams;
  }

  @Override
  public Integer call() {
    Agree.Report report = Agree.of(RecordFile.read(record), exact);
    if (report.compared() == 0) {
      throw new BadInputException(
          record + " holds no saved figures to compare.",
          "They are saved with the first edit in Endfloat.");
    }
    if (json) {
      Json.print(streams.out(), json(report));
    } else {
      print(report, streams.out());
    }
    return report.agrees() ? Exit.DONE : Exit.OUTSIDE;
  }

  private static ObjectNode json(Agree.Report report) {
    ObjectNode out = JsonNodeFactory.instance.objectNode().put("agrees", report.agrees());
    out.put("compared", report.compared()).put("saved_library", report.savedLibrary());
    out.put("library", report.library()).put("source_changed", report.sourceChanged());
    ArrayNode differences = out.putArray("differences");
    for (Agree.Difference one : report.differences()) {
      differences
          .addObject()
          .put("name", one.name())
          .put("clause", one.clause())
          .put("what", one.what())
          .put("saved", one.saved())
          .put("now", one.now());
    }
    return out;
  }

  private static void print(Agree.Report report, PrintStream out) {
    if (report.agrees()) {
      out.println(report.compared() + " figures agree.");
    } else {
      out.println(
          report.differences().size() + " differences in " + report.compared() + " figures:");
      TextTable table = new TextTable().indent("  ");
      table.row("clause", "figure", "what", "saved", "now");
      for (Agree.Difference one : report.differences()) {
        table.row(one.clause(), one.name(), one.what(), one.saved(), one.now());
      }
      table.print(out);
    }
    if (!report.savedLibrary().equals(report.library())) {
      out.println(
          "Saved with library "
              + report.savedLibrary()
              + ", computed with "
              + report.library()
              + ".");
    }
    if (report.sourceChanged()) {
      out.println("The record was changed since its figures were saved.");
    }
  }
}
