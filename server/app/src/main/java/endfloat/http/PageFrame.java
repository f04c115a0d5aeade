package endfloat.http;

import endfloat.working.typeset.XmlText;
import java.nio.charset.StandardCharsets;

/**
 * The frame that every page stands in, {@code page.html}, filled with what a page has of its own.
 */
final class PageFrame {
  private final WebFolder folder;
  private final EntryModules modules;
  private volatile ImportMap importMap;

  PageFrame(WebFolder folder) {
    this.folder = folder;
    this.modules = new EntryModules(folder);
  }

  /**
   * A page.
   *
   * @param name of its file without {@code .html}
   */
  String page(String name, String nonce) {
    PageText text = text(name);
    StringBuilder head = new StringBuilder();
    for (String style : text.styles()) {
      head.append("<link rel=\"stylesheet\" href=\"/css/").append(style).append(".css\">\n");
    }
    if (!text.word("editor").isEmpty()) {
      head.append(importMap().element(nonce)).append('\n');
    }
    String entry = "view/" + text.word("module") + ".js";
    for (String module : modules.neededBy(entry)) {
      head.append("<link rel=\"modulepreload\" href=\"/").append(module).append("\">\n");
    }
    return filled(text, head.append(script(entry)).toString());
  }

  /**
   * One message and the way out. Its styles stand in it, since a browser that was not let in gets
   * no file.
   *
   * @param letIn whether what leads elsewhere would be answered
   */
  String message(String about, String message, String wayOut, boolean letIn, String nonce) {
    PageText text = text("message");
    String entry = "view/" + text.word("module") + ".js";
    StringBuilder head = new StringBuilder("<style nonce=\"").append(nonce).append("\">\n");
    text.styles().forEach(style -> head.append(read("css/" + style + ".css")));
    head.append("</style>");
    if (letIn) {
      head.append('\n').append(script(entry));
    }
    String page = filled(text, head.toString());
    return (letIn ? page : page.replaceAll("(?s)<!--let in-->.*?<!--/let in-->", ""))
        .replace("{{about}}", XmlText.escaped(about))
        .replace("{{way-out}}", XmlText.escaped(wayOut))
        .replace("{{message}}", XmlText.escaped(message));
  }

  private static String script(String entry) {
    return "<script type=\"module\" src=\"/" + entry + "\"></script>";
  }

  private String filled(PageText text, String head) {
    String view = text.word("view");
    String frame = read("page.html");
    if (!view.isEmpty()) {
      frame =
          frame.replace(
              "<a href=\"" + view + "\">", "<a aria-current=\"page\" href=\"" + view + "\">");
    }
    String[] skip = text.word("skip").split(" ", 2);
    return frame
        .replace("{{title}}", text.word("title"))
        .replace("{{skip-to}}", skip[0])
        .replace("{{skip}}", skip[1])
        .replace("{{right}}", text.word("right"))
        .replace("{{foot}}", text.word("foot"))
        .replace("{{foot-right}}", text.word("foot-right"))
        .replace("{{content}}", text.content())
        .replace("{{head}}", head);
  }

  private PageText text(String name) {
    return PageText.of(file(name + ".html"));
  }

  private String read(String path) {
    return new String(file(path).plain(), StandardCharsets.UTF_8);
  }

  private WebFile file(String path) {
    return folder.find(path).orElseThrow(() -> new IllegalStateException("no file " + path));
  }

  private ImportMap importMap() {
    if (importMap == null) {
      importMap = ImportMap.ofClassPath();
    }
    return importMap;
  }
}
