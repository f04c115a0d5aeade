package endfloat.engine;

import endfloat.units.Unit;
import endfloat.units.UnitPreference;
import endfloat.units.UnitSystem;
import endfloat.units.UnitTable;
import endfloat.working.Kind;
import java.util.Collection;
import java.util.List;
import java.util.Optional;

/**
 * The unit in which a figure is shown: that of its line, exchanged for its neighbour where the
 * sheet is in the other system.
 *
 * <p>A length of which nobody said inches is shown in thou on an imperial sheet where it is a
 * clearance by its size. The limits decide that where there are any, so that a reading that moves
 * about them never changes the unit; a series has one unit.
 */
public final class FigureUnit {
  private static final Unit INCH = UnitTable.find("in");
  private static final Unit THOU = UnitTable.find("thou");

  /** Below it the shop speaks of thou: 50 thou (common practice, no source) [SI]. */
  private static final double SMALL = 50 * 25.4e-6;

  private FigureUnit() {}

  /** Of a number of no particular size. */
  public static Unit of(Optional<Unit> declared, Optional<Kind> kind, GraphSettings settings) {
    if (declared.isPresent()) {
      return UnitPreference.shown(declared.get(), settings.units());
    }
    if (kind.isPresent() && kind.get() instanceof Kind.Temperature) {
      return UnitPreference.temperature(settings.units());
    }
    if (kind.isPresent() && kind.get() instanceof Kind.Quantity quantity) {
      return UnitPreference.of(quantity.dimension(), settings.units());
    }
    return UnitTable.find("1");
  }

  /** Of a figure, or of each element of a series. */
  public static Unit of(Figure figure, GraphSettings settings) {
    Optional<Kind> kind =
        figure.kind().map(k -> k instanceof Kind.Series series ? series.element() : k);
    return sized(
        figure.unit(),
        kind,
        figure.value().map(List::of).orElse(List.of()),
        figure.judgements(),
        settings);
  }

  /** Of an element of a series, which has the unit of all of it, or of a field of a record. */
  public static Unit of(Figure figure, Figure.Element element, GraphSettings settings) {
    return element.field().isEmpty() && element.unit().equals(figure.unit())
        ? of(figure, settings)
        : sized(
            element.unit(),
            Shown.kind(figure, element).map(k -> k instanceof Kind.Series s ? s.element() : k),
            List.of(element.value()),
            element.judgements(),
            settings);
  }

  /** Of what is asked; of a name alone that of its figure. */
  public static Unit of(Question asked, GraphSettings settings) {
    Optional<Figure> figure =
        asked
            .place()
            .filter(place -> place.fields().isEmpty())
            .flatMap(place -> asked.graph().figure(place.name()));
    if (figure.isPresent()) {
      return of(figure.get(), settings);
    }
    Kind kind = asked.kind() instanceof Kind.Series series ? series.element() : asked.kind();
    List<Value> values;
    try {
      values = List.of(asked.value());
    } catch (QuestionRefusedException e) {
      values = List.of();
    }
    return sized(asked.unit(), Optional.of(kind), values, asked.judgements(), settings);
  }

  private static Unit sized(
      Optional<Unit> declared,
      Optional<Kind> kind,
      Collection<Value> values,
      List<Judgement> limits,
      GraphSettings settings) {
    Unit unit = of(declared, kind, settings);
    if (!unit.equals(INCH)
        || declared.filter(INCH::equals).isPresent()
        || settings.units() == UnitSystem.AS_TYPED) {
      return unit;
    }
    double greatest = 0;
    for (Judgement limit : limits) {
      greatest = Math.max(greatest, greater(limit.low(), limit.high()));
    }
    if (greatest == 0) {
      greatest = greatest(values);
    }
    return greatest < SMALL && !(values.isEmpty() && limits.isEmpty()) ? THOU : unit;
  }

  /** The greater size of two ends, either of which may be missing. */
  private static double greater(double low, double high) {
    double least = Double.isNaN(low) ? 0 : Math.abs(low);
    return Double.isNaN(high) ? least : Math.max(least, Math.abs(high));
  }

  private static double greatest(Collection<Value> values) {
    double greatest = 0;
    for (Value value : values) {
      if (value instanceof Value.Scalar scalar) {
        greatest = Math.max(greatest, Math.abs(scalar.si()));
      } else if (value instanceof Value.Series series) {
        greatest = Math.max(greatest, greatest(series.elements()));
      }
    }
    return greatest;
  }
}
