package endfloat.http.view;

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

  /** The answer to a question that has been overtaken. */
  public static ObjectNode none() {
    ObjectNode message = JsonNodeFactory.instance.objectNode().put("type", "javaHelp");
    message.put("from", 0).putArray("options");
    message.putArray("signatures");
    return message;
  }

  /** How a source may go on at a place, and what stands there. */
  public ObjectNode at(String text, int offset) {
    int at = Math.max(0, Math.min(text.length(), offset));
    CellRunner.Help help = runner.help(text, at, reads, gives);
    ObjectNode message = none().put("from", help.from());
    help.texts().forEach(message.withArray("options")::add);
    help.signatures().forEach(message.withArray("signatures")::add);
    return message;
  }
}
