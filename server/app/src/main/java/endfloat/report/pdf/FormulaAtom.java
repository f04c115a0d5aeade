package endfloat.report.pdf;

import java.util.ArrayList;
import java.util.List;

/**
 * A part of a formula that no line breaks.
 *
 * @param level how many brackets it stands in
 * @param mayBreak whether a line may be broken before it
 */
record FormulaAtom(FormulaPiece piece, int level, boolean mayBreak) {

  /**
   * A formula in pieces of which each has room on a line: broken outside of brackets first, inside
   * them only where a piece is too wide else.
   *
   * @param room on a line [em]
   */
  static List<FormulaPiece> lines(List<FormulaAtom> atoms, double room) {
    return broken(atoms, room, 0);
  }

  private static List<FormulaPiece> broken(List<FormulaAtom> atoms, double room, int level) {
    List<FormulaPiece> pieces = new ArrayList<>();
    int from = 0;
    for (int i = 1; i <= atoms.size(); i++) {
      if (i < atoms.size() && !(atoms.get(i).mayBreak && atoms.get(i).level <= level)) {
        continue;
      }
      List<FormulaAtom> some = atoms.subList(from, i);
      FormulaPiece piece =
          some.stream().map(FormulaAtom::piece).reduce(FormulaPiece.NOTHING, FormulaPiece::then);
      boolean deeper = some.stream().skip(1).anyMatch(atom -> atom.mayBreak);
      if (piece.width() > room && deeper) {
        pieces.addAll(broken(some, room, level + 1));
      } else {
        pieces.add(piece);
      }
      from = i;
    }
    return pieces;
  }
}
