package endfloat.table;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * The text of a file: UTF-8, with or without a mark at its start, else Latin-1, which is said.
 *
 * @param problems that leave the file unread; else empty
 * @param notices of a guess
 */
record TextOfFile(String text, List<String> problems, List<String> notices) {
  static TextOfFile of(byte[] bytes) {
    for (int i = 0; i < Math.min(bytes.length, 4); i++) {
      if (bytes[i] == 0) {
        return new TextOfFile(
            "", List.of("the file is no plain text; save it as CSV in UTF-8"), List.of());
      }
    }
    try {
      String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
      boolean marked = text.startsWith("\ufeff");
      return new TextOfFile(marked ? text.substring(1) : text, List.of(), List.of());
    } catch (CharacterCodingException e) {
      return new TextOfFile(
          new String(bytes, StandardCharsets.ISO_8859_1),
          List.of(),
          List.of("the file is not UTF-8; it was read as Latin-1"));
    }
  }
}
