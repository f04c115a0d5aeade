package endfloat.cli;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.record.InvestigationRecord;
import endfloat.review.Agree;
import endfloat.review.AgreeTogether;
import endfloat.review.AgreeTogether.Outcome;
import java.io.PrintStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code endfloat agree RECORD}: whether the saved figures are those that come out now. */
@Command(
    name = "agree",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description = "Compares the figures saved in records with the figures computed now.",
    footer = {
      "",
      "They agree where values are equal to 1e-9, uncertainties to 1e-6, texts and verdicts alike."
    })
final class AgreeCommand implements Callable<Integer> {
  private final Streams streams;

  @Parameters(
      arity = "1..*",
      paramLabel = "RECORD",
      description = "Records; a folder stands for all records in it.")
  private List<Path> given;

  @Option(names = "--exact", description = "Ask for equal bits.")
  private boolean exact;

  @Option(
      names = "--save",
      description = {
        "Write the figures computed now into each record whose saved ones are missing",
        "or differ. The differences are printed; nothing else in the record is touched."
      })
  private boolean save;

  @Option(names = "--json", description = "Print JSON.")
  private boolean json;

  @Mixin private AllowedJava allowed = new AllowedJava();

  AgreeCommand(Streams streams) {
    this.streams = streams;
  }

  @Override
  public Integer call() {
    if (given.size() > 1 || Files.isDirectory(given.get(0))) {
      return many(RecordFile.all(given));
    }
    Path record = given.get(0);
    Agree.Report report = Agree.of(read(record), exact);
    if (report.compared() == 0 && !save) {
      throw new BadInputException(
          record + " holds no saved figures to compare.",
          "They are saved with the first edit in Endfloat, or by endfloat agree --save.");
    }
    boolean saved = saved(record, report);
    if (json) {
      Json.print(streams.out(), json(report).put("saved", saved));
    } else {
      print(report, streams.out());
      if (saved) {
        streams.out().println("Saved with the figures computed now: " + record);
      }
    }
    return report.agrees() || saved ? Exit.DONE : Exit.OUTSIDE;
  }

  private boolean saved(Path record, Agree.Report report) {
    boolean stands = report.agrees() && report.limitsCounted() && !report.sourceChanged();
    if (!save || stands) {
      return false;
    }
    RecordFile.saveResults(record);
    return true;
  }

  private InvestigationRecord read(Path file) {
    InvestigationRecord record = RecordFile.read(file);
    allowed.hold(record);
    return record;
  }

  private int many(List<Path> records) {
    boolean told = !json;
    List<Outcome<Path>> outcomes =
        AgreeTogether.of(
            records,
            this::read,
            exact,
            done -> {
              if (told) {
                streams.err().println("compared " + done + " of " + records.size() + " records");
              }
            });
    ArrayNode list = JsonNodeFactory.instance.arrayNode();
    int code = Exit.DONE;
    for (Outcome<Path> one : outcomes) {
      code = Math.max(code, one(one, list));
    }
    if (json) {
      ObjectNode out = JsonNodeFactory.instance.objectNode().put("agrees", code == Exit.DONE);
      out.set("records", list);
      Json.print(streams.out(), out);
    }
    return code;
  }

  private int one(Outcome<Path> one, ArrayNode list) {
    ObjectNode entry = list.addObject().put("record", one.record().toString());
    if (one.report().isEmpty()) {
      entry.put("problem", one.problem());
      streams.err().println(one.problem());
      return Exit.BAD_INPUT;
    }
    Agree.Report report = one.report().get();
    boolean saved = saved(one.record(), report);
    entry.setAll(json(report));
    entry.put("saved", saved);
    if (!json) {
      streams.out().print(one.record() + ": ");
      print(report, streams.out());
      if (saved) {
        streams.out().println("  Saved with the figures computed now.");
      }
    }
    // A pattern has no figures yet and disagrees with nothing.
    return saved || report.differences().isEmpty() ? Exit.DONE : Exit.OUTSIDE;
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
    if (report.compared() == 0) {
      out.println("no figures are saved.");
      return;
    }
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
