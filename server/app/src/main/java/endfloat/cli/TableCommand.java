package endfloat.cli;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.engine.ClauseProblem;
import endfloat.engine.RecordGraph;
import endfloat.engine.ValueGraph;
import endfloat.record.Cell;
import endfloat.record.Change;
import endfloat.record.InvestigationRecord;
import endfloat.record.RecordChange;
import endfloat.review.Results;
import endfloat.review.TableInto;
import endfloat.review.TableTaken;
import endfloat.table.Offence;
import endfloat.table.TableAsked;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** {@code endfloat table RECORD --from FILE --out NEW}: a file read into a table of a record. */
@Command(
    name = "table",
    mixinStandardHelpOptions = true,
    sortOptions = false,
    description = {
      "Reads a file of separated values or a workbook into a table of a record.",
      "Of a workbook (XLSX) it takes one sheet. Writes a new record."
    },
    footer = {
      "",
      "The first row heads each column 'name [unit]'. Where anything in the file does not fit, it is",
      "listed and nothing is written."
    })
final class TableCommand implements Callable<Integer> {
  private final Streams streams;

  @Parameters(index = "0", paramLabel = "RECORD", description = "The record with the table.")
  private Path record;

  @Option(names = "--from", required = true, paramLabel = "FILE", description = "CSV, TSV or XLSX.")
  private Path from;

  @Option(
      names = "--out",
      required = true,
      paramLabel = "NEW",
      description = "The new record; must not exist yet.")
  private Path out;

  @Option(
      names = "--table",
      paramLabel = "NAME",
      description = "Name of the table; needed where the record has several.")
  private String table = "";

  @Option(
      names = "--sheet",
      paramLabel = "SHEET",
      description = "Sheet of the workbook; needed where several have something in them.")
  private String sheet = "";

  @Option(names = "--append", description = "Add beneath the rows that stand; else in their place.")
  private boolean append;

  @Option(
      names = "--decimal",
      paramLabel = "MARK",
      defaultValue = "point",
      description = "Decimal mark of the file: point or comma.")
  private String decimal;

  @Option(names = "--json", description = "Print JSON.")
  private boolean json;

  @Mixin private AllowedJava allowed = new AllowedJava();

  TableCommand(Streams streams) {
    this.streams = streams;
  }

  @Override
  public Integer call() {
    InvestigationRecord before = RecordFile.read(record);
    Cell cell = cell(before);
    allowed.hold(before);
    TableTaken taken = taken();
    InvestigationRecord filled = RecordChange.apply(before, change(cell, taken)).record();
    ValueGraph graph = RecordGraph.of(filled).graph();
    RecordFile.writeNew(out, filled.withResults(Results.of(graph)).write());
    return report(filled, taken, graph);
  }

  private Cell cell(InvestigationRecord in) {
    List<Cell> tables =
        in.cells().stream()
            .filter(cell -> cell.kind().equals("table") && !cell.table().from().isGrouped())
            .filter(cell -> table.isEmpty() || cell.table().name().equals(table))
            .toList();
    if (tables.size() == 1) {
      return tables.get(0);
    }
    if (tables.isEmpty()) {
      throw new BadInputException(
          "The record has no table " + (table.isEmpty() ? "" : table + " ") + "to read into.",
          "Make one on its sheet first, or give another name with --table.");
    }
    throw new BadInputException(
        "The record has several tables: "
            + String.join(", ", tables.stream().map(cell -> cell.table().name()).toList())
            + ".",
        "Say which one with --table.");
  }

  private TableTaken taken() {
    TableAsked asked = TableAsked.PLAIN.with(RerunCommand.mark(decimal)).ofSheet(sheet);
    TableTaken taken =
        TableTaken.ofFile(
            RecordFile.bytes(from),
            from.getFileName().toString(),
            LocalDate.now(ZoneId.systemDefault()).toString(),
            asked);
    if (!taken.read().isWhole()) {
      throw new BadInputException(
          from
              + " does not fit:"
              + RerunCommand.listed(taken.read().problems().stream().map(Offence::text).toList()),
          "Correct the file, or say --sheet or --decimal; nothing was written.");
    }
    return taken;
  }

  private Change change(Cell cell, TableTaken taken) {
    if (!append) {
      return TableInto.replacing(cell, taken);
    }
    Optional<Change> beneath = TableInto.appending(cell, taken);
    return beneath.orElseThrow(
        () ->
            new BadInputException(
                "The columns of " + from + " are not those of the table.",
                "Leave --append out to put its rows in place of those that stand."));
  }

  private int report(InvestigationRecord filled, TableTaken taken, ValueGraph graph) {
    List<ClauseProblem> errors =
        filled.cells().stream()
            .flatMap(cell -> graph.problems(cell.id()).stream())
            .filter(Work::isError)
            .toList();
    if (json) {
      ObjectNode printed = JsonNodeFactory.instance.objectNode().put("out", out.toString());
      printed.put("rows", taken.read().rows());
      taken.read().notices().forEach(printed.putArray("notices")::add);
      printed.put("errors", errors.size());
      Json.print(streams.out(), printed);
    } else {
      streams.out().println(taken.read().rows() + " rows read. Written: " + out);
      taken.read().notices().forEach(notice -> streams.err().println("note: " + notice));
      errors.forEach(
          one ->
              streams
                  .err()
                  .println(
                      "clause "
                          + filled.cell(one.clause()).map(Cell::number).orElse("")
                          + ": "
                          + Work.sentences(one.problem())));
    }
    return errors.isEmpty() ? Exit.ofVerdicts(graph.figures().values()) : Exit.BAD_INPUT;
  }
}
