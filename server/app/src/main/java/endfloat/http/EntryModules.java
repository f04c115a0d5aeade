package endfloat.http;

import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The modules that a page's first module needs at once, through others or directly, so that the
 * browser asks for all of them together. What is imported later, on demand, is not among them.
 */
final class EntryModules {
  private static final Pattern COMMENT = Pattern.compile("(?s:/\\*.*?\\*/)|(?m://.*$)");
  private static final Pattern IMPORT =
      Pattern.compile("(?m)^(?:import|export) [^;]*?\"(\\.\\.?/[^\"]+)\";");

  private final WebFolder page;
  private final Map<String, Set<String>> known = new ConcurrentHashMap<>();

  EntryModules(WebFolder page) {
    this.page = page;
  }

  /** Paths in order, such as {@code view/dom.js}; without the first module itself. */
  Set<String> neededBy(String entry) {
    if (page.isReadAnew()) {
      return found(entry);
    }
    return known.computeIfAbsent(entry, this::found);
  }

  private Set<String> found(String entry) {
    Set<String> needed = new TreeSet<>();
    add(entry, needed);
    needed.remove(entry);
    return needed;
  }

  private void add(String path, Set<String> needed) {
    if (!needed.add(path)) {
      return;
    }
    WebFile file =
        page.find(path).orElseThrow(() -> new IllegalStateException("no module " + path));
    String code = COMMENT.matcher(new String(file.plain(), StandardCharsets.UTF_8)).replaceAll("");
    Matcher imports = IMPORT.matcher(code);
    while (imports.find()) {
      add(URI.create(path).resolve(imports.group(1)).getPath(), needed);
    }
  }
}
