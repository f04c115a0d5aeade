package endfloat.child;

import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The class that is compiled of a clause: its source is the body of a method, what it reads and
 * gives are fields. Its own lines begin on the second line and keep their columns.
 */
final class ClauseText {
  static final String CLASS = "Clause";

  /** The line before the first of the clause's own. */
  static final int HEAD_LINES = 1;

  private static final Pattern IMPORT =
      Pattern.compile("(?m)^[ \\t]*import\\s+(?:static\\s+)?[\\w.]+(?:\\.\\*)?\\s*;");
  private static final Pattern FIRST_CODE =
      Pattern.compile("(?s)(?:\\s|//[^\\n]*\\n|/\\*.*?\\*/|import\\s+[^;]*;)*");
  private static final String IMPORTS =
      "import java.util.*; import java.util.stream.*; import endfloat.quantities.*; import endfloat.formulas.*; import endfloat.clause.Plot; "
          + "import javax.measure.quantity.*; import tech.tablesaw.api.*; ";

  private ClauseText() {}

  static String of(Program program) {
    String source = program.source().replace("\r\n", "\n").replace('\r', '\n');
    StringBuilder own = new StringBuilder();
    String rest = withoutImports(source, own);
    StringBuilder text = new StringBuilder(IMPORTS).append(own);
    text.append("@SuppressWarnings(\"all\") public final class ").append(CLASS);
    text.append(" extends endfloat.clause.Body { ");
    reads(program.reads(), "", text);
    for (Program.Give give : program.gives()) {
      text.append("public ").append(type(give.form(), give.type())).append(' ');
      text.append(give.java()).append("; ");
    }
    return text.append("public void run() throws Exception {\n")
        .append(rest)
        .append("\n}}\n")
        .toString();
  }

  /** Fields for what is read; a record of results is a class of its own, with fields in turn. */
  private static void reads(List<Program.Read> reads, String of, StringBuilder text) {
    for (Program.Read read : reads) {
      String type = type(read.form(), read.type());
      if (read.form().equals("record")) {
        type = of + read.java().substring(0, 1).toUpperCase(Locale.ROOT) + read.java().substring(1);
        type += "Results";
        text.append("public static final class ").append(type).append(" { ");
        reads(read.fields(), type, text);
        text.append("} ");
      }
      text.append("public ").append(type).append(' ').append(read.java()).append("; ");
    }
  }

  /** Imports stand first in a clause as in any Java; blanks take their place. */
  private static String withoutImports(String source, StringBuilder own) {
    Matcher first = FIRST_CODE.matcher(source);
    int end = first.lookingAt() ? first.end() : 0;
    String head = source.substring(0, end);
    Matcher one = IMPORT.matcher(head);
    StringBuilder blanked = new StringBuilder(head);
    while (one.find()) {
      own.append(one.group().strip().replaceAll("\\s+", " ")).append(' ');
      for (int i = one.start(); i < one.end(); i++) {
        if (blanked.charAt(i) != '\n') {
          blanked.setCharAt(i, ' ');
        }
      }
    }
    return blanked + source.substring(end);
  }

  private static String type(String form, String kind) {
    return switch (form) {
      case "quantity" -> kind.isEmpty() ? "Measured<?>" : "Measured<" + kind + ">";
      case "series" -> kind.isEmpty() ? "MeasuredSeries<?>" : "MeasuredSeries<" + kind + ">";
      case "text", "chart" -> "String";
      case "texts" -> "List<String>";
      case "truth" -> "Boolean";
      case "record" -> "";
      case "table" -> "tech.tablesaw.api.Table";
      default -> throw new IllegalArgumentException("no form " + form);
    };
  }
}
