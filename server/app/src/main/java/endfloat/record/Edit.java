package endfloat.record;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;

/**
 * One edit as a person makes it.
 *
 * @param id made by the client, so that an edit sent twice is made once
 * @param author who
 * @param client which open page; its own earlier edits are never stale to it. Empty: unknown
 * @param time ISO 8601, when it was made
 * @param seen the revision of the clause that the author had before the eyes
 * @param change what it does
 */
public record Edit(String id, String author, String client, String time, long seen, Change change) {

  /**
   * An edit as a client sends it or the log has it.
   *
   * @throws EditRefusedException if a field is missing or of the wrong type; says which
   */
  public static Edit fromJson(JsonNode json) {
    String id = text(json, "id");
    if (id.isEmpty() || id.length() > 100) {
      throw new EditRefusedException("the edit has no id", "give each edit an id of its own");
    }
    JsonNode seen = json.path("seen");
    if (!seen.isMissingNode() && !seen.isNull() && !seen.canConvertToLong()) {
      throw new EditRefusedException("the edit's 'seen' is no whole number", "send the revision");
    }
    return new Edit(
        id,
        text(json, "author"),
        text(json, "client"),
        text(json, "time"),
        seen.asLong(Long.MAX_VALUE),
        Change.fromJson(json));
  }

  public ObjectNode toJson() {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("id", id);
    json.put("author", author);
    if (!client.isEmpty()) {
      json.put("client", client);
    }
    json.put("time", time);
    if (seen != Long.MAX_VALUE) {
      json.put("seen", seen);
    }
    json.setAll(change.toJson());
    return json;
  }

  /**
   * The same edit by another author, page or time: the server knows these better than the client.
   */
  public Edit madeBy(String newAuthor, String newClient, String newTime) {
    return new Edit(id, newAuthor, newClient, newTime, seen, change);
  }

  static String text(JsonNode json, String field) {
    JsonNode value = json.path(field);
    if (value.isMissingNode() || value.isNull()) {
      return "";
    }
    if (!value.isTextual()) {
      throw new EditRefusedException("the edit's '" + field + "' is no text", "send it as text");
    }
    return value.textValue();
  }
}
