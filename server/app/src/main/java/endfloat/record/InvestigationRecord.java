package endfloat.record;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * One investigation: the tree of its file, unknown fields and all, and typed views of it.
 *
 * <p>Immutable: an edit makes a new record that shares all it leaves alone. Trees handed out must
 * not be altered.
 */
public final class InvestigationRecord {
  /** Version of the format that this program writes. */
  public static final int VERSION = 1;

  /** The fields that are computed, so no part of the source. */
  static final Set<String> COMPUTED = Set.of("results", "hashes");

  private final ObjectNode tree;
  private final Map<String, Cell> cells;

  InvestigationRecord(ObjectNode tree) {
    this.tree = tree;
    Map<String, Cell> found = new LinkedHashMap<>();
    number(tree.path("cells"), "", "", found);
    this.cells = Collections.unmodifiableMap(found);
  }

  /**
   * Reads a file strictly, migrates it where it is older, and validates it.
   *
   * @throws RecordException if it is not a record; names the place in words
   */
  public static InvestigationRecord read(byte[] bytes) {
    return of(RecordJson.read(bytes));
  }

  /**
   * A record of a tree, which is validated and from then on belongs to the record.
   *
   * @throws RecordException as {@link #read}
   */
  public static InvestigationRecord of(JsonNode tree) {
    return new InvestigationRecord(RecordSchema.checked(Migrations.toCurrent(tree)));
  }

  private static void number(
      JsonNode siblings, String prefix, String parent, Map<String, Cell> into) {
    int count = 0;
    for (JsonNode node : siblings) {
      count++;
      String number = prefix + count;
      String id = Texts.text(node, "id");
      into.put(
          id,
          new Cell(
              id,
              number,
              Texts.text(node, "kind"),
              Texts.text(node, "title"),
              parent,
              (ObjectNode) node));
      if (Texts.text(node, "kind").equals("section")) {
        number(node.path("cells"), number + ".", id, into);
      }
    }
  }

  /** The tree of the file; not to be altered. */
  public ObjectNode tree() {
    return tree;
  }

  public TitleBlock titleBlock() {
    return TitleBlock.of(tree.path("title_block"));
  }

  public Settings settings() {
    return Settings.of(tree.path("settings"));
  }

  public List<RegisteredPart> parts() {
    List<RegisteredPart> parts = new ArrayList<>();
    tree.path("parts").forEach(part -> parts.add(RegisteredPart.of(part)));
    return parts;
  }

  public List<Instrument> instruments() {
    List<Instrument> instruments = new ArrayList<>();
    tree.path("instruments").forEach(one -> instruments.add(Instrument.of(one)));
    return instruments;
  }

  public List<EnteredMaterial> materials() {
    List<EnteredMaterial> materials = new ArrayList<>();
    tree.path("materials").forEach(one -> materials.add(EnteredMaterial.of(one)));
    return materials;
  }

  /** Every clause in the order read, a section before its own. */
  public List<Cell> cells() {
    return List.copyOf(cells.values());
  }

  public Optional<Cell> cell(String id) {
    return Optional.ofNullable(cells.get(id));
  }

  /** Figures as last saved: the elements of {@code results.figures}; empty where none are. */
  public List<JsonNode> savedFigures() {
    List<JsonNode> figures = new ArrayList<>();
    tree.path("results").path("figures").forEach(figures::add);
    return figures;
  }

  /** Version of the calculation library the saved figures came from, or empty. */
  public String savedLibrary() {
    return Texts.text(tree.path("results"), "library");
  }

  /** The same record with other results, or without any where {@code results} is null. */
  public InvestigationRecord withResults(ObjectNode results) {
    ObjectNode copy = Trees.shallow(tree);
    if (results == null) {
      copy.remove("results");
    } else {
      copy.set("results", results);
    }
    copy.remove("hashes");
    return new InvestigationRecord(copy);
  }

  /** The file: ordered, pretty-printed, with both hashes as they are now. */
  public byte[] write() {
    ObjectNode copy = Trees.shallow(tree);
    copy.set("hashes", RecordHash.of(this));
    return PrettyJson.bytes(copy);
  }

  /** Canonical hash of all but results and hashes, SHA-256 in hex. */
  public String sourceHash() {
    return RecordHash.ofSource(tree);
  }

  @Override
  public boolean equals(Object other) {
    return other instanceof InvestigationRecord that && tree.equals(that.tree);
  }

  @Override
  public int hashCode() {
    return tree.hashCode();
  }

  @Override
  public String toString() {
    return "record " + titleBlock().title() + " of " + cells.size() + " clauses";
  }
}
