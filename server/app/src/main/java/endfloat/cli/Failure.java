package endfloat.cli;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import endfloat.record.RecordException;

/**
 * Tells why a command failed, in words; a stack trace only where {@code endfloat.trace} asks for
 * it.
 */
final class Failure {
  private Failure() {}

  /**
   * @param command whose output in JSON has a shape of its own, or any other
   * @return the exit code
   */
  static int tell(Exception e, String command, boolean json, Streams streams) {
    String message = e.getMessage();
    String wayOut = "Nothing was changed.";
    if (e instanceof BadInputException bad) {
      wayOut = bad.wayOut();
    } else if (!(e instanceof RecordException)) {
      if (Boolean.getBoolean("endfloat.trace")) {
        e.printStackTrace(streams.err());
      }
      message = "this failed inside the program: " + e;
      wayOut = "Nothing was written. Please report it with the command you gave.";
    }
    if (json) {
      Json.print(streams.out(), json(command, message + " " + wayOut));
    }
    streams.err().println("endfloat: " + message);
    streams.err().println(wayOut);
    return Exit.BAD_INPUT;
  }

  private static ObjectNode json(String command, String message) {
    ObjectNode out = JsonNodeFactory.instance.objectNode();
    if (command.equals("work")) {
      out.putArray("results");
      out.putArray("errors").addObject().put("line", 1).put("column", 1).put("message", message);
    } else {
      out.putArray("errors").addObject().put("message", message);
    }
    return out;
  }
}
