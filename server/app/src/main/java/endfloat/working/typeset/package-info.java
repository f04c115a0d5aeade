/**
 * Lines of the working language as mathematics: MathML Core for page, report and print, with words
 * for those who hear it. Start with {@link endfloat.working.typeset.Typeset}.
 */
package endfloat.working.typeset;
