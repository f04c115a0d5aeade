package endfloat.cli;

import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.engine.Shown;
import endfloat.engine.Verdict;
import endfloat.http.view.ComparisonView;
import endfloat.record.InvestigationRecord;
import endfloat.report.ComparisonPage;
import endfloat.report.PaperSize;
import endfloat.report.pdf.PdfComparison;
import endfloat.report.pdf.Stop;
import endfloat.review.Comparison;
import endfloat.review.Comparison.Point;
import endfloat.review.Comparison.Row;
import endfloat.review.Comparison.Standing;
import endfloat.review.Comparison.Wording;
import endfloat.review.ComparisonJson;
import endfloat.review.StageNotReadException;
import endfloat.review.TableDifference;
import endfloat.review.TableDifference.Change;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code endfloat compare A B}: two records, or two states of one, side by side. */
@Command(
    name = "compare",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description = "Compares two records, or two states of one: figures, verdicts, tables, texts.",
    footer = {
      "",
      "A difference is clear where it is larger than its own uncertainty; errors of an instrument",
      "with the same calibration in both records cancel in it.",
      "Exit code 1 where something in the second record is outside its limits."
    })
final class CompareCommand implements Callable<Integer> {
  private final Streams streams;

  @Parameters(index = "0", paramLabel = "A", description = "The record before, or of one engine.")
  private Path left;

  @Parameters(index = "1", paramLabel = "B", description = "The record after, or of the other.")
  private Path right;

  @Option(names = "--all", description = "List values without a difference too.")
  private boolean all;

  @Option(
      names = "--stage-a",
      paramLabel = "STAGE",
      description = "The stage of A, such as 'as found'; else that of the record.")
  private String stageLeft = "";

  @Option(
      names = "--stage-b",
      paramLabel = "STAGE",
      description = "The stage of B, such as 'as left'; else that of the record.")
  private String stageRight = "";

  @Option(names = "--report", description = "Write both side by side as one file to --out.")
  private boolean report;

  @Option(names = "--pdf", description = "The report as PDF; else HTML.")
  private boolean pdf;

  @Option(names = "--out", paramLabel = "FILE", description = "The file that --report writes.")
  private Path out;

  @Option(names = "--letter", description = "The report for Letter paper; else A4.")
  private boolean letter;

  @Option(names = "--json", description = "Print JSON.")
  private boolean json;

  CompareCommand(Streams streams) {
    this.streams = streams;
  }

  @Override
  public Integer call() {
    if (report != (out != null)) {
      throw new BadInputException(
          "--report and --out go together.", "Say: endfloat compare A B --report --out FILE");
    }
    if (pdf && !report) {
      throw new BadInputException(
          "--pdf is of the report.", "Say: endfloat compare A B --report --pdf --out FILE");
    }
    Comparison comparison = compared();
    if (report) {
      write(comparison);
    }
    if (json) {
      Json.print(streams.out(), ComparisonJson.of(comparison, (row, entry) -> {}));
    } else {
      print(comparison, streams.out());
    }
    return Exit.ofVerdicts(comparison.right().graph().figures().values());
  }

  private Comparison compared() {
    InvestigationRecord before = RecordFile.read(left);
    InvestigationRecord after = RecordFile.read(right);
    try {
      return Comparison.of(before, stageLeft.strip(), after, stageRight.strip());
    } catch (StageNotReadException e) {
      throw new BadInputException(e.getMessage(), e.wayOut());
    }
  }

  private void write(Comparison comparison) {
    PaperSize paper = letter ? PaperSize.LETTER : PaperSize.A4;
    ObjectNode view = ComparisonView.of(comparison);
    byte[] page =
        pdf
            ? PdfComparison.of(view, paper, Stop.NEVER)
            : ComparisonPage.html(view, paper).getBytes(StandardCharsets.UTF_8);
    PaperFile.refuse(out, right);
    PaperFile.write(out, left, page);
    streams.err().println("Written: " + out);
  }

