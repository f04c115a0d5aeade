package endfloat.http;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.URL;
import java.util.Collections;
import java.util.TreeMap;

/** Which file each module name of the page stands for: the maps of all module jars in one. */
final class ImportMap {
  private final String json;

  private ImportMap(String json) {
    this.json = json;
  }

  /**
   * Reads the map of every jar on the class path; sorted, so that the page is the same each time.
   */
  static ImportMap ofClassPath() {
    ObjectMapper mapper = new ObjectMapper();
    TreeMap<String, String> imports = new TreeMap<>();
    try {
      ClassLoader loader = ImportMap.class.getClassLoader();
      for (URL url : Collections.list(loader.getResources("META-INF/importmap.json"))) {
        try (InputStream in = url.openStream()) {
          JsonNode map = mapper.readTree(in).path("imports");
          map.properties().forEach(entry -> imports.put(entry.getKey(), entry.getValue().asText()));
        }
      }
      return new ImportMap(mapper.writeValueAsString(Collections.singletonMap("imports", imports)));
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read the module maps of the page", e);
    }
  }

  /** As an element of the page. */
  String element(String nonce) {
    return "<script type=\"importmap\" nonce=\"" + nonce + "\">" + json + "</script>";
  }
}
