package endfloat.units;

import static endfloat.units.Dimension.ANGLE;
import static endfloat.units.Dimension.CURRENT;
import static endfloat.units.Dimension.LENGTH;
import static endfloat.units.Dimension.MASS;
import static endfloat.units.Dimension.NONE;
import static endfloat.units.Dimension.TEMPERATURE;
import static endfloat.units.Dimension.TIME;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What the trade calls a dimension, for messages. */
final class DimensionWords {
  private static final Map<Dimension, String> WORDS = words();

  private DimensionWords() {}

  static String of(Dimension dimension) {
    String word = WORDS.get(dimension);
    if (word == null) {
      word = WORDS.get(dimension.withoutAngle());
    }
    return word == null ? composed(dimension) : word;
  }

  private static Map<Dimension, String> words() {
    Dimension area = LENGTH.times(LENGTH);
    Dimension volume = area.times(LENGTH);
    Dimension speed = LENGTH.over(TIME);
    Dimension acceleration = speed.over(TIME);
    Dimension force = MASS.times(acceleration);
    Dimension torque = force.times(LENGTH);
    Dimension power = torque.over(TIME);
    Dimension pressure = force.over(area);
    Dimension voltage = power.over(CURRENT);
    Map<Dimension, String> words = new LinkedHashMap<>();
    words.put(NONE, "pure number");
    words.put(LENGTH, "length");
    words.put(MASS, "mass");
    words.put(TIME, "time");
    words.put(TEMPERATURE, "temperature difference");
    words.put(CURRENT, "current");
    words.put(ANGLE, "angle");
    words.put(area, "area");
    words.put(volume, "volume");
    words.put(volume.times(LENGTH), "second moment of area");
    words.put(NONE.over(LENGTH), "1/length");
    words.put(NONE.over(TIME), "frequency");
    words.put(ANGLE.over(TIME), "angular speed");
    words.put(ANGLE.over(TIME).over(TIME), "angular acceleration");
    words.put(NONE.over(TEMPERATURE), "coefficient of expansion");
    words.put(speed, "speed");
    words.put(acceleration, "acceleration");
    words.put(force, "force");
    words.put(torque, "torque or energy");
    words.put(power, "power");
    words.put(pressure, "pressure or stress");
    words.put(force.over(LENGTH), "stiffness");
    words.put(torque.over(ANGLE), "torsional stiffness");
    words.put(force.times(TIME).over(LENGTH), "damping or mass flow");
    words.put(torque.times(TIME).over(ANGLE), "torsional damping");
    words.put(MASS.times(area), "moment of inertia");
    words.put(MASS.over(volume), "density");
    words.put(pressure.times(TIME), "viscosity");
    words.put(area.over(TIME), "kinematic viscosity");
    words.put(volume.over(TIME), "flow");
    words.put(torque.over(MASS), "energy per mass");
    words.put(MASS.over(torque), "mass per energy");
    words.put(torque.over(MASS).over(TEMPERATURE), "specific heat");
    words.put(power.over(LENGTH).over(TEMPERATURE), "thermal conductivity");
    words.put(CURRENT.times(TIME), "charge");
    words.put(voltage, "voltage");
    words.put(voltage.over(CURRENT), "resistance");
    words.put(CURRENT.over(LENGTH), "magnetic field strength");
    return Map.copyOf(words);
  }

  private static String composed(Dimension dimension) {
    List<String> above = new ArrayList<>();
    List<String> below = new ArrayList<>();
    for (int i = 0; i < Dimension.bases(); i++) {
      int n = dimension.numerator(i);
      if (n != 0) {
        (n > 0 ? above : below)
            .add(Dimension.baseName(i) + exponent(Math.abs(n), dimension.denominator()));
      }
    }
    String top = above.isEmpty() ? "1" : String.join(" times ", above);
    return below.isEmpty() ? top : top + " per " + String.join(" and ", below);
  }

  private static String exponent(int numerator, int denominator) {
    if (numerator == denominator) {
      return "";
    }
    return numerator % denominator == 0
        ? "^" + numerator / denominator
        : "^(" + numerator + "/" + denominator + ")";
  }
}
