package endfloat.definition;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * The unit of a parameter, of a result component, or (on the method) of a scalar result. It names
 * the dimension; the number itself is always in coherent SI: {@code @In("mm") double shift} still
 * carries metres, and {@code mm} is what the reference page shows. {@code "degC"} is a temperature
 * (a point, in kelvin inside), {@code "K"} a difference. {@code "1"} is a pure number. {@code
 * "<x>"} is a unit variable: any dimension, the same wherever {@code <x>} stands.
 */
@Target({ElementType.PARAMETER, ElementType.METHOD, ElementType.RECORD_COMPONENT})
@Retention(RetentionPolicy.CLASS)
public @interface In {
  String value();
}
