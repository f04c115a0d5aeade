package endfloat.record;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HexFormat;

/** SHA-256 over the canonical form of RFC 8785, of source and of results apart. */
public final class RecordHash {
  private RecordHash() {}

  static ObjectNode of(InvestigationRecord record) {
    ObjectNode hashes = JsonNodeFactory.instance.objectNode();
    hashes.put("source", ofSource(record.tree()));
    if (record.tree().has("results")) {
      hashes.put("results", canonical(record.tree().get("results")));
    }
    return hashes;
  }

  static String ofSource(ObjectNode tree) {
    ObjectNode source = Trees.shallow(tree);
    source.remove(InvestigationRecord.COMPUTED);
    return canonical(source);
  }

  static String canonical(JsonNode tree) {
    return ofBytes(CanonicalJson.bytes(tree));
  }

  /** SHA-256 of bytes in hex. */
  public static String ofBytes(byte[] bytes) {
    try {
      return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(bytes));
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }
}
