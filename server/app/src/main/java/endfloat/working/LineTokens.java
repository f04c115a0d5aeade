package endfloat.working;

import java.util.List;
import org.antlr.v4.runtime.RuleContext;
import org.antlr.v4.runtime.Token;
import org.antlr.v4.runtime.TokenSource;
import org.antlr.v4.runtime.TokenStream;
import org.antlr.v4.runtime.misc.Interval;

/** The tokens of one line, as the generated parser reads them. */
final class LineTokens implements TokenStream {
  private final List<Lexeme> tokens;
  private int at;

  /** The last of the tokens must be EOF. */
  LineTokens(List<Lexeme> tokens) {
    this.tokens = tokens;
    for (int i = 0; i < tokens.size(); i++) {
      tokens.get(i).setTokenIndex(i);
    }
  }

  @Override
  public Token LT(int k) {
    int wanted = k > 0 ? at + k - 1 : at + k;
    return wanted < 0 ? null : tokens.get(Math.min(wanted, tokens.size() - 1));
  }

  @Override
  public int LA(int k) {
    Token token = LT(k);
    return token == null ? Token.INVALID_TYPE : token.getType();
  }

  @Override
  public void consume() {
    if (LA(1) == Token.EOF) {
      throw new IllegalStateException("cannot read on after the end of a line");
    }
    at++;
  }

  @Override
  public int mark() {
    return 0;
  }

  @Override
  public void release(int marker) {
    // every token is kept
  }

  @Override
  public int index() {
    return at;
  }

  @Override
  public void seek(int index) {
    at = index;
  }

  @Override
  public int size() {
    return tokens.size();
  }

  @Override
  public Token get(int index) {
    return tokens.get(index);
  }

  @Override
  public TokenSource getTokenSource() {
    return null;
  }

  @Override
  public String getSourceName() {
    return UNKNOWN_SOURCE_NAME;
  }

  @Override
  public String getText() {
    return getText(Interval.of(0, size() - 1));
  }

  @Override
  public String getText(RuleContext context) {
    return getText(context.getSourceInterval());
  }

  @Override
  public String getText(Token start, Token stop) {
    return getText(Interval.of(start.getTokenIndex(), stop.getTokenIndex()));
  }

  @Override
  public String getText(Interval interval) {
    StringBuilder text = new StringBuilder();
    for (int i = interval.a; i <= interval.b && i < size(); i++) {
      text.append(tokens.get(i).getText());
    }
    return text.toString();
  }
}
