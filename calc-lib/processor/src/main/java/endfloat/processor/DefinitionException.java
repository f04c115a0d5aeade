package endfloat.processor;

import javax.lang.model.element.Element;

/** A definition that cannot become a catalogue entry; reported at its element. */
final class DefinitionException extends RuntimeException {
  private static final long serialVersionUID = 1L;

  private final transient Element element;

  DefinitionException(Element element, String message) {
    super(message);
    this.element = element;
  }

  Element element() {
    return element;
  }
}
