package endfloat.engine;

import endfloat.definition.Progress;
import endfloat.units.Unit;
import endfloat.units.UnitPreference;
import endfloat.working.LineProblem;

/** What a term sees of the record while it is evaluated. */
interface Frame {
  /** The value that a name has now. */
  Value of(Slot slot);

  Correlations correlations();

  GraphSettings settings();

  /** The materials of the record. */
  Materials materials();

  /** The value of what is slow; while it is not there yet a failure that says so. */
  default Value heavy(SlowTerm term, Value[] values, String identity) {
    return term.run(values, identity, this, Progress.IGNORED);
  }

  /** The unit in which the sheet shows what is written in this one. */
  default Unit shown(Unit unit) {
    return UnitPreference.shown(unit, settings().units());
  }

  /** Takes note of something that leaves the value standing. */
  void hint(LineProblem hint);
}
