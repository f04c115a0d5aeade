package endfloat.definition;

import java.lang.annotation.ElementType;
import java.lang.annotation.Retention;
import java.lang.annotation.RetentionPolicy;
import java.lang.annotation.Target;

/**
 * Value of an argument that was not given, as the working language writes it: {@code "0 deg"},
 * {@code "\"mean\""}. {@link #NOT_GIVEN} hands NaN (or null for a text) to the method.
 */
@Target({ElementType.PARAMETER, ElementType.RECORD_COMPONENT})
@Retention(RetentionPolicy.CLASS)
public @interface Default {
  String NOT_GIVEN = "not given";

  String value();
}
