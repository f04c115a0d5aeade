package endfloat.record;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.Error;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import endfloat.record.RecordException.Reason;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;

/** The schema of a record, {@code record.schema.json}: every read and write passes it. */
public final class RecordSchema {
  private static final int MOST_PROBLEMS = 50;

  private RecordSchema() {}

  /** Loaded on first need: it costs half a second, which the first page need not wait for. */
  private static final class Loaded {
    static final String TEXT = text();
    static final SchemaRegistry REGISTRY =
        SchemaRegistry.withDefaultDialect(
            SpecificationVersion.DRAFT_2020_12,
            registry -> registry.schemas(Map.of("urn:endfloat:record:1", TEXT)));
    static final Schema RECORD = REGISTRY.getSchema(SchemaLocation.of("urn:endfloat:record:1"));
    static final Map<String, Schema> BLOCKS = new HashMap<>();

    static synchronized Schema block(String name) {
      return BLOCKS.computeIfAbsent(
          name,
          any -> REGISTRY.getSchema(SchemaLocation.of("urn:endfloat:record:1#/$defs/" + name)));
    }

    private static String text() {
      try (InputStream in = RecordSchema.class.getResourceAsStream("record.schema.json")) {
        return new String(in.readAllBytes(), StandardCharsets.UTF_8);
      } catch (IOException e) {
        throw new UncheckedIOException("the schema comes with the program", e);
      }
    }
  }

  /** The schema itself, as it ships. */
  public static String text() {
    return Loaded.TEXT;
  }

  /**
   * @return the tree, known to be a record
   * @throws RecordException with every problem, each naming its place in words
   */
  static ObjectNode checked(JsonNode tree) {
    List<String> problems = new ArrayList<>();
    for (Error error : Loaded.RECORD.validate(tree)) {
      problems.add(ProblemWords.of(tree, error));
    }
    if (problems.isEmpty()) {
      problems.addAll(doubles(tree));
    }
    refuse(problems);
    return (ObjectNode) tree;
  }

  /**
   * Checks one clause.
   *
   * @param record that held it so far, by which its number is named
   * @param pointer of the clause there
   * @param alone the clause without those it holds
   * @param cell the clause, by which its readings are named
   */
  static void checkCell(JsonNode record, String pointer, JsonNode alone, JsonNode cell) {
    List<String> problems = new ArrayList<>();
    for (Error error : Loaded.block("cell").validate(alone)) {
      problems.add(ProblemWords.of(record, pointer, cell, error));
    }
    refuse(problems);
  }

  /** Checks a clause that is not yet in a record. */
  static void checkNew(JsonNode cell) {
    checkCell(JsonNodeFactory.instance.objectNode(), "", cell, cell);
  }

  /** Checks title block, settings and registers, without the clauses. */
  static void checkBlocks(ObjectNode tree) {
    ObjectNode blocks = Trees.shallow(tree);
    blocks.remove(List.of("results", "hashes"));
    blocks.set("cells", JsonNodeFactory.instance.arrayNode());
    checked(blocks);
  }

  private static void refuse(List<String> problems) {
    List<String> distinct = problems.stream().distinct().limit(MOST_PROBLEMS).toList();
    if (!distinct.isEmpty()) {
      String more = distinct.size() == 1 ? "" : " (and " + (distinct.size() - 1) + " more)";
      throw new RecordException(Reason.NOT_A_RECORD, distinct.get(0) + more, distinct, null);
    }
  }

  /** What a schema cannot say: ids that stand twice. */
  private static List<String> doubles(JsonNode tree) {
    List<String> problems = new ArrayList<>();
    cellIds(tree.path("cells"), new HashSet<>(), problems);
    for (String register : List.of("instruments", "parts")) {
      Set<String> seen = new HashSet<>();
      for (JsonNode one : tree.path(register)) {
        if (!seen.add(Texts.text(one, "id"))) {
          problems.add("two " + register + " have the id " + Texts.text(one, "id"));
        }
      }
    }
    Set<String> names = new HashSet<>();
    for (JsonNode one : tree.path("materials")) {
      if (!names.add(Texts.text(one, "name").toLowerCase(Locale.ROOT))) {
        problems.add("two materials have the name " + Texts.text(one, "name"));
      }
    }
    return problems;
  }

  private static void cellIds(JsonNode cells, Set<String> seen, List<String> problems) {
    for (JsonNode cell : cells) {
      if (!seen.add(Texts.text(cell, "id"))) {
        problems.add("two clauses have the id " + Texts.text(cell, "id"));
      }
      cellIds(cell.path("cells"), seen, problems);
    }
  }
}
