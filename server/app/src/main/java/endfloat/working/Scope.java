package endfloat.working;

import java.util.Collection;
import java.util.List;
import java.util.Optional;

/** The names around a line while its kind is found. */
public interface Scope {
  /**
   * Kind of a name; empty where no such name exists. A name in error or waiting is not asked for:
   * its reader waits too.
   */
  Optional<Kind> kindOf(String name);

  /** All names of the record, for nearest-name hints. */
  Collection<String> names();

  /**
   * Kind of a column of a table, {@code wear.lash}, which is a value of its own; empty where there
   * is no such column.
   */
  default Optional<Kind> columnOf(String table, String head) {
    return Optional.empty();
  }

  /** Names of materials that stand in the record. */
  default Collection<String> materials() {
    return List.of();
  }

  /** Shown unit of a name, for messages such as "length, mm"; empty where none is declared. */
  Optional<endfloat.units.Unit> unitOf(String name);
}
