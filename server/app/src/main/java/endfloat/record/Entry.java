package endfloat.record;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;

/**
 * An edit as it is kept in the log.
 *
 * @param revision of the record after it
 * @param did the change made: the edit's own, or what an undo or redo came to
 * @param back the change that takes it back
 * @param of revisions that an UNDO took back or a REDO made again; else empty
 */
public record Entry(long revision, Edit edit, Change did, Change back, List<Long> of) {
  /** Whether this is an ordinary edit, neither undo nor redo. */
  public boolean isOrdinary() {
    return of.isEmpty();
  }

  ObjectNode toJson() {
    ObjectNode json = JsonNodeFactory.instance.objectNode();
    json.put("revision", revision);
    json.set("edit", edit.toJson());
    if (!isOrdinary()) {
      json.set("did", did.toJson());
      of.forEach(json.withArray("of")::add);
    }
    json.set("back", back.toJson());
    return json;
  }

  static Entry fromJson(JsonNode json) {
    Edit edit = Edit.fromJson(json.path("edit"));
    List<Long> of = new ArrayList<>();
    json.path("of").forEach(revision -> of.add(revision.longValue()));
    return new Entry(
        json.path("revision").longValue(),
        edit,
        json.has("did") ? Change.fromJson(json.get("did")) : edit.change(),
        Change.fromJson(json.path("back")),
        List.copyOf(of));
  }
}
