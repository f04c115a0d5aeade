package endfloat.sheet;

import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.record.InvestigationRecord;
import java.util.Optional;

/** Gives the figures that are saved with a record. */
public interface ResultsSource {
  /**
   * The figures of a record.
   *
   * @return the {@code results} of exactly this record; empty where they are not to be had now, and
   *     none are then saved
   */
  Optional<ObjectNode> results(InvestigationRecord record, long revision);
}
