package endfloat.http.view;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.engine.CellRunner;
import endfloat.engine.Give;
import endfloat.engine.ValueGraph;
import java.util.List;

/**
 * Help with the source of a java clause, taken from a sheet at one moment; ask it in any thread.
 */
public final class JavaHelp {
  private final CellRunner runner;
  private final List<CellRunner.Read> reads;
  private final List<Give> gives;

  JavaHelp(String cell, ValueGraph graph) {
    this.runner = graph.cellRunner();
    this.reads = graph.javaReads();
    this.gives = graph.javaGives(cell);
  }

  /** How a source may go on at a place, and what stands there. */
  public ObjectNode at(String text, int offset) {
    int at = Math.max(0, Math.min(text.length(), offset));
    CellRunner.Help help = runner.help(text, at, reads, gives);
    ObjectNode message = JsonNodeFactory.instance.objectNode().put("type", "javaHelp");
    message.put("from", help.from());
    ArrayNode options = message.putArray("options");
    help.texts().forEach(options::add);
    ArrayNode signatures = message.putArray("signatures");
    help.signatures().forEach(signatures::add);
    return message;
  }
}
