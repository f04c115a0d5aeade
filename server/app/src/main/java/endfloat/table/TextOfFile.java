package endfloat.table;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The text of a file: by the mark at its start UTF-8 or UTF-16; without one UTF-8, else Latin-1,
 * which is said.
 *
 * @param problems that leave the file unread; else empty
 * @param notices of a guess
 */
record TextOfFile(String text, List<String> problems, List<String> notices) {
  private static final int LOOKED_AT = 4;
  private static final char REPLACED = '\ufffd';

  /** Encoding found by the file itself. */
  static TextOfFile of(byte[] bytes) {
    return of(bytes, Optional.empty());
  }

  /**
   * @param said the encoding; empty: found
   */
  static TextOfFile of(byte[] bytes, Optional<Charset> said) {
    Charset marked = marked(bytes);
    if (said.isPresent() || marked != null) {
      Charset charset = marked != null ? marked : said.get();
      try {
        return read(decoded(bytes, charset), List.of());
      } catch (CharacterCodingException e) {
        return refused("the file is not " + charset.name() + "; choose another encoding");
      }
    }
    for (int i = 0; i < Math.min(bytes.length, LOOKED_AT); i++) {
      if (bytes[i] == 0) {
        return refused("the file is no plain text; save it as CSV in UTF-8");
      }
    }
    String quick = new String(bytes, StandardCharsets.UTF_8);
    if (quick.indexOf(REPLACED) < 0) {
      return read(quick, List.of());
    }
    try {
      // the sign for what cannot be read may itself stand in the file
      return read(decoded(bytes, StandardCharsets.UTF_8), List.of());
    } catch (CharacterCodingException e) {
      return read(
          new String(bytes, StandardCharsets.ISO_8859_1),
          List.of("the file is not UTF-8; it was read as Latin-1"));
    }
  }

  private static TextOfFile read(String text, List<String> notices) {
    String whole = text.startsWith("\ufeff") ? text.substring(1) : text;
    return whole.indexOf('\0') >= 0
        ? refused("the file is no plain text; save it as CSV in UTF-8")
        : new TextOfFile(whole, List.of(), notices);
  }

  private static TextOfFile refused(String why) {
    return new TextOfFile("", List.of(why), List.of());
  }

  private static String decoded(byte[] bytes, Charset charset) throws CharacterCodingException {
    return charset
        .newDecoder()
        .onMalformedInput(CodingErrorAction.REPORT)
        .onUnmappableCharacter(CodingErrorAction.REPORT)
        .decode(ByteBuffer.wrap(bytes))
        .toString();
  }

  /** The encoding that the mark at the start names; null for no mark. */
  private static Charset marked(byte[] bytes) {
    if (bytes.length >= 2 && (bytes[0] & 0xff) == 0xff && (bytes[1] & 0xff) == 0xfe) {
      return StandardCharsets.UTF_16LE;
    }
    if (bytes.length >= 2 && (bytes[0] & 0xff) == 0xfe && (bytes[1] & 0xff) == 0xff) {
      return StandardCharsets.UTF_16BE;
    }
    boolean utf8 =
        bytes.length >= 3
            && (bytes[0] & 0xff) == 0xef
            && (bytes[1] & 0xff) == 0xbb
            && (bytes[2] & 0xff) == 0xbf;
    return utf8 ? StandardCharsets.UTF_8 : null;
  }

  /** An encoding by its name. */
  static Optional<Charset> encoding(String name) {
    return switch (name.strip().toLowerCase(Locale.ROOT)) {
      case "utf-8", "utf8" -> Optional.of(StandardCharsets.UTF_8);
      case "utf-16" -> Optional.of(StandardCharsets.UTF_16);
      case "utf-16le" -> Optional.of(StandardCharsets.UTF_16LE);
      case "utf-16be" -> Optional.of(StandardCharsets.UTF_16BE);
      case "latin-1", "latin1", "iso-8859-1" -> Optional.of(StandardCharsets.ISO_8859_1);
      default -> Optional.empty();
    };
  }
}
