package endfloat.engine;

import endfloat.record.EnteredMaterial;
import endfloat.record.Instrument;
import endfloat.working.KindChecker;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What holds for the whole record beside its clauses: settings, instruments, materials. A change of
 * one touches the lines that it concerns.
 */
final class Registers {
  private final ClauseList clauses;
  private final Wiring wiring;
  private final Evaluation evaluation;
  private final KindChecker checker;
  private final Map<String, Instrument> instruments = new LinkedHashMap<>();

  Registers(ClauseList clauses, Wiring wiring, Evaluation evaluation, KindChecker checker) {
    this.clauses = clauses;
    this.wiring = wiring;
    this.evaluation = evaluation;
    this.checker = checker;
  }

  /** The instrument of an id; null for none. */
  Instrument instrument(String id) {
    return instruments.get(id);
  }

  /** Takes them as they are now. */
  void update(GraphSource before, GraphSource now) {
    settings(before, now);
    instruments(before.instruments(), now.instruments());
    materials(before.materials(), now.materials());
  }

  private void settings(GraphSource before, GraphSource now) {
    boolean same = now.settings().equals(before.settings());
    boolean readAnew =
        !now.settings().stage().equals(before.settings().stage())
            || !now.date().equals(before.date());
    evaluation.settings(now.settings());
    if (same && !readAnew) {
      return;
    }
    for (Node node : clauses.nodes()) {
      if (readAnew && (node instanceof ReadingNode || !instrumentsOf(node).isEmpty())) {
        node.uncheck();
      }
      wiring.touch(node);
    }
  }

  private void instruments(List<Instrument> before, List<Instrument> now) {
    if (now.equals(before)) {
      return;
    }
    Set<String> different = new HashSet<>(instruments.keySet());
    Map<String, Instrument> fresh = new LinkedHashMap<>();
    for (Instrument instrument : now) {
      if (instrument.equals(instruments.get(instrument.id()))) {
        different.remove(instrument.id());
      } else {
        different.add(instrument.id());
      }
      fresh.put(instrument.id(), instrument);
    }
    instruments.clear();
    instruments.putAll(fresh);
    for (Node node : clauses.nodes()) {
      if (instrumentsOf(node).stream().anyMatch(different::contains)) {
        node.uncheck();
        wiring.touch(node);
      }
    }
  }

  /** Ids of the instruments with which readings or the values of a column were taken. */
  static Set<String> instrumentsOf(Node node) {
    return node instanceof ReadingNode reading
        ? reading.instruments()
        : node instanceof ColumnNode column ? column.instruments() : Set.of();
  }

  /** Rare, so every line is worked out anew and not only those that name a material. */
  private void materials(List<EnteredMaterial> before, List<EnteredMaterial> now) {
    if (!now.equals(before)) {
      evaluation.materials(new Materials(now, checker));
      clauses.nodes().forEach(wiring::touch);
    }
  }
}
