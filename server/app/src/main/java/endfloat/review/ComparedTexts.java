package endfloat.review;

import com.fasterxml.jackson.databind.JsonNode;
import endfloat.engine.ValueGraph.PlacedLine;
import endfloat.record.Cell;
import endfloat.record.InvestigationRecord;
import endfloat.review.Comparison.Side;
import endfloat.review.Comparison.Wording;
import endfloat.working.Line;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Formulas and texts of two records that do not read the same. */
final class ComparedTexts {
  /** What of the head of a record is computed, or says only that it is another one. */
  private static final Set<String> BLOCKS =
      Set.of("title_block", "settings", "instruments", "parts");

  private ComparedTexts() {}

  /** Statements by the name they give; limits by the name they judge and what they say. */
  static List<Wording> formulas(Side left, Side right) {
    Map<String, Wording> ours = statements(left);
    Map<String, Wording> theirs = statements(right);
    return changed(ours, theirs);
  }

  /** What stands under one key in both but reads otherwise, or stands in one alone. */
  private static List<Wording> changed(Map<String, Wording> ours, Map<String, Wording> theirs) {
    Set<String> all = new LinkedHashSet<>(ours.keySet());
    all.addAll(theirs.keySet());
    List<Wording> changed = new ArrayList<>();
    for (String key : all) {
      Wording from = ours.get(key);
      Wording to = theirs.get(key);
      String before = from == null ? "" : from.left();
      String after = to == null ? "" : to.left();
      if (!before.equals(after)) {
        Wording any = from == null ? to : from;
        changed.add(new Wording(any.clause(), any.what(), before, after));
      }
    }
    return changed;
  }

  private static Map<String, Wording> statements(Side side) {
    Map<String, Wording> statements = new LinkedHashMap<>();
    for (Cell cell : side.record().cells()) {
      for (PlacedLine placed : side.graph().lines(cell.id())) {
        String text = placed.text().strip();
        String name = "";
        String key = text;
        if (placed.line() instanceof Line.Definition definition) {
          name = definition.name();
          key = "= " + name;
        } else if (placed.line() instanceof Line.Limit limit) {
          name = limit.place().name();
        }
        statements.putIfAbsent(key, new Wording(cell.number(), name, text, ""));
      }
    }
    return statements;
  }

  /** Texts of the head, and of each clause by its id: what is typed and not computed. */
  static List<Wording> texts(InvestigationRecord left, InvestigationRecord right) {
    Map<String, Wording> ours = fields(left);
    Map<String, Wording> theirs = fields(right);
    return changed(ours, theirs);
  }

  private static Map<String, Wording> fields(InvestigationRecord record) {
    Map<String, Wording> fields = new LinkedHashMap<>();
    record
        .tree()
        .properties()
        .forEach(
            block -> {
              if (BLOCKS.contains(block.getKey())) {
                collect("", block.getKey(), block.getKey(), block.getValue(), fields);
              }
            });
    for (Cell cell : record.cells()) {
      cell.source()
          .properties()
          .forEach(
              field -> {
                boolean elsewhere =
                    Set.of("id", "kind", "cells").contains(field.getKey())
                        || (cell.kind().equals("working") && field.getKey().equals("text"))
                        // rows are compared as rows; how they were last looked at is no difference
                        || (cell.kind().equals("table")
                            && Set.of("rows", "view").contains(field.getKey()));
                if (!elsewhere) {
                  collect(
                      cell.number(),
                      cell.id() + "/" + field.getKey(),
                      field.getKey(),
                      field.getValue(),
                      fields);
                }
              });
    }
    return fields;
  }

  private static void collect(
      String clause, String key, String what, JsonNode node, Map<String, Wording> into) {
    if (node.isObject()) {
      String own = name(node);
      String named = own.isEmpty() ? what : what + " " + own;
      node.properties()
          .forEach(
              field ->
                  collect(
                      clause,
                      key + "/" + field.getKey(),
                      named + ", " + field.getKey().replace('_', ' '),
                      field.getValue(),
                      into));
    } else if (node.isArray() && node.size() > 0 && node.get(0).isObject()) {
      int at = 0;
      for (JsonNode one : node) {
        at++;
        String own = name(one);
        collect(clause, key + "/" + (own.isEmpty() ? at : own), what, one, into);
      }
    } else if (node.isArray()) {
      List<String> texts = new ArrayList<>();
      node.forEach(one -> texts.add(one.asText()));
      put(clause, key, what, String.join("; ", texts), into);
    } else if (!node.isNull()) {
      put(clause, key, what, node.asText(), into);
    }
  }

  /** By what a row of a register or a list is known: an entry by its station. */
  private static String name(JsonNode node) {
    for (String field : List.of("name", "id", "item", "role", "head")) {
      if (!node.path(field).asText("").isEmpty()) {
        return node.path(field).asText();
      }
    }
    if (node.has("at")) {
      List<String> labels = new ArrayList<>();
      node.path("at")
          .properties()
          .forEach(label -> labels.add(label.getKey() + " " + label.getValue().asText()));
      return String.join(", ", labels);
    }
    return "";
  }

  private static void put(
      String clause, String key, String what, String text, Map<String, Wording> into) {
    if (!text.isEmpty()) {
      into.putIfAbsent(key, new Wording(clause, what.replace('_', ' '), text, ""));
    }
  }
}
