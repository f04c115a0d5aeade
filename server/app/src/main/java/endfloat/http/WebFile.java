package endfloat.http;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.Locale;
import java.util.Map;
import java.util.zip.GZIPOutputStream;

/**
 * One file of the page as it goes out.
 *
 * @param type with its charset
 * @param etag of the content, quoted
 * @param plain the bytes
 * @param packed the bytes in gzip; the plain ones where packing gains nothing
 */
record WebFile(String type, String etag, byte[] plain, byte[] packed) {
  private static final Map<String, String> TYPES =
      Map.ofEntries(
          Map.entry("html", "text/html; charset=utf-8"),
          Map.entry("js", "text/javascript; charset=utf-8"),
          Map.entry("mjs", "text/javascript; charset=utf-8"),
          Map.entry("css", "text/css; charset=utf-8"),
          Map.entry("json", "application/json; charset=utf-8"),
          Map.entry("txt", "text/plain; charset=utf-8"),
          Map.entry("svg", "image/svg+xml; charset=utf-8"),
          Map.entry("png", "image/png"),
          Map.entry("ico", "image/x-icon"),
          Map.entry("ttf", "font/ttf"),
          Map.entry("woff2", "font/woff2"));

  static WebFile of(String path, byte[] bytes) {
    String type = typeOf(path);
    byte[] packed = type.contains("charset") ? gzip(bytes) : bytes;
    return new WebFile(type, etag(bytes), bytes, packed.length < bytes.length ? packed : bytes);
  }

  /** Type by the ending of the name; what is not known is handed out as bytes. */
  static String typeOf(String path) {
    String ending = path.substring(path.lastIndexOf('.') + 1).toLowerCase(Locale.ROOT);
    return TYPES.getOrDefault(ending, "application/octet-stream");
  }

  static String etag(byte[] bytes) {
    try {
      byte[] hash = MessageDigest.getInstance("SHA-256").digest(bytes);
      return '"' + Base64.getUrlEncoder().withoutPadding().encodeToString(hash) + '"';
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java has SHA-256", e);
    }
  }

  private static byte[] gzip(byte[] bytes) {
    ByteArrayOutputStream packed = new ByteArrayOutputStream(bytes.length / 3 + 64);
    try (GZIPOutputStream gzip = new GZIPOutputStream(packed)) {
      gzip.write(bytes);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
    return packed.toByteArray();
  }
}
