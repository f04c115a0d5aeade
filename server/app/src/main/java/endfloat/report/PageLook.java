package endfloat.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** The style sheet of a report with everything that it needs inside. */
final class PageLook {
  private static final Pattern INK =
      Pattern.compile("--([a-z0-9-]+):\\s*light-dark\\((#[0-9a-fA-F]+),");
  private static final String[][] FACES = {
    {"Endfloat Lettering", "endfloat-lettering", "400", "normal"},
    {"Endfloat Maths", "endfloat-maths", "400", "normal"},
    {"Source Serif 4", "source-serif-4-roman", "200 900", "normal"},
    {"Source Serif 4", "source-serif-4-italic", "200 900", "italic"},
    {"Source Code Pro", "source-code-pro", "200 900", "normal"}
  };

  private PageLook() {}

  /**
   * The whole sheet of styles.
   *
   * @param head what stands above every sheet after the first
   * @param foot what stands below every sheet, beside its number
   */
  static String css(PaperSize paper, String head, String foot) {
    return faces()
        + pages(paper, head, foot)
        + text("/endfloat/report/report.css")
        + onPaper(text("/web/css/strip.css"));
  }

  private static String faces() {
    StringBuilder css = new StringBuilder();
    for (String[] face : FACES) {
      String data = Base64.getEncoder().encodeToString(bytes("/web/fonts/" + face[1] + ".woff2"));
      css.append("@font-face{font-family:\"").append(face[0]);
      css.append("\";font-weight:").append(face[2]).append(";font-style:").append(face[3]);
      css.append(";src:url(data:font/woff2;base64,").append(data).append(") format(\"woff2\")}\n");
    }
    return css.toString();
  }

  private static String pages(PaperSize paper, String head, String foot) {
    String look = "font-family:\"Endfloat Lettering\",sans-serif;font-size:8pt;color:#434a53;";
    return "@page{size:"
        + paper.css()
        + " portrait;margin:20mm 15mm 18mm 17mm;@top-left{content:"
        + quoted(head)
        + ";"
        + look
        + "}@bottom-left{content:"
        + quoted(foot)
        + ";"
        + look
        + "}@bottom-right{content:\"Sheet \" counter(page) \" of \" counter(pages);"
        + look
        + "}}\n@page :first{margin-top:14mm;@top-left{content:\"\"}}\n";
  }

  /** A text as a string of CSS; it can end neither the string nor the style element. */
  static String quoted(String text) {
    StringBuilder quoted = new StringBuilder("\"");
    text.codePoints()
        .forEach(
            c -> {
              if (c < 0x20 || c == '"' || c == '\\' || c == '<' || c == '>' || c == '&') {
                quoted.append('\\').append(Integer.toHexString(c)).append(' ');
              } else {
                quoted.appendCodePoint(c);
              }
            });
    return quoted.append('"').toString();
  }

  /** Rules of the page in its colours of paper: one place says how a strip looks. */
  private static String onPaper(String css) {
    String tokens = text("/web/css/tokens.css");
    String inked = css.replace("var(--lettering)", "\"Endfloat Lettering\", sans-serif");
    Matcher ink = INK.matcher(tokens);
    while (ink.find()) {
      inked = inked.replace("var(--" + ink.group(1) + ")", ink.group(2));
    }
    return inked;
  }

  private static String text(String resource) {
    return new String(bytes(resource), StandardCharsets.UTF_8);
  }

  private static byte[] bytes(String resource) {
    try (InputStream in = PageLook.class.getResourceAsStream(resource)) {
      if (in == null) {
        throw new IllegalStateException("the program lacks " + resource);
      }
      return in.readAllBytes();
    } catch (IOException e) {
      throw new UncheckedIOException("cannot read " + resource + " from the program", e);
    }
  }
}