  private void print(Comparison comparison, PrintStream out) {
    if (comparison.isEqual()) {
      out.println("The two are equal.");
      return;
    }
    TextTable table = new TextTable();
    table.row("clause", "figure", "A", "B", "B less A", "difference", "verdict");
    int shown = 0;
    for (Row row : comparison.rows()) {
      if (all || row.standing() != Standing.NONE || row.isJudgedOtherwise()) {
        table.row(
            row.clause(),
            row.label(),
            row.left().map(Point::text).orElse(""),
            row.right().map(Point::text).orElse(""),
            row.difference().map(Shown::text).orElse(""),
            row.standing().word(),
            verdicts(row));
        shown++;
      }
    }
    if (shown > 0) {
      table.print(out);
    }
    tables(comparison.tables(), out);
    wordings("Formulas", comparison.formulas(), out);
    wordings("Texts", comparison.texts(), out);
    if (!comparison.shared().isEmpty()) {
      out.println(
          "Errors of these instruments are shared and cancel in differences: "
              + String.join(", ", comparison.shared())
              + ".");
    }
    comparison.notShared().forEach(one -> out.println("Not shared: " + one + "."));
    out.println(
        comparison.clear()
            + " differences are clear, "
            + comparison.judgedOtherwise()
            + " verdicts changed.");
  }

  private static void tables(List<TableDifference> tables, PrintStream out) {
    for (TableDifference table : tables) {
      if (!table.isEqual()) {
        out.println("Table " + table.clause() + " " + table.name() + ": " + table.counts() + ".");
        table.said().forEach(one -> out.println("  " + one + "."));
        List<TableDifference.Row> changed =
            table.first().stream().filter(row -> row.change() == Change.CHANGED).toList();
        if (!changed.isEmpty()) {
          TextTable rows = new TextTable();
          rows.row("row", "column", "A", "B", "B less A", "difference", "verdict");
          changed.forEach(row -> row(row, rows));
          rows.print(out);
        }
        table.first().stream()
            .filter(row -> row.change() != Change.CHANGED)
            .forEach(row -> out.println("  " + oneSided(row)));
        if (table.more() > 0) {
          out.println("  and " + table.more() + " more rows.");
        }
      }
    }
  }

  private static String oneSided(TableDifference.Row row) {
    return "only "
        + (row.change() == Change.GONE ? "A" : "B")
        + ", row "
        + row.key()
        + ": "
        + row.text();
  }

  private static void row(TableDifference.Row row, TextTable rows) {
    for (TableDifference.Cell cell : row.cells()) {
      rows.row(
          row.key(),
          cell.head(),
          cell.left(),
          cell.right(),
          cell.difference().map(Shown::text).orElse(""),
          cell.standing().word(),
          verdicts(cell.was().map(Verdict::word), cell.verdict().map(Verdict::word)));
    }
  }

  private static String verdicts(Row row) {
    Optional<String> from = row.left().flatMap(Point::verdict).map(Verdict::word);
    Optional<String> to = row.right().flatMap(Point::verdict).map(Verdict::word);
    return verdicts(from, to);
  }

  private static String verdicts(Optional<String> from, Optional<String> to) {
    if (from.equals(to)) {
      return to.orElse("");
    }
    return from.orElse("none") + " -> " + to.orElse("none");
  }

  private static void wordings(String head, List<Wording> wordings, PrintStream out) {
    if (wordings.isEmpty()) {
      return;
    }
    out.println(head + " that differ:");
    for (Wording one : wordings) {
      String clause = one.clause().isEmpty() ? "" : one.clause() + " ";
      out.println("  " + clause + one.what());
      lines("    A: ", one.left(), out);
      lines("    B: ", one.right(), out);
    }
  }

  private static void lines(String mark, String text, PrintStream out) {
    if (!text.isEmpty()) {
      out.println(mark + text.replace("\n", "\n       "));
    }
  }
}
