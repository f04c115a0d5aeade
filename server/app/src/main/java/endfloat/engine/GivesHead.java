package endfloat.engine;

import endfloat.units.Unit;
import endfloat.units.UnitException;
import endfloat.units.UnitTable;
import endfloat.working.LineProblem;
import endfloat.working.Span;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.lang.model.SourceVersion;

/**
 * The head of a java clause: {@code crossing [degC], harmonics [mm]: series, curve: table(angle
 * [deg], lash [mm]), verdict: text, holds: truth, round: chart}.
 */
public record GivesHead(List<Give> gives, List<LineProblem> problems) {
  private static final Pattern ONE =
      Pattern.compile(
          "\\s*([A-Za-z][A-Za-z0-9_]*)\\s*(?:\\[([^\\]]*)\\])?\\s*(?::\\s*([a-z]+)\\s*(?:\\((.*)\\))?)?\\s*");
  private static final Pattern COLUMN =
      Pattern.compile("\\s*([A-Za-z][A-Za-z0-9_]*)\\s*(?:\\[([^\\]]*)\\])?\\s*");

  /** Reads a head. */
  public static GivesHead of(String text) {
    List<Give> gives = new ArrayList<>();
    List<LineProblem> problems = new ArrayList<>();
    Set<String> names = new HashSet<>();
    int from = 0;
    for (String part : parts(text)) {
      Span span = new Span(1, from + 1, from + 1 + Math.max(1, part.length()));
      from += part.length() + 1;
      if (part.isBlank()) {
        continue;
      }
      try {
        Give give = one(part, span);
        if (!names.add(give.java())) {
          throw new LineFailure(span, "The name " + give.name() + " is given twice.", "");
        }
        gives.add(give);
      } catch (LineFailure e) {
        problems.add(e.problem());
      }
    }
    return new GivesHead(List.copyOf(gives), List.copyOf(problems));
  }

  /** The head with one name for another; columns of what it gives keep theirs. */
  public static String renamed(String text, String from, String to) {
    List<String> renamed = new ArrayList<>();
    for (String part : parts(text)) {
      Matcher one = ONE.matcher(part);
      boolean isIt = one.matches() && one.group(1).equals(from);
      renamed.add(isIt ? part.substring(0, one.start(1)) + to + part.substring(one.end(1)) : part);
    }
    return String.join(",", renamed);
  }

  /** Commas part what is given, but for those in brackets. */
  private static List<String> parts(String text) {
    List<String> parts = new ArrayList<>();
    int depth = 0;
    int from = 0;
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      depth += c == '(' || c == '[' ? 1 : c == ')' || c == ']' ? -1 : 0;
      if (c == ',' && depth == 0) {
        parts.add(text.substring(from, i));
        from = i + 1;
      }
    }
    parts.add(text.substring(from));
    return parts;
  }

  private static Give one(String part, Span span) {
    Matcher matcher = ONE.matcher(part);
    if (!matcher.matches()) {
      throw new LineFailure(
          span,
          "What the clause gives cannot be read here.",
          "Write a name with its unit, such as crossing [degC], or with its form, such as curve:"
              + " table(angle [deg], lash [mm]).");
    }
    String name = matcher.group(1);
    Optional<Unit> unit = unit(matcher.group(2), span);
    Give.Form form = form(matcher.group(3), span);
    if (unit.isPresent() && form != Give.Form.QUANTITY && form != Give.Form.SERIES) {
      throw new LineFailure(span, "A " + form.word() + " has no unit.", "Leave the unit out.");
    }
    List<Give.Column> columns = new ArrayList<>();
    if (matcher.group(4) != null) {
      if (form != Give.Form.TABLE) {
        throw new LineFailure(span, "Only a table has columns.", "");
      }
      for (String column : parts(matcher.group(4))) {
        columns.add(column(column, span));
      }
    }
    if (SourceVersion.isKeyword(JavaNames.camel(name))) {
      throw new LineFailure(span, name + " is a word of Java itself.", "Take another name.");
    }
    return new Give(name, JavaNames.camel(name), form, unit, List.copyOf(columns));
  }

  private static Give.Column column(String text, Span span) {
    Matcher matcher = COLUMN.matcher(text);
    if (!matcher.matches()) {
      throw new LineFailure(
          span, "A column of the table cannot be read.", "Write its name and its unit.");
    }
    return new Give.Column(matcher.group(1), unit(matcher.group(2), span));
  }

  private static Optional<Unit> unit(String text, Span span) {
    if (text == null || text.isBlank()) {
      return Optional.empty();
    }
    try {
      return Optional.of(UnitTable.find(text.strip()));
    } catch (UnitException e) {
      throw new LineFailure(span, e.getMessage(), "");
    }
  }

  private static Give.Form form(String word, Span span) {
    if (word == null) {
      return Give.Form.QUANTITY;
    }
    for (Give.Form form : Give.Form.values()) {
      if (form.word().equals(word)) {
        return form;
      }
    }
    throw new LineFailure(
        span,
        "There is no form \"" + word + "\".",
        "Write series, table, text, truth or chart; a quantity needs none.");
  }
}
