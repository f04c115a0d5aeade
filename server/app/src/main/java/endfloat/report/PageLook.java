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
  private static final Pattern HEAD_ROOM = Pattern.compile("--head-room:\\s*([0-9.]+mm)");
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
   * @param strip what stands on every sheet
   */
  static String css(PaperSize paper, Strip strip) {
    return faces()
        + pages(paper, strip)
        + text("/endfloat/report/report.css")
        + onPaper(text("/web/css/strip.css"));
  }

  /** The same for the layout that makes a PDF: it brings its own faces. */
  static String forSheets(PaperSize paper, Strip strip) {
    String look = text("/endfloat/report/report.css");
    return pages(paper, strip)
        + look
        + onPaper(text("/web/css/strip.css"))
        + headRoom(text("/endfloat/report/sheets.css"), look);
  }

  /** That layout knows no custom properties: what the report says of its heads is put in. */
  private static String headRoom(String css, String look) {
    Matcher room = HEAD_ROOM.matcher(look);
    if (!room.find()) {
      throw new IllegalStateException("the report does not say what room its heads hold");
    }
    return css.replace("var(--head-room)", room.group(1));
  }

  /** Of a blank form. */
  static String form(PaperSize paper, Strip strip) {
    return css(paper, strip) + text("/endfloat/report/form.css");
  }

  /** Of a blank form, for the layout that makes a PDF. */
  static String formForSheets(PaperSize paper, Strip strip) {
    return forSheets(paper, strip) + text("/endfloat/report/form.css");
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

  /** The title block goes on at the head of every further sheet, those who sign at the foot. */
  private static String pages(PaperSize paper, Strip strip) {
    String look =
        "font-family:\"Endfloat Lettering\",sans-serif;font-size:8.5pt;line-height:1.4;color:#1a2027;white-space:pre-wrap;";
    String head =
        look
            + "vertical-align:bottom;margin-bottom:4mm;padding-bottom:1.5mm;border-bottom:1.5pt solid #1a2027;";
    String foot =
        look
            + "vertical-align:top;margin-top:3mm;padding-top:1.5mm;border-top:.8pt solid #1a2027;color:#434a53;";
    return "@page{size:"
        + paper.css()
        + " portrait;margin:27mm 15mm 21mm 17mm;"
        + box(
            "top-left", quoted(strip.title(), strip.engine()), head + "text-align:left;width:68%;")
        + box(
            "top-right",
            quoted(strip.number(), strip.document()),
            head + "text-align:right;width:32%;")
        + box(
            "bottom-left",
            quoted(strip.signed(), strip.hash()),
            foot + "text-align:left;width:75%;")
        + box(
            "bottom-right",
            "\"Sheet \" counter(page) \" of \" counter(pages)",
            foot + "text-align:right;width:25%;")
        + "}\n@page :first{margin-top:14mm;"
        + box("top-left", "none", "border:0;")
        + box("top-right", "none", "border:0;")
        + "}\n";
  }

  private static String box(String place, String content, String look) {
    return "@" + place + "{content:" + content + ";" + look + "}";
  }

  /** Two lines as a string of CSS. */
  private static String quoted(String first, String second) {
    String both = quoted(first);
    return both.substring(0, both.length() - 1) + "\\a " + quoted(second).substring(1);
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
