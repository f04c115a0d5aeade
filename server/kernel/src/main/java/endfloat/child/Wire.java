package endfloat.child;

import com.google.gson.Gson;
import com.google.gson.GsonBuilder;
import com.google.gson.JsonDeserializationContext;
import com.google.gson.JsonDeserializer;
import com.google.gson.JsonElement;
import com.google.gson.JsonObject;
import com.google.gson.JsonParseException;
import com.google.gson.JsonParser;
import com.google.gson.JsonPrimitive;
import com.google.gson.JsonSerializationContext;
import com.google.gson.JsonSerializer;
import io.github.spencerpark.jupyter.kernel.ExpressionValue;
import io.github.spencerpark.jupyter.kernel.history.HistoryEntry;
import io.github.spencerpark.jupyter.messages.HMACGenerator;
import io.github.spencerpark.jupyter.messages.Header;
import io.github.spencerpark.jupyter.messages.KernelTimestamp;
import io.github.spencerpark.jupyter.messages.Message;
import io.github.spencerpark.jupyter.messages.MessageType;
import io.github.spencerpark.jupyter.messages.ReplyType;
import io.github.spencerpark.jupyter.messages.adapters.ExpressionValueAdapter;
import io.github.spencerpark.jupyter.messages.adapters.HeaderAdapter;
import io.github.spencerpark.jupyter.messages.adapters.HistoryEntryAdapter;
import io.github.spencerpark.jupyter.messages.adapters.HistoryRequestAdapter;
import io.github.spencerpark.jupyter.messages.adapters.MessageTypeAdapter;
import io.github.spencerpark.jupyter.messages.adapters.ReplyTypeAdapter;
import io.github.spencerpark.jupyter.messages.reply.ErrorReply;
import io.github.spencerpark.jupyter.messages.request.HistoryRequest;
import java.lang.reflect.Type;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * Messages of the protocol as frames: identities, {@code <IDS|MSG>}, signature, header, parent
 * header, metadata, content, blobs. The library's own reader loses the socket after one bad
 * message, so frames are taken in whole and judged here.
 */
public final class Wire {
  private static final byte[] DELIMITER = "<IDS|MSG>".getBytes(StandardCharsets.US_ASCII);
  private static final byte[] EMPTY = "{}".getBytes(StandardCharsets.US_ASCII);
  private static final int SIGNED_FRAMES = 4;

  private static final Gson REPLIES =
      new GsonBuilder()
          .registerTypeAdapter(HistoryEntry.class, HistoryEntryAdapter.INSTANCE)
          .registerTypeAdapter(ExpressionValue.class, ExpressionValueAdapter.INSTANCE)
          .create();
  private static final Gson GSON =
      new GsonBuilder()
          .registerTypeAdapter(KernelTimestamp.class, new Moments())
          .registerTypeAdapter(Header.class, HeaderAdapter.INSTANCE)
          .registerTypeAdapter(MessageType.class, MessageTypeAdapter.INSTANCE)
          .registerTypeAdapter(HistoryRequest.class, HistoryRequestAdapter.INSTANCE)
          .registerTypeHierarchyAdapter(ReplyType.class, new ReplyTypeAdapter(REPLIES))
          .create();

  private Wire() {}

  /**
   * Moments in ISO 8601 as the protocol has them. The library writes its own to the minute and
   * without a colon in the offset; one that came from elsewhere goes back as it came.
   */
  private static final class Moments
      implements JsonSerializer<KernelTimestamp>, JsonDeserializer<KernelTimestamp> {
    private static final Pattern OF_THE_LIBRARY =
        Pattern.compile("\\d{4}-\\d\\d-\\d\\dT\\d\\d:\\d\\d[+-]\\d{4}");

    @Override
    public JsonElement serialize(KernelTimestamp moment, Type type, JsonSerializationContext by) {
      String text = moment.getDateString();
      return new JsonPrimitive(
          OF_THE_LIBRARY.matcher(text).matches() ? moment.getDate().toInstant().toString() : text);
    }

    @Override
    public KernelTimestamp deserialize(JsonElement text, Type type, JsonDeserializationContext by) {
      return new KernelTimestamp(text.getAsString());
    }
  }

  /** A message that is not taken in: badly framed, wrongly signed, or not JSON. */
  public static final class RefusedMessageException extends Exception {
    private static final long serialVersionUID = 1L;

