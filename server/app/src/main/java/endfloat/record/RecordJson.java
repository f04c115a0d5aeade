package endfloat.record;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import endfloat.record.RecordException.Reason;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.Locale;

/**
 * Strict reading: UTF-8, no field twice, nothing after the end, no lone surrogate, no number that a
 * double cannot hold, limits on size and depth. What passes means the same to every reader.
 */
public final class RecordJson {
  /** Greatest size of a file that is read at all [bytes]. */
  public static final int MOST_BYTES = 32_000_000;

  /** Deepest nesting of lists and groups. */
  static final int DEEPEST = 100;

  /**
   * Deepest nesting of a value in an edit, so that a clause of it stays within {@link #DEEPEST}.
   */
  static final int DEEPEST_VALUE = 40;

  private static final JsonMapper MAPPER =
      JsonMapper.builder(
              JsonFactory.builder()
                  .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
                  .streamReadConstraints(
                      StreamReadConstraints.builder()
                          .maxNestingDepth(DEEPEST)
                          .maxStringLength(4_000_000)
                          .maxNumberLength(400)
                          .maxNameLength(2_000)
                          .build())
                  .build())
          .enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS)
          .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
          .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES)
          .nodeFactory(new PlainNumbers())
          .build();

  private RecordJson() {}

  /**
   * The tree of a file.
   *
   * @throws RecordException if the bytes are no strict JSON; says what is wrong, on which line and
   *     column
   */
  public static JsonNode read(byte[] bytes) {
    if (bytes.length > MOST_BYTES) {
      throw tooLarge(bytes.length);
    }
    for (int i = 0; i < Math.min(4, bytes.length); i++) {
      if (bytes[i] == 0) {
        throw new RecordException(
            Reason.NOT_JSON, "the file is not UTF-8 text; save it again as UTF-8");
      }
    }
    try (JsonParser parser = MAPPER.createParser(bytes)) {
      JsonNode tree = MAPPER.readTree(parser);
      if (tree == null || tree.isMissingNode()) {
        throw new RecordException(Reason.NOT_JSON, "the file is empty");
      }
      refuseLoneSurrogates(tree);
      return tree;
    } catch (IllegalArgumentException e) {
      throw new RecordException(Reason.NOT_JSON, e.getMessage(), e);
    } catch (StreamConstraintsException e) {
      throw new RecordException(Reason.NOT_JSON, place(e) + constraint(e), e);
    } catch (JsonProcessingException e) {
      throw new RecordException(Reason.NOT_JSON, place(e) + inWords(e), e);
    } catch (IOException e) {
      throw new RecordException(
          Reason.NOT_JSON, "the file is not UTF-8 text; save it again as UTF-8", e);
    }
  }

  /**
   * A value that came in an edit, as it will be once written and read again.
   *
   * @throws EditRefusedException if it could not be read again
   */
  static JsonNode normal(JsonNode value) {
    if (depth(value, 0) > DEEPEST_VALUE) {
      throw new EditRefusedException(
          "the value is nested more than " + DEEPEST_VALUE + " deep", "make it flatter");
    }
    try {
      refuseLoneSurrogates(value);
      return read(PrettyJson.compact(value).getBytes(StandardCharsets.UTF_8));
    } catch (RecordException | IllegalArgumentException e) {
      throw new EditRefusedException(
          "the value cannot be kept: " + e.getMessage(), "correct the value");
    }
  }

  private static int depth(JsonNode node, int above) {
    int deepest = above;
    if (above <= DEEPEST_VALUE) {
      for (JsonNode child : node) {
        deepest = Math.max(deepest, depth(child, above + 1));
      }
    }
    return deepest;
  }

  static RecordException tooLarge(long size) {
    return new RecordException(
        Reason.TOO_LARGE,
        String.format(
            Locale.ROOT,
            "%.1f MB are more than a record may have (%d MB); keep photographs and long tables"
                + " beside it",
            size / 1e6,
            MOST_BYTES / 1_000_000));
  }

  private static String place(JsonProcessingException e) {
    return e.getLocation() == null
        ? ""
        : "line "
            + e.getLocation().getLineNr()
            + ", column "
            + e.getLocation().getColumnNr()
            + ": ";
  }

  private static String constraint(StreamConstraintsException e) {
    return e.getMessage().contains("nesting")
        ? "nested more than " + DEEPEST + " deep"
        : "a text, name or number is longer than a record may hold";
  }

  private static String inWords(JsonProcessingException e) {
    String message = e.getOriginalMessage() == null ? "" : e.getOriginalMessage();
    if (message.startsWith("Duplicate field")) {
      return message.replace("Duplicate field", "the field") + " stands here twice";
    }
    if (message.startsWith("Trailing token")) {
      return "there is more after the end of the record";
    }
    if (message.contains("UTF-8")) {
      return "the file is not UTF-8 text; save it again as UTF-8";
    }
    if (message.startsWith("Unexpected end-of-input") || message.startsWith("Unexpected EOF")) {
      return "the file ends too early";
    }
    if (message.contains("NaN") || message.contains("Infinity")) {
      return "NaN and infinity are no numbers of JSON";
    }
    return "this is not JSON";
  }

  private static void refuseLoneSurrogates(JsonNode node) {
    if (node.isTextual()) {
      refuseLoneSurrogates(node.textValue());
    } else if (node.isObject()) {
      node.properties()
          .forEach(
              field -> {
                refuseLoneSurrogates(field.getKey());
                refuseLoneSurrogates(field.getValue());
              });
    } else {
      node.forEach(RecordJson::refuseLoneSurrogates);
    }
  }

  private static void refuseLoneSurrogates(String text) {
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      boolean alone =
          Character.isHighSurrogate(c)
              ? i + 1 == text.length() || !Character.isLowSurrogate(text.charAt(i + 1))
              : Character.isLowSurrogate(c)
                  && (i == 0 || !Character.isHighSurrogate(text.charAt(i - 1)));
      if (alone) {
        String start = text.substring(0, Math.min(i, 20));
        throw new RecordException(
            Reason.NOT_JSON, "half a character (a lone surrogate) in the text '" + start + "...'");
      }
    }
  }
}
