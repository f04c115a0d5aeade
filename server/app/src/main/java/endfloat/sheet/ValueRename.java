package endfloat.sheet;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.TextNode;
import endfloat.engine.GivesHead;
import endfloat.engine.JavaNames;
import endfloat.record.Cell;
import endfloat.record.Change;
import endfloat.record.EditRefusedException;
import endfloat.record.InvestigationRecord;
import endfloat.working.Renaming;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javax.lang.model.SourceVersion;

/**
 * Gives a value another name wherever a record names it: in readings, workings and limits, in the
 * figures of notes, in the formulas of schedules, tables, boards of causes and charts, and by its
 * camel case in Java, whose source then is another and asks to be approved.
 */
public final class ValueRename {
  /** Fields that hold a formula of the language, whatever the kind of clause. */
  private static final Set<String> FORMULAS =
      Set.of("measured", "low", "high", "observed", "needed", "contribution", "of", "input");

  private static final Set<String> ENTERED = Set.of("fits", "causes", "chart");

  private static final Pattern IN_NOTE = Pattern.compile("\\{(\\s*)([\\p{L}_][\\p{L}\\p{N}_]*)");

  private final String from;
  private final String to;

  /** Heads of the table of that name; none where it is no table. */
  private final List<String> columns = new ArrayList<>();

  private final Set<String> javaCells = new HashSet<>();
  private final List<Change> changes = new ArrayList<>();

  private ValueRename(InvestigationRecord record, String from, String to) {
    this.from = from;
    this.to = to;
    for (Cell cell : record.cells()) {
      if (cell.kind().equals("table") && cell.source().path("name").asText().equals(from)) {
        cell.source().path("columns").forEach(c -> columns.add(c.path("head").asText()));
      }
      if (cell.kind().equals("java")) {
        javaCells.add(cell.id());
      }
    }
    record.cells().forEach(this::clause);
  }

  /**
   * The edit that does it in one step.
   *
   * @throws EditRefusedException if there is no such value, or the new name is none or taken
   */
  public static Change of(InvestigationRecord record, String from, String to) {
    if (!Renaming.isName(to)) {
      throw new EditRefusedException(
          "'" + to + "' cannot be the name of a value",
          "write letters, digits and _, a letter first, and no word of the language");
    }
    ValueRename taken = new ValueRename(record, to, to + "_");
    if (!from.equals(to) && !taken.changes.isEmpty()) {
      throw new EditRefusedException(
          "the name " + to + " is in use in this record", "choose another name");
    }
    ValueRename renaming = new ValueRename(record, from, to);
    if (renaming.changes.isEmpty()) {
      throw new EditRefusedException(
          "nothing in this record is named " + from, "press the value that you mean");
    }
    renaming.refuseJavaWord();
    return Change.together(renaming.changes);
  }

  /** A name that Java has for itself can neither be read nor given there. */
  private void refuseJavaWord() {
    String java = JavaNames.camel(to);
    boolean isInJava = changes.stream().anyMatch(one -> javaCells.contains(one.cell()));
    if (isInJava && SourceVersion.isKeyword(java)) {
      throw new EditRefusedException(
          java + " is a word of Java itself, and a java clause has this value",
          "choose another name");
    }
  }

  private void clause(Cell cell) {
    switch (cell.kind()) {
      case "working" -> put(cell, "/text", cell.text(), t -> Renaming.inLines(t, from, to));
      case "note", "caution" -> put(cell, "/text", cell.text(), this::inNote);
      case "readings" -> {
        for (int i = 0; i < cell.readings().size(); i++) {
          String name = cell.readings().get(i).name();
          put(cell, "/readings/" + i + "/name", name, n -> n.equals(from) ? to : n);
        }
      }
      case "table" -> table(cell);
      case "java" -> java(cell);
      default -> {
        if (ENTERED.contains(cell.kind())) {
          formulas(cell, "", cell.source());
        }
      }
    }
  }

  private void table(Cell cell) {
    put(cell, "/name", cell.source().path("name").asText(), n -> n.equals(from) ? to : n);
    String group = cell.source().at("/from/table").asText();
    put(cell, "/from/table", group, n -> n.equals(from) ? to : n);
    JsonNode columns = cell.source().path("columns");
    for (int i = 0; i < columns.size(); i++) {
      String formula = columns.get(i).path("formula").asText();
      put(cell, "/columns/" + i + "/formula", formula, t -> Renaming.inFormula(t, from, to));
    }
    JsonNode limits = cell.source().path("limits");
    for (int i = 0; i < limits.size(); i++) {
      put(cell, "/limits/" + i, limits.get(i).asText(), t -> Renaming.inLines(t, from, to));
    }
  }

  private void java(Cell cell) {
    String gives = cell.source().path("gives").asText();
    put(cell, "/gives", gives, t -> GivesHead.renamed(t, from, to));
    put(
        cell,
        "/text",
        cell.text(),
        text -> {
          String renamed = JavaNames.renamed(text, JavaNames.camel(from), JavaNames.camel(to));
          for (String column : columns) {
            String now = JavaNames.camel(to + "." + column);
            renamed = JavaNames.renamed(renamed, JavaNames.camel(from + "." + column), now);
          }
          return renamed;
        });
  }

  private void formulas(Cell cell, String at, JsonNode node) {
    node.fields()
        .forEachRemaining(
            field -> {
              String here = at + "/" + field.getKey();
              JsonNode value = field.getValue();
              boolean part = field.getKey().equals("of") && at.contains("/sizes/");
              if (value.isTextual() && FORMULAS.contains(field.getKey()) && !part) {
                UnaryOperator<String> exchange = t -> Renaming.inFormula(t, from, to);
                put(cell, here, value.textValue(), exchange);
              } else if (value.isObject()) {
                formulas(cell, here, value);
              }
              for (int i = 0; value.isArray() && i < value.size(); i++) {
                formulas(cell, here + "/" + i, value.get(i));
              }
            });
  }

  private String inNote(String text) {
    Matcher figures = IN_NOTE.matcher(text);
    return figures.replaceAll(
        found ->
            Matcher.quoteReplacement(
                found.group(2).equals(from) ? "{" + found.group(1) + to : found.group()));
  }

  private void put(Cell cell, String at, String text, UnaryOperator<String> exchange) {
    String changed = exchange.apply(text);
    if (!changed.equals(text)) {
      changes.add(Change.put(cell.id(), at, new TextNode(changed)));
    }
  }
}
