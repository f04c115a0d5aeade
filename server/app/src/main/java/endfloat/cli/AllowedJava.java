package endfloat.cli;

import endfloat.engine.CellRunner;
import endfloat.engine.ProgramRunner;
import endfloat.kernel.JavaOnDemand;
import endfloat.record.Cell;
import endfloat.record.InvestigationRecord;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Option;

/** Which java clauses a command may run beside those that are approved on this machine. */
final class AllowedJava {
  @Option(
      names = "--allow-java",
      paramLabel = "HASH",
      description = "Run the java clause whose source has this SHA-256; may be repeated.")
  private List<String> hashes = new ArrayList<>();

  /**
   * Lets them run.
   *
   * @throws BadInputException if the record has a java clause that may not
   */
  void hold(InvestigationRecord record) {
    CellRunner runner = ProgramRunner.get();
    if (!hashes.isEmpty() && runner instanceof JavaOnDemand java) {
      java.allow(hashes);
    }
    List<Cell> refused = new ArrayList<>();
    for (Cell cell : record.cells()) {
      if (cell.kind().equals("java")
          && !cell.text().isBlank()
          && runner.refusal(cell.text()).isPresent()) {
        refused.add(cell);
      }
    }
    if (refused.isEmpty()) {
      return;
    }
    StringBuilder list = new StringBuilder();
    StringBuilder options = new StringBuilder();
    for (Cell cell : refused) {
      String hash = runner.hash(cell.text());
      list.append("\n  clause ").append(cell.number()).append(' ').append(cell.title());
      list.append(": ").append(hash);
      options.append(" --allow-java ").append(hash);
    }
    throw new BadInputException(
        "The record holds Java that has not been approved on this machine, so nothing was run:"
            + list,
        "Read its source; then press Run on the sheet, or add" + options + ".");
  }
}
