package endfloat.sheet;

import endfloat.working.typeset.XmlText;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.commonmark.node.AbstractVisitor;
import org.commonmark.node.Block;
import org.commonmark.node.BlockQuote;
import org.commonmark.node.CustomNode;
import org.commonmark.node.Heading;
import org.commonmark.node.Image;
import org.commonmark.node.Link;
import org.commonmark.node.ListBlock;
import org.commonmark.node.Node;
import org.commonmark.parser.Parser;
import org.commonmark.renderer.NodeRenderer;
import org.commonmark.renderer.html.DefaultUrlSanitizer;
import org.commonmark.renderer.html.HtmlNodeRendererContext;
import org.commonmark.renderer.html.HtmlRenderer;
import org.commonmark.renderer.html.HtmlWriter;

/**
 * The text of a note as markup: paragraphs, emphasis, lists, quotations, small headings and links,
 * with {@code {name}} for a live figure and <code>{#clause}</code> for the number of a clause.
 * Markup typed by hand comes out as text, links lead to web pages and mail only, and pictures are
 * left out.
 */
public final class NoteMarkup {
  private static final Set<Class<? extends Block>> BLOCKS =
      Set.of(Heading.class, ListBlock.class, BlockQuote.class);
  private static final Parser PARSER =
      Parser.builder()
          .enabledBlockTypes(BLOCKS)
          .customInlineContentParserFactory(new NoteReference.Factory())
          .build();

  private NoteMarkup() {}

  /** What the references of a note stand for. */
  public interface References {
    /** What a figure reads at present, such as {@code 0.335 mm}; empty where there is none. */
    Optional<String> figure(String name);

    /** Number of a clause, such as {@code 3.2}; empty where there is none. */
    Optional<String> clauseNumber(String id);
  }

  /**
   * A reference in a note: to a figure, with its field where it has one, or to a clause by its id.
   */
  public record Reference(String name, boolean isClause) {}

  /** All references of a note, in its order. */
  public static List<Reference> references(String text) {
    List<Reference> found = new ArrayList<>();
    try {
      PARSER
          .parse(text)
          .accept(
              new AbstractVisitor() {
                @Override
                public void visit(CustomNode node) {
                  if (node instanceof NoteReference one) {
                    found.add(new Reference(one.name(), one.isClause()));
                  }
                }
              });
    } catch (StackOverflowError e) {
      // shown as it was typed: it refers to nothing
      found.clear();
    }
    return List.copyOf(found);
  }

  /** The markup of a note; safe to put into a page as it is. */
  public static String html(String text, References references) {
    HtmlRenderer renderer =
        HtmlRenderer.builder()
            .escapeHtml(true)
            .sanitizeUrls(true)
            .urlSanitizer(new DefaultUrlSanitizer(List.of("http", "https", "mailto")))
            .percentEncodeUrls(true)
            .attributeProviderFactory(context -> NoteMarkup::attributes)
            .nodeRendererFactory(context -> new ReferenceRenderer(context, references))
            .build();
    try {
      return renderer.render(PARSER.parse(text));
    } catch (StackOverflowError e) {
      // Thousands of nested quotation marks: show what was typed.
      return "<p>" + XmlText.escaped(text) + "</p>\n";
    }
  }

  private static void attributes(Node node, String tag, Map<String, String> attributes) {
    if (node instanceof Link) {
      attributes.put("rel", "noopener noreferrer nofollow");
      attributes.put("target", "_blank");
    }
  }

  /** Draws references, headings below those of the sheet, and pictures as their description. */
  private static final class ReferenceRenderer implements NodeRenderer {
    private final HtmlNodeRendererContext context;
    private final HtmlWriter html;
    private final References references;

    ReferenceRenderer(HtmlNodeRendererContext context, References references) {
      this.context = context;
      this.html = context.getWriter();
      this.references = references;
    }

    @Override
    public Set<Class<? extends Node>> getNodeTypes() {
      return Set.of(NoteReference.class, Heading.class, Image.class);
    }

    @Override
    public void render(Node node) {
      if (node instanceof NoteReference reference) {
        if (reference.isClause()) {
          clause(reference.name());
        } else {
          figure(reference.name());
        }
      } else if (node instanceof Heading heading) {
        String tag = heading.getLevel() == 1 ? "h4" : heading.getLevel() == 2 ? "h5" : "h6";
        html.line();
        html.tag(tag);
        children(node);
        html.tag("/" + tag);
        html.line();
      } else {
        children(node);
      }
    }

    private void figure(String name) {
      Optional<String> shown = references.figure(name);
      Map<String, String> attributes = new LinkedHashMap<>();
      attributes.put("class", shown.isPresent() ? "live" : "live missing");
      attributes.put("data-figure", name);
      attributes.put("href", "#figure-" + name);
      html.tag("a", attributes);
      html.text(shown.orElse(name));
      html.tag("/a");
    }

    private void clause(String id) {
      Optional<String> number = references.clauseNumber(id);
      Map<String, String> attributes = new LinkedHashMap<>();
      attributes.put("class", number.isPresent() ? "clause" : "clause missing");
      attributes.put("data-clause", id);
      attributes.put("href", "#clause-" + id);
      html.tag("a", attributes);
      html.text(number.orElse(id));
      html.tag("/a");
    }

    private void children(Node parent) {
      for (Node child : childrenOf(parent)) {
        context.render(child);
      }
    }

    private static List<Node> childrenOf(Node parent) {
      List<Node> children = new ArrayList<>();
      for (Node child = parent.getFirstChild(); child != null; child = child.getNext()) {
        children.add(child);
      }
      return children;
    }
  }
}
