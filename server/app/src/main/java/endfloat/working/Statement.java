package endfloat.working;

import java.util.List;
import java.util.Optional;

/**
 * One statement in tokens, before its grammar is known.
 *
 * @param tokens the last is EOF
 * @param comment that ends it, without its dashes
 * @param refusal what could not be read of it, if anything
 * @param from offset of its first letter
 * @param to offset after its last
 */
record Statement(
    List<Lexeme> tokens, String comment, Optional<Refusal> refusal, int from, int to) {}
