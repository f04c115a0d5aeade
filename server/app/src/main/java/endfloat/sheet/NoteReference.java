package endfloat.sheet;

import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.commonmark.node.CustomNode;
import org.commonmark.parser.SourceLines;
import org.commonmark.parser.beta.InlineContentParser;
import org.commonmark.parser.beta.InlineContentParserFactory;
import org.commonmark.parser.beta.InlineParserState;
import org.commonmark.parser.beta.ParsedInline;
import org.commonmark.parser.beta.Position;
import org.commonmark.parser.beta.Scanner;

/** {@code {name}}, {@code {name.field}} or <code>{#clause}</code> in a note. */
final class NoteReference extends CustomNode {
  private static final Pattern FIGURE =
      Pattern.compile("[\\p{L}_][\\p{L}\\p{N}_]*(\\.[\\p{L}_][\\p{L}\\p{N}_]*)*");
  private static final Pattern CLAUSE = Pattern.compile("#([A-Za-z0-9_.-]+)");

  private final String name;
  private final boolean isClause;

  private NoteReference(String name, boolean isClause) {
    this.name = name;
    this.isClause = isClause;
  }

  String name() {
    return name;
  }

  boolean isClause() {
    return isClause;
  }

  /** Reads a reference where a brace opens; a brace that opens none is text. */
  static final class Factory implements InlineContentParserFactory {
    @Override
    public Set<Character> getTriggerCharacters() {
      return Set.of('{');
    }

    @Override
    public InlineContentParser create() {
      return Factory::read;
    }

    private static ParsedInline read(InlineParserState state) {
      Scanner scanner = state.scanner();
      scanner.next();
      Position from = scanner.position();
      if (scanner.find('}') < 0) {
        return ParsedInline.none();
      }
      SourceLines source = scanner.getSource(from, scanner.position());
      scanner.next();
      String text = source.getContent().strip();
      Matcher clause = CLAUSE.matcher(text);
      if (clause.matches()) {
        return ParsedInline.of(new NoteReference(clause.group(1), true), scanner.position());
      }
      if (FIGURE.matcher(text).matches()) {
        return ParsedInline.of(new NoteReference(text, false), scanner.position());
      }
      return ParsedInline.none();
    }
  }
}