    RefusedMessageException(String message, Throwable cause) {
      super(message, cause);
    }
  }

  static List<byte[]> frames(Message<?> message, HMACGenerator signer) {
    byte[] header = json(message.getHeader());
    byte[] parent = message.hasParentHeader() ? json(message.getParentHeader()) : EMPTY;
    byte[] metadata = message.hasMetadata() ? json(message.getMetadata()) : EMPTY;
    byte[] content = content(message);
    List<byte[]> frames = new ArrayList<>(message.getIdentities());
    frames.add(DELIMITER);
    frames.add(
        signer
            .calculateSignature(header, parent, metadata, content)
            .getBytes(StandardCharsets.US_ASCII));
    frames.addAll(List.of(header, parent, metadata, content));
    if (message.getBlobs() != null) {
      frames.addAll(message.getBlobs());
    }
    return frames;
  }

  static Message<?> message(List<byte[]> frames, HMACGenerator signer)
      throws RefusedMessageException {
    int delimiter = 0;
    while (delimiter < frames.size() && !Arrays.equals(frames.get(delimiter), DELIMITER)) {
      delimiter++;
    }
    int first = delimiter + 2;
    if (frames.size() < first + SIGNED_FRAMES) {
      throw new RefusedMessageException("a message lacks frames", null);
    }
    List<byte[]> signed = frames.subList(first, first + SIGNED_FRAMES);
    byte[] wanted =
        signer
            .calculateSignature(signed.toArray(new byte[0][]))
            .getBytes(StandardCharsets.US_ASCII);
    if (!MessageDigest.isEqual(wanted, frames.get(delimiter + 1))) {
      throw new RefusedMessageException("a message is wrongly signed", null);
    }
    try {
      return read(
          frames.subList(0, delimiter),
          signed,
          frames.subList(first + SIGNED_FRAMES, frames.size()));
    } catch (JsonParseException | IllegalStateException | ClassCastException e) {
      throw new RefusedMessageException("a message cannot be read: " + e.getMessage(), e);
    }
  }

  @SuppressWarnings("unchecked")
  private static Message<?> read(List<byte[]> identities, List<byte[]> signed, List<byte[]> blobs)
      throws RefusedMessageException {
    Header<Object> header = GSON.fromJson(text(signed.get(0)), Header.class);
    if (header == null || header.getType() == null || header.getId() == null) {
      throw new RefusedMessageException("a message has no header", null);
    }
    JsonElement parent = JsonParser.parseString(text(signed.get(1)));
    boolean child = parent.isJsonObject() && parent.getAsJsonObject().size() > 0;
    Map<String, Object> metadata = GSON.fromJson(text(signed.get(2)), Map.class);
    JsonElement body = JsonParser.parseString(text(signed.get(3)));
    if (!body.isJsonObject()) {
      throw new RefusedMessageException("a message has no content", null);
    }
    Object content = GSON.fromJson(body, type(header.getType(), body.getAsJsonObject()));
    return new Message<>(
        List.copyOf(identities),
        header,
        child ? GSON.<Header<?>>fromJson(parent, Header.class) : null,
        metadata,
        content,
        List.copyOf(blobs));
  }

  /** A reply that says error is an error; what the library does not know is kept as plain JSON. */
  private static Class<?> type(MessageType<?> type, JsonObject content) {
    if (type.getName().endsWith("_reply")
        && content.has("status")
        && content.get("status").getAsString().equals("error")) {
      return ErrorReply.class;
    }
    return type.equals(MessageType.UNKNOWN) ? Map.class : type.getContentType();
  }

  static String text(byte[] frame) {
    return new String(frame, StandardCharsets.UTF_8);
  }

  /** Every reply has a status; some of the library's have none. */
  private static byte[] content(Message<?> message) {
    JsonElement content = GSON.toJsonTree(message.getContent());
    if (content.isJsonObject()
        && message.getHeader().getType().getName().endsWith("_reply")
        && !content.getAsJsonObject().has("status")) {
      content.getAsJsonObject().addProperty("status", "ok");
    }
    return json(content);
  }

  private static byte[] json(Object value) {
    return GSON.toJson(value).getBytes(StandardCharsets.UTF_8);
  }
}
