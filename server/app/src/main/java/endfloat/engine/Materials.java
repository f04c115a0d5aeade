package endfloat.engine;

import endfloat.catalogue.Calculation;
import endfloat.definition.Progress;
import endfloat.engine.Value.Absent;
import endfloat.engine.Value.Fields;
import endfloat.engine.Value.Words;
import endfloat.materials.Material;
import endfloat.record.EnteredMaterial;
import endfloat.units.Dimension;
import endfloat.units.Unit;
import endfloat.working.Checked;
import endfloat.working.Kind;
import endfloat.working.KindChecker;
import endfloat.working.Scope;
import endfloat.working.Working;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The materials that stand in the record. What is entered there comes before the library; a
 * property left empty is the library's where that has the material.
 */
final class Materials {
  /** The calculation that looks a material up. */
  static final String CALCULATION = "material";

  static final Materials NONE = new Materials();

  /** Properties as the language shows them, each with the unit it is asked for in. */
  private static final Map<String, String> UNITS =
      Map.of("expansion", "1/K", "modulus", "GPa", "density", "kg/m^3", "yield", "MPa");

  private static final Scope NO_NAMES =
      new Scope() {
        @Override
        public Optional<Kind> kindOf(String name) {
          return Optional.empty();
        }

        @Override
        public Collection<String> names() {
          return List.of();
        }

        @Override
        public Optional<Unit> unitOf(String name) {
          return Optional.empty();
        }
      };

  private final Map<String, Entered> bySpelling = new HashMap<>();
  private final Map<String, Entered> byKnownName = new HashMap<>();

  /** A material and what its texts say; a text in error with what is wrong with it. */
  private record Entered(
      EnteredMaterial as, Map<String, Formula> formulas, Map<String, String> errors) {}

  private Materials() {}

  Materials(List<EnteredMaterial> materials, KindChecker checker) {
    for (EnteredMaterial material : materials) {
      Entered entered = new Entered(material, new HashMap<>(), new HashMap<>());
      read(entered, "expansion", material.expansion(), checker);
      read(entered, "modulus", material.modulus(), checker);
      read(entered, "poisson", material.poisson(), checker);
      read(entered, "density", material.density(), checker);
      read(entered, "yield", material.yield(), checker);
      bySpelling.put(Material.spelling(material.name()), entered);
      // under any name that the library has for it too, or one sheet would use two values
      Material.onFile(material.name()).ifPresent(known -> byKnownName.put(known, entered));
    }
  }

  private Entered entered(String name) {
    Entered entered = bySpelling.get(Material.spelling(name));
    return entered != null ? entered : Material.onFile(name).map(byKnownName::get).orElse(null);
  }

  private static void read(Entered into, String property, String text, KindChecker checker) {
    if (text.isBlank()) {
      return;
    }
    String unit = UNITS.containsKey(property) ? " [" + UNITS.get(property) + "]" : "";
    Piece piece = new Piece(0, property + unit + " = " + text.replaceAll("\\s+", " "));
    Working working = piece.parse();
    String error = "";
    if (working.lines().size() == 1 && working.problems().isEmpty()) {
      Checked checked = checker.check(working.lines().get(0), NO_NAMES);
      if (checked instanceof Checked.Value value
          && value.kind() instanceof Kind.Quantity quantity
          && (!unit.isEmpty() || quantity.dimension().equals(Dimension.NONE))) {
        String of = property + " of " + into.as().name();
        Planner planner = new Planner(Slot::new, piece::at, of);
        into.formulas()
            .put(
                property,
                new Formula(
                    "material:" + Material.spelling(into.as().name()) + ":" + property,
                    Root.Kind.LIBRARY,
                    of + ", as entered in the record",
                    value,
                    planner));
        return;
      }
      error =
          checked instanceof Checked.Refused refused
              ? refused.problems().get(0).message()
              : "It must be a single number.";
    } else if (!working.problems().isEmpty()) {
      error = working.problems().get(0).message();
    }
    into.errors().put(property, error);
  }

  /** A material: the record's, the library's, or of both. */
  Value material(CalculateTerm term, Value[] values, String identity, Frame frame) {
    Entered entered = values[0] instanceof Words name ? entered(name.text()) : null;
    if (entered == null) {
      return library(term, values, identity, frame);
    }
    Fields known = null;
    try {
      known = (Fields) library(term, values, identity, frame);
    } catch (LineFailure unknownToTheLibrary) {
      // all there is stands in the record
    }
    List<String> names = term.calculation().results().stream().map(r -> r.name()).toList();
    List<Value> fields = new ArrayList<>(names.size());
    for (int i = 0; i < names.size(); i++) {
      Value ofLibrary = known == null ? null : known.values().get(i);
      fields.add(field(entered, names.get(i), ofLibrary, frame));
    }
    return new Fields(names, fields);
  }

  /**
   * Whose error the error of a property is: one alloy has one, whatever name or temper it is called
   * by. What other calculations look up goes by the text as it is.
   */
  static String subject(Calculation calculation, String text, String property) {
    return calculation.name().equals(CALCULATION)
        ? Material.filedUnder(text, property).orElse(text)
        : text;
  }

  private static Value library(CalculateTerm term, Value[] values, String identity, Frame frame) {
    return new CalculationRun(term, values, identity, frame, Progress.IGNORED).value();
  }

  private static Value field(Entered entered, String field, Value ofLibrary, Frame frame) {
    EnteredMaterial material = entered.as();
    if (field.equals("name")) {
      return new Words(material.name());
    }
    if (field.equals("sources")) {
      return new Words(sources(entered, ofLibrary));
    }
    if (entered.errors().containsKey(field)) {
      return unreadable(field, material, entered.errors().get(field));
    }
    Formula formula = entered.formulas().get(field);
    if (formula != null) {
      try {
        return formula.evaluate(frame);
      } catch (LineFailure e) {
        return unreadable(field, material, e.problem().message());
      }
    }
    return ofLibrary != null
        ? ofLibrary
        : new Absent("no " + field + " is entered for " + material.name() + " in this record");
  }

  private static Absent unreadable(String field, EnteredMaterial material, String why) {
    return new Absent(
        "the " + field + " of " + material.name() + " in this record cannot be read: " + why);
  }

  private static String sources(Entered entered, Value ofLibrary) {
    String own =
        String.join(", ", entered.formulas().keySet().stream().sorted().toList())
            + " as entered in this record"
            + (entered.as().source().isBlank() ? "" : " (" + entered.as().source().strip() + ")");
    return ofLibrary instanceof Words library ? own + "; the rest: " + library.text() : own;
  }
}
